/** Names that one disk takes for one and another for two, and names that would lead out of their folder. */
import { expect, test } from 'vitest';
import { baseFiles, readWith } from './error-folders.js';

const page = (path: string) => {
  const [first] = baseFiles().filter(({ path: one }) => one === 'exercises/chair-squat.md');
  if (first === undefined) throw new Error('the page is gone');
  return { path, bytes: first.bytes };
};

const codesAt = (path: string, files: Parameters<typeof readWith>[0]): readonly string[] =>
  readWith(files).problems.flatMap(({ code, place }) => (place?.file === path ? [code] : []));

test('ids alike but for their Unicode normal form: each refused at its own page, and said to be taken', () => {
  const [composed, apart] = ['exercises/caf\u00e9-squat.md', 'exercises/cafe\u0301-squat.md'] as const;
  expect(composed).not.toBe(apart);
  const files = [...baseFiles(), page(composed), page(apart)];
  expect(codesAt(composed, files)).toContain('bad-id');
  expect(codesAt(apart, files)).toContain('bad-id');
  expect([...codesAt(composed, files), ...codesAt(apart, files)]).toContain('id-taken');
});

test.each(['exercises/...md', 'exercises/..%2fx.md', 'exercises/..\\..\\x.md', 'exercises/a..b.md', 'exercises/ .md'])(
  '%s is no page of an exercise, and says so',
  (path) => {
    const { problems, value } = readWith([...baseFiles(), page(path)]);
    const told = problems.filter(({ place, severity }) => place?.file === path && severity === 'error');
    expect(told.map(({ code }) => code)).toContain('bad-id');
    expect(value.library.exercises.some(({ id }) => /[^a-z0-9-]/.test(id))).toBe(false);
  },
);

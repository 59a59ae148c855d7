/** Letters the faces lack: no boxes, no rubbish, no PDF, and a problem that names them. */
import { describe, expect, test } from 'vitest';
import type { Booklet, CoverPart } from '../../src/model/booklet.js';
import { clientId } from '../../src/model/identity.js';
import { withheldBy } from '../../src/model/problem.js';
import { drawBooklet } from '../../src/print/draw-booklet.js';
import { drawForms } from '../../src/print/draw-forms.js';
import { fixtureBooklet } from '../fixtures/booklet.js';

const CLIENT = clientId('rowan-ashby');

function called(client: string): Booklet {
  const parts = fixtureBooklet.parts.map((part) =>
    part.kind === 'cover' ? ({ ...part, client } satisfies CoverPart) : part,
  );
  return { ...fixtureBooklet, parts };
}

describe.each([
  ['Hebrew', 'רון', ['ו', 'ן', 'ר']],
  ['Arabic', 'ليلى', ['ل', 'ى', 'ي']],
  ['Chinese', '李明', ['明', '李']],
  ['an emoji', 'Rowan 🙂', ['🙂']],
  ['a tick', 'Rowan ✓', ['✓']],
])('%s', (_, name, characters) => {
  test('is an error of the paper that names it, and is not drawn', async () => {
    const { value, problems } = await drawBooklet(called(name), CLIENT);
    expect(value).toBeNull();
    expect(problems[0]).toEqual({
      code: 'not-printable',
      severity: 'error',
      scope: { kind: 'client', client: CLIENT, paper: true },
      data: { why: 'letters', characters, where: name },
    });
    expect(problems.map(withheldBy)).toEqual(problems.map(() => undefined));
  });
});

test('in several texts, each is named once', async () => {
  const { parts } = called('Rowan ✓');
  const booklet: Booklet = { ...fixtureBooklet, parts: parts.map((part) => ({ ...part, title: `${part.title} ☺` })) };
  const { problems } = await drawBooklet(booklet, CLIENT);
  const where = problems.flatMap((one) => (one.code === 'not-printable' ? [one.data.where] : []));
  expect(where.length).toBeGreaterThan(2);
  expect(new Set(where).size).toBe(where.length);
});

test('nothing is drawn in any form', async () => {
  const { value, problems } = await drawForms(called('Rowan ✓'), CLIENT);
  expect(value).toEqual([]);
  expect(problems.map(({ code }) => code)).toContain('not-printable');
});

test('a booklet from right to left is not drawn at all, which no page can mend', async () => {
  const { value, problems } = await drawBooklet({ ...fixtureBooklet, direction: 'rtl' }, CLIENT);
  expect(value).toBeNull();
  expect(problems.map(({ severity }) => severity)).toEqual(['warning']);
  expect(problems.map(({ data }) => data)).toEqual([{ why: 'direction', characters: [], where: '' }]);
});

test('letters taken apart are put together, and marks that show nothing are left out', async () => {
  const { value, problems } = await drawBooklet(called('Zoe\u0301 \u2066Ashby\u2069\u200b'), CLIENT);
  expect(problems).toEqual([]);
  expect(value).not.toBeNull();
});

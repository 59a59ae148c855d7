/** Letters the faces lack: no boxes, no rubbish, no PDF, and a problem that names them. */
import { describe, expect, test } from 'vitest';
import type { Booklet, CoverPart } from '../../src/model/booklet.js';
import { clientId } from '../../src/model/identity.js';
import { drawBooklet } from '../../src/print/draw-booklet.js';
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
  test('is named and not drawn', async () => {
    const { value, problems } = await drawBooklet(called(name), CLIENT);
    expect(value).toBeNull();
    expect(problems).toEqual([
      {
        code: 'not-printable',
        severity: 'warning',
        scope: { kind: 'client', client: CLIENT },
        data: { why: 'letters', characters, where: name },
      },
    ]);
  });
});

test('a booklet from right to left is not drawn at all', async () => {
  const { value, problems } = await drawBooklet({ ...fixtureBooklet, direction: 'rtl' }, CLIENT);
  expect(value).toBeNull();
  expect(problems.map(({ data }) => data)).toEqual([{ why: 'direction', characters: [], where: '' }]);
});

test('letters taken apart are put together, and marks that show nothing are left out', async () => {
  const { value, problems } = await drawBooklet(called('Zoe\u0301 \u2066Ashby\u2069\u200b'), CLIENT);
  expect(problems).toEqual([]);
  expect(value).not.toBeNull();
});

/** Lines that are remembered are the very lines that would be set again. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { layOutLines, type StyledRun } from '../../src/print/lay-out-lines.js';
import { loadFaces, measureWith } from '../../src/print/load-faces.js';
import { tag } from '../../src/print/page.js';

const faces = await loadFaces();
const keeping = measureWith(faces);
const { known: _known, ...forgetting } = keeping;

const tags = [undefined, tag('P'), tag('P', undefined, { lang: 'nb' }), tag('Span')];

const run = fc.record({
  style: fc.constantFrom<StyledRun['style']>('text', 'text-strong', 'note', 'label'),
  text: fc.constantFrom(
    'Comfortably ',
    'breastbone',
    'up and down ',
    '2 × 16 kg',
    ' over-the-shoulder ',
    'utgangsstilling ',
  ),
  of: fc.nat({ max: tags.length - 1 }),
  to: fc.constantFrom(undefined, 'part-1', 'part-2'),
  lang: fc.constantFrom(undefined, 'en', 'nb'),
});

const runsOf = (parts: readonly (typeof run extends fc.Arbitrary<infer Run> ? Run : never)[]): readonly StyledRun[] =>
  parts.map(({ style, text, of, to, lang }): StyledRun => {
    const own = tags[of];
    return {
      style,
      text,
      ...(own ? { tag: own } : {}),
      ...(to === undefined ? {} : { to }),
      ...(lang === undefined ? {} : { lang }),
    };
  });

test('the first time and every time after', () => {
  fc.assert(
    fc.property(
      fc.array(run, { minLength: 1, maxLength: 6 }),
      fc.integer({ min: 60, max: 200 }),
      fc.constantFrom(0, 20),
      fc.constantFrom('en', 'nb'),
      (parts, width, first, language) => {
        const runs = runsOf(parts);
        const set = layOutLines(runs, width, { ...forgetting, language }, first);
        for (let time = 0; time < 2; time += 1)
          expect(layOutLines(runs, width, { ...keeping, language }, first)).toEqual(set);
      },
    ),
    { seed: 20261124, numRuns: 300 },
  );
});

test('what belongs to another element or leads elsewhere is not taken over from the one before', () => {
  const [one, other] = [tag('P'), tag('P')];
  const words = (of: typeof one, to: string): readonly StyledRun[] => [
    { style: 'text', text: 'Feet under the hips. ', tag: of },
    { style: 'text', text: 'Page 3', tag: of, to },
  ];
  layOutLines(words(one, 'part-1'), 80, keeping);
  const boxes = layOutLines(words(other, 'part-2'), 80, keeping).flatMap((line) => line.boxes);
  expect(new Set(boxes.map((box) => box.tag))).toEqual(new Set([other]));
  expect(new Set(boxes.map((box) => box.to))).toEqual(new Set([undefined, 'part-2']));
});

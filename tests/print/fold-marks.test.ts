/** Marks of the fold: what they are, where they stand, and on which side of which sheet. */
import { describe, expect, test } from 'vitest';
import { foldMarks, type Marks, sidesOf } from '../../src/print/fold-marks.js';
import { imposeFolded } from '../../src/print/impose.js';
import { A4, LETTER, mm } from '../../src/print/sheet.js';

interface Stroke {
  readonly x: number;
  readonly toX: number;
  readonly from: number;
  readonly to: number;
}

const strokesOf = (operators: string): readonly Stroke[] =>
  [...operators.matchAll(/([\d.]+) ([\d.]+) m ([\d.]+) ([\d.]+) l/g)].map((found) => {
    const [x = 0, from = 0, toX = 0, to = 0] = found.slice(1).map(Number);
    return { x, from, toX, to };
  });

describe.each([
  ['A4', A4.height, A4.width],
  ['Letter', LETTER.height, LETTER.width],
] as const)('on %s', (_, width, height) => {
  const marksOf = (marks: Marks): readonly Stroke[] => strokesOf(foldMarks(marks, width, height));

  test('all of them stand on the fold', () => {
    for (const { x, toX } of [...marksOf('staples'), ...marksOf('holes')]) {
      expect(x).toBeCloseTo(width / 2, 2);
      expect(toX).toBeCloseTo(width / 2, 2);
    }
  });

  test('a tick at head and foot, where a printer still prints', () => {
    for (const marks of ['staples', 'holes'] as const) {
      const [foot, head] = marksOf(marks);
      expect(foot?.from).toBeCloseTo(mm(5), 2);
      expect(foot?.to).toBeCloseTo(mm(9), 2);
      expect(head?.from).toBeCloseTo(height - mm(9), 2);
      expect(head?.to).toBeCloseTo(height - mm(5), 2);
    }
  });

  test('two staples of 12 mm, a quarter of the height from either end', () => {
    const [, , ...staples] = marksOf('staples');
    expect(staples).toHaveLength(2);
    for (const [i, { from, to }] of staples.entries()) {
      expect(to - from).toBeCloseTo(mm(12), 2);
      expect((from + to) / 2).toBeCloseTo(height * (i === 0 ? 0.25 : 0.75), 2);
    }
  });

  test('three holes, in the middle and a sixth of the height from either end', () => {
    const [, , ...holes] = marksOf('holes');
    expect(holes.map(({ from }) => Math.round((from / height) * 600))).toEqual([100, 300, 500]);
    for (const { from, to } of holes) expect(to).toBe(from);
  });

  test('none where none are asked for', () => {
    expect(foldMarks('none', width, height)).toBe('');
  });
});

test('staples are marked outside on the outermost sheet, holes inside on the innermost', () => {
  const sheetsOf = (pages: number) =>
    sidesOf(imposeFolded(pages, 'left')).map(({ front, back }) => [front.marks, back.marks]);
  expect(sheetsOf(4)).toEqual([['staples', 'holes']]);
  expect(sheetsOf(12)).toEqual([
    ['staples', 'none'],
    ['none', 'none'],
    ['none', 'holes'],
  ]);
});

/**
 * How far joints go, against two tables: the plates of the United States' rating schedule, 38 CFR 4.71 (a public
 * regulation), and the American Academy of Orthopaedic Surgeons (1965; from memory).
 */
import { expect, test } from 'vitest';
import { KEPT, LENIENCE, MOST, RANGES, SPINE_RANGES } from '../../src/figures/ranges.js';
import type { JointMotion } from '../../src/model/problems-figures.js';

const TABLES: readonly (readonly [motion: JointMotion, schedule: number | undefined, academy: number | undefined])[] = [
  ['hip flexion', 125, 120],
  ['hip extension', 30, 30],
  ['hip abduction', 45, 45],
  ['hip turned in', 40, 45],
  ['hip turned out', 60, 45],
  ['knee flexion', 140, 135],
  ['ankle drawn up', 20, 20],
  ['ankle pointed', 45, 50],
  ['shoulder flexion', 180, 180],
  ['shoulder extension', undefined, 60],
  ['shoulder abduction', 180, 180],
  ['shoulder turned in', 90, 70],
  ['shoulder turned out', 90, 90],
  ['elbow flexion', 145, 150],
  // The academy's from memory, the schedule's seen.
  ['hip adduction', 25, 30],
  // Both from memory; the schedule's are its normal ranges of the spine's two parts (4.71a, general rating formula).
  ['bend of the trunk', 90, 80],
  ['arch of the trunk', 30, 30],
  ['side bend of the trunk', 30, 35],
  ['turn of the chest', 30, 45],
  ['nod of the head', 45, 45],
  ['lift of the head', 45, 45],
  ['turn of the head', 80, 60],
];

test.each(TABLES)('%s: the larger of the tables', (motion, schedule, academy) => {
  expect(MOST[motion]).toBe(Math.max(schedule ?? 0, academy ?? 0));
});

const judged = new Set(
  [...RANGES, ...SPINE_RANGES].flatMap(({ more, less }) => [more, less]).filter((motion) => motion !== undefined),
);

test('what is judged is what the tables have', () => {
  expect([...judged].sort()).toEqual(TABLES.map(([motion]) => motion).sort());
  expect(Object.keys(MOST).sort()).toEqual([...judged].sort());
});

test('nothing is sought where it would be complained of by more than two degrees', () => {
  for (const { angle, more, less } of RANGES) {
    const [least, most] = KEPT[angle];
    if (more !== undefined) expect(most).toBeLessThanOrEqual(MOST[more] + LENIENCE + 2);
    if (less !== undefined) expect(-least).toBeLessThanOrEqual(MOST[less] + LENIENCE + 2);
  }
});

/** An author's sheet: it measures what is drawn, and marks what `check` tells and nothing else. */
import { expect, test } from 'vitest';
import { checkPoses } from '../../src/figures/check-poses.js';
import { poseBodies } from '../../src/figures/pose-body.js';
import { poseSheet } from '../../src/figures/pose-sheet.js';
import type { Pose } from '../../src/model/pose.js';
import type { SheetPosition } from '../../src/model/pose-sheet.js';
import { exercise } from '../fixtures/library.js';
import { both, limb, pose } from './some-poses.js';

function sheetOf(poses: readonly Pose[]): readonly SheetPosition[] {
  return poseSheet({ ...exercise('sink', 'Sink', {}, {}), poses })?.positions ?? [];
}

const isMarked = ({ joints, trunk }: SheetPosition): boolean =>
  joints.some(({ beyond }) => beyond.left || beyond.right) || trunk.some(({ beyond }) => beyond);

const kneels = (lean: number, knee: number): Partial<Pose> => ({
  contacts: limb('knee'),
  trunk: { lean },
  hips: both({ flex: 0 }),
  knees: both(knee),
});

test.each<[string, Partial<Pose>, readonly string[]]>([
  ['stands', {}, []],
  ['falls forwards', kneels(45, 60), ['stands']],
  ['bends the trunk too far', { trunk: { bend: 120 }, moving: true }, ['marked']],
  ['bends a said knee too far', { contacts: limb('knee'), knees: both(165), moving: true }, ['marked']],
  [
    'plants its feet under the chest',
    {
      contacts: [...limb('forearm'), ...limb('foot')],
      trunk: { lying: 'face down' },
      hips: both({ flex: 0 }),
      knees: both(0),
    },
    ['marked'],
  ],
])('who %s is marked as it is told', (_, change, marks) => {
  const poses = [pose('a'), pose('b', change)];
  const told = checkPoses(poseBodies(poses));
  const [, position] = sheetOf(poses);
  if (!position) throw new RangeError('two positions make two sheets');
  const codes = told.map(({ code }) => code);
  expect([...(position.stands === 'no' ? ['stands'] : []), ...(isMarked(position) ? ['marked'] : [])]).toEqual(marks);
  expect(codes.includes('pose-falls')).toBe(marks.includes('stands'));
  expect(codes.includes('pose-joint-beyond')).toBe(marks.includes('marked'));
});

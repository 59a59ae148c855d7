/** What is told of drawn positions, and what of an exercise's words they are held to. */
import { describe, expect, test } from 'vitest';
import { checkFigures } from '../../src/app/check-figures.js';
import { readFigureAsks } from '../../src/content/read-figure-asks.js';
import { creaseAbove } from '../../src/figures/check-asked.js';
import { checkPoses } from '../../src/figures/check-poses.js';
import { poseBodies } from '../../src/figures/pose-body.js';
import { bodyOf } from '../../src/figures/skeleton.js';
import { fallOf, supportOf } from '../../src/figures/support.js';
import { BODY_SIDES, type Contact } from '../../src/model/pose.js';
import { plainLine } from '../../src/model/prose.js';
import { readDemo } from '../studio/demo-library.js';
import { bent, both, limb, pose, postureOf } from './some-poses.js';

const asks = (text: string) =>
  readFigureAsks({ setUp: [], cues: [{ phase: 'bottom', line: plainLine(text) }] }).map(({ asks: asked }) => asked);

describe('words that ask something of a drawing', () => {
  test.each([
    ['Hips below the knees.', { what: 'deep', wanted: 'below' }],
    ['Crease of the hip lower than the top of the knee.', { what: 'deep', wanted: 'below' }],
    ['Sit till the thighs are … thighs level.', { what: 'deep', wanted: 'level with' }],
    ['Arms straight, chest proud.', { what: 'straight', limb: 'arm', both: true }],
    ['Arms as straight as ropes.', { what: 'straight', limb: 'arm', both: true }],
    ['Straighten the arm below you.', { what: 'straight', limb: 'arm', both: false }],
    ['Elbow locked, ear clear.', { what: 'straight', limb: 'arm', both: false }],
    ['Knees straight but not locked.', { what: 'straight', limb: 'leg', both: true }],
    ['Lie down, arms straight up.', { what: 'straight', limb: 'arm', both: true }],
  ])('%s', (text, asked) => {
    expect(asks(text)).toEqual([asked]);
  });

  test.each([
    'Never let the hips drop below the knees.',
    'Do not lock your elbows.',
    'Don’t straighten your arms.',
    'Elbows straight back, past the ribs.',
    'Send it straight up.',
    'Elbows unlocked.',
    'Stop before the arms are straight.',
    'Knees straight on over the toes.',
    'Push the floor away.',
  ])('asks nothing: %s', (text) => {
    expect(asks(text)).toEqual([]);
  });

  test('a cue of no phase asks nothing, a set-up asks of the first position', () => {
    const words = { setUp: [plainLine('Arms straight.')], cues: [{ phase: '', line: plainLine('Arms straight.') }] };
    expect(readFigureAsks(words).map(({ phase }) => phase)).toEqual([undefined]);
  });
});

// Technical rules of powerlifting: the top surface of the legs at the hip joint lower than the top of the knees.
describe('depth of a squat', () => {
  test('with level bones the crease is above the knee: not yet deep', () => {
    const above = creaseAbove(bent({ 'left hip flex': 90, 'right hip flex': 90, 'left knee': 90, 'right knee': 90 }));
    expect(above).toBeGreaterThan(0);
    expect(above).toBeLessThan(3);
  });

  test('with thighs ten degrees below level it is deep', () => {
    const angles = { 'left hip flex': 100, 'right hip flex': 100, 'left knee': 100, 'right knee': 100 } as const;
    expect(creaseAbove(bodyOf(postureOf(angles)))).toBeLessThan(0);
  });
});

describe('whether a figure would stand', () => {
  const one = (change: Parameters<typeof pose>[1]) => {
    const [posed] = poseBodies([pose('a', change)]);
    if (!posed) throw new RangeError('one position gives one body');
    return posed;
  };

  test('somebody who stands on two feet does, over a foot’s length and the stance with a foot’s breadth', () => {
    const { pose: stood, body } = one({ feet: { ...both({}), apart: 30 } });
    expect(fallOf(stood, body)).toBeUndefined();
    const corners = supportOf(stood, body);
    const across = corners.map(([, z]) => z);
    expect(Math.max(...across) - Math.min(...across)).toBeGreaterThan(30 + 9.6);
    const along = corners.map(([x]) => x);
    expect(Math.max(...along) - Math.min(...along)).toBeGreaterThan(26.6);
  });
});

test('a position in mid-movement is not asked whether it would stand', () => {
  const knees = { contacts: [...limb('knee')], hips: both({ flex: 0 }) };
  const codes = (moving: boolean) =>
    checkPoses(
      poseBodies([
        pose('a', { ...knees, trunk: { lean: 0 }, knees: both(90) }),
        pose('b', { ...knees, trunk: { lean: 45 }, knees: both(60), moving }),
      ]),
    ).map(({ code }) => code);
  expect(codes(false)).toContain('pose-falls');
  expect(codes(true)).not.toContain('pose-falls');
});

test('a chair that is leant on bears the body where it stands, and no further', () => {
  const leaning = (ahead: number) => {
    const contacts = [...limb('knee'), ...limb('hand', 'chair')];
    const kit = [{ kind: 'chair', high: 60, ahead } as const];
    const upright = { trunk: { lean: 0 }, hips: both({ flex: 0 }), knees: both(90) };
    const forward = { trunk: { lean: 45 }, hips: both({ flex: 0 }), knees: both(60), elbows: both(0) };
    return checkPoses(
      poseBodies([pose('a', { contacts, kit, ...upright }), pose('b', { contacts, kit, ...forward })]),
    ).map(({ code }) => code);
  };
  expect(leaning(50)).not.toContain('pose-falls');
  expect(leaning(0)).toContain('pose-falls');
});

test('a toe inside a step is told, one before it is not', () => {
  const before = (ahead: number) =>
    checkPoses(poseBodies([pose('a', { kit: [{ kind: 'step', high: 20, ahead }] })])).map(({ code }) => code);
  expect(before(50)).toEqual([]);
  expect(before(40)).toEqual(['pose-through']);
});

describe('trunk and neck are held to their ranges', () => {
  test.each([
    [{ trunk: { bend: 120 } }, 'bend of the trunk', 'Trunk'],
    [{ trunk: { bend: -60 } }, 'arch of the trunk', 'Trunk'],
    [{ trunk: { sideBend: -60 } }, 'side bend of the trunk', 'Trunk'],
    [{ trunk: { turn: 80 } }, 'turn of the chest', 'Trunk'],
    [{ head: { nod: 70 } }, 'nod of the head', 'Head'],
    [{ head: { nod: -70 } }, 'lift of the head', 'Head'],
    [{ head: { turn: -110 } }, 'turn of the head', 'Head'],
  ] as const)('%#: %s', (change, motion, column) => {
    const cell = { file: 'a.md', line: 9, column: 3 };
    const found = checkPoses(poseBodies([pose('a', { ...change, moving: true, cells: { [column]: cell } })]));
    const [beyond, ...others] = found.filter(({ code }) => code === 'pose-joint-beyond');
    expect(others).toEqual([]);
    expect(beyond?.data).toMatchObject({ position: 'a', motion });
    expect(beyond?.data).not.toHaveProperty('side');
    expect(beyond?.place).toEqual(cell);
  });

  test('and no sooner', () => {
    const within = { trunk: { bend: 60, turn: 40 }, head: { nod: 40, turn: 80 }, moving: true };
    expect(checkPoses(poseBodies([pose('a', within)])).map(({ code }) => code)).toEqual([]);
  });
});

test('a foot that would have to go through the floor is told, with which part and how far', () => {
  const onHeels = (point: number) =>
    checkPoses(
      poseBodies([
        pose('a', {
          contacts: BODY_SIDES.map((side): Contact => ({ part: 'heel', side, on: 'floor' })),
          trunk: { lean: 0 },
          knees: both(0),
          ankles: both(-point),
        }),
      ]),
    ).filter(({ code }) => code === 'pose-through');
  expect(onHeels(-10)).toEqual([]);
  const [found, ...others] = onHeels(40);
  expect(others).toEqual([]);
  expect(found?.data).toMatchObject({ part: 'left foot', on: 'floor' });
});

test('the demo’s own positions have nothing to mend', async () => {
  const { library } = await readDemo();
  expect(library.exercises.length).toBeGreaterThan(0);
  expect(library.exercises.filter(({ poses }) => poses.length < 2).map(({ id }) => id)).toEqual([]);
  const found = checkFigures(library.exercises).map(({ code, place, data }) => ({
    code,
    line: `${place?.file}:${place?.line}`,
    data,
  }));
  expect(found).toEqual([]);
});

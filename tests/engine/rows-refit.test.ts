/** A version that a row was not written for: its dose, its effort, and a version begun with because it was tested. */
import { describe, expect, test } from 'vitest';
import type { Client } from '../../src/model/client.js';
import type { Dose, Effort } from '../../src/model/dose.js';
import type { Exercise } from '../../src/model/exercise.js';
import type { Plan } from '../../src/model/plan.js';
import { sayReason } from '../../src/words/say-reason.js';
import { speechOf } from '../../src/words/speech.js';
import { aLink, anExercise, aTest, aWay, bodyweight, kg, type MadeExercise, on, oneSession } from './make-block.js';
import { codes, itemsOf, planOf, withRow } from './rows-made.js';

const sets: Dose = { kind: 'sets', sets: 3, reps: { min: 6, max: 10 }, eachSide: false };
const timed: Dose = { kind: 'timed', sets: 3, seconds: { min: 20, max: 30 }, eachSide: false };
const signals: Dose = { kind: 'every', minutes: 10, reps: 8, everySeconds: 60 };
const talk: Effort = { kind: 'talk', level: 'sentences' };
const reserve: Effort = { kind: 'reserve', tenths: 50 };
const told = (plan: Plan, rule: string) =>
  plan.findings.filter((finding) => finding.rule === rule).map(({ reason }) => reason.inputs.map(({ value }) => value));

/** A row of `squat` that nobody has passed, so that `other` is done. */
const instead = (from: MadeExercise, to: MadeExercise): readonly Exercise[] => [
  anExercise('squat', { signOff: true, easier: [aLink('other')], ...from }),
  anExercise('other', to),
];
const swing: MadeExercise = { way: 'swing' };
const hold: MadeExercise = { ...bodyweight, way: 'hold' };
const carry: MadeExercise = { way: 'carry' };

describe('a dose that the version does not take (dose-of-version)', () => {
  const sizes = (dose: Dose, from: MadeExercise, to: MadeExercise) => {
    const plan = planOf(withRow({ dose }), { tests: [] }, instead(from, to));
    const [item] = itemsOf(plan);
    const { min, max, unit, sets: count } = item?.asked ?? {};
    return [item?.exercise, count, min, max, unit, told(plan, 'dose-of-version')[0]];
  };

  test('becomes plain sets of reps, or of seconds for a hold or a carry', () => {
    // Three seconds a rep (2 down, 1 up): 6 to 10 of them are 18 to 30 seconds.
    expect(sizes(sets, {}, carry)).toEqual(['other', 3, 18, 30, 'seconds', ['other', 'sets', 3]]);
    // 8 at each of ten signals, or half as many: five sets of 12 to 24 seconds.
    expect(sizes(signals, swing, hold)).toEqual(['other', 5, 12, 24, 'seconds', ['other', 'every', 5]]);
    const two: Dose = { kind: 'main-next', main: 15, next: 5 };
    expect(sizes(two, swing, {})).toEqual(['other', 1, 8, 15, 'reps', ['other', 'main-next', 1]]);
    // A metre takes a second and a half, a rep three: 20 to 40 m are 30 to 60 s, 10 to 20 reps.
    const far: Dose = { kind: 'distance', sets: 3, metres: { min: 20, max: 40 }, eachSide: false };
    expect(sizes(far, carry, {})).toEqual(['other', 3, 10, 20, 'reps', ['other', 'distance', 3]]);
  });

  test('one that it takes stays as written', () => {
    expect(sizes(signals, {}, {})).toEqual(['other', 10, 8, 8, 'reps', undefined]);
    expect(sizes(timed, {}, hold)).toEqual(['other', 3, 20, 30, 'seconds', undefined]);
  });

  test('is still an error where it was written for the exercise itself', () => {
    expect(codes(withRow({ dose: { kind: 'rounds', rounds: 3 } }))).toEqual(['dose-for-way']);
  });
});

describe('an effort that is not for the version (effort-of-version)', () => {
  test('gives way to the curve', () => {
    const plan = planOf(
      withRow({ effort: talk }),
      { tests: [aTest('other', 10, { load: kg('16') })] },
      instead(swing, {}),
    );
    expect(itemsOf(plan).map(({ asked }) => asked.reserve)).toEqual([30, 30, 20, 20, 20, 40]);
    expect(told(plan, 'effort-of-version')).toEqual([['other', 'talk']]);
    const reason = itemsOf(plan)[0]?.reasons.find(({ rule }) => rule === 'effort-of-version');
    expect(reason && sayReason(reason, 'coach', speechOf('en-GB'))).toContain('by the breath');
  });

  test('on a ladder is none at all', () => {
    const plan = planOf(withRow({ effort: reserve }), { tests: [] }, instead({}, hold));
    expect(itemsOf(plan)[0]).toMatchObject({ exercise: 'other', asked: { reserve: null } });
    expect(told(plan, 'effort-of-version')).toEqual([['other', 'reserve']]);
  });

  test('one that fits is kept, and one that did not fit the exercise itself is an error all the same', () => {
    const kept = planOf(withRow({ effort: reserve }), { tests: [] }, instead({}, {}));
    expect(itemsOf(kept)[0]?.asked.reserve).toBe(50);
    expect(told(kept, 'effort-of-version')).toEqual([]);
    expect(codes(withRow({ effort: talk }), {}, instead({}, {}))).toEqual(['effort-for-way']);
    expect(codes(withRow({ effort: { kind: 'rpe', tenths: 60 } }), {}, instead({}, {}))).toEqual([
      'effort-not-readable',
    ]);
  });
});

describe('an easier version that was tested (begin-tested)', () => {
  const share = (of: number) => ({ bodyShare: { share: of, standing: 'practice', source: 'made up' } }) as const;
  const pushUps = (top: MadeExercise = {}, knees: MadeExercise = {}) => [
    anExercise('squat', { ...bodyweight, ...share(640), easier: [aLink('knees')], ...top }),
    anExercise('knees', { ...bodyweight, ...share(490), easier: [aLink('wall'), aWay('slow')], ...knees }),
    anExercise('wall', { ...bodyweight, ...share(300) }),
  ];
  const firstOf = (client: Partial<Client>, exercises: readonly Exercise[]) => {
    const plan = planOf(oneSession('squat'), client, exercises);
    const [item] = itemsOf(plan);
    return [item?.exercise, item?.sets[0]?.kind, told(plan, 'begin-tested')[0]];
  };

  test('is begun with, the nearest first, and no feeler set of the harder one', () => {
    expect(firstOf({ tests: [aTest('knees', 10)] }, pushUps())).toEqual(['knees', 'work', ['knees', 'squat']]);
    expect(firstOf({ tests: [aTest('wall', 10)] }, pushUps())).toEqual(['wall', 'work', ['wall', 'squat']]);
    const both = [aTest('wall', 10), aTest('knees', 10)];
    expect(firstOf({ tests: both }, pushUps())[0]).toBe('knees');
  });

  test('not where nothing was tested, the row’s own was, or it is of another pattern', () => {
    expect(firstOf({ tests: [] }, pushUps())).toEqual(['squat', 'feeler', undefined]);
    expect(firstOf({ tests: [aTest('squat', 10), aTest('knees', 10)] }, pushUps())[0]).toBe('squat');
    expect(firstOf({ tests: [aTest('knees', 10)] }, pushUps({}, { pattern: 'push' }))[0]).toBe('squat');
  });

  test('not where its test passes on and leaves enough; where it leaves too little, it is', () => {
    const bodyMass = { mass: kg('70'), date: on('2026-12-01') };
    // By Epley 26 × 0.49 from the knees are about 13 of the others; 9 are about none.
    expect(firstOf({ bodyMass, tests: [aTest('knees', 24)] }, pushUps())[0]).toBe('squat');
    expect(firstOf({ bodyMass, tests: [aTest('knees', 9)] }, pushUps())[0]).toBe('knees');
  });

  test('not for what can be felt with a lighter load', () => {
    const loaded = [anExercise('squat', { easier: [aLink('knees')] }), ...pushUps().slice(1)];
    expect(firstOf({ tests: [aTest('knees', 10)] }, loaded)).toEqual(['squat', 'feeler', undefined]);
  });
});

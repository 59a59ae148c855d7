/** What the coach saw: each phrase, what of it stands on which day, and what a planned block becomes of it. */
import { describe, expect, it, test } from 'vitest';
import { exercisesById } from '../../src/engine/block-context.js';
import { NO_RECALL, type Recall } from '../../src/engine/history/recall.js';
import { remember } from '../../src/engine/history/remember.js';
import { planBlock } from '../../src/engine/plan-block.js';
import { layOverrides } from '../../src/engine/rulebook.js';
import type { Client, Observation, Seen } from '../../src/model/client.js';
import { isoOfDay } from '../../src/model/day.js';
import type { Version } from '../../src/model/exercise.js';
import { NO_HISTORY } from '../../src/model/history.js';
import { exerciseId } from '../../src/model/identity.js';
import type { Plan } from '../../src/model/plan.js';
import type { TempoStep } from '../../src/model/programme.js';
import type { RuleOverride } from '../../src/model/studio.js';
import { PLACE } from './generate-exercises.js';
import {
  aBlock,
  aClient,
  aLibrary,
  aLink,
  anExercise,
  aProgramme,
  aRow,
  aSession,
  ask,
  aTest,
  aWay,
  bells,
  bodyweight,
  kg,
  on,
} from './make-block.js';

const today = on('2026-12-28');

const saw = (phrase: Seen, observation: Partial<Observation> = {}): Observation => ({
  date: on('2026-12-27'),
  exercise: exerciseId('squat'),
  side: 'both',
  seen: phrase,
  means: { kind: 'phrase', phrase },
  place: PLACE,
  ...observation,
});
const pain = (degree: number, observation: Partial<Observation> = {}): Observation =>
  saw('heavy', { means: { kind: 'pain', where: 'knee', degree }, ...observation });
const cleared = (date: string, observation: Partial<Observation> = {}): Observation =>
  saw('heavy', { date: on(date), means: { kind: 'cleared' }, ...observation });

const swing = anExercise('swing', { way: 'swing', asks: [ask('speed', 'much')], pattern: 'hinge' });
const rock = anExercise('rock', {
  ...bodyweight,
  way: 'mobility',
  sides: 'each',
  pattern: 'mobility',
  rehearses: ['squat'],
});
const chair = anExercise('chair');
const squat = anExercise('squat', { asks: [ask('knee')], easier: [aLink('chair', ['load'])] });
const EXERCISES = [squat, chair, swing];

function recallOf(
  observations: readonly Observation[],
  client: Partial<Client> = {},
  on = today,
  overrides: readonly RuleOverride[] = [],
): Recall {
  const { recalls } = remember({
    client: aClient({ observations, ...client }),
    history: NO_HISTORY,
    exercises: exercisesById(EXERCISES),
    rules: layOverrides(overrides).value,
    today: on,
  });
  return recalls.get(exerciseId('squat')) ?? recalls.get(exerciseId('swing')) ?? NO_RECALL;
}

/** What differs from nothing, in the words of a coach. */
function told(recall: Recall): string {
  const { weak, lighter, earned, hold, floor, tempo, side } = recall;
  return [
    weak ? 'weak' : '',
    lighter > 0 ? `${lighter} lighter` : '',
    earned > 0 ? `earned ${earned}` : '',
    hold === null ? '' : `held to ${isoOfDay(hold.until)}`,
    floor === null ? '' : `${floor.reserve / 10} left to ${isoOfDay(floor.until)}`,
    tempo ?? '',
    side ?? '',
  ]
    .filter((part) => part !== '')
    .join(', ');
}

const rulesOf = ({ reasons }: Recall): readonly string[] => [...new Set(reasons.map(({ rule }): string => rule))];

describe('each phrase', () => {
  test.each<[Seen, string, string]>([
    ['new to the movement', 'seen-new', 'weak, 1 lighter, held to 2027-01-17'],
    ['light', 'seen-light', 'earned 2'],
    ['heavy', 'seen-heavy', '1 lighter'],
    ['missed reps', 'seen-missed-reps', '1 lighter, 3 left to 2027-01-17'],
    ['hurrying', 'seen-hurrying', 'held to 2027-01-17, slow lowering'],
    ['holds the breath', 'seen-breath', 'held to 2027-01-17, 3 left to 2027-01-17'],
    ['loses balance', 'seen-balance', 'held to 2027-01-17'],
    ['grip goes first', 'seen-grip', '1 lighter'],
  ])('%s', (phrase, rule, says) => {
    const recall = recallOf([saw(phrase)]);
    expect(told(recall)).toBe(says);
    expect(rulesOf(recall)).toEqual([rule]);
  });

  it('shorter on one side: that side leads', () => {
    const recall = recallOf([saw('shorter on one side', { side: 'left' })]);
    expect(told(recall)).toBe('held to 2027-01-17, left');
    expect(rulesOf(recall)).toEqual(['seen-shorter-side']);
  });

  it('a fast lift new to somebody is not begun lighter', () => {
    const recall = recallOf([saw('new to the movement', { exercise: exerciseId('swing') })]);
    expect(told(recall)).toBe('weak, held to 2027-01-17');
  });

  it('one rep above the floor of who it is', () => {
    const novice = { experience: 'novice' } as const;
    expect(told(recallOf([saw('holds the breath')], novice))).toContain('4 left');
    expect(told(recallOf([saw('holds the breath')], { birthYear: 1950 }))).toContain('4 left');
  });

  it('several of one day hold together; light beside anything careful says nothing', () => {
    expect(told(recallOf([saw('heavy'), saw('hurrying')]))).toBe('1 lighter, held to 2027-01-17, slow lowering');
    expect(told(recallOf([saw('light'), saw('hurrying')]))).toBe('held to 2027-01-17, slow lowering');
  });
});

describe('the values that several of them share', () => {
  test.each([
    ['seen-hold-days', 7, 'held to 2027-01-10, 3 left to 2027-01-10'],
    ['seen-reserve', 20, 'held to 2027-01-17, 4 left to 2027-01-17'],
  ])('%s, as the coach has it', (rule, value, says) => {
    const own = { rule, value, reason: 'to see what it does', place: PLACE };
    expect(told(recallOf([saw('holds the breath')], {}, today, [own]))).toBe(says);
  });

  it('pain that was seen is never left unread by a value of the coach’s own', () => {
    const off = { rule: 'seen-pain', value: 0, reason: 'no', place: PLACE };
    expect(layOverrides([off]).problems.map(({ code }) => code)).toEqual(['rule-out-of-range']);
    expect(recallOf([pain(4)], {}, today, [off]).leave).not.toBeNull();
  });
});

describe('what stands', () => {
  it('seen-days: on the last of 42 days, and no longer', () => {
    expect(told(recallOf([saw('heavy', { date: on('2026-11-16') })]))).toBe('1 lighter');
    expect(recallOf([saw('heavy', { date: on('2026-11-15') })])).toBe(NO_RECALL);
    expect(layOverrides([]).value.rows.find(({ id }) => id === 'seen-days')?.value).toBe(42);
  });

  it('seen today, never tomorrow', () => {
    expect(told(recallOf([saw('heavy', { date: today })]))).toBe('1 lighter');
    expect(recallOf([saw('heavy', { date: on('2026-12-29') })])).toBe(NO_RECALL);
  });

  it('seen-hold-days: from the day seen where the block has begun before', () => {
    const late = on('2027-01-12');
    expect(told(recallOf([saw('hurrying', { date: on('2027-01-11') })], {}, late))).toContain('held to 2027-01-24');
  });

  it('a later day takes the place of an earlier one, in whichever order they are written', () => {
    const before = saw('heavy', { date: on('2026-12-20') });
    expect(told(recallOf([before, saw('hurrying')]))).toBe('held to 2027-01-17, slow lowering');
    expect(told(recallOf([saw('hurrying'), before]))).toBe('held to 2027-01-17, slow lowering');
  });

  it('seen-well: ends what was seen before, and says so to the coach alone', () => {
    const recall = recallOf([saw('heavy', { date: on('2026-12-20') }), saw('moves well')]);
    expect(told(recall)).toBe('');
    expect(recall.reasons.map(({ rule, audience }) => [rule, audience])).toEqual([['seen-well', 'coach']]);
    expect(recallOf([saw('moves well')])).toEqual({ ...NO_RECALL, reasons: [] });
  });

  it('a later test goes before what was seen of a load, and not before how it moves', () => {
    const tests = [aTest('squat', 10, { load: kg('16'), date: today })];
    expect(told(recallOf([saw('heavy')], { tests }))).toBe('');
    expect(told(recallOf([saw('light')], { tests }))).toBe('');
    expect(told(recallOf([saw('new to the movement')], { tests }))).toBe('weak, held to 2027-01-17');
    expect(told(recallOf([saw('hurrying')], { tests }))).toBe('held to 2027-01-17, slow lowering');
    const sameDay = [aTest('squat', 10, { load: kg('16'), date: on('2026-12-27') })];
    expect(told(recallOf([saw('heavy')], { tests: sameDay }))).toBe('1 lighter');
  });

  it('free text, and an exercise that the library has not, say nothing', () => {
    expect(recallOf([saw('heavy', { means: { kind: 'free' } })])).toBe(NO_RECALL);
    expect(recallOf([saw('heavy', { exercise: exerciseId('unknown') })])).toBe(NO_RECALL);
  });
});

const TEMPI: readonly TempoStep[] = ['normal', 'slow lowering'];
const tests = [aTest('squat', 10, { load: kg('16') }), aTest('chair', 12, { load: kg('16') })];
const week = (reserve: number, share = 1000, easy = false) => ({ reserve, share, easy });
const programme = aProgramme([aSession('A', aBlock([aRow('squat', { tempi: TEMPI, trials: false })]))], {
  curve: [week(20), week(20), week(20), week(20), week(40, 670, true)],
});

interface Made {
  readonly exercises?: Parameters<typeof aLibrary>[0];
  readonly client?: Partial<Client>;
}

function planOf(observations: readonly Observation[], { exercises = EXERCISES, client = {} }: Made = {}): Plan {
  const input = aClient({ tests, observations, ...client });
  const { value, problems } = planBlock({ library: aLibrary(exercises, programme), client: input, today, edition: 0 });
  if (value === null) throw new Error(JSON.stringify(problems));
  return value;
}

/** `squat 9 @ 16` of each week's first work set; `slow` where the lowering is, and the week in brackets where it is easy. */
function weeksOf(plan: Plan): readonly string[] {
  return plan.weeks.map(({ sessions }) => {
    const item = sessions[0]?.groups
      .flatMap(({ items }) => items)
      .find(({ sets }) => sets.some((s) => s.kind === 'work'));
    const set = item?.sets.find(({ kind }) => kind === 'work');
    const load = set?.load?.grams === undefined ? '' : ` @ ${set.load.grams / 1000}`;
    return `${item?.exercise ?? ''}${item?.tempo === 'slow lowering' ? ' slow' : ''} ${set?.reps ?? '?'}${load}`;
  });
}

const reasonsIn = (plan: Plan): readonly string[] => [
  ...new Set(
    plan.weeks.flatMap(({ sessions }) =>
      sessions.flatMap(({ groups }) =>
        groups.flatMap(({ items }) => items.flatMap(({ reasons }) => reasons.map(({ rule }): string => rule))),
      ),
    ),
  ),
];

/** With bells so near each other that the next one is a small step. */
const near = { client: { kit: bells('16', '17', '18') } };

describe('a planned block, before and after', () => {
  // 16 kg × 10 with 2 left is 16 × (300 + 120) = 6720: 12 reps to failure at 16 kg, 26 at 12 kg.
  const before = ['squat 10 @ 16', 'squat 10 @ 16', 'squat slow 7 @ 16', 'squat slow 8 @ 16', 'squat slow 6 @ 16'];
  const lighter = ['squat 10 @ 12', 'squat 10 @ 12', 'squat 8 @ 16', 'squat 9 @ 16', 'squat 9 @ 16'];
  const slower = [
    'squat slow 7 @ 16',
    'squat slow 7 @ 16',
    'squat slow 7 @ 16',
    'squat slow 8 @ 16',
    'squat slow 6 @ 16',
  ];

  it('nothing seen', () => expect(weeksOf(planOf([]))).toEqual(before));

  test.each<[string, Seen, readonly string[]]>([
    // Back at the tested bell once it is earned.
    ['seen-heavy', 'heavy', lighter],
    ['seen-grip', 'grip goes first', lighter],
    ['seen-missed-reps', 'missed reps', lighter],
    // Weak: no big step on a guess.
    [
      'seen-new',
      'new to the movement',
      ['squat 10 @ 12', 'squat 10 @ 12', 'squat slow 10 @ 12', 'squat slow 10 @ 12', 'squat slow 10 @ 12'],
    ],
    ['seen-hurrying', 'hurrying', slower],
    // One rep fewer in the weeks to 17 January; then the top has to be earned first.
    [
      'seen-breath',
      'holds the breath',
      ['squat 9 @ 16', 'squat 9 @ 16', 'squat 10 @ 16', 'squat 10 @ 16', 'squat 9 @ 16'],
    ],
    // The next bell is out of reach, so what is earned goes into the lowering.
    ['seen-light', 'light', slower],
    ['seen-well', 'moves well', before],
  ])('%s', (_, phrase, after) => {
    expect(weeksOf(planOf([saw(phrase)]))).toEqual(after);
  });

  it('bells so near that the next one is a small step: held for 14 days, or open at once', () => {
    const rises = ['squat 10 @ 16', 'squat 7 @ 17', 'squat 7 @ 17', 'squat 8 @ 17', 'squat 6 @ 17'];
    const held = ['squat 10 @ 16', 'squat 10 @ 16', 'squat 7 @ 17', 'squat 8 @ 17', 'squat 6 @ 17'];
    const open = ['squat 7 @ 17', 'squat 7 @ 17', 'squat 7 @ 17', 'squat 8 @ 17', 'squat 6 @ 17'];
    expect(weeksOf(planOf([], near))).toEqual(rises);
    for (const phrase of ['loses balance', 'shorter on one side'] as const) {
      expect(weeksOf(planOf([saw(phrase, { side: 'left' })], near))).toEqual(held);
    }
    expect(weeksOf(planOf([saw('light')], near))).toEqual(open);
  });

  it('says why beside the row, to the coach and to the client', () => {
    expect(reasonsIn(planOf([saw('heavy')]))).toContain('seen-heavy');
    expect(reasonsIn(planOf([saw('hurrying')]))).toContain('seen-hurrying');
  });

  it('nothing seen that stands leaves the plan as it was, to the byte', () => {
    const none = JSON.stringify(planOf([]));
    for (const one of [
      saw('heavy', { means: { kind: 'free' } }),
      saw('heavy', { date: on('2026-11-01') }),
      saw('moves well'),
      cleared('2026-12-27'),
    ]) {
      expect(JSON.stringify(planOf([one]))).toBe(none);
    }
  });
});

describe('seen-pain: pain that the coach saw', () => {
  it('is held, made easier or left out as marked pain is, until it is cleared', () => {
    const first = (observations: readonly Observation[]) => weeksOf(planOf(observations, near))[0];
    const second = (observations: readonly Observation[]) => weeksOf(planOf(observations, near))[1];
    expect(second([])).toBe('squat 7 @ 17');
    expect(second([pain(2, { date: today })])).toBe('squat 10 @ 16');
    expect(second([pain(2)])).toBe('squat 7 @ 17');
    expect(first([pain(3)])).toMatch(/^squat/);
    expect(first([pain(4)])).toMatch(/^chair/);
    expect(first([pain(4), cleared('2026-12-27')])).toBe(first([]));
    expect(first([pain(4), cleared('2026-12-26')])).toMatch(/^chair/);
    // Not by what was seen of the movement, nor by time alone.
    expect(first([pain(4), saw('moves well', { date: today })])).toMatch(/^chair/);
    expect(first([pain(4, { date: on('2026-10-01') })])).toMatch(/^chair/);
  });

  it('said of no exercise it is of all that ask that part', () => {
    const { exercise: _, ...nowhere } = pain(4);
    expect(weeksOf(planOf([nowhere]))[0]).toMatch(/^chair/);
  });

  it('cleared of one exercise is not cleared of another', () => {
    expect(weeksOf(planOf([pain(4), cleared('2026-12-27', { exercise: exerciseId('chair') })]))[0]).toMatch(/^chair/);
  });
});

describe('an easier version for what was lost', () => {
  const base = { asks: [ask('knee')], harder: [] } as const;
  const withEasier = (...easier: readonly Version[]) => [
    anExercise('squat', { ...base, easier }),
    chair,
    anExercise('box', { harder: [aLink('squat', [], 1000)] }),
  ];
  const first = (plan: Plan) => weeksOf(plan)[0];

  it('seen-balance: the version reached by a link that is for it, not the nearest one', () => {
    const exercises = withEasier(aLink('chair', ['load']), aLink('box', ['balance']));
    expect(first(planOf([], { exercises }))).toMatch(/^squat/);
    const plan = planOf([saw('loses balance')], { exercises });
    expect(first(plan)).toMatch(/^box/);
    expect(plan.findings.map(({ rule }): string => rule)).toContain('seen-balance');
    expect(weeksOf(plan).join(' ')).not.toContain('squat');
  });

  it('an easier way of its own first, unless an easier version for it was tested', () => {
    const exercises = withEasier(aLink('box', ['balance']), aWay('hold on', ['balance']));
    const done = (client: Partial<Client>) =>
      planOf([saw('loses balance')], { exercises, client }).weeks[0]?.sessions[0]?.groups.flatMap(({ items }) =>
        items.flatMap(({ exercise, done: way }) => (way === undefined ? [exercise] : [`${exercise}: ${way.way}`])),
      );
    expect(done({})).toEqual(['squat: squat#hold on']);
    expect(done({ tests: [...tests, aTest('box', 10, { load: kg('12') })] })).toEqual(['box']);
  });

  it('seen-grip: for the grip where there is one; else one load lighter', () => {
    const exercises = withEasier(aLink('chair', ['load']), aLink('box', ['grip']));
    expect(first(planOf([saw('grip goes first')], { exercises }))).toMatch(/^box/);
    expect(first(planOf([saw('grip goes first')]))).toBe('squat 10 @ 12');
  });

  it('not one of which the same was seen, and never back up while it stands', () => {
    const exercises = withEasier(aLink('chair', ['load']), aLink('box', ['balance']));
    const both = [saw('loses balance'), saw('loses balance', { exercise: exerciseId('box') })];
    expect(first(planOf(both, { exercises }))).toMatch(/^squat/);
    expect(first(planOf([saw('loses balance'), saw('moves well', { date: today })], { exercises }))).toMatch(/^squat/);
  });
});

describe('a drill for the side that reaches less', () => {
  const warmUp = (observations: readonly Observation[], exercises = [...EXERCISES, rock]) =>
    (planOf(observations, { exercises }).weeks[0]?.sessions[0]?.groups ?? [])
      .filter(({ kind }) => kind === 'warm-up')
      .flatMap(({ items }) =>
        items.map(
          ({ exercise, sets }) =>
            `${exercise} ${sets
              .filter(({ round }) => round === 1)
              .map(({ side }) => side)
              .join(' ')}`,
        ),
      );
  const left = saw('shorter on one side', { side: 'left' });
  const right = saw('shorter on one side', { side: 'right' });
  const other = anExercise('a-bend', { ...bodyweight, rehearses: ['squat'] });

  it('is done on that side alone, beside what warms both up', () => {
    expect(warmUp([], [...EXERCISES, rock, other])).toEqual(['a-bend ']);
    expect(warmUp([left], [...EXERCISES, rock, other])).toEqual(['a-bend ', 'rock left']);
  });

  it('begins on that side where both are warmed up with it anyway', () => {
    expect(warmUp([])).toEqual(['rock left right']);
    expect(warmUp([right])).toEqual(['rock right left']);
    const keys = planOf([right], { exercises: [...EXERCISES, rock] }).weeks[0]?.sessions[0]?.groups.flatMap(
      ({ items }) => items.flatMap(({ sets }) => sets.map(({ key }): string => key)),
    );
    expect(new Set(keys).size).toBe(keys?.length);
  });

  it('is none where the library has none, and none for anything else seen', () => {
    expect(warmUp([left], [...EXERCISES, other])).toEqual(['a-bend ']);
    expect(warmUp([saw('hurrying', { side: 'left' })])).toEqual(['rock left right']);
  });
});

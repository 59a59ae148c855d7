/** The audit of a block by hand-written plans: what counts, and each finding on both sides of its bound. */
import { describe, expect, it } from 'vitest';
import { auditPlan } from '../../src/engine/audit/audit-plan.js';
import { countSets } from '../../src/engine/audit/count-sets.js';
import { RULES_OF_THE_AUDIT } from '../../src/engine/rules-of-the-audit.js';
import type { Exercise } from '../../src/model/exercise.js';
import type { Plan } from '../../src/model/plan.js';
import { aGroup, anItem, aPlan, type Day, exerciseMap, toldOf } from './audit-plans.js';
import { anExercise, ask } from './make-block.js';

const muscles = (main: readonly string[], assisting: readonly string[] = []) => ({ muscles: { main, assisting } });
const squat = anExercise('squat', muscles(['quadriceps', 'gluteus maximus'], ['erector spinae']));
const hinge = anExercise('hinge', { pattern: 'hinge', ...muscles(['hamstrings'], ['trapezius']) });
const lunge = anExercise('lunge', { pattern: 'lunge', ...muscles(['quadriceps'], ['gluteus maximus']) });
const push = anExercise('push', {
  pattern: 'push',
  ...muscles(['pectoralis major'], ['anterior deltoid', 'triceps brachii']),
});
const pull = anExercise('pull', { pattern: 'pull', ...muscles(['latissimus dorsi'], ['biceps brachii']) });
const walk = anExercise('walk', { pattern: 'travel', way: 'conditioning', ...muscles(['quadriceps']) });
const stand = anExercise('stand', { pattern: 'mobility', way: 'mobility', asks: [ask('balance')], ...muscles([]) });
const whole = anExercise('whole', {
  pattern: 'brace',
  ...muscles([
    'quadriceps',
    'gluteus maximus',
    'latissimus dorsi',
    'obliques',
    'pectoralis major',
    'deltoid',
    'triceps brachii',
  ]),
});
const library = exerciseMap(squat, hinge, lunge, push, pull, walk, stand, whole);

const groupsIn = (plan: Plan, of = library): Readonly<Record<string, readonly number[]>> =>
  Object.fromEntries(countSets(plan, of).groups.map(({ group, weeks }) => [group, weeks]));
const audit = (plan: Plan, rule: string, of: ReadonlyMap<string, Exercise> = library): readonly string[] =>
  toldOf(auditPlan(plan, of), rule);
const withValue = (plan: Plan, rule: string, value: number): Plan => ({
  ...plan,
  rules: plan.rules.map((row) => (row.id === rule ? { ...row, overridden: { value, reason: 'tried' } } : row)),
});
const week = (...days: readonly Day[]): readonly Day[] => days;

describe('what counts', () => {
  it('a set is whole for its main muscles, half for those that assist, and once for a group', () => {
    const plan = aPlan([week([anItem(squat, 3)], [anItem(lunge, 2)])]);
    expect(groupsIn(plan)).toEqual({
      legs: [50],
      hips: [40],
      back: [15],
      abdomen: [0],
      chest: [0],
      shoulders: [0],
      arms: [0],
    });
    const sets = countSets(plan, library);
    expect(sets.muscles).toEqual([
      { muscle: 'quadriceps femoris', group: 'legs', weeks: [50] },
      { muscle: 'gluteus maximus', group: 'hips', weeks: [40] },
      { muscle: 'erector spinae', group: 'back', weeks: [15] },
    ]);
    expect(sets.patterns).toEqual([
      { pattern: 'squat', weeks: [30] },
      { pattern: 'lunge', weeks: [20] },
    ]);
  });

  it('as the coach counts, where a value is the coach’s own', () => {
    const plan = aPlan([week([anItem(squat, 3)])]);
    expect(groupsIn(withValue(plan, 'audit-indirect-set', 300)).back).toEqual([9]);
    expect(groupsIn(withValue(plan, 'audit-direct-set', 900)).legs).toEqual([27]);
  });

  it('the side that has fewer, sides in turn being both', () => {
    const plan = aPlan([
      week([anItem(squat, 3, { side: 'left' }), anItem(squat, 2, { side: 'right' })]),
      week([anItem(squat, 3, { side: 'left' }), anItem(squat, 3, { side: 'right' }), anItem(squat, 1)]),
    ]);
    expect(groupsIn(plan).legs).toEqual([20, 40]);
  });

  it('work, trials and tests; no warm-up or feeler set, nothing optional, no mobility, no conditioning', () => {
    const kinds = ['work', 'trial', 'test', 'warm-up', 'feeler', 'cool-down'] as const;
    const counted = kinds.map((kind) => groupsIn(aPlan([week([anItem(squat, 2, { kind })])])).legs?.[0]);
    expect(counted).toEqual([20, 20, 20, 0, 0, 0]);
    const none = aPlan([
      week([
        anItem(squat, 2, { optional: true }),
        anItem(walk, 4),
        aGroup('warm-up', anItem(squat, 2)),
        aGroup('cool-down', anItem(squat, 2)),
      ]),
    ]);
    expect(groupsIn(none).legs).toEqual([0]);
  });

  it('a trial of a harder version counts as that version', () => {
    const [first] = anItem(squat, 1, { kind: 'trial' }).sets;
    if (first === undefined) throw new Error('an item has a set');
    const item = { ...anItem(squat, 1), sets: [{ ...first, exercise: hinge.id }] };
    expect(countSets(aPlan([week([item])]), library).patterns).toEqual([{ pattern: 'hinge', weeks: [10] }]);
  });
});

describe('sets a week', () => {
  it('fewer than four are told, groups short in the same weeks together with the fewest they have', () => {
    const plan = aPlan(
      [week([anItem(squat, 4), anItem(whole, 3)]), week([anItem(whole, 3)]), week([anItem(whole, 1)])],
      {
        easy: [3],
      },
    );
    expect(audit(plan, 'audit-weekly-sets')).toEqual([
      '2: value 4 sets, group legs, sets for legs 30 tenths, group hips, sets for hips 30 tenths, group back, sets for back 30 tenths',
      '1 2: value 4 sets, group abdomen, sets for abdomen 30 tenths, ' +
        'group chest, sets for chest 30 tenths, group shoulders, sets for shoulders 30 tenths, group arms, sets for arms 30 tenths',
    ]);
  });

  it('four are enough, and a coach may ask for more', () => {
    const plan = aPlan([week([anItem(whole, 4)])]);
    expect(audit(plan, 'audit-weekly-sets')).toEqual([]);
    expect(audit(withValue(plan, 'audit-weekly-sets', 5), 'audit-weekly-sets')).toHaveLength(1);
  });
});

describe('weeks cut off', () => {
  it('nothing is told of what a week lacks that ends after the last day for sessions', () => {
    const weeks = [week([anItem(squat, 1), anItem(pull, 4)]), week([anItem(squat, 1), anItem(pull, 4)])];
    const rules = ['audit-weekly-sets', 'audit-group-days', 'audit-push-pull'];
    const weeksOf = (plan: Plan) =>
      rules.flatMap((rule) => audit(plan, rule).map((told) => told.slice(0, told.indexOf(':'))));
    expect(new Set(weeksOf(aPlan(weeks)))).toEqual(new Set(['1 2']));
    // The second week begins on 11 January and would end on the 17th.
    const until = (after: string) => ({ stops: { after: after, because: 'clearance' as const } });
    expect(new Set(weeksOf(aPlan(weeks, until('2027-01-17'))))).toEqual(new Set(['1 2']));
    expect(new Set(weeksOf(aPlan(weeks, until('2027-01-16'))))).toEqual(new Set(['1']));
  });
});

describe('days a week', () => {
  it('a group trained on one day is told; two half sets on a day make a day', () => {
    const plan = aPlan([week([anItem(whole, 2), anItem(squat, 2)], [anItem(whole, 2)])]);
    expect(audit(plan, 'audit-group-days')).toEqual([]);
    const halves = aPlan([week([anItem(whole, 2)], [anItem(push, 2), anItem(pull, 1)])]);
    expect(audit(halves, 'audit-group-days')).toEqual([
      '1: value 2 days, group legs, days for legs 1 days, group hips, days for hips 1 days, group abdomen, days for abdomen 1 days',
    ]);
    const oneHalf = aPlan([week([anItem(whole, 2)], [anItem(push, 1)])]);
    expect(audit(oneHalf, 'audit-group-days').join()).toContain('group shoulders');
  });

  it('two sessions on one day are one day, in an easy week too', () => {
    const plan = aPlan([week([anItem(whole, 2)], [anItem(whole, 2)])], { easy: [1] });
    const sameDay = {
      ...plan,
      weeks: plan.weeks.map((each) => ({
        ...each,
        sessions: each.sessions.map((session) => ({ ...session, date: '2027-01-04' })),
      })),
    };
    expect(audit(plan, 'audit-group-days')).toEqual([]);
    expect(audit(sameDay, 'audit-group-days')).toHaveLength(1);
  });

  it('from 65, by the oldest age there may be, strength and balance on three days', () => {
    const withBalance = (days: number, birthYear: number): Plan => {
      const plan = aPlan([
        week(
          [anItem(whole, 2), anItem(stand, 1)],
          [anItem(whole, 2), anItem(stand, 1)],
          [anItem(whole, 2), ...(days > 2 ? [anItem(stand, 1)] : [])],
        ),
      ]);
      return { ...plan, inputs: { ...plan.inputs, birthYear } };
    };
    expect(audit(withBalance(3, 1962), 'audit-balance-days')).toEqual([]);
    expect(audit(withBalance(2, 1962), 'audit-balance-days')).toEqual(['1: value 3 days, days 2 days']);
    expect(audit(withBalance(2, 1963), 'audit-balance-days')).toEqual([]);
    expect(audit(withValue(withBalance(2, 1963), 'older-from', 64), 'audit-balance-days')).toHaveLength(1);
    const standsOnly = aPlan([week([anItem(stand, 1)], [anItem(stand, 1)], [anItem(stand, 1)])]);
    const older = { ...standsOnly, inputs: { ...standsOnly.inputs, birthYear: 1950 } };
    expect(audit(older, 'audit-balance-days')).toEqual(['1: value 3 days, days 0 days']);
  });

  it.each(['low bone density', 'vertebral fracture'])(
    'with %s, balance and the back on every training day',
    (value) => {
      const days = week([anItem(squat, 2), aGroup('warm-up', anItem(stand, 1))], [anItem(push, 2)]);
      const plan = aPlan([days, days]);
      const ill = {
        ...plan,
        inputs: { ...plan.inputs, standing: { ...plan.inputs.standing, health: [{ fact: 'condition', value }] } },
      };
      expect(audit(ill, 'audit-bone-balance')).toEqual(['1 2: value 1 exercises, days 2 days']);
      expect(audit(ill, 'audit-bone-back')).toEqual(['1 2: value 1 exercises, days 2 days']);
      expect(audit(plan, 'audit-bone-balance')).toEqual([]);
      expect(audit(plan, 'audit-bone-back')).toEqual([]);
      expect(audit(withValue(ill, 'audit-bone-back', 2), 'audit-bone-back')).toEqual([
        '1 2: value 2 exercises, days 4 days',
      ]);
    },
  );
});

describe('one against the other', () => {
  it('pushes against pulls, either way, from over one and a half', () => {
    const sets = (a: number, b: number): Plan => aPlan([week([anItem(push, a), ...(b > 0 ? [anItem(pull, b)] : [])])]);
    expect(audit(sets(6, 4), 'audit-push-pull')).toEqual([]);
    expect(audit(sets(7, 4), 'audit-push-pull')).toEqual([
      '1: value 1500 per-mille, week 1, push 70 tenths, pull 40 tenths',
    ]);
    expect(audit(sets(4, 7), 'audit-push-pull')).toHaveLength(1);
    expect(audit(sets(1, 0), 'audit-push-pull')).toHaveLength(1);
    expect(audit(withValue(sets(7, 4), 'audit-push-pull', 1750), 'audit-push-pull')).toEqual([]);
    const easy = aPlan([week([anItem(push, 7), anItem(pull, 4)])], { easy: [1] });
    expect(audit(easy, 'audit-push-pull')).toEqual([]);
  });

  it('squats with lunges against hinges, from over two', () => {
    const sets = (lunges: number): Plan => aPlan([week([anItem(squat, 3), anItem(lunge, lunges), anItem(hinge, 2)])]);
    expect(audit(sets(1), 'audit-squat-hinge')).toEqual([]);
    expect(audit(sets(2), 'audit-squat-hinge')).toEqual([
      '1: value 2000 per-mille, week 1, squat 50 tenths, hinge 20 tenths',
    ]);
  });

  it('side against side, exercise by exercise over the whole week', () => {
    const left = (sets: number) => anItem(squat, sets, { side: 'left' });
    const right = (sets: number) => anItem(squat, sets, { side: 'right' });
    const plan = aPlan([week([left(3), right(2)], [right(1)]), week([left(2), right(3)])]);
    expect(audit(plan, 'audit-side-side')).toEqual(['2: exercise squat, side right, sets 1 sets']);
    expect(audit(withValue(plan, 'audit-side-side', 1), 'audit-side-side')).toEqual([]);
  });
});

describe('muscles', () => {
  it('a name of no group is told with its exercise, never dropped', () => {
    const odd = anExercise('odd', muscles(['quadriceps', 'core'], ['neck']));
    const plan = aPlan([week([anItem(odd, 3)])]);
    const of = exerciseMap(odd);
    expect(audit(plan, 'audit-unknown-muscle', of)).toEqual([': exercise odd, muscle core, muscle neck']);
    expect(audit(withValue(plan, 'audit-unknown-muscle', 1), 'audit-unknown-muscle', of)).toEqual([]);
    expect(groupsIn(plan, of).legs).toEqual([30]);
  });
});

it('every finding is the coach’s, of one of the audit’s rules, with its source', () => {
  const plan = aPlan([week([anItem(push, 3), anItem(squat, 1, { side: 'left' })])]);
  const findings = auditPlan(plan, library);
  expect(findings.length).toBeGreaterThan(3);
  const sources = new Map(RULES_OF_THE_AUDIT.map(({ id, source }) => [id, source]));
  for (const { rule, audience, reason } of findings) {
    expect([rule, audience, reason.audience]).toEqual([reason.rule, 'coach', 'coach']);
    expect(reason.source).toBe(sources.get(reason.rule));
  }
});

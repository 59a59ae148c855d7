/** Weekly working sets by muscle, by major group and by movement pattern, in tenths of a set. */
import { type Exercise, PATTERNS, type Pattern } from '../../model/exercise.js';
import type { Plan } from '../../model/plan.js';
import type { Tenths } from '../../model/quantity.js';
import { MUSCLE_GROUPS, type MuscleGroup, type WeeklySets } from '../../model/weekly-sets.js';
import { AUDIT_DIRECT_SET } from '../rules/audit-direct-set.js';
import { AUDIT_INDIRECT_SET } from '../rules/audit-indirect-set.js';
import { EVERY_MUSCLE, type Muscle, muscleOf } from './muscle-groups.js';
import { valueIn } from './value-in-plan.js';
import { type WorkedSession, workingSets } from './working-sets.js';

/** What one set of an exercise counts, in tenths: for each muscle, and for each major group by its muscle that works most. */
export interface SetCount {
  readonly muscles: ReadonlyMap<Muscle, Tenths>;
  readonly groups: ReadonlyMap<MuscleGroup, Tenths>;
}

export type CountOf = (exercise: Exercise) => SetCount;

/** By the plan's own values; each exercise is counted out once. */
export function countOf(plan: Pick<Plan, 'rules'>): CountOf {
  const direct = Math.floor(valueIn(plan, AUDIT_DIRECT_SET) / 100);
  const indirect = Math.floor(valueIn(plan, AUDIT_INDIRECT_SET) / 100);
  const known = new Map<Exercise, SetCount>();
  return (exercise) => {
    const before = known.get(exercise);
    if (before !== undefined) return before;
    const muscles = new Map<Muscle, Tenths>();
    const groups = new Map<MuscleGroup, Tenths>();
    const add = (written: readonly string[], tenths: Tenths): void => {
      for (const muscle of written.flatMap((each) => muscleOf(each) ?? [])) {
        muscles.set(muscle, Math.max(muscles.get(muscle) ?? 0, tenths));
        groups.set(muscle.group, Math.max(groups.get(muscle.group) ?? 0, tenths));
      }
    };
    add(exercise.facts.muscles.main, direct);
    add(exercise.facts.muscles.assisting, indirect);
    known.set(exercise, { muscles, groups });
    return { muscles, groups };
  };
}

interface Tally<Key> {
  readonly add: (key: Key, week: number, left: Tenths, right: Tenths) => void;
  readonly has: (key: Key) => boolean;
  /** By week: the side that has fewer. */
  readonly of: (key: Key) => readonly Tenths[];
}

function tallyOver<Key>(weeks: number): Tally<Key> {
  const sums = new Map<Key, { left: Tenths; right: Tenths }[]>();
  return {
    add: (key, week, left, right) => {
      const own = sums.get(key) ?? Array.from({ length: weeks }, () => ({ left: 0, right: 0 }));
      sums.set(key, own);
      const sum = own[week];
      if (sum === undefined) return;
      sum.left += left;
      sum.right += right;
    },
    has: (key) => sums.has(key),
    of: (key) =>
      sums.get(key)?.map(({ left, right }) => Math.min(left, right)) ?? Array.from({ length: weeks }, () => 0),
  };
}

/** For a plan as it stands, draft or edition; `exercises` by id, former ids included. */
export function countSets(plan: Plan, exercises: ReadonlyMap<string, Exercise>): WeeklySets {
  return countIn(plan, workingSets(plan, exercises), countOf(plan));
}

export function countIn(plan: Plan, sessions: readonly WorkedSession[], count: CountOf): WeeklySets {
  const muscles = tallyOver<Muscle>(plan.weeks.length);
  const groups = tallyOver<MuscleGroup>(plan.weeks.length);
  const patterns = tallyOver<Pattern>(plan.weeks.length);
  for (const { week, worked } of sessions) {
    for (const { exercise, left, right } of worked) {
      const counts = count(exercise);
      for (const [muscle, tenths] of counts.muscles) muscles.add(muscle, week, left * tenths, right * tenths);
      for (const [group, tenths] of counts.groups) groups.add(group, week, left * tenths, right * tenths);
      patterns.add(exercise.facts.pattern, week, left * 10, right * 10);
    }
  }
  return {
    weeks: plan.weeks.map(({ number }) => number),
    groups: MUSCLE_GROUPS.map((group) => ({ group, weeks: groups.of(group) })),
    muscles: EVERY_MUSCLE.filter((muscle) => muscles.has(muscle)).map((muscle) => ({
      muscle: muscle.name,
      group: muscle.group,
      weeks: muscles.of(muscle),
    })),
    patterns: PATTERNS.filter((pattern) => patterns.has(pattern)).map((pattern) => ({
      pattern,
      weeks: patterns.of(pattern),
    })),
  };
}

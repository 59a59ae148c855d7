/** Takes out of a plan what a phone needs to plan the rest again, and turns what is private in it into bare figures. */
import { joinBreaks } from '../engine/breaks/join-breaks.js';
import { bodyPart } from '../engine/capacity.js';
import { layOverrides, type Rulebook } from '../engine/rulebook.js';
import { BREAK_COUNTS } from '../engine/rules/break-counts.js';
import { BREAK_JOINED } from '../engine/rules/break-joined.js';
import { OLDER_FROM } from '../engine/rules/older-from.js';
import type { Break } from '../model/client.js';
import { dayOfIso, type IsoDate, isoOfDay } from '../model/day.js';
import type { Plan } from '../model/plan.js';
import type { ReplannedExercise } from '../model/plan-inputs.js';
import type { ReplanPart, ReplanTest } from '../model/replan-part.js';
import type { StrandInput } from '../model/strand.js';
import { NOWHERE } from './plan-context.js';
import { mayReplan } from './replan.js';

/** Nothing where the plan stays as it is, or where health asks that only the coach plans again. */
export function replanPartOf(plan: Plan): ReplanPart | undefined {
  const { inputs } = plan;
  const { replanning } = inputs;
  if (replanning === undefined || !mayReplan(plan)) return undefined;
  const known = new Set(replanning.exercises.map(({ exercise }) => exercise));
  const tests = testsOf(plan).filter(({ exercise }) => known.has(exercise));
  return {
    made: plan.today,
    rules: ownRules(plan),
    reserves: plan.weeks.flatMap(({ sessions }) =>
      sessions.flatMap(({ groups }) =>
        groups.flatMap(({ items }) => items.flatMap(({ sets }) => sets.map(({ reserve }) => reserve ?? null))),
      ),
    ),
    tests,
    floors: inputs.floors.map(({ reserve, weeks }) => ({ reserve, weeks })),
    days: inputs.days,
    curve: inputs.curve.map(({ reserve, share, easy }) => ({ reserve, share, easy })),
    blocksBefore: inputs.blocksBefore,
    novice: inputs.experience === 'novice',
    begins: inputs.screening?.regularExercise !== 'yes',
    olderIn: olderIn(plan),
    weighed: inputs.bodyMass !== null,
    strands: inputs.strands.map(withoutBodyMass),
    ladders: inputs.ladders,
    breaks: breaksThatCount(plan, tests),
    done: (inputs.done ?? []).map(({ occurrence, day, edition }) => ({ occurrence, day, edition })),
    recalls: (inputs.recalls ?? []).map(({ exercise, earned, rows = [] }) => ({
      exercise,
      earned,
      tops: rows.flatMap(({ row, tops }) => (tops === undefined ? [] : [{ row, tops }])),
    })),
    exercises: replanning.exercises.map((one) => inGrams(one, inputs.bodyMass)),
    rows: replanning.rows,
    steady: replanning.steady,
  };
}

const testsOf = ({ inputs }: Plan): readonly ReplanTest[] =>
  inputs.capacities.map(({ exercise, side, test, weak }) => ({
    exercise,
    side,
    date: test.date,
    grams: test.grams,
    reps: test.reps,
    reserve: test.reserve,
    ...(test.tempo === undefined ? {} : { tempo: test.tempo }),
    ...(test.marked === undefined ? {} : { marked: test.marked }),
    weak,
  }));

/** Those that the plan has otherwise than the program that will read it. */
function ownRules({ rules }: Plan): Readonly<Record<string, number>> {
  const usual = new Map(layOverrides([]).value.rows.map(({ id, value }): [string, number] => [id, value]));
  const inForce = rules.map(({ id, value, overridden }): [string, number] => [id, overridden?.value ?? value]);
  return Object.fromEntries(inForce.filter(([id, value]) => usual.get(id) !== value));
}

const valuesIn = (plan: Plan): Rulebook['valueOf'] => {
  const own = ownRules(plan);
  return ({ id, value }) => own[id] ?? value;
};

const yearOf = (date: IsoDate): number => Number(date.slice(0, 4));

/** Kept apart from the birth year: who has long been older is older in the first year of the block, whoever is young never. */
function olderIn(plan: Plan): number | null {
  const began = yearOf(plan.starts);
  const year = plan.inputs.birthYear + valuesIn(plan)(OLDER_FROM);
  return year > began + YEARS_ON ? null : Math.max(began, year);
}

/** No block is trained from for longer. */
const YEARS_ON = 2;

/** The part of the body itself in grams, in place of its share: with a body mass of a thousand they are one. */
const partOf = (share: number | null, bodyMass: number | null): number | null =>
  share === null || bodyMass === null ? share : bodyPart(share, bodyMass);

const inGrams = (exercise: ReplannedExercise, bodyMass: number | null): ReplannedExercise => ({
  ...exercise,
  share: partOf(exercise.share, bodyMass),
});

function withoutBodyMass({ bodyMass, versions, ...strand }: StrandInput): Omit<StrandInput, 'bodyMass'> {
  return { ...strand, versions: versions.map((one) => ({ ...one, share: partOf(one.share, bodyMass) })) };
}

/** Breaks with whatever lies end to end with them: those after a test that is read, and those shortly before the block. */
function breaksThatCount(plan: Plan, tests: readonly ReplanTest[]): ReplanPart['breaks'] {
  const inForce = valuesIn(plan);
  const begins = dayOfIso(plan.weeks[0]?.begins ?? plan.starts) ?? 0;
  const near = begins - inForce(BREAK_COUNTS) - inForce(BREAK_JOINED) - 1;
  const from = Math.min(near, ...tests.flatMap(({ date }) => dayOfIso(date) ?? []));
  const breaks = plan.inputs.breaks.flatMap((one): readonly Break[] => {
    const [first, last] = [dayOfIso(one.from), dayOfIso(one.until)];
    const cause = one.cause === 'ill' || one.cause === 'hurt' ? one.cause : 'away';
    return first === undefined || last === undefined ? [] : [{ from: first, until: last, cause, place: NOWHERE }];
  });
  return joinBreaks({ client: { breaks }, rules: { valueOf: inForce } })
    .filter(({ until }) => until >= from)
    .flatMap(({ parts }) => parts)
    .map(({ from: first, until, cause }) => ({ from: isoOfDay(first), until: isoOfDay(until), cause }));
}

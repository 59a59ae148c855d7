/** Plans written down as sets alone, for the audit: who does what, on which day, how often, with which side. */
import { planBlock } from '../../src/engine/plan-block.js';
import type { Exercise } from '../../src/model/exercise.js';
import { rowId, type SetKind, type Side, sessionId, setKey } from '../../src/model/identity.js';
import type { Finding, Group, Item, Plan, PlanSession, PlanSet, Week } from '../../src/model/plan.js';
import type { ReasonInput } from '../../src/model/reason.js';
import { aClient, aLibrary, anExercise, on, oneSession } from './make-block.js';

export const exerciseMap = (...exercises: readonly Exercise[]): ReadonlyMap<string, Exercise> =>
  new Map(exercises.map((exercise) => [exercise.id, exercise]));

const planned = planBlock({
  library: aLibrary([anExercise('squat')], oneSession('squat')),
  client: aClient(),
  today: on('2026-12-10'),
  edition: 0,
}).value;
if (planned === null || planned.weeks[0] === undefined) throw new Error('the smallest block is planned');
const { weeks: _weeks, findings: _findings, ...rest } = planned;
const base = rest;

const aSet = (kind: SetKind, side: Side | undefined, ordinal: number): PlanSet => ({
  key: setKey({ block: 1, occurrence: 1, row: rowId('row'), side: side ?? 'both', kind, ordinal }),
  kind,
  round: ordinal,
  reps: 8,
  ...(side === undefined ? {} : { side }),
});

/** So many sets of an exercise; of one side where it is said. */
export function anItem(
  exercise: Exercise,
  sets: number,
  more: { kind?: SetKind; side?: Side; optional?: true } = {},
): Item {
  const { kind = 'work', side, optional } = more;
  return {
    id: `a/${exercise.id}/1`,
    row: rowId(exercise.id),
    exercise: exercise.id,
    way: exercise.facts.way,
    sides: 'both',
    tempo: 'normal',
    restSeconds: 60,
    asked: { min: 8, max: 8, unit: 'reps', reserve: 20, sets },
    capacity: null,
    allowed: [],
    relaxed: [],
    sets: Array.from({ length: sets }, (_, i) => ({
      ...aSet(kind, side, i + 1),
      ...(optional === undefined ? {} : { optional }),
    })),
    easier: [],
    harder: [],
    reasons: [],
  };
}

export const aGroup = (kind: Group['kind'], ...items: readonly Item[]): Group => ({ kind, name: '', rounds: 1, items });

/** A day with its groups; items alone are straight work. */
export type Day = readonly (Item | Group)[];

function session(day: Day, week: number, weekday: number): PlanSession {
  const groups = day.map((each) => ('items' in each ? each : aGroup('straight', each)));
  const date = `2027-01-${String(3 + 7 * (week - 1) + weekday).padStart(2, '0')}`;
  return {
    id: sessionId('a'),
    name: '',
    date,
    occurrence: weekday,
    minutes: 30,
    trimmed: [],
    groups,
    short: { minutes: 0, sets: [] },
  };
}

/** One list of days for each week, the weeks in order; `easy` names those that are. */
export function aPlan(
  weeks: readonly (readonly Day[])[],
  { easy = [], ...more }: Partial<Plan> & { readonly easy?: readonly number[] } = {},
): Plan {
  return {
    ...base,
    weeks: weeks.map(
      (days, index): Week => ({
        number: index + 1,
        begins: `2027-01-${String(4 + 7 * index).padStart(2, '0')}`,
        deload: easy.includes(index + 1),
        sessions: days.map((day, nth) => session(day, index + 1, 2 * nth + 1)),
      }),
    ),
    findings: [],
    ...more,
  };
}

/** A finding of a rule as `weeks: name value unit, …`; empty where it tells nothing. */
export function toldOf(findings: readonly Finding[], rule: string): readonly string[] {
  const input = ({ name, value, unit }: ReasonInput): string => `${name} ${value} ${unit}`.trim();
  return findings
    .filter((finding) => finding.rule === rule)
    .map(({ weeks, reason }) => `${weeks.join(' ')}: ${reason.inputs.map(input).join(', ')}`);
}

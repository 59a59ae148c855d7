/** One row that goes up a ladder, planned for one client, and its weeks in brief: `8 @ 16 kg × 5`. */
import { planBlock } from '../../src/engine/plan-block.js';
import type { Client } from '../../src/model/client.js';
import type { Dose } from '../../src/model/dose.js';
import type { Exercise } from '../../src/model/exercise.js';
import type { Item, OtherwiseSet, Plan, PlanSet } from '../../src/model/plan.js';
import type { Programme, Row } from '../../src/model/programme.js';
import type { RuleOverride } from '../../src/model/studio.js';
import { PLACE } from './generate-exercises.js';
import {
  aBlock,
  aClient,
  aLibrary,
  anExercise,
  aProgramme,
  aRow,
  aSession,
  ask,
  aWay,
  type MadeExercise,
  on,
} from './make-block.js';

export interface OneRow {
  readonly exercise?: MadeExercise;
  readonly others?: readonly Exercise[];
  readonly dose: Dose;
  readonly row?: Partial<Row>;
  readonly client?: Partial<Client>;
  readonly rules?: Readonly<Record<string, number>>;
  readonly curve?: Programme['curve'];
}

/** A two-hand swing, unless said otherwise; a hinge with one bell that must be signed off. */
const SWING: MadeExercise = {
  pattern: 'hinge',
  way: 'swing',
  signOff: true,
  asks: [ask('speed', 'much')],
};
const PLAIN = { signOff: false, asks: [] } as const;
export const HOLD: MadeExercise = {
  ...PLAIN,
  pattern: 'brace',
  way: 'hold',
  kit: { load: [], unloaded: true, things: [] },
};
export const CARRY: MadeExercise = { ...PLAIN, pattern: 'carry', way: 'carry', sides: 'each', holds: 'per-hand' };
export const STEP: MadeExercise = {
  ...PLAIN,
  pattern: 'travel',
  way: 'conditioning',
  kit: { load: [], unloaded: true, things: [] },
};
export const BAND: MadeExercise = {
  ...PLAIN,
  way: 'strength',
  pattern: 'pull',
  holds: 'band',
  kit: { load: [{ kind: 'band' }], unloaded: false, things: [] },
};

export const sets = (many: number, min: number, max = min): Dose => ({
  kind: 'sets',
  sets: many,
  reps: { min, max },
  eachSide: false,
});
export const timed = (many: number, min: number, max = min): Dose => ({
  kind: 'timed',
  sets: many,
  seconds: { min, max },
  eachSide: false,
});
export const metres = (many: number, min: number, max = min): Dose => ({
  kind: 'distance',
  sets: many,
  metres: { min, max },
  eachSide: false,
});
export const every = (minutes: number, reps: number, everySeconds = 60): Dose => ({
  kind: 'every',
  minutes,
  reps,
  everySeconds,
});

/** The row's exercise is `move`; nobody's medicines are unknown, so that breath is the row's own. */
export function planOne({ exercise, others, dose, row, client, rules, curve }: OneRow) {
  const easier = exercise?.easier ?? [aWay('gentler', ['load'])];
  const move = anExercise('move', { ...SWING, ...exercise, easier });
  const programme = aProgramme(
    [aSession('A', aBlock([aRow('move', { dose, ...row })]))],
    curve === undefined ? {} : { curve },
  );
  const rulesOverridden = Object.entries(rules ?? {}).map(
    ([rule, value]): RuleOverride => ({ rule, value, reason: 'asked for', place: PLACE }),
  );
  return planBlock({
    library: aLibrary([move, ...(others ?? [])], programme),
    client: aClient({ health: { medicines: [] }, ...client }),
    today: on('2026-12-28'),
    edition: 0,
    rulesOverridden,
  });
}

export function planOf(one: OneRow): Plan {
  const { value, problems } = planOne(one);
  if (value === null) throw new Error(JSON.stringify(problems, null, 1));
  return value;
}

export const itemsOf = (plan: Plan): readonly Item[] =>
  plan.weeks.flatMap(({ sessions }) =>
    sessions.flatMap(({ groups }) =>
      groups.filter(({ kind }) => kind === 'straight' || kind === 'circuit').flatMap(({ items }) => items),
    ),
  );

const amount = ({ reps, seconds, metres: far, steps, then }: PlanSet | OtherwiseSet): string => {
  const main =
    steps?.join('-') ?? (seconds === undefined ? (far === undefined ? (reps ?? 'round') : `${far}m`) : `${seconds}s`);
  return then === undefined ? `${main}` : `${main} + ${then.reps} @ ${then.load.label}`;
};

const loadOf = ({ load }: PlanSet | OtherwiseSet): string => (load === undefined ? '' : ` @ ${load.label}`);

export function setText(set: PlanSet): string {
  return `${set.gate === undefined ? '' : 'gate '}${set.deadStop === true ? 'stop ' : ''}${amount(set)}${loadOf(set)}`;
}

/** One text a week: its first set, and how many. */
export const weeksOf = (one: OneRow): readonly string[] =>
  itemsOf(planOf(one)).map(({ sets: all }) => {
    const [first] = all;
    return first === undefined ? 'nothing' : `${setText(first)} × ${all.length}`;
  });

export const otherwiseOf = (plan: Plan): readonly string[] =>
  itemsOf(plan).map(({ sets: [first] }) =>
    (first?.otherwise ?? []).map((other) => `${amount(other)}${loadOf(other)} × ${other.sets}`).join(),
  );

export const findingsOf = (plan: Plan): readonly string[] =>
  plan.findings.filter(({ row }) => row === 'move').map(({ rule }) => rule);

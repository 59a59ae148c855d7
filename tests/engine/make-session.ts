/** Rows of one session as they come before the walk: fitted, put in order, timed. */
import { type BlockContext, exercisesById } from '../../src/engine/block-context.js';
import { type FittedRow, fitRows, type Versions } from '../../src/engine/rows/fit-rows.js';
import { layOverrides } from '../../src/engine/rulebook.js';
import { standingOf } from '../../src/engine/screening/standing.js';
import { secondsOfRows, type TimedRow } from '../../src/engine/sessions/count-seconds.js';
import { queueSessions } from '../../src/engine/sessions/queue-sessions.js';
import { timeRow } from '../../src/engine/sessions/seconds-of-set.js';
import { type Shape, shapeSessions } from '../../src/engine/sessions/shape-sessions.js';
import { judgeFor } from '../../src/engine/versions/judge-version.js';
import { linkVersions } from '../../src/engine/versions/linked-versions.js';
import { besideFor } from '../../src/engine/versions/list-beside.js';
import type { Client } from '../../src/model/client.js';
import type { Exercise } from '../../src/model/exercise.js';
import type { Programme } from '../../src/model/programme.js';
import { PLACE } from './generate-exercises.js';
import { aClient, on } from './make-block.js';

export interface MadeSessions {
  readonly context: BlockContext;
  readonly versions: Versions;
  readonly shape: Shape;
}

export type Overrides = Readonly<Record<string, number>>;

export const overrides = (values: Overrides) =>
  Object.entries(values).map(([rule, value]) => ({ rule, value, reason: 'for this check', place: PLACE }));

export function made(
  programme: Programme,
  exercises: readonly Exercise[],
  client: Partial<Client> = {},
  values: Overrides = {},
): MadeSessions {
  const whole = aClient(client);
  const laid = layOverrides(overrides(values));
  if (laid.problems.length > 0) throw new Error(JSON.stringify(laid.problems));
  const rules = laid.value;
  const queue = queueSessions(programme, whole, rules).value;
  if (queue === null) throw new Error('the days lead nowhere');
  const firstDay = queue.sessions[0]?.date ?? whole.starts;
  const lastDay = queue.sessions.at(-1)?.date ?? firstDay;
  const screened = { client: whole, rules, today: on('2026-12-20'), firstDay, lastDay };
  const context: BlockContext = {
    ...screened,
    programme,
    exercises: exercisesById(exercises),
    recalls: new Map(),
    standing: standingOf(screened),
    days: queue.sessions.map(({ template, date, week, occurrence }) => {
      return { session: template.id, day: date, week, occurrence };
    }),
    next: { day: firstDay, week: 1 },
  };
  const judge = judgeFor(context);
  const linksOf = linkVersions(context.exercises);
  const versions = { judge, linksOf, besideOf: besideFor(context, judge, linksOf) };
  const fitted = fitRows(context, queue.templates, versions);
  if (fitted.problems.length > 0) throw new Error(JSON.stringify(fitted.problems));
  return { context, versions, shape: shapeSessions(context, fitted.value) };
}

export const idsOf = (rows: readonly FittedRow[]): string => rows.map(({ row }) => row.id).join(' ');

/** Every row with all its sets, without feeler, lighter set, trial or test. */
const timed = ({ context, shape }: MadeSessions, rows: readonly FittedRow[] = shape.rows): readonly TimedRow[] =>
  rows.map((fitted) => {
    const sets = fitted.inCircuit ? (fitted.block.rounds ?? fitted.sets) : fitted.sets;
    return { fitted, times: timeRow(fitted, context), sets, feeler: false, warmUp: false, trial: false, test: 0 };
  });

/** Seconds of the work of a programme's only session. */
export function workSeconds(sessions: MadeSessions): number {
  return secondsOfRows(timed(sessions), sessions.context.rules);
}

/** One squat with one bell, planned for somebody tested at 16 kg × 10 with 2 left: say only what differs. */
import { planBlock } from '../../src/engine/plan-block.js';
import type { Client } from '../../src/model/client.js';
import type { Exercise } from '../../src/model/exercise.js';
import type { Item, Plan, PlanSet } from '../../src/model/plan.js';
import type { Programme, Row } from '../../src/model/programme.js';
import { aBlock, aClient, aLibrary, anExercise, aProgramme, aRow, aSession, aTest, kg, on } from './make-block.js';

export const today = on('2026-12-20');
export const squat = anExercise('squat');
export const tests = [aTest('squat', 10, { load: kg('16') })];

export function made(programme: Programme, client: Partial<Client> = {}, exercises: readonly Exercise[] = [squat]) {
  const library = aLibrary(exercises, programme);
  return planBlock({ library, client: aClient({ tests, ...client }), today, edition: 0 });
}

export function planOf(...of: Parameters<typeof made>): Plan {
  const { value, problems } = made(...of);
  if (value === null) throw new Error(JSON.stringify(problems));
  return value;
}

export const codes = (...of: Parameters<typeof made>) => made(...of).problems.map(({ code }) => code);

/** Items of work: not those of a warm-up or a cool-down. */
export const itemsOf = (plan: Plan): readonly Item[] =>
  plan.weeks.flatMap((week) =>
    week.sessions.flatMap(({ groups }) =>
      groups.flatMap(({ kind, items }) => (kind === 'straight' || kind === 'circuit' ? items : [])),
    ),
  );

export const withRow = (row: Partial<Row>, exercise = 'squat'): Programme =>
  aProgramme([aSession('A', aBlock([aRow(exercise, row)]))]);

/** `16 kg × 8`, `16 kg × 8 left`: the work of one item. */
export const workOf = (item: Item | undefined): readonly string[] =>
  (item?.sets ?? []).filter(({ kind }) => kind === 'work' || kind === 'trial').map(saySet);

export const saySet = ({ load, reps, side, kind }: PlanSet): string =>
  `${kind === 'trial' ? 'trial ' : ''}${load?.label ?? 'no load'} × ${reps}${side === undefined ? '' : ` ${side}`}`;

/**
 * The rest of a block, planned again on the phone from what was done: from `plan.json` and the events alone, by the
 * functions that made the plan, within the coach's bounds. Pure; between sessions only, never inside one.
 *
 * Bounds: never a load that the row does not have; at most one load above what was printed for that session; no harder
 * version than printed; never more sets than printed; no trial and no gate that was not printed. Warm-up sets follow.
 */

import { returnReasons } from '../engine/breaks/break-findings.js';
import { returnOf } from '../engine/breaks/returns.js';
import { dayOfIso, type IsoDate } from '../model/day.js';
import { bookletId, type ExerciseId, type RowId, type SetKey } from '../model/identity.js';
import type { AlarmSign, LogEvent } from '../model/log.js';
import type { Plan, PlanSet } from '../model/plan.js';
import type { TempoStep } from '../model/programme.js';
import type { Reason } from '../model/reason.js';
import { finish, type InSteps } from './in-steps.js';
import { mergeEvents } from './merge-events.js';
import { contextOfPlan, type PlanContext } from './plan-context.js';
import { reclimb } from './replan-ladder.js';
import { type Bound, failureIn, type Laid, layLadder, layWalk } from './replan-sets.js';
import { type OpenItem, rewalk } from './replan-strand.js';

/** A row of a session still to come that is done otherwise than printed. */
export interface ReplannedItem {
  /** 1-based place in the block's queue. */
  readonly occurrence: number;
  readonly row: RowId;
  readonly exercise: ExerciseId;
  readonly tempo: TempoStep;
  /** Every printed set by its key, in order; `null` where it is left out. */
  readonly sets: readonly { readonly key: SetKey; readonly set: PlanSet | null }[];
  /** The first set of work as printed, and as it is today; `null` where the row is left out. */
  readonly paper: PlanSet | null;
  readonly today: PlanSet | null;
  /** For the client; rules of marks, of days away and of the walk. */
  readonly because: readonly Reason[];
  /** What kept it from more. */
  readonly bounds: readonly Bound[];
}

export type Replanning =
  /** The coach has not let it be planned again, or health asks that only the coach does. */
  | { readonly kind: 'fixed' }
  /** A sign of alarm was said: nothing is planned on until the coach has looked. */
  | { readonly kind: 'stopped'; readonly signs: readonly AlarmSign[] }
  | { readonly kind: 'planned'; readonly changed: readonly ReplannedItem[] };

const NO_BOOKLET = bookletId('');

/** Does the coach let it be planned again, and does health leave it to more than the coach? */
export function mayReplan({ inputs }: Pick<Plan, 'inputs'>): boolean {
  const { moderate, health } = inputs.standing;
  const cared = moderate || health.some(({ fact }) => fact === 'pregnancy' || fact === 'birth');
  return inputs.replanning !== undefined && !cared;
}

/** `events` are all of this booklet, in any order; `today` is the local day. */
export const replan = (plan: Plan, events: readonly LogEvent[], today: IsoDate): Replanning =>
  finish(replanRowByRow(plan, events, today));

/** The same, with a step for each row. */
export function* replanRowByRow(plan: Plan, events: readonly LogEvent[], today: IsoDate): InSteps<Replanning> {
  const { replanning } = plan.inputs;
  const now = dayOfIso(today);
  if (replanning === undefined || !mayReplan(plan) || now === undefined) return { kind: 'fixed' };
  const signs = mergeEvents([{ schema: 1, bookletId: NO_BOOKLET, device: '', events }]).flatMap(({ event }) =>
    event.kind === 'pain' && event.edition >= plan.edition && event.report.alarm !== undefined
      ? [event.report.alarm]
      : [],
  );
  if (signs.length > 0) return { kind: 'stopped', signs: [...new Set(signs)] };
  const read = contextOfPlan(plan, replanning, events, now);
  const all: ReplannedItem[] = [];
  for (const row of replanning.rows) {
    yield;
    all.push(...walkedAgain(plan, read, row));
  }
  for (const ladder of plan.inputs.ladders) {
    yield;
    all.push(...climbedAgain(plan, read, ladder));
  }
  return { kind: 'planned', changed: all.sort((a, b) => a.occurrence - b.occurrence) };
}

type Row = NonNullable<Plan['inputs']['replanning']>['rows'][number];

function walkedAgain(plan: Plan, read: PlanContext, row: Row): readonly ReplannedItem[] {
  const strand = plan.inputs.strands.find(({ id }) => id === row.id);
  const open = strand === undefined ? [] : openItems(plan, read, strand.session, strand.row);
  if (strand === undefined || open.length === 0) return [];
  const again = rewalk(read, strand, row, open);
  if (again.kind === 'as printed') return [];
  if (again.kind === 'left out') return open.map((one) => leftOut(read, one, again.exercise));
  return open.flatMap((one, index): readonly ReplannedItem[] => {
    const toFailure = failureIn(again.ground, again.strand, one.at.week);
    const laid = layWalk(one.item, again.strand, again.steps, index, toFailure, read.context.rules);
    return laid === null ? [] : [changed(read, one, laid, again.steps[index]?.reasons ?? [])];
  });
}

function climbedAgain(
  plan: Plan,
  read: PlanContext,
  ladder: Plan['inputs']['ladders'][number],
): readonly ReplannedItem[] {
  const open = openItems(plan, read, ladder.session, ladder.row);
  if (open.length === 0) return [];
  const again = reclimb(read, ladder, open);
  if (again.kind === 'as printed') return [];
  if (again.kind === 'left out') return open.map((one) => leftOut(read, one, again.exercise));
  return open.flatMap((one, index): readonly ReplannedItem[] => {
    const laid = layLadder(one.item, again.ladder, again.steps, index);
    return laid === null ? [] : [changed(read, one, laid, again.steps[index]?.reasons ?? [])];
  });
}

/** Of every item of the row that the plan was made for, those whose session is not done yet. */
function openItems(plan: Plan, { open }: PlanContext, session: string, row: RowId): readonly OpenItem[] {
  const before = new Set((plan.inputs.done ?? []).map(({ occurrence }) => occurrence));
  const planned = plan.weeks
    .flatMap(({ sessions }) => sessions)
    .filter(({ id, occurrence }) => id === session && !before.has(occurrence))
    .flatMap((one) => {
      const item = one.groups
        .filter(({ kind }) => kind === 'straight' || kind === 'circuit')
        .flatMap(({ items }) => items)
        .find((own) => own.row === row);
      return item === undefined ? [] : [{ occurrence: one.occurrence, item }];
    });
  return planned.flatMap(({ occurrence, item }, index): readonly OpenItem[] => {
    const at = open.find((one) => one.session.occurrence === occurrence);
    return at === undefined ? [] : [{ at, item, index }];
  });
}

function leftOut(
  { context }: PlanContext,
  { at, item }: OpenItem,
  exercise: { readonly id: ExerciseId },
): ReplannedItem {
  const { reasons } = context.recalls.get(exercise.id) ?? { reasons: [] };
  return {
    occurrence: at.session.occurrence,
    row: item.row,
    exercise: item.exercise,
    tempo: item.tempo,
    sets: item.sets.map(({ key }) => ({ key, set: null })),
    paper: firstWork(item.sets),
    today: null,
    because: reasons.filter(({ audience }) => audience === 'client'),
    bounds: [],
  };
}

function changed(
  { context }: PlanContext,
  { at, item }: OpenItem,
  laid: Laid,
  walked: readonly Reason[],
): ReplannedItem {
  const { exercise, tempo, sets, bounds } = laid;
  const judged = [item.exercise, exercise].flatMap((id) => context.recalls.get(id)?.reasons ?? []);
  const back = returnReasons(returnOf(context, at.day), item.way);
  const all = [...judged, ...back, ...walked].filter(({ audience }) => audience === 'client');
  return {
    occurrence: at.session.occurrence,
    row: item.row,
    exercise,
    tempo,
    sets,
    paper: firstWork(item.sets),
    today: firstWork(sets.flatMap(({ set }) => set ?? [])),
    because: all.filter(
      (one, index) => all.findIndex((other) => JSON.stringify(other) === JSON.stringify(one)) === index,
    ),
    bounds,
  };
}

const firstWork = (sets: readonly PlanSet[]): PlanSet | null =>
  sets.find(({ kind }) => kind === 'work') ?? sets[0] ?? null;

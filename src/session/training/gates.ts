/** Has a step up been earned, as far as this booklet's marks show it? What is not shown is not earned. */
import type { ClientPlan, ClientSet } from '../../model/client-plan.js';
import { readSetKey } from '../../model/identity.js';
import type { LogEvent } from '../../model/log.js';
import type { GateNeeds, OtherwiseSet, PlanLoad } from '../../model/plan.js';
import type { SetEvent } from './marked-sets.js';

/** `row` is the gate's own, of that session's id: it is earned in the weeks the gate names, in every one of them. */
export function isEarned(
  plan: ClientPlan,
  session: string,
  row: string,
  needs: GateNeeds,
  marks: readonly LogEvent[],
): boolean {
  return needs.weeks.every((number) => {
    const week = plan.weeks.find((one) => one.number === number);
    const own = week?.sessions.filter(({ id }) => id === session) ?? [];
    return own.some(({ occurrence }) => wasDone(occurrence, row, needs, marks));
  });
}

function wasDone(occurrence: number, row: string, needs: GateNeeds, marks: readonly LogEvent[]): boolean {
  const last = new Map<string, SetEvent>();
  for (const event of marks) {
    const key = event.kind === 'set' ? readSetKey(event.key) : null;
    if (event.kind !== 'set' || key?.occurrence !== occurrence || key.row !== row) continue;
    if (key.kind === 'work' || key.kind === 'trial') last.set(event.key, event);
  }
  const sets = [...last.values()].filter(({ exercise }) => exercise === needs.exercise);
  if (sets.length === 0 || !sets.some((event) => readSetKey(event.key)?.kind === 'work')) return false;
  const asked = sets.every((event) => event.done === 'done' && isAtLeast(event, needs));
  return asked && reserveHeld(occurrence, row, needs, marks);
}

function isAtLeast(event: SetEvent, needs: GateNeeds): boolean {
  if (needs.load !== undefined && weightOf(event.load) < weightOf(needs.load)) return false;
  if (needs.seconds !== undefined) return (event.seconds ?? 0) >= needs.seconds;
  if (needs.metres !== undefined) return (event.metres ?? 0) >= needs.metres;
  return (event.reps ?? 0) >= (needs.reps ?? 0);
}

/** Of a band its step: the one that is harder to stretch counts as the heavier. */
const weightOf = (load: PlanLoad | undefined): number => load?.grams ?? load?.step ?? 0;

function reserveHeld(occurrence: number, row: string, needs: GateNeeds, marks: readonly LogEvent[]): boolean {
  if (needs.reserve === undefined) return true;
  const said = new Map<string, number>();
  for (const event of marks) {
    if (event.kind === 'reserve' && event.occurrence === occurrence && event.row === row)
      said.set(event.side, Math.round(10 * event.reps));
  }
  const least = needs.reserve;
  return said.size > 0 && [...said.values()].every((tenths) => tenths >= least);
}

/** What is done in place of a gate, set by set: the n-th set of that kind and side, from 0; `null` past the last. */
export function otherwiseAt(otherwise: readonly OtherwiseSet[], nth: number): OtherwiseSet | null {
  let before = 0;
  for (const one of otherwise) {
    before += one.sets;
    if (nth < before) return one;
  }
  return null;
}

/** A plain `then` in an object would be taken for a promise's. */
const THEN = 'then';

/** A planned set with other figures in it. */
export function withFigures(set: ClientSet, { reps, seconds, metres, steps, then: next, load }: Figured): ClientSet {
  const { key, kind, round, side, deadStop, optional } = set;
  return {
    key,
    kind,
    round,
    ...(side === undefined ? {} : { side }),
    ...(deadStop === undefined ? {} : { deadStop }),
    ...(optional === undefined ? {} : { optional }),
    ...(reps === undefined ? {} : { reps }),
    ...(seconds === undefined ? {} : { seconds }),
    ...(metres === undefined ? {} : { metres }),
    ...(steps === undefined ? {} : { steps }),
    ...(next === undefined ? {} : { [THEN]: next }),
    ...(load === undefined ? {} : { load }),
  };
}

export type Figured = Pick<ClientSet, 'reps' | 'seconds' | 'metres' | 'steps' | 'then' | 'load'>;

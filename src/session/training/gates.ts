/**
 * A step up that must be earned: has it been, as far as this booklet's marks show it? What is not shown is not earned.
 * It holds for the whole exercise, in the week of the step and in every later one that rests on it.
 */
import type { ClientItem, ClientPlan, ClientSession, ClientSet } from '../../model/client-plan.js';
import type { LogEvent } from '../../model/log.js';
import type { GateNeeds, OtherwiseSet, PlanLoad } from '../../model/plan.js';
import type { GateAsked } from '../../model/training.js';
import { isOf, lastWords, type SetEvent } from './marked-sets.js';

/** `undefined` where nothing of it must be earned. */
export function gateOf(
  plan: ClientPlan,
  session: ClientSession,
  item: ClientItem,
  marks: readonly LogEvent[],
): GateAsked | undefined {
  const gate = gateIn(item);
  const otherwise = item.sets.find((one) => one.otherwise !== undefined)?.otherwise;
  if (gate === undefined && otherwise === undefined) return undefined;
  const earned =
    gate === undefined ? wentUp(plan, session, item, marks) : isEarned(plan, session.id, item, gate, marks);
  return { earned, otherwise: otherwise ?? [] };
}

const gateIn = ({ sets }: ClientItem): GateNeeds | undefined => sets.find((one) => one.gate !== undefined)?.gate?.needs;

interface Standing {
  readonly session: ClientSession;
  readonly item: ClientItem;
  readonly week: number;
}

/** The same row of the same session over the weeks, in order. */
const standingsOf = ({ weeks }: ClientPlan, id: string, row: string): readonly Standing[] =>
  weeks.flatMap(({ number, sessions }) =>
    sessions
      .filter((session) => session.id === id)
      .flatMap((session) =>
        session.groups
          .flatMap(({ items }) => items)
          .filter((item) => item.row === row && item.sets.some(({ kind }) => kind === 'work'))
          .map((item): Standing => ({ session, item, week: number })),
      ),
  );

/** What rests on an earlier step holds only where that step was earned, and taken: in its week it was done as printed. */
function wentUp(plan: ClientPlan, { id, occurrence }: ClientSession, { row }: ClientItem, marks: readonly LogEvent[]) {
  const step = standingsOf(plan, id, row).findLast(
    (one) => one.session.occurrence < occurrence && gateIn(one.item) !== undefined,
  );
  const needs = step === undefined ? undefined : gateIn(step.item);
  if (step === undefined || needs === undefined || !isEarned(plan, id, step.item, needs, marks)) return false;
  const words = lastWords(marks, plan.block, step.session.occurrence, row);
  return step.item.sets.some((set) => {
    const word = words.get(set.key);
    const exercise = set.exercise ?? step.item.exercise;
    return set.kind === 'work' && word !== undefined && isAsAsked(word, { exercise, ...heldIn(set) });
  });
}

const heldIn = ({ load }: ClientSet): Pick<GateNeeds, 'load'> => (load === undefined ? {} : { load });

/** In each of the weeks it names, in one session at least. */
function isEarned(
  plan: ClientPlan,
  session: string,
  { row }: ClientItem,
  needs: GateNeeds,
  marks: readonly LogEvent[],
): boolean {
  const standings = standingsOf(plan, session, row);
  return needs.weeks.every((number) =>
    standings.some((one) => one.week === number && wasDone(plan, one, needs, marks)),
  );
}

/** Every set that was planned of it, each at least as asked, on every side. */
function wasDone(plan: ClientPlan, { session, item }: Standing, needs: GateNeeds, marks: readonly LogEvent[]): boolean {
  const words = lastWords(marks, plan.block, session.occurrence, item.row);
  const done = askedIn(item, needs).map(({ key }) => words.get(key));
  return (
    done.length > 0 &&
    done.every((word) => word !== undefined && isAsAsked(word, needs)) &&
    reserveHeld(done, session.occurrence, item.row, needs, marks)
  );
}

/** A trial is earned by the trial, work by all of the work; where the printed figures were others, by what stood instead. */
function askedIn({ exercise, sets }: ClientItem, needs: GateNeeds): readonly ClientSet[] {
  const own = sets.filter(({ kind }) => kind === 'work' || kind === 'trial');
  const exact = own.filter(
    (set) => (set.exercise ?? exercise) === needs.exercise && weightOf(set.load) === weightOf(needs.load),
  );
  return exact.length > 0 ? exact : own.filter(({ kind }) => kind === 'work');
}

function isAsAsked(event: SetEvent, needs: Pick<GateNeeds, 'exercise' | 'load' | 'reps' | 'seconds' | 'metres'>) {
  if (event.done !== 'done' || event.exercise !== needs.exercise) return false;
  if (weightOf(event.load) < weightOf(needs.load)) return false;
  const counts = (['reps', 'seconds', 'metres'] as const).filter((count) => needs[count] !== undefined);
  // A set bears one count alone: it must be one of those needed, and enough of it.
  const borne = counts.filter((count) => event[count] !== undefined);
  return (
    (counts.length === 0 || borne.length > 0) && borne.every((count) => (event[count] ?? 0) >= (needs[count] ?? 0))
  );
}

/** Of a band its step: the one that is harder to stretch counts as the heavier. */
const weightOf = (load: PlanLoad | undefined): number => load?.grams ?? load?.step ?? 0;

/** As said; where nothing was said, sets done as planned count as the plan has them (rule `done-earned`). */
function reserveHeld(
  done: readonly (SetEvent | undefined)[],
  occurrence: number,
  row: string,
  { reserve: least }: GateNeeds,
  marks: readonly LogEvent[],
): boolean {
  if (least === undefined) return true;
  const said = new Map<string, number>();
  for (const event of marks) if (isOf(event, occurrence, row)) said.set(event.side, Math.round(10 * event.reps));
  if (said.size === 0) return done.every((word) => word?.asPlanned === true);
  return [...said.values()].every((tenths) => tenths >= least);
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

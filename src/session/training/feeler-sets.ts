/** What a feeler set led to: the line of its table that the answer chooses, in its own session and in those after it. */
import type { ClientChoice, ClientItem, ClientPlan, ClientSession } from '../../model/client-plan.js';
import type { LogEvent } from '../../model/log.js';
import { feltIn, lastWords, type SetEvent } from './marked-sets.js';

/** `null` where nothing is to be found, or nothing was yet: then the booklet's table is all there is to go by. */
export function foundBy(
  plan: ClientPlan,
  session: ClientSession,
  item: ClientItem,
  marks: readonly LogEvent[],
): ClientChoice | null {
  const table = item.sets.find(({ choose }) => choose !== undefined)?.choose;
  if (table === undefined) return null;
  const felt = feltBefore(plan, marks, session, item.row);
  return felt === null ? null : (table.find(({ left }) => felt >= left.min && felt <= left.max) ?? null);
}

/** The latest answer, this session's own before those of earlier weeks. */
function feltBefore(
  { weeks, block }: ClientPlan,
  marks: readonly LogEvent[],
  { id, occurrence }: ClientSession,
  row: string,
): number | null {
  const own = weeks.flatMap(({ sessions }) => sessions).filter((one) => one.id === id && one.occurrence <= occurrence);
  for (const one of own.reverse()) {
    const felt = feltIn(marks, block, one.occurrence, row);
    if (felt === null) continue;
    const items = one.groups.flatMap((group) => group.items).filter((each) => each.row === row);
    return wasAsAsked(items, lastWords(marks, block, one.occurrence, row)) ? felt : null;
  }
  return null;
}

/** The table holds for the set that it was made for: done lighter or shorter, its answer says nothing of the loads in it. */
function wasAsAsked(items: readonly ClientItem[], words: ReadonlyMap<string, SetEvent>): boolean {
  const feelers = items.flatMap(({ sets }) => sets).filter(({ kind }) => kind === 'feeler');
  return feelers.every(({ key, reps, seconds, load }) => {
    const word = words.get(key);
    if (word?.done !== 'done') return false;
    const enough = seconds === undefined || word.seconds === undefined || word.seconds >= seconds;
    return enough && (word.reps ?? reps ?? 0) >= (reps ?? 0) && (word.load?.grams ?? 0) >= (load?.grams ?? 0);
  });
}

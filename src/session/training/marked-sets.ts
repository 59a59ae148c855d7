/** What is marked of sets, read from the events in order: last words, answers to a feeler set, and the last time. */
import { bookletId, readSetKey, type Side } from '../../model/identity.js';
import type { LogEvent } from '../../model/log.js';
import { mergeEvents } from '../merge-events.js';

export type SetEvent = Extract<LogEvent, { readonly kind: 'set' }>;
type ReserveEvent = Extract<LogEvent, { readonly kind: 'reserve' }>;

const NO_BOOKLET = bookletId('');

/** In order, each once, without what was taken back. */
export const inOrder = (events: readonly LogEvent[]): readonly LogEvent[] =>
  mergeEvents([{ schema: 1, bookletId: NO_BOOKLET, device: '', events }]).map(({ event }) => event);

/** Whole reps left after a feeler set, as said before the work began; the lower of two sides. `null` where not said. */
export function feltIn(marks: readonly LogEvent[], block: number, occurrence: number, row: string): number | null {
  let felt = false;
  const said = new Map<Side | 'both', number>();
  for (const event of marks) {
    if (event.kind === 'set') {
      const key = readSetKey(event.key);
      if (key?.block !== block || key.occurrence !== occurrence || key.row !== row) continue;
      if (key.kind === 'feeler') felt = true;
      else if (key.kind === 'work') break;
    } else if (felt && isOf(event, occurrence, row)) said.set(event.side, event.reps);
  }
  return said.size === 0 ? null : Math.floor(Math.min(...said.values()));
}

export const isOf = (event: LogEvent, occurrence: number, row: string): event is ReserveEvent =>
  event.kind === 'reserve' && event.occurrence === occurrence && event.row === row;

/** Was the question after these sets answered? An answer counts from the last of them on. */
export function isAnswered(
  marks: readonly LogEvent[],
  keys: ReadonlySet<string>,
  occurrence: number,
  row: string,
  side: Side | 'both',
): boolean {
  const last = marks.findLastIndex((event) => event.kind === 'set' && keys.has(event.key));
  return marks.slice(last + 1).some((event) => isOf(event, occurrence, row) && event.side === side);
}

/** The last word on each set of a row in the latest earlier session that has one. */
export function lastTimeOf(
  marks: readonly LogEvent[],
  block: number,
  before: number,
  occurrences: readonly number[],
  row: string,
): readonly SetEvent[] {
  const earlier = occurrences.filter((one) => one < before).sort((a, b) => b - a);
  for (const occurrence of earlier) {
    const last = new Map<string, SetEvent>();
    for (const event of marks) {
      const key = event.kind === 'set' ? readSetKey(event.key) : null;
      if (event.kind === 'set' && key?.block === block && key.occurrence === occurrence && key.row === row)
        last.set(event.key, event);
    }
    const done = [...last.values()].filter(({ done: state }) => state !== 'left out');
    if (done.length > 0) return done;
  }
  return [];
}

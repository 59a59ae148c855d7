/** What is marked of sets, read from the events in order: first and last words, answers to a feeler set, the last time. */
import { bookletId, readSetKey, type SetKeyParts, type Side } from '../../model/identity.js';
import type { LogEvent } from '../../model/log.js';
import type { Moment } from '../../model/training.js';
import { mergeEvents } from '../merge-events.js';

export type SetEvent = Extract<LogEvent, { readonly kind: 'set' }>;
type ReserveEvent = Extract<LogEvent, { readonly kind: 'reserve' }>;

const NO_BOOKLET = bookletId('');

/** In order, each once, without what was taken back. */
export const inOrder = (events: readonly LogEvent[]): readonly LogEvent[] =>
  mergeEvents([{ schema: 1, bookletId: NO_BOOKLET, device: '', events }]).map(({ event }) => event);

/** When a set was first marked: what is said of it later changes its figures, and not when it was done. */
export interface FirstWord {
  /** Its place among all marks. */
  readonly order: number;
  readonly moment: Moment;
}

export function firstWords(marks: readonly LogEvent[]): ReadonlyMap<string, FirstWord> {
  const first = new Map<string, FirstWord>();
  marks.forEach((event, order) => {
    if (event.kind === 'set' && !first.has(event.key))
      first.set(event.key, { order, moment: Date.parse(event.at) || 0 });
  });
  return first;
}

/** The last word on each set of a row in one session, by key. */
export function lastWords(
  marks: readonly LogEvent[],
  block: number,
  occurrence: number,
  row: string,
): ReadonlyMap<string, SetEvent> {
  const last = new Map<string, SetEvent>();
  for (const event of marks) {
    if (event.kind !== 'set') continue;
    const key = readSetKey(event.key);
    if (key?.block === block && key.occurrence === occurrence && key.row === row) last.set(event.key, event);
  }
  return last;
}

/** Reps left after a feeler set, as said before the work began; the lower of two sides. `null` where not said. */
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
  const first = firstWords(marks);
  const last = Math.max(-1, ...[...keys].map((key) => first.get(key)?.order ?? -1));
  return marks.slice(last + 1).some((event) => isOf(event, occurrence, row) && event.side === side);
}

/** The last word on each set of its row, kind and side, in the latest of these sessions in which any of them was done. */
export function lastTimeOf(
  marks: readonly LogEvent[],
  { block, row, kind, side }: SetKeyParts,
  occurrences: readonly number[],
): readonly SetEvent[] {
  for (const occurrence of [...occurrences].sort((a, b) => b - a)) {
    const done = [...lastWords(marks, block, occurrence, row).values()].filter((event) => {
      const key = readSetKey(event.key);
      return event.done !== 'left out' && key?.kind === kind && key.side === side;
    });
    if (done.length > 0) return done;
  }
  return [];
}

/** The events of any number of logs as one: each once, in one order, without what was taken back. */
import { compareIds } from '../model/identity.js';
import type { Log, LogEvent } from '../model/log.js';

/** An event with where it came from. */
export interface Marked {
  readonly event: LogEvent;
  /** The device whose log it stands in. */
  readonly device: string;
}

/**
 * In order of their moment, then of the device's count, then of id. Of two that bear the same id and say different
 * things the first by its letters is kept, so that the order of logs decides nothing.
 */
export function mergeEvents(logs: readonly Log[]): readonly Marked[] {
  const all = logs.flatMap(({ device, events }) => events.map((event): Marked => ({ event, device })));
  const byId = new Map<string, Marked>();
  for (const marked of all) {
    const known = byId.get(marked.event.id);
    if (known === undefined || compareIds(lettersOf(marked), lettersOf(known)) < 0) byId.set(marked.event.id, marked);
  }
  return withoutVoid([...byId.values()].sort(inOrder));
}

const lettersOf = ({ event, device }: Marked): string => `${JSON.stringify(event)} ${device}`;

const inOrder = ({ event: a }: Marked, { event: b }: Marked): number =>
  momentOf(a.at) - momentOf(b.at) || a.seq - b.seq || compareIds(a.id, b.id);

/** Milliseconds: devices may stand in different time zones. A text that is no moment comes first of all. */
function momentOf(at: string): number {
  const moment = Date.parse(at);
  return Number.isNaN(moment) ? Number.MIN_SAFE_INTEGER : moment;
}

/**
 * Read from the last back: one that was itself taken back takes nothing back. What is said once is said: taking the same
 * event back again changes nothing. A clock put right in between may make an event later than what takes it back; it
 * is taken back all the same, but for another taking back, which only a later one reaches.
 */
function withoutVoid(marks: readonly Marked[]): readonly Marked[] {
  const gone = new Set<string>();
  for (const { event } of [...marks].reverse()) {
    if (event.kind === 'void' && !gone.has(event.id)) gone.add(event.event);
  }
  return marks.filter(({ event }) => event.kind !== 'void' && !gone.has(event.id));
}

/**
 * A table typed later takes the place of what was typed before of the same session: the older marks are taken back. What
 * takes a mark back follows from that mark alone, so that the order in which tables are received decides nothing.
 */
import { v5 } from 'uuid';
import { readSetKey } from '../model/identity.js';
import type { LogEvent } from '../model/log.js';

/** Under which the ids of marks taken back so are made; a random UUID, never to be changed. */
const REPLACED_IDS = '6f1f5c0e-2c8d-4a53-8f0b-7a4e1d93c6b2';

/** `blockOf` gives the block of an edition. Marks from paper alone; their `seq` is the day they were typed, but for notes, which nothing replaces. */
export function replaceOlder(
  events: readonly LogEvent[],
  blockOf: (edition: number) => number | undefined,
): readonly LogEvent[] {
  const latest = new Map<string, number>();
  const sessionOf = (event: LogEvent): string | undefined => {
    const key = event.kind === 'set' ? readSetKey(event.key) : null;
    if (key !== null) return `${key.block}/${key.occurrence}`;
    return 'occurrence' in event ? `${blockOf(event.edition) ?? 0}/${event.occurrence}` : undefined;
  };
  for (const event of events) {
    const session = sessionOf(event);
    if (session !== undefined) latest.set(session, Math.max(event.seq, latest.get(session) ?? 0));
  }
  const taken = events.flatMap((event): readonly LogEvent[] => {
    const session = sessionOf(event);
    if (session === undefined || event.seq === latest.get(session)) return [];
    const { id, seq, edition, at } = event;
    return [{ id: v5(id, REPLACED_IDS), seq, edition, at, kind: 'void', event: id }];
  });
  const known = new Set(events.map(({ id }) => id));
  return [...events, ...taken.filter(({ id }) => !known.has(id))];
}

/** Which planned session each mark belongs to; what belongs to none is a problem, and counts for nothing. */
import { readSetKey, type SetKeyParts } from '../model/identity.js';
import type { LogEvent } from '../model/log.js';
import { ofClient, type Problem } from '../model/problem.js';
import type { Marked } from './merge-events.js';
import type { EditionPlaces, PlannedPlace } from './planned-sessions.js';

/** A mark of something in a session. */
export type SessionEvent = Extract<LogEvent, { readonly kind: 'opened' | 'set' | 'reserve' | 'pain' | 'closed' }>;
export type SetEvent = Extract<LogEvent, { readonly kind: 'set' }>;

export interface PlacedMark {
  readonly event: SessionEvent;
  readonly place: PlannedPlace;
  /** Of a set. */
  readonly key: SetKeyParts | null;
}

export type Placing = PlacedMark | Problem;

export const isProblem = (placing: Placing): placing is Problem => 'code' in placing;

/** `undefined` for a note, which stands in no session. Reports `mark-unknown`. */
export function placeMark(
  { event, device }: Marked,
  editions: ReadonlyMap<number, EditionPlaces>,
): Placing | undefined {
  if (event.kind === 'note' || event.kind === 'void') return undefined;
  const of = editions.get(event.edition);
  const client = [...editions.values()][0]?.edition.plan.client;
  const unknown = (what: string): Problem => ({
    code: 'mark-unknown',
    severity: 'warning',
    scope: client === undefined ? { kind: 'folder' } : ofClient(client),
    ...(client === undefined
      ? {}
      : { place: { file: `clients/${client}/log/${device}.json`, line: 1, column: 1, length: 1 } }),
    data: { edition: event.edition, mark: event.id, what },
  });
  if (of === undefined) return unknown('edition');
  const key = event.kind === 'set' ? readSetKey(event.key) : null;
  if (event.kind === 'set' && (key === null || key.block !== of.block)) return unknown(event.key);
  const occurrence = key?.occurrence ?? ('occurrence' in event ? event.occurrence : 0);
  const place = of.places.get(occurrence);
  if (place === undefined) return unknown(event.kind === 'set' ? event.key : `session ${occurrence}`);
  if (event.kind === 'set' && key !== null && !isKnownSet(event, key, place)) return unknown(event.key);
  if ((event.kind === 'reserve' || event.kind === 'pain') && event.row !== undefined && !place.rows.has(event.row)) {
    return unknown(event.row);
  }
  return { event, place, key };
}

/** An extra set has a key of its own, in a row that is there. */
const isKnownSet = ({ key, done }: SetEvent, { row }: SetKeyParts, place: PlannedPlace): boolean =>
  place.sets.has(key) || (done === 'extra' && place.rows.has(row));

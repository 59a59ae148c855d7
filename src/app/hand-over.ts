/** What is handed over with each booklet that stands: the link, the words, the message, and the days for a calendar. */
import { composeCalendar, composeHandOver } from '../booklet/compose-hand-over.js';
import type { Client } from '../model/client.js';
import type { HandOver } from '../model/hand-over.js';
import type { ClientId } from '../model/identity.js';
import { BESIDE } from '../model/sealed.js';
import type { Studio } from '../model/studio.js';
import { calendarUid, writeCalendar } from '../publish/write-calendar.js';
import type { DrawnFile } from './draw-client.js';
import type { Shown } from './issued.js';
import type { Held } from './keep-state.js';
import type { PlannedClient } from './planned-client.js';
import { webAddressOf } from './web-address.js';

interface Handed {
  readonly studio: Studio;
  readonly client: Client;
  readonly show: Shown;
}

/** Nobody is sent to train from an edition that was withdrawn or has ended. */
function standingOf({ show: { issued, book } }: Handed) {
  return issued?.standing === 'stands' ? { edition: issued.edition, booklet: book.booklet } : null;
}

/** None where nothing that was issued stands. */
export async function drawCalendar(handed: Handed): Promise<readonly DrawnFile[]> {
  const stands = standingOf(handed);
  if (stands === null) return [];
  const { edition } = stands;
  const { studio, client } = handed;
  const { days, ...calendar } = composeCalendar({ studio, client, ...stands });
  const known = await Promise.all(
    days.map(async ({ occurrence, ...day }) => ({
      ...day,
      uid: await calendarUid(edition.bookletId, String(edition.block), String(occurrence)),
    })),
  );
  const bytes = writeCalendar({ ...calendar, made: edition.issued, version: edition.n, days: known });
  return [{ path: `private/clients/${client.id}/${BESIDE.calendar.name}`, bytes }];
}

/** Of each client with a booklet that stands and a key that opens it. */
export function handOversOf(
  studio: Studio,
  planned: readonly PlannedClient[],
  shown: ReadonlyMap<ClientId, Shown>,
  { access }: Held,
): ReadonlyMap<ClientId, HandOver> {
  return new Map(
    planned.flatMap(({ client }) => {
      const show = shown.get(client.id);
      const held = access.get(client.id);
      const stands = show === undefined ? null : standingOf({ studio, client, show });
      if (stands === null || held === undefined) return [];
      const link = webAddressOf(studio, held)?.whole;
      const { by, words } = held.lock;
      const opening = { by, ...(link === undefined ? {} : { link }), ...(words === undefined ? {} : { words }) };
      return [[client.id, composeHandOver({ studio, client, ...stands }, opening)] as const];
    }),
  );
}

/** One sentence on the edition a client holds. */
import { sayFullDate } from '../../src/words/say-date.js';
import type { Desk, DeskEdition } from './desk.js';

export function EditionStands({ desk, of }: { readonly desk: Desk; readonly of: DeskEdition }) {
  const { words, speech } = desk;
  const { edition, standing, withdrawal } = of;
  if (standing === 'withdrawn' && withdrawal !== null) {
    return <strong>{words.editionWithdrawn(edition.n, sayFullDate(withdrawal.date, speech), withdrawal.why)}</strong>;
  }
  if (standing === 'ended') return <>{words.editionEnded(edition.n)}</>;
  return <>{words.editionStands(edition.n, sayFullDate(edition.issued, speech))}</>;
}

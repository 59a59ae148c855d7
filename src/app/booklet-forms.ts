/** The forms in which a client's booklet stands in the output, as the desk lists them. */
import { existsSync } from 'node:fs';
import { join, posix } from 'node:path';
import type { ClientId } from '../model/identity.js';
import { BESIDE } from '../model/sealed.js';
import type { Studio } from '../model/studio.js';
import type { DeskWords } from '../words/desk-words.js';

type Kind = keyof DeskWords['forms'];

const of = (kind: Kind, ...files: readonly string[]) => files.map((file) => ({ kind, file }));

/** The booklet page by page, in whichever size it is: what travels sealed as well. */
export const SINGLE_NAMES = [
  'booklet-a5.pdf',
  'booklet-half-letter.pdf',
  'booklet-large-a4.pdf',
  'booklet-large-letter.pdf',
] as const;

/** Of each only one stands there: the paper is the studio's, and whether it is large print the client's. */
const FORMS = [
  ...of('phone', 'booklet.html'),
  ...of('paper', 'booklet-a5.pdf', 'booklet-half-letter.pdf'),
  ...of('plain', 'booklet-a4.pdf', 'booklet-letter.pdf'),
  ...of('large', 'booklet-large-a4.pdf', 'booklet-large-letter.pdf'),
  ...of('fold', 'fold-a4.pdf', 'fold-letter.pdf'),
  ...of('fronts', 'fold-a4-fronts.pdf', 'fold-letter-fronts.pdf'),
  ...of('backs', 'fold-a4-backs.pdf', 'fold-letter-backs.pdf'),
  ...of('fold-1', 'fold-a4-part-1.pdf', 'fold-letter-part-1.pdf'),
  ...of('fronts-1', 'fold-a4-part-1-fronts.pdf', 'fold-letter-part-1-fronts.pdf'),
  ...of('backs-1', 'fold-a4-part-1-backs.pdf', 'fold-letter-part-1-backs.pdf'),
  ...of('fold-2', 'fold-a4-part-2.pdf', 'fold-letter-part-2.pdf'),
  ...of('fronts-2', 'fold-a4-part-2-fronts.pdf', 'fold-letter-part-2-fronts.pdf'),
  ...of('backs-2', 'fold-a4-part-2-backs.pdf', 'fold-letter-part-2-backs.pdf'),
  ...of('test-sheet', '../../print/test-sheet-a4.pdf', '../../print/test-sheet-letter.pdf'),
  ...of('weeks', 'weeks-a4.pdf', 'weeks-letter.pdf'),
  ...of('partner', 'partner-a4.pdf', 'partner-letter.pdf'),
  ...of('partner-phone', 'booklet/partner.html'),
  ...of('calendar', BESIDE.calendar.name),
  ...of('plan', 'plan.json'),
  ...of('draft-phone', 'draft.html'),
  ...of('draft-paper', 'draft-a5.pdf', 'draft-half-letter.pdf', 'draft-large-a4.pdf', 'draft-large-letter.pdf'),
  ...of('draft-plan', 'draft-plan.json'),
];

/** Below the build: one for the whole studio. */
export const testSheetPath = (paper: Studio['paper']): string => `private/print/test-sheet-${paper}.pdf`;

/** Those that stand in the stage, each with its way there from the desk. */
export function formsOf(stage: string, client: ClientId): readonly { readonly kind: Kind; readonly path: string }[] {
  const home = join(stage, 'private', 'clients', client);
  return FORMS.filter(({ file }) => existsSync(join(home, file))).map(({ kind, file }) => ({
    kind,
    path: posix.join('..', 'clients', client, file),
  }));
}

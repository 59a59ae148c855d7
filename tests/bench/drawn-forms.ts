/** A booklet in every form on paper there is of it, with a code as long as a real one. */
import type { Booklet } from '../../src/model/booklet.js';
import { clientId } from '../../src/model/identity.js';
import { invariant } from '../../src/model/result.js';
import type { Shown } from '../../src/print/draw-booklet.js';
import { drawForms, type PaperFile } from '../../src/print/draw-forms.js';

export const CLIENT = clientId('rowan-ashby');
/** As long as a real one with its key. */
const ADDRESS = {
  whole: `https://slate-yard.example/${'7f3a9c2e'.repeat(4)}/#open=${'q1Zb8x0Kf3v'.repeat(4).slice(0, 43)}`,
  open: `https://slate-yard.example/${'7f3a9c2e'.repeat(4)}/`,
};

export async function drawnForms(booklet: Booklet, shown: Shown): Promise<readonly PaperFile[]> {
  const { value } = await drawForms(booklet, CLIENT, ADDRESS, shown);
  invariant(value.length > 0, 'the booklet can be printed');
  return value;
}

/** The booklet on paper: laid out, checked for letters it cannot show, drawn. The PDF library is loaded on the first call. */
import type { Booklet } from '../model/booklet.js';
import type { ClientId } from '../model/identity.js';
import type { ProblemTable } from '../model/problem.js';
import { ofClient, type Problem } from '../model/problem.js';
import type { Result } from '../model/result.js';
import { drawPages } from './draw-pages.js';
import { formatOf } from './format.js';
import { layOutBooklet } from './lay-out-booklet.js';
import { loadFaces, measureWith } from './load-faces.js';
import { missingLetters } from './missing-letters.js';

const notPrintable = (client: ClientId, data: ProblemTable['not-printable']): Problem => ({
  code: 'not-printable',
  severity: 'warning',
  scope: ofClient(client),
  data,
});

/**
 * A tagged PDF of A5 pages, or null with the reason: `not-printable` where the faces lack a letter or the booklet
 * reads from right to left, `too-many-pages` where it would fill more than two folded booklets. One that only would
 * not fold in one is drawn, with the same warning. The booklet on the phone is untouched by either.
 */
export async function drawBooklet(booklet: Booklet, client: ClientId): Promise<Result<Uint8Array | null>> {
  if (booklet.direction === 'rtl')
    return {
      value: null,
      problems: [notPrintable(client, { why: 'direction', characters: [], where: '' })],
    };
  const faces = await loadFaces();
  const measure = measureWith(faces);
  const { value: pages, problems } = layOutBooklet(booklet, measure, client);
  if (pages.length === 0) return { value: null, problems };
  const missing = missingLetters(pages, measure);
  if (missing) return { value: null, problems: [...problems, notPrintable(client, { why: 'letters', ...missing })] };
  const { title, author, language, date } = booklet;
  return { value: await drawPages(pages, { title, author, language, date }, faces, formatOf(measure.sheet)), problems };
}

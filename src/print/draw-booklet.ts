/** The booklet on paper, page by page: laid out, checked for letters it cannot show, drawn. The PDF library is loaded on the first call. */
import type { Booklet } from '../model/booklet.js';
import type { ClientId } from '../model/identity.js';
import type { Drawings, Photographs } from '../model/picture.js';
import type { ProblemTable } from '../model/problem.js';
import { ofClient, ofPaper, type Problem } from '../model/problem.js';
import type { Result } from '../model/result.js';
import { sayDrawn } from '../words/say-drawing.js';
import { speechOf } from '../words/speech.js';
import type { WebAddress } from './code.js';
import { drawPages } from './draw-pages.js';
import { formatOf } from './format.js';
import { layOutBooklet, type Pictures } from './lay-out-booklet.js';
import { photographWays } from './lay-out-photograph.js';
import { picturesOf } from './lay-out-picture.js';
import { type Faces, loadFaces, measureWith } from './load-faces.js';
import type { Measure } from './measure.js';
import { missingLetters } from './missing-letters.js';
import type { DocumentInfo } from './open-document.js';
import type { Page } from './page.js';
import { A4_LARGE_SHEET, A5_SHEET, HALF_LETTER_SHEET, LETTER_LARGE_SHEET, type Sheet } from './sheet.js';

const TURNED: ProblemTable['not-printable'] = { why: 'direction', characters: [], where: '' };

/** An error of each text that holds a letter the faces lack: there is then nothing to print, and the phone is untouched. */
export const lettersLacking = (pages: readonly Page[], measure: Measure, client: ClientId): readonly Problem[] =>
  missingLetters(pages, measure).map(
    (missing): Problem => ({
      code: 'not-printable',
      severity: 'error',
      scope: ofPaper(client),
      data: { why: 'letters', ...missing },
    }),
  );

/** The sheet a booklet asks for: its size of print, on the studio's paper or on half of it. */
function sheetOf({ largePrint, paper }: Booklet): Sheet {
  if (paper === 'letter') return largePrint ? LETTER_LARGE_SHEET : HALF_LETTER_SHEET;
  return largePrint ? A4_LARGE_SHEET : A5_SHEET;
}

/** Pages ready to be drawn, in whichever form. */
export interface LaidOut {
  readonly pages: readonly Page[];
  readonly measure: Measure;
  readonly faces: Faces;
  readonly info: DocumentInfo;
}

/** What stands beside the words: a coach's own picture in the place of a drawing. */
export interface Shown {
  readonly drawings?: Drawings;
  readonly photographs?: Photographs;
}

/**
 * Null with the reason: `not-printable` where the faces lack a letter or the booklet reads from right to left,
 * `too-many-pages` where it would fill more than two folded booklets. One that only would not fold in one is laid out,
 * with the same warning. The booklet on the phone is untouched by either.
 */
export async function layOutToDraw(
  booklet: Booklet,
  client: ClientId,
  address?: WebAddress,
  { drawings, photographs }: Shown = {},
): Promise<Result<LaidOut | null>> {
  if (booklet.direction === 'rtl')
    return {
      value: null,
      problems: [{ code: 'not-printable', severity: 'warning', scope: ofClient(client), data: TURNED }],
    };
  const faces = await loadFaces();
  const measure = measureWith(faces, sheetOf(booklet));
  const { words } = speechOf(booklet.language);
  const code = address === undefined ? undefined : { text: address.whole, caption: words.paper.code };
  const pictures: Pictures = new Map(
    booklet.parts.flatMap((part) => {
      if (part.kind !== 'exercise') return [];
      const photograph = photographs?.get(part.id);
      if (photograph?.paper !== undefined)
        return [[part.id, photographWays(photograph.paper, photograph.said, measure.sheet)] as const];
      const drawn = drawings?.get(part.id);
      if (drawn === undefined) return [];
      return [[part.id, picturesOf(drawn, sayDrawn(drawn, words.drawing), measure.sheet)] as const];
    }),
  );
  const { value: pages, problems } = layOutBooklet(booklet, measure, client, code, pictures);
  if (pages.length === 0) return { value: null, problems };
  const lacking = lettersLacking(pages, measure, client);
  if (lacking.length > 0) return { value: null, problems: [...problems, ...lacking] };
  const { title, author, language, date } = booklet;
  return { value: { pages, measure, faces, info: { title, author, language, date } }, problems };
}

/** A tagged PDF of single pages, or null with the reason, as `layOutToDraw` has it. */
export async function drawBooklet(
  booklet: Booklet,
  client: ClientId,
  address?: WebAddress,
  shown: Shown = {},
): Promise<Result<Uint8Array | null>> {
  const { value: laid, problems } = await layOutToDraw(booklet, client, address, shown);
  if (laid === null) return { value: null, problems };
  const { pages, measure, faces, info } = laid;
  return { value: await drawPages(pages, info, faces, formatOf(measure.sheet)), problems };
}

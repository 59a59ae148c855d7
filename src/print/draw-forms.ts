/**
 * A booklet on paper in each of its forms: single pages, the same pages larger, sheets to fold, a sheet for each week to
 * hang up, the partner's card. It is laid out once; what is folded or enlarged are those very pages.
 */
import type { Booklet, PartnerPart } from '../model/booklet.js';
import type { ClientId } from '../model/identity.js';
import type { Result } from '../model/result.js';
import { speechOf } from '../words/speech.js';
import { cardSheet } from './card-sheet.js';
import type { WebAddress } from './code.js';
import { type LaidOut, layOutToDraw, lettersLacking, type Shown } from './draw-booklet.js';
import { drawPages } from './draw-pages.js';
import { foldParts } from './fold-parts.js';
import { formatOf, onPaper } from './format.js';
import { imposeBooklet } from './impose-booklet.js';
import { layOutPartnerCard } from './lay-out-partner-card.js';
import { layOutWeekSheets } from './lay-out-week-sheet.js';
import { measureWith } from './load-faces.js';
import type { Measure } from './measure.js';
import type { Page } from './page.js';
import { settingOf } from './setting.js';
import { A4, LETTER, type PaperSize } from './sheet.js';

/** `single` is the booklet page by page, `plain` the same pages as large as the printer's paper. */
export type PaperForm = 'single' | 'plain' | 'fold' | 'fronts' | 'backs' | 'weeks' | 'partner';

export interface PaperFile {
  readonly form: PaperForm;
  /** `booklet-a5.pdf`, `fold-a4-fronts.pdf`: what it is, and what it is printed on. */
  readonly name: string;
  readonly bytes: Uint8Array;
}

const PAPERS: Readonly<
  Record<Booklet['paper'], { readonly size: PaperSize; readonly whole: string; readonly half: string }>
> = {
  a4: { size: A4, whole: 'a4', half: 'a5' },
  letter: { size: LETTER, whole: 'letter', half: 'half-letter' },
};

export const singleName = ({ paper, largePrint }: Booklet): string =>
  largePrint ? `booklet-large-${PAPERS[paper].whole}.pdf` : `booklet-${PAPERS[paper].half}.pdf`;

/**
 * Every form there is of a booklet, the same bytes for the same booklet; none with the reason, as `layOutToDraw` has it,
 * also where the faces of a sheet lack a letter that those of the booklet have.
 * Large print stands on whole sheets and is not folded. Of a booklet that was withdrawn the single pages are left.
 */
export async function drawForms(
  booklet: Booklet,
  client: ClientId,
  address?: WebAddress,
  shown?: Shown,
): Promise<Result<readonly PaperFile[]>> {
  const { value: laid, problems } = await layOutToDraw(booklet, client, address, shown);
  if (laid === null) return { value: [], problems };
  const { pages, measure, faces, info } = laid;
  const bytes = await drawPages(pages, info, faces, formatOf(measure.sheet));
  const single: PaperFile = { form: 'single', name: singleName(booklet), bytes };
  if (booklet.parts.every(({ kind }) => kind === 'cover')) return { value: [single], problems };
  const sheets = [...weekSheets(booklet, laid, address), ...partnerCard(booklet, laid)];
  const lacking = sheets.flatMap((one) => lettersLacking(one.pages, one.measure, client));
  if (lacking.length > 0) return { value: [], problems: [...problems, ...lacking] };
  const small = booklet.largePrint ? [] : [await drawPlain(booklet, laid), ...(await drawFolded(booklet, bytes, laid))];
  const hung = await Promise.all(sheets.map((one) => drawSheets(one, laid)));
  return { value: [single, ...small, ...hung], problems };
}

async function drawPlain({ paper }: Booklet, { pages, info, faces, measure }: LaidOut): Promise<PaperFile> {
  const { size, whole } = PAPERS[paper];
  const bytes = await drawPages(pages, info, faces, onPaper(measure.sheet, size));
  return { form: 'plain', name: `booklet-${whole}.pdf`, bytes };
}

async function drawFolded(
  { paper, direction }: Booklet,
  bytes: Uint8Array,
  { pages, info }: LaidOut,
): Promise<readonly PaperFile[]> {
  const { size, whole: name } = PAPERS[paper];
  const parts = foldParts(pages);
  const binding = direction === 'rtl' ? 'right' : 'left';
  const imposed = await imposeBooklet({ bytes, parts, paper: size, binding, info });
  return imposed.flatMap(({ whole, fronts, backs }, i): readonly PaperFile[] => {
    const stem = parts.length === 1 ? `fold-${name}` : `fold-${name}-part-${i + 1}`;
    return [
      { form: 'fold', name: `${stem}.pdf`, bytes: whole },
      { form: 'fronts', name: `${stem}-fronts.pdf`, bytes: fronts },
      { form: 'backs', name: `${stem}-backs.pdf`, bytes: backs },
    ];
  });
}

/** Pages that are no book, laid out. */
interface Sheets {
  readonly form: PaperForm;
  readonly name: string;
  readonly title: string;
  readonly pages: readonly Page[];
  readonly measure: Measure;
}

async function drawSheets({ form, name, title, pages, measure }: Sheets, { info, faces }: LaidOut): Promise<PaperFile> {
  return { form, name, bytes: await drawPages(pages, { ...info, title }, faces, formatOf(measure.sheet)) };
}

function weekSheets(booklet: Booklet, { info, faces }: LaidOut, address: WebAddress | undefined): readonly Sheets[] {
  const { size, whole } = PAPERS[booklet.paper];
  const measure = measureWith(faces, cardSheet(size, booklet.largePrint ? 'large' : 'book', 2));
  const pages = layOutWeekSheets({
    booklet,
    speech: speechOf(booklet.language),
    measure,
    ...(address === undefined ? {} : { address }),
  });
  return pages.length === 0 ? [] : [{ form: 'weeks', name: `weeks-${whole}.pdf`, title: info.title, pages, measure }];
}

/** It goes to somebody else: its own title, and nobody's dates. */
function partnerCard(booklet: Booklet, { faces }: LaidOut): readonly Sheets[] {
  const part = booklet.parts.find((one): one is PartnerPart => one.kind === 'partner');
  if (part === undefined) return [];
  const { size, whole } = PAPERS[booklet.paper];
  const measure = measureWith(faces, cardSheet(size, 'book', 2));
  const pages = layOutPartnerCard(part, settingOf(booklet, measure, false));
  return [{ form: 'partner', name: `partner-${whole}.pdf`, title: part.title, pages, measure }];
}

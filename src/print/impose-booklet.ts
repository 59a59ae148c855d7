/**
 * Finished pages placed two and two on sheets to fold. No page is drawn again: each is taken over whole, once, and shown
 * where it belongs. Sheets carry no tags and their files say so by their names; whoever reads aloud has the single pages.
 */
import type { PDFDocument, PDFRef } from '@cantoo/pdf-lib';
import type { DocumentInfo } from './draw-pages.js';
import type { FoldPart } from './fold-parts.js';
import { type Binding, type FoldedSheet, imposeFolded, type SheetSide } from './impose.js';
import { mm, type PaperSize } from './sheet.js';

export interface ImposedPart {
  /** Front, back, front, back: for a printer that turns the sheet itself. */
  readonly whole: Uint8Array;
  /** For one that does not: one side of each sheet, then the other. */
  readonly fronts: Uint8Array;
  readonly backs: Uint8Array;
}

export interface Imposing {
  /** Of the finished pages. */
  readonly bytes: Uint8Array;
  readonly parts: readonly FoldPart[];
  /** Of the unfolded sheet, upright. */
  readonly paper: PaperSize;
  readonly binding: Binding;
  readonly info: DocumentInfo;
}

const CREATOR = 'Chalkleaf';
/** Nearer to the edge than this many printers set nothing. Common practice, no source. */
const EDGE = mm(5);
const FOLD_TICK = mm(4);
const MARK = 0.5;

/** Staples a quarter of the height from head and foot, as long as a staple is wide. Common practice, no source. */
const STAPLES = [1 / 4, 3 / 4] as const;
const STAPLE = mm(12);
/** A pamphlet stitch of three holes: the middle, and a sixth of the height from head and foot. Common practice, no source. */
const HOLES = [1 / 6, 1 / 2, 5 / 6] as const;
const HOLE = 1.2;

type Marks = 'staples' | 'holes' | 'none';

/** One side of one sheet, and the marks of its fold. */
interface Side {
  readonly pages: SheetSide;
  readonly marks: Marks;
}

/** A stapler works from the outside, a needle from the inside: each has its marks where they are looked for. */
const sidesOf = (sheets: readonly FoldedSheet[]): readonly { readonly front: Side; readonly back: Side }[] =>
  sheets.map(({ front, back }, i) => ({
    front: { pages: front, marks: i === 0 ? 'staples' : 'none' },
    back: { pages: back, marks: i === sheets.length - 1 ? 'holes' : 'none' },
  }));

const number = (value: number): string => String(Math.round(value * 1000) / 1000);

/** In the axes of the file, from the bottom left corner. */
function foldMarks(marks: Marks, width: number, height: number): string {
  if (marks === 'none') return '';
  const x = number(width / 2);
  const stroke = (from: number, to: number): string => `${x} ${number(from)} m ${x} ${number(to)} l S`;
  const ticks = [stroke(EDGE, EDGE + FOLD_TICK), stroke(height - EDGE - FOLD_TICK, height - EDGE)];
  const along =
    marks === 'staples'
      ? STAPLES.map((part) => stroke(part * height - STAPLE / 2, part * height + STAPLE / 2))
      : HOLES.map(
          (part) => `q 1 J ${number(2 * HOLE)} w ${x} ${number(part * height)} m ${x} ${number(part * height)} l S Q`,
        );
  return ['q', '0 G', `${number(MARK)} w`, ...ticks, ...along, 'Q'].join('\n');
}

/** A page taken over: its own operators, as they are, under a name that every sheet of the file may call. */
interface Placed {
  readonly ref: PDFRef;
  readonly width: number;
  readonly height: number;
}

type Library = typeof import('@cantoo/pdf-lib');

/** Page by number into forms of `target`; what several pages share, their faces above all, is taken over once. */
function takePages(library: Library, source: PDFDocument, target: PDFDocument, wanted: readonly number[]) {
  const { PDFName, PDFObjectCopier, PDFStream, PDFArray } = library;
  const copier = PDFObjectCopier.for(source.context, target.context);
  const placed = new Map<number, Placed>();
  for (const number of wanted) {
    const page = source.getPage(number - 1);
    const { width, height } = page.getSize();
    const contents = page.node.Contents();
    const stream = contents instanceof PDFArray ? contents.lookup(0) : contents;
    if (!(stream instanceof PDFStream) || (contents instanceof PDFArray && contents.size() > 1)) {
      throw new Error(`page ${number} has not one stream of operators`);
    }
    const form = copier.copy(stream);
    const resources = page.node.Resources();
    form.dict.set(PDFName.of('Type'), PDFName.of('XObject'));
    form.dict.set(PDFName.of('Subtype'), PDFName.of('Form'));
    form.dict.set(PDFName.of('BBox'), target.context.obj([0, 0, width, height]));
    if (resources !== undefined) form.dict.set(PDFName.of('Resources'), copier.copy(resources));
    placed.set(number, { ref: target.context.register(form), width, height });
  }
  return placed;
}

/** The two pages meet at the fold; what the paper is wider than both, a millimetre of A4, is left at the outer edges. */
function addSide(
  library: Library,
  target: PDFDocument,
  paper: PaperSize,
  { pages, marks }: Side,
  placed: ReadonlyMap<number, Placed>,
): void {
  const { PDFName } = library;
  const [width, height] = [paper.height, paper.width];
  const sheet = target.addPage([width, height]);
  const shown = pages.flatMap((page, half): readonly string[] => {
    const form = placed.get(page);
    if (form === undefined) return [];
    const name = `P${page}`;
    sheet.node.setXObject(PDFName.of(name), form.ref);
    const x = half === 0 ? width / 2 - form.width : width / 2;
    return [`q 1 0 0 1 ${number(x)} ${number((height - form.height) / 2)} cm /${name} Do Q`];
  });
  const operators = [...shown, foldMarks(marks, width, height)].filter((line) => line !== '').join('\n');
  sheet.node.set(PDFName.of('Contents'), target.context.register(target.context.flateStream(operators)));
}

async function imposeSides(
  library: Library,
  source: PDFDocument,
  sides: readonly Side[],
  { paper, info, parts }: Imposing,
  part: FoldPart,
): Promise<Uint8Array> {
  const { PDFDocument, PDFName } = library;
  const target = await PDFDocument.create({ updateMetadata: false });
  // Page numbers of a second part begin where the first one ended.
  const offset = part.from - 1;
  const shifted = sides.map((side): Side => ({ ...side, pages: [side.pages[0] + offset, side.pages[1] + offset] }));
  const wanted = shifted.flatMap(({ pages }) => pages).filter((page) => page <= part.to);
  const placed = takePages(
    library,
    source,
    target,
    [...new Set(wanted)].sort((a, b) => a - b),
  );
  for (const side of shifted) addSide(library, target, paper, side, placed);
  target.setTitle(parts.length > 1 ? `${info.title} (${part.from}–${part.to})` : info.title);
  target.setAuthor(info.author);
  target.setCreator(CREATOR);
  target.setProducer(CREATOR);
  target.setLanguage(info.language);
  target.setCreationDate(new Date(`${info.date}T00:00:00Z`));
  target.catalog.set(
    PDFName.of('ViewerPreferences'),
    target.context.obj({ PrintScaling: 'None', Duplex: 'DuplexFlipShortEdge' }),
  );
  return target.save({ useObjectStreams: true, addDefaultPage: false, updateFieldAppearances: false });
}

/** A file of whole sheets for each part, and its fronts and backs each in a file of their own. Same bytes for the same pages. */
export async function imposeBooklet(imposing: Imposing): Promise<readonly ImposedPart[]> {
  const library = await import('@cantoo/pdf-lib');
  const source = await library.PDFDocument.load(imposing.bytes, { updateMetadata: false });
  const imposed: ImposedPart[] = [];
  for (const part of imposing.parts) {
    const sheets = sidesOf(imposeFolded(part.to - part.from + 1, imposing.binding));
    const made = (sides: readonly Side[]): Promise<Uint8Array> => imposeSides(library, source, sides, imposing, part);
    imposed.push({
      whole: await made(sheets.flatMap(({ front, back }) => [front, back])),
      fronts: await made(sheets.map(({ front }) => front)),
      backs: await made(sheets.map(({ back }) => back)),
    });
  }
  return imposed;
}

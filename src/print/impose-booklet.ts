/**
 * Finished pages placed two and two on sheets to fold. No page is drawn again: each is taken over whole, once, and shown
 * where it belongs. Sheets carry no tags and their files say so by their names; whoever reads aloud has the single pages.
 */
import type { PDFDocument, PDFRef } from '@cantoo/pdf-lib';
import { foldMarks, type Side, sidesOf } from './fold-marks.js';
import type { FoldPart } from './fold-parts.js';
import { type Binding, imposeFolded } from './impose.js';
import type { DocumentInfo } from './open-document.js';
import { number } from './operators.js';
import type { PaperSize } from './sheet.js';

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

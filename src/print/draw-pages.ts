/**
 * Boxes into a tagged PDF. Dumb on purpose: every coordinate comes from the layout, and pdfkit's own cursor,
 * wrapping and tables are never used. The file is the same bytes for the same pages and information.
 */
import { drawBox } from './draw-box.js';
import { Structure } from './draw-structure.js';
import { drawnAs, type Format } from './format.js';
import type { Faces } from './load-faces.js';
import { type DocumentInfo, type OpenDocument, openDocument } from './open-document.js';
import type { Box, Page, Tag } from './page.js';
import { LINE } from './sheet.js';

/** Neighbouring boxes of one element are one stretch of marked content. */
function stretches(boxes: readonly Box[]): readonly (readonly Box[])[] {
  const grouped: Box[][] = [];
  let of: Tag | undefined | null = null;
  for (const box of boxes) {
    const own = box.kind === 'frame' ? undefined : box.tag;
    const last = grouped.at(-1);
    if (last && own === of) last.push(box);
    else grouped.push([box]);
    of = own;
  }
  return grouped;
}

function drawPage(open: OpenDocument, page: Page, structure: Structure, format: Format): void {
  const { document } = open;
  document.addPage();
  Object.assign(document.page.dictionary.data, { Tabs: 'S' });
  for (const target of page.targets) document.addNamedDestination(target.name, 'XYZ', 0, target.y, null);
  for (const bookmark of page.bookmarks) document.outline.addItem(bookmark.title);
  for (const boxes of stretches(page.boxes)) {
    const [first] = boxes;
    const tag = first === undefined || first.kind === 'frame' ? undefined : first.tag;
    if (tag && boxes.every((box) => box.kind === 'empty')) {
      structure.element(tag);
      continue;
    }
    if (tag) structure.open(tag);
    else document.markContent('Artifact', { type: 'Layout' });
    for (const box of boxes) drawBox(open, box, format);
    document.endMarkedContent();
    if (tag?.role === 'Figure') structure.bound(tag, boxes);
    if (tag) linkTo(document, boxes, tag, structure, format);
  }
  open.closePage();
}

/** One click field over a link's words, named by them. */
function linkTo(
  document: PDFKit.PDFDocument,
  boxes: readonly Box[],
  tag: Tag,
  structure: Structure,
  { times }: Format,
): void {
  const words = boxes.filter((box) => box.kind === 'text').filter((box) => box.to !== undefined);
  const [first] = words;
  if (!first?.to) return;
  const left = Math.min(...words.map((box) => box.x));
  const right = Math.max(...words.map((box) => box.x + box.width));
  const top = Math.min(...words.map((box) => box.y)) - (LINE - 3) * times;
  const bottom = Math.max(...words.map((box) => box.y)) + 3 * times;
  document.goTo(left, top, right - left, bottom - top, first.to, {
    structParent: structure.element(tag),
    Contents: Object(words.map((box) => box.text).join(' ')),
  });
  structure.element(tag).end();
}

/** `laid` as they were laid out, on the sheet of the format. */
export async function drawPages(
  laid: readonly Page[],
  info: DocumentInfo,
  faces: Faces,
  format: Format,
): Promise<Uint8Array> {
  const open = await openDocument(info, format.paper, faces);
  const structure = new Structure(open.document, format);
  for (const page of laid) drawPage(open, drawnAs(page, format), structure, format);
  structure.close();
  return open.finish();
}

/**
 * Boxes into a tagged PDF. Dumb on purpose: every coordinate comes from the layout, and pdfkit's own cursor,
 * wrapping and tables are never used. The file is the same bytes for the same pages and information.
 */
import type { IsoDate } from '../model/day.js';
import { drawBox } from './draw-box.js';
import { Structure } from './draw-structure.js';
import { drawnAs, type Format } from './format.js';
import type { Faces } from './load-faces.js';
import type { Box, Page, Tag } from './page.js';
import { LINE } from './sheet.js';
import type { Face } from './type-styles.js';

export interface DocumentInfo {
  readonly title: string;
  readonly author: string;
  /** BCP 47. */
  readonly language: string;
  readonly date: IsoDate;
}

const CREATOR = 'Chalkleaf';

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/** pdfkit writes its XMP metadata unescaped; the information dictionary is written by then and keeps the true text. */
function escapeMetadata(document: PDFKit.PDFDocument): void {
  const end = document.endMetadata.bind(document);
  document.endMetadata = () => {
    document.info.Title = escaped(document.info.Title ?? '');
    document.info.Author = escaped(document.info.Author ?? '');
    end();
  };
}

const BYTES_IN_AN_ID = 16;

/** Lengths to a hundredth of a point. */
const exactly = (_: string, value: unknown): unknown => (typeof value === 'number' ? Number(value.toFixed(2)) : value);

/** All that is drawn of a box, and what is said of it; of a photograph where it stands, its file has no room here. */
function whatOf(box: Box): string {
  if (box.kind === 'photograph') {
    const { copy, tag: figure, ...place } = box;
    return JSON.stringify([place, figure?.alt, copy.bytes.length], exactly);
  }
  if (box.kind === 'frame') return JSON.stringify(box, exactly);
  const { tag, ...drawn } = box;
  return JSON.stringify([drawn, tag?.role, tag?.alt, tag?.spoken], exactly);
}

/** An identifier from the contents, by FNV-1a in four lanes: no clock and no chance in it. */
function identify(pages: readonly Page[], info: DocumentInfo): Uint8Array {
  const lanes = [0x811c9dc5, 0x811c9dc6, 0x811c9dc7, 0x811c9dc8];
  const take = (text: string): void => {
    for (let i = 0; i < text.length; i += 1) {
      const lane = i & 3;
      lanes[lane] = Math.imul((lanes[lane] ?? 0) ^ text.charCodeAt(i), 0x01000193) >>> 0;
    }
  };
  take(JSON.stringify(info));
  for (const page of pages) {
    for (const box of page.boxes) {
      take(whatOf(box));
    }
  }
  return Uint8Array.from({ length: BYTES_IN_AN_ID }, (_, i) => ((lanes[i >> 2] ?? 0) >>> ((i & 3) * 8)) & 0xff);
}

const FACES: readonly Face[] = ['text', 'text-italic', 'text-strong', 'display', 'display-strong'];

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

function drawPage(document: PDFKit.PDFDocument, page: Page, structure: Structure, format: Format): void {
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
    for (const box of boxes) drawBox(document, box, format);
    document.endMarkedContent();
    if (tag?.role === 'Figure') structure.bound(tag, boxes);
    if (tag) linkTo(document, boxes, tag, structure, format);
  }
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
  const pages = laid.map((page) => drawnAs(page, format));
  const [{ default: Document }, { toBytes }] = await Promise.all([import('pdfkit'), import('pdfkit/output')]);
  const document = new Document({
    size: [format.paper.width, format.paper.height],
    margin: 0,
    autoFirstPage: false,
    pdfVersion: '1.7',
    tagged: true,
    displayTitle: true,
    lang: info.language,
    info: {
      Title: info.title,
      Author: info.author,
      Creator: CREATOR,
      Producer: CREATOR,
      CreationDate: new Date(`${info.date}T00:00:00Z`),
    },
  });
  document._id = identify(pages, info);
  escapeMetadata(document);
  for (const face of FACES) document.registerFont(face, faces[face]);
  const structure = new Structure(document, format);
  for (const page of pages) drawPage(document, page, structure, format);
  structure.close();
  document._root.data.PageLabels = { Nums: [0, { S: 'D', St: 1 }] };
  const bytes = toBytes(document);
  document.end();
  return bytes;
}

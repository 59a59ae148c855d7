/** A tagged file begun: whose it is, its faces, and its bytes once it is finished. The same bytes for the same drawing. */
import type { IsoDate } from '../model/day.js';
import { EmbeddedFace } from './draw-text.js';
import { gatherFrom } from './gather-bytes.js';
import type { Faces } from './load-faces.js';
import type { PaperSize } from './sheet.js';
import type { Face } from './type-styles.js';

export interface DocumentInfo {
  readonly title: string;
  readonly author: string;
  /** BCP 47. */
  readonly language: string;
  readonly date: IsoDate;
}

export interface OpenDocument {
  readonly document: PDFKit.PDFDocument;
  /** On the page that is open. */
  readonly faceOf: (face: Face) => EmbeddedFace;
  /** To be called before another page begins, and after the last. */
  readonly closePage: () => void;
  readonly finish: () => Uint8Array;
}

const CREATOR = 'Chalkleaf';

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

const BYTES_IN_AN_ID = 16;

/** An identifier from the contents, by FNV-1a in four lanes: no clock and no chance in it. */
function identify(pieces: readonly Uint8Array[], info: DocumentInfo): Uint8Array {
  const lanes = Uint32Array.of(0x811c9dc5, 0x811c9dc6, 0x811c9dc7, 0x811c9dc8);
  for (const piece of [Buffer.from(JSON.stringify(info)), ...pieces]) {
    for (let i = 0; i < piece.length; i += 1) {
      const lane = i & 3;
      lanes[lane] = Math.imul((lanes[lane] ?? 0) ^ (piece[i] ?? 0), 0x01000193);
    }
  }
  return Uint8Array.from({ length: BYTES_IN_AN_ID }, (_, i) => ((lanes[i >> 2] ?? 0) >>> ((i & 3) * 8)) & 0xff);
}

/**
 * pdfkit writes its XMP metadata unescaped; the information dictionary is written by then and keeps the true text. So is
 * all that is drawn, by which the file is identified.
 */
function finishMetadata(document: PDFKit.PDFDocument, info: DocumentInfo, pieces: () => readonly Uint8Array[]): void {
  const end = document.endMetadata.bind(document);
  document.endMetadata = () => {
    document._id = identify(pieces(), info);
    document.info.Title = escaped(info.title);
    document.info.Author = escaped(info.author);
    end();
  };
}

/** The PDF library is loaded on the first call. */
export async function openDocument(
  info: DocumentInfo,
  { width, height }: PaperSize,
  faces: Faces,
): Promise<OpenDocument> {
  const { default: Document } = await import('pdfkit');
  const document = new Document({
    size: [width, height],
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
  const { closePage, pieces, bytes } = gatherFrom(document);
  finishMetadata(document, info, pieces);
  const embedded = new Map<Face, EmbeddedFace>();
  const embed = (face: Face): EmbeddedFace => {
    document.registerFont(face, faces[face].font);
    document.font(face);
    const own = new EmbeddedFace(document._font, faces[face]);
    embedded.set(face, own);
    return own;
  };
  return {
    document,
    closePage,
    faceOf: (face) => {
      const own = embedded.get(face) ?? embed(face);
      own.nameOn(document.page);
      return own;
    },
    finish: () => {
      document._root.data.PageLabels = { Nums: [0, { S: 'D', St: 1 }] };
      document.end();
      return bytes();
    },
  };
}

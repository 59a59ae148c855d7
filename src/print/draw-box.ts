/** One box on the current page, in PDF operators. The page's axes are pdfkit's: from the top left corner, y downwards. */
import { drawPhotograph } from './draw-photograph.js';
import { drawPicture } from './draw-picture.js';
import { type Format, sizeOf } from './format.js';
import type { Box, FrameBox, LineBox, TextBox } from './page.js';
import { FEATURES, TYPE_STYLES } from './type-styles.js';

/** Thousandths of a point are finer than any press. */
const number = (value: number): string => String(Math.round(value * 1000) / 1000);

/** Glyphs in runs, with kerning between them where the face asks for it. */
function shownGlyphs(glyphs: readonly string[], positions: readonly PDFKit.ShapedPosition[]): string {
  const parts: string[] = [];
  let run = '';
  glyphs.forEach((glyph, i) => {
    run += glyph;
    const position = positions[i];
    const kern = position ? position.xAdvance - position.advanceWidth : 0;
    if (kern !== 0) {
      parts.push(`<${run}>${number(-kern)}`);
      run = '';
    }
  });
  if (run !== '') parts.push(`<${run}>`);
  return `[${parts.join('')}] TJ`;
}

/** Marks that a face places apart, one glyph at a time; everything else in one go. */
function textOperators(document: PDFKit.PDFDocument, box: TextBox, format: Format): string {
  const { face } = TYPE_STYLES[box.style];
  const size = sizeOf(format, box.style);
  const [glyphs, positions] = document._font.encode(box.endsAtSpace ? `${box.text} ` : box.text, FEATURES[face]);
  const at = (x: number, y: number): string => `1 0 0 -1 ${number(x)} ${number(y)} Tm`;
  const start = `BT /${document._font.id} ${number(size)} Tf`;
  if (positions.every((position) => position.xOffset === 0 && position.yOffset === 0))
    return `${start} ${at(box.x, box.y)} ${shownGlyphs(glyphs, positions)} ET`;
  const scale = size / 1000;
  let x = box.x;
  const each = glyphs.map((glyph, i) => {
    const position = positions[i];
    const shown = `${at(x + (position?.xOffset ?? 0) * scale, box.y - (position?.yOffset ?? 0) * scale)} <${glyph}> Tj`;
    x += (position?.xAdvance ?? 0) * scale;
    return shown;
  });
  return `${start} ${each.join(' ')} ET`;
}

/** U+FFFD, the replacement character. */
const NO_LETTER = 0xfffd;

function drawText(document: PDFKit.PDFDocument, box: TextBox, format: Format): void {
  document.font(TYPE_STYLES[box.style].face);
  const font = document._font;
  document.page.fonts[font.id] ??= font.ref();
  // What stands for a letter that is missing means no letter; as U+0000 a reader could not say so.
  font.unicode[0] = [NO_LETTER];
  document.addContent(textOperators(document, box, format));
}

function lineOperators(box: LineBox): string {
  const path = `${number(box.thickness)} w ${number(box.x)} ${number(box.y)} m ${number(box.toX)} ${number(box.toY)} l S`;
  return box.dotted ? `q 1 J [0 ${number(box.thickness * 3)}] 0 d ${path} Q` : path;
}

const frameOperators = (box: FrameBox): string =>
  `${number(box.thickness)} w ${number(box.x)} ${number(box.y)} ${number(box.width)} ${number(box.height)} re S`;

/** Black is what a page begins with: grey 0, so no colour is ever set. */
export function drawBox(document: PDFKit.PDFDocument, box: Box, format: Format): void {
  switch (box.kind) {
    case 'text':
      drawText(document, box, format);
      break;
    case 'line':
      document.addContent(lineOperators(box));
      break;
    case 'empty':
      break;
    case 'frame':
      document.addContent(frameOperators(box));
      break;
    case 'picture':
      drawPicture(document, box);
      break;
    case 'photograph':
      drawPhotograph(document, box);
      break;
  }
}

/** One box on the current page, in PDF operators. The page's axes are pdfkit's: from the top left corner, y downwards. */
import { drawPhotograph } from './draw-photograph.js';
import { drawPicture } from './draw-picture.js';
import type { Format } from './format.js';
import type { OpenDocument } from './open-document.js';
import { number } from './operators.js';
import type { Box, FrameBox, LineBox } from './page.js';
import { TYPE_STYLES } from './type-styles.js';

function lineOperators(box: LineBox): string {
  const path = `${number(box.thickness)} w ${number(box.x)} ${number(box.y)} m ${number(box.toX)} ${number(box.toY)} l S`;
  return box.dotted ? `q 1 J [0 ${number(box.thickness * 3)}] 0 d ${path} Q` : path;
}

const frameOperators = (box: FrameBox): string =>
  `${number(box.thickness)} w ${number(box.x)} ${number(box.y)} ${number(box.width)} ${number(box.height)} re S`;

/** Black is what a page begins with: grey 0, so no colour is ever set. */
export function drawBox({ document, faceOf }: OpenDocument, box: Box, format: Format): void {
  switch (box.kind) {
    case 'text':
      document.addContent(faceOf(TYPE_STYLES[box.style].face).operators(box, format));
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

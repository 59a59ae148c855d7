/** A coach's own picture in a document: its file as it is, which a reader of PDF decodes by itself, in it once. */
import type { PictureCopy } from '../model/picture.js';
import type { PhotographBox } from './page.js';
import { type Form, showForm } from './show-form.js';

const imagesIn = new WeakMap<PDFKit.PDFDocument, Map<PictureCopy, Form>>();

function imageOf(document: PDFKit.PDFDocument, copy: PictureCopy): Form {
  const images = imagesIn.get(document) ?? new Map<PictureCopy, Form>();
  imagesIn.set(document, images);
  const known = images.get(copy);
  if (known) return known;
  const ref = document.ref({
    Type: 'XObject',
    Subtype: 'Image',
    Width: copy.width,
    Height: copy.height,
    ColorSpace: 'DeviceGray',
    BitsPerComponent: 8,
    Filter: 'DCTDecode',
  });
  ref.end(Buffer.from(copy.bytes));
  const made = { name: `P${images.size + 1}`, ref };
  images.set(copy, made);
  return made;
}

/** An image is one wide and one high, upwards; the page's axes run down. */
export function drawPhotograph(document: PDFKit.PDFDocument, { x, y, width, height, copy }: PhotographBox): void {
  showForm(document, imageOf(document, copy), [width, 0, 0, -height, x, y + height]);
}

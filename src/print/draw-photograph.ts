/** A coach's own picture in a document: its file as it is, which a reader of PDF decodes by itself, in it once. */
import type { PictureCopy } from '../model/picture.js';
import type { PhotographBox } from './page.js';

interface Image {
  readonly name: string;
  readonly ref: PDFKit.PDFKitReference;
}

const imagesIn = new WeakMap<PDFKit.PDFDocument, Map<PictureCopy, Image>>();

function imageOf(document: PDFKit.PDFDocument, copy: PictureCopy): Image {
  const images = imagesIn.get(document) ?? new Map<PictureCopy, Image>();
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

const number = (value: number): string => String(Math.round(value * 1000) / 1000);

/** An image is one wide and one high, upwards; the page's axes run down. */
export function drawPhotograph(document: PDFKit.PDFDocument, { x, y, width, height, copy }: PhotographBox): void {
  const { name, ref } = imageOf(document, copy);
  document.page.xobjects[name] = ref;
  const matrix = [width, 0, 0, -height, x, y + height].map(number).join(' ');
  document.addContent(`q ${matrix} cm /${name} Do Q`);
}

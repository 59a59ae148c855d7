/** The tree of tags, built while pages are drawn: an element is made when first met, in reading order, and stays open. */
import { type Format, sizeOf } from './format.js';
import type { Box, Tag } from './page.js';

function cornersOf(box: Box, format: Format): readonly (readonly [number, number])[] {
  switch (box.kind) {
    case 'text':
      return [
        [box.x, box.y - sizeOf(format, box.style)],
        [box.x + box.width, box.y],
      ];
    case 'line':
      return [
        [box.x - box.thickness / 2, box.y],
        [box.toX + box.thickness / 2, box.toY],
      ];
    case 'frame':
    case 'picture':
    case 'photograph':
      return [
        [box.x, box.y],
        [box.x + box.width, box.y + box.height],
      ];
    case 'empty':
      return [[box.x, box.y]];
  }
}

export class Structure {
  readonly #document: PDFKit.PDFDocument;
  readonly #format: Format;
  readonly #root: PDFKit.PDFStructureElement;
  readonly #elements = new Map<Tag, PDFKit.PDFStructureElement>();

  constructor(document: PDFKit.PDFDocument, format: Format) {
    this.#document = document;
    this.#format = format;
    this.#root = document.struct('Document', {});
    document.addStructure(this.#root);
  }

  element(tag: Tag): PDFKit.PDFStructureElement {
    const known = this.#elements.get(tag);
    if (known) return known;
    const parent = tag.parent ? this.element(tag.parent) : this.#root;
    const made = this.#document.struct(tag.role, {
      ...(tag.spoken === undefined ? {} : { actual: tag.spoken }),
      ...(tag.alt === undefined ? {} : { alt: tag.alt }),
      ...(tag.scope === undefined ? {} : { scope: tag.scope }),
      ...(tag.lang === undefined ? {} : { lang: tag.lang }),
    });
    if (tag.columns !== undefined) made.dictionary.data.A = { O: 'Table', ColSpan: tag.columns };
    parent.add(made);
    this.#elements.set(tag, made);
    return made;
  }

  /** What is drawn until the marked content ends belongs to this element. */
  open(tag: Tag): void {
    const element = this.element(tag);
    element.add(this.#document.markStructureContent(tag.role));
  }

  /** Where a figure stands on its page, in the axes of the file: from the bottom left corner, y upwards. */
  bound(tag: Tag, boxes: readonly Box[]): void {
    const points = boxes.flatMap((box) => cornersOf(box, this.#format));
    const xs = points.map(([x]) => x);
    const ys = points.map(([, y]) => this.#format.paper.height - y);
    this.element(tag).dictionary.data.A = {
      O: 'Layout',
      Placement: 'Block',
      BBox: [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)],
    };
  }

  close(): void {
    this.#root.end();
  }
}

/** The tree of tags, built while pages are drawn: an element is made when first met, in reading order, and stays open. */
import type { Tag } from './page.js';

export class Structure {
  readonly #document: PDFKit.PDFDocument;
  readonly #root: PDFKit.PDFStructureElement;
  readonly #elements = new Map<Tag, PDFKit.PDFStructureElement>();

  constructor(document: PDFKit.PDFDocument) {
    this.#document = document;
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

  close(): void {
    this.#root.end();
  }
}

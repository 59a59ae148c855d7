/** What pdfkit 0.20 has and its published types do not yet: fonts parsed beforehand, structure, the file's identifier. */
declare namespace PDFKit {
  interface ShapedPosition {
    readonly xAdvance: number;
    readonly yAdvance: number;
    readonly xOffset: number;
    readonly yOffset: number;
    /** Added when a run is scaled: the glyph's own advance, before kerning. */
    readonly advanceWidth: number;
  }

  interface FontInUse {
    readonly id: string;
    ref(): unknown;
    /** The letters each glyph of the embedded subset stands for. */
    readonly unicode: (readonly number[])[];
    /** Glyphs of the embedded subset in hexadecimal, and their positions in thousandths of the size. */
    encode(text: string, features: readonly string[]): [readonly string[], readonly ShapedPosition[]];
  }

  interface PDFDocument {
    readonly _font: FontInUse;
    readonly _root: { readonly data: Record<string, unknown> };
    _id: Uint8Array;
    registerFont(name: string, face: { layout(text: string): unknown }): this;
    goTo(
      x: number,
      y: number,
      width: number,
      height: number,
      name: string,
      options: { readonly structParent: PDFStructureElement; readonly Contents: unknown },
    ): this;
    struct(
      role: string,
      options: { readonly alt?: string; readonly actual?: string; readonly scope?: 'Column' | 'Row' },
    ): PDFStructureElement;
  }

  interface PDFStructureElement {
    readonly dictionary: { readonly data: Record<string, unknown> };
  }
}

declare module 'pdfkit/output' {
  /** To be called before `end`. */
  export function toBytes(document: PDFKit.PDFDocument): Promise<Uint8Array>;
}

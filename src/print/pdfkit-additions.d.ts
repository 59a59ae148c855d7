/** What pdfkit 0.20 has and its published types do not yet: fonts parsed beforehand, structure, the file's identifier. */
declare namespace PDFKit {
  interface FontInUse {
    readonly id: string;
    ref(): unknown;
    /** Glyphs that are embedded, by their numbers in the file. */
    readonly subset: {
      readonly glyphs: readonly number[];
      includeGlyph(glyph: number): number;
      /** Adds the parts of what is put together to `glyphs`. */
      encode: () => Uint8Array;
    };
    /** By these numbers, in thousandths of the size. */
    readonly widths: number[];
    /** The letters each of them stands for. */
    readonly unicode: (readonly number[])[];
  }

  interface PDFDocument {
    readonly _font: FontInUse;
    readonly _root: { readonly data: Record<string, unknown> };
    _id: Uint8Array;
    /** How long the file is up to now. */
    _offset: number;
    /** Into the file. */
    _write: (data: string | Uint8Array) => void;
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

/** What is in a document once and shown where it is wanted: a drawing, a picture. */

export interface Form {
  readonly name: string;
  readonly ref: PDFKit.PDFKitReference;
}

const number = (value: number): string => String(Math.round(value * 1e5) / 1e5);

/** On the current page; `matrix` as ISO 32000 has it, from its own axes to the page's. */
export function showForm(
  document: PDFKit.PDFDocument,
  { name, ref }: Form,
  matrix: readonly [number, number, number, number, number, number],
): void {
  document.page.xobjects[name] = ref;
  document.addContent(`q ${matrix.map(number).join(' ')} cm /${name} Do Q`);
}

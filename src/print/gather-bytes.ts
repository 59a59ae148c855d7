/**
 * What pdfkit writes, gathered here: it turns every operator and every line of a file into bytes of its own, one letter
 * at a time, and passes each on as an event. Here a page's operators become bytes at once, and the file once it ends.
 */

export interface Gathered {
  /** The operators of the page that is open, to be written before another begins. */
  readonly closePage: () => void;
  /** All that was written up to now, in order. */
  readonly pieces: () => readonly Uint8Array[];
  readonly bytes: () => Uint8Array;
}

/** Letters of a PDF are bytes. */
const bytesOf = (lines: readonly string[]): Uint8Array => Buffer.from(`${lines.join('\n')}\n`, 'latin1');

/** From now on; what was written before is taken along. */
export function gatherFrom(document: PDFKit.PDFDocument): Gathered {
  const written: Uint8Array[] = [];
  let lines: string[] = [];
  const settle = (): void => {
    if (lines.length > 0) written.push(bytesOf(lines));
    lines = [];
  };
  let operators: string[] = [];
  const before = document.read();
  if (before !== null) written.push(Buffer.from(before));
  document._write = (data) => {
    if (typeof data === 'string') {
      lines.push(data);
      document._offset += data.length + 1;
    } else {
      settle();
      written.push(data);
      document._offset += data.length;
    }
  };
  document.addContent = (data) => {
    operators.push(data);
    return document;
  };
  const pieces = (): readonly Uint8Array[] => {
    settle();
    return written;
  };
  return {
    closePage: () => {
      if (operators.length > 0) document.page.write(bytesOf(operators));
      operators = [];
    },
    pieces,
    bytes: () => Uint8Array.from(Buffer.concat(pieces())),
  };
}

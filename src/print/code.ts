/**
 * A code to scan, as boxes: ISO/IEC 18004, correction level M, so that a crease or a coffee ring does no harm. Modules of
 * 0.65 mm (0.6 is the least that old cameras read from paper; common practice, no source), and the quiet zone of four
 * modules that the standard asks for.
 */
import encode from 'qr';
import type { LineBox, Tag } from './page.js';
import { mm, type Sheet } from './sheet.js';

/** Where the booklet stands on the web. */
export interface WebAddress {
  /** As the client opens it, with the key where it is sealed. */
  readonly whole: string;
  /** Without the key; the same where there is none. */
  readonly open: string;
}

const MODULE = mm(0.65);
const QUIET_MODULES = 4;

export interface Code {
  /** From the top left corner of the quiet zone. */
  readonly boxes: readonly LineBox[];
  /** Of a side, with the quiet zone. */
  readonly size: number;
  /** How wide the quiet zone is: it may reach into a margin where nothing stands. */
  readonly quiet: number;
}

/** As large on every sheet: what a sheet enlarges is laid out so much smaller. */
export function layOutCode(text: string, tag: Tag, { enlarged }: Sheet): Code {
  const module = MODULE / enlarged;
  const rows = encode(text, 'raw', { ecc: 'medium', border: QUIET_MODULES });
  const boxes = rows.flatMap((row, y) => runsOf(row).map(({ from, to }) => darkRun(from, to, y, module, tag)));
  return { boxes, size: rows.length * module, quiet: QUIET_MODULES * module };
}

/** Neighbouring dark modules are one stroke, as thick as a module is high. */
const darkRun = (from: number, to: number, row: number, module: number, tag: Tag): LineBox => ({
  kind: 'line',
  x: from * module,
  y: (row + 0.5) * module,
  toX: to * module,
  toY: (row + 0.5) * module,
  thickness: module,
  tag,
});

function runsOf(row: readonly boolean[]): readonly { readonly from: number; readonly to: number }[] {
  const runs: { from: number; to: number }[] = [];
  row.forEach((dark, x) => {
    const last = runs.at(-1);
    if (!dark) return;
    if (last && last.to === x) last.to = x + 1;
    else runs.push({ from: x, to: x + 1 });
  });
  return runs;
}

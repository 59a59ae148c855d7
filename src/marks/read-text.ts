/**
 * A message → the logs in it, or where it cannot be read. Whatever stands before, between and after is let be: a
 * greeting, a signature, an older message quoted below.
 */
import { bookletId } from '../model/identity.js';
import type { Log, LogEvent } from '../model/log.js';
import { checksumOf } from './checksum.js';
import { foldLine } from './fold.js';
import { type Context, readContext, readMark } from './read-mark.js';
import { HEADING } from './write-text.js';

/** Why a message gives no log, and in which of its lines, from 1. */
export interface TextFault {
  readonly kind: /** No heading and no end. */
    | 'none'
    /** The heading is not there, or the end, or some of the marks between. */
    | 'cut short'
    /** All lines are there, and not as they were written. */
    | 'changed'
    /** As written, and yet no mark. */
    | 'line';
  readonly line: number;
  /** Of a message cut short: marks found, and marks its end speaks of, where it still has one. */
  readonly found?: number;
  readonly wanted?: number;
}

interface Line {
  readonly text: string;
  /** From 1. */
  readonly line: number;
}

const END = /^End: (\d{1,6}) marks?, check ([0-9a-f]{8})$/;
/** Lines that begin something; any other is the rest of the line before it, which a message wrapped. */
const BEGINS = /^(?:\d{1,16}\. \d\d:|\d{4}-\d\d-\d\d [+-]\d\d:\d\d, edition |Booklet [0-9a-f]|Device )/;
const MARK = /^\d{1,16}\. \d\d:/;

/** Whether a text has anything of this form, whole or not. */
export const looksLikeMarks = (text: string): boolean => linesOf(text).some((line) => isHeading(line) || isEnd(line));

const isHeading = ({ text }: Line): boolean => text.toLowerCase() === HEADING.toLowerCase();
const isEnd = ({ text }: Line): boolean => END.test(text);

function linesOf(text: string): readonly Line[] {
  return text
    .split(/\r\n|[\n\r\u2028\u2029]/)
    .map((line, index) => ({ text: foldLine(line), line: index + 1 }))
    .filter((line) => line.text !== '');
}

/** Every log of the message, in order; one that is damaged refuses them all. */
export function readText(text: string): readonly Log[] | TextFault {
  const logs: Log[] = [];
  let open: { readonly at: number; readonly lines: Line[] } | undefined;
  for (const line of linesOf(text)) {
    if (isHeading(line)) {
      if (open !== undefined) return cutShort(open.lines, open.at);
      open = { at: line.line, lines: [] };
    } else if (isEnd(line)) {
      const log = open === undefined ? cutShort([], line.line, line) : readOne(open.lines, line);
      if ('kind' in log) return log;
      logs.push(log);
      open = undefined;
    } else open?.lines.push(line);
  }
  if (open !== undefined) return cutShort(open.lines, open.at);
  return logs.length === 0 ? { kind: 'none', line: 1 } : logs;
}

function cutShort(lines: readonly Line[], line: number, end?: Line): TextFault {
  const found = lines.filter(({ text }) => MARK.test(text)).length;
  const wanted = END.exec(end?.text ?? '')?.[1];
  return { kind: 'cut short', line, found, ...(wanted === undefined ? {} : { wanted: Number(wanted) }) };
}

function readOne(wrapped: readonly Line[], end: Line): Log | TextFault {
  const lines = unwrap(wrapped);
  const [, wanted, sum] = END.exec(end.text) ?? [];
  const found = lines.filter(({ text }) => MARK.test(text)).length;
  if (found !== Number(wanted)) return cutShort(lines, end.line, end);
  if (checksumOf([HEADING, ...lines.map(({ text }) => text)].join('\n')) !== sum) {
    return { kind: 'changed', line: end.line };
  }
  const [first, second, ...rest] = lines;
  const booklet = /^Booklet ([0-9a-f]{32})$/.exec(first?.text ?? '')?.[1];
  if (booklet === undefined) return { kind: 'line', line: first?.line ?? end.line };
  const device = /^Device (\S{1,40})$/.exec(second?.text ?? '')?.[1];
  if (device === undefined) return { kind: 'line', line: second?.line ?? end.line };
  const events: LogEvent[] = [];
  let context: Context | null = null;
  for (const { text, line } of rest) {
    const mark = MARK.test(text) && context !== null ? readMark(text, context) : null;
    if (mark !== null) events.push(mark);
    else {
      context = readContext(text);
      if (context === null) return { kind: 'line', line };
    }
  }
  return { schema: 1, bookletId: bookletId(booklet), device, events };
}

/** Lines as they were before a message wrapped them at a blank. */
function unwrap(lines: readonly Line[]): readonly Line[] {
  const whole: Line[] = [];
  for (const line of lines) {
    const before = whole.at(-1);
    if (BEGINS.test(line.text) || before === undefined) whole.push(line);
    else whole[whole.length - 1] = { text: `${before.text} ${line.text}`, line: before.line };
  }
  return whole;
}

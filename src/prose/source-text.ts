/**
 * An author's file as text: decoded, byte order mark off, one kind of line end; and places in it. What the text means
 * is left to the other files of `prose` and to `content`.
 */
import type { Place } from '../model/place.js';

export interface SourceText {
  readonly file: string;
  readonly text: string;
  /** Where each line begins, in UTF-16 units. */
  readonly lineStarts: readonly number[];
}

export type TextFault =
  | { readonly kind: 'not-utf-8'; readonly byte: string; readonly place: Place }
  | { readonly kind: 'control-character'; readonly character: string; readonly place: Place };

/**
 * Text of the bytes, and what cannot stand in it. CRLF and a lone CR end a line as LF does. Bytes that are not UTF-8
 * become U+FFFD and are reported once a file, at the first.
 */
export function parseBytes(file: string, bytes: Uint8Array): { source: SourceText; faults: readonly TextFault[] } {
  const decoded = new TextDecoder('utf-8').decode(bytes);
  const source = parseText(file, decoded);
  const faults: TextFault[] = [];
  const bad = decoded.includes('\ufffd') ? firstBadByte(bytes) : undefined;
  if (bad !== undefined) {
    const before = parseText(file, new TextDecoder('utf-8').decode(bytes.subarray(0, bad.at)));
    const at = before.text.length;
    faults.push({ kind: 'not-utf-8', byte: bad.byte, place: placeIn(source, at, at + 1) });
  }
  const control = firstControl(source.text);
  if (control !== undefined) {
    const code = source.text.charCodeAt(control).toString(16).toUpperCase().padStart(4, '0');
    faults.push({ kind: 'control-character', character: `U+${code}`, place: placeIn(source, control, control + 1) });
  }
  return { source, faults };
}

/** Also takes off a byte order mark, if the decoder left one. */
export function parseText(file: string, raw: string): SourceText {
  const text = raw.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
  const lineStarts = [0];
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) lineStarts.push(at + 1);
  return { file, text, lineStarts };
}

/** 1-based line of an offset. */
function lineAt(source: SourceText, offset: number): number {
  let low = 0;
  let high = source.lineStarts.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((source.lineStarts[middle] ?? 0) <= offset) low = middle;
    else high = middle - 1;
  }
  return low + 1;
}

/** The place of the text from `start` to `end`, cut at the end of its first line. */
export function placeIn(source: SourceText, start: number, end: number): Place {
  const from = Math.max(0, Math.min(start, source.text.length));
  const line = lineAt(source, from);
  const lineStart = source.lineStarts[line - 1] ?? 0;
  const lineEnd = endOfLine(source, line);
  return {
    file: source.file,
    line,
    column: codePoints(source.text, lineStart, from) + 1,
    length: Math.max(1, codePoints(source.text, from, Math.max(from, Math.min(end, lineEnd)))),
  };
}

/** Where a 1-based line ends, without its line end. */
export function endOfLine(source: SourceText, line: number): number {
  const next = source.lineStarts[line];
  return next === undefined ? source.text.length : next - 1;
}

/** A 1-based line's text. */
export function lineText(source: SourceText, line: number): string {
  return source.text.slice(source.lineStarts[line - 1] ?? source.text.length, endOfLine(source, line));
}

function codePoints(text: string, start: number, end: number): number {
  let count = 0;
  for (let at = start; at < end; count += 1) at += (text.codePointAt(at) ?? 0) > 0xffff ? 2 : 1;
  return count;
}

/** Tab, line feed and form feed are typed; the other controls of ASCII are not. */
function firstControl(text: string): number | undefined {
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    if ((code < 32 && code !== 9 && code !== 10 && code !== 12) || code === 127) return at;
  }
  return undefined;
}

/** The first byte that no UTF-8 text has there (RFC 3629, section 4: the table of well-formed sequences). */
function firstBadByte(bytes: Uint8Array): { at: number; byte: string } | undefined {
  for (let at = 0; at < bytes.length; ) {
    const length = sequenceLength(bytes, at);
    if (length === 0) return { at, byte: (bytes[at] ?? 0).toString(16).toUpperCase().padStart(2, '0') };
    at += length;
  }
  return undefined;
}

function sequenceLength(bytes: Uint8Array, at: number): number {
  const lead = bytes[at] ?? 0;
  if (lead < 0x80) return 1;
  const length =
    lead >= 0xf0 && lead <= 0xf4 ? 4 : lead >= 0xe0 && lead < 0xf0 ? 3 : lead >= 0xc2 && lead < 0xe0 ? 2 : 0;
  if (length === 0) return 0;
  const second = bytes[at + 1] ?? 0;
  const least = lead === 0xe0 ? 0xa0 : lead === 0xf0 ? 0x90 : 0x80;
  const most = lead === 0xed ? 0x9f : lead === 0xf4 ? 0x8f : 0xbf;
  if (second < least || second > most) return 0;
  for (let i = 2; i < length; i += 1) {
    const next = bytes[at + i] ?? 0;
    if (next < 0x80 || next > 0xbf) return 0;
  }
  return length;
}

/**
 * What reading one value gives: the value, or what is wrong and where in the text. Where the text stands in a file is
 * added by whoever holds the place, so that front matter and table cells are read alike.
 */
import type { ContentProblems } from '../model/problems-content.js';
import type { OutputProblems } from '../model/problems-output.js';
import type { PlanProblems } from '../model/problems-plan.js';

type Table = ContentProblems &
  Pick<PlanProblems, 'not-handled' | 'rotation-not-stated'> &
  Pick<OutputProblems, 'file-too-large'>;
export type ContentCode = keyof Table;

/** A problem's code and data, before it has a place. */
export type Finding = {
  readonly [Code in ContentCode]: { readonly code: Code; readonly data: Table[Code] };
}[ContentCode];

/** `start` and `length` in UTF-16 units of the text read. */
export interface Fault {
  readonly finding: Finding;
  readonly start: number;
  readonly length: number;
}

export type Read<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** Reads a value from text as a coach writes it. */
export type Reader<Value> = (text: string) => Read<Value>;

export const good = <Value>(value: Value): Read<Value> => ({ ok: true, value });

/** Refuses the whole of `text`, or `length` units of it from `start`. */
export function refuse(finding: Finding, text: string, start = 0, length = text.length): Read<never> {
  return { ok: false, faults: [{ finding, start, length: Math.max(1, length) }] };
}

export function mapRead<From, To>(from: Read<From>, change: (value: From) => To): Read<To> {
  return from.ok ? good(change(from.value)) : from;
}

/** A part of a text, with where in it the part begins. */
export interface Part {
  readonly text: string;
  readonly start: number;
}

/** The part without spaces around it. */
export function trimPart(part: Part): Part {
  const before = part.text.length - part.text.trimStart().length;
  return { text: part.text.trim(), start: part.start + before };
}

/** The parts between separators, trimmed; empty parts are kept. */
export function splitPart(part: Part, separator: RegExp): readonly Part[] {
  const parts: Part[] = [];
  let from = 0;
  for (const match of part.text.matchAll(separator)) {
    parts.push({ text: part.text.slice(from, match.index), start: part.start + from });
    from = match.index + match[0].length;
  }
  parts.push({ text: part.text.slice(from), start: part.start + from });
  return parts.map(trimPart);
}

/** Reads a part, so that what is refused is placed in the whole. */
export function readPart<Value>(part: Part, reader: Reader<Value>): Read<Value> {
  const read = reader(part.text);
  if (read.ok) return read;
  return { ok: false, faults: read.faults.map((fault) => ({ ...fault, start: fault.start + part.start })) };
}

/** All values, or all faults. */
export function allOf<Value>(reads: readonly Read<Value>[]): Read<readonly Value[]> {
  const faults = reads.flatMap((read) => (read.ok ? [] : read.faults));
  return faults.length > 0 ? { ok: false, faults } : good(reads.flatMap((read) => (read.ok ? [read.value] : [])));
}

/**
 * The text with every kind of dash, multiplication sign, space and quotation mark in one form, unit for unit, so that
 * places stay true: `-`, `×`, a plain space, `'` and `"`.
 */
export function asTyped(text: string): string {
  return text
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/[\u2715\u2716*]/g, '×')
    .replace(/(?<=[\d\s)])[xX](?=[\d\s]|$)/g, '×')
    .replace(/[\t\u00a0\u2000-\u200a\u202f\u205f\u3000]/g, ' ')
    .replace(/[\u2018\u2019\u201a\u2032]/g, "'")
    .replace(/[\u201c-\u201e\u2033]/g, '"');
}

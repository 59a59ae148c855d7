/**
 * The door to yaml: front matter → a tree of text, lists and keys, each with its place. Every value is text as the
 * author wrote it (`999`, `yes` and `2027-01-04` alike); what it means is said by the schemas.
 */
import { isMap, isScalar, isSeq, LineCounter, type Node, type ParsedNode, parseDocument, type YAMLError } from 'yaml';
import type { Place } from '../model/place.js';
import { placeIn, type SourceText } from '../prose/source-text.js';
import type { Finding } from './read-value.js';

interface At {
  /** In UTF-16 units of the file. */
  readonly start: number;
  readonly end: number;
}

export interface TextNode extends At {
  readonly kind: 'text';
  readonly text: string;
  /** Where the text itself begins, if it stands in the file letter for letter. */
  readonly letters?: number;
}
export interface ListNode extends At {
  readonly kind: 'list';
  readonly items: readonly TreeNode[];
}
export interface KeysNode extends At {
  readonly kind: 'keys';
  readonly entries: readonly KeyEntry[];
}
export interface KeyEntry {
  readonly key: string;
  readonly keyAt: At;
  /** Absent where nothing is written after the key. */
  readonly value?: TreeNode;
}
export type TreeNode = TextNode | ListNode | KeysNode;

export type Complaint = (finding: Finding, place: Place) => void;

const LONGEST_KILOBYTES = 16;
const DEEPEST = 8;

/** The keys between `start` and `end` of the file; `undefined` where they cannot be read, and why is complained of. */
export function parseFrontMatter(
  source: SourceText,
  start: number,
  end: number,
  complain: Complaint,
): KeysNode | undefined {
  const text = source.text.slice(start, end);
  const at = (from: number, to: number): Place => placeIn(source, start + from, start + to);
  if (text.length > LONGEST_KILOBYTES * 1024) {
    const kilobytes = Math.ceil(text.length / 1024);
    complain({ code: 'front-matter-too-long', data: { kilobytes, mostKilobytes: LONGEST_KILOBYTES } }, at(0, 1));
    return undefined;
  }
  const deep = tooDeep(text);
  if (deep !== undefined) {
    complain({ code: 'front-matter-too-deep', data: { most: DEEPEST } }, at(deep, deep + 1));
    return undefined;
  }
  const document = parseDocument(text, {
    schema: 'core',
    stringKeys: true,
    uniqueKeys: true,
    merge: false,
    prettyErrors: false,
    lineCounter: new LineCounter(),
  });
  const broken = document.errors.length > 0;
  complainOfErrors(document.errors, document.contents, text, at, complain);
  const feature = findFeature(text, document.contents);
  if (feature)
    complain(
      { code: 'yaml-feature', data: { feature: feature.feature, text: feature.text } },
      at(feature.from, feature.to),
    );
  if (broken || feature) return undefined;
  const contents: ParsedNode | null = document.contents;
  if (contents === null || (isScalar(contents) && contents.source === '')) {
    return { kind: 'keys', entries: [], start, end: start };
  }
  if (!isMap(contents)) {
    complain({ code: 'front-matter-not-keys', data: {} }, at(contents.range[0], contents.range[1]));
    return undefined;
  }
  const tree = treeOf(contents, start, source);
  return tree?.kind === 'keys' ? tree : undefined;
}

/** Where the text goes deeper than any coach does; the parser of the library is recursive. */
function tooDeep(text: string): number | undefined {
  let depth = 0;
  for (let at = 0; at < text.length; at += 1) {
    const character = text[at];
    if (character === '[' || character === '{') depth += 1;
    else if (character === ']' || character === '}') depth = Math.max(0, depth - 1);
    if (depth > DEEPEST) return at;
  }
  const line = new RegExp(`^[ \\t]*(?:[-?:][ \\t]+){${DEEPEST + 1},}|^ {${DEEPEST * 8},}\\S`, 'm').exec(text);
  return line?.index;
}

const WHY: Readonly<Record<string, Extract<Finding, { code: 'front-matter-unreadable' }>['data']['why']>> = {
  TAB_AS_INDENT: 'tab',
  BLOCK_AS_IMPLICIT_KEY: 'second-colon',
  MULTILINE_IMPLICIT_KEY: 'indent',
  BAD_SCALAR_START: 'start-character',
  BAD_INDENT: 'indent',
  MISSING_CHAR: 'no-colon',
};

/** One complaint a line: the rest follows from the first. */
function complainOfErrors(
  errors: readonly YAMLError[],
  root: Node | null,
  text: string,
  at: (from: number, to: number) => Place,
  complain: Complaint,
): void {
  const lines = new Set<number>();
  // What comes after a tab is read at a wrong depth.
  const tab = Math.min(...errors.filter(({ code }) => code === 'TAB_AS_INDENT').map(({ pos }) => pos[0]));
  for (const error of errors) {
    if (error.code !== 'TAB_AS_INDENT' && error.pos[1] >= tab) continue;
    const place = at(error.pos[0], error.pos[1]);
    if (lines.has(place.line)) continue;
    lines.add(place.line);
    if (error.code === 'DUPLICATE_KEY') {
      const key = /^[^:\n]*/.exec(text.slice(error.pos[0]))?.[0].trim() ?? '';
      complain({ code: 'key-twice', data: { key } }, { ...place, length: Math.max(1, Array.from(key).length) });
      continue;
    }
    const quote = error.code === 'MISSING_CHAR' && /quote/.test(error.message);
    const bracket = /end with a [\]}]/.test(error.message);
    const opened = quote || bracket ? openedAt(root, quote) : undefined;
    const line = lineAround(text, error.pos[0]);
    const noColon = error.code === 'MULTILINE_IMPLICIT_KEY' && !line.includes(':');
    const why = noColon
      ? 'no-colon'
      : quote
        ? 'quote-not-closed'
        : bracket
          ? 'bracket-not-closed'
          : (WHY[error.code] ?? 'other');
    complain(
      { code: 'front-matter-unreadable', data: { why, detail: why === 'other' ? error.message : '' } },
      opened === undefined ? place : at(opened, opened + 1),
    );
    // What comes after a quotation mark or a bracket left open is read as part of it.
    if (quote || bracket) return;
  }
}

function lineAround(text: string, offset: number): string {
  const end = text.indexOf('\n', offset);
  return text.slice(text.lastIndexOf('\n', offset - 1) + 1, end === -1 ? text.length : end);
}

/** Where the quotation or bracket that is never closed begins: nothing after it is read as more than a part of it. */
function openedAt(root: Node | null, quote: boolean): number | undefined {
  const starts = [...nodesOf(root)].flatMap((node): number[] => {
    const opens = quote
      ? isScalar(node) && /^QUOTE/.test(node.type ?? '')
      : (isMap(node) || isSeq(node)) && node.flow === true;
    const start = opens ? startOf(node) : undefined;
    return start === undefined ? [] : [start];
  });
  if (starts.length === 0) return undefined;
  return Math.max(...starts);
}

function startOf(node: unknown): number | undefined {
  if (typeof node !== 'object' || node === null || !('range' in node) || !Array.isArray(node.range)) return undefined;
  const [start]: unknown[] = node.range;
  return typeof start === 'number' ? start : undefined;
}

/** Every key and value, in no order. */
function* nodesOf(root: Node | null): Generator<unknown> {
  const waiting: unknown[] = [root];
  while (waiting.length > 0) {
    const node = waiting.pop();
    yield node;
    if (isMap(node)) for (const pair of node.items) waiting.push(pair.key, pair.value);
    else if (isSeq(node)) waiting.push(...node.items);
  }
}

interface Feature {
  readonly feature: 'anchor' | 'alias' | 'tag';
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

/** The first anchor, alias or tag: a fact is written where it belongs, so that a page shows what it says. */
function findFeature(text: string, root: Node | null): Feature | undefined {
  let first: Feature | undefined;
  const found = (feature: Feature): void => {
    if (!first || feature.from < first.from) first = feature;
  };
  for (const node of nodesOf(root)) {
    if (typeof node !== 'object' || node === null) continue;
    const from = startOf(node) ?? 0;
    if ('source' in node && !isScalar(node)) {
      const alias = `*${String(node.source)}`;
      found({ feature: 'alias', text: alias, from, to: from + alias.length });
    }
    // An anchor or tag stands before the value it belongs to.
    for (const [feature, mark, name] of [
      ['anchor', '&', 'anchor' in node ? node.anchor : undefined],
      ['tag', '!', 'tag' in node ? node.tag : undefined],
    ] as const) {
      if (typeof name !== 'string' || name === '') continue;
      const start = Math.max(0, text.lastIndexOf(mark, from));
      const written = /^\S+/.exec(text.slice(start))?.[0] ?? mark;
      found({ feature, text: written, from: start, to: start + written.length });
    }
  }
  return first;
}

function treeOf(node: unknown, base: number, source: SourceText): TreeNode | undefined {
  if (isScalar(node)) {
    const text = typeof node.value === 'string' ? node.value : (node.source ?? '');
    const [from, to] = [base + (node.range?.[0] ?? 0), base + (node.range?.[1] ?? 0)];
    if (text === '' && from === to) return undefined;
    if (text === '~' || (node.value === null && text === '')) return undefined;
    const letters = [from, from + 1].find((start) => source.text.startsWith(text, start));
    return { kind: 'text', text, start: from, end: to, ...(letters === undefined ? {} : { letters }) };
  }
  if (isSeq(node)) {
    const items = node.items.flatMap((item) => treeOf(item, base, source) ?? []);
    return { kind: 'list', items, start: base + (node.range?.[0] ?? 0), end: base + (node.range?.[1] ?? 0) };
  }
  if (!isMap(node)) return undefined;
  const entries = node.items.flatMap((pair): KeyEntry[] => {
    if (!isScalar(pair.key)) return [];
    const keyAt = { start: base + (pair.key.range?.[0] ?? 0), end: base + (pair.key.range?.[1] ?? 0) };
    const value = treeOf(pair.value, base, source);
    return [{ key: String(pair.key.value), keyAt, ...(value ? { value } : {}) }];
  });
  return { kind: 'keys', entries, start: base + (node.range?.[0] ?? 0), end: base + (node.range?.[1] ?? 0) };
}

/** The tree as plain data, for a schema to judge. A key with nothing after it is left out. */
export function plainOf(node: TreeNode): unknown {
  if (node.kind === 'text') return node.text;
  if (node.kind === 'list') return node.items.map(plainOf);
  return Object.fromEntries(node.entries.flatMap(({ key, value }) => (value ? [[key, plainOf(value)]] : [])));
}

export type Path = readonly PropertyKey[];

/** The entry or item at the end of a path. */
export function nodeAt(root: TreeNode, path: Path): TreeNode | undefined {
  let node: TreeNode | undefined = root;
  for (const step of path) {
    if (node?.kind === 'list') node = node.items[Number(step)];
    else if (node?.kind === 'keys') node = entryOf(node, step)?.value;
    else return undefined;
  }
  return node;
}

export const entryOf = (node: KeysNode, key: PropertyKey): KeyEntry | undefined =>
  node.entries.find((entry) => entry.key === String(key));

/** The front matter with the places of everything in it, comments and brackets included: what a change in place stands on. */
import { isMap, isScalar, isSeq, type Pair, parseDocument, type Scalar, type YAMLMap, type YAMLSeq } from 'yaml';
import { parseFences } from '../../prose/front-matter.js';
import type { SourceText } from '../../prose/source-text.js';
import { parseFrontMatter } from '../yaml-tree.js';

export interface FrontTree {
  /** Between the fences; it ends with a line end or is empty. */
  readonly text: string;
  /** Where it begins in the page. */
  readonly base: number;
  /** Absent where nothing is written. */
  readonly root: YAMLMap | undefined;
}

/** `undefined` where the reader cannot read it either. */
export function openFront(source: SourceText): FrontTree | undefined {
  const fences = parseFences(source);
  if (typeof fences === 'string') return undefined;
  const { start, end } = fences;
  if (!parseFrontMatter(source, start, end, () => undefined)) return undefined;
  const text = source.text.slice(start, end);
  const document = parseDocument(text, {
    schema: 'core',
    stringKeys: true,
    uniqueKeys: true,
    merge: false,
    prettyErrors: false,
    keepSourceTokens: true,
  });
  const root: unknown = document.contents;
  return { text, base: start, root: isMap(root) ? root : undefined };
}

export const keyOf = ({ key }: Pair): string => (isScalar(key) ? String(key.value) : '');

export const pairOf = (map: YAMLMap, key: string): Pair | undefined => map.items.find((pair) => keyOf(pair) === key);

export function rangeOf(node: unknown): readonly [start: number, end: number] {
  if (typeof node !== 'object' || node === null || !('range' in node) || !Array.isArray(node.range)) return [0, 0];
  const [start, end]: unknown[] = node.range;
  return [Number(start), Number(end)];
}

/** As the reader has it: nothing after the key, or `~`. */
export function isNothing(node: unknown): boolean {
  if (node === null || node === undefined) return true;
  if (!isScalar(node)) return false;
  const text = textOf(node);
  const [start, end] = rangeOf(node);
  return text === '~' || (text === '' && (start === end || node.value === null));
}

export const textOf = (node: Scalar): string => (typeof node.value === 'string' ? node.value : (node.source ?? ''));

/** The entries of a list that the reader counts. */
export const entriesOf = (list: YAMLSeq): readonly unknown[] => list.items.filter((item) => !isNothing(item));

/** Where the colon after a key ends; `undefined` where there is none. */
export function afterColon({ srcToken }: Pair): number | undefined {
  const colon = srcToken?.sep?.find(({ type }) => type === 'map-value-ind');
  return colon && colon.offset + colon.source.length;
}

/** Where a key begins, or the question mark before it. */
export function startOfPair({ srcToken, key }: Pair): number {
  const mark = srcToken?.start.find(({ type }) => type === 'explicit-key-ind');
  return mark?.offset ?? rangeOf(key)[0];
}

/** Where the last thing written of a pair or a value ends, comments left out. */
export function endOfPair(pair: Pair): number {
  const { key, value } = pair;
  if (isNothing(value) && rangeOf(value)[0] === rangeOf(value)[1]) return afterColon(pair) ?? rangeOf(key)[1];
  return endOf(value);
}

export function endOf(node: unknown): number {
  if (isMap(node) && node.flow !== true) {
    const last = node.items.at(-1);
    if (last) return endOfPair(last);
  }
  if (isSeq(node) && node.flow !== true) {
    const marks = seqMarks(node);
    const last = node.items.at(-1);
    return isNothing(last) && rangeOf(last)[0] === rangeOf(last)[1] ? (marks.at(-1) ?? 0) + 1 : endOf(last);
  }
  return rangeOf(node)[1];
}

/** Where the dash of each entry stands. */
export function seqMarks({ srcToken }: YAMLSeq): readonly number[] {
  if (srcToken?.type !== 'block-seq') return [];
  return srcToken.items.flatMap(({ start }) => {
    const mark = start.find(({ type }) => type === 'seq-item-ind');
    return mark ? [mark.offset] : [];
  });
}

export const columnOf = (text: string, at: number): number => at - (text.lastIndexOf('\n', at - 1) + 1);

/** Where the line after the one in which something ends begins; the end itself where it stands at the start of a line. */
export function lineAfter(text: string, end: number): number {
  if (end > 0 && text[end - 1] === '\n') return end;
  const lineEnd = text.indexOf('\n', end);
  return lineEnd === -1 ? text.length : lineEnd + 1;
}

/** Comment lines set in further than `indent` belong to what stands above them. */
export function afterComments(text: string, from: number, indent: number): number {
  let at = from;
  for (;;) {
    const comment = /^( *)#.*\n/.exec(text.slice(at));
    if (!comment || (comment[1] ?? '').length <= indent) return at;
    at += comment[0].length;
  }
}

/** How far the page sets in what stands below a key, and the dashes of a list. */
export function indentsOf({ root }: FrontTree, text: string): { readonly keys: number; readonly dashes: number } {
  let [keys, dashes]: (number | undefined)[] = [];
  for (const pair of root?.items ?? []) {
    const { value } = pair;
    const column = columnOf(text, startOfPair(pair));
    if (isMap(value) && value.flow !== true && value.items[0]) {
      keys ??= columnOf(text, startOfPair(value.items[0])) - column;
    } else if (isSeq(value) && value.flow !== true) {
      const [mark] = seqMarks(value);
      if (mark !== undefined) dashes ??= columnOf(text, mark) - column;
    }
  }
  return { keys: keys ?? 2, dashes: dashes ?? 2 };
}

/** The comma between two offsets outside comments; -1 where there is none. */
export function commaBetween(text: string, from: number, to: number): number {
  for (let at = from; at < to; at += 1) {
    if (text[at] === ',') return at;
    if (text[at] === '#') {
      const end = text.indexOf('\n', at);
      if (end === -1) return -1;
      at = end;
    }
  }
  return -1;
}

/** Single changes to the front matter, each as splices of its text. What is written already changes nothing. */
import { isMap, isScalar, isSeq, type Pair, type YAMLMap } from 'yaml';
import type { EntryFacts, WhyNoEdit } from '../../model/edit.js';
import {
  afterColon,
  afterComments,
  columnOf,
  endOfPair,
  entriesOf,
  type FrontTree,
  indentsOf,
  isNothing,
  lineAfter,
  pairOf,
  rangeOf,
  startOfPair,
  textOf,
} from './front-tree.js';
import { keyOrder } from './key-order.js';
import type { Splice } from './page-text.js';
import { entryLines, type Quoting, writeEntry, writeValue } from './write-value.js';

/** Splices of the front matter's own text, or why there are none. */
export type Change = readonly Splice[] | WhyNoEdit;

export const at = (start: number, text: string): Splice => ({ start, end: start, text });
export const over = (start: number, end: number, text: string): Splice => ({ start, end, text });
export const spaces = (count: number): string => ' '.repeat(Math.max(0, count));

/** What is written under a key: a value, keys below it, or entries of a list. */
type Written = string | { readonly keys: EntryFacts } | { readonly entry: EntryFacts };

/** A value at the end of a path; keys on the way to it are begun where they are missing. */
export function setValue(tree: FrontTree, path: readonly (string | number)[], value: string): Change {
  const [key, ...before] = [...path].reverse();
  if (typeof key !== 'string') return 'other-shape';
  const names = before.reverse();
  const holder = holderOf(tree, names);
  if (typeof holder === 'string') return holder;
  if (holder.kind === 'map') {
    const pair = pairOf(holder.map, key);
    if (pair) return setOf(pair, value, holder.map.flow === true);
    return addPair(tree, holder.map, namesIn(names), key, value);
  }
  const written: Written = { keys: { [key]: value } };
  if (holder.kind === 'pair') return begin(tree, holder.pair, written);
  const last = namesIn(names).at(-1);
  if (tree.root === undefined) return addFirst(tree, last ?? key, last === undefined ? value : written);
  return addPair(tree, tree.root, [], last ?? key, last === undefined ? value : written);
}

const namesIn = (path: readonly (string | number)[]): readonly string[] =>
  path.filter((step): step is string => typeof step === 'string');

type Holder =
  | { readonly kind: 'map'; readonly map: YAMLMap }
  /** A key with nothing after it. */
  | { readonly kind: 'pair'; readonly pair: Pair }
  | { readonly kind: 'none' };

function holderOf(tree: FrontTree, path: readonly (string | number)[]): Holder | WhyNoEdit {
  if (!tree.root) return { kind: 'none' };
  let node: unknown = tree.root;
  for (const [depth, step] of path.entries()) {
    if (typeof step === 'number') {
      if (!isSeq(node)) return 'no-such-entry';
      node = entriesOf(node)[step];
      if (node === undefined) return 'no-such-entry';
      continue;
    }
    if (!isMap(node)) return 'other-shape';
    const pair = pairOf(node, step);
    const last = depth === path.length - 1;
    if (!pair) return last && depth === 0 ? { kind: 'none' } : 'other-shape';
    if (last && isNothing(pair.value)) return { kind: 'pair', pair };
    node = pair.value;
  }
  return isMap(node) ? { kind: 'map', map: node } : 'other-shape';
}

function setOf(pair: Pair, value: string, brackets: boolean): Change {
  const { value: node } = pair;
  const within = brackets ? 'brackets' : 'lines';
  const [start, end] = rangeOf(node);
  if (isNothing(node) && start === end) {
    const colon = afterColon(pair);
    if (colon === undefined) return brackets ? [at(rangeOf(pair.key)[1], `: ${writeValue(value, within)}`)] : 'form';
    return [at(colon, ` ${writeValue(value, within)}`)];
  }
  if (!isScalar(node)) return 'other-shape';
  if (!isNothing(node) && textOf(node) === value) return [];
  return [replacement(node, value, brackets)];
}

/** In the quoting the coach used. A text of several lines becomes one of one; a comment after its mark stays. */
export function replacement(node: unknown, value: string, brackets: boolean): Splice {
  const [start, end] = rangeOf(node);
  const type = isScalar(node) ? node.type : undefined;
  const quoting: Quoting = type === 'QUOTE_DOUBLE' ? 'double' : type === 'QUOTE_SINGLE' ? 'single' : 'plain';
  const written = writeValue(value, brackets ? 'brackets' : 'lines', quoting);
  if (type !== 'BLOCK_LITERAL' && type !== 'BLOCK_FOLDED') return over(start, end, written);
  const header = isScalar(node) && node.srcToken?.type === 'block-scalar' ? node.srcToken.props : [];
  const comment = header.flatMap((token) =>
    'source' in token && token.type === 'comment' ? [` ${token.source}`] : [],
  );
  return over(start, end, `${written}${comment.join('')}\n`);
}

function linesUnder(key: string, written: Written, indent: number, steps: ReturnType<typeof indentsOf>): string[] {
  const name = `${spaces(indent)}${writeValue(key, 'lines')}:`;
  if (typeof written === 'string') return [`${name} ${writeValue(written, 'lines')}`];
  return [name, ...linesBelow(written, indent, steps)];
}

function linesBelow(written: Exclude<Written, string>, indent: number, steps: ReturnType<typeof indentsOf>): string[] {
  if ('keys' in written) return entryLines(written.keys).map((line) => spaces(indent + Math.max(1, steps.keys)) + line);
  return entryLines(written.entry).map(
    (line, index) => `${spaces(indent + steps.dashes)}${index === 0 ? '- ' : '  '}${line}`,
  );
}

const inBrackets = (written: Written): string => {
  if (typeof written === 'string') return writeValue(written, 'brackets');
  return 'keys' in written ? writeEntry(written.keys) : `[${writeEntry(written.entry)}]`;
};

/** The first key of a front matter in which nothing is written; comments stay above it. */
export function addFirst(tree: FrontTree, key: string, written: Written): Change {
  const lines = linesUnder(key, written, 0, indentsOf(tree, tree.text));
  return [at(tree.text.length, `${lines.join('\n')}\n`)];
}

/** A key after the one the format names before it; first or last where none of those stands there. */
export function addPair(tree: FrontTree, map: YAMLMap, path: readonly string[], key: string, written: Written): Change {
  const order = keyOrder(path);
  const before = order.slice(0, Math.max(0, order.indexOf(key))).reverse();
  const known = before.map((name) => pairOf(map, name)).find((pair) => pair !== undefined);
  const previous = known ?? (order.includes(key) && map === tree.root ? undefined : map.items.at(-1));
  const { text } = tree;
  if (map.flow === true) {
    const pair = `${writeValue(key, 'brackets')}: ${inBrackets(written)}`;
    const after = previous ?? map.items.at(-1);
    return after ? [at(endOfPair(after), `, ${pair}`)] : [at(rangeOf(map)[0] + 1, pair)];
  }
  const first = map.items[0];
  if (!first) return 'form';
  const indent = columnOf(text, startOfPair(first));
  const lines = `${linesUnder(key, written, indent, indentsOf(tree, text)).join('\n')}\n`;
  if (previous) return [at(afterComments(text, lineAfter(text, endOfPair(previous)), indent), lines)];
  return [at(startOfPair(first) - indent, lines)];
}

/** Writes under a key that has nothing after it, or a word that says so. */
export function begin(tree: FrontTree, pair: Pair, written: Exclude<Written, string>): Change {
  const { text, root } = tree;
  const [start, end] = rangeOf(pair.value);
  const colon = afterColon(pair);
  if (colon === undefined) return 'form';
  if (root?.flow === true) {
    return start === end ? [at(colon, ` ${inBrackets(written)}`)] : [over(start, end, inBrackets(written))];
  }
  if (text.slice(start, end).includes('\n')) return 'form';
  const indent = columnOf(text, startOfPair(pair));
  const lines = `${linesBelow(written, indent, indentsOf(tree, text)).join('\n')}\n`;
  const below = at(lineAfter(text, Math.max(colon, end)), lines);
  return start === end ? [below] : [over(colon, end, ''), below];
}

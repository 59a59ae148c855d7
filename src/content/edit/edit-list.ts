/** Entries of the front matter's lists, added and taken out: blocks of dashes, and lists in brackets. */
import { isMap, isScalar, isSeq, type Pair, type YAMLSeq } from 'yaml';
import type { EntryFacts } from '../../model/edit.js';
import { mayBeNone } from '../health-schema.js';
import { addFirst, addPair, at, begin, type Change, over, replacement, spaces } from './edit-front.js';
import {
  afterColon,
  afterComments,
  columnOf,
  commaBetween,
  endOf,
  entriesOf,
  type FrontTree,
  isNothing,
  keyOf,
  lineAfter,
  pairOf,
  rangeOf,
  seqMarks,
  startOfPair,
  textOf,
} from './front-tree.js';
import { entryLines, writeEntry, writeValue } from './write-value.js';

const saysNothing = (node: unknown): boolean =>
  isNothing(node) || (isScalar(node) && /^(no|none|nothing|-)$/i.test(textOf(node).trim()));

const plainEntry = (node: unknown): EntryFacts =>
  isMap(node)
    ? Object.fromEntries(
        node.items.flatMap((pair) => (isScalar(pair.value) ? [[keyOf(pair), textOf(pair.value)] as const] : [])),
      )
    : {};

/** Same keys, same values, in any order. */
const sameEntry = (one: EntryFacts, other: EntryFacts): boolean =>
  Object.keys(one).length === Object.keys(other).length &&
  Object.entries(one).every(([key, value]) => other[key] === value);

/** An entry after the last of a list of entries. */
export function addEntry(tree: FrontTree, key: string, entry: EntryFacts): Change {
  const { root, text } = tree;
  if (!root) return addFirst(tree, key, { entry });
  const pair = pairOf(root, key);
  if (!pair) return addPair(tree, root, [], key, { entry });
  const list = pair.value;
  if (saysNothing(list) && (isNothing(list) || mayBeNone.has(key))) return begin(tree, pair, { entry });
  if (!isSeq(list)) return 'other-shape';
  if (list.items.some((item) => sameEntry(plainEntry(item), entry))) return [];
  return list.flow === true ? addInBrackets(tree, pair, list, entry) : addBelow(text, list, entry);
}

function addBelow(text: string, list: YAMLSeq, entry: EntryFacts): Change {
  const mark = seqMarks(list).at(-1);
  const last: unknown = list.items.at(-1);
  if (mark === undefined) return 'form';
  const dash = columnOf(text, mark);
  const inFlow = isMap(last) && last.flow === true;
  const firstOfLast = isMap(last) && last.items[0] ? startOfPair(last.items[0]) : undefined;
  const sameLine = firstOfLast !== undefined && !text.slice(mark, firstOfLast).includes('\n');
  const gap = !inFlow && sameLine && firstOfLast !== undefined ? Math.max(1, firstOfLast - mark - 1) : 1;
  const lines = inFlow ? [writeEntry(entry)] : entryLines(entry);
  const written = lines.map((line, index) => `${spaces(dash)}${index === 0 ? '-' : ' '}${spaces(gap)}${line}\n`);
  return [at(afterComments(text, lineAfter(text, endOf(list)), dash), written.join(''))];
}

function addInBrackets(tree: FrontTree, pair: Pair, list: YAMLSeq, entry: EntryFacts): Change {
  const { text, root } = tree;
  const [start, end] = rangeOf(list);
  const last: unknown = list.items.at(-1);
  const written = writeEntry(entry);
  if (list.items.length === 0) {
    const bare = /^\[\s*\]$/.test(text.slice(start, end)) && root?.flow !== true;
    return bare ? begin(tree, pair, { entry }) : [at(start + 1, written)];
  }
  const lastEnd = rangeOf(last)[1];
  const lineStart = text.lastIndexOf('\n', rangeOf(last)[0] - 1) + 1;
  const indent = text.slice(lineStart, rangeOf(last)[0]);
  if (/\S/.test(indent) || lineStart <= start) return [at(lastEnd, `, ${written}`)];
  const comma = commaBetween(text, lastEnd, end - 1);
  const lineEnd = text.indexOf('\n', comma === -1 ? lastEnd : comma);
  if (lineEnd === -1 || lineEnd >= end) {
    const next = `\n${indent}${written}`;
    return comma === -1 ? [at(lastEnd, `,${next}`)] : [at(comma + 1, `${next},`)];
  }
  if (comma === -1) return [at(lastEnd, ','), at(lineEnd, `\n${indent}${written}`)];
  return [at(lineEnd, `\n${indent}${written},`)];
}

/** Takes out one entry; of the last one the key goes too, unless a comment stands with it. */
export function removeEntry(tree: FrontTree, key: string, index: number, says: EntryFacts | undefined): Change {
  const { root, text } = tree;
  const pair = root && pairOf(root, key);
  const list: unknown = pair?.value;
  if (!root || !pair || !isSeq(list)) return says ? [] : 'no-such-entry';
  const item = entriesOf(list)[index];
  if (says && !(item && saysSo(plainEntry(item), says))) {
    return entriesOf(list).some((other) => saysSo(plainEntry(other), says)) ? 'says-otherwise' : [];
  }
  if (item === undefined) return 'no-such-entry';
  const place = list.items.indexOf(item);
  if (list.flow === true) return removeFromBrackets(text, list, place);
  const marks = seqMarks(list);
  const mark = marks[place];
  if (mark === undefined || marks.length !== list.items.length) return 'form';
  const dash = columnOf(text, mark);
  const from = mark - dash;
  const to = afterComments(text, lineAfter(text, endOf(item)), dash);
  if (text.slice(from, mark).trim() !== '') return 'form';
  const keyStart = startOfPair(pair);
  const keyLine = keyStart - columnOf(text, keyStart);
  const above = text.slice(afterColon(pair) ?? keyStart, from);
  const alone = list.items.length === 1 && above.trim() === '' && root.flow !== true && root.items.length > 1;
  return [over(alone ? keyLine : from, to, '')];
}

const saysSo = (entry: EntryFacts, says: EntryFacts): boolean =>
  Object.entries(says).every(([key, value]) => entry[key] === value);

/** With one comma; the line goes too where nothing else stands in it. */
function removeFromBrackets(text: string, list: YAMLSeq, place: number): Change {
  const [start, end] = rangeOf(list.items[place]);
  const next = list.items[place + 1];
  const before = list.items[place - 1];
  const after = commaBetween(text, end, next === undefined ? rangeOf(list)[1] - 1 : rangeOf(next)[0]);
  const earlier = before === undefined ? -1 : commaBetween(text, rangeOf(before)[1], start);
  const useAfter = after !== -1 && (next !== undefined || earlier === -1 || /^\s*$/.test(text.slice(end, after)));
  const comma = useAfter ? after : earlier;
  const lineStart = text.lastIndexOf('\n', start - 1) + 1;
  const whole = useAfter && after !== -1 ? after + 1 : end;
  const lineEnd = text.indexOf('\n', whole);
  const ownLines =
    text.slice(lineStart, start).trim() === '' &&
    lineEnd !== -1 &&
    text.slice(whole, lineEnd).trim() === '' &&
    text.slice(end, whole).replace(',', '').trim() === '';
  if (ownLines) {
    const line = over(lineStart, lineEnd + 1, '');
    return useAfter || comma === -1 ? [line] : [over(comma, comma + 1, ''), line];
  }
  if (comma === -1) return [over(start, end, '')];
  if (useAfter) {
    const gap = /^[ \t]*/.exec(text.slice(after + 1))?.[0].length ?? 0;
    if (text.slice(end, after).trim() === '') return [over(start, after + 1 + gap, '')];
    return [over(start, end, ''), over(after, after + 1, '')];
  }
  if (text.slice(comma + 1, start).trim() === '' && !text.slice(comma, start).includes('\n')) {
    return [over(comma, end, '')];
  }
  return [over(comma, comma + 1, ''), over(start, end, '')];
}

/** The texts of a list of texts; `undefined` where it is none. */
export function textsAt(tree: FrontTree, path: readonly string[]): readonly string[] | undefined {
  const list = listAt(tree, path);
  const texts = list?.items.map((item) => (isScalar(item) && !isNothing(item) ? textOf(item) : undefined));
  return texts?.every((text) => text !== undefined) ? texts : undefined;
}

function listAt({ root }: FrontTree, path: readonly string[]): YAMLSeq | undefined {
  let node: unknown = root;
  for (const step of path) node = isMap(node) ? pairOf(node, step)?.value : undefined;
  return isSeq(node) ? node : undefined;
}

/** One text of a list of texts, replaced, added after the last, or taken out (`value` absent). */
export function setText(tree: FrontTree, path: readonly string[], index: number, value: string | undefined): Change {
  const { text } = tree;
  const list = listAt(tree, path);
  if (!list) return 'other-shape';
  const item: unknown = list.items[index];
  const flow = list.flow === true;
  if (value !== undefined && item !== undefined) return [replacement(item, value, flow)];
  if (value === undefined) {
    if (flow) return removeFromBrackets(text, list, index);
    const mark = seqMarks(list)[index];
    if (mark === undefined) return 'form';
    const dash = columnOf(text, mark);
    return [over(mark - dash, afterComments(text, lineAfter(text, endOf(item)), dash), '')];
  }
  const written = writeValue(value, flow ? 'brackets' : 'lines');
  if (flow) {
    const last = list.items.at(-1);
    return last === undefined ? [at(rangeOf(list)[0] + 1, written)] : [at(rangeOf(last)[1], `, ${written}`)];
  }
  const mark = seqMarks(list).at(-1);
  if (mark === undefined) return 'form';
  const dash = columnOf(text, mark);
  return [at(afterComments(text, lineAfter(text, endOf(list)), dash), `${spaces(dash)}- ${written}\n`)];
}

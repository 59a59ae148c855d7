/**
 * Lines that were set before are not set again. The same words come back often: in every way a page is tried, in the
 * second round that knows the numbers of the pages, in the next client's booklet. Where lines break hangs on the words,
 * their styles and languages, what belongs together, and the width; not on which element or link it is.
 */
import type { SetLine, Tag, TextBox } from './page.js';
import type { StyleName } from './type-styles.js';

/** Beyond this the lines are forgotten: a run may be long. */
const MOST_KNOWN = 20_000;

/** A line apart from what its words belong to. */
interface KnownLine {
  readonly line: SetLine;
  /** For each box, which of the belongings of the runs is its own. */
  readonly belongings: readonly number[];
}

/** By what was set. */
export type KnownLines = Map<string, readonly KnownLine[]>;

interface SaidRun {
  readonly style: StyleName;
  readonly text: string;
  readonly tag?: Tag;
  readonly to?: string;
}

type Belonging = Pick<TextBox, 'tag' | 'to'>;

const isSame = (a: Belonging, b: Belonging): boolean => a.tag === b.tag && a.to === b.to;

/** Each once, in the order of the runs. */
function belongingsOf(runs: readonly SaidRun[]): readonly Belonging[] {
  const all: Belonging[] = [];
  for (const run of runs) if (!all.some((one) => isSame(one, run))) all.push(run);
  return all;
}

const END = '\u0000';

interface Room {
  readonly width: number;
  readonly first: number;
}

function keyOf<Run extends SaidRun>(
  runs: readonly Run[],
  belongings: readonly Belonging[],
  { width, first }: Room,
  languageOf: (run: Run) => string | undefined,
): string {
  let key = `${width} ${first}`;
  for (const run of runs) {
    const own = belongings.length === 1 ? 0 : belongings.findIndex((one) => isSame(one, run));
    key += `${END}${run.style} ${own} ${run.to === undefined ? '' : 'to'} ${languageOf(run) ?? ''} ${run.text}`;
  }
  return key;
}

/** Word by word what a box is: one made by taking some of it away is slow to copy, and these are copied often. */
function owned({ style, x, y, width, text, endsAtSpace }: TextBox, { tag, to }: Belonging): TextBox {
  const box: TextBox = { kind: 'text', style, x, y, width, text, endsAtSpace };
  if (tag === undefined) return to === undefined ? box : { ...box, to };
  return to === undefined ? { ...box, tag } : { ...box, tag, to };
}

const NOBODY: Belonging = {};

const apart = (line: SetLine, belongings: readonly Belonging[]): KnownLine => ({
  line: { ...line, boxes: line.boxes.map((box) => owned(box, NOBODY)) },
  belongings: line.boxes.map((box) => belongings.findIndex((one) => isSame(one, box))),
});

/** `set` is asked only where nothing is known; without `known` it always is. */
export function knownLines<Run extends SaidRun>(
  runs: readonly Run[],
  room: Room,
  known: KnownLines | undefined,
  languageOf: (run: Run) => string | undefined,
  set: () => readonly SetLine[],
): readonly SetLine[] {
  if (known === undefined) return set();
  const belongings = belongingsOf(runs);
  const key = keyOf(runs, belongings, room, languageOf);
  let lines = known.get(key);
  if (!lines) {
    lines = set().map((line) => apart(line, belongings));
    if (known.size >= MOST_KNOWN) known.clear();
    known.set(key, lines);
  }
  return lines.map(({ line: { boxes, width, lines: high }, belongings: own }) => ({
    boxes: boxes.map((box, i) => owned(box, belongings[own[i] ?? -1] ?? NOBODY)),
    width,
    lines: high,
  }));
}

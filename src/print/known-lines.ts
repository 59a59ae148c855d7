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
  readonly language: string | undefined;
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

function keyOf(
  runs: readonly SaidRun[],
  belongings: readonly Belonging[],
  { width, first }: { readonly width: number; readonly first: number },
): string {
  const said = runs.map(
    (run) =>
      `${run.style} ${belongings.findIndex((one) => isSame(one, run))} ${run.to === undefined ? '' : 'to'} ${run.language ?? ''} ${run.text}`,
  );
  return `${width} ${first} ${said.join(END)}`;
}

function owned(box: TextBox, belonging: Belonging | undefined): TextBox {
  const { tag, to } = belonging ?? {};
  if (tag === undefined) return to ? { ...box, to } : box;
  return to ? { ...box, tag, to } : { ...box, tag };
}

function apart(line: SetLine, belongings: readonly Belonging[]): KnownLine {
  return {
    line: { ...line, boxes: line.boxes.map(({ tag: _tag, to: _to, ...box }) => box) },
    belongings: line.boxes.map((box) => belongings.findIndex((one) => isSame(one, box))),
  };
}

/** `set` is asked only where nothing is known; without `known` it always is. */
export function knownLines(
  runs: readonly SaidRun[],
  room: { readonly width: number; readonly first: number },
  known: KnownLines | undefined,
  set: () => readonly SetLine[],
): readonly SetLine[] {
  if (known === undefined) return set();
  const belongings = belongingsOf(runs);
  const key = keyOf(runs, belongings, room);
  let lines = known.get(key);
  if (!lines) {
    lines = set().map((line) => apart(line, belongings));
    if (known.size >= MOST_KNOWN) known.clear();
    known.set(key, lines);
  }
  return lines.map(({ line, belongings: own }) => ({
    ...line,
    boxes: line.boxes.map((box, i) => owned(box, belongings[own[i] ?? -1])),
  }));
}

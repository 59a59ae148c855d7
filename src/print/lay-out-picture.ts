/**
 * An exercise's row of positions for its page: one scale for every exercise, so that it is the same person throughout.
 * A row wider than the text goes on in a second one; only where that would cost a page is it set smaller.
 */
import type { Drawing, Drawn, Box as Plane, RowPlace } from '../model/picture.js';
import type { Layer } from './page.js';
import type { Picture } from './setting.js';
import { LINE, mm, type Sheet } from './sheet.js';

/** Somebody of 1.75 m who stands, in millimetres of an A5 page: at best, and where room is short. */
const BODY_HEIGHTS = [35, 30] as const;
/** Where a page would be turned for the drawing otherwise. */
const LEAST_HEIGHT = 25;
const BODY = 175;
/** What is left beside a drawing: the white between, and a column of some forty letters. */
export const LEAST_WORDS = mm(64);

/** What is seen of a place from left to right. */
function reachOf({ by, room, figure, arrow }: RowPlace): readonly [number, number] {
  let [left, right] = [Infinity, -Infinity];
  for (const { outline } of [...room, ...figure, ...arrow]) {
    for (const command of outline) {
      if (command.kind === 'close') continue;
      left = Math.min(left, command.to[0]);
      right = Math.max(right, command.to[0]);
    }
  }
  return [left + by, right + by];
}

function layersOf(place: RowPlace, places: readonly RowPlace[]): readonly Layer[] {
  const { room, ghost, figure, arrow } = place;
  const by = [place.by, 0] as const;
  const before = ghost === undefined ? undefined : places[ghost];
  return [
    { marks: room, by, faint: false },
    ...(before ? [{ marks: before.figure, by, faint: true }] : []),
    { marks: figure, by, faint: false },
    { marks: arrow, by, faint: false },
  ];
}

interface Strip {
  readonly plane: Plane;
  readonly layers: readonly Layer[];
}

/** As many positions beside each other as so many centimetres hold. */
function stripsOf({ row: { places, box } }: Drawing, most: number): readonly Strip[] {
  const reaches = places.map(reachOf);
  // Half-way between a position and the next.
  const edges = places.map((_, i) => (i === 0 ? box.left : ((reaches[i - 1]?.[1] ?? 0) + (reaches[i]?.[0] ?? 0)) / 2));
  const edge = (index: number): number => edges[index] ?? box.right;
  const starts: number[] = [];
  places.forEach((_, i) => {
    const start = starts.at(-1);
    if (start === undefined || edge(i + 1) - edge(start) > most) starts.push(i);
  });
  return starts.map((from, i) => {
    const to = starts[i + 1] ?? places.length;
    return {
      plane: { ...box, left: edge(from), right: edge(to) },
      layers: places.slice(from, to).flatMap((place) => layersOf(place, places)),
    };
  });
}

type Silent = Omit<Picture, 'alt'>;

/** `scale`: points to the centimetre. Strips stand under each other in whole lines. */
function pictureIn(strips: readonly Strip[], scale: number, { textWidth }: Sheet): Silent {
  const rows = strips.map(({ plane }) => Math.ceil(((plane.high - plane.low) * scale) / LINE - 1e-6));
  const width = Math.max(...strips.map(({ plane }) => plane.right - plane.left)) * scale;
  return {
    stands: textWidth - width >= LEAST_WORDS - 1e-6 ? 'beside' : 'over',
    width,
    lines: rows.reduce((sum, one) => sum + one, 0),
    draw: (tag) =>
      strips.map(({ plane, layers }, i) => ({
        kind: 'picture',
        x: 0,
        y: rows.slice(0, i).reduce((sum, one) => sum + one, 0) * LINE,
        width: (plane.right - plane.left) * scale,
        height: (plane.high - plane.low) * scale,
        plane,
        layers,
        tag,
      })),
  };
}

/** A drawing stands alike in every booklet of a run: by how wide the text beside it is. */
const knownWays = new WeakMap<Drawing, Map<number, readonly Silent[]>>();

/**
 * The drawing in each way it may stand, the one to be had rather first: all positions in a row, beside the words where
 * they leave room enough; one under another beside the words; in more rows than one, or smaller, where neither can be.
 */
export function picturesOf({ drawing }: Drawn, alt: string, sheet: Sheet): readonly Picture[] {
  const known = knownWays.get(drawing) ?? new Map<number, readonly Silent[]>();
  knownWays.set(drawing, known);
  const ways = known.get(sheet.textWidth) ?? waysOf(drawing, sheet);
  known.set(sheet.textWidth, ways);
  return ways.map((way) => ({ ...way, alt }));
}

function waysOf(drawing: Drawing, sheet: Sheet): readonly Silent[] {
  const { left, right } = drawing.row.box;
  const { textWidth } = sheet;
  const within = (width: number, scale: number): Silent | undefined => {
    const strips = stripsOf(drawing, width / scale);
    const widest = Math.max(...strips.map(({ plane }) => plane.right - plane.left));
    return widest * scale <= width + 1e-6 ? pictureIn(strips, scale, sheet) : undefined;
  };
  const scales = BODY_HEIGHTS.map((height) => mm(height) / BODY);
  const fitting = textWidth / (right - left);
  const inARow = scales.filter((scale) => scale <= fitting);
  const [least = fitting] = scales.slice(-1);
  const rows = inARow.length > 0 ? inARow : fitting > least ? [fitting] : scales;
  return [
    ...rows.map((scale) => within(textWidth, scale)),
    ...scales.map((scale) => within(textWidth - LEAST_WORDS, scale)),
    ...[textWidth, textWidth - LEAST_WORDS].map((width) => within(width, mm(LEAST_HEIGHT) / BODY)),
    pictureIn(stripsOf(drawing, Infinity), Math.min(fitting, least), sheet),
  ].filter((one) => one !== undefined);
}

/**
 * How a drawing moves, as it travels beside it: whole numbers, each from the one before. On the phone they become
 * keyframes, for paths that are taken apart there: in the page no part is written twice.
 */
import type { Drawing, PartMove } from '../src/model/picture.js';
import { paintedOf, viewBoxOf } from './figure.js';
import { whole } from './path-data.js';

export interface Movement {
  /** The part of the plane it moves in. */
  readonly view: string;
  /** One repetition. */
  readonly seconds: number;
  /** For each place on the way, the first position first: when it is passed, out and back, in hundredths of a repetition. */
  readonly passed: readonly (readonly number[])[];
  /** For each outline of the first position, in order: with which move it goes, or -1 where it keeps still. */
  readonly goes: readonly number[];
  /**
   * For each move, in whole centimetres and degrees, clockwise and downwards as a screen counts: its joint; then for all places,
   * as what each grows by more than at the place before, its turn, its joint's way across and down, and where it shortens its length in
   * hundredths; then which way it lies. Noughts at the end are left out: of a steady way all but the first.
   */
  readonly moves: readonly (readonly number[])[];
}

const degrees = (radians: number): number => Math.round((-radians * 180) / Math.PI) || 0;
const right = (length: number): number => Math.round(length) || 0;
const down = (length: number): number => Math.round(-length) || 0;

const ALONG = 100;
/** Hundredths of its length that nobody misses of a part. */
const SAME = 2;

const growthOf = (column: readonly number[]): readonly number[] =>
  column.map((value, place) => value - (column[place - 1] ?? 0) || 0);

function packed({ joint, lies, steps }: PartMove): readonly number[] {
  const shortens = steps.some(({ stretch }) => Math.abs(stretch * ALONG - ALONG) > SAME);
  const columns = [
    steps.map(({ turn }) => degrees(turn)),
    steps.map(({ at }) => right(at[0] - joint[0])),
    steps.map(({ at }) => down(at[1] - joint[1])),
    ...(shortens ? [steps.map(({ stretch }) => Math.round(stretch * ALONG) - ALONG)] : []),
  ];
  const more = columns.flatMap((column) => growthOf(growthOf(column)));
  const all = [right(joint[0]), down(joint[1]), ...more, ...(shortens ? [degrees(lies)] : [])];
  return all.slice(0, all.findLastIndex((value) => value !== 0) + 1);
}

/** Nothing where no part moves. */
export function movementOf({ motion, row }: Drawing): Movement | null {
  const [first] = row.places;
  if (motion.moves.length === 0 || !first) return null;
  const outlines = paintedOf(first.figure).flatMap(({ marks }) => marks);
  return {
    view: viewBoxOf(motion.picture.box),
    seconds: Math.round(motion.seconds * 100) / 100,
    passed: motion.passed.map((moments) => moments.map((moment) => Math.round(moment * 100))),
    goes: outlines.map(({ part }) => motion.moves.findIndex(({ parts }) => parts.includes(part))),
    moves: motion.moves.map(packed),
  };
}

const carry = (x: number, y: number): string => `translate(${whole(x)}px,${whole(y)}px)`;

/** What each place on the way makes of a part, the first position first. */
function transformsOf(move: readonly number[], places: number): readonly string[] {
  const [x = 0, y = 0] = move;
  const inColumn = (column: number, place: number): number => move[2 + column * places + place] ?? 0;
  const shortens = move.length > 2 + 3 * places;
  const lies = inColumn(4, 0);
  const [grows, sums] = [
    [0, 0, 0, 0],
    [0, 0, 0, 0],
  ];
  return Array.from({ length: places + 1 }, (_, place) => {
    if (place > 0)
      sums.forEach((sum, column) => {
        const grown = (grows[column] ?? 0) + inColumn(column, place - 1);
        grows[column] = grown;
        sums[column] = sum + grown;
      });
    const [turn = 0, across = 0, below = 0, longer = 0] = sums;
    const shorter = shortens ? `rotate(${lies}deg)scale(${(ALONG + longer) / ALONG},1)rotate(${-lies}deg)` : '';
    return `${carry(x + across, y + below)}rotate(${turn}deg)${shorter}${carry(-x, -y)}`;
  });
}

/** Cycles shown before it keeps still. */
const CYCLES = 2;

/** Keyframes for paths with the classes `m0`, `m1` and so on, in `.moving`. */
export function styleOf({ seconds, passed, moves }: Movement): string {
  return moves
    .map((move, index) => {
      const transforms = transformsOf(move, passed.length - 1);
      const frames = passed.map((moments, place) => {
        const when = moments.map((moment) => `${moment}%`).join();
        return `${when}{transform:${transforms[place]}}`;
      });
      const name = `m${index}`;
      return `.moving .${name}{animation:${name} ${seconds}s linear ${CYCLES}}@keyframes ${name}{${frames.join('')}}`;
    })
    .join('');
}

/**
 * The tally: feet that a pencil makes into strokes, and the strokes themselves for the printed key.
 * Four upright and the fifth across them, as on a chalkboard.
 */

import type { Measure } from './measure.js';
import { type Box, type LineBox, moved, type Tag } from './page.js';
import { TALLY_UNIT } from './sheet.js';

const UNIT = TALLY_UNIT;
const SPACING = 0.32 * UNIT;
const THICKNESS = 0.12 * UNIT;
const FOOT = 0.15 * UNIT;
/** In the key a foot stands alone, beside words: as tall as their small letters, or it would be taken for a dot. */
const KEY_FOOT = 0.26 * UNIT;
/** The bar of a set left out crosses the white above its foot. */
const KEY_BAR = 0.45 * UNIT;
/** How far a fifth stroke reaches beyond the four it crosses. */
const OVERHANG = 0.3 * SPACING;
/** Empty space after each five. */
const GROUP_GAP = SPACING;
const DOT = 0.04 * UNIT;
/** From the foot of a stroke down to the baseline of the letter beneath it. */
const BENEATH = 8;

/** Where each foot of a row of strokes stands, from the left; a fifth has no place of its own. */
function tallyPlaces(strokes: number): readonly number[] {
  return Array.from({ length: strokes }, (_, i) => Math.floor(i / 5) * (4 * SPACING + GROUP_GAP) + (i % 5) * SPACING);
}

/** How wide a row of so many strokes is, in points. */
export function tallyWidth(strokes: number): number {
  const full = Math.floor(strokes / 5);
  const rest = strokes % 5;
  const fives = full * (3 * SPACING + 2 * OVERHANG) + Math.max(0, full - 1) * (SPACING + GROUP_GAP - 2 * OVERHANG);
  if (rest === 0) return full === 0 ? 0 : fives + THICKNESS;
  return full * (4 * SPACING + GROUP_GAP) + (rest - 1) * SPACING + THICKNESS;
}

const upright = (x: number, bottom: number, height: number, tag?: Tag): LineBox => ({
  kind: 'line',
  x,
  y: bottom,
  toX: x,
  toY: bottom - height,
  thickness: THICKNESS,
  ...(tag ? { tag } : {}),
});

const enlarged = (line: LineBox, times: number): LineBox => ({
  ...line,
  x: line.x * times,
  y: line.y * times,
  toX: line.toX * times,
  toY: line.toY * times,
  thickness: line.thickness * times,
});

/**
 * Feet of sets still to do; a fifth is a dotted slant across the four. `bottom` is where the feet stand, `times` how
 * much larger they are than the 7 mm of a tally.
 */
export function layOutFeet(strokes: number, x: number, bottom: number, times = 1): readonly LineBox[] {
  return tallyPlaces(strokes).map((place, i): LineBox => {
    const left = place + THICKNESS / 2;
    const first = left - 4 * SPACING;
    const foot: LineBox =
      i % 5 === 4
        ? {
            kind: 'line',
            x: first - OVERHANG,
            y: -0.3 * UNIT,
            toX: first + 3 * SPACING + OVERHANG,
            toY: -0.75 * UNIT,
            thickness: DOT,
            dotted: true,
          }
        : upright(left, 0, FOOT);
    return moved(enlarged(foot, times), x, bottom);
  });
}

export type Mark = 'to do' | 'done' | 'easier' | 'left out' | 'extra';

/** One mark of the printed key, standing on `bottom`; a letter beneath it needs eight points more. */
export function layOutMark(mark: Mark, x: number, bottom: number, measure: Measure, tag: Tag): readonly Box[] {
  const middle = x + SPACING;
  const below = (text: string): Box => {
    const width = measure.width('label', text);
    return {
      kind: 'text',
      style: 'label',
      x: middle - width / 2,
      y: bottom + BENEATH,
      width,
      text,
      tag,
      endsAtSpace: false,
    };
  };
  switch (mark) {
    case 'to do':
      return [upright(middle, bottom, KEY_FOOT, tag)];
    case 'done':
      return [upright(middle, bottom, UNIT, tag)];
    case 'easier':
      return [upright(middle, bottom, UNIT, tag), below('e')];
    case 'left out':
      return [
        upright(middle, bottom, KEY_FOOT, tag),
        {
          kind: 'line',
          x: middle - 0.22 * UNIT,
          y: bottom - KEY_BAR,
          toX: middle + 0.22 * UNIT,
          toY: bottom - KEY_BAR,
          thickness: THICKNESS / 2,
          tag,
        },
      ];
    case 'extra':
      return [upright(middle, bottom, UNIT, tag), below('+')];
  }
}

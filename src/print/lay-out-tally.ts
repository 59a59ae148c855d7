/**
 * The tally: feet that a pencil makes into strokes, and the strokes themselves for the printed key.
 * Four upright and the fifth across them, as on a chalkboard.
 */
import type { Box, LineBox, Tag } from './page.js';
import { TALLY_UNIT } from './sheet.js';
import type { Measure } from './type-styles.js';

const UNIT = TALLY_UNIT;
const SPACING = 0.32 * UNIT;
const THICKNESS = 0.12 * UNIT;
const FOOT = 0.15 * UNIT;
/** How far a fifth stroke reaches beyond the four it crosses. */
const OVERHANG = 0.3 * SPACING;
/** Empty space after each five. */
const GROUP_GAP = SPACING;
const DOT = 0.7;
/** From the foot of a stroke down to the baseline of the letter beneath it. */
const BENEATH = 8;

/** Where each foot of a row of strokes stands, from the left; a fifth has no place of its own. */
export function tallyPlaces(strokes: number): readonly number[] {
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

/** Feet of sets still to do; a fifth is a dotted slant across the four. `bottom` is where the feet stand. */
export function layOutFeet(strokes: number, x: number, bottom: number): readonly LineBox[] {
  return tallyPlaces(strokes).map((place, i): LineBox => {
    const left = x + place + THICKNESS / 2;
    if (i % 5 !== 4) return upright(left, bottom, FOOT);
    const from = left - 4 * SPACING;
    return {
      kind: 'line',
      x: from - OVERHANG,
      y: bottom - FOOT - 0.1 * UNIT,
      toX: from + 3 * SPACING + OVERHANG,
      toY: bottom - 0.8 * UNIT,
      thickness: DOT,
      dotted: true,
    };
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
      return [upright(middle, bottom, FOOT, tag)];
    case 'done':
      return [upright(middle, bottom, UNIT, tag)];
    case 'easier':
      return [upright(middle, bottom, UNIT, tag), below('e')];
    case 'left out':
      return [
        upright(middle, bottom, FOOT, tag),
        {
          kind: 'line',
          x: middle - 0.22 * UNIT,
          y: bottom - 0.3 * UNIT,
          toX: middle + 0.22 * UNIT,
          toY: bottom - 0.3 * UNIT,
          thickness: THICKNESS / 2,
          tag,
        },
      ];
    case 'extra':
      return [upright(middle, bottom, UNIT, tag), below('+')];
  }
}

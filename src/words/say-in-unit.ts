/**
 * A load shown in another unit as well. It is a display alone: the plan stays as it is, and a bell is still called by its
 * own mark, since that is what is read on it.
 */
import type { LoadText } from '../model/booklet.js';
import { GRAMS_IN_A_POUND, type MassUnit } from '../model/quantity.js';
import type { LoadSpeech } from './say-load.js';
import { localFigures } from './say-number.js';

/** Whole pounds from here on, tenths below: the marks of bells are whole pounds (common practice, no source). */
const WHOLE_POUNDS_FROM = 10;

const GRAMS: Readonly<Record<MassUnit, number>> = { kg: 1000, lb: GRAMS_IN_A_POUND };

/** The last number of a figure: `16` of `2 × 16`, each of two. */
const LAST_NUMBER = /(\d+(?:[.,]\d+)?)$/;

/**
 * `16 kg` in pounds → `16 kg (35 lb)`. A load already in that unit, without one (a band), or of the body alone stays as it
 * is. `wanted` as the phone's settings have it.
 */
export function inUnit(load: LoadText, wanted: 'as printed' | MassUnit, speech: LoadSpeech): LoadText {
  const { unit } = load;
  if (wanted === 'as printed' || (unit !== 'kg' && unit !== 'lb') || unit === wanted) return load;
  const written = LAST_NUMBER.exec(load.figure)?.[1];
  if (written === undefined) return load;
  const figure = convert(Number(written.replace(',', '.')), unit, wanted);
  return { ...load, other: { figure: localFigures(figure, speech), unit: wanted } };
}

/** Kilograms to a tenth; pounds whole, or to a tenth where they are few. A half goes up. */
function convert(value: number, from: MassUnit, to: MassUnit): string {
  const exact = (value * GRAMS[from]) / GRAMS[to];
  const parts = to === 'lb' && exact >= WHOLE_POUNDS_FROM ? 1 : 10;
  return `${Math.floor(exact * parts + 0.5) / parts}`;
}

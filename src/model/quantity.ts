/**
 * Amounts. Loads are whole grams, reserve is whole tenths of a rep, shares are whole thousandths:
 * whole numbers are the same on every machine.
 */
export type Grams = number;
/** Tenths of a rep: 20 is two reps. */
export type Tenths = number;
/** Thousandths: 878 is 0.878. */
export type PerMille = number;
/** Ten-thousandths: 50 is half a per cent. */
export type PerTenThousand = number;
export type Seconds = number;
export type Millimetres = number;

export type MassUnit = 'kg' | 'lb';

export interface Range {
  readonly min: number;
  readonly max: number;
}

/** How sure a number is: a test done in front of the coach, worked out from another, or from poor evidence. */
export type Confidence = 'measured' | 'estimated' | 'weak';

/** A mass as the author wrote it. `text` is what is printed; a 35 lb bell prints as 35 lb. */
export interface Mass {
  readonly grams: Grams;
  readonly unit: MassUnit;
  /** The figure alone, as written, with a point for the decimal: `16`, `1.25`, `35`. */
  readonly figure: string;
}

/** International avoirdupois pound: 0.45359237 kg exactly (international yard and pound agreement, 1959). */
export const GRAMS_IN_A_POUND = 453.59237;

/** Whole grams, rounded once, half up. */
export function gramsOf(figure: number, unit: MassUnit): Grams {
  return Math.floor(figure * (unit === 'kg' ? 1000 : GRAMS_IN_A_POUND) + 0.5);
}

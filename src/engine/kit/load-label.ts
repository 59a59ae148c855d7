/** A load as printed: an item keeps its author's figure and unit; what is made up is given in the client's unit. */
import { GRAMS_IN_A_POUND, type Grams, type Mass, type MassUnit } from '../../model/quantity.js';

/** `16 kg`, `35 lb`. */
export const labelOf = (mass: Mass): string => `${mass.figure} ${mass.unit}`;

/** `2 × 16 kg`: two equal items, one in each hand. */
export const labelOfPair = (label: string): string => `2 × ${label}`;

/** `60 kg`, `60.82 kg`, `135 lb`: to two decimals at most, rounded half up; the grams stay exact. */
export function labelOfGrams(grams: Grams, unit: MassUnit): string {
  const hundredths = Math.floor((grams * 100) / (unit === 'kg' ? 1000 : GRAMS_IN_A_POUND) + 0.5);
  const whole = Math.floor(hundredths / 100);
  const rest = hundredths - whole * 100;
  const decimals = rest === 0 ? '' : `.${String(rest).padStart(2, '0').replace(/0$/, '')}`;
  return `${whole}${decimals} ${unit}`;
}

/** A load as printed: in the figures and unit of what makes it; where units are mixed, in the client's unit. */
import { GRAMS_IN_A_POUND, type Mass, type MassUnit } from '../../model/quantity.js';

/** `16 kg`, `35 lb`. */
export const labelOf = (mass: Mass): string => `${mass.figure} ${mass.unit}`;

/** `2 × 16 kg`: two equal items, one in each hand. */
export const labelOfPair = (label: string): string => `2 × ${label}`;

/**
 * What several items make together, divided over so many hands: `60 kg`, `27.5 lb`, `60.82 kg`. Items of one unit are
 * summed by their figures, exactly; of mixed units the grams are given in the client's unit, to two decimals at most,
 * rounded half up. The grams themselves stay as they are.
 */
export function labelOfSum(masses: readonly Mass[], hands: 1 | 2, unit: MassUnit): string {
  const own = masses[0]?.unit ?? unit;
  const thousandths = masses.map(thousandthsOf);
  if (masses.every((mass) => mass.unit === own) && thousandths.every((value) => value !== null)) {
    const sum = thousandths.reduce<number>((total, value) => total + (value ?? 0), 0);
    return `${decimalOf(sum / hands, 3)} ${own}`;
  }
  const grams = masses.reduce((total, mass) => total + mass.grams, 0) / hands;
  const hundredths = Math.floor((grams * 100) / (unit === 'kg' ? 1000 : GRAMS_IN_A_POUND) + 0.5);
  return `${decimalOf(hundredths, 2)} ${unit}`;
}

/** `null` where the figure has more than three decimals. */
function thousandthsOf({ figure }: Mass): number | null {
  const parts = /^(\d+)(?:\.(\d{1,3}))?$/.exec(figure);
  return parts === null ? null : Number(parts[1]) * 1000 + Number((parts[2] ?? '').padEnd(3, '0'));
}

function decimalOf(value: number, places: number): string {
  const scale = 10 ** places;
  const whole = Math.floor(value / scale);
  const rest = String(Math.floor(value - whole * scale))
    .padStart(places, '0')
    .replace(/0+$/, '');
  return rest === '' ? String(whole) : `${whole}.${rest}`;
}

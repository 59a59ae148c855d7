/** Readers of amounts as coaches write them: masses, lengths, times, whole numbers, shares, tempi. Their writers too. */
import type { Tempo } from '../model/exercise.js';
import { gramsOf, type Mass, type MassUnit, type Range } from '../model/quantity.js';
import { asTyped, good, type Read, type Reader, refuse } from './read-value.js';

export interface Bounds {
  readonly least: number;
  readonly most: number;
}

/** A whole number within bounds; `what` names it in the refusal. */
export function readWhole(what: string, bounds: Bounds): Reader<number> {
  return (text) => {
    const figure = asTyped(text).trim();
    if (!/^-?\d{1,9}$/.test(figure))
      return refuse({ code: 'not-a-number', data: { text: text.trim(), whole: true } }, text);
    return within(what, Number(figure), figure, bounds, text);
  };
}

/** A number with at most three decimals, after a point or a comma. */
export function readDecimal(what: string, bounds: Bounds): Reader<number> {
  return (text) => {
    const figure = asTyped(text).trim();
    if (!/^-?\d{1,6}([.,]\d{1,3})?$/.test(figure)) {
      return refuse({ code: 'not-a-number', data: { text: text.trim(), whole: false } }, text);
    }
    return within(what, Number(figure.replace(',', '.')), figure, bounds, text);
  };
}

export function within(what: string, value: number, figure: string, bounds: Bounds, text: string): Read<number> {
  if (value >= bounds.least && value <= bounds.most) return good(value);
  const data = { what, figure, least: String(bounds.least), most: String(bounds.most) };
  return refuse({ code: 'out-of-range', data }, text);
}

/** `8` or `8-12`; text already as `asTyped` gives it. */
export function readRange(what: string, text: string, bounds: Bounds): Read<Range> {
  const match = /^(\d{1,6})(?:\s*(?:-|to)\s*(\d{1,6}))?$/.exec(text.trim());
  if (!match) return refuse({ code: 'not-a-number', data: { text: text.trim(), whole: true } }, text);
  const min = Number(match[1]);
  const max = Number(match[2] ?? match[1]);
  if (min > max) return refuse({ code: 'range-backwards', data: { text: text.trim() } }, text);
  if (min < bounds.least || max > bounds.most) {
    const figure = min < bounds.least ? String(min) : String(max);
    return refuse(
      { code: 'out-of-range', data: { what, figure, least: String(bounds.least), most: String(bounds.most) } },
      text,
    );
  }
  return good({ min, max });
}

export const writeRange = ({ min, max }: Range): string => (min === max ? String(min) : `${min}–${max}`);

/** Which unit a bare figure is in: that of the client or studio, or none where kilograms and pounds are both in use. */
export interface MassContext {
  readonly unit: MassUnit;
  readonly mixed: boolean;
}

const MASS_BOUNDS = { least: 0.1, most: 600 } as const;
/** Of a grown person: 20 to 300 kg. */
const BODY_BOUNDS = { kg: { least: 20, most: 300 }, lb: { least: 44, most: 661 } } as const;

/** `16 kg`, `35 lb`, `2.5kg`, `2,5 kg`; a bare figure where only one unit is in use. */
export function readMass(context: MassContext, name = 'A load', what: 'load' | 'body mass' = 'load'): Reader<Mass> {
  return (text) => {
    const word = asTyped(text).trim().toLowerCase();
    const match = /^(\d{1,4}(?:[.,]\d{1,3})?)\s*([a-z]*)\.?$/.exec(word);
    const figure = match?.[1];
    const unit = figure === undefined ? undefined : massUnit(match?.[2] ?? '', context.unit);
    if (figure === undefined || unit === undefined) {
      const data = { text: text.trim(), what, suggestion: poundsInStones(word) };
      return refuse({ code: 'not-a-mass', data }, text);
    }
    if (match?.[2] === '' && context.mixed) return refuse({ code: 'no-unit', data: { text: text.trim() } }, text);
    const written = figure.replace(',', '.');
    const plain = written.includes('.') ? written.replace(/0+$/, '').replace(/\.$/, '') : written;
    const mass: Mass = { grams: gramsOf(Number(plain), unit), unit, figure: plain.replace(/^0+(?=\d)/, '') };
    const bounds = what === 'body mass' ? BODY_BOUNDS[unit] : MASS_BOUNDS;
    const checked = within(name, Number(plain), `${plain} ${unit}`, bounds, text);
    return checked.ok ? good(mass) : checked;
  };
}

/** `11 st 2` is 156 lb, a stone being 14 pounds (Weights and Measures Act 1985, schedule 1); empty where no stones are written. */
function poundsInStones(word: string): string {
  const [, stones, pounds = '0'] =
    /^(\d{1,2})\s*(?:st|stones?)\.?(?:\s*(\d{1,2})\s*(?:lbs?|pounds?)?)?$/.exec(word) ?? [];
  return stones === undefined ? '' : `${Number(stones) * 14 + Number(pounds)} lb`;
}

function massUnit(word: string, bare: MassUnit): MassUnit | undefined {
  if (word === '') return bare;
  if (['kg', 'kgs', 'kilo', 'kilos'].includes(word)) return 'kg';
  return ['lb', 'lbs', 'pound', 'pounds'].includes(word) ? 'lb' : undefined;
}

/** Whether a text speaks of both kilograms and pounds. */
export const speaksOfBothUnits = (text: string): boolean =>
  /\d\s*(kg|kilo)/i.test(text) && /\d\s*(lb|pound)/i.test(text);

/** Millimetres: `2.4 m`, `2,4 m`, `240 cm`, `2400 mm`; a bare figure below 10 is metres. */
export const readLength: Reader<number> = (text) => {
  const word = asTyped(text).trim().toLowerCase();
  const match = /^(\d{1,5}(?:[.,]\d{1,3})?)\s*(m|cm|mm|metres?|meters?)?$/.exec(word);
  const figure = Number((match?.[1] ?? '').replace(',', '.'));
  if (!match || (match[2] === undefined && figure >= 10)) {
    return refuse({ code: 'not-a-length', data: { text: text.trim() } }, text);
  }
  const scale = match[2] === 'mm' ? 1 : match[2] === 'cm' ? 10 : 1000;
  const millimetres = Math.round(figure * scale);
  const bounds = { least: 0.3, most: 50 };
  const checked = within('A length', millimetres / 1000, `${millimetres / 1000} m`, bounds, text);
  return checked.ok ? good(millimetres) : checked;
};

/** Clear floor: `2 × 2.5 m`. The longer side first, whichever is written first. */
export const readFloor: Reader<{ readonly long: number; readonly wide: number }> = (text) => {
  const sides = asTyped(text).trim().split('×');
  const unit = /[a-z]+\s*$/i.exec(sides[1] ?? '')?.[0] ?? '';
  const [a, b] = sides.map((side) => readLength(/[a-z]/i.test(side) ? side : `${side.trim()} ${unit}`));
  if (sides.length !== 2 || !a?.ok || !b?.ok) return refuse({ code: 'not-a-floor', data: { text: text.trim() } }, text);
  return good({ long: Math.max(a.value, b.value), wide: Math.min(a.value, b.value) });
};

/** Whole seconds: `90 s`, `1 min`, `1 min 30 s`, `1:30`, `none`. */
export const readSeconds: Reader<number> = (text) => {
  const word = asTyped(text).trim().toLowerCase();
  if (/^(none|no|0)$/.test(word)) return good(0);
  const clock = /^(\d{1,2}):([0-5]\d)$/.exec(word);
  const spoken = /^(?:(\d{1,3})\s*(?:min|mins|minutes?))?\s*(?:(\d{1,4})\s*(?:s|sec|secs|seconds?))?$/.exec(word);
  const minutes = clock?.[1] ?? spoken?.[1];
  const rest = clock?.[2] ?? spoken?.[2];
  if (minutes === undefined && rest === undefined)
    return refuse({ code: 'not-a-time', data: { text: text.trim() } }, text);
  const seconds = Number(minutes ?? 0) * 60 + Number(rest ?? 0);
  return within('A time', seconds, `${seconds} s`, { least: 0, most: 3600 }, text);
};

/** `2-0-1-0`: seconds lowering, at the bottom, lifting, at the top; X or *fast* for as fast as you can. */
export const readTempo: Reader<Tempo> = (text) => {
  const word = asTyped(text).trim().toLowerCase();
  const figures = /^(\d{1,2})\s*-\s*(\d{1,2})\s*-\s*(\d{1,2}|x|×|fast)\s*-\s*(\d{1,2})$/.exec(word);
  const spoken = SPOKEN_TEMPI.get(word.replace(/\s+/g, ' '));
  if (spoken) return good(spoken);
  if (!figures) return refuse({ code: 'not-a-tempo', data: { text: text.trim() } }, text);
  const lift = figures[3] ?? '';
  return good({
    lower: Number(figures[1]),
    bottom: Number(figures[2]),
    lift: /^\d/.test(lift) ? Number(lift) : 'fast',
    top: Number(figures[4]),
  });
};

const SPOKEN_TEMPI: ReadonlyMap<string, Tempo> = new Map([
  ['steady', { lower: 2, bottom: 0, lift: 1, top: 0 }],
  ['slow lowering', { lower: 4, bottom: 0, lift: 1, top: 0 }],
  ['slow with a pause', { lower: 4, bottom: 2, lift: 1, top: 0 }],
  ['fast', { lower: 1, bottom: 0, lift: 'fast', top: 0 }],
]);

export const writeTempo = ({ lower, bottom, lift, top }: Tempo): string =>
  `${lower}-${bottom}-${lift === 'fast' ? 'X' : lift}-${top}`;

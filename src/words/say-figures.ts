/** The figures of a reason as said. Decides nothing: a figure the reason lacks is left unsaid. */

import { dayOfIso } from '../model/day.js';
import type { Reason, ReasonInput } from '../model/reason.js';
import type { Figure } from './rule-words.js';
import { sayFullDate } from './say-date.js';
import { sayTenths } from './say-dose.js';
import { localFigures } from './say-number.js';
import { NO_BREAK, unbroken } from './spacing.js';
import type { SpeechWith } from './speech.js';

/** What figures are said with. */
export type FigureSpeech = SpeechWith<'numbers' | 'dates' | 'doses' | 'sides'>;

/** How things that a reason carries by id or by mass are called. */
export interface Names {
  readonly exercise: (id: string) => string;
  /** A load as its owner calls it: `35 lb`, `2 × 16 kg` where the exercise takes a pair; kilograms where nobody owns it. */
  readonly load: (grams: number, exercise?: string) => string;
}

/** To two decimals at most, rounded half up. */
const plainKilograms = (grams: number): string => unbroken(`${Math.floor(grams / 10 + 0.5) / 100} kg`);
export const PLAIN_NAMES: Names = { exercise: (id) => id.replaceAll('-', ' '), load: plainKilograms };

/** The figures of a reason by name: each of several alike once, and a load as its exercise holds it. */
export function figuresOf({ inputs }: Reason, speech: FigureSpeech, names: Names): Figure {
  const within = namesOf(inputs, names);
  return (name) => {
    const own = inputs.filter((each) => each.name === name);
    return [...new Set(own.map((input) => sayInput(input, within, speech)))].join(', ');
  };
}

/** The same names, where a load is held as one exercise holds it if nothing else is said. */
export function heldIn(about: string, names: Names): Names {
  return { ...names, load: (grams, exercise = about) => names.load(grams, exercise) };
}

/** For the figures of one reason: as the exercise it is about holds its loads. */
export function namesOf(inputs: readonly ReasonInput[], names: Names): Names {
  const about = inputs.find(({ name }) => name === 'exercise')?.value;
  return typeof about === 'string' ? heldIn(about, names) : names;
}

/** Figures that are an exercise's id. */
export const NAMES_OF_EXERCISES: readonly string[] = [
  'exercise',
  'programme',
  'relative',
  'part',
  'row',
  'met by',
  'stays',
];

/** A figure with its unit: `2` for 20 tenths, `16 kg`, `10 %`, `90 s`. */
export function sayInput(input: ReasonInput, names: Names, speech: FigureSpeech): string {
  const { words } = speech;
  const { value, unit } = input;
  if (typeof value === 'string') {
    if (NAMES_OF_EXERCISES.includes(input.name)) return names.exercise(value);
    if (dayOfIso(value) !== undefined) return sayFullDate(value, speech);
    return value === 'left' || value === 'right' || value === 'both' ? words.sides[value] : value;
  }
  return localFigures(sayValue(value, unit, names, speech), speech);
}

function sayValue(value: number, unit: string, names: Names, { words }: FigureSpeech): string {
  switch (unit) {
    case 'g':
      return names.load(value);
    case 'tenths':
      return sayTenths(value);
    case 'per-mille':
      return `${value / 10}${NO_BREAK}%`;
    case 'per-ten-thousand':
      return `${value / 100}${NO_BREAK}%`;
    case 's':
      return words.doses.seconds(`${value}`);
    case 'tenths of a second':
      return words.doses.seconds(sayTenths(value));
    case 'reps':
      return `${value}`;
    case '':
      return `${value}`;
    default:
      // A row stands once in a session.
      return words.numbers.counted(`${value}`, unit === 'occurrences' ? 'sessions' : unit);
  }
}

/** Calendar dates as said. The names come from the catalogue, so that every machine says the same. */
import { dayOfIso, type IsoDate, weekdayOf } from '../model/day.js';
import { invariant } from '../model/result.js';
import type { DateParts } from './catalogue.js';
import type { SpeechWith } from './speech.js';

type DateSpeech = SpeechWith<'dates'>;

function partsOf(date: IsoDate): DateParts {
  const day = dayOfIso(date);
  invariant(day !== undefined, `${date} is not a calendar date`);
  const [year = 0, month = 0, dayOfMonth = 0] = date.split('-').map(Number);
  return { weekday: weekdayOf(day), day: dayOfMonth, month, year };
}

/** `Mon 4 Jan`, held on one line. */
export const sayDate = (date: IsoDate, { words }: DateSpeech): string => words.dates.short(partsOf(date));

/** `4 January 2027`. */
export const sayFullDate = (date: IsoDate, { words }: DateSpeech): string => words.dates.full(partsOf(date));

/** `4 January to 14 February 2027`. */
export const sayDates = (from: IsoDate, to: IsoDate, { words }: DateSpeech): string =>
  words.dates.span(partsOf(from), partsOf(to));

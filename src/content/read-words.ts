/** Readers of plain words: names, choices, yes and no, dates, days, languages, addresses; and lists of any of them. */
import { type Day, dayOfIso, type Weekday } from '../model/day.js';
import { nearestOf } from './nearest.js';
import {
  allOf,
  asTyped,
  good,
  type Part,
  type Read,
  type Reader,
  readPart,
  refuse,
  splitPart,
  trimPart,
} from './read-value.js';

const LONGEST_NAME = 120;
const LONGEST_TEXT = 600;

/** Any text in one line, at most `most` letters. */
export const readText =
  (most: number = LONGEST_TEXT): Reader<string> =>
  (text) => {
    const words = text.replace(/\s+/g, ' ').trim();
    const letters = Array.from(words).length;
    if (letters === 0) return refuse({ code: 'empty-entry', data: {} }, text);
    if (letters > most) return refuse({ code: 'too-long', data: { letters, most } }, text);
    const stray = strayQuote(text);
    if (stray !== undefined) return refuse({ code: 'stray-quote', data: { text: words } }, text, stray, 1);
    return good(words);
  };

/** Where a quotation mark begins or ends the text and has no other to go with; single ones may be apostrophes. */
function strayQuote(text: string): number | undefined {
  const marks = [...text.matchAll(/["“”„«»]/g)].map(({ index }) => index);
  const [only] = marks;
  if (only === undefined || marks.length > 1) return undefined;
  const opens = text.slice(0, only).trim() === '';
  // After a figure it may stand for inches.
  const closes = text.slice(only + 1).trim() === '' && !/\d\s*$/.test(text.slice(0, only));
  return opens || closes ? only : undefined;
}

export const readName: Reader<string> = readText(LONGEST_NAME);

/** One of `known`, in any case; `not-one-of` otherwise. */
export function readOneOf<const Known extends string>(known: readonly Known[]): Reader<Known> {
  return (text) => {
    const { text: word, start } = trimPart({ text: asTyped(text).toLowerCase(), start: 0 });
    const found = known.find((one) => one.toLowerCase() === word.replace(/\s+/g, ' '));
    if (found !== undefined) return good(found);
    const nearest = nearestOf(word, known);
    return refuse({ code: 'not-one-of', data: { text: word, known, nearest } }, text, start, word.length);
  };
}

const YES = ['yes', 'y', 'true'];
const NO = ['no', 'n', 'false'];

export const readYesNo: Reader<boolean> = (text) => {
  const word = text.trim().toLowerCase();
  if (YES.includes(word)) return good(true);
  if (NO.includes(word)) return good(false);
  return refuse({ code: 'not-one-of', data: { text: text.trim(), known: ['yes', 'no'], nearest: '' } }, text);
};

/** A calendar date as ISO 8601 writes it, which must exist. */
export const readDate: Reader<Day> = (text) => {
  const word = asTyped(text).trim();
  const day = dayOfIso(word);
  if (day !== undefined) return good(day);
  if (/^\d{4}-\d{2}-\d{2}$/.test(word)) return refuse({ code: 'no-such-date', data: { text: word } }, text);
  return refuse({ code: 'not-a-date', data: { text: word, suggestion: suggestDate(word) } }, text);
};

/** The ISO form of a date written another way, where only one day can be meant; else empty. */
function suggestDate(text: string): string {
  const yearFirst = /^(\d{4})[-./ ](\d{1,2})[-./ ](\d{1,2})$/.exec(text);
  const dayFirst = /^(\d{1,2})[-./ ](\d{1,2})[-./ ](\d{4})$/.exec(text);
  const parts = yearFirst
    ? [yearFirst[1], yearFirst[2], yearFirst[3]]
    : dayFirst && Number(dayFirst[1]) > 12
      ? [dayFirst[3], dayFirst[2], dayFirst[1]]
      : [];
  const iso = parts.map((part) => (part ?? '').padStart(2, '0')).join('-');
  return dayOfIso(iso) === undefined ? '' : iso;
}

const WEEKDAYS = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;
const WEEKDAY_NUMBERS: readonly Weekday[] = [1, 2, 3, 4, 5, 6, 7];
const LONG_WEEKDAYS = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'];

export const readWeekday: Reader<Weekday> = (text) => {
  const word = text.trim().toLowerCase();
  const at = WEEKDAYS.findIndex((short, index) => {
    const long = LONG_WEEKDAYS[index] ?? '';
    return (
      (word.length >= 3 && word.startsWith(short) && long.startsWith(word.replace(/s$/, ''))) || word === `${long}s`
    );
  });
  const day = WEEKDAY_NUMBERS[at];
  if (day !== undefined) return good(day);
  const nearest = nearestOf(word, [...LONG_WEEKDAYS, ...WEEKDAYS]).slice(0, 3);
  return refuse({ code: 'not-one-of', data: { text: word, known: WEEKDAYS, nearest } }, text);
};

/** A language tag of BCP 47 (RFC 5646): language, script, region and variants, no extensions. */
export const readLanguage: Reader<string> = (text) => {
  const tag = text.trim();
  const wellFormed = /^[a-z]{2,3}(-[a-z]{4})?(-([a-z]{2}|\d{3}))?(-([a-z0-9]{5,8}|\d[a-z0-9]{3}))*$/i.test(tag);
  return wellFormed ? good(tag) : refuse({ code: 'not-a-language', data: { text: tag } }, text);
};

/** A web address, with `http` or `https`; a name or a password in it would stand on every public page. */
export const readAddress: Reader<string> = (text) => {
  const address = text.trim();
  const wellFormed = /^https?:\/\/[^\s/?#@]+\.[^\s/?#@]+(?:[/?#]\S*)?$/i.test(address) && URL.canParse(address);
  return wellFormed ? good(address) : refuse({ code: 'not-an-address', data: { text: address } }, text);
};

export const readPhoneNumber: Reader<string> = (text) => {
  const number = asTyped(text).trim();
  const wellFormed = /^\+?[\d ()-]{2,24}$/.test(number) && (number.match(/\d/g)?.length ?? 0) >= 2;
  return wellFormed ? good(number) : refuse({ code: 'not-a-phone-number', data: { text: number } }, text);
};

/** Entries between commas or semicolons; `none` alone is no entry. */
export function readListOf<Value>(entry: Reader<Value>): Reader<readonly Value[]> {
  return (text) => {
    const whole = trimPart({ text, start: 0 });
    if (/^(none|nothing|-|–|—)$/i.test(whole.text)) return good([]);
    return readEntries(splitPart(whole, /[,;]/g), entry);
  };
}

/** Every entry, or all that is wrong with any; an empty entry is refused where it stands. */
export function readEntries<Value>(parts: readonly Part[], entry: Reader<Value>): Read<readonly Value[]> {
  return allOf(
    parts.map((part): Read<Value> => {
      if (part.text !== '') return readPart(part, entry);
      const faults = [{ finding: { code: 'empty-entry', data: {} } as const, start: part.start, length: 1 }];
      return { ok: false, faults };
    }),
  );
}

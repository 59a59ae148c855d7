/**
 * Calendar days as whole numbers: days since 1970-01-01 in the proleptic Gregorian calendar of ISO 8601.
 * No clock and no time zone: a training day is a local date.
 */
declare const brand: unique symbol;
export type Day = number & { readonly [brand]: 'Day' };
/** `YYYY-MM-DD`. */
export type IsoDate = string;

export const day = (daysSince1970: number): Day => daysSince1970 as Day;
export const addDays = (from: Day, days: number): Day => day(from + days);

/** The day of a calendar date; `undefined` if there is no such date. Years 1 to 9999. */
export function dayOfDate(year: number, month: number, dayOfMonth: number): Day | undefined {
  const ms = Date.UTC(2000, month - 1, dayOfMonth);
  const probe = new Date(ms);
  probe.setUTCFullYear(year, month - 1, dayOfMonth);
  const same =
    probe.getUTCFullYear() === year && probe.getUTCMonth() === month - 1 && probe.getUTCDate() === dayOfMonth;
  return same && year >= 1 && year <= 9999 ? day(Math.floor(probe.getTime() / 86_400_000)) : undefined;
}

/** The day an ISO 8601 calendar date names; `undefined` if it is not one. */
export function dayOfIso(text: string): Day | undefined {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  return parts ? dayOfDate(Number(parts[1]), Number(parts[2]), Number(parts[3])) : undefined;
}

export function isoOfDay(of: Day): IsoDate {
  return new Date(of * 86_400_000).toISOString().slice(0, 10);
}

/** Monday is 1, Sunday 7, as in ISO 8601. */
export type Weekday = 1 | 2 | 3 | 4 | 5 | 6 | 7;

const WEEKDAYS: readonly Weekday[] = [1, 2, 3, 4, 5, 6, 7];

export function weekdayOf(of: Day): Weekday {
  // 1970-01-01 was a Thursday.
  return WEEKDAYS[(((of + 3) % 7) + 7) % 7] ?? 1;
}

/** `month` is 0-based. The yearly day a person of this birth year is at least, or at most, so old is not known: the range is. */
export function agesInYear(birthYear: number, yearNow: number): { readonly youngest: number; readonly oldest: number } {
  return { youngest: yearNow - birthYear - 1, oldest: yearNow - birthYear };
}

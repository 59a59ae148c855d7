/**
 * Calendar days against ISO 8601 week dates and an outside library.
 * Source: ISO 8601 week dates; the table's values were recomputed with three general-purpose date libraries that agree
 * (luxon among them, asked again here). They are not a publication's own.
 */
import fc from 'fast-check';
import { DateTime } from 'luxon';
import { describe, expect, test } from 'vitest';
import { addDays, agesInYear, day, dayOfDate, dayOfIso, isoOfDay, weekdayOf } from '../../src/model/day.js';

/** Date, ISO week date. */
const WEEK_DATES = [
  ['1977-01-01', '1976-W53-6'],
  ['1978-01-01', '1977-W52-7'],
  ['1979-12-31', '1980-W01-1'],
  ['1980-12-29', '1981-W01-1'],
  ['2005-01-01', '2004-W53-6'],
  ['2008-12-29', '2009-W01-1'],
  ['2010-01-03', '2009-W53-7'],
  ['2016-01-03', '2015-W53-7'],
  ['2019-12-30', '2020-W01-1'],
  ['2020-12-31', '2020-W53-4'],
  ['2021-01-03', '2020-W53-7'],
  ['2021-01-04', '2021-W01-1'],
  ['2023-01-01', '2022-W52-7'],
  ['2024-12-30', '2025-W01-1'],
  ['2026-11-24', '2026-W48-2'],
  ['2026-12-31', '2026-W53-4'],
  ['2027-01-01', '2026-W53-5'],
  ['2027-01-04', '2027-W01-1'],
] as const;

const utc = { zone: 'utc' } as const;
const FIRST = dayOfIso('0001-01-01') ?? day(0);
const LAST = dayOfIso('9999-12-31') ?? day(0);

describe('calendar days', () => {
  test.each(WEEK_DATES)('%s is %s', (iso, week) => {
    expect(DateTime.fromISO(week, utc).toISODate()).toBe(iso);
    const found = dayOfIso(iso);
    expect(found).toBeDefined();
    expect(weekdayOf(found ?? FIRST)).toBe(Number(week.at(-1)));
    expect(isoOfDay(found ?? FIRST)).toBe(iso);
  });

  test('every day of the calendar, there and back, as the library has it', () => {
    fc.assert(
      fc.property(fc.integer({ min: FIRST, max: LAST }), (days) => {
        const there = DateTime.fromMillis(days * 86_400_000, utc);
        expect(isoOfDay(day(days))).toBe(there.toISODate());
        expect(dayOfIso(isoOfDay(day(days)))).toBe(days);
        expect(weekdayOf(day(days))).toBe(there.weekday);
        expect(isoOfDay(addDays(day(0), days))).toBe(there.toISODate());
      }),
      { numRuns: 2000 },
    );
  });

  test('a date that does not exist is none; so says the library', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 9999 }),
        fc.integer({ min: -1, max: 14 }),
        fc.integer({ min: -1, max: 33 }),
        (y, m, d) => {
          expect(dayOfDate(y, m, d) !== undefined).toBe(
            DateTime.fromObject({ year: y, month: m, day: d }, utc).isValid,
          );
        },
      ),
      { numRuns: 2000 },
    );
    for (const text of ['2027-02-29', '2027-13-01', '2027-1-04', '2027-01-04T00:00', '04/01/2027', '', '2100-02-29']) {
      expect(dayOfIso(text), text).toBeUndefined();
    }
  });

  test('a block of six weeks on Mondays, Wednesdays and Fridays from 2027-01-04 ends on Friday 2027-02-12', () => {
    // RFC 5545 FREQ=WEEKLY;COUNT=18;BYDAY=MO,WE,FR, recomputed.
    const start = dayOfIso('2027-01-04') ?? FIRST;
    const dates = Array.from({ length: 42 }, (_, i) => addDays(start, i)).filter((each) =>
      [1, 3, 5].includes(weekdayOf(each)),
    );
    expect(dates).toHaveLength(18);
    expect(isoOfDay(dates.at(-1) ?? FIRST)).toBe('2027-02-12');
  });

  test('a birth year leaves two ages open', () => {
    expect(agesInYear(2009, 2027)).toEqual({ youngest: 17, oldest: 18 });
  });
});

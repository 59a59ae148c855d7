/** Dates against the calendar of the machine, which is asked in UTC and in one fixed locale. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, day, isoOfDay } from '../../src/model/day.js';
import { sayDate, sayDates, sayFullDate } from '../../src/words/say-date.js';
import { speechOf } from '../../src/words/speech.js';

const speech = speechOf('en-GB');
const plain = (text: string): string => text.replace(/[\u00a0\u202f]/g, ' ');

describe('a date', () => {
  test('is said in the trade’s short form', () => {
    expect(sayDate('2027-01-04', speech)).toBe('Mon\u00a04\u00a0Jan');
    expect(sayDate('2028-02-29', speech)).toBe('Tue\u00a029\u00a0Feb');
    expect(plain(sayFullDate('2027-09-30', speech))).toBe('30 September 2027');
    expect(plain(sayDates('2027-01-04', '2027-02-14', speech))).toBe('4 January to 14 February 2027');
    expect(plain(sayDates('2026-12-07', '2027-01-15', speech))).toBe('7 December 2026 to 15 January 2027');
  });

  test('agrees with the Unicode calendar data (CLDR, en-GB) on any day', () => {
    const whole = new Intl.DateTimeFormat('en-GB', { timeZone: 'UTC', day: 'numeric', month: 'long', year: 'numeric' });
    const weekday = new Intl.DateTimeFormat('en-GB', { timeZone: 'UTC', weekday: 'short' });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 60_000 }), (days) => {
        const date = addDays(day(0), days);
        const at = new Date(date * 86_400_000);
        expect(plain(sayFullDate(isoOfDay(date), speech))).toBe(plain(whole.format(at)));
        expect(sayDate(isoOfDay(date), speech).slice(0, 3)).toBe(weekday.format(at));
      }),
    );
  });
});

/** Values as coaches write them: read as meant, or refused by the code that says why. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nearestOf } from '../../src/content/nearest.js';
import {
  readFloor,
  readLength,
  readMass,
  readSeconds,
  readTempo,
  speaksOfBothUnits,
  writeTempo,
} from '../../src/content/read-amounts.js';
import { readEffort, readPattern, readTempi } from '../../src/content/read-row.js';
import type { Read } from '../../src/content/read-value.js';
import {
  readAddress,
  readDate,
  readLanguage,
  readListOf,
  readName,
  readPhoneNumber,
  readWeekday,
  readYesNo,
} from '../../src/content/read-words.js';
import { dayOfIso, isoOfDay } from '../../src/model/day.js';
import { isId, slugOf } from '../../src/model/slug.js';

/** The value, or the code that refuses it. */
const outcome = <Value>(read: Read<Value>): Value | string | undefined =>
  read.ok ? read.value : read.faults[0]?.finding.code;
const kg = { unit: 'kg', mixed: false } as const;

test.each([
  ['16 kg', 16_000],
  ['16kg', 16_000],
  ['16', 16_000],
  ['2,5 kg', 2_500],
  ['1.25 kilos', 1_250],
  ['16\u00a0kg', 16_000],
  // 1 lb = 0.45359237 kg exactly (international yard and pound agreement, 1959): 53 lb = 24.04039561 kg.
  ['53 lb', 24_040],
  ['35 lbs', 15_876],
  ['16 stone', 'not-a-mass'],
  ['sixteen', 'not-a-mass'],
  ['16 kg 5', 'not-a-mass'],
  ['0 kg', 'out-of-range'],
  ['-16 kg', 'not-a-mass'],
  ['1e3 kg', 'not-a-mass'],
])('a load: %s', (text, wanted) => {
  const read = readMass(kg)(text);
  expect(read.ok ? read.value.grams : outcome(read)).toBe(wanted);
});

test('a body mass in stones is put right in pounds', () => {
  const suggestion = (text: string) => {
    const read = readMass(kg, 'A body mass', 'body mass')(text);
    const finding = read.ok ? undefined : read.faults[0]?.finding;
    return finding?.code === 'not-a-mass' ? finding.data.suggestion : undefined;
  };
  // A stone is 14 pounds.
  expect(suggestion('11 st 2')).toBe('156 lb');
  expect(suggestion('11 stone 2 lb')).toBe('156 lb');
  expect(suggestion('eleven')).toBe('');
});

test.each([
  ['20 kg', true],
  ['19.9 kg', false],
  ['300 kg', true],
  ['301 kg', false],
  ['44 lb', true],
  ['43 lb', false],
  ['662 lb', false],
])('a body mass of a grown person: %s', (text, fits) => {
  const read = readMass(kg, 'A body mass', 'body mass')(text);
  expect(read.ok ? true : outcome(read)).toBe(fits ? true : 'out-of-range');
});

test.each([
  ['Ida Fell', undefined],
  ['“Ida Fell', '“'],
  ['Ida Fell”', '”'],
  ['“Ida” Fell', undefined],
  ['Ida ‘the hat’ Fell', undefined],
  ['don’t lock out', undefined],
  ['a box of 24"', undefined],
])('a quotation mark that stands alone: %s', (text, wanted) => {
  const read = readName(text);
  const fault = read.ok ? undefined : read.faults[0];
  expect(fault?.finding.code).toBe(wanted === undefined ? undefined : 'stray-quote');
  expect(fault && text.slice(fault.start, fault.start + fault.length)).toBe(wanted);
});

test('a figure without a unit is refused where both are in use', () => {
  expect(outcome(readMass({ unit: 'kg', mixed: true })('16'))).toBe('no-unit');
  expect(speaksOfBothUnits('12 kg and 35 lb')).toBe(true);
  expect(speaksOfBothUnits('12 kg and 16')).toBe(false);
});

test.each([
  ['2027-01-04', '2027-01-04'],
  ['2028-02-29', '2028-02-29'],
  ['2027–01–04', '2027-01-04'],
  ['2027-02-29', 'no-such-date'],
  ['2027-13-01', 'no-such-date'],
  ['4 January 2027', 'not-a-date'],
  ['2027-1-4', 'not-a-date'],
  ['', 'not-a-date'],
])('a date: %s', (text, wanted) => {
  const read = readDate(text);
  expect(read.ok ? isoOfDay(read.value) : outcome(read)).toBe(wanted);
});

test('another way of writing a date is put right only where one day can be meant', () => {
  const suggestion = (text: string) => {
    const read = readDate(text);
    const finding = read.ok ? undefined : read.faults[0]?.finding;
    return finding?.code === 'not-a-date' ? finding.data.suggestion : undefined;
  };
  expect(suggestion('16.11.2026')).toBe('2026-11-16');
  expect(suggestion('2026/11/6')).toBe('2026-11-06');
  expect(suggestion('4/1/2027')).toBe('');
});

test('every day there is, and no other, is a date', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 9999 }),
      fc.integer({ min: 0, max: 13 }),
      fc.integer({ min: 0, max: 32 }),
      (y, m, d) => {
        const text = [String(y).padStart(4, '0'), String(m).padStart(2, '0'), String(d).padStart(2, '0')].join('-');
        const leap = (y % 4 === 0 && y % 100 !== 0) || y % 400 === 0;
        const most = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][m - 1] ?? 0;
        const read = readDate(text);
        expect(read.ok).toBe(d >= 1 && d <= most);
        if (read.ok) expect(read.value).toBe(dayOfIso(text));
      },
    ),
  );
});

test.each([
  ['90 s', 90],
  ['90s', 90],
  ['2 min', 120],
  ['1 min 30 s', 90],
  ['1:30', 90],
  ['none', 0],
  ['90', 'not-a-time'],
  ['2 hours', 'not-a-time'],
  ['90 min', 'out-of-range'],
])('a time: %s', (text, wanted) => expect(outcome(readSeconds(text))).toBe(wanted));

test.each([
  ['2.4 m', 2400],
  ['2,4 m', 2400],
  ['240 cm', 2400],
  ['2400 mm', 2400],
  ['2.4', 2400],
  ['240', 'not-a-length'],
  ['8 feet', 'not-a-length'],
  ['0.1 m', 'out-of-range'],
])('a length: %s', (text, wanted) => expect(outcome(readLength(text))).toBe(wanted));

test.each([
  ['2 × 2.5 m', { long: 2500, wide: 2000 }],
  ['250 x 200 cm', { long: 2500, wide: 2000 }],
  ['2 m × 3 m', { long: 3000, wide: 2000 }],
  ['2 m', 'not-a-floor'],
  ['2 × 3 × 4 m', 'not-a-floor'],
])('a floor: %s', (text, wanted) => expect(outcome(readFloor(text))).toEqual(wanted));

test.each([
  ['2-0-1-0', { lower: 2, bottom: 0, lift: 1, top: 0 }],
  ['3–1–X–0', { lower: 3, bottom: 1, lift: 'fast', top: 0 }],
  ['slow lowering', { lower: 4, bottom: 0, lift: 1, top: 0 }],
  ['2010', 'not-a-tempo'],
  ['2-0-1', 'not-a-tempo'],
  ['x-0-1-0', 'not-a-tempo'],
  ['constructor', 'not-a-tempo'],
])('a tempo: %s', (text, wanted) => expect(outcome(readTempo(text))).toEqual(wanted));

test('a tempo, written and read back', () => {
  const seconds = fc.integer({ min: 0, max: 99 });
  const lift = fc.oneof(seconds, fc.constant('fast' as const));
  fc.assert(
    fc.property(fc.record({ lower: seconds, bottom: seconds, lift, top: seconds }), (tempo) => {
      expect(readTempo(writeTempo(tempo))).toEqual({ ok: true, value: tempo });
    }),
  );
});

test.each([
  ['reserve 3', { kind: 'reserve', tenths: 30 }],
  ['Reserve 2,5', { kind: 'reserve', tenths: 25 }],
  ['3 in reserve', { kind: 'reserve', tenths: 30 }],
  ['leave 2 in reserve', { kind: 'reserve', tenths: 20 }],
  ['RPE 8.5', { kind: 'rpe', tenths: 85 }],
  ['70 %', { kind: 'percent', percent: 70 }],
  ['70% of 1RM', { kind: 'percent', percent: 70 }],
  ['RPE 11', 'out-of-range'],
  ['hard', 'effort-unreadable'],
  ['3', 'effort-unreadable'],
])('an effort: %s', (text, wanted) => expect(outcome(readEffort(text))).toEqual(wanted));

test.each([
  ['slower allowed', ['normal', 'slow lowering', 'slow with a pause']],
  ['normal only', ['normal']],
  ['slow lowering, slow with a pause', ['slow lowering', 'slow with a pause']],
  ['slowly', 'not-one-of'],
])('tempi of a row: %s', (text, wanted) => expect(outcome(readTempi(text))).toEqual(wanted));

test.each([
  ['any squat', { kind: 'pattern', pattern: 'squat' }],
  ['any push (horizontal)', { kind: 'pattern', pattern: 'push', plane: 'horizontal' }],
  ['any sqaut', 'not-one-of'],
  ['any push (sideways)', 'not-one-of'],
])('a pattern: %s', (text, wanted) => expect(outcome(readPattern(text))).toEqual(wanted));

describe('words', () => {
  test.each([
    ['mon', 1],
    ['Tuesday', 2],
    ['weds', 3],
    ['thurs', 4],
    ['fridays', 5],
    ['mo', 'not-one-of'],
    ['someday', 'not-one-of'],
  ])('a day: %s', (text, wanted) => expect(outcome(readWeekday(text))).toBe(wanted));

  test.each(['en', 'en-GB', 'nb', 'zh-Hant-TW', 'sr-Latn', 'es-419'])('a language: %s', (tag) => {
    expect(readLanguage(tag)).toEqual({ ok: true, value: tag });
  });
  test.each(['English', 'e', 'en_GB', 'en-', 'en-GB-'])('no language: %s', (tag) =>
    expect(readLanguage(tag).ok).toBe(false),
  );

  test('yes and no, as typed', () => {
    expect(['yes', 'Y', 'true', 'no', 'N', 'False'].map((word) => outcome(readYesNo(word)))).toEqual([
      true,
      true,
      true,
      false,
      false,
      false,
    ]);
    expect(outcome(readYesNo('maybe'))).toBe('not-one-of');
  });

  test('names in any script, however spaced', () => {
    expect(outcome(readName('  Łucja \t Żak '))).toBe('Łucja Żak');
    expect(outcome(readName('ليلى'))).toBe('ليلى');
    expect(outcome(readName('x'.repeat(121)))).toBe('too-long');
    expect(outcome(readName('🏋'.repeat(120)))).toBe('🏋'.repeat(120));
  });

  test('addresses and telephone numbers', () => {
    expect(outcome(readAddress('https://slate-yard.example/library'))).toBe('https://slate-yard.example/library');
    expect(
      ['slate-yard.example', 'ftp://a.example', 'javascript:alert(1)', 'https://x'].map((text) => readAddress(text).ok),
    ).toEqual([false, false, false, false]);
    expect(['999', '+44 20 7946 0000', '(020) 7946-0000'].map((text) => readPhoneNumber(text).ok)).toEqual([
      true,
      true,
      true,
    ]);
    expect(readPhoneNumber('call me').ok).toBe(false);
  });

  test('lists: what is wrong is placed in the whole', () => {
    expect(outcome(readListOf(readWeekday)('mon, thu; sat'))).toEqual([1, 4, 6]);
    expect(outcome(readListOf(readWeekday)('none'))).toEqual([]);
    const read = readListOf(readWeekday)('mon,  thx, fri,');
    expect(read.ok ? [] : read.faults.map(({ finding, start, length }) => [finding.code, start, length])).toEqual([
      ['not-one-of', 6, 3],
      ['empty-entry', 15, 1],
    ]);
  });
});

describe('ids', () => {
  test('a slug is an id or nothing', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 100 }), (text) => {
        const slug = slugOf(text);
        expect(slug === '' || isId(slug)).toBe(true);
      }),
    );
  });
  test.each([
    ['goblet-squat', true],
    ['Goblet', false],
    ['../x', false],
    ['a--b', false],
    ['-a', false],
    ['a b', false],
    ['é', false],
    ['a'.repeat(61), false],
  ])('%s', (text, wanted) => expect(isId(text)).toBe(wanted));
});

describe('did you mean', () => {
  const known = ['goblet-squat', 'box-squat', 'push-up'];
  test.each([
    ['goblet-sqat', 'goblet-squat'],
    ['gobelt-squat', 'goblet-squat'],
    ['Box-Squat', 'box-squat'],
    ['pushup', 'push-up'],
    ['deadlift', ''],
    ['', ''],
  ])('%s → %s', (text, wanted) => expect(nearestOf(text, known)).toBe(wanted));
});

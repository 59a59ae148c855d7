/** Every language there is: complete, its own, short and plain; dates, decimals and number forms held to the Unicode CLDR. */
import { describe, expect, test } from 'vitest';
import { addDays, dayOfIso, isoOfDay } from '../../src/model/day.js';
import { BODY_PARTS } from '../../src/model/exercise.js';
import { BOOKLET_LANGUAGES, bookletLanguage } from '../../src/model/languages.js';
import type { Catalogue } from '../../src/words/catalogue.js';
import { CLIENT_RULES } from '../../src/words/client-reason-words.js';
import { english } from '../../src/words/english.js';
import { norwegian } from '../../src/words/norwegian.js';
import { type Saying, spoken } from '../../src/words/rule-words.js';
import { sayDate, sayDates, sayFullDate } from '../../src/words/say-date.js';
import { localFigures } from '../../src/words/say-number.js';
import { speechOf } from '../../src/words/speech.js';
import { longestSentence } from './ban-list.js';

const nb = speechOf('nb');
const LANGUAGES: readonly (readonly [string, Catalogue])[] = BOOKLET_LANGUAGES.map((tag) => [tag, speechOf(tag).words]);

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

/** Every text of a catalogue that needs no figure, by its path. */
function textsIn(value: unknown, path = ''): readonly (readonly [string, string])[] {
  if (typeof value === 'string') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, below]) => textsIn(below, `${path}/${key}`));
}

test('each speaks for itself, with script or region or none', () => {
  expect(LANGUAGES.map(([, words]) => bookletLanguage(words.language))).toEqual([...BOOKLET_LANGUAGES]);
  for (const tag of ['nb', 'nb-NO', 'NB', 'no', 'no-NO']) expect(speechOf(tag).words, tag).toBe(norwegian);
  for (const tag of ['nn', 'vi', 'sv']) expect(bookletLanguage(tag), tag).toBeUndefined();
});

describe.each(LANGUAGES)('%s', (_, words) => {
  test('has something for every fixed text, and no two spaces', () => {
    const texts = textsIn(words);
    expect(texts.length).toBeGreaterThan(120);
    for (const [path, text] of texts) {
      if (path !== '/sets/tempo/normal') expect(text.trim(), path).not.toBe('');
      expect(text, path).not.toMatch(/ {2}|undefined| [.,:;]/);
    }
  });

  test.each(CLIENT_RULES)('%s: what the client reads is one or more whole, short sentences', (rule) => {
    const says = spoken(words.reasons[rule])(() => '');
    expect(says === '' || /^\p{Lu}.*\.$/u.test(says), says).toBe(true);
    expect(longestSentence(says), says).toBeLessThanOrEqual(12);
  });

  test('says the seven signs, and the number to call', () => {
    expect(words.booklet.emergency).toHaveLength(7);
    expect(words.booklet.call('113')).toContain('113');
    const who = { client: 'C', coach: 'K', emergencyNumber: '113', date: 'D' };
    expect(words.booklet.sessionSafety(who)).toMatch(/4.*K.*113/);
    expect(words.booklet.pain(who).map(({ degree }) => degree.match(/\d+/g))).toEqual([['0', '2'], ['3'], ['4'], null]);
  });
});

/** Words that are the same in both, or no words at all. */
const ALIKE = ['/labels/test', '/booklet/key', '/numbers/decimal'];

test('nothing of the second language is left in the first', () => {
  const first = new Map(textsIn(english));
  const second = textsIn(norwegian).filter(([path]) => !ALIKE.some((alike) => path.startsWith(alike)));
  expect(second.length).toBeGreaterThan(100);
  expect(second.filter(([path, text]) => text !== '' && first.get(path) === text)).toEqual([]);
  // A rule said by a function says another sentence too.
  const other: Catalogue['reasons'] = norwegian.reasons;
  const said = (saying: Saying): string => spoken(saying)(() => '');
  expect(
    CLIENT_RULES.filter((rule) => said(other[rule]) !== '' && said(other[rule]) === said(english.reasons[rule])),
  ).toEqual([]);
});

describe('bokmål against the Unicode CLDR, as Node carries it', () => {
  const first = dayOfIso('2026-12-01');
  const days = first === undefined ? [] : Array.from({ length: 400 }, (_, i) => addDays(first, i));

  test('dates in full, and spans', () => {
    const long = new Intl.DateTimeFormat('nb', { dateStyle: 'long', timeZone: 'UTC' });
    expect(long.resolvedOptions().locale).toBe('nb');
    expect(days).toHaveLength(400);
    for (const day of days) {
      expect(plain(sayFullDate(isoOfDay(day), nb))).toBe(plain(long.format(new Date(day * 86_400_000))));
    }
    expect(plain(sayFullDate('2027-01-04', nb))).toBe('4. januar 2027');
    expect(plain(sayDates('2027-01-04', '2027-02-14', nb))).toBe('4. januar til 14. februar 2027');
  });

  test('short dates: the same weekday, day and month, without the stops of a short form', () => {
    const parts = new Intl.DateTimeFormat('nb', { weekday: 'short', day: 'numeric', month: 'short', timeZone: 'UTC' });
    for (const day of days) {
      const said = Object.fromEntries(
        parts.formatToParts(new Date(day * 86_400_000)).map(({ type, value }) => [type, value.replace('.', '')]),
      );
      const short = plain(sayDate(isoOfDay(day), nb));
      expect(short).toBe(`${said.weekday} ${said.day}. ${said.month?.slice(0, 3)}`);
    }
  });

  test('a comma stands between whole and part', () => {
    const numbers = new Intl.NumberFormat('nb', { maximumFractionDigits: 2, useGrouping: false });
    for (const figure of [0.5, 1.25, 2.5, 8.4, 16, 27.5, 100.25]) {
      expect(localFigures(`${figure}`, nb)).toBe(numbers.format(figure));
    }
    expect(localFigures('2 × 12.5 kg, 4. januar', nb)).toBe('2 × 12,5 kg, 4. januar');
  });

  test('one form follows 1, the other every other whole number', () => {
    const rules = new Intl.PluralRules('nb');
    for (let count = 0; count <= 120; count += 1) {
      const form = rules.select(count) === 'one' ? 'økt' : 'økter';
      expect(plain(norwegian.numbers.counted(`${count}`, 'sessions'))).toBe(`${count} ${form}`);
    }
  });
});

describe.each(LANGUAGES)('what a new edition changes, in %s', (tag, { changes }) => {
  const WHATS = [
    'added',
    'removed',
    'version',
    'load',
    'amount',
    'sets',
    'effort',
    'tempo',
    'rest',
    'conditions',
  ] as const;
  const CAUSES = [
    'care',
    'seen',
    'marks',
    'heavy',
    'chose-easier',
    'had-more',
    'earned',
    'away',
    'ill',
    'none',
  ] as const;
  const day = sayDate('2027-09-29', speechOf(tag));
  const WHEN = [
    { kind: 'from', day },
    { kind: 'on', day },
    { kind: 'between', day, until: day },
  ] as const;
  const WHY = [
    ...CAUSES.map((kind) => ({ kind })),
    ...[...BODY_PARTS, ''].map((where) => ({ kind: 'pain', where }) as const),
  ];

  test.each(WHATS)('%s: whole sentences of at most 20 words', (what) => {
    const said = new Set<string>();
    for (const when of WHEN)
      for (const why of WHY)
        for (const way of ['down', 'up', 'other'] as const)
          for (const counts of ['reps', 'seconds', 'metres'] as const)
            for (const load of ['12\u00a0kg', '', null]) {
              const of = { what, when, why, way, counts, load, sets: 3, steady: counts === 'reps', tempo: '' };
              const change = { ...of, name: 'split squat with a hand on a chair', instead: 'one-arm row' };
              for (const line of [changes.row(change), changes.begins(change)]) said.add(line);
            }
    expect(said.size).toBeGreaterThan(2);
    for (const line of said) {
      expect(line).toMatch(/^\p{Lu}.*\.$/u);
      expect(line).not.toMatch(/undefined|null| {2}|\.\.| [.,]/);
      expect(longestSentence(line), line).toBeLessThanOrEqual(20);
    }
    // Nobody needs to read over a shoulder where.
    expect([...said].join(' ')).not.toMatch(/pelvic|belly|bekken|magen/);
  });

  test('the block as a whole', () => {
    for (const why of ['away', 'will-be-away', 'ill', 'none'] as const)
      for (const left of [0, 1, 18])
        for (const line of [
          changes.fewer({ why, left, next: day, last: day }),
          changes.later({ why, left, next: day, last: day }),
        ]) {
          expect(line).toMatch(/^[\p{Lu}\d].*\.$/u);
          expect(longestSentence(line), line).toBeLessThanOrEqual(20);
        }
  });
});

/** What is handed over: a calendar that outside readers take, a message, and a sheet whose code a camera reads. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { composeCalendar, composeHandOver } from '../../src/booklet/compose-hand-over.js';
import type { Edition } from '../../src/model/edition.js';
import { bookletId, sessionId } from '../../src/model/identity.js';
import type { Studio } from '../../src/model/studio.js';
import { calendarUid, writeCalendar } from '../../src/publish/write-calendar.js';
import { drawCode } from '../../src/web/draw-code.js';
import { fixtureBooklet } from '../fixtures/booklet.js';

const NAMES = [
  'Nell Fane',
  'Σοφία Παπαδοπούλου',
  'Nguyễn Thị Ánh',
  '山田 太郎',
  'עדי לוי',
  'José; Luis, \\ “Pepe”\r\nBEGIN:VEVENT',
  '👩🏽‍🦽 Ada',
];

const studio: Studio = {
  name: 'Slate Yard; the room, upstairs',
  place: 'Harrowby',
  coach: 'Maren Oakes',
  language: 'en-GB',
  unit: 'kg',
  paper: 'a4',
  emergencyNumber: '999',
  source: { file: 'studio.md', line: 1, column: 1, length: 1 },
};

const DATES = ['2026-12-31', '2027-01-02', '2027-02-28', '2028-02-28'];

/** As much of an edition as is handed over. */
function editionOf(dates: readonly string[]): Edition {
  const sessions = dates.map((date, index) => ({ id: sessionId('a'), name: 'A', date, occurrence: index + 1 }));
  const edition: unknown = {
    bookletId: bookletId('00112233445566778899aabbccddeeff'),
    n: 2,
    issued: '2026-11-24',
    from: dates[0],
    block: 1,
    plan: { weeks: [{ number: 1, sessions }] },
  };
  return edition as Edition;
}

const handed = (name: string, language: string) => ({
  studio,
  client: { name, language },
  edition: editionOf(DATES),
  booklet: fixtureBooklet,
});

async function calendarOf(name: string, language = 'en-GB'): Promise<string> {
  const of = handed(name, language);
  const { days, ...calendar } = composeCalendar(of);
  const known = await Promise.all(
    days.map(async ({ occurrence, ...day }) => ({
      ...day,
      uid: await calendarUid(of.edition.bookletId, '1', String(occurrence)),
    })),
  );
  return writeCalendar({ ...calendar, made: of.edition.issued, version: of.edition.n, days: known });
}

const plain = (text: unknown): string => String(text).replaceAll('\u00a0', ' ');

describe.each(NAMES)('the calendar of %j', (name) => {
  test.each(['en-GB', 'nb'])('in %s, read by ical.js', async (language) => {
    const text = await calendarOf(name, language);
    const calendar = new ICAL.Component(ICAL.parse(text));
    const events = calendar.getAllSubcomponents('vevent').map((one) => new ICAL.Event(one));
    const wanted = composeCalendar(handed(name, language));
    const unruled = (given: string): string => plain(given.replace(/\r\n?/g, '\n'));
    expect(events.map(({ startDate, endDate }) => [String(startDate), String(endDate), startDate.isDate])).toEqual([
      ['2026-12-31', '2027-01-01', true],
      ['2027-01-02', '2027-01-03', true],
      ['2027-02-28', '2027-03-01', true],
      ['2028-02-28', '2028-02-29', true],
    ]);
    expect(events.map(({ summary }) => plain(summary))).toEqual(wanted.days.map(({ title }) => unruled(title)));
    expect(events.map(({ description }) => plain(description))).toEqual(wanted.days.map((day) => unruled(day.text)));
    // This reader knows no property of RFC 7986, and leaves it as it is written.
    const title = plain(calendar.getFirstPropertyValue('name')).replace(/\\([\\;,])/g, '$1');
    expect(title).toBe(unruled(wanted.title));
  });

  test('lines are of 75 octets at most, end as they should, and carry no more than the first name', async () => {
    const text = await calendarOf(name);
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    for (const line of text.split('\r\n')) expect(Buffer.byteLength(line), line).toBeLessThanOrEqual(75);
    // Each line is whole letters: nothing is lost when lines are read one by one.
    expect(Buffer.from(text, 'utf8').toString('utf8')).toBe(text);
    const unfolded = text.replaceAll('\r\n ', '');
    const [, ...rest] = name.trim().split(/\s+/);
    if (rest.length > 0 && !name.startsWith('👩')) expect(unfolded).not.toContain(rest.join(' '));
    expect(unfolded).not.toMatch(/00112233445566778899aabbccddeeff|#|https?:/);
    expect(text.match(/BEGIN:VEVENT\r\n/g)).toHaveLength(DATES.length);
  });
});

test('what a session is known by stays the same from one edition to the next, and is nobody else’s', async () => {
  const one = await calendarUid('a', '1', '1');
  expect(await calendarUid('a', '1', '1')).toBe(one);
  expect(one).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  const others = await Promise.all(
    [
      ['a', '1', '2'],
      ['a', '2', '1'],
      ['b', '1', '1'],
      ['a1', '', '1'],
    ].map((names) => calendarUid(...names)),
  );
  expect(new Set([one, ...others]).size).toBe(5);
});

describe('the message and the slip', () => {
  const link =
    'https://example.org/gym/0f3a77c1d2b94e5fa6617c0b88d41e92/#open=867_xtNwDKEcC1QYPh18DBwK7bavA07mzB7s9YE2uwE';

  test.each(['en-GB', 'nb'])(
    'in %s: link alone on its line, words in no message, the first name and no other',
    (language) => {
      for (const by of ['link', 'words', 'both'] as const) {
        const words = by === 'link' ? {} : { words: 'maple orbit candle river tiger velvet' };
        const { message, slip } = composeHandOver(handed('Nell Fane', language), { by, link, ...words });
        expect(message?.split('\n')).toContain(link);
        expect(message).toContain('Nell');
        expect(message).not.toContain('Fane');
        expect(message).not.toContain('maple');
        expect(message).toContain('999');
        expect(slip.words).toBe(by === 'link' ? undefined : words.words);
        expect(message).not.toMatch(/undefined|\n{3}| {2}/);
      }
    },
  );

  test('where the studio is hosted nowhere yet there is no message, and no link', () => {
    const { message, link: none } = composeHandOver(handed('Nell Fane', 'en-GB'), { by: 'link' });
    expect([message, none]).toEqual([undefined, undefined]);
  });

  test('a camera reads the code, to the letter', () => {
    const { size, path } = drawCode(link);
    const folder = mkdtempSync(join(tmpdir(), 'chalkleaf-code-'));
    try {
      const file = join(folder, 'code.pgm');
      writeFileSync(file, pixelsOf(size, path));
      const read = spawnSync('zbarimg', ['--quiet', '--raw', file], { encoding: 'utf8' });
      expect(read.error).toBeUndefined();
      expect(read.stdout.trim()).toBe(link);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});

/** The drawing as a picture (portable graymap), so many pixels to a module. */
function pixelsOf(size: number, path: string): string {
  const scale = 6;
  const dark = new Set([...path.matchAll(/M(\d+) (\d+)h1v1h-1z/g)].map(([, x, y]) => `${x} ${y}`));
  expect(path.replaceAll(/M\d+ \d+h1v1h-1z/g, '')).toBe('');
  const side = size * scale;
  const rows = Array.from({ length: side }, (_, y) =>
    Array.from({ length: side }, (_, x) =>
      dark.has(`${Math.floor(x / scale)} ${Math.floor(y / scale)}`) ? 0 : 255,
    ).join(' '),
  );
  return `P2\n${side} ${side}\n255\n${rows.join('\n')}\n`;
}

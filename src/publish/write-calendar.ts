/**
 * A calendar file of whole days (RFC 5545), so that no clock and no zone can move a session. A calendar is often shared
 * and kept on other people's machines: it carries what a session is called and nothing that opens a booklet.
 */
import type { IsoDate } from '../model/day.js';

export interface CalendarDay {
  /** What it is known by from one edition to the next, never changed. */
  readonly uid: string;
  readonly date: IsoDate;
  readonly title: string;
  readonly text: string;
}

export interface CalendarFile {
  readonly title: string;
  /** BCP 47. */
  readonly language: string;
  /** The day from which this version of it holds. */
  readonly made: IsoDate;
  /** Counted up with each version. */
  readonly version: number;
  readonly days: readonly CalendarDay[];
}

const digits = (date: IsoDate): string => date.replaceAll('-', '');

/** The day after, as a calendar counts. */
function dayAfter(date: IsoDate): IsoDate {
  const [year = 0, month = 1, day = 1] = date.split('-').map(Number);
  return new Date(Date.UTC(year, month - 1, day + 1)).toISOString().slice(0, 10);
}

/** Section 3.3.11: backslash, semicolon, comma and the end of a line are written otherwise; controls are not allowed. */
const escaped = (text: string): string =>
  text
    .replace(/\r\n?|\u2028|\u2029/g, '\n')
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the signs that may not stand there
    .replace(/[\u0000-\u0008\u000b-\u001f\u007f]/g, '')
    .replace(/[\\;,]/g, (sign) => `\\${sign}`)
    .replaceAll('\n', '\\n');

/** Octets of a line, without its end (section 3.1). */
const LONGEST = 75;

/** A long line goes on in the next, which begins with a blank; no letter is cut in two. */
function folded(line: string): string {
  const lines: string[] = [];
  let now = '';
  let octets = 0;
  for (const sign of line) {
    const length = new TextEncoder().encode(sign).length;
    if (octets + length > LONGEST) {
      lines.push(now);
      now = ' ';
      octets = 1;
    }
    now += sign;
    octets += length;
  }
  return [...lines, now].join('\r\n');
}

/** The whole file. Lines end as the standard has it. */
export function writeCalendar({ title, language, made, version, days }: CalendarFile): string {
  const stamp = `DTSTAMP:${digits(made)}T000000Z`;
  const spoken = `;LANGUAGE=${language}`;
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Chalkleaf//Sessions//EN',
    'CALSCALE:GREGORIAN',
    // RFC 7986, section 5.1.
    `NAME${spoken}:${escaped(title)}`,
    ...days.flatMap((day) => [
      'BEGIN:VEVENT',
      `UID:${day.uid}`,
      stamp,
      `SEQUENCE:${version}`,
      `DTSTART;VALUE=DATE:${digits(day.date)}`,
      `DTEND;VALUE=DATE:${digits(dayAfter(day.date))}`,
      `SUMMARY${spoken}:${escaped(day.title)}`,
      ...(day.text === '' ? [] : [`DESCRIPTION${spoken}:${escaped(day.text)}`]),
      // A session takes an hour of the day and not the day.
      'TRANSP:TRANSPARENT',
      'CLASS:PRIVATE',
      'END:VEVENT',
    ]),
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join('');
}

/**
 * What a session is known by: made from names that never change, and telling none of them (a UUID of RFC 9562, section
 * 5.8, from SHA-256).
 */
export async function calendarUid(...names: readonly string[]): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(JSON.stringify(names)));
  const bytes = new Uint8Array(digest).slice(0, 16);
  bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x80;
  bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})/, '$1-$2-$3-$4-');
}

/** Cells as a pencil leaves them; the guide's own table, and its words; marks typed later taking the place of earlier ones. */
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readPaper } from '../../src/content/read-paper.js';
import { readHurt, readPaperSession, readPaperSets } from '../../src/content/read-paper-cells.js';
import { replaceOlder } from '../../src/content/replace-paper.js';
import { writeText } from '../../src/marks/write-text.js';
import { ALARM_SIGNS, type LogEvent } from '../../src/model/log.js';
import { aTuesday } from '../marks/a-tuesday.js';
import { anyEvent, anyWords } from '../marks/made-logs.js';

const TOP = resolve(import.meta.dirname, '..', '..');
const guide = readFileSync(join(TOP, 'content', 'GUIDE.md'), 'utf8');

test('the guide’s table is read without a word, and the guide has every alarm sign', () => {
  const table = /```markdown\n(---\nclient: [\s\S]*?)```/.exec(guide)?.[1] ?? '';
  const { paper, problems } = readPaper('a.md', new TextEncoder().encode(table));
  expect(problems).toEqual([]);
  expect(paper?.lines.map(({ session }) => session.value)).toEqual(['A 1', 'A 1', 'A 1', 'A 2', 'A 2']);
  expect(paper?.lines.every(({ sets }) => sets !== undefined)).toBe(true);
  const flowing = guide.replace(/\s+/g, ' ');
  for (const sign of ALARM_SIGNS) expect(flowing).toContain(`\`${sign}\``);
});

test('every way to write sets that the guide tells is read', () => {
  const rows = /\| Sets \| \|\n\| --- \| --- \|\n([\s\S]*?)\n\n/.exec(guide)?.[1] ?? '';
  const ways = rows
    .split('\n')
    .flatMap((row) => [...(row.split('|')[1] ?? '').matchAll(/`([^`]+)`/g)].map(([, way = '']) => way));
  expect(ways.length).toBeGreaterThan(8);
  expect(ways.filter((way) => readPaperSets(way) === null)).toEqual([]);
});

test('the page on logs prints the message as it is written', () => {
  const page = readFileSync(join(TOP, 'src', 'marks', 'LOG.md'), 'utf8');
  expect(page).toContain(`\`\`\`text\n${writeText(aTuesday)}\`\`\``);
});

const reps = (value: number, more: object = {}) => ({
  count: 1,
  did: 'done',
  figure: { value, counts: 'as asked' },
  ...more,
});

describe('sets', () => {
  test.each([
    ['3 × 8 × 16 kg', [reps(8, { count: 3, load: '16 kg' })]],
    ['3x8', [reps(8, { count: 3 })]],
    ['8 × 16 kg', [reps(8, { load: '16 kg' })]],
    ['8,8,6', [reps(8), reps(8), reps(6)]],
    ['8 × 2,5 kg; 7', [reps(8, { load: '2,5 kg' }), reps(7)]],
    ['12 with light band', [reps(12, { load: 'light band' })]],
    ['7 e, easier 6, 5 easier', [reps(7, { did: 'easier' }), reps(6, { did: 'easier' }), { count: 5, did: 'easier' }]],
    ['+5, + 5, 5+', [reps(5, { did: 'extra' }), reps(5, { did: 'extra' }), reps(5, { did: 'extra' })]],
    ['2 × 30 s', [{ count: 2, did: 'done', figure: { value: 30, counts: 'seconds' } }]],
    ['20 m × 24 kg', [{ count: 1, did: 'done', figure: { value: 20, counts: 'metres' }, load: '24 kg' }]],
    ['As planned', [{ count: 'all', did: 'done' }]],
    ['–', [{ count: 'all', did: 'left out' }]],
    ['e', [{ count: 'all', did: 'easier' }]],
    [
      '2 done, 1 easier, 1 left out, 1 extra',
      (['done', 'easier', 'left out', 'extra'] as const).map((did, at) => ({ count: at === 0 ? 2 : 1, did })),
    ],
  ])('%s', (text, sets) => {
    expect(readPaperSets(text)).toEqual(sets);
  });

  test.each(['lots', '8 or 9', 'about 8', '8,', '3 × ', '8 kg'])('%s is none', (text) => {
    expect(readPaperSets(text)).toBeNull();
  });
});

test('what hurt, and which session', () => {
  expect(readHurt('right knee 3; lower back 2 of 10, worse next morning')).toEqual([
    { where: 'knee', degree: 3, side: 'right' },
    { where: 'lower back', degree: 2, worseNextMorning: true },
  ]);
  expect(readHurt('elsewhere 0')).toEqual([{ where: 'elsewhere', degree: 0 }]);
  expect(readHurt('Chest, jaw or arm pain')).toEqual([
    { where: 'elsewhere', degree: 0, alarm: 'chest, jaw or arm pain' },
  ]);
  expect(readHurt('none')).toEqual([]);
  for (const text of ['knee', 'knee 11', 'tail 3', 'knee three']) expect(readHurt(text)).toBeNull();
  for (const text of ['A 3', 'a3', 'A, week 3', 'week 3 A']) expect(readPaperSession(text)?.week).toBe(3);
  expect(readPaperSession('A')).toEqual({ id: 'A', week: null });
});

test('any words in any cell give an answer', () => {
  fc.assert(
    fc.property(anyWords, (words) => {
      for (const read of [readPaperSets, readHurt, readPaperSession]) expect(read(words)).toBeDefined();
    }),
  );
});

test('replacing again changes nothing, and neither does the order', () => {
  const ids = fc.uniqueArray(anyEvent, { selector: ({ id }) => id, maxLength: 8 });
  const paper = ids.map((events) => events.map((event): LogEvent => ({ ...event, seq: 20_000 + (event.seq % 3) })));
  const sorted = (events: readonly LogEvent[]): readonly string[] =>
    events.map((event) => JSON.stringify(event)).sort();
  fc.assert(
    fc.property(paper, fc.nat({ max: 8 }), (events, at) => {
      const once = replaceOlder(events, () => 1);
      expect(sorted(replaceOlder(once, () => 1))).toEqual(sorted(once));
      // Received in two halves, either first.
      const first = replaceOlder(events.slice(0, at), () => 1);
      expect(sorted(replaceOlder([...first, ...events.slice(at)], () => 1))).toEqual(sorted(once));
      const gone = new Set(once.flatMap((event) => (event.kind === 'void' ? [event.event] : [])));
      for (const event of events)
        if (event.kind === 'note')
          expect(gone.has(event.id) && !events.some((one) => one.kind === 'void' && one.event === event.id)).toBe(
            false,
          );
    }),
  );
});

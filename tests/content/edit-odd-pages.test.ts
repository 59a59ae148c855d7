/**
 * Every kind of edit on pages as odd as they come: only the lines meant change, the page then says what it said and
 * the edit, twice is once, and line ends stay. The lines that change are found here by a comparison of the test's own.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { applyEdits, bytesOf, faultOf } from '../../src/content/edit/apply-edits.js';
import { editClient } from '../../src/content/edit/edit-client.js';
import { openFile } from '../../src/content/open-file.js';
import { readClient } from '../../src/content/read-client.js';
import { type FolderFile, readFolder } from '../../src/content/read-folder.js';
import { startReport } from '../../src/content/report.js';
import type { Client } from '../../src/model/client.js';
import { dayOfIso } from '../../src/model/day.js';
import type { Edit } from '../../src/model/edit.js';
import { FOLDER } from '../../src/model/problem.js';
import { runs } from '../deep.js';
import { baseFiles } from './error-folders.js';
import { BREAKS, CAUTIONS, type OddPage, oddPage } from './odd-clients.js';

const PATH = 'clients/ida-fell/client.md';
const others = baseFiles().filter(({ path }) => path !== PATH);
const folder = (text: string): FolderFile[] => [...others, { path: PATH, bytes: bytesOf(text) }];
const RUNS = runs(10, 400);
/** Where each page is read many times over. */
const FEWER = Math.ceil(RUNS / 2);
const SEED = 20_261_124;

const LINK = '[Goblet squat](../../exercises/goblet-squat.md)';
const day = (iso: string) => dayOfIso(iso) ?? fail(iso);
const fail = (what: string): never => {
  throw new Error(what);
};

/** Without places: they move. */
function told(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(told);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, part]) => (key === 'place' || key === 'places' ? [] : [[key, told(part)]])),
  );
}

const { studio } = readFolder(others).value.library;
const clientIn = (text: string): Client =>
  readClient(
    openFile(
      PATH,
      bytesOf(text),
      startReport(FOLDER, [], () => true),
    ),
    'ida-fell',
    studio,
  ).client ?? fail(`cannot be read:\n${text}`);

/** Lines with their ends; the middle is what differs between the lines alike at the beginning and at the end. */
function middles(
  before: string,
  after: string,
): { readonly gone: readonly string[]; readonly come: readonly string[] } {
  const [a, b] = [before, after].map((text) => text.match(/[^\n]*\n|[^\n]+$/g) ?? []);
  if (!a || !b) return { gone: [], come: [] };
  let head = 0;
  while (head < a.length && head < b.length && a[head] === b[head]) head += 1;
  let tail = 0;
  while (tail < a.length - head && tail < b.length - head && a.at(-1 - tail) === b.at(-1 - tail)) tail += 1;
  return { gone: a.slice(head, a.length - tail), come: b.slice(head, b.length - tail) };
}

interface Case {
  readonly kind: string;
  readonly edit: (page: OddPage) => Edit | undefined;
  /** What the client is then, by the page read before. */
  readonly says: (client: Client, page: OddPage) => Partial<Record<keyof Client, unknown>>;
  /** A column the table needs for it, where it is a row. */
  readonly needs?: { readonly section: string; readonly columns: readonly string[] };
  /** Whether lines may be changed, or only added or only taken out. */
  readonly lines: 'changed' | 'added' | 'removed';
}

const hip = {
  what: 'hip',
  degree: 'avoid',
  from: '2026-11-24',
  by: 'Maren Oakes: on the floor',
  say: 'not "today", #1',
};
const away = { from: '2026-11-02', until: '2026-11-20', cause: 'away' };
const last = (count: number): number => count - 1;

const CASES: readonly Case[] = [
  {
    kind: 'a value',
    edit: () => ({ kind: 'set', path: ['starts'], value: '2027-03-04' }),
    says: () => ({ starts: day('2027-03-04'), days: [4, 1] }),
    lines: 'changed',
  },
  {
    kind: 'words that need quoting',
    edit: () => ({ kind: 'set', path: ['name'], value: `O'Neill: "Ida", # 李` }),
    says: () => ({ name: `O'Neill: "Ida", # 李` }),
    lines: 'changed',
  },
  {
    kind: 'a value there or not',
    edit: () => ({ kind: 'set', path: ['replanning'], value: 'within bounds' }),
    says: () => ({ replanning: 'within bounds' }),
    lines: 'changed',
  },
  {
    kind: 'a value below a key',
    edit: () => ({ kind: 'set', path: ['room', 'ceiling'], value: '2.1 m' }),
    says: (client) => ({ room: { ...client.room, ceilingMillimetres: 2100 } }),
    lines: 'changed',
  },
  {
    kind: 'entries of one line',
    edit: () => ({ kind: 'set', path: ['main bells'], value: 'squat 12 kg, hinge 12 kg, push 8 kg' }),
    says: () => ({
      mainBells: [
        { pattern: 'squat', mass: { grams: 12_000, unit: 'kg', figure: '12' } },
        { pattern: 'hinge', mass: { grams: 12_000, unit: 'kg', figure: '12' } },
        { pattern: 'push', mass: { grams: 8000, unit: 'kg', figure: '8' } },
      ],
    }),
    lines: 'changed',
  },
  {
    kind: 'an entry',
    edit: () => ({ kind: 'add-to-list', path: ['cautions'], entry: hip }),
    says: ({ cautions }) => ({
      cautions: [
        ...cautions,
        { what: 'hip', degree: 'avoid', side: 'both', phases: [], from: day(hip.from), by: hip.by, say: hip.say },
      ],
    }),
    lines: 'added',
  },
  {
    kind: 'a break',
    edit: () => ({ kind: 'add-to-list', path: ['breaks'], entry: away }),
    says: ({ breaks }) => ({ breaks: [...breaks, { from: day(away.from), until: day(away.until), cause: 'away' }] }),
    lines: 'added',
  },
  {
    kind: 'in an entry',
    edit: ({ cautions }) =>
      cautions === 0
        ? undefined
        : { kind: 'set-in-entry', path: ['cautions', last(cautions)], key: 'review', value: '2027-05-03' },
    says: (client, { cautions }) => ({
      cautions: client.cautions.map((one) =>
        one.what === CAUTIONS[last(cautions)]?.what ? { ...one, review: day('2027-05-03') } : one,
      ),
    }),
    lines: 'changed',
  },
  {
    kind: 'an entry out',
    edit: ({ cautions }) =>
      cautions === 0 ? undefined : { kind: 'remove-entry', path: ['cautions', 0], says: { what: 'knee' } },
    says: ({ cautions }) => ({ cautions: cautions.filter(({ what }) => what !== 'knee') }),
    lines: 'removed',
  },
  {
    kind: 'a break out',
    edit: ({ breaks }) =>
      breaks === 0
        ? undefined
        : {
            kind: 'remove-entry',
            path: ['breaks', last(breaks)],
            says: { from: BREAKS[last(breaks)]?.from ?? '' },
          },
    says: (client, { breaks }) => ({
      breaks: client.breaks.filter(({ from }) => from !== day(BREAKS[last(breaks)]?.from ?? '')),
    }),
    lines: 'removed',
  },
  {
    kind: 'a row of what was seen',
    edit: () => ({
      kind: 'add-row',
      section: 'Observations',
      cells: { Date: '2026-11-23', Seen: 'slow | but “sure”', Exercise: LINK },
    }),
    needs: { section: 'Observations', columns: ['Exercise'] },
    says: ({ observations }) => ({
      observations: [
        ...observations,
        {
          date: day('2026-11-23'),
          exercise: 'goblet-squat',
          side: 'both',
          seen: 'slow | but “sure”',
          means: { kind: 'free' },
        },
      ],
    }),
    lines: 'added',
  },
  {
    kind: 'a row of a test',
    edit: () => ({
      kind: 'add-row',
      section: 'Tests',
      cells: { Exercise: LINK, Load: '16 kg', Reps: '11', Reserve: '1.5', Date: '2026-11-23', 'In a circuit': 'yes' },
    }),
    needs: { section: 'Tests', columns: ['In a circuit'] },
    says: ({ tests }) => ({
      tests: [
        ...tests,
        {
          exercise: 'goblet-squat',
          side: 'both',
          load: { grams: 16_000, unit: 'kg', figure: '16' },
          reps: 11,
          reserve: 15,
          inCircuit: true,
          date: day('2026-11-23'),
        },
      ],
    }),
    lines: 'added',
  },
  {
    kind: 'a row signed off',
    edit: () => ({ kind: 'add-row', section: 'Signed off', cells: { Exercise: LINK, Date: '2026-11-23', By: '漢字' } }),
    says: ({ signOffs }) => ({
      signOffs: [...signOffs, { exercise: 'goblet-squat', date: day('2026-11-23'), by: '漢字' }],
    }),
    lines: 'added',
  },
  {
    kind: 'a row out',
    edit: ({ rows }) => {
      const line = rows.Observations?.[0];
      return line === undefined
        ? undefined
        : { kind: 'remove-row', section: 'Observations', line, says: { Date: '2026-11-02' } };
    },
    says: ({ observations }) => ({
      observations: observations.filter(({ seen }) => seen !== 'slow to settle'),
    }),
    lines: 'removed',
  },
  {
    kind: 'the line to work on',
    edit: () => ({ kind: 'replace-section-line', section: 'Work on this', text: 'Breathe *out* — 一.' }),
    says: () => ({ workOnThis: [{ text: 'Breathe ' }, { text: 'out', emphasis: true }, { text: ' — 一.' }] }),
    lines: 'changed',
  },
];

describe('on odd pages', () => {
  test.each(CASES.map((one, at) => [one.kind, one, SEED + at] as const))('%s', (_, one, seed) => {
    let made = 0;
    fc.assert(
      fc.property(oddPage, (page) => {
        const edit = one.edit(page);
        if (!edit) return;
        const before = clientIn(page.text);
        const edited = applyEdits(folder(page.text), PATH, [edit]);
        const columns = one.needs && page.columns[one.needs.section];
        const missing = columns && one.needs?.columns.find((column) => !columns.includes(column));
        if (missing !== undefined) {
          expect(edited).toMatchObject({ problem: { data: { why: 'no-column', about: missing } } });
          return;
        }
        if ('problem' in edited) fail(`${JSON.stringify(edited.problem.data)}\n${page.text}`);
        else {
          made += 1;
          expect(edited.before).toBe(page.text);
          // The page says the edit, and all else as before.
          expect(told(clientIn(edited.after))).toEqual(told({ ...before, ...one.says(before, page) }));
          // Only the lines meant are touched.
          const { gone, come } = middles(page.text, edited.after);
          expect(come.length + gone.length).toBeGreaterThan(0);
          expect(gone.length).toBeLessThanOrEqual(one.lines === 'removed' ? 12 : 3);
          expect(come.length).toBeLessThanOrEqual(one.lines === 'removed' ? 3 : 12);
          if (one.lines === 'added') expect(gone.length).toBeLessThanOrEqual(1);
          if (edit.kind.endsWith('-row') && page.text.endsWith('\n')) {
            expect(edit.kind === 'add-row' ? gone : come).toEqual([]);
          } else if (edit.kind === 'add-row' && gone.length > 0) expect(come[0]?.trimEnd()).toBe(gone[0]?.trimEnd());
          if (edit.kind === 'remove-row') expect(gone.length - come.length).toBe(1);
          // Line ends are the page's own.
          if (page.lineEnds === 'CRLF') expect(edited.after.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
          if (page.lineEnds === 'LF') expect(edited.after).not.toContain('\r');
          expect(edited.after.startsWith('\ufeff')).toBe(page.text.startsWith('\ufeff'));
          expect(/\n$/.test(edited.after)).toBe(/\n$/.test(page.text));
          // Comments stay, each as often.
          expect(comments(edited.after)).toEqual(comments(page.text));
          // Twice is once.
          expect(editClient(edited.after, [edit])).toEqual({ text: edited.after });
        }
      }),
      { numRuns: RUNS, seed },
    );
    expect(made).toBeGreaterThan(RUNS / 5);
  });
});

/** The comments of the generator's, wherever they stand, but for those of entries that are taken out. */
const comments = (text: string): readonly string[] =>
  [...text.matchAll(/# (?:a note: not a key|- what: knee|set in|asked|kg)/g)].map(([comment]) => comment).sort();

test('every edit at once, and in any order', () => {
  fc.assert(
    fc.property(oddPage, fc.shuffledSubarray([...CASES], { minLength: 2 }), (page, cases) => {
      const fit = cases.filter(({ needs }) => {
        const columns = needs && page.columns[needs.section];
        return columns === undefined || needs?.columns.every((column) => columns.includes(column));
      });
      // What is set in an entry that is then taken out is not seen again.
      const some = page.cautions === 1 ? fit.filter(({ kind }) => kind !== 'in an entry') : fit;
      const edits = some.flatMap((one) => one.edit(page) ?? []);
      const edited = applyEdits(folder(page.text), PATH, edits);
      if ('problem' in edited) fail(`${JSON.stringify(edited.problem.data)}\n${JSON.stringify(edits)}\n${page.text}`);
      else {
        let wanted = clientIn(page.text);
        for (const one of some) if (one.edit(page)) wanted = Object.assign({}, wanted, one.says(wanted, page));
        expect(told(clientIn(edited.after))).toEqual(told(wanted));
        if (page.lineEnds === 'CRLF') expect(edited.after.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
      }
    }),
    { numRuns: FEWER, seed: SEED },
  );
});

describe('the second reading', () => {
  test('misses no fact that is lost on the way', () => {
    fc.assert(
      fc.property(oddPage, fc.nat(), (page, where) => {
        const edit: Edit = { kind: 'set', path: ['minutes'], value: '45' };
        const edited = applyEdits(folder(page.text), PATH, [edit]);
        if ('problem' in edited) return fail(page.text);
        const lines = edited.after.split(/(?<=\n)/);
        // What stands in code is no fact.
        const until = lines.findIndex((line) => line.startsWith('```'));
        const facts = lines
          .slice(0, until === -1 ? undefined : until)
          .flatMap((line, at) => (/^(starts|name|programme|experience|\| .*2026)/.test(line) ? [at] : []));
        const lost = facts[where % Math.max(1, facts.length)];
        if (lost === undefined) return;
        const spoilt = lines.toSpliced(lost, 1).join('');
        expect(faultOf(folder(page.text), PATH, page.text, spoilt, [edit], {})).toBeDefined();
        expect(faultOf(folder(page.text), PATH, page.text, edited.after, [edit], {})).toBeUndefined();
        expect(faultOf(folder(page.text), PATH, page.text, page.text, [edit], {})?.why).toBe('not-exact');
      }),
      { numRuns: FEWER, seed: SEED },
    );
  });

  const page = (front: string, body = ''): string =>
    `---\nname: Ida Fell\nstarts: 2027-01-04\nprogramme: one-day\ndays: mon\nminutes: 30\nbirth year: 1980\nexperience: novice\nblocks before: 0\n${front}---\n${body}`;
  const KIT = 'kit:\n  bells: 8, 12, 16\n';
  const refusal = (text: string, edit: Edit) => {
    const edited = applyEdits(folder(text), PATH, [edit]);
    return 'problem' in edited ? edited.problem.data : edited.after;
  };
  const test35: Edit = {
    kind: 'add-row',
    section: 'Tests',
    cells: { Exercise: LINK, Load: '35 lb', Reps: '8', Reserve: '2', Date: '2026-11-23' },
  };
  test.each<[string, string, Edit, Readonly<Record<string, string>>]>([
    [
      'a date not in the calendar',
      page(KIT),
      { kind: 'set', path: ['starts'], value: '2027-02-30' },
      { why: 'would-be-wrong', about: 'no-such-date' },
    ],
    [
      'pounds, where figures stand without a unit',
      page(`body mass: 70 kg\n${KIT}`),
      test35,
      { why: 'would-be-wrong', about: 'no-unit' },
    ],
    [
      'a unit that gives other figures another meaning',
      page(KIT),
      { kind: 'set', path: ['units'], value: 'lb' },
      { why: 'not-exact', about: 'units' },
    ],
    [
      'a key the format does not have',
      page(KIT),
      { kind: 'set', path: ['colour'], value: 'red' },
      { why: 'would-be-wrong', about: 'unknown-key' },
    ],
    [
      'an exercise nobody has',
      page(KIT),
      {
        kind: 'add-row',
        section: 'Observations',
        cells: { Date: '2026-11-23', Exercise: '[A](../../exercises/none.md)', Seen: 'light' },
      },
      { why: 'would-be-wrong', about: 'unknown-exercise' },
    ],
    [
      'a section behind code that is never closed',
      page(KIT, '\n## Tests\n\n```\nx\n'),
      { kind: 'replace-section-line', section: 'Work on this', text: 'a' },
      { why: 'not-exact', about: 'Work on this' },
    ],
    [
      'an alias',
      page(`kit: &k\n  bells: 8\nroom: *k\n`),
      { kind: 'set', path: ['minutes'], value: '45' },
      { why: 'page-unreadable', about: '' },
    ],
    [
      'an anchor alone',
      page(`kit: &k\n  bells: 8\n`),
      { kind: 'set', path: ['minutes'], value: '45' },
      { why: 'page-unreadable', about: '' },
    ],
  ])('refuses %s', (_, text, edit, data) => {
    expect(refusal(text, edit)).toEqual(data);
  });

  test('names the edit that goes wrong, of several', () => {
    const edits: readonly Edit[] = [
      { kind: 'set', path: ['minutes'], value: '45' },
      { kind: 'set', path: ['starts'], value: 'soon' },
      { kind: 'set', path: ['name'], value: 'Ida' },
    ];
    const edited = applyEdits(folder(page(KIT)), PATH, edits);
    expect(edited).toMatchObject({ problem: { data: { why: 'would-be-wrong', about: 'not-a-date' } } });
  });

  test('bytes that are no text, and a page that is not there', () => {
    const bad = [...others, { path: PATH, bytes: new Uint8Array([0x2d, 0xff]) }];
    for (const files of [bad, others]) {
      expect(applyEdits(files, PATH, [test35])).toMatchObject({ problem: { data: { why: 'page-unreadable' } } });
    }
  });

  test('a page that was wrong elsewhere may be edited, and is no more wrong', () => {
    const text = page(`${KIT}partner: nobody\ngoal: stronger\n`);
    expect(refusal(text, { kind: 'set', path: ['minutes'], value: '45' })).toBe(text.replace('30', '45'));
  });

  test('a fact that was missing may be given', () => {
    const text = page(KIT).replace('minutes: 30\n', '');
    expect(refusal(text, { kind: 'set', path: ['minutes'], value: '30' })).toBe(page(KIT));
  });
});

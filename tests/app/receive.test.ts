/** Marks that came back, received as a coach receives them: filed once, whole, with the right client, or refused. */
import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { whichMark } from '../../src/app/check-log.js';
import { fileLog } from '../../src/app/keep-logs.js';
import { readLogs } from '../../src/app/read-history.js';
import { recogniseLog } from '../../src/app/recognise-log.js';
import { logOf, readLog } from '../../src/content/read-log.js';
import { clientId } from '../../src/model/identity.js';
import type { Log } from '../../src/model/log.js';
import { CLIENT, idOf, logFrom, messageFrom, type ReceiveStudio, receiveStudio, someEvents } from './receive-studio.js';
import { bytesBelow, TOP, workFolder } from './run-chalkleaf.js';

const work = workFolder();
let studio: ReceiveStudio;
let whole: readonly (readonly [string, string])[] = [];
let logs = '';
beforeAll(() => {
  studio = receiveStudio(work.path);
  whole = bytesBelow(studio.content);
  logs = join(studio.content, 'clients', CLIENT, 'log');
});
afterAll(() => work.away());
afterEach(() => rmSync(logs, { recursive: true, force: true }));

const read = (text: string): Log => {
  const log = readLog(text);
  if ('why' in log) throw new Error(log.why);
  return log;
};

describe('marks are filed', () => {
  test('a message, told in the coach’s words; twice is once', () => {
    const file = studio.put('tuesday.txt', `Hi!\n\n${messageFrom(studio, someEvents(10))}\nSee you`);
    const first = studio.receive(file);
    expect(first.err).toBe('');
    expect(first.out).toBe(
      [
        'Filed for Ash Venn, from phone-1: 10 new marks.',
        '  Session A of week 1, Legs: 2027-01-04.',
        '  Session A of week 2, Legs: 2027-01-04.',
        '  Note of 2027-01-04: Fine, “mostly”.',
        '',
      ].join('\n'),
    );
    expect(first.code).toBe(0);
    const bytes = studio.kept('phone-1');
    expect(read(bytes).events.map(({ seq }) => seq)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    const again = studio.receive(file);
    expect(again.out).toBe('Nothing new for Ash Venn, from phone-1: all 10 marks are on file already.\n');
    expect(again.code).toBe(0);
    expect(studio.kept('phone-1')).toBe(bytes);
    expect(readdirSync(logs)).toEqual(['phone-1.json']);
  });

  test('the same as a file gives the same bytes', () => {
    studio.receive(studio.put('log.json', logFrom(studio, [...someEvents(7)].reverse())));
    const bytes = studio.kept('phone-1');
    rmSync(logs, { recursive: true });
    const ran = studio.receive('--json', studio.put('m.txt', messageFrom(studio, someEvents(7))));
    expect(JSON.parse(ran.out)).toMatchObject({
      command: 'receive',
      filed: [
        {
          client: CLIENT,
          device: 'phone-1',
          new: 7,
          known: 0,
          sessions: [{ id: 'A', week: 1, block: 1, occurrence: 1 }],
        },
      ],
      problems: [],
      exit: 0,
    });
    expect(studio.kept('phone-1')).toBe(bytes);
  });

  test('what is piped in is received too', () => {
    const message = messageFrom(studio, someEvents(2));
    const args = ['receive', '--content', studio.content, '--today', '2027-01-12'];
    const main = join(TOP, 'dist/src/app/main.js');
    const ran = spawnSync(process.execPath, [main, ...args], { input: message, encoding: 'utf8' });
    expect(ran.stdout).toContain('Filed for Ash Venn, from phone-1: 2 new marks.');
    const none = spawnSync(process.execPath, [main, ...args], { input: 'See you', encoding: 'utf8' });
    expect(none.stdout).toMatch(/^standard input:1:1 {2}error {2}log-unreadable/);
    expect(none.status).toBe(1);
  });

  test('two devices are two files, and an edition that was followed by another still counts', () => {
    const old = studio.put('old.json', logFrom(studio, someEvents(3)));
    const other = studio.put('other.json', logFrom(studio, someEvents(4, 2), 'phone-2'));
    expect(studio.receive(old, other).code).toBe(0);
    expect(readdirSync(logs).sort()).toEqual(['phone-1.json', 'phone-2.json']);
    expect(read(studio.kept('phone-1')).events.every(({ edition }) => edition === 1)).toBe(true);
    expect(read(studio.kept('phone-2')).events.every(({ edition }) => edition === 2)).toBe(true);
  });

  test('pain, and a sign that bypasses everything, are told first', () => {
    const [opened] = someEvents(1);
    const events = [
      {
        ...opened,
        id: idOf(20),
        seq: 20,
        kind: 'pain',
        occurrence: 1,
        row: 'goblet-squat',
        report: { where: 'knee', degree: 5, side: 'left' },
        today: undefined,
      },
      {
        ...opened,
        id: idOf(21),
        seq: 21,
        kind: 'pain',
        occurrence: 1,
        report: { where: 'elsewhere', degree: 0, alarm: 'fainting' },
        today: undefined,
      },
      {
        ...opened,
        id: idOf(22),
        seq: 22,
        kind: 'pain',
        occurrence: 1,
        // Said before the next session, and told of the day on which it hurt.
        at: '2027-01-06T18:30:00+01:00',
        report: { where: 'hip', degree: 1, worseNextMorning: true },
        today: undefined,
      },
      // Tapped by mistake, and taken back.
      {
        ...opened,
        id: idOf(23),
        seq: 23,
        kind: 'pain',
        occurrence: 1,
        report: { where: 'neck', degree: 9 },
        today: undefined,
      },
      { ...opened, id: idOf(24), seq: 24, kind: 'void', event: idOf(23), occurrence: undefined, today: undefined },
    ];
    const lines = studio.receive(studio.put('pain.json', logFrom(studio, events))).out.split('\n');
    expect(lines.slice(2, 6)).toEqual([
      '  ALARM SIGN on 2027-01-04: fainting. Speak to the client before anything else;',
      '    this needs a doctor’s eye.',
      '  Look at this: pain of 5 in 10, left knee, in the goblet squat, on 2027-01-04.',
      '  Look at this: pain of 1 in 10, hip, on 2027-01-04, worse the next morning.',
    ]);
  });
});

describe('a file that does not fit is refused whole, and why is said', () => {
  const one = (more: object): string => logFrom(studio, [...someEvents(3), { ...someEvents(4)[3], ...more }]);
  const message = (change: (text: string) => string): string => change(messageFrom(studio, someEvents(6)));
  const paper = (rows: string, front = 'client: ash-venn\nedition: 1\nwritten: 2027-01-12'): string =>
    `---\n${front}\n---\n\n| Date | Session | Exercise | Side | Sets | Left | Hurt |\n| --- | --- | --- | --- | --- | --- | --- |\n${rows}\n`;

  const CASES: readonly (readonly [string, string, () => string, RegExp])[] = [
    ['log-unreadable', 'words that are no log', () => 'See you on Tuesday!', /This is no log: neither a message/],
    [
      'log-unreadable',
      'JSON of something else',
      () => '{"schema": 1}',
      /This log cannot be read: bookletId is missing/,
    ],
    ['log-unreadable', 'a bad figure', () => one({ reps: 900 }), /event 4 \(set, seq 4\): reps: .*500/],
    ['log-nothing', 'an empty file', () => ' \n', /not one mark/],
    ['log-nothing', 'a log without marks', () => logFrom(studio, []), /not one mark/],
    ['log-cut-short', 'no end', () => message((text) => text.slice(0, -40)), /breaks off after 6 marks/],
    ['log-sealed', 'sealed, and not whole', () => 'Chalkleaf marks, sealed\neyJhbGci', /sealed, and not whole/],
    [
      'log-cut-short',
      'no beginning',
      () => message((text) => text.slice(100)),
      /beginning of the message is missing: it ends with 6 marks/,
    ],
    [
      'log-cut-short',
      'a line lost',
      () => message((text) => text.replace(/^3\. .*\n/m, '')),
      /should hold 6 marks, and 5 are there/,
    ],
    [
      'log-cut-short',
      'a figure mistyped',
      () => message((text) => text.replace('8 reps', '9 reps')),
      /not as it was written/,
    ],
    [
      'log-unknown-booklet',
      'another studio’s',
      () => logFrom(studio, someEvents(2)).replace(/"bookletId":"[0-9a-f]{4}/, '"bookletId":"0000'),
      /No client here has the booklet ‘0000/,
    ],
    [
      'log-unknown-booklet',
      'a name mistyped',
      () => paper('', 'client: ash-ven\nedition: 1\nwritten: 2027-01-12'),
      /write instead: ash-venn {2}\(did you mean that\?\)/,
    ],
    [
      'log-no-such-edition',
      'never issued',
      () => one({ edition: 7 }),
      /Edition 7 .* never issued[\s\S]*one of its editions: 1 or 2/,
    ],
    [
      'log-no-such-edition',
      'never issued, from paper',
      () => paper('', 'client: ash-venn\nedition: 4\nwritten: 2027-01-12'),
      /Edition 4 .* never issued/,
    ],
    [
      'log-no-such-set',
      'of another block',
      () => one({ key: '2/1/goblet-squat/both/work/3' }),
      /Mark 4 \(a set of ‘goblet-squat’\): edition 1 does not have the block ‘2’/,
    ],
    [
      'log-no-such-set',
      'of a session there is not',
      () => one({ key: '1/44/goblet-squat/both/work/3' }),
      /the session ‘44’/,
    ],
    [
      'log-no-such-set',
      'of a row there is not',
      () => one({ key: '1/1/goblet-squad/both/work/3' }),
      /the row ‘goblet-squad’[\s\S]*instead: goblet-squat/,
    ],
    [
      'log-no-such-set',
      'of a set there is not',
      () => one({ key: '1/1/goblet-squat/both/work/9' }),
      /the set ‘1\/1\/goblet-squat\/both\/work\/9’/,
    ],
    [
      'log-no-such-set',
      'with an exercise nobody has',
      () => one({ exercise: 'cannon-squat' }),
      /the exercise ‘cannon-squat’/,
    ],
    [
      'log-from-the-future',
      'two days on',
      () => one({ at: '2027-01-14T08:00:00+01:00' }),
      /is dated 2027-01-14, and today is 2027-01-12/,
    ],
    [
      'log-before-edition',
      'before it was issued',
      () => one({ at: '2026-12-26T08:00:00+01:00' }),
      /is dated 2026-12-26, and edition 1 was issued on 2026-12-28/,
    ],
    [
      'log-conflict',
      'one id, two things, in one file',
      () => one({ id: idOf(2) }),
      /Mark 4 .* says something else there/,
    ],
    [
      'log-cell-unreadable',
      'sets',
      () => paper('| 2027-01-04 | A 1 | Goblet squat | | lots | | |'),
      /d:9:39 .*‘lots’ is not sets as they are pencilled/,
    ],
    [
      'log-cell-unreadable',
      'a sign of alarm in other words',
      () => paper('| 2027-01-04 | A 1 | Goblet squat | | | | chest pain |'),
      /‘chest pain’ is not where it hurt.*ring the client before anything else[\s\S]*chest, jaw or arm pain/,
    ],
    [
      'log-cell-unreadable',
      'what hurt, with the signs of alarm offered',
      () => paper('| 2027-01-04 | A 1 | Goblet squat | | | | the dog |'),
      /‘the dog’ is not where it hurt[\s\S]*right knee 3; or a sign of alarm, in these words: .*swollen painful calf/,
    ],
    [
      'log-unreadable',
      'a mark without a field it must have',
      () => one({ asPlanned: undefined }),
      /event 4 \(set, seq 4\): asPlanned is missing\. Nothing of it was filed\.[\s\S]*LOG\.md/,
    ],
    [
      'log-cell-unreadable',
      'more sets done than there were',
      () => paper('| 2027-01-04 | A 1 | Goblet squat | | 8 easier | | |'),
      /‘8 easier’ is not sets/,
    ],
    [
      'log-cell-unreadable',
      'what hurt',
      () => paper('| 2027-01-04 | A 1 | Goblet squat | | | | my knee |'),
      /‘my knee’ is not where it hurt/,
    ],
    [
      'log-cell-unreadable',
      'what was left',
      () => paper('| 2027-01-04 | A 1 | Goblet squat | | | two | |'),
      /‘two’ is not how many/,
    ],
    [
      'log-cell-unreadable',
      'a load that is none',
      () => paper('| 2027-01-04 | A 1 | Goblet squat | | 8 × the big one | | |'),
      /‘the big one’ is not sets/,
    ],
    [
      'log-cell-unreadable',
      'a session',
      () => paper('| 2027-01-04 | ?? | Goblet squat | | | | |'),
      /‘\?\?’ is not a session by its letter/,
    ],
    [
      'log-which-session',
      'no week',
      () => paper('| 2027-01-04 | A | Goblet squat | | 8 | | |'),
      /‘A’ is not one session[\s\S]*one of: A 1, A 2, A 3/,
    ],
    [
      'log-which-session',
      'no such letter',
      () => paper('| 2027-01-04 | C 1 | Goblet squat | | 8 | | |'),
      /‘C 1’ is not one session/,
    ],
    [
      'log-no-session',
      'a row before any',
      () => paper('| 2027-01-04 | | Goblet squat | | 8 | | |'),
      /begins without a session/,
    ],
    [
      'log-said-twice',
      'one exercise, twice',
      () => paper('| 2027-01-04 | A 1 | Goblet squat | | 8 | | |\n| | | Goblet squat | | 7 | | |'),
      /says it twice: Goblet squat, both/,
    ],
    [
      'unknown-row',
      'an exercise not planned there',
      () => paper('| 2027-01-04 | A 1 | Gobbet squat | | 8 | | |'),
      /d:9:22 .*unknown-row[\s\S]*Goblet squat/,
    ],
    [
      'not-one-of',
      'a side it does not have',
      () => paper('| 2027-01-04 | A 1 | Goblet squat | left | 8 | | |'),
      /not-one-of/,
    ],
    [
      'not-a-date',
      'a date written another way',
      () => paper('| 4.1.2027 | A 1 | Goblet squat | | 8 | | |'),
      /2027-01-04/,
    ],
    ['missing-key', 'no edition', () => paper('', 'client: ash-venn\nwritten: 2027-01-12'), /edition/],
  ];

  test.each(CASES)('%s: %s', async (code, _, make, says) => {
    const good = studio.put('good.json', logFrom(studio, someEvents(1), 'phone-9'));
    const bad = studio.put('bad.md', make());
    const ran = await studio.receiveHere(bad);
    expect(ran.out).toMatch(says);
    expect(ran.out).toContain(`error  ${code}`);
    expect(ran.out).toContain('\nNothing was filed.\n');
    expect(ran.code).toBe(1);
    expect(bytesBelow(studio.content)).toEqual(whole);
    // Another file received with it is filed all the same.
    if (code === 'log-conflict' || code === 'log-nothing') {
      expect((await studio.receiveHere(bad, good)).out).toContain('Filed for Ash Venn, from phone-9: 1 new mark.');
    }
  });

  test('every code of a log has a case, but what only a disk does', () => {
    const page = readFileSync(join(TOP, 'src/model/problems-log.ts'), 'utf8');
    const codes = [...page.matchAll(/^ {2}readonly '([a-z-]+)':/gm)].map(([, code = '']) => code);
    const tried = new Set(CASES.map(([code]) => code));
    expect(codes.length).toBeGreaterThan(10);
    expect(codes.filter((code) => !tried.has(code))).toEqual(['log-not-writable']);
  });

  test('what is on file says something else by that id, or is damaged: it stands', async () => {
    await studio.receiveHere(studio.put('a.json', logFrom(studio, someEvents(4))));
    const bytes = studio.kept('phone-1');
    const changed = await studio.receiveHere(
      studio.put('b.json', logFrom(studio, [...someEvents(3), { ...someEvents(4)[3], reps: 9 }])),
    );
    expect(changed.out).toMatch(/log-conflict .*Mark 4 .* is on file already and says something else there: 7c9e6679/);
    expect(changed.code).toBe(1);
    expect(studio.kept('phone-1')).toBe(bytes);
    writeFileSync(join(logs, 'phone-1.json'), bytes.slice(0, 200));
    const damaged = await studio.receiveHere(studio.put('c.json', logFrom(studio, someEvents(5))));
    expect(damaged.out).toMatch(/clients\/ash-venn\/log\/phone-1.json:1:1 .*not as they were filed: it is not JSON/);
    expect(studio.kept('phone-1')).toBe(bytes.slice(0, 200));
  });

  test('a folder that cannot be written: exit 3, and what was on file stands', async () => {
    writeFileSync(logs, 'a file of the coach’s own');
    const ran = await studio.receiveHere(studio.put('d.json', logFrom(studio, someEvents(5))));
    expect(ran.out).toMatch(/log-not-writable .*cannot be filed/);
    expect(ran.code).toBe(3);
    expect((await studio.receiveHere(studio.put('e.txt', 'x'), join(work.path, 'none'))).out).toMatch(
      /file-unreadable .*not there any more/,
    );
  });
});

describe('a table typed from a pencilled booklet', () => {
  const page = (written: string, rows: string): string =>
    `---\nclient: ash-venn\nedition: 1\nwritten: ${written}\n---\n\nMonday evenings.\n\n| Date | Session | Exercise | Sets | Left | Hurt | Effort | Minutes | Note |\n| --- | --- | --- | --- | --- | --- | --- | --- | --- |\n${rows}\n`;
  const effects = (): readonly string[] => {
    const { events } = read(studio.kept('paper'));
    const gone = new Set(events.flatMap((event) => (event.kind === 'void' ? [event.event] : [])));
    return events
      .filter((event) => event.kind !== 'void' && !gone.has(event.id))
      .map((event) => {
        if (event.kind !== 'set') return `${event.kind} ${'occurrence' in event ? event.occurrence : ''}`;
        const { key, done, reps, load, exercise, asPlanned } = event;
        return [key, exercise, done, reps ?? '-', load?.label ?? '-', asPlanned ? 'as planned' : ''].join(' ').trim();
      })
      .sort();
  };

  test('every way sets are pencilled', async () => {
    const rows = [
      '| 2027-01-04 | A 1 | Goblet squat | 3 × 8 × 16 kg | 2 | | 6 | 28 | |',
      '| | | Chair squat | 1 done, 1 easier | | right knee 3 | | | It was “odd”. |',
      '| 2027-01-11 | week 2 A | [goblet-squat](x.md) | 8, 7 e, 6 × 20 kg, +5 | 1,5 | | | | |',
      '| | | Chair squat | left out | | none | 7 | | |',
      '| 2027-01-12 | A 3 | Goblet squat as chair squat | 2 x 10 | | | | | |',
    ].join('\n');
    const ran = await studio.receiveHere(studio.put('paper.md', page('2027-01-12', rows)));
    expect(ran.out).toMatch(
      /^Filed for Ash Venn, from paper: 19 new marks\.\n {2}Session A of week 1, Legs: 2027-01-04\.\n/,
    );
    const [first] = studio.edition.plan.weeks.map(
      ({ sessions }) => sessions[0]?.groups.flatMap(({ items }) => items) ?? [],
    );
    const planned = first?.find(({ row }) => row === 'chair-squat')?.sets[0]?.reps;
    const held = studio.edition.plan.weeks[1]?.sessions[0]?.groups.flatMap(({ items }) => items)[1]?.sets.at(-1)
      ?.load?.label;
    expect(effects()).toEqual(
      [
        ...[1, 2, 3].map((n) => `1/1/goblet-squat/both/work/${n} goblet-squat done 8 16 kg`),
        `1/1/chair-squat/both/work/1 chair-squat done ${planned} - as planned`,
        '1/1/chair-squat/both/work/2 chair-squat easier - -',
        `1/2/goblet-squat/both/work/1 goblet-squat done 8 ${held}`,
        '1/2/goblet-squat/both/work/2 goblet-squat easier 7 -',
        '1/2/goblet-squat/both/work/3 goblet-squat done 6 20 kg',
        `1/2/goblet-squat/both/work/4 goblet-squat extra 5 ${held}`,
        '1/2/chair-squat/both/work/1 chair-squat left out - -',
        '1/2/chair-squat/both/work/2 chair-squat left out - -',
        '1/3/goblet-squat/both/work/1 chair-squat easier 10 -',
        '1/3/goblet-squat/both/work/2 chair-squat easier 10 -',
        'closed 1',
        'closed 2',
        'note ',
        'pain 1',
        'reserve 1',
        'reserve 2',
      ].sort(),
    );
  });

  test('what is typed later takes the place of the same session, in whatever order it is received', async () => {
    const monday = studio.put('1.md', page('2027-01-10', '| 2027-01-04 | A 1 | Goblet squat | 8, 8, 8 | 3 | | | | |'));
    const tuesday = studio.put(
      '2.md',
      page(
        '2027-01-11',
        '| 2027-01-03 | A 1 | Goblet squat | 8, 8 | | | | | |\n| 2027-01-11 | A 2 | Chair squat | 9 | | | | | |',
      ),
    );
    const today = studio.put('3.md', page('2027-01-12', '| 2027-01-03 | A 1 | Goblet squat | 8, 6 | | | | | |'));
    const orders = [
      [monday, tuesday, today],
      [today, monday, tuesday],
      [tuesday, today, monday, tuesday],
    ];
    const results: string[] = [];
    for (const files of orders) {
      rmSync(logs, { recursive: true, force: true });
      for (const file of files) expect((await studio.receiveHere(file)).code).toBe(0);
      results.push(studio.kept('paper'));
    }
    expect(new Set(results).size).toBe(1);
    expect(effects().map((line) => line.split(' ').slice(0, 4).join(' '))).toEqual([
      '1/1/goblet-squat/both/work/1 goblet-squat done 8',
      '1/1/goblet-squat/both/work/2 goblet-squat done 6',
      '1/2/chair-squat/both/work/1 chair-squat done 9',
    ]);
    const other = await studio.receiveHere(
      studio.put('4.md', page('2027-01-12', '| 2027-01-03 | A 1 | Goblet squat | 8, 5 | | | | | |')),
    );
    expect(other.out).toMatch(
      /log-conflict .*: A 1, ‘goblet-squat’, set 2 was typed before[\s\S]*a later day as ‘written’/,
    );
    expect(studio.kept('paper')).toBe(results[0]);
  });

  test('a note typed again with its table is the same note', async () => {
    rmSync(logs, { recursive: true, force: true });
    const row = '| 2027-01-04 | A 1 | Goblet squat | 8, 8 | | | | | Slept badly. |';
    await studio.receiveHere(studio.put('1.md', page('2027-01-11', row)));
    const again = await studio.receiveHere(studio.put('2.md', page('2027-01-12', row)));
    expect(again.out).toMatch(/new marks; 1 was on file already/);
    expect(again.out).not.toContain('Slept badly');
    expect(effects().filter((line) => line.startsWith('note'))).toHaveLength(1);
  });
});

describe('what is on file does not depend on how it came', () => {
  const place = { file: 'x', line: 1, column: 1, length: 1 };
  const client = clientId(CLIENT);
  const complete = (events: Log['events']): Log['events'] => events;
  const log = (events: readonly unknown[]): Log => {
    const made = logOf({ schema: 1, bookletId: '0123456789abcdef0123456789abcdef', device: 'phone-1', events });
    if ('why' in made) throw new Error(made.why);
    return made;
  };

  test('any split and any order of the same marks gives the same bytes', async () => {
    const events = someEvents(12);
    await fileLog(studio.content, client, { log: log(events), place, which: (event) => whichMark(event), complete });
    const bytes = studio.kept('phone-1');
    await fc.assert(
      fc.asyncProperty(
        fc.shuffledSubarray([...events.keys()], { minLength: 12, maxLength: 12 }),
        fc.array(fc.array(fc.nat({ max: 11 }), { minLength: 1, maxLength: 5 }), { maxLength: 4 }),
        fc.array(fc.nat({ max: 12 }), { maxLength: 4 }),
        async (order, again, cuts) => {
          rmSync(logs, { recursive: true, force: true });
          const bounds = [0, ...cuts, 12].sort((a, b) => a - b);
          const parts = bounds.slice(1).map((end, at) => order.slice(bounds[at], end));
          for (const part of [...again, ...parts]) {
            const filed = await fileLog(studio.content, client, {
              log: log(part.map((n) => events[n])),
              place,
              which: (event) => whichMark(event),
              complete,
            });
            expect(filed).not.toHaveProperty('code');
          }
          expect(studio.kept('phone-1')).toBe(bytes);
        },
      ),
      { numRuns: 40 },
    );
    expect((await readLogs(studio.content, client)).value).toEqual([log(events)]);
  });

  test('many programs at once lose nothing', async () => {
    const events = someEvents(12);
    const main = join(TOP, 'dist/src/app/main.js');
    const codes = await Promise.all(
      [0, 1, 2, 3].map((part) => {
        const file = studio.put(
          `part-${part}.json`,
          logFrom(
            studio,
            events.filter((_, n) => n % 4 === part),
          ),
        );
        const args = [main, 'receive', file, '--content', studio.content, '--today', '2027-01-12'];
        return new Promise((done) => spawn(process.execPath, args, { stdio: 'ignore' }).on('exit', done));
      }),
    );
    expect(codes).toEqual([0, 0, 0, 0]);
    const kept = readLogs(studio.content, client);
    expect((await kept).value[0]?.events.length).toBe(12);
    // And many in one program: the turns are taken one after the other.
    rmSync(logs, { recursive: true });
    await Promise.all(
      events.map((event) =>
        fileLog(studio.content, client, { log: log([event]), place, which: (event) => whichMark(event), complete }),
      ),
    );
    expect(read(studio.kept('phone-1')).events.length).toBe(12);
    expect(readdirSync(logs)).toEqual(['phone-1.json']);
  });

  test('a turn that a stopped program never gave up is taken away', async () => {
    mkdirSync(logs, { recursive: true });
    const left = join(logs, '.receiving');
    writeFileSync(left, '');
    utimesSync(left, new Date(0), new Date(0));
    const filed = await fileLog(studio.content, client, {
      log: log(someEvents(2)),
      place,
      which: (event) => whichMark(event),
      complete,
    });
    expect(filed).toMatchObject({ known: 0 });
    expect(readdirSync(logs)).toEqual(['phone-1.json']);
  });
});

test('any bytes at all are recognised or refused, never a fault', () => {
  fc.assert(
    fc.property(
      fc.oneof(
        fc.uint8Array({ maxLength: 300 }),
        fc.string({ unit: 'grapheme' }).map((text) => new TextEncoder().encode(text)),
      ),
      fc.constantFrom(
        '',
        '{',
        '---\n',
        '---\nclient: a\nedition: 1\nwritten: 2027-01-12\n---\n\n| Date | Session | Exercise | Sets | Hurt | Left |\n| --- | --- | --- | --- | --- | --- |\n| 2027-01-04 | A 1 | x | ',
        'Chalkleaf marks\n',
      ),
      (bytes, before) => {
        const start = new TextEncoder().encode(before);
        const { logs: found, paper, problems } = recogniseLog('x', new Uint8Array([...start, ...bytes]));
        expect(found.length > 0 || paper !== null || problems.length > 0).toBe(true);
      },
    ),
    { numRuns: 500 },
  );
});

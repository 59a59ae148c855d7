/** What a client is told of a new edition: what matters most first, in short plain sentences, never a diagnosis. */

import { describe, expect, test } from 'vitest';
import type { Change, ChangedWork, RowChange } from '../../src/model/change.js';
import { exerciseId, programmeId, rowId, sessionId } from '../../src/model/identity.js';
import { coachSpeechOf } from '../../src/words/coach-speech.js';
import { englishChanges } from '../../src/words/english-changes.js';
import { englishCoach } from '../../src/words/english-coach.js';
import { sayChangeTable } from '../../src/words/say-change-table.js';
import { sayChanges } from '../../src/words/say-changes.js';
import { speechOf } from '../../src/words/speech.js';
import { load, plan, reason } from '../fixtures/plan.js';
import { bannedIn, longestSentence } from './ban-list.js';

const speech = speechOf('en-GB');
const issued = { ...plan, edition: 2 };
const names = {
  exercise: (id: string) => id.replaceAll('-', ' '),
  programme: (id: string) => id.replaceAll('-', ' '),
};
const spaced = (lines: readonly string[]) => lines.map((line) => line.replaceAll('\u00a0', ' '));
const say = (...changes: readonly Change[]) => spaced(sayChanges({ changes, plan: issued, names, speech }));

const squat = (kg: number, more: Partial<ChangedWork> = {}): ChangedWork => ({
  exercise: exerciseId('goblet-squat'),
  sets: [{ kind: 'work', reps: 8, load: load(kg), count: 3 }],
  tempo: 'normal',
  restSeconds: 90,
  reserve: 30,
  ...more,
});
const DAYS = ['2026-12-03', '2026-12-10', '2026-12-17'];
const row = (before: ChangedWork | null, after: ChangedWork | null, more: Partial<RowChange> = {}): RowChange => ({
  what: 'load',
  session: sessionId('a'),
  row: rowId('goblet-squat'),
  group: 'straight',
  way: 'down',
  safety: false,
  places: DAYS.map((date, i) => ({ occurrence: i + 2, week: i + 2, date, before, after })),
  toEnd: true,
  ...more,
});
const because = (rule: string, where?: string) => ({
  reason: reason(rule, 'coach', where === undefined ? [] : [{ name: 'where', value: where, unit: '' }]),
  safety: rule.startsWith('pain-'),
});
const of = (id: string): Partial<ChangedWork> => ({ exercise: exerciseId(id) });

describe('to the client', () => {
  test('which day, what, and why', () => {
    expect(say(row(squat(16), squat(12), because('pain-easier', 'knee')))).toEqual([
      'From Thu 3 Dec the goblet squat is with 12 kg, because your knee was sore.',
      'Train from this edition from now on.',
    ]);
  });

  test('safety first, then less, then more; two at most, one an exercise', () => {
    const press = row(squat(12, of('press')), squat(16, of('press')), { way: 'up', ...because('done-earned') });
    const pull = row(squat(16, of('row')), squat(12, of('row')), because('done-missed'));
    const hinge = row(squat(24, of('hinge')), squat(20, of('hinge')), because('pain-leave', 'lower back'));
    const effort = row(squat(24, of('hinge')), squat(20, of('hinge')), { what: 'effort', ...because('pain-leave') });
    expect(say(press, pull, effort, hinge).slice(0, 2)).toEqual([
      'From Thu 3 Dec the hinge is with 20 kg, because your lower back was sore.',
      'From Thu 3 Dec the row is with 12 kg, because it was heavy last time.',
    ]);
    const stops: Change = { what: 'stops', before: null, after: '2026-12-20' };
    expect(say(press, hinge, stops)[0]).toBe('Ask before you train on after 20 December 2026.');
  });

  test('fewer reps to be on the safe side come after the load of another row; a load or a version before them', () => {
    const care = because('caution-met');
    const fewer = row(squat(16, of('press')), squat(16, of('press')), { what: 'amount', ...care, safety: true });
    const lighter = row(squat(12), squat(8), because('done-missed'));
    const heavier = row(squat(12, of('row')), squat(16, of('row')), { way: 'up', ...because('done-earned') });
    const told = say(fewer, heavier, lighter);
    expect(told[0]).toContain('the goblet squat is with 8 kg');
    expect(told[1]).toContain('the row is with 16 kg');
    expect(say(fewer)[0]).toContain('the press has fewer reps, to be on the safe side');
    const held = row(squat(24, of('hinge')), squat(20, of('hinge')), { ...care, safety: true });
    expect(
      say(lighter, fewer, held)
        .slice(0, 2)
        .map((line) => /the ([a-z]+)/.exec(line)?.[1]),
    ).toEqual(['hinge', 'goblet']);
    // Pain goes first, whatever it changes.
    const sore = { ...fewer, ...because('pain-easier', 'knee') };
    expect(say(lighter, sore)[0]).toContain('the press has fewer reps, because your knee was sore');
  });

  describe('a block much shorter or later', () => {
    const why = (rule: string, cause: string, from = '2026-12-10') =>
      reason(rule, 'coach', [
        { name: 'cause', value: cause, unit: '' },
        { name: 'from', value: from, unit: '' },
      ]);
    const back = { ...issued, today: '2026-12-31' };
    const days = plan.weeks.flatMap(({ sessions }) => sessions.map(({ date }) => date)).sort();
    const tell = (...changes: readonly Change[]) => spaced(sayChanges({ changes, plan: back, names, speech }));
    const fewer = (rule: string, cause: string, from?: string): Change => {
      return { what: 'sessions', before: 6, after: 3, reason: why(rule, cause, from) };
    };
    const load = (rule: string, cause: string) => row(squat(12), squat(8), { reason: why(rule, cause) });

    test('is told before any row, with how many are left, the last day and why, and takes no place from a row', () => {
      expect(days).toEqual(['2027-01-04', '2027-01-11', '2027-01-18']);
      const pull = row(squat(16, of('row')), squat(12, of('row')), because('pain-leave', 'elbow'));
      expect(tell(load('break-held', 'away'), pull, fewer('break-away', 'away'))).toEqual([
        'You have been away, so 3 sessions are left, the last on Mon 18 Jan.',
        'From Thu 3 Dec the row is with 12 kg, because your elbow was sore.',
        'From Thu 3 Dec the goblet squat is with 8 kg, after your time away.',
        'Train from this edition from now on.',
      ]);
    });

    test.each([
      ['break-ill', 'ill', undefined, 'You have had a break, so 3 sessions are left'],
      ['break-hurt', 'hurt', undefined, 'You have had a break, so 3 sessions are left'],
      ['missed-session', 'away', undefined, 'You have been away, so 3 sessions are left'],
      // Planned, and still to come.
      ['break-away', 'away', '2027-01-06', 'You will be away, so 3 sessions are left'],
      ['sessions-lost', '', undefined, '3 sessions are left'],
    ])('%s of %s', (rule, cause, from, begins) => {
      expect(tell(fewer(rule, cause, from))[0]).toBe(`${begins}, the last on Mon 18 Jan.`);
    });

    test('one left, or none; more of them have no break for a cause', () => {
      const left = (today: string) => {
        const changes = [fewer('break-away', 'away')];
        return spaced(sayChanges({ changes, plan: { ...back, today }, names, speech }))[0];
      };
      expect(left('2027-01-12')).toBe('You have been away, so 1 session is left, on Mon 18 Jan.');
      expect(left('2027-01-19')).toBe('You have been away, so no session is left in this block.');
      const more: Change = { what: 'sessions', before: 1, after: 3, reason: why('break-away', 'away') };
      expect(tell(more)[0]).toBe('3 sessions are left, the last on Mon 18 Jan.');
    });

    test('a third of the sessions left is much: what is done does not count; fewer are told after the rows', () => {
      const change: Change = { what: 'sessions', before: 12, after: 11 };
      const done = Array.from({ length: 9 }, (_, at) => ({ occurrence: at + 100, day: '2026-12-20', edition: 1 }));
      const rows = load('done-missed', '');
      expect(tell(change, rows)[0]).toContain('goblet squat');
      const late = { ...back, inputs: { ...back.inputs, done } };
      const told = spaced(sayChanges({ changes: [rows, change], plan: late, names, speech }));
      expect(told[0]).toBe('3 sessions are left, the last on Mon 18 Jan.');
    });

    test('as many sessions, the last of them a week later or more', () => {
      const dates = (before: string): Change => ({
        what: 'dates',
        moved: [{ occurrence: 3, session: sessionId('a'), before, after: '2027-01-18' }],
        reason: why('break-away', 'away'),
      });
      const rows = load('done-missed', '');
      expect(tell(rows, dates('2027-01-11'))[0]).toBe(
        'You have been away, so the next session is on Mon 4 Jan, the last on Mon 18 Jan.',
      );
      expect(tell(rows, dates('2027-01-12'))[0]).toContain('goblet squat');
    });

    test.each([
      ['break-held', 'away', 'after your time away'],
      ['return-cut-first', 'away', 'after your time away'],
      ['return-lighter', 'away', 'after your time away'],
      ['return-volume', 'hurt', 'to come back gently'],
      ['break-held', 'ill', 'to come back gently'],
      ['break-held-ill', 'ill', 'to come back gently'],
      ['break-floor', 'away', 'to come back gently'],
    ])('a row for %s after %s', (rule, cause, says) => {
      expect(tell(load(rule, cause))[0]).toBe(`From Thu 3 Dec the goblet squat is with 8 kg, ${says}.`);
    });

    test('no sentence is long, whatever the cause', () => {
      for (const kind of ['away', 'will-be-away', 'ill', 'none'] as const) {
        for (const left of [0, 1, 18]) {
          const of = { why: kind, left, next: 'Wed 30 Sept', last: 'Wed 30 Sept' };
          for (const line of [englishChanges.fewer(of), englishChanges.later(of)]) {
            expect(longestSentence(line), line).toBeLessThanOrEqual(20);
            expect(bannedIn(line)).toEqual([]);
          }
        }
      }
    });
  });

  test('the same cause is said once', () => {
    const hinge = row(squat(24, of('hinge')), squat(20, of('hinge')), because('pain-easier', 'knee'));
    const told = say(row(squat(16), squat(12), because('pain-easier', 'knee')), hinge).join(' ');
    expect(told.match(/because your knee was sore/g)).toHaveLength(1);
  });

  test('marks stay, where there are any; the same work is said to be', () => {
    const done = [{ occurrence: 1, day: '2026-11-26', edition: 1 }];
    const begun = { ...issued, inputs: { ...plan.inputs, done } };
    const told = sayChanges({ changes: [row(squat(16), squat(12))], plan: begun, names, speech });
    expect(told.at(-1)).toBe('Train from this edition from now on. Your marks stay.');
    const draft = { ...begun, edition: 0 };
    const drafted = sayChanges({ changes: [row(squat(16), squat(12))], plan: draft, names, speech });
    expect(drafted.join(' ')).not.toContain('Train from this');
    expect(say()).toEqual(['The work is the same as in the edition before.']);
  });

  test('a new block: that it goes on, and two lines of how it begins', () => {
    const block: Change = { what: 'block', before: 1, after: 2, goesOn: true };
    const more = row(null, squat(12, of('press')), { what: 'added', way: 'up' });
    const told = say(block, more, row(squat(16), squat(20), { way: 'up', ...because('done-earned') }));
    expect(told).toEqual([
      'New block: it begins where the last one ended.',
      'The goblet squat is with 20 kg, because you earned it.',
      'New: the press.',
    ]);
    expect(say({ ...block, goesOn: false })).toEqual(['This is a new block.']);
  });

  test('a place nobody else needs to read of is not named, and neither is what the coach alone knows', () => {
    for (const where of ['pelvic floor', 'belly', 'elsewhere', '']) {
      expect(say(row(squat(16), squat(12), because('pain-leave', where)))[0]).toContain('because it hurt.');
    }
    for (const rule of ['pregnancy-moderate', 'fracture-lift', 'caution-met']) {
      const told = say(row(squat(16), squat(12), { ...because(rule, 'knee'), safety: true }))[0];
      expect(told).toBe('From Thu 3 Dec the goblet squat is with 12 kg, to be on the safe side.');
    }
  });

  test('one load is named only where it is one; a band by its name', () => {
    const band = { ...load(1), label: 'light band' };
    const sides = [
      { kind: 'work', side: 'left', reps: 8, load: load(12), count: 3 },
      { kind: 'work', side: 'right', reps: 8, load: load(16), count: 3 },
    ] as const;
    expect(say(row(squat(16), squat(0, { sets: sides })))[0]).toContain('is done with another load');
    const held = [{ kind: 'work', reps: 8, load: band, count: 3 }] as const;
    expect(say(row(squat(16), squat(0, { sets: held })))[0]).toContain('is with the light band');
    const bare = [{ kind: 'work', reps: 8, count: 3 }] as const;
    expect(say(row(squat(16), squat(0, { sets: bare })))[0]).toContain('is done without a load');
    const places = DAYS.map((date, i) => ({
      occurrence: i,
      week: i,
      date,
      before: squat(20),
      after: squat(12 + 4 * i),
    }));
    expect(say(row(null, null, { places }))[0]).toContain('begins with 12 kg');
  });

  const WHATS = Object.keys(englishCoach.changes.kinds);
  const RULES = [
    '',
    'pain-easier',
    'seen-heavy',
    'done-missed',
    'done-median',
    'done-easier',
    'break-away',
    'break-ill',
  ];
  test.each(WHATS)('%s: every sentence is at most 20 words, and fit for a client', (what) => {
    const long = { exercise: exerciseId('split-squat-with-a-hand-on-a-chair') };
    for (const rule of RULES) {
      for (const way of ['down', 'up', 'other'] as const) {
        for (const toEnd of [true, false]) {
          const change = row(squat(16, of('one-arm-row')), squat(12, long), { way, toEnd, ...because(rule, 'knee') });
          const kind = WHATS.find((one): one is RowChange['what'] => one === what);
          const told = kind === undefined ? [] : say({ ...change, what: kind });
          expect(told.length).toBeGreaterThan(1);
          for (const line of told) {
            expect(longestSentence(line), line).toBeLessThanOrEqual(20);
            expect(bannedIn(line)).toEqual([]);
          }
        }
      }
    }
  });

  test('so are those of an edition that has ended or was withdrawn, and of the block as a whole', () => {
    const { ended, withdrawn } = englishChanges;
    const lines = [
      ...ended.lines('11 February 2027', 'Maren Oakes'),
      ...withdrawn.lines('11 February 2027', 'Maren Oakes'),
      ended.title,
      withdrawn.title,
      ...say({ what: 'programme', before: programmeId('a'), after: programmeId('two-steady-days') }),
      ...say({ what: 'sessions', before: 12, after: 11 }),
      ...say({
        what: 'dates',
        moved: [{ occurrence: 2, session: sessionId('a'), before: '2026-12-03', after: '2026-12-04' }],
      }),
      ...say({ what: 'stops', before: '2026-12-04', after: null }),
    ];
    for (const line of lines) {
      expect(longestSentence(line), line).toBeLessThanOrEqual(20);
      expect(bannedIn(line)).toEqual([]);
    }
  });
});

describe('to the coach, in full', () => {
  const table = (...changes: readonly Change[]) =>
    sayChangeTable({ changes, speech: coachSpeechOf('en-GB'), names, why: ({ says }) => `Named: ${says}` });
  test('a row once, with each stretch of days it is alike in, and the reason of the new plan', () => {
    const says = 'Pain of 3 in the knee was said.';
    const places = DAYS.map((date, i) => ({
      occurrence: i,
      week: i,
      date,
      before: squat(i === 2 ? 20 : 16, { reserve: 20 }),
      after: squat(12),
    }));
    const told = { ...row(null, null, because('pain-easier', 'knee')), places };
    const explained = { ...told, reason: { ...reason('pain-easier', 'coach'), says } };
    const lines = table(explained, { ...explained, what: 'effort' });
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatchObject({ name: 'goblet squat', what: 'load, reserve', rule: 'pain-easier' });
    expect(lines[0]?.why).toBe(`Named: ${says}`);
    expect(lines[0]?.stretches.map(({ from, before, after }) => spaced([from, before, after]))).toEqual([
      ['Thu 3 Dec', '16 kg × 8, 3 sets, 2 in reserve', '12 kg × 8, 3 sets, 3 in reserve'],
      ['Thu 17 Dec', '20 kg × 8, 3 sets, 2 in reserve', '12 kg × 8, 3 sets, 3 in reserve'],
    ]);
  });

  test('another exercise is named, and so is a row that was not there', () => {
    const lines = table(row(squat(16), squat(12, of('box-squat')), { what: 'version' }));
    expect(spaced([lines[0]?.stretches[0]?.before ?? '', lines[0]?.stretches[0]?.after ?? ''])).toEqual([
      'goblet squat, 16 kg × 8, 3 sets',
      'box squat, 12 kg × 8, 3 sets',
    ]);
    expect(table(row(null, squat(12), { what: 'added' }))[0]?.stretches[0]?.before).toBe('not there');
  });
});

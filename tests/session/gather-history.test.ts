/** What was done, from editions and marks: nothing depends on the order or the copies of what came back. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import { isoOfDay, type Weekday } from '../../src/model/day.js';
import type { History } from '../../src/model/history.js';
import { type RowId, rowId, setKey } from '../../src/model/identity.js';
import type { LogEvent } from '../../src/model/log.js';
import type { Plan } from '../../src/model/plan.js';
import { gatherHistory } from '../../src/session/gather-history.js';
import {
  aBlock,
  aClient,
  aLibrary,
  anExercise,
  aProgramme,
  aRow,
  aSession,
  aTest,
  bodyweight,
  on,
} from '../engine/make-block.js';
import { aLog, anEdition, doAsPlanned, keysOf, markId, sessionAt } from './make-marks.js';

const days: readonly Weekday[] = [1, 4];
const library = aLibrary(
  [anExercise('squat'), anExercise('row', { ...bodyweight, pattern: 'pull', sides: 'each' })],
  aProgramme(['A', 'B'].map((id) => aSession(id, aBlock([aRow('squat'), aRow('row')])))),
);
const planned = (edition: number, blocksBefore = 0): Plan =>
  planBlock({
    library,
    client: aClient({
      days,
      blocksBefore,
      tests: [aTest('squat', 10, { load: { grams: 16_000, figure: '16', unit: 'kg' } }), aTest('row', 12)],
    }),
    today: on('2026-12-20'),
    edition,
  }).value ?? expect.fail('no plan');
const first = planned(1);
const editions = [anEdition(first, 1)];
const [done1, done2] = [doAsPlanned(first, 1), doAsPlanned(first, 2)];

const gathered = (...events: readonly LogEvent[]): History => {
  const { value, problems } = gatherHistory(editions, [aLog(events)]);
  expect(problems).toEqual([]);
  return value;
};
const head = (id: string, at = '2027-01-04T19:30:00+01:00', seq = 5000) => ({ id, seq, edition: 1, at });
const aSet = (id: string, more: Partial<Extract<LogEvent, { kind: 'set' }>> = {}, at?: string): LogEvent => {
  const set = done1.find((event) => event.kind === 'set') ?? expect.fail('no set');
  return { ...set, ...head(id, at), ...more } as LogEvent;
};
const squat = (history: History) => history.sessions[0]?.rows.find(({ row }) => row === 'squat') ?? expect.fail('none');

describe('a session', () => {
  test('as planned: every set with what the edition asked of it, in the order of the plan', () => {
    const { sessions, lastMark } = gathered(...done1, ...done2);
    expect(sessions.map(({ occurrence, day, edition }) => [occurrence, isoOfDay(day), edition])).toEqual([
      [1, '2027-01-04', 1],
      [2, '2027-01-07', 1],
    ]);
    const [one] = sessions;
    const sets = one?.rows.flatMap((row) => row.sets) ?? [];
    expect(sets.length).toBeGreaterThan(6);
    const keys = keysOf(sessionAt(first, 1)).filter((key) => sets.some((set) => set.key === key));
    expect(sets.map(({ key }) => key)).toEqual(keys);
    for (const set of sets) expect([set.reps, set.load]).toEqual([set.planned?.reps, set.planned?.load]);
    expect(one).toMatchObject({ closed: true, effort: 6, minutes: one?.minutesPlanned, week: 1, block: 1 });
    expect(lastMark).toBe(on('2027-01-07'));
  });

  test('is not begun by opening it', () => {
    const opened: LogEvent = { ...head('o'), kind: 'opened', occurrence: 1, today: 'not my best' };
    expect(gathered(opened).sessions).toEqual([]);
    expect(gathered(opened).lastMark).toBe(on('2027-01-04'));
    expect(gathered(opened, ...done1).sessions[0]?.today).toBe('not my best');
  });

  test('is of the local day of its first set, whatever is put right later, and however late the hour', () => {
    const late = aSet('late', {}, '2027-01-05T00:10:00+13:00');
    expect(gathered(late).sessions[0]?.day).toBe(on('2027-01-05'));
    const righted = aSet('r', { reps: 4 }, '2027-01-09T09:00:00+01:00');
    expect(gathered(...done1, righted).sessions[0]?.day).toBe(on('2027-01-04'));
    const pain: LogEvent = {
      ...head('p', '2027-01-03T08:00:00+01:00'),
      kind: 'pain',
      occurrence: 1,
      report: { where: 'knee', degree: 2 },
    };
    expect(gathered(...done1, pain).sessions[0]?.day).toBe(on('2027-01-04'));
    expect(gathered(pain).sessions[0]).toMatchObject({ day: on('2027-01-03'), pain: [{ where: 'knee', degree: 2 }] });
  });

  test('takes the last word on a set, by moment, then count, then id', () => {
    const at = '2027-01-04T20:00:00+01:00';
    expect(squat(gathered(...done1, aSet('x', { reps: 4 }, at))).sets.map(({ reps }) => reps)).toContain(4);
    const same = [aSet('b', { reps: 3 }, at), aSet('a', { reps: 4 }, at)];
    expect(squat(gathered(...done1, ...same)).sets[0]?.reps).toBe(3);
    // Half past seven at one hour from Greenwich is before seven at Greenwich itself.
    const zones = [
      aSet('c', { reps: 3 }, '2027-01-04T19:30:00+01:00'),
      aSet('d', { reps: 5 }, '2027-01-04T19:00:00+00:00'),
    ];
    expect(squat(gathered(...zones)).sets.map(({ reps }) => reps)).toEqual([5]);
  });

  test('tells reserve by side and the latest word of each, in tenths', () => {
    const said = (id: string, side: 'left' | 'right' | 'both', reps: number): LogEvent => ({
      ...head(id),
      kind: 'reserve',
      occurrence: 1,
      row: rowId('row'),
      side,
      reps,
    });
    const events = [aSet('s'), said('1', 'left', 3), said('2', 'right', 1), said('3', 'left', 2)];
    const row = gathered(...events).sessions[0]?.rows.find(({ row: id }) => id === 'row');
    expect(row?.reserve).toEqual([
      { side: 'left', reserve: 20 },
      { side: 'right', reserve: 10 },
    ]);
  });

  test('keeps an extra set after those of the plan, and what was left out as left out', () => {
    const extra = setKey({ block: 1, occurrence: 1, row: rowId('squat'), side: 'both', kind: 'work', ordinal: 9 });
    const row = squat(gathered(aSet('e', { key: extra, done: 'extra' }), ...done1));
    expect(row.sets.at(-1)).toMatchObject({ key: extra, done: 'extra' });
    expect(row.sets.at(-1)?.planned).toBeUndefined();
    expect(squat(gathered(aSet('o', { done: 'left out' }))).sets[0]?.done).toBe('left out');
  });
});

describe('editions', () => {
  const second = planned(2);
  const both = [...editions, anEdition(second, 2)];

  test('a log of an older edition still counts; a session done stays as it stood there', () => {
    const { value } = gatherHistory(both, [aLog(done1)]);
    const [block] = value.blocks;
    expect(value.sessions[0]?.edition).toBe(1);
    expect(block?.edition).toBe(2);
    expect(block?.plan).toBe(second);
    expect(block?.queue.map(({ edition }) => edition)).toEqual([1, ...Array.from({ length: 11 }, () => 2)]);
    expect(block?.queue[0]?.session).toBe(sessionAt(first, 1));
  });

  test('one block each, in order, the latest plan of each', () => {
    const later = planned(3, 1);
    const { value } = gatherHistory([anEdition(later, 3), ...both], [aLog(done2)]);
    expect(value.blocks.map(({ block, edition }) => [block, edition])).toEqual([
      [1, 2],
      [2, 3],
    ]);
  });

  test('a mark of what its edition does not have is told, and counts for nothing', () => {
    const key = (occurrence: number, row: RowId) =>
      setKey({ block: 1, occurrence, row, side: 'both', kind: 'work', ordinal: 1 });
    const strange: readonly LogEvent[] = [
      aSet('1', { key: key(99, rowId('squat')) }),
      aSet('2', { key: key(1, rowId('nothing')) }),
      aSet('3', { edition: 7 }),
      { ...head('4'), kind: 'reserve', occurrence: 1, row: rowId('nothing'), side: 'both', reps: 2 },
      { ...head('5'), kind: 'closed', occurrence: 50 },
      aSet('6', { key: key(1, rowId('nothing')), done: 'extra' }),
    ];
    const { value, problems } = gatherHistory(editions, [aLog(strange)]);
    expect(value.sessions).toEqual([]);
    expect(problems.map(({ code, severity }) => `${code} ${severity}`)).toEqual(
      strange.map(() => 'mark-unknown warning'),
    );
    expect(problems[0]?.place?.file).toBe('clients/somebody/log/phone.json');
    expect(gatherHistory([], [aLog(done1)]).problems.length).toBe(done1.length);
  });
});

describe('whatever comes back', () => {
  const pain: LogEvent = {
    ...head('pain'),
    kind: 'pain',
    occurrence: 2,
    row: rowId('row'),
    report: { where: 'shoulder', degree: 4 },
  };
  const note: LogEvent = { ...head('note'), kind: 'note', text: 'windy' };
  const voided: LogEvent = { ...head('void', '2027-01-08T10:00:00+01:00'), kind: 'void', event: markId(1, 1002) };
  const again: LogEvent = { ...head('void-void', '2027-01-08T11:00:00+01:00'), kind: 'void', event: 'void' };
  const all = [...done1, ...done2, aSet('x', { reps: 4 }), pain, note, voided];
  const some = fc.shuffledSubarray(all, { minLength: 1 });

  test('the order of logs and events, and copies of them, decide nothing', () => {
    fc.assert(
      fc.property(some, fc.infiniteStream(fc.integer({ min: 0, max: 2 })), (events, where) => {
        const [a, b, c]: LogEvent[][] = [[], [], []];
        const logs = [a ?? [], b ?? [], c ?? []];
        for (const event of events) logs[where.next().value ?? 0]?.push(event);
        const sorted = [...events].sort((x, y) => (x.id < y.id ? -1 : 1));
        const one = gatherHistory(editions, [aLog(sorted)]);
        const shuffled = gatherHistory(editions, [...logs, events.slice(0, 3)].map((own) => aLog(own)).reverse());
        expect(shuffled).toEqual(one);
      }),
      { numRuns: 150, seed: 20_261_128 },
    );
  });

  test('taking back is said once, and may itself be taken back', () => {
    const without = gathered(...all.filter(({ id }) => id !== markId(1, 1002) && id !== 'void'));
    expect(gathered(...all)).toEqual(without);
    expect(gathered(...all, { ...voided, id: 'void-2', seq: 6000 })).toEqual(gathered(...all));
    expect(gathered(...all, again)).toEqual(gathered(...all.filter(({ id }) => id !== 'void')));
    expect(gathered(...done1, ...done1.map(({ id }, i) => ({ ...voided, id: `v${i}`, event: id }))).sessions).toEqual(
      [],
    );
  });

  test('nothing throws, whatever numbers stand in a mark', () => {
    fc.assert(
      fc.property(fc.constantFrom(...all), fc.string(), fc.nat(), (event, text, number) => {
        const odd: LogEvent = Object.assign({}, event, {
          at: text,
          edition: number,
          occurrence: number,
          key: text,
          row: text,
        });
        expect(() => gatherHistory(editions, [aLog([odd, ...done1])])).not.toThrow();
      }),
      { numRuns: 200, seed: 20_261_128 },
    );
  });
});

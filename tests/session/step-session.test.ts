import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { LogEvent } from '../../src/model/log.js';
import { stepSession } from '../../src/session/step-session.js';
import { circuitPlan as plan } from './circuit-plan.js';
import { doAsPlanned, keysOf, markId, sessionAt } from './make-marks.js';

const all = doAsPlanned(plan, 1);
const first = (count: number): readonly LogEvent[] => all.slice(0, count);
const at = (time: string): Date => new Date(`2027-01-04T${time}+01:00`);
const here = (events: readonly LogEvent[], now = at('18:30:00'), occurrence = 1) => {
  const stepped = stepSession(plan, events, now);
  const session = stepped.sessions.find((one) => one.occurrence === occurrence);
  return { ...stepped, session: session ?? expect.fail('no session') };
};
const firstSet = all.find((event) => event.kind === 'set') ?? expect.fail();
const extra = (event: object): LogEvent => ({ ...firstSet, id: markId(9, 1), seq: 5000, ...event });

describe('sessions', () => {
  test('none is begun, the first is next, and nothing is rested for', () => {
    const { sessions, next, rest, session } = here([]);
    expect(new Set(sessions.map(({ status }) => status))).toEqual(new Set(['not begun']));
    expect([next, rest, session.next]).toEqual([1, null, session.sets[0]?.key]);
  });

  test('every planned set stands in it once, circuits round by round', () => {
    const { session } = here([]);
    expect([...session.sets.map(({ key }) => key)].sort()).toEqual([...keysOf(sessionAt(plan, 1))].sort());
    const turns = session.sets.filter(({ row, set }) => row !== 'squat' && set.kind === 'work').map(({ row }) => row);
    expect(turns).toEqual(['row', 'row', 'press', 'row', 'row', 'press', 'row', 'row', 'press']);
  });

  test('under way from its first mark, closed by the client’s word, and then the next of the queue is next', () => {
    expect(here(first(1)).session.status).toBe('under way');
    expect(here(first(1)).next).toBe(1);
    const { session, next, rest } = here(all);
    expect([session.status, next, rest, session.next]).toEqual(['closed', 2, null, null]);
    const late = extra({ at: '2027-01-04T21:00:00+01:00', kind: 'set', reps: 5 });
    expect(here([...all, late]).session.status).toBe('closed');
  });

  test('half a day without a mark is the end of it too', () => {
    const some = first(2);
    expect(here(some, new Date('2027-01-05T06:41:00+01:00')).next).toBe(1);
    expect(here(some, new Date('2027-01-05T06:43:00+01:00')).next).toBe(2);
  });
});

describe('sets', () => {
  test('the last word counts, and what is taken back does not', () => {
    const again = extra({ reps: 3, at: '2027-01-04T19:00:00+01:00' });
    const marked = (events: readonly LogEvent[]) =>
      here(events).session.sets.find(({ key }) => key === firstSet.key)?.marked;
    expect(marked([...first(1), again])).toMatchObject({ reps: 3 });
    const back: LogEvent = {
      id: markId(9, 2),
      seq: 6000,
      edition: 1,
      at: '2027-01-04T19:05:00+01:00',
      kind: 'void',
      event: again.id,
    };
    expect(marked([...first(1), again, back])).toEqual(firstSet);
  });

  test('next is the first unmarked after the one marked last, else the first that was passed over', () => {
    const { session } = here([]);
    const sets = all.filter((event) => event.kind === 'set');
    const [one, two, three] = sets;
    if (one === undefined || two === undefined || three === undefined) return expect.fail();
    expect(here([one]).session.next).toBe(session.sets[1]?.key);
    expect(here([two]).session.next).toBe(session.sets[2]?.key);
    const butFirst = sets.slice(1);
    expect(here(butFirst).session.next).toBe(session.sets[0]?.key);
  });

  test('a set beyond the plan is no set of it, and is not lost', () => {
    const more = extra({ key: firstSet.kind === 'set' ? firstSet.key.replace(/\d+$/, '9') : '', done: 'extra' });
    const { session } = here([...first(1), more]);
    expect(session.extra).toEqual([more]);
    expect(session.sets.filter(({ marked }) => marked !== null)).toHaveLength(1);
  });
});

describe('rest', () => {
  const sets = all.filter((event) => event.kind === 'set');
  const [one] = sets;
  const began = Date.parse(one?.at ?? '');

  test('is over so many seconds after the moment its set was marked, whenever one looks', () => {
    const row = here([]).session.sets[0] ?? expect.fail();
    const look = (after: number) => here(first(1), new Date(began + 1000 * after)).rest;
    expect(look(0)).toEqual({ after: row.key, began, over: began + 1000 * row.rest, left: row.rest });
    expect(look(10.2)?.left).toBe(row.rest - 10);
    expect(look(row.rest)?.left).toBe(0);
    expect(look(row.rest + 500)?.left).toBe(0);
  });

  test('none after a set left out, nor after the last of all', () => {
    expect(here([extra({ done: 'left out' })]).rest).toBeNull();
    expect(here(sets).rest).toBeNull();
  });
});

test('neither order nor repetition of events decides anything', () => {
  const events = [...all, ...doAsPlanned(plan, 2).slice(0, 3)];
  const whole = stepSession(plan, events, at('19:00:00'));
  fc.assert(
    fc.property(fc.shuffledSubarray(events, { minLength: events.length }), fc.subarray(events), (shuffled, twice) => {
      expect(stepSession(plan, [...shuffled, ...twice], at('19:00:00'))).toEqual(whole);
    }),
    { numRuns: 30 },
  );
});

/** The queue of sessions: weeks, rotations, breaks, and where it ends. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import { layOverrides } from '../../src/engine/rulebook.js';
import { queueSessions } from '../../src/engine/sessions/queue-sessions.js';
import type { Break, Client } from '../../src/model/client.js';
import { addDays, dayOfIso, isoOfDay, type Weekday, weekdayOf } from '../../src/model/day.js';
import { sessionId } from '../../src/model/identity.js';
import type { Programme } from '../../src/model/programme.js';
import { PLACE } from './generate-exercises.js';
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
} from './make-block.js';
import { type Overrides, overrides } from './make-session.js';

const squat = anExercise('squat', bodyweight);
const sessions = ['A', 'B', 'C'].map((id) => aSession(id, aBlock([aRow('squat')])));
const pause = (from: string, until: string, cause: Break['cause'] = 'away'): Break => ({
  from: on(from),
  until: on(until),
  cause,
  place: PLACE,
});
const rules = (values: Overrides = {}) => layOverrides(overrides(values)).value;
const queue = (programme: Programme, client: Partial<Client>, values: Overrides = {}) =>
  queueSessions(programme, aClient(client), rules(values)).value ?? expect.fail('no queue');
const two = aProgramme(sessions.slice(0, 2));
/** `A 2027-01-04 1`: session, day, week of the curve. */
const said = (of: ReturnType<typeof queue>) =>
  of.sessions.map(({ template, date, week }) => `${template.id} ${isoOfDay(date).slice(5)} ${week}`);
const days: readonly Weekday[] = [1, 4];

describe('breaks', () => {
  test('a session whose day falls in one waits for the next day after it, and the rest follow in order', () => {
    const of = queue(two, { days, breaks: [pause('2027-01-11', '2027-01-13')] });
    expect(said(of).slice(0, 6)).toEqual([
      'A 01-04 1',
      'B 01-07 1',
      'A 01-14 2',
      'B 01-18 2',
      'A 01-21 3',
      'B 01-25 3',
    ]);
    expect(of.lost).toBe(1);
    // The block ends where it would have ended; its last session is left out.
    expect(said(of).at(-1)).toBe('A 02-11 6');
    expect(of.moved.map(({ weeks }) => weeks)).toEqual([[2, 3, 4, 5, 6]]);
  });

  test('weeks begin on their weekday before their first session', () => {
    const of = queue(two, { days, breaks: [pause('2027-01-11', '2027-01-20')] });
    expect(of.begins.map((day) => isoOfDay(day).slice(5))).toEqual([
      '01-04',
      '01-18',
      '01-25',
      '02-01',
      '02-08',
      '02-15',
    ]);
    expect(said(of).slice(2, 4)).toEqual(['A 01-21 2', 'B 01-25 2']);
  });

  test('one that covers the start moves the whole block, and nothing is lost', () => {
    const of = queue(two, { days, breaks: [pause('2027-01-01', '2027-01-12')] });
    expect(said(of)[0]).toBe('A 01-14 1');
    expect(of.lost).toBe(0);
    expect(of.sessions).toHaveLength(12);
  });

  test('queue-slides leaves days free after a break', () => {
    const of = queue(two, { days, breaks: [pause('2027-01-11', '2027-01-13')] }, { 'queue-slides': 1 });
    expect(said(of)[2]).toBe('A 01-18 2');
  });

  test('one on no training day, or outside the block, changes nothing', () => {
    const plain = queue(two, { days });
    for (const breaks of [[pause('2027-01-05', '2027-01-06')], [pause('2026-11-01', '2026-12-01')]]) {
      const of = queue(two, { days, breaks });
      expect(said(of)).toEqual(said(plain));
      expect(of.moved).toEqual([]);
    }
  });

  test('the coach is told what moved and what is left out', () => {
    const told = (values: Overrides) =>
      planBlock({
        library: aLibrary([squat], two),
        client: aClient({ days, breaks: [pause('2027-01-11', '2027-01-13')], tests: [aTest('squat', 12)] }),
        today: on('2026-12-20'),
        edition: 0,
        rulesOverridden: overrides(values),
      }).value?.findings.filter(({ rule }) => rule === 'queue-slides' || rule === 'sessions-lost');
    expect(told({})?.map(({ rule, audience, weeks }) => [rule, audience, weeks])).toEqual([
      ['queue-slides', 'coach', [2, 3, 4, 5, 6]],
      ['sessions-lost', 'coach', [6]],
    ]);
    expect(told({})?.[1]?.reason.inputs).toEqual([{ name: 'sessions', value: 1, unit: '' }]);
    expect(told({ 'sessions-lost': 1 })?.map(({ rule }) => rule)).toEqual(['queue-slides']);
  });
});

test('fewer days than sessions: the rotation runs on from week to week, whatever the days', () => {
  const order = ['A', 'C', 'B', 'A'].map(sessionId);
  const programme = aProgramme(sessions, { rotations: [{ days: 2, order }] });
  const of = queue(programme, { days });
  expect(of.sessions.map(({ template }) => template.id).join('')).toBe('ACBAACBAACBA');
});

describe('every queue', () => {
  const chosen = fc.record({
    days: fc.shuffledSubarray<Weekday>([1, 2, 3, 4, 5, 6, 7], { minLength: 1, maxLength: 4 }),
    starts: fc.integer({ min: 0, max: 13 }),
    order: fc.array(fc.constantFrom('A', 'B', 'C'), { minLength: 1, maxLength: 5 }),
    breaks: fc.array(fc.record({ from: fc.integer({ min: -5, max: 45 }), long: fc.integer({ min: 0, max: 20 }) }), {
      maxLength: 3,
    }),
  });
  const check = (what: (of: ReturnType<typeof queue>, client: Client, order: readonly string[]) => void) =>
    fc.assert(
      fc.property(chosen, (one) => {
        const monday = dayOfIso('2027-01-04') ?? expect.fail('no day');
        const breaks = one.breaks.map(
          ({ from, long }): Break => ({
            from: addDays(monday, from),
            until: addDays(monday, from + long),
            cause: 'away',
            place: PLACE,
          }),
        );
        const client = aClient({ days: one.days, starts: addDays(monday, one.starts), breaks });
        const programme = aProgramme(sessions, {
          rotations: [{ days: one.days.length, order: one.order.map(sessionId) }],
        });
        what(queue(programme, client), client, one.order);
      }),
      { numRuns: 200, seed: 20_261_125 },
    );

  test('keeps the order of the rotation, on training days outside breaks, one a day', () => {
    check((of, client, order) => {
      of.sessions.forEach((session, index) => {
        expect(session.template.id).toBe(order[index % order.length]);
        expect(session.occurrence).toBe(index + 1);
        expect(client.days).toContain(weekdayOf(session.date));
        expect(client.breaks.some(({ from, until }) => session.date >= from && session.date <= until)).toBe(false);
        expect(session.date).toBeGreaterThan(of.sessions[index - 1]?.date ?? client.starts - 1);
      });
    });
  });

  test('crams nothing in: no week has more sessions than days, no training day outside breaks is left unused', () => {
    check((of, client) => {
      const first = of.sessions[0]?.date ?? client.starts;
      const last = first + 7 * 6 - 1;
      const open = Array.from({ length: last - first + 1 }, (_, index) => addDays(first, index)).filter(
        (day) =>
          client.days.includes(weekdayOf(day)) && client.breaks.every(({ from, until }) => day < from || day > until),
      );
      expect(of.sessions.map(({ date }) => date)).toEqual(open);
      expect(of.sessions.length + of.lost).toBe(6 * client.days.length);
    });
  });

  test('begins each week on one weekday, in order, not after its first session', () => {
    check((of) => {
      of.begins.forEach((begins, index) => {
        expect(weekdayOf(begins)).toBe(weekdayOf(of.begins[0] ?? begins));
        expect(begins).toBeGreaterThan(of.begins[index - 1] ?? begins - 1);
        const own = of.sessions.find(({ week }) => week === index + 1);
        if (own !== undefined) expect(own.date - begins).toBeLessThan(7);
        if (own !== undefined) expect(begins).toBeLessThanOrEqual(own.date);
      });
    });
  });
});

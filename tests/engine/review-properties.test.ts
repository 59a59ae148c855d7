/** What holds of every review, whatever came back: it never fails, and the order of what came back decides nothing. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Client, SEEN } from '../../src/model/client.js';
import { addDays, day, dayOfIso, isoOfDay } from '../../src/model/day.js';
import { BODY_PARTS } from '../../src/model/exercise.js';
import type { DoneRow, DoneSession, History } from '../../src/model/history.js';
import { exerciseId, sessionId } from '../../src/model/identity.js';
import { ALARM_SIGNS, type PainReport } from '../../src/model/log.js';
import { NEEDS } from '../../src/model/review.js';
import { PLAIN_NAMES } from '../../src/words/say-figures.js';
import { sayReview, sayReviewLine } from '../../src/words/say-review.js';
import { runs } from '../deep.js';
import { PLACE } from './generate-exercises.js';
import { aCaution, kg, on } from './make-block.js';
import { aMarkedRow, aSessionDone, type MadeSet } from './make-history.js';
import { allDone, reviewOf } from './review-made.js';

const RUNS = runs(40, 2000);
const block = allDone();

const aPain: fc.Arbitrary<PainReport> = fc.record(
  {
    where: fc.constantFrom<PainReport['where']>(...BODY_PARTS, 'elsewhere'),
    degree: fc.integer({ min: 0, max: 10 }),
    side: fc.constantFrom('left' as const, 'right' as const),
    worseNextMorning: fc.boolean(),
    alarm: fc.constantFrom(...ALARM_SIGNS),
  },
  { requiredKeys: ['where', 'degree'] },
);

const aSet: fc.Arbitrary<MadeSet> = fc.record(
  {
    kind: fc.constantFrom('work' as const, 'trial' as const, 'test' as const, 'feeler' as const, 'warm-up' as const),
    done: fc.constantFrom('done' as const, 'easier' as const, 'left out' as const, 'extra' as const),
    side: fc.constantFrom('left' as const, 'right' as const, 'both' as const),
    exercise: fc.constantFrom(...['squat', 'press', 'swing', 'gone'].map(exerciseId)),
    tempo: fc.constantFrom('normal' as const, 'slow lowering' as const),
    asPlanned: fc.boolean(),
    kg: fc.constantFrom(0, 8, 12, 16, 24, 400),
    reps: fc.integer({ min: 0, max: 60 }),
    seconds: fc.integer({ min: 0, max: 600 }),
  },
  { requiredKeys: [] },
);

const aRow: fc.Arbitrary<DoneRow> = fc
  .record({
    exercise: fc.constantFrom('squat', 'press', 'swing', 'gone'),
    sets: fc.array(aSet, { maxLength: 4 }),
    left: fc.option(fc.integer({ min: 0, max: 12 }), { nil: undefined }),
    sides: fc.constantFrom('both' as const, 'each' as const),
    inCircuit: fc.boolean(),
    pain: fc.array(aPain, { maxLength: 2 }),
    unit: fc.constantFrom('reps' as const, 'seconds' as const, 'metres' as const),
    reserve: fc.constantFrom(20, null),
    rung: fc.option(fc.integer({ min: 1, max: 5 }), { nil: undefined }),
  })
  .map(({ exercise, left, unit, reserve, rung, ...row }) =>
    aMarkedRow(exercise, {
      ...row,
      ...(left === undefined ? {} : { left }),
      ...(rung === undefined ? {} : { rung }),
      asked: { unit, reserve },
    }),
  );

const aSession: fc.Arbitrary<DoneSession> = fc
  .record({
    at: fc.integer({ min: -30, max: 90 }),
    block: fc.integer({ min: 1, max: 4 }),
    occurrence: fc.integer({ min: 1, max: 40 }),
    rows: fc.array(aRow, { maxLength: 3 }),
    effort: fc.option(fc.integer({ min: 0, max: 10 })),
    minutes: fc.option(fc.integer({ min: 0, max: 300 })),
    closed: fc.boolean(),
    easy: fc.boolean(),
    pain: fc.array(aPain, { maxLength: 2 }),
    of: fc.constantFrom('A', 'B'),
  })
  .map(({ at, rows, of, ...session }) => {
    return aSessionDone(addDays(on('2027-01-04'), at), rows, { ...session, session: sessionId(of) });
  });

const aHistory: fc.Arbitrary<History> = fc
  .record({
    sessions: fc.uniqueArray(aSession, {
      maxLength: 10,
      selector: ({ block: of, occurrence }) => `${of}/${occurrence}`,
    }),
    issued: fc.boolean(),
    note: fc.string(),
  })
  .map(({ sessions, issued, note }) => ({
    blocks: issued ? block.blocks : [],
    sessions,
    notes: [{ day: on('2027-01-09'), text: note }],
    lastMark: sessions.length === 0 ? null : day(Math.max(...sessions.map((session) => session.day))),
  }));

const theClient: fc.Arbitrary<Partial<Client>> = fc
  .record({
    days: fc.subarray([1, 2, 3, 4, 5, 6, 7] as const),
    blocksBefore: fc.integer({ min: 0, max: 3 }),
    cautions: fc.subarray([aCaution('knee', { degree: 'take care' }), aCaution('neck', { side: 'left' })]),
    bodyMass: fc.option(fc.constant({ mass: kg('70') }), { nil: undefined }),
    seen: fc.subarray([...SEEN]),
    cleared: fc.boolean(),
  })
  .map(({ seen, cleared, bodyMass, ...client }) => ({
    ...client,
    ...(bodyMass === undefined ? {} : { bodyMass }),
    mainBells: [{ pattern: 'squat', mass: kg('16'), place: PLACE }],
    observations: [
      ...seen.map((phrase) => ({
        date: on('2027-01-10'),
        exercise: exerciseId('squat'),
        side: 'left' as const,
        seen: phrase,
        means: { kind: 'phrase' as const, phrase },
        place: PLACE,
      })),
      ...(cleared
        ? [
            {
              date: on('2027-01-20'),
              side: 'both' as const,
              seen: '',
              means: { kind: 'cleared' as const },
              place: PLACE,
            },
          ]
        : []),
    ],
  }));

const aDay = fc.integer({ min: 0, max: 100 }).map((days) => isoOfDay(addDays(on('2026-12-20'), days)));

describe('every review', () => {
  it('is made, whatever came back, and every day and figure of it is one', () => {
    fc.assert(
      fc.property(aHistory, theClient, aDay, (history, client, today) => {
        const review = reviewOf({ history, client, today });
        expect(NEEDS).toContain(review.need);
        for (const { begins, ends } of review.weeks) expect([begins, ends].map(dayOfIso)).not.toContain(undefined);
        for (const load of review.loads) {
          if (load.kind === 'known') expect([load.monotony, load.strain].every(Number.isFinite)).toBe(true);
        }
        for (const { lowest, highest, n } of review.abilities) {
          expect(lowest).toBeLessThanOrEqual(highest);
          expect(n).toBeGreaterThan(0);
        }
        for (const row of review.rows) {
          const { asPlanned, more, less, easier, leftOut, unmarked, sessions } = row;
          expect(asPlanned + more + less + easier + leftOut + unmarked).toBe(sessions);
        }
        for (const { reason } of review.proposals) expect(reason.audience).toBe('coach');
      }),
      { numRuns: RUNS },
    );
  });

  it('is the same in whatever order sessions and notes came', () => {
    fc.assert(
      fc.property(aHistory, theClient, aDay, fc.infiniteStream(fc.nat()), (history, client, today, chance) => {
        const ranked = history.sessions.map((session) => ({ session, rank: chance.next().value }));
        const sessions = ranked.sort((a, b) => a.rank - b.rank).map(({ session }) => session);
        const other = { ...history, sessions, blocks: [...history.blocks].reverse() };
        expect(reviewOf({ history: other, client, today })).toEqual(reviewOf({ history, client, today }));
      }),
      { numRuns: RUNS },
    );
  });

  it('changes nothing that it is given, and comes out the same twice', () => {
    fc.assert(
      fc.property(aHistory, theClient, aDay, (history, client, today) => {
        const before = JSON.stringify([history, client]);
        const twice = [reviewOf({ history, client, today }), reviewOf({ history, client, today })];
        expect(twice[0]).toEqual(twice[1]);
        expect(JSON.stringify([history, client])).toBe(before);
      }),
      { numRuns: 30 },
    );
  });

  it('puts an alarm that is not cleared first, then pain', () => {
    fc.assert(
      fc.property(aHistory, theClient, aDay, (history, client, today) => {
        const review = reviewOf({ history, client, today });
        const open = review.alarms.some(({ cleared }) => !cleared);
        expect(review.need === 'alarm').toBe(open);
        if (open) expect(review.proposals[0]?.reason.inputs[0]).toMatchObject({ name: 'why', value: 'alarm' });
      }),
      { numRuns: RUNS },
    );
  });

  it('can be said in lines of 80 columns, with nothing missing from a sentence', () => {
    const names = { ...PLAIN_NAMES, client: 'Somebody', programme: 'Block' };
    fc.assert(
      fc.property(aHistory, theClient, aDay, (history, client, today) => {
        // What a client wrote is theirs, and stands as they wrote it.
        const review = reviewOf({ history: { ...history, notes: [] }, client, today });
        const lines = [sayReviewLine(review, names, 'en-GB'), ...sayReview(review, names, 'en-GB')];
        for (const line of lines) {
          expect(line).not.toMatch(/undefined|NaN|\[object|\u00a0| [,.;:]|\(\)/);
          expect(line).toBe(line.trimEnd());
          // A word longer than a line is not cut.
          if (!/\S{40}/.test(line)) expect(Array.from(line).length).toBeLessThanOrEqual(80);
        }
      }),
      { numRuns: RUNS },
    );
  });
});

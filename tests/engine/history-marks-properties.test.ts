/** What holds of every block after marks, over made-up clients, kits and ways of doing a block. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import { addDays, type Day } from '../../src/model/day.js';
import { type History, NO_HISTORY } from '../../src/model/history.js';
import type { PainReport } from '../../src/model/log.js';
import type { Plan } from '../../src/model/plan.js';
import { runs } from '../deep.js';
import { generateStudio } from './generate-studio.js';
import {
  aBlock,
  aClient,
  aLibrary,
  anExercise,
  aProgramme,
  aRow,
  aSession,
  aTest,
  bells,
  kg,
  on,
} from './make-block.js';
import { aHistory, alike, aMarkedRow, aSessionDone, doneFrom, type Place } from './make-history.js';

const RUNS = runs(30, 1500);

const press = anExercise('press', { pattern: 'push' });
const programme = aProgramme([aSession('A', aBlock([aRow('press')]))]);
const today = on('2026-12-28');

function planWith(history: History, more: Parameters<typeof aClient>[0] = {}): Plan | null {
  const client = aClient({ kit: bells('8', '10', '12', '14', '16', '18', '20', '22', '24'), ...more });
  return planBlock({ library: aLibrary([press], programme), client, today, edition: 0, history }).value;
}

/** The heaviest load of the work of each week, gates and trials included. */
const heaviest = (plan: Plan | null): readonly number[] =>
  (plan?.weeks ?? []).map(({ sessions }) =>
    Math.max(
      0,
      ...sessions.flatMap(({ groups }) =>
        groups.flatMap(({ kind, items }) =>
          kind === 'straight' ? items.flatMap(({ sets }) => sets.map(({ load }) => load?.grams ?? 0)) : [],
        ),
      ),
    ),
  );

const aDay = fc.record({
  kg: fc.constantFrom(10, 12, 14, 16, 18, 20),
  reps: fc.integer({ min: 2, max: 12 }),
  left: fc.option(fc.integer({ min: 0, max: 6 })),
});
const days = fc.array(aDay, { minLength: 1, maxLength: 4 });

const marksOf = (
  all: readonly { kg: number; reps: number; left: number | null }[],
  from: Day = addDays(today, -1),
): History =>
  aHistory(
    ...all.map(({ kg: load, reps, left }, index) =>
      aSessionDone(
        addDays(from, -3 * (all.length - 1 - index)),
        [aMarkedRow('press', { sets: alike(3, { kg: load, reps }), ...(left === null ? {} : { left }) })],
        { occurrence: index + 1 },
      ),
    ),
  );

const client = { tests: [aTest('press', 10, { load: kg('14'), date: on('2026-10-01') })] };

describe('after marks', () => {
  const saidMore = (all: readonly { kg: number; reps: number; left: number | null }[], more: number) =>
    marksOf(all.map((one) => ({ ...one, left: (one.left ?? 1) + more })));
  const goesOnWith = (history: History): number => planWith(history, client)?.inputs.strands[0]?.start?.load ?? 0;

  it('more left in reserve never lets a row go on with a lighter load', () => {
    fc.assert(
      fc.property(days, fc.integer({ min: 1, max: 3 }), (all, more) => {
        expect(goesOnWith(saidMore(all, more))).toBeGreaterThanOrEqual(goesOnWith(saidMore(all, 0)));
      }),
      { numRuns: RUNS },
    );
  });

  it('nor makes the next session lighter, as far as the reserve said is evidence and no rough guess', () => {
    fc.assert(
      fc.property(days, fc.integer({ min: 1, max: 3 }), (all, more) => {
        fc.pre(all.every(({ reps, left }) => (left ?? 1) + more <= 5 && reps + (left ?? 1) + more <= 12));
        const next = (history: History): number => heaviest(planWith(history, client))[0] ?? 0;
        expect(next(saidMore(all, more))).toBeGreaterThanOrEqual(next(saidMore(all, 0)));
      }),
      { numRuns: RUNS },
    );
  });

  it('pain never makes anything heavier, nor opens a step while it holds', () => {
    const pain = fc.record({
      where: fc.constantFrom<PainReport['where']>('elsewhere', 'shoulder'),
      degree: fc.integer({ min: 0, max: 10 }),
      worseNextMorning: fc.boolean(),
    });
    fc.assert(
      fc.property(days, pain, (all, report) => {
        const marks = marksOf(all);
        const hurt = {
          ...marks,
          sessions: marks.sessions.map((session, index) =>
            index < marks.sessions.length - 1 ? session : { ...session, pain: [report] },
          ),
        };
        const without = heaviest(planWith(marks, client));
        const withPain = planWith(hurt, client);
        if (withPain === null) return true;
        expect(heaviest(withPain).every((load, week) => load <= (without[week] ?? 0))).toBe(true);
        const held = withPain.inputs.strands.flatMap(({ occurrences }) => occurrences.slice(0, 1));
        return held.every((one) => one.held !== undefined);
      }),
      { numRuns: RUNS },
    );
  });

  it('marks older than done-days change nothing', () => {
    fc.assert(
      fc.property(days, (all) => {
        const old = marksOf(all, addDays(today, -43));
        expect(planWith(old, client)).toEqual(planWith(NO_HISTORY, client));
      }),
      { numRuns: RUNS },
    );
  });
});

describe('over made-up studios', () => {
  const SEEDS = Array.from({ length: Math.ceil(RUNS / 6) }, (_, seed) => seed);

  const nextOf = (seed: number, how?: (place: Place) => ReturnType<NonNullable<Parameters<typeof doneFrom>[1]>>) => {
    const { library, client: own, today: day } = generateStudio(seed, 'everything');
    const first = planBlock({ library, client: own, today: day, edition: 0 });
    if (first.value === null) return null;
    const history = doneFrom(first.value, how, own.blocksBefore + 1);
    const last = history.lastMark ?? day;
    const next = { ...own, starts: addDays(last, 3), blocksBefore: own.blocksBefore + 1, breaks: [] };
    const input = { library, client: next, today: addDays(last, 1), edition: 0 };
    return { first: first.value, input, history };
  };

  it('without a mark a plan is the same, byte by byte', () => {
    for (const seed of SEEDS) {
      const { library, client: own, today: day } = generateStudio(seed, 'everything');
      const plain = planBlock({ library, client: own, today: day, edition: 0 });
      const none = planBlock({ library, client: own, today: day, edition: 0, history: NO_HISTORY });
      expect(JSON.stringify(none)).toBe(JSON.stringify(plain));
    }
  });

  it('ticks alone never raise a capacity beyond what the plan itself predicted', () => {
    let compared = 0;
    for (const seed of SEEDS) {
      const made = nextOf(seed);
      if (made === null) continue;
      const next = planBlock({ ...made.input, history: made.history }).value;
      for (const { exercise, side, k, test } of next?.inputs.capacities ?? []) {
        if (test.marked !== true) continue;
        // The greatest K of any week of the block before, in any row that stood on the exercise.
        const predicted = made.first.weeks.flatMap(({ sessions }) =>
          sessions.flatMap(({ groups }) =>
            groups.flatMap(({ items }) =>
              items.flatMap((item) =>
                item.exercise === exercise && item.capacity !== null ? [item.capacity.grams] : [],
              ),
            ),
          ),
        );
        expect([exercise, side, Math.floor(k / 300) <= Math.max(0, ...predicted)]).toEqual([exercise, side, true]);
        compared += 1;
      }
    }
    expect(compared).toBeGreaterThan(0);
  });

  it('a block after a block is planned, and no set of it leaves less than its floor', () => {
    let compared = 0;
    for (const seed of SEEDS) {
      const made = nextOf(seed, ({ item }) => ({ reserve: [{ side: 'both', reserve: item.asked.reserve ?? 20 }] }));
      if (made === null) continue;
      const { value } = planBlock({ ...made.input, history: made.history });
      for (const { week, row, session, reserve } of worked(value)) {
        const strand = value?.inputs.strands.find(({ id }) => id === `${session}/${row}`);
        if (strand === undefined || strand.capacity === null) continue;
        const floors = strand.occurrences.filter((one) => one.week === week).map(({ floor }) => floor);
        expect([strand.id, week, reserve >= Math.min(...floors)]).toEqual([strand.id, week, true]);
        compared += 1;
      }
    }
    expect(compared).toBeGreaterThan(0);
  });

  /** Every set of work of which a reserve is predicted. */
  const worked = (plan: Plan | null) =>
    (plan?.weeks ?? []).flatMap(({ number, sessions }) =>
      sessions.flatMap(({ id, groups }) =>
        groups.flatMap(({ items }) =>
          items.flatMap(({ row, sets }) =>
            sets.flatMap(({ kind, reserve }) =>
              kind === 'work' && reserve !== undefined ? [{ week: number, session: id, row, reserve }] : [],
            ),
          ),
        ),
      ),
    );
});

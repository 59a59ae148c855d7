/** Blocks of two to six weeks: floors, easier weeks, tests at both ends and dates keep within the weeks there are. */
import { describe, expect, test } from 'vitest';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import { planBlock } from '../../src/engine/plan-block.js';
import type { Client } from '../../src/model/client.js';
import { rowId, sessionId } from '../../src/model/identity.js';
import type { Plan, PlanSet } from '../../src/model/plan.js';
import type { CurveWeek, Programme } from '../../src/model/programme.js';
import type { Library } from '../../src/model/studio.js';
import { generateStudio } from './generate-studio.js';
import { aBlock, aClient, aLibrary, anExercise, aProgramme, aRow, aSession, aTest, kg, on } from './make-block.js';

const today = on('2026-12-20');
const tests = [aTest('squat', 10, { load: kg('16') })];

const workWeeks = (weeks: number): CurveWeek[] =>
  Array.from({ length: weeks }, () => ({ reserve: 20, share: 1000, easy: false }));

const libraryOf = (curve: readonly CurveWeek[], programme: Partial<Programme> = {}): Library => {
  const sessions = ['A', 'B'].map((id) => aSession(id, aBlock([aRow('squat')])));
  return aLibrary([anExercise('squat')], aProgramme(sessions, { curve, ...programme }));
};

function planOf(library: Library, client: Partial<Client> = {}): Plan {
  const { value, problems } = planBlock({
    library,
    client: aClient({ tests, days: [1, 4], ...client }),
    today,
    edition: 0,
  });
  return value ?? expect.fail(problems.map(({ code }) => code).join());
}

const setsOf = (plan: Plan, week: number): readonly PlanSet[] =>
  (plan.weeks[week - 1]?.sessions ?? []).flatMap(({ groups }) =>
    groups.flatMap(({ items }) => items.flatMap(({ sets }) => sets)),
  );
const kindsOf = (plan: Plan, week: number): readonly string[] => setsOf(plan, week).map(({ kind }) => kind);

describe.each([2, 3, 4, 5, 6])('a block of %i weeks', (weeks) => {
  const library = libraryOf(workWeeks(weeks));
  const plan = planOf(library);

  test('has so many weeks, each with its sessions, and ends with the last of them', () => {
    expect(plan.weeks.map(({ number }) => number)).toEqual(Array.from({ length: weeks }, (_, index) => index + 1));
    expect(plan.weeks.map(({ sessions }) => sessions.length)).toEqual(plan.weeks.map(() => 2));
    const last = plan.weeks.at(-1)?.sessions.at(-1);
    expect(last?.date).toBe(['2027-01-14', '2027-01-21', '2027-01-28', '2027-02-04', '2027-02-11'][weeks - 2]);
  });

  test('is as many columns in the booklet, a head for each', () => {
    const booklet = composeBooklet({ library, client: aClient({ tests, days: [1, 4] }), plan });
    const sessions = booklet.parts.filter((part) => part.kind === 'session');
    expect(sessions.length).toBeGreaterThan(0);
    for (const session of sessions) {
      expect(session.weeks).toHaveLength(weeks);
      for (const row of session.rows) expect(row.cells).toHaveLength(weeks);
    }
    const cover = booklet.parts.find((part) => part.kind === 'cover');
    expect(cover?.weeks).toHaveLength(weeks);
    const said = ['two', 'three', 'four', 'five', 'six'][weeks - 2] ?? '';
    expect(`${booklet.title} ${cover?.title}`.toLowerCase()).toMatch(new RegExp(`\\b(${said}|${weeks}) weeks\\b`));
    if (weeks !== 6) expect(JSON.stringify(booklet)).not.toMatch(/six weeks|6 weeks/i);
  });
});

test('of made-up studios cut short, nothing planned or told is of a week that is not there', () => {
  let planned = 0;
  for (let seed = 0; seed < 200; seed += 1) {
    const { library, client, today: day } = generateStudio(seed, 'everything');
    const weeks = 2 + (seed % 4);
    const programmes = library.programmes.map((one) => ({ ...one, curve: one.curve.slice(0, weeks) }));
    const { value } = planBlock({ library: { ...library, programmes }, client, today: day, edition: 0 });
    if (value === null) continue;
    planned += 1;
    const { strands, floors } = value.inputs;
    const said = [
      ...value.weeks.map(({ number }) => number),
      ...value.findings.flatMap((finding) => finding.weeks),
      ...strands.flatMap(({ occurrences }) => occurrences.map(({ week }) => week)),
      ...floors.flatMap((floor) => floor.weeks),
    ];
    expect(Math.max(...said), `seed ${seed}`).toBeLessThanOrEqual(weeks);
    expect(value.weeks.length, `seed ${seed}`).toBe(weeks);
  }
  expect(planned).toBeGreaterThan(20);
});

describe('two weeks', () => {
  const testedIn = (library: Library, client: Partial<Client> = {}): readonly string[] =>
    planOf(library, client).weeks.flatMap(({ number, sessions }) =>
      sessions.flatMap(({ id, groups }) => {
        const kinds = groups.flatMap(({ items }) => items.flatMap(({ sets }) => sets.map(({ kind }) => kind)));
        return kinds.includes('test') ? [`${number}${id}`] : [];
      }),
    );

  test('what stands in two sessions a week is tested in the first of them, at the start and at the end, and not between', () => {
    const tested = { tests: [rowId('squat')] };
    expect(testedIn(libraryOf(workWeeks(2), tested))).toEqual(['1A', '2A']);
    expect(testedIn(libraryOf(workWeeks(3), tested))).toEqual(['1A', '3A']);
  });

  test('a row that stands in one session alone is tested once, not twice over', () => {
    const turns = { tests: [rowId('squat')], rotations: [{ days: 1, order: [sessionId('A'), sessionId('B')] }] };
    const plan = planOf(libraryOf(workWeeks(2), turns), { days: [1] });
    expect(plan.weeks.map(({ sessions }) => sessions.map(({ id }) => id))).toEqual([['A'], ['B']]);
    for (const week of [1, 2]) expect(kindsOf(plan, week).filter((kind) => kind === 'test').length).toBeLessThan(2);
  });

  test('the floor of a first block holds for both, and for no week that is not there', () => {
    const plan = planOf(libraryOf(workWeeks(2)), { blocksBefore: 0 });
    const first = plan.inputs.floors.find(({ rule }) => rule === 'floor-first-weeks');
    expect(first?.weeks).toEqual([1, 2]);
    for (const week of [1, 2]) {
      for (const { reserve, kind } of setsOf(plan, week)) {
        if (kind === 'work') expect(reserve).toBeGreaterThanOrEqual(first?.reserve ?? 99);
      }
    }
  });

  test('the second may be the easier one', () => {
    const [work, easy] = [
      { reserve: 20, share: 1000, easy: false },
      { reserve: 40, share: 670, easy: true },
    ];
    const plan = planOf(libraryOf([work, easy]));
    expect(plan.weeks.map(({ deload }) => deload)).toEqual([false, true]);
    expect(kindsOf(plan, 2).filter((kind) => kind === 'work').length).toBeLessThan(
      kindsOf(plan, 1).filter((kind) => kind === 'work').length,
    );
  });

  test('a clearance that ends inside it stops it there', () => {
    const clearance = { by: 'Doctor', date: on('2026-12-01'), until: on('2027-01-12'), for: 'vigorous' as const };
    const screening = { date: on('2026-12-01'), regularExercise: 'no', knownDisease: 'yes', symptoms: 'no' } as const;
    const place = { file: 'clients/somebody/client.md', line: 1, column: 1, length: 1 };
    const plan = planOf(libraryOf(workWeeks(2)), {
      screening: { ...screening, place },
      clearance,
    });
    expect(plan.stops?.after).toBe('2027-01-12');
    expect(plan.weeks.flatMap(({ sessions }) => sessions.map(({ date }) => date))).toEqual([
      '2027-01-04',
      '2027-01-07',
      '2027-01-11',
    ]);
  });
});

/** The first weeks after a break: by length and cause, what is held, how many sets, what an old test still says. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import type { Break, Client } from '../../src/model/client.js';
import type { Item, Plan } from '../../src/model/plan.js';
import { sayReason } from '../../src/words/say-reason.js';
import { speechOf } from '../../src/words/speech.js';
import { PLACE } from './generate-exercises.js';
import {
  aBlock,
  aClient,
  aLibrary,
  aLink,
  anExercise,
  aProgramme,
  aRow,
  aSession,
  aTest,
  bells,
  bodyweight,
  kg,
  on,
  oneSession,
} from './make-block.js';

const today = on('2026-12-20');
// Sessions on Mondays, 4 January to 8 February 2027, unless a break moves them.
const tests = [aTest('squat', 9, { load: kg('16'), date: on('2026-09-01') })];
const away = (from: string, until: string, cause: Break['cause'] = 'away'): Break => {
  return { from: on(from), until: on(until), cause, place: PLACE };
};
const programme = (sets: number, reps = { min: 6, max: 10 }) =>
  aProgramme([aSession('A', aBlock([aRow('squat', { dose: { kind: 'sets', sets, reps, eachSide: false } })]))]);
const made = (breaks: readonly Break[], client: Partial<Client> = {}, of = programme(4)) =>
  planBlock({
    library: aLibrary([anExercise('squat')], of),
    client: aClient({ tests, breaks, ...client }),
    today,
    edition: 0,
  });
const planOf = (...given: Parameters<typeof made>): Plan => {
  const { value, problems } = made(...given);
  if (value === null) throw new Error(JSON.stringify(problems));
  return value;
};
const strandOf = (plan: Plan) => {
  const [strand] = plan.inputs.strands;
  if (strand === undefined) throw new Error('nothing planned');
  return strand;
};
const occurrences = (...given: Parameters<typeof made>) => strandOf(planOf(...given)).occurrences;
const floors = (...given: Parameters<typeof made>) => occurrences(...given).map(({ floor }) => floor);
const sets = (...given: Parameters<typeof made>) => occurrences(...given).map((each) => each.sets);
const held = (...given: Parameters<typeof made>) => occurrences(...given).map((each) => each.held?.why ?? '');
const isWork = (kind: string): boolean => kind === 'straight';
const firstItem = (plan: Plan): Item => {
  const items = plan.weeks.flatMap(({ sessions }) =>
    sessions.flatMap(({ groups }) => groups.filter(({ kind }) => isWork(kind)).flatMap((group) => group.items)),
  );
  const [item] = items;
  if (item === undefined) throw new Error('nothing planned');
  return item;
};
const rulesTold = (plan: Plan) => plan.findings.map(({ rule }) => rule);

describe('how long a break must be, by its cause', () => {
  test('away: break-away, 14 days; shorter it changes nothing (missed-session), and both are told', () => {
    expect(floors([away('2026-12-20', '2027-01-02')])).toEqual([40, 40, 20, 20, 20, 20]);
    expect(floors([away('2026-12-21', '2027-01-02')])).toEqual([20, 20, 20, 20, 20, 20]);
    expect(occurrences([away('2026-12-21', '2027-01-02')])).toEqual(occurrences([]));
    expect(rulesTold(planOf([away('2026-12-20', '2027-01-02')]))).toContain('break-away');
    expect(rulesTold(planOf([away('2026-12-21', '2027-01-02')]))).toContain('missed-session');
  });

  test('ill: break-ill, 7 days; shorter holds the work for a week (break-held-ill)', () => {
    expect(floors([away('2026-12-27', '2027-01-02', 'ill')])).toEqual([40, 40, 20, 20, 20, 20]);
    expect(held([away('2026-12-27', '2027-01-02', 'ill')])).toEqual(['ill', 'ill', '', '', '', '']);
    expect(floors([away('2026-12-28', '2027-01-02', 'ill')])).toEqual([20, 20, 20, 20, 20, 20]);
    expect(held([away('2026-12-28', '2027-01-02', 'ill')])).toEqual(['ill', '', '', '', '', '']);
    expect(rulesTold(planOf([away('2026-12-27', '2027-01-02', 'ill')]))).toContain('break-ill');
    expect(rulesTold(planOf([away('2026-12-28', '2027-01-02', 'ill')]))).toContain('break-held-ill');
  });

  test('hurt: break-hurt, any day', () => {
    expect(floors([away('2027-01-02', '2027-01-02', 'hurt')])).toEqual([40, 40, 20, 20, 20, 20]);
    expect(rulesTold(planOf([away('2027-01-02', '2027-01-02', 'hurt')]))).toContain('break-hurt');
  });
});

describe('the gentle weeks', () => {
  const long = [away('2026-12-15', '2027-01-02')];

  test('floor (break-floor, break-floor-weeks), nothing harder (break-held), no gain in the block (gain-return)', () => {
    expect(floors(long)).toEqual([40, 40, 20, 20, 20, 20]);
    expect(held(long)).toEqual(['away', 'away', '', '', '', '']);
    expect(strandOf(planOf(long)).gain).toBe(0);
    expect(strandOf(planOf([])).gain).toBe(50);
    expect(planOf(long).inputs.floors).toContainEqual({ rule: 'break-floor', reserve: 40, weeks: [1, 2] });
  });

  test('sets cut by 50, 30, 20 and 10 per cent (return-cut-first to return-cut-fourth)', () => {
    const ten = programme(10, { min: 1, max: 1 });
    expect(sets([], { minutes: 120 }, ten)).toEqual([10, 10, 10, 10, 10, 7]);
    expect(sets(long, { minutes: 120 }, ten)).toEqual([5, 7, 8, 9, 10, 7]);
    expect(sets(long)).toEqual([2, 3, 3, 4, 4, 3]);
    expect(sets(long, {}, programme(1))).toEqual([1, 1, 1, 1, 1, 1]);
  });

  test('only from two weeks without training on: a short illness or injury keeps its sets', () => {
    expect(sets([away('2027-01-01', '2027-01-02', 'hurt')])).toEqual([4, 4, 4, 4, 4, 3]);
    expect(sets([away('2026-12-20', '2027-01-02', 'hurt')])).toEqual([2, 3, 3, 4, 4, 3]);
  });

  test('a circuit keeps one number of rounds', () => {
    const dose = { kind: 'sets', sets: 1, reps: { min: 6, max: 10 }, eachSide: false } as const;
    const circuit = aBlock([aRow('squat', { dose }), aRow('bridge', { dose })], { kind: 'circuit', rounds: 4 });
    const library = aLibrary(
      [anExercise('squat'), anExercise('bridge', { ...bodyweight, pattern: 'push' })],
      aProgramme([aSession('A', circuit)]),
    );
    const client = aClient({ tests: [...tests, aTest('bridge', 12)], breaks: long });
    const { value } = planBlock({ library, client, today, edition: 0 });
    const rounds = value?.inputs.strands.map((strand) => strand.occurrences.map((each) => each.sets));
    expect(rounds).toEqual([
      [2, 3, 3, 4, 4, 3],
      [2, 3, 3, 4, 4, 3],
    ]);
  });

  test('in a planned break they begin with the first session after it, and nothing is planned in it', () => {
    const plan = planOf([away('2027-01-11', '2027-01-24')]);
    const dates = plan.weeks.flatMap(({ sessions }) => sessions.map(({ date }) => date));
    expect(dates.filter((date) => date >= '2027-01-11' && date <= '2027-01-24')).toEqual([]);
    const back = strandOf(plan).occurrences.filter((each) => each.held?.why === 'away');
    expect(back).toHaveLength(2);
    expect(back.every(({ floor }) => floor === 40)).toBe(true);
    expect(strandOf(plan).occurrences[0]?.held).toBeUndefined();
  });

  test('a break that is long over counts no more (break-counts), nor one trained after', () => {
    expect(floors([away('2026-11-01', '2026-12-07')], { tests: [] })[0]).toBe(40);
    expect(floors([away('2026-11-01', '2026-12-06')], { tests: [] })[0]).toBe(20);
    const seen = [aTest('squat', 10, { load: kg('16'), date: on('2026-12-14') })];
    // Tested on 14 December: 4 January is the fourth week back, and only its sets are fewer.
    expect(floors([away('2026-11-01', '2026-12-10')], { tests: seen })[0]).toBe(20);
    expect(sets([away('2026-11-01', '2026-12-10')], { tests: seen }, programme(10, { min: 1, max: 1 }))[0]).toBe(9);
  });

  test('of two breaks the more careful one', () => {
    const two = [away('2026-12-01', '2026-12-19'), away('2027-01-01', '2027-01-02', 'hurt')];
    expect(sets(two)).toEqual([2, 3, 3, 4, 4, 3]);
    expect(held(two).slice(0, 3)).toEqual(['hurt', 'hurt', '']);
  });

  test('more sessions than are good for the week are told (return-days-first, return-days-second)', () => {
    const days = { days: [1, 2, 3, 4, 5] as const };
    const five = aProgramme(['A', 'B', 'C', 'D', 'E'].map((id) => aSession(id, aBlock([aRow('squat')]))));
    const told = planOf(long, days, five).findings.filter(({ rule }) => rule.startsWith('return-days'));
    expect(told.map(({ rule, weeks }) => [rule, weeks])).toEqual([
      ['return-days-first', [1]],
      ['return-days-second', [2]],
    ]);
    expect(rulesTold(planOf(long)).filter((rule) => rule.startsWith('return-days'))).toEqual([]);
  });
});

describe.each(['return-rest-first'])('conditioning by work and pause (%s)', () => {
  const row = (rest: number) => {
    const dose = { kind: 'timed', sets: 6, seconds: { min: 20, max: 30 }, eachSide: false } as const;
    return aProgramme([aSession('A', aBlock([aRow('squat', { dose, restSeconds: rest })]))]);
  };
  const march = [anExercise('squat', { ...bodyweight, way: 'conditioning' })];
  const rests = (breaks: readonly Break[], rest: number) => {
    const library = aLibrary(march, row(rest));
    const { value } = planBlock({ library, client: aClient({ breaks }), today, edition: 0 });
    const sessions = (value?.weeks ?? []).flatMap((week) => week.sessions);
    const items = sessions.map(({ groups }) => groups.find(({ kind }) => isWork(kind))?.items[0]?.restSeconds);
    return { items, minutes: sessions.map(({ minutes }) => minutes) };
  };

  test('rests four and three times its work in the first weeks (return-rest-first, return-rest-second)', () => {
    const back = rests([away('2026-12-15', '2027-01-02')], 30);
    expect(back.items).toEqual([120, 90, 30, 30, 30, 30]);
    expect(rests([away('2026-12-15', '2027-01-02')], 100).items).toEqual([120, 100, 100, 100, 100, 100]);
    expect(rests([], 30).items).toEqual([30, 30, 30, 30, 30, 30]);
    // Three rounds of six are left of it, and the longer rests count in the minutes.
    expect(back.minutes[0] ?? 0).toBeGreaterThan(rests([away('2026-12-15', '2027-01-02')], 20).minutes[2] ?? 99);
  });
});

test('a long break inside the block: the coach is told to test again', () => {
  const told = (from: string, until: string) =>
    planOf([away(from, until)])
      .findings.filter(({ rule }) => rule === 'break-away')
      .flatMap(({ reason }) => reason.inputs.filter(({ name }) => name === 'test again').map(({ value }) => value));
  expect(told('2027-01-12', '2027-01-31')).toEqual([]);
  expect(told('2027-01-12', '2027-02-01')).toEqual(['2027-02-08']);
});

describe('what a test from before a break still says', () => {
  const start = (breaks: readonly Break[], client: Partial<Client> = {}) => {
    const strand = strandOf(planOf(breaks, client));
    return [strand.start?.load ?? null, strand.capacity?.weak ?? null];
  };

  test('whole, then one load lighter and weak (strength-kept, return-lighter), then nothing (strength-unknown)', () => {
    expect(start([away('2026-12-14', '2027-01-02')])).toEqual([16_000, false]);
    expect(start([away('2026-12-13', '2027-01-02')])).toEqual([12_000, true]);
    expect(start([away('2026-11-30', '2027-01-02')])).toEqual([12_000, true]);
    expect(start([away('2026-11-29', '2027-01-02')])).toEqual([null, null]);
    expect(firstItem(planOf([away('2026-11-29', '2027-01-02')])).sets[0]?.kind).toBe('feeler');
  });

  test('sooner for older clients (strength-kept-older)', () => {
    const older = { birthYear: 1955 };
    expect(start([away('2026-12-20', '2027-01-02')], older)).toEqual([12_000, true]);
    expect(start([away('2026-12-21', '2027-01-02')], older)).toEqual([16_000, false]);
  });

  test('a test after it is taken whole, and a break inside the block changes no start', () => {
    const after = [aTest('squat', 9, { load: kg('16'), date: on('2026-12-14') })];
    expect(start([away('2026-10-01', '2026-12-13')], { tests: after })).toEqual([16_000, false]);
    expect(start([away('2027-01-12', '2027-03-01')])).toEqual([16_000, false]);
  });

  test('with no lighter load it stays, weakly', () => {
    expect(start([away('2026-12-13', '2027-01-02')], { kit: bells('16') })).toEqual([16_000, true]);
  });

  const told = (client: Partial<Client>, breaks: readonly Break[] = [away('2026-12-13', '2027-01-02')]) =>
    firstItem(planOf(breaks, client))
      .reasons.filter(({ rule }) => /^(strength-kept|strength-kept-older|return-lighter|pregnancy-test)$/.test(rule))
      .map((reason) => sayReason(reason, reason.audience, speechOf('en-GB')).replaceAll('\u00a0', ' '));

  test('lighter is said only where it begins lighter (return-lighter), to the client and to the coach', () => {
    expect(told({})).toEqual([
      'You have been away a while, so it starts one load lighter.',
      'Tested before a break of 21 days: taken as weak, and one load lighter.',
    ]);
    expect(told({ kit: bells('16') })).toEqual([
      'You have been away a while: it starts from your last test, no further yet.',
      'Tested before a break of 21 days: taken as weak.',
    ]);
    const older = told({ kit: bells('16'), birthYear: 1955 });
    expect(older.join(' ')).toContain('no further yet');
    expect(older.join(' ')).not.toContain('lighter');
    expect(told({ kit: bells('12', '16'), birthYear: 1955 }).join(' ')).toMatch(/one load lighter.*one load lighter/);
  });

  test('and of a pregnancy nobody is said to have been away (pregnancy-test)', () => {
    const health: Client['health'] = {
      ...{ medicines: [], conditions: [], falls: 0 },
      pregnancy: { due: on('2027-06-01'), conditions: [], place: PLACE },
    };
    const before = { health, tests: [aTest('squat', 9, { load: kg('16'), date: on('2026-08-24') })] };
    expect(told(before, [])).toEqual([
      'Tested before your pregnancy: it starts one load lighter.',
      'Tested before the pregnancy: taken as weak, and one load lighter.',
    ]);
    expect(told({ ...before, kit: bells('16') }, [])).toEqual([
      'Tested before your pregnancy: it starts from there, no further yet.',
      'Tested before the pregnancy: taken as weak.',
    ]);
  });
});

describe.each(['break-joined'])('breaks end to end (%s)', () => {
  const ill = away('2026-11-17', '2026-12-05', 'ill');
  const startOf = (breaks: readonly Break[]) => strandOf(planOf(breaks)).start;
  const english = speechOf('en-GB');

  test('are one for what a test still says, when they touch, overlap or have a day between; two days part them', () => {
    for (const from of ['2026-12-01', '2026-12-06', '2026-12-07']) {
      expect(startOf([ill, away(from, '2026-12-31')])).toBeNull();
    }
    expect(startOf([ill, away('2026-12-08', '2026-12-31')])).not.toBeNull();
  });

  test('two short ones make gentle weeks together', () => {
    const first = away('2026-12-20', '2026-12-26');
    expect(floors([first, away('2026-12-27', '2027-01-02')])).toEqual([40, 40, 20, 20, 20, 20]);
    expect(floors([first, away('2026-12-29', '2027-01-02')])).toEqual([20, 20, 20, 20, 20, 20]);
  });

  test('each cause is told with its own days and those of all, and the words of the illness stay', () => {
    const plan = planOf([ill, away('2026-12-06', '2026-12-31')]);
    const told = plan.findings
      .filter(({ rule }) => rule === 'break-ill' || rule === 'break-away')
      .map(({ reason }) => sayReason(reason, 'coach', english).replaceAll('\u00a0', ' '));
    expect(told[0]).toContain('Ill for 19 days (45 days off in all)');
    expect(told[0]).toContain('a doctor says when');
    expect(told[1]).toContain('Away for 26 days (45 days off in all)');
    const client = firstItem(plan).reasons.filter(
      ({ rule, audience }) => rule === 'break-held' && audience === 'client',
    );
    expect(client.map((reason) => sayReason(reason, 'client', english)).join()).toContain('See your doctor');
  });
});

describe.each(['pregnancy-test'])('a birth or a pregnancy since the test (%s)', () => {
  const begun = (health: Client['health'], tested: string) => {
    const all = { medicines: [], conditions: [], falls: 0, ...health };
    const plan = planOf([], { health: all, tests: [aTest('squat', 9, { load: kg('16'), date: on(tested) })] });
    const [strand] = plan.inputs.strands;
    return { load: strand?.start?.load ?? null, weak: strand?.capacity?.weak ?? null, item: firstItem(plan) };
  };
  const birth = { birth: { date: on('2026-11-24'), by: 'vaginal', checked: on('2026-12-19'), place: PLACE } } as const;
  const pregnancy = { pregnancy: { due: on('2027-06-01'), conditions: [], place: PLACE } };

  test('before a birth it says nothing: a feeler set (birth-test)', () => {
    const before = begun(birth, '2026-11-16');
    expect(before.load).toBeNull();
    expect(before.item.sets[0]?.kind).toBe('feeler');
    expect(before.item.reasons.map(({ rule }) => rule)).toContain('birth-test');
    expect(begun(birth, '2026-12-18').load).toBe(16_000);
  });

  test('before a pregnancy it is weak, and one load lighter (pregnancy-test)', () => {
    expect(begun(pregnancy, '2026-08-24')).toMatchObject({ load: 12_000, weak: true });
    expect(begun(pregnancy, '2026-08-25')).toMatchObject({ load: 16_000, weak: false });
  });
});

describe('what is read', () => {
  const english = speechOf('en-GB');
  const client = (cause: Break['cause']) => {
    const item = firstItem(planOf([away('2026-12-20', '2027-01-02', cause)]));
    return item.reasons
      .filter(({ rule, audience }) => rule === 'break-held' && audience === 'client')
      .map((reason) => sayReason(reason, 'client', english));
  };

  test('ill defers to a doctor, hurt to a doctor or physiotherapist', () => {
    expect(client('away')).toEqual(['You have been away, so this is gentle on purpose.']);
    expect(client('ill')[0]).toContain('See your doctor before you train.');
    expect(client('ill')[0]).toMatch(/feverish.*chest/);
    expect(client('hurt')[0]).toContain('ask your doctor or physiotherapist');
  });

  test('the coach reads the figures', () => {
    const item = firstItem(planOf([away('2026-12-20', '2027-01-02')]));
    const coach = item.reasons.filter(({ audience }) => audience === 'coach');
    const rules = coach.map(({ rule }) => String(rule));
    expect(rules).toEqual(expect.arrayContaining(['break-held', 'return-cut-first', 'return-volume', 'gain-return']));
    const cut = coach.find(({ rule }) => rule === 'return-cut-first');
    expect(cut === undefined ? '' : sayReason(cut, 'coach', english).replaceAll('\u00a0', ' ')).toContain('50 %');
  });
});

describe('whatever the breaks', () => {
  const aBreak = fc
    .record({
      start: fc.integer({ min: -60, max: 40 }),
      days: fc.integer({ min: 1, max: 45 }),
      cause: fc.constantFrom('ill' as const, 'away' as const, 'hurt' as const),
    })
    .map(({ start, days, cause }): Break => {
      const from = on(new Date(Date.UTC(2027, 0, 4 + start)).toISOString().slice(0, 10));
      const until = on(new Date(Date.UTC(2027, 0, 3 + start + days)).toISOString().slice(0, 10));
      return { from, until, cause, place: PLACE };
    });

  test('nothing gets harder for them: no floor lower, no set more, no gain', () => {
    const plain = occurrences([]);
    fc.assert(
      fc.property(fc.array(aBreak, { maxLength: 3 }), (breaks) => {
        const { value } = made(breaks);
        if (value === null) return;
        const strand = value.inputs.strands[0];
        for (const each of strand?.occurrences ?? []) {
          const before = plain.find(({ week }) => week === each.week);
          expect(each.floor).toBeGreaterThanOrEqual(20);
          expect(each.sets).toBeLessThanOrEqual(Math.max(before?.sets ?? 4, 4));
        }
        for (const { date } of value.weeks.flatMap(({ sessions }) => sessions)) {
          for (const { from, until } of breaks) expect(on(date) < from || on(date) > until).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });
});

test('a version refused is not opened by a break', () => {
  const exercises = [anExercise('squat', { signOff: true, easier: [aLink('box')] }), anExercise('box')];
  const client = aClient({ tests, breaks: [away('2026-12-01', '2027-01-02')] });
  const { value } = planBlock({ library: aLibrary(exercises, oneSession('squat')), client, today, edition: 0 });
  expect(value === null ? null : firstItem(value).exercise).toBe('box');
});

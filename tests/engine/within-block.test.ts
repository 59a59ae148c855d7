/** A block planned again in the middle: what was done stays, the rest goes on from there. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type BlockInput, planBlock } from '../../src/engine/plan-block.js';
import type { Break, Client } from '../../src/model/client.js';
import { addDays, type Day, dayOfIso, isoOfDay, type Weekday, weekdayOf } from '../../src/model/day.js';
import type { LogEvent } from '../../src/model/log.js';
import type { Plan } from '../../src/model/plan.js';
import { gatherHistory } from '../../src/session/gather-history.js';
import { sayPlan } from '../../src/words/say-plan.js';
import { auditPlan } from '../oracle/audit.js';
import { aLog, anEdition, doAsPlanned, keysOf, sessionAt } from '../session/make-marks.js';
import { PLACE } from './generate-exercises.js';
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
  bodyweight,
  kg,
  on,
} from './make-block.js';

const days: readonly Weekday[] = [1, 4];
const carry = anExercise('carry', { way: 'carry', pattern: 'carry' });
const exercises = [anExercise('squat'), anExercise('row', { ...bodyweight, pattern: 'pull', sides: 'each' }), carry];
const rows = [
  aRow('squat'),
  aRow('row'),
  aRow('carry', { dose: { kind: 'distance', sets: 2, metres: { min: 20, max: 40 }, eachSide: false } }),
];
const programme = aProgramme([aSession('A', aBlock(rows)), aSession('B', aBlock([aRow('squat')]))]);
const library = aLibrary(exercises, programme);
const someone = (more: Partial<Client> = {}): Client =>
  aClient({ days, tests: [aTest('squat', 10, { load: kg('16') }), aTest('row', 12)], ...more });

const plan = (today: string, input: Partial<BlockInput> = {}) =>
  planBlock({ library, client: someone(), today: on(today), edition: 2, ...input });
const first = sayPlan(
  planBlock({ library, client: someone(), today: on('2026-12-20'), edition: 1 }).value ?? expect.fail('no plan'),
);
const historyOf = (...events: readonly (readonly LogEvent[])[]) => {
  const { value, problems } = gatherHistory([anEdition(first, 1)], [aLog(events.flat())]);
  expect(problems).toEqual([]);
  return value;
};
/** Planned again on a day, with so many sessions done as planned unless said. */
const again = (
  today: string,
  done: readonly (number | readonly LogEvent[])[],
  input: Partial<BlockInput> = {},
): Plan => {
  const history = historyOf(...done.map((one) => (typeof one === 'number' ? doAsPlanned(first, one) : one)));
  const { value, problems } = plan(today, { history, ...input });
  expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
  return value ?? expect.fail('withheld');
};
const sessionsOf = ({ weeks }: Plan) =>
  weeks.flatMap(({ number, sessions }) => sessions.map((session) => ({ ...session, week: number })));
/** `3 A 01-11 2`: place in the queue, session, day, week of the curve. */
const said = (of: Plan) =>
  sessionsOf(of).map(({ occurrence, id, date, week }) => `${occurrence} ${id} ${date.slice(5)} ${week}`);
const letters = (of: unknown) => JSON.stringify(of);
const pause = (from: string, until: string): Break => ({
  from: on(from),
  until: on(until),
  cause: 'away',
  place: PLACE,
});

describe('what was done', () => {
  test('stays letter for letter; the rest keeps its places, weeks and keys', () => {
    const second = sayPlan(again('2027-01-12', [1, 2, 3]), 'en-GB');
    for (const occurrence of [1, 2, 3]) {
      expect(letters(sessionAt(second, occurrence))).toBe(letters(sessionAt(first, occurrence)));
    }
    expect(said(second)).toEqual(said(first));
    const keys = (of: Plan) => sessionsOf(of).map((session) => keysOf(session).filter((key) => key.includes('/work/')));
    expect(keys(second).map((own) => own[0])).toEqual(keys(first).map((own) => own[0]));
    expect(second.weeks.map(({ begins, deload }) => [begins, deload])).toEqual(
      first.weeks.map(({ begins, deload }) => [begins, deload]),
    );
    expect(second.block).toBe(2);
    expect(second.inputs.done).toEqual([
      { occurrence: 1, day: '2027-01-04', edition: 1 },
      { occurrence: 2, day: '2027-01-07', edition: 1 },
      { occurrence: 3, day: '2027-01-11', edition: 1 },
    ]);
  });

  test('is a session with any mark at all, even one set left out', () => {
    const one = doAsPlanned(first, 1).slice(0, 1);
    expect(again('2027-01-05', [one]).inputs.done).toHaveLength(1);
    const opened: LogEvent = {
      id: 'o',
      seq: 1,
      edition: 1,
      at: '2027-01-04T18:00:00+01:00',
      kind: 'opened',
      occurrence: 1,
      today: 'as usual',
    };
    expect(again('2027-01-05', [[opened]]).inputs.done).toBeUndefined();
  });

  test('an edition of which nothing was marked is simply taken the place of', () => {
    const { value } = plan('2026-12-21', { history: historyOf() });
    const { value: fresh } = plan('2026-12-21');
    expect(value).toEqual(fresh);
    // Then anything may still be changed.
    const moved = plan('2026-12-21', { history: historyOf(), client: someone({ days: [2, 5] }) });
    expect(moved.problems).toEqual([]);
    expect(moved.value?.weeks[0]?.begins).toBe('2027-01-05');
  });

  test('all of it: nothing more is planned', () => {
    const all = Array.from({ length: 12 }, (_, index) => index + 1);
    const over = again('2027-02-15', all);
    expect(letters(sessionsOf(over))).toBe(letters(sessionsOf(first)));
    expect(over.inputs.strands).toEqual([]);
    expect(over.inputs.ladders).toEqual([]);
    expect(over.findings.filter(({ rule }) => rule === 'sessions-lost')).toEqual([]);
    expect(auditPlan(JSON.parse(letters(over)))).toEqual([]);
  });
});

describe('the rest', () => {
  test('missed sessions stay next; they slide, and what finds no day before the end is left out and told', () => {
    // Nothing since the first session: the second is next, two weeks late.
    const late = again('2027-01-20', [1]);
    expect(said(late)).toEqual([
      '1 A 01-04 1',
      '2 B 01-21 1',
      '3 A 01-25 2',
      '4 B 01-28 2',
      '5 A 02-01 3',
      '6 B 02-04 3',
      '7 A 02-08 4',
      '8 B 02-11 4',
    ]);
    const [lost] = late.findings.filter(({ rule }) => rule === 'sessions-lost');
    expect(lost?.reason.inputs).toEqual([{ name: 'sessions', value: 4, unit: '' }]);
    expect(late.weeks.map(({ begins }) => begins.slice(5))).toEqual([
      '01-04',
      '01-25',
      '02-01',
      '02-08',
      '02-15',
      '02-22',
    ]);
  });

  test('is never before today, nor on the day of the last session', () => {
    expect(said(again('2027-01-04', [1]))[1]).toBe('2 B 01-07 1');
    expect(said(again('2027-01-07', [1]))[1]).toBe('2 B 01-07 1');
    expect(said(again('2027-01-08', [1]))[1]).toBe('2 B 01-11 1');
    const onThursday = doAsPlanned(first, 1, { day: '2027-01-07' });
    expect(said(again('2027-01-07', [onThursday]))[1]).toBe('2 B 01-11 1');
  });

  test('crams nothing in: a week has no more sessions than days, those done on other days counted', () => {
    const early = [doAsPlanned(first, 1), doAsPlanned(first, 2, { day: '2027-01-05' })];
    expect(said(again('2027-01-06', early))[2]).toBe('3 A 01-11 2');
    // Weeks are the block's own, from Monday here.
    const three = [...early, doAsPlanned(first, 3, { day: '2027-01-06' })];
    expect(said(again('2027-01-06', three))[3]).toBe('4 B 01-11 2');
  });

  test('one passed over is next, though later ones were done', () => {
    const holed = again('2027-01-12', [1, 3]);
    expect(said(holed).slice(0, 5)).toEqual([
      '1 A 01-04 1',
      '2 B 01-14 1',
      '3 A 01-11 2',
      '4 B 01-18 2',
      '5 A 01-21 3',
    ]);
    expect(auditPlan(JSON.parse(letters(holed)))).toEqual([]);
  });

  test('goes round a break still to come, and the coach is told', () => {
    const away = again('2027-01-12', [1, 2, 3], { client: someone({ breaks: [pause('2027-01-18', '2027-01-22')] }) });
    expect(said(away).slice(3, 6)).toEqual(['4 B 01-14 2', '5 A 01-25 3', '6 B 01-28 3']);
    expect(away.findings.filter(({ rule }) => rule === 'queue-slides').map(({ weeks }) => weeks)).toEqual([[3, 4, 5]]);
  });

  test('keeps the week’s curve: reserve asked, sets, and which week is easy', () => {
    const late = again('2027-01-15', [1]);
    const askedIn = (of: Plan) =>
      new Map(
        sessionsOf(of).flatMap(({ occurrence, groups }) =>
          groups.flatMap(({ items }) =>
            items.map((item): readonly [string, unknown] => [
              `${occurrence} ${item.row}`,
              [item.asked.reserve, item.asked.sets],
            ]),
          ),
        ),
      );
    const before = askedIn(first);
    for (const [place, asked] of askedIn(late)) expect([place, asked]).toEqual([place, before.get(place)]);
    const eased = again(
      '2027-02-08',
      Array.from({ length: 10 }, (_, index) => index + 1),
    );
    expect(eased.weeks[5]?.deload).toBe(true);
    expect(askedIn(eased).get('11 squat')).toEqual(before.get('11 squat'));
  });

  test('counts gain from the week being trained, and walks what is left alone', () => {
    const [strand] = again('2027-01-19', [1, 2, 3, 4]).inputs.strands;
    expect(strand?.weeks.map(({ week }) => week)).toEqual([3, 4, 5, 6]);
    expect(strand?.occurrences.map(({ week }) => week)).toEqual([3, 4, 5, 6]);
  });

  test('a row cut for time stays cut, unless the minutes change', () => {
    const optional = [aRow('squat'), aRow('step', { optional: true })];
    const tests = [...someone().tests, aTest('step', 12)];
    const tight = {
      ...library,
      exercises: [...exercises, anExercise('step', bodyweight)],
      programmes: [aProgramme([aSession('A', aBlock(optional)), programme.sessions[1] ?? expect.fail()])],
    };
    const rowsIn = (of: Plan) =>
      new Set(
        sessionsOf(of).flatMap(({ id, groups }) =>
          groups.flatMap(({ items }) => items.map(({ row }) => `${id}/${row}`)),
        ),
      );
    const withMinutes = (minutes: number) => someone({ minutes, tests });
    const fits = Array.from({ length: 40 }, (_, index) => 12 + index);
    const whole = (minutes: number) =>
      planBlock({ library: tight, client: withMinutes(minutes), today: on('2026-12-20'), edition: 1 }).value;
    // The longest minutes with which the row is cut: in the weeks after the first test it would fit.
    const minutes = fits.findLast((one) => {
      const of = whole(one);
      return of !== null && !rowsIn(of).has('A/step');
    });
    const before = whole(minutes ?? expect.fail('never cut')) ?? expect.fail();
    const { value: history } = gatherHistory(
      [anEdition(before, 1)],
      [aLog([1, 2].flatMap((one) => doAsPlanned(before, one)))],
    );
    const next = (client: Client) =>
      planBlock({ library: tight, client, today: on('2027-01-08'), edition: 2, history }).value ??
      expect.fail('withheld');
    expect(rowsIn(next(withMinutes(minutes ?? 0))).has('A/step')).toBe(false);
    expect(rowsIn(next(withMinutes(60))).has('A/step')).toBe(true);
  });

  test('feels for what is not known yet in the next session, not in one that is over', () => {
    const client = someone({ tests: [] });
    const unknown = planBlock({ library, client, today: on('2026-12-20'), edition: 1 }).value ?? expect.fail('no plan');
    const marks = doAsPlanned(unknown, 2, { but: () => ({ done: 'left out' as const }), reserve: null });
    const { value: history } = gatherHistory([anEdition(unknown, 1)], [aLog(marks)]);
    const next = plan('2027-01-08', { client, history }).value ?? expect.fail('withheld');
    const felt = sessionsOf(next).flatMap(({ occurrence, groups }) =>
      groups.flatMap(({ items }) =>
        items.flatMap(({ row, sets }) => (sets.some(({ kind }) => kind === 'feeler') ? [`${occurrence} ${row}`] : [])),
      ),
    );
    expect(felt).toContain('4 squat');
    expect(felt).toContain('1 squat');
  });
});

describe('a block that is begun', () => {
  const history = historyOf(doAsPlanned(first, 1));
  const changed = (input: Partial<BlockInput>) => {
    const { value, problems } = plan('2027-01-06', { history, ...input });
    expect(value).toBeNull();
    return problems.map(({ code, data }) => [code, 'what' in data ? data.what : '']);
  };

  test('keeps its start, days, programme, weeks and order of sessions, or the coach begins the next one', () => {
    expect(changed({ client: someone({ starts: on('2027-01-11') }) })).toEqual([['block-begun', 'starts']]);
    expect(changed({ client: someone({ days: [2, 5] }) })).toEqual([['block-begun', 'days']]);
    const other = { ...programme, id: 'other' as typeof programme.id };
    const both = { ...library, programmes: [programme, other] };
    expect(changed({ library: both, client: someone({ programme: other.id }) })).toEqual([
      ['block-begun', 'programme'],
    ]);
    const short = { ...library, programmes: [{ ...programme, curve: programme.curve.slice(0, 5) }] };
    expect(changed({ library: short })).toEqual([['block-begun', 'weeks']]);
    const turned = { ...library, programmes: [{ ...programme, sessions: [...programme.sessions].reverse() }] };
    expect(changed({ library: turned })).toEqual([['block-begun', 'sessions']]);
  });

  test('with one more block before, any of them may change', () => {
    const client = someone({ starts: on('2027-02-16'), days: [2, 5], blocksBefore: 2 });
    const { value, problems } = plan('2027-02-10', { history, client });
    expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(value?.block).toBe(3);
    expect(value?.inputs.done).toBeUndefined();
    expect(said(value ?? expect.fail())[0]).toBe('1 A 02-16 1');
  });

  test('names an exercise that was done and is gone from the library', () => {
    const gone = { ...library, exercises: exercises.filter(({ id }) => id !== 'carry') };
    const without = {
      ...programme,
      sessions: [aSession('A', aBlock(rows.slice(0, 2))), ...programme.sessions.slice(1)],
    };
    const { problems } = plan('2027-01-06', { history, library: { ...gone, programmes: [without] } });
    expect(problems.map(({ code }) => code)).toContain('exercise-not-found');
  });
});

test('whatever was done on whatever days: what was done stays, nothing is crammed in, and the audit finds nothing', () => {
  const chosen = fc.record({
    done: fc.uniqueArray(fc.integer({ min: 1, max: 12 }), { minLength: 1, maxLength: 12 }),
    off: fc.array(fc.integer({ min: -2, max: 9 }), { minLength: 12, maxLength: 12 }),
    later: fc.integer({ min: 0, max: 20 }),
  });
  fc.assert(
    fc.property(chosen, ({ done, off, later }) => {
      const dayOf = (iso: string): Day => dayOfIso(iso) ?? expect.fail('no day');
      const events = done.map((occurrence) => {
        const day = addDays(dayOf(sessionAt(first, occurrence).date), off[occurrence - 1] ?? 0);
        return doAsPlanned(first, occurrence, { day: isoOfDay(day) });
      });
      const history = historyOf(...events);
      const last = Math.max(...history.sessions.map(({ day }) => day));
      const today = addDays(dayOf('1970-01-01'), last + later);
      const { value } = planBlock({ library, client: someone(), today, edition: 2, history });
      if (value === null) return;
      const places = new Set(done);
      const rest = sessionsOf(value).filter(({ occurrence }) => !places.has(occurrence));
      for (const occurrence of done) {
        expect(letters(sessionAt(value, occurrence))).toBe(letters(sessionAt(first, occurrence)));
      }
      expect(rest.map(({ occurrence }) => occurrence)).toEqual(
        Array.from({ length: 12 }, (_, index) => index + 1)
          .filter((occurrence) => !places.has(occurrence))
          .slice(0, rest.length),
      );
      const trained = history.sessions.map(({ day }) => day);
      for (const { date } of rest) {
        const on = dayOf(date);
        expect(on).toBeGreaterThanOrEqual(today);
        expect(on).toBeGreaterThan(last);
        expect(days).toContain(weekdayOf(on));
        trained.push(on);
        const week = trained.filter((day) => Math.floor((day - 4) / 7) === Math.floor((on - 4) / 7));
        expect(week.length).toBeLessThanOrEqual(Math.max(days.length, 0));
      }
      expect(auditPlan(JSON.parse(letters(value)))).toEqual([]);
    }),
    { numRuns: 60, seed: 20_261_128 },
  );
});

test('made-up studios, planned again after so many sessions: done ones stay, and the audit finds nothing', () => {
  let planned = 0;
  const found: string[] = [];
  for (let seed = 1; seed <= 24; seed += 1) {
    const made = generateStudio(seed, seed % 2 === 0 ? 'walked' : 'everything');
    const before = planBlock({ ...made, edition: 1 }).value;
    const all = before === null ? [] : sessionsOf(before);
    if (before === null || all.length < 2) continue;
    const done = all.slice(0, 1 + (seed % (all.length - 1))).map(({ occurrence }) => occurrence);
    const reserve = [undefined, null, 5][seed % 3];
    const events = done.flatMap((one) => doAsPlanned(before, one, reserve === undefined ? {} : { reserve }));
    const { value: history, problems } = gatherHistory([anEdition(before, 1)], [aLog(events)]);
    expect(problems).toEqual([]);
    const today = dayOfIso(sessionAt(before, done.at(-1) ?? 1).date) ?? expect.fail('no day');
    const { value } = planBlock({ ...made, today, edition: 2, history });
    if (value === null) continue;
    planned += 1;
    for (const one of done) expect(letters(sessionAt(value, one))).toBe(letters(sessionAt(before, one)));
    found.push(...auditPlan(JSON.parse(letters(value))).map((text) => `seed ${seed}: ${text}`));
  }
  expect(planned).toBeGreaterThan(4);
  expect(found).toEqual([]);
});

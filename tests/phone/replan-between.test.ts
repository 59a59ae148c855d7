/** Planned again between sessions: what is under way changes nothing, and every change has its sentence. */
import { describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import type { ClientPlan } from '../../src/model/client-plan.js';
import { addDays, dayOfIso, isoOfDay } from '../../src/model/day.js';
import type { LogEvent } from '../../src/model/log.js';
import { replanBetween } from '../../src/phone/replan-between.js';
import { finish } from '../../src/session/in-steps.js';
import { type ReplannedItem, replan } from '../../src/session/replan.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { doAsPlanned } from '../session/make-marks.js';
import { PEOPLE } from '../simulate/people.js';
import { runBlocks } from '../simulate/run-blocks.js';
import { readDemo } from '../studio/demo-library.js';

const between = (
  plan: ClientPlan,
  events: readonly LogEvent[],
  at: string,
  language = 'en',
): readonly ReplannedItem[] =>
  finish(
    replanBetween({
      plan,
      events,
      now: Date.parse(`${at}:00+01:00`),
      today: at.slice(0, 10),
      language,
      called: () => undefined,
    }),
  );

const torben = await (async () => {
  const demo = await readDemo();
  const client = demo.clients.find(({ id }) => id === 'torben-slade') ?? expect.fail();
  const today = dayOfIso('2026-11-24') ?? expect.fail();
  const { value } = planBlock({ library: demo.library, client, today, edition: 1 });
  return value ?? expect.fail();
})();
const plan = clientPlanOf(torben);
const dateOf = (occurrence: number): string =>
  plan.weeks.flatMap(({ sessions }) => sessions).find((one) => one.occurrence === occurrence)?.date ?? expect.fail();

/** Three reps fewer than planned, and none left. */
const short = (occurrence: number, day = dateOf(occurrence)): readonly LogEvent[] =>
  doAsPlanned(torben, occurrence, {
    day,
    reserve: 0,
    but: ({ reps }) => (reps === undefined ? {} : { reps: Math.max(1, reps - 3), asPlanned: false }),
  });
const open = (events: readonly LogEvent[]): readonly LogEvent[] => events.filter(({ kind }) => kind !== 'closed');

test('before its first day, with nothing done, nothing is gone through, for nothing would come of it', () => {
  const day = isoOfDay(addDays(dayOfIso(plan.starts) ?? expect.fail(), -3));
  for (const today of [day, plan.starts]) {
    expect(replan(torben, [], today)).toMatchObject({ kind: 'planned', changed: [] });
    expect(between(plan, [], `${today}T18:00`)).toEqual([]);
  }
});

describe('between sessions', () => {
  const before = short(1);
  const then = between(plan, before, `${dateOf(2)}T17:59`);

  test('what was closed counts', () => {
    expect(then.length).toBeGreaterThan(0);
    expect(between(plan, [], `${dateOf(2)}T17:59`)).toEqual([]);
  });

  test('nothing that is marked in a session changes what stands in it, until it is closed', () => {
    const own = short(2);
    for (let marked = 1; marked < own.length; marked += 7) {
      expect(between(plan, [...before, ...open(own.slice(0, marked))], `${dateOf(2)}T19:30`)).toEqual(then);
    }
    const closed = between(plan, [...before, ...own], `${dateOf(2)}T19:30`);
    expect(closed).not.toEqual(then);
    expect(closed.every(({ occurrence }) => occurrence > 2)).toBe(true);
  });

  test('a session past midnight stays as it began; one left off counts the next day', () => {
    const night = open(short(2)).map((event) => ({ ...event, at: event.at.replace('T18:', 'T23:') }));
    const next = isoOfDay(((dayOfIso(dateOf(2)) ?? expect.fail()) + 1) as never);
    expect(between(plan, [...before, ...night], `${next}T00:20`)).toEqual(then);
    expect(between(plan, [...before, ...night], `${next}T20:20`)).not.toEqual(then);
  });

  test('nothing where the plan stays as it is', () => {
    const { replan: _, ...fixed } = plan;
    expect(between(fixed, before, `${dateOf(2)}T17:59`)).toEqual([]);
  });
});

describe('why', () => {
  const found = PEOPLE.filter(({ name }) => ['stalls', 'hurt', 'thrives'].includes(name)).flatMap((somebody) => {
    const person = { ...somebody, client: { ...somebody.client, replanning: 'within bounds' as const } };
    return runBlocks(person, 3).weeks.map(({ plan: of, marked, today }) => ({
      sent: clientPlanOf(of),
      marked,
      at: `${isoOfDay(today)}T12:00`,
    }));
  });

  test.each(['en', 'nb'])('is told of every row that is done otherwise, in %s, in short sentences', (language) => {
    const items = found.flatMap(({ sent, marked, at }) => between(sent, marked, at, language));
    expect(items.length).toBeGreaterThan(50);
    expect(items.filter(({ because }) => because.length !== 1)).toEqual([]);
    const said = [...new Set(items.flatMap(({ because }) => because.map(({ says }) => says)))];
    expect(said.length).toBeGreaterThan(4);
    for (const says of said) {
      expect(says).toMatch(/[.!]$/);
      expect(says).not.toMatch(/undefined|NaN|[a-z]-[a-z]+-\d|\b\d{5,}/);
      for (const sentence of says.split(/(?<=[.!])\s/))
        expect(sentence.split(/\s+/).length, says).toBeLessThanOrEqual(12);
    }
  });

  test('is what weighs most: what was hard or hurt before how sets are counted', () => {
    const [easier] = between(
      plan,
      [1, 2, 3, 4].flatMap((n) => short(n)),
      `${dateOf(5)}T17:00`,
    );
    expect(easier?.because.map(({ says }) => says)).toEqual([
      'The last one was heavy, so this begins a little easier.',
    ]);
  });

  test('is what was too much, where it was worse the next morning', () => {
    const [row] = plan.weeks[0]?.sessions[0]?.groups.find(({ kind }) => kind === 'straight')?.items ?? [];
    const done = doAsPlanned(torben, 1, { day: dateOf(1) });
    const pain = (worseNextMorning: boolean): LogEvent => ({
      ...{ id: '00000000-0000-4000-8000-000000009999', seq: 9999, edition: 1, at: `${dateOf(2)}T17:00:00+01:00` },
      ...{ kind: 'pain', occurrence: 1, report: { where: 'knee', degree: 2, worseNextMorning } },
      row: row?.row ?? expect.fail(),
    });
    const why = (worse: boolean) =>
      between(plan, [...done, pain(worse)], `${dateOf(5)}T17:00`).find((one) => one.row === row?.row)?.because;
    expect(why(true)?.map(({ rule }) => rule)).toEqual(['pain-next-morning']);
    expect(why(false) ?? []).not.toContainEqual(expect.objectContaining({ rule: 'pain-next-morning' }));
  });

  test('is that it hurt, of what is left out for that: after a heavy session as well nothing begins a little easier', () => {
    const [row] = plan.weeks[0]?.sessions[0]?.groups.find(({ kind }) => kind === 'straight')?.items ?? [];
    const pain: LogEvent = {
      ...{ id: '00000000-0000-4000-8000-000000009999', seq: 9999, edition: 1, at: `${dateOf(1)}T19:00:00+01:00` },
      ...{ kind: 'pain', occurrence: 1, report: { where: 'knee', degree: plan.pain.leave } },
      row: row?.row ?? expect.fail(),
    };
    const left = between(plan, [...short(1), pain], `${dateOf(5)}T17:00`).filter(
      ({ exercise, today }) => exercise === row?.exercise && today === null,
    );
    expect(left.length).toBeGreaterThan(0);
    expect(left.map(({ because }) => because.map(({ rule }) => rule))).toEqual(left.map(() => ['pain-leave']));
  });

  test('says it in the client’s own language', () => {
    const [{ sent, marked, at } = expect.fail()] = found.slice(2);
    const said = (language: string) => between(sent, marked, at, language).flatMap(({ because }) => because);
    expect(said('nb').map(({ rule }) => rule)).toEqual(said('en').map(({ rule }) => rule));
    expect(said('nb').map(({ says }) => says)).not.toEqual(said('en').map(({ says }) => says));
  });
});

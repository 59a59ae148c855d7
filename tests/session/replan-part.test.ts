/** What travels for planning again: the rest comes out as from the whole plan, and nothing private stands in it. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import { addDays, dayOfIso, isoOfDay } from '../../src/model/day.js';
import type { LogEvent } from '../../src/model/log.js';
import type { Plan } from '../../src/model/plan.js';
import { planOfPart } from '../../src/session/plan-of-part.js';
import { type Replanning, replan } from '../../src/session/replan.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { DEEP, runs } from '../deep.js';
import { type Breadth, generateStudio } from '../engine/generate-studio.js';
import { PEOPLE } from '../simulate/people.js';
import { runBlocks } from '../simulate/run-blocks.js';
import { readDemo } from '../studio/demo-library.js';
import { doAsPlanned } from './make-marks.js';

/** More in `npm run verify:deep`. */
const RUNS = runs(50, 2000);

/** As it travels: through text. */
const travelled = (plan: Plan): Plan | null => planOfPart(JSON.parse(JSON.stringify(clientPlanOf(plan))));

/** What a gate falls back on, and what a feeler set leads to, has no prediction on the phone. */
const told = (again: Replanning): unknown =>
  JSON.parse(JSON.stringify(again), (name, value: unknown) =>
    (name === 'otherwise' || name === 'choose') && Array.isArray(value)
      ? value.map((one: object) => ({ ...one, reserve: undefined }))
      : value,
  );

/** How many rows are done otherwise than printed. */
function expectSame(plan: Plan, events: readonly LogEvent[], today: string, at: string): number {
  const part = travelled(plan);
  const whole = replan(plan, events, today);
  if (part === null) {
    expect(whole.kind, at).toBe('fixed');
    return 0;
  }
  expect(told(replan(part, events, today)), at).toEqual(told(whole));
  return whole.kind === 'planned' ? whole.changed.length : 0;
}

const today = dayOfIso('2026-11-24') ?? expect.fail();
const demo = await readDemo();

/** Some sessions done, some sets missed, some with more or less than planned, sometimes with pain. */
function someMarks(plan: Plan, sessions: number, seed: number): readonly LogEvent[] {
  const occurrences = plan.weeks
    .flatMap((week) => week.sessions.map(({ occurrence }) => occurrence))
    .slice(0, sessions);
  return occurrences.flatMap((occurrence) => {
    const way = (seed + occurrence) % 5;
    const done = doAsPlanned(plan, occurrence, {
      ...(way === 1 ? { reserve: 5 } : way === 2 ? { reserve: null } : way === 3 ? { reserve: 0 } : {}),
      but: (set) => {
        if (way === 4 && set.round > 1) return null;
        return way === 3 && set.reps !== undefined ? { reps: Math.max(1, set.reps - 3), asPlanned: false } : {};
      },
    });
    const [first] = done;
    const row = done.find((event) => event.kind === 'reserve');
    if (first === undefined || row?.kind !== 'reserve' || (seed + occurrence) % 7 !== 0) return done;
    const head = { id: `${first.id.slice(0, -3)}999`, seq: first.seq + 900, edition: first.edition, at: first.at };
    return [...done, { ...head, kind: 'pain', occurrence, row: row.row, report: { where: 'knee', degree: seed % 5 } }];
  });
}

function dayAfter(plan: Plan, sessions: number): string {
  const dates = plan.weeks.flatMap((week) => week.sessions.map(({ date }) => date));
  return isoOfDay(addDays(dayOfIso(dates[sessions - 1] ?? plan.starts) ?? today, 1));
}

describe('the rest from what travels is the rest from the whole plan', () => {
  test('of every client of the demo, after no session and after one to eight', () => {
    let changed = 0;
    for (const one of demo.clients) {
      const client = { ...one, replanning: 'within bounds' } as const;
      const { value } = planBlock({ library: demo.library, client, today, edition: 1 });
      if (value === null) continue;
      for (const [index, sessions] of (DEEP ? [0, 1, 3, 5, 8] : [0, 4]).entries()) {
        const at = `${client.id} after ${sessions}`;
        changed += expectSame(value, someMarks(value, sessions, index), dayAfter(value, sessions), at);
      }
    }
    expect(changed).toBeGreaterThan(60);
  });

  test.each(PEOPLE)('of a simulated person over two blocks: $name', (somebody) => {
    const person = { ...somebody, client: { ...somebody.client, replanning: 'within bounds' as const } };
    for (const week of runBlocks(person, 2).weeks) {
      expectSame(week.plan, week.marked, isoOfDay(week.today), `week ${week.number}`);
    }
  });

  test('of made-up studios, clients, kits and marks', () => {
    let changed = 0;
    let planned = 0;
    const breadth = fc.constantFrom<Breadth>('walked', 'everything');
    fc.assert(
      fc.property(fc.nat({ max: 100_000 }), breadth, fc.nat({ max: 9 }), (seed, wide, sessions) => {
        const made = generateStudio(seed, wide);
        const client = { ...made.client, replanning: 'within bounds' as const };
        const { value } = planBlock({ ...made, client, edition: 1 });
        if (value === null) return;
        planned += 1;
        changed += expectSame(
          value,
          someMarks(value, sessions, seed),
          dayAfter(value, sessions),
          `seed ${seed}, ${wide}`,
        );
      }),
      { numRuns: RUNS, seed: 6 },
    );
    expect(planned).toBeGreaterThan(RUNS / 5);
    expect(changed).toBeGreaterThan(RUNS / 5);
  });
});

describe('what travels for it', () => {
  const plans = demo.clients.flatMap((one) => {
    const client = { ...one, replanning: 'within bounds' } as const;
    const { value } = planBlock({ library: demo.library, client, today, edition: 1 });
    return value === null ? [] : [{ client, plan: value }];
  });

  test('is nothing where the plan stays as it is, where only the coach may plan again, or once the edition is over', () => {
    const of = (id: string) => plans.find(({ client }) => client.id === id)?.plan ?? expect.fail(id);
    const { plan } = plans.find((one) => clientPlanOf(one.plan).replan !== undefined) ?? expect.fail();
    const { replanning: _, ...inputs } = plan.inputs;
    expect(clientPlanOf({ ...plan, inputs }).replan).toBeUndefined();
    const health = [{ fact: 'pregnancy', value: 'week 20' }];
    expect(
      clientPlanOf({ ...plan, inputs: { ...plan.inputs, standing: { ...plan.inputs.standing, health } } }).replan,
    ).toBeUndefined();
    expect(of('rowan-ashby').inputs.replanning).toBeDefined();
  });

  test('has no body mass, no birth year and no word of a client’s own', () => {
    for (const { client, plan } of plans) {
      const text = JSON.stringify(clientPlanOf(plan).replan ?? {});
      const { bodyMass, birthYear } = plan.inputs;
      if (bodyMass !== null) expect(text, client.id).not.toMatch(new RegExp(`\\b${bodyMass}\\b`));
      expect(text, client.id).not.toMatch(new RegExp(`\\b${birthYear}\\b`));
      const words = [client.name, ...client.cautions.map(({ by }) => by), ...client.signOffs.map(({ by }) => by)];
      for (const word of words) if (word !== '') expect(text, client.id).not.toContain(word);
      for (const { what } of client.notes.map((note) => ({ what: JSON.stringify(note) })))
        expect(text).not.toContain(what);
    }
  });

  test('is the same whatever is written that it does not read', () => {
    for (const { plan } of plans) {
      const { inputs } = plan;
      const other: Plan = {
        ...plan,
        planId: 'other',
        findings: [],
        inputs: {
          ...inputs,
          cautions: [],
          signOffs: [],
          shares: [],
          clearance: null,
          minutesCap: 999,
          mainBells: [],
          room: {},
          flags: ['other'],
          floors: inputs.floors.map((floor) => ({ ...floor, rule: 'other' })),
          standing: { ...inputs.standing, health: [], derived: [] },
        },
        weeks: plan.weeks.map((week) => ({
          ...week,
          sessions: week.sessions.map((session) => ({
            ...session,
            trimmed: [],
            groups: session.groups.map((group) => ({
              ...group,
              items: group.items.map((item) => ({ ...item, reasons: [], allowed: [], relaxed: [], capacity: null })),
            })),
          })),
        })),
      };
      expect(clientPlanOf(other).replan).toEqual(clientPlanOf(plan).replan);
    }
  });

  const ALLOWED = [
    ...['made', 'rules', 'reserves', 'tests', 'floors', 'days', 'curve', 'blocksBefore', 'novice', 'begins', 'olderIn'],
    ...['weighed', 'strands', 'ladders', 'breaks', 'done', 'recalls', 'exercises', 'rows', 'steady'],
  ];
  test('has these parts and no others, and a test no more than these', () => {
    for (const { plan } of plans) {
      const { replan: part } = clientPlanOf(plan);
      if (part === undefined) continue;
      expect(Object.keys(part).sort()).toEqual([...ALLOWED].sort());
      for (const one of part.tests) {
        const names = ['exercise', 'side', 'date', 'grams', 'reps', 'reserve', 'tempo', 'marked', 'weak'];
        expect(names).toEqual(expect.arrayContaining(Object.keys(one)));
      }
      for (const strand of part.strands) expect(strand).not.toHaveProperty('bodyMass');
    }
  });
});

/** The demo studio's booklets, from content to tree: every word a client would read. */
import { describe, expect, test } from 'vitest';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import type { Booklet } from '../../src/model/booklet.js';
import type { Plan } from '../../src/model/plan.js';
import { plainText } from '../../src/model/prose.js';
import type { Reason } from '../../src/model/reason.js';
import { PLAIN_NAMES } from '../../src/words/say-figures.js';
import { sayPlan } from '../../src/words/say-plan.js';
import { sayReason } from '../../src/words/say-reason.js';
import { sayWhy } from '../../src/words/say-why.js';
import { speechOf } from '../../src/words/speech.js';
import { planDemo } from '../studio/demo-plans.js';
import { bannedIn, longestSentence } from '../words/ban-list.js';
import { tellBooklet } from './tell-booklet.js';

const demo = await planDemo();
const clients = demo.clients.filter(({ id }) => demo.plans.has(id));
const planOf = (id: string): Plan => {
  const plan = demo.plans.get(id);
  if (plan === undefined) throw new Error(`${id} has no plan`);
  return plan;
};
const made = clients.map((client) => {
  const plan = planOf(client.id);
  return { client, plan, booklet: composeBooklet({ library: demo.library, client, plan }) };
});
const cellsOf = (booklet: Booklet) =>
  booklet.parts.flatMap((part) => (part.kind === 'session' ? part.rows.flatMap((row) => row.cells) : []));
const groupsOf = (plan: Plan) => plan.weeks.flatMap((week) => week.sessions.flatMap(({ groups }) => groups));
const itemsOf = (plan: Plan) => groupsOf(plan).flatMap(({ items }) => items);
/** What warms up and cools down stands in lists, and has no line of its own. */
const workOf = (plan: Plan) =>
  groupsOf(plan)
    .filter(({ kind }) => kind !== 'warm-up' && kind !== 'cool-down')
    .flatMap(({ items }) => items);
const reasonsOf = (plan: Plan): readonly Reason[] => [
  ...itemsOf(plan).flatMap(({ reasons }) => reasons),
  ...plan.findings.map(({ reason }) => reason),
  ...plan.weeks.flatMap((week) => week.sessions.flatMap(({ trimmed }) => trimmed.map(({ reason }) => reason))),
];

test('beside a gate the easier versions name no load but what is done without it', () => {
  const parts = made.find(({ client }) => client.id === 'rowan-ashby')?.booklet.parts ?? [];
  const sessions = parts.flatMap((part) => (part.kind === 'session' ? [part] : []));
  const squat = sessions.flatMap(({ rows }) => rows).find(({ row }) => row === 'goblet-squat');
  const doses = squat?.easier.flatMap((way) => way.doses) ?? [];
  expect(squat?.cells.flatMap(({ gate, week }) => (gate === undefined ? [] : [week]))).toEqual([5, 6]);
  expect(new Set(doses.map(({ week }) => week))).toEqual(new Set([1, 2, 3, 4, 5, 6]));
  for (const { text } of doses) expect(text).not.toContain('20\u00a0kg');
});

test('there are booklets to look at', () => {
  expect(made.length).toBeGreaterThan(1);
});

describe.each(made)('$client.name', ({ client, plan, booklet }) => {
  test('every set of the plan stands in it exactly once', () => {
    const drawn = cellsOf(booklet).flatMap(({ sets }) => sets.map(({ key }) => key));
    expect([...drawn].sort()).toEqual(
      workOf(plan)
        .flatMap(({ sets }) => sets.map(({ key }) => key))
        .sort(),
    );
    expect(new Set(drawn).size).toBe(drawn.length);
  });

  test('every set says its load as the plan labels it', () => {
    const drawn = new Map(cellsOf(booklet).flatMap(({ sets }) => sets.map((set) => [set.key, set])));
    for (const set of workOf(plan).flatMap(({ sets }) => sets)) {
      const said = drawn.get(set.key);
      const load =
        said?.load === undefined ? '' : `${said.load.figure} ${said.load.unit}`.replaceAll('\u00a0', ' ').trim();
      expect(load, set.key).toBe(`${set.load?.mode === 'added' ? '+ ' : ''}${set.load?.label ?? ''}`);
    }
  });

  test('every row and every easier exercise has its page', () => {
    const pages = new Set(booklet.parts.flatMap((part) => (part.kind === 'exercise' ? [part.id] : [])));
    for (const part of booklet.parts)
      if (part.kind === 'session')
        for (const row of part.rows) {
          for (const id of [row.exercise, ...row.cells.map((cell) => cell.exercise)]) expect(pages).toContain(id);
          for (const { exercise } of row.easier) if (exercise !== undefined) expect(pages).toContain(exercise);
          expect(row.easier.length, row.name).toBeGreaterThan(0);
        }
  });

  test('every exercise of a warm-up or cool-down stands in its list, and has its page', () => {
    const pages = new Set<string>(booklet.parts.flatMap((part) => (part.kind === 'exercise' ? [part.id] : [])));
    const listed = booklet.parts.flatMap((part) =>
      part.kind === 'session' ? [...part.warmUp, ...part.coolDown].flatMap(({ exercise }) => exercise ?? []) : [],
    );
    const around = groupsOf(plan)
      .filter(({ kind }) => kind === 'warm-up' || kind === 'cool-down')
      .flatMap(({ items }) => items.map(({ exercise }) => exercise));
    expect(new Set(listed)).toEqual(new Set(around));
    for (const id of listed) expect(pages).toContain(id);
  });

  test('bells are spoken of where one is held, and of the floor where it may be lifted from there', () => {
    const safety = booklet.parts.flatMap((part) => (part.kind === 'safety' ? part.paragraphs.map(plainText) : []));
    const held = itemsOf(plan).flatMap(({ sets, easier }) => [...sets, ...easier.flatMap((way) => way.sets)]);
    const heavy = held.some(({ load, choose = [] }) =>
      [load, ...choose.map((choice) => choice.load)].some((one) => one?.grams !== undefined && one.grams > 0),
    );
    const minds = [...client.cautions, ...plan.inputs.standing.derived].some(
      ({ what }) => what === 'lifting from the floor',
    );
    const nb = client.language === 'nb';
    expect(safety.some((text) => text.includes(nb ? 'Glipper en kule' : 'If a bell slips'))).toBe(heavy);
    const byTheFloor = nb ? 'Kulene går alltid via gulvet' : 'Bells go by the floor';
    expect(safety.some((text) => text.includes(byTheFloor))).toBe(heavy && !minds);
  });

  test('a published measure stops at nothing but its time and its stop signs, and says why it is done', () => {
    for (const part of booklet.parts.flatMap((one) => (one.kind === 'session' ? [one] : [])))
      for (const row of part.rows.filter(({ row: id }) => id.startsWith('test-')))
        for (const { test: tested, why } of row.cells) {
          expect(tested?.says).not.toMatch(/\bleft\b/);
          expect(why.join(' ')).toMatch(/^A test of /);
          expect(row.stop.length).toBeGreaterThan(0);
        }
  });

  test('no coach’s shorthand, nothing private', () => {
    const told = tellBooklet(booklet);
    expect(told.split('\n').flatMap(bannedIn)).toEqual([]);
    for (const note of client.notes) for (const { text } of note) expect(told).not.toContain(text);
    for (const { by } of client.cautions.filter(({ by: who }) => who !== demo.library.studio.coach))
      expect(told).not.toContain(by);
  });

  test('our own lines at a set have at most twelve words', () => {
    for (const { effort, tempo, trial, gate, choose, why, how, test: tested } of cellsOf(booklet))
      for (const text of [
        effort,
        ...how,
        tested?.says ?? '',
        tempo,
        trial ?? '',
        gate?.needs ?? '',
        gate?.otherwise ?? '',
        choose?.intro ?? '',
        ...why,
      ])
        expect(longestSentence(text), text).toBeLessThanOrEqual(12);
  });

  test('every reason is said, for the one it is meant for', () => {
    const speech = speechOf('en-GB');
    for (const reason of reasonsOf(plan)) {
      expect(
        sayReason(reason, reason.audience, speech, PLAIN_NAMES),
        `${reason.rule} to the ${reason.audience}`,
      ).not.toBe('');
      if (reason.audience === 'client') expect(bannedIn(sayReason(reason, 'client', speech))).toEqual([]);
    }
    for (const { says } of reasonsOf(sayPlan(plan))) expect(says).toMatch(/^[^a-z].*\.$/);
  });

  test('filling in the sentences changes nothing else', () => {
    const silent = (value: unknown) => JSON.stringify(value, (key, inner) => (key === 'says' ? '' : inner));
    expect(silent(sayPlan(plan))).toBe(silent(plan));
  });
});

test('what a feeler set found has a line to be written on, and later weeks refer to it', () => {
  const english = made.filter(({ booklet }) => booklet.language === 'en-GB');
  const rows = english.flatMap(({ booklet }) =>
    booklet.parts.flatMap((part) => (part.kind === 'session' ? part.rows : [])),
  );
  const found = rows
    .map((row) => row.cells.filter(({ choose }) => choose !== undefined))
    .filter((cells) => cells.length > 0);
  expect(found.length).toBeGreaterThan(0);
  // Where a session comes twice a week, the second refers to the first from the start.
  const felt = found.filter(([first]) => first?.choose?.note !== undefined);
  expect(felt.length).toBeGreaterThan(0);
  for (const [again] of found.filter(([first]) => first?.choose?.note === undefined)) {
    expect(again?.choose?.intro.replaceAll('\u00a0', ' ')).toMatch(/^As you found in week 1: /);
  }
  for (const [first, ...later] of felt) {
    expect(first?.choose?.note?.replaceAll('\u00a0', ' ')).toBe(`How many more, week ${first?.week}:`);
    expect(first?.effort).toMatch(/^Leave (at least )?\d in reserve\.$/);
    for (const { choose } of later) {
      expect(choose?.note).toBeUndefined();
      expect(choose?.intro.replaceAll('\u00a0', ' ')).toMatch(new RegExp(`^As you found in week ${first?.week}: `));
    }
  }
  expect(felt.some(([, ...later]) => later.length > 0)).toBe(true);
});

describe('the account a coach asks for', () => {
  const plan = planOf('rowan-ashby');

  test('tells the number, the rule, its figures and source, and why not the next one up', () => {
    const why = sayWhy(plan, { week: 4, session: 'a', exercise: 'goblet-squat' });
    expect(why).toContain('16 kg × 10, 2 sets');
    expect(why).toMatch(/Why not 20 kg \([\d.]+ to failure\)\?/);
    expect(why).toMatch(/\[walk-[a-z-]+; common practice, no source/);
    expect(why).toMatch(/The top of the range, 10, leaving [\d.]+ where 2 are asked for\./);
    expect(why).not.toMatch(/undefined|\u00a0/);
  });

  test('keeps to what was asked', () => {
    expect(sayWhy(plan, { week: 1 })).not.toContain('Week 2');
    expect(sayWhy(plan, { exercise: 'Goblet Squat' })).not.toContain('dead bug:');
    expect(sayWhy(plan, { week: 9 })).toBe('');
    expect(sayWhy(plan, { exercise: 'no such thing' })).toBe('');
    expect(sayWhy(plan).split('\n').length).toBeGreaterThan(100);
  });

  const called = {
    client: 'Rowan Ashby',
    programme: 'Two steady days',
    exercise: (id: string) => demo.library.exercises.find((exercise) => exercise.id === id)?.name ?? id,
  };

  test('names everybody and everything as the coach does', () => {
    const why = sayWhy(plan, {}, called);
    expect(why).toMatch(/^Rowan Ashby, Two steady days, /);
    for (const { id } of demo.library.exercises.filter(({ name }) => name.includes('-') || name.includes(',')))
      expect(why.toLowerCase()).not.toContain(` ${id.replaceAll('-', ' ')}:`);
    expect(sayWhy(plan, { exercise: 'deadlift, one bell' }, called)).toContain('Deadlift, one bell: ');
  });

  test('what is tried this week, or taken if earned, is not called open', () => {
    const trial = sayWhy(plan, { week: 4, exercise: 'bell-deadlift' }, called);
    expect(trial).toMatch(
      /Why not 28 kg \([\d.]+ to failure\)\? It is tried in the first set\. Whole sets would need 7 to/,
    );
    const gated = sayWhy(plan, { week: 5, exercise: 'goblet-squat' }, called);
    expect(gated).toMatch(/Why not 20 kg \([\d.]+ to failure\)\? It is taken this week, if it is earned\./);
    for (const one of demo.plans.values()) {
      const weeks = sayWhy(one).split('\n');
      expect(weeks.filter((line) => line.includes('may come next'))).toEqual([]);
    }
  });

  test('a share of the body is counted in only where the exercise has one', () => {
    expect(sayWhy(plan, { week: 1, exercise: 'goblet-squat' })).toContain('a share of the body');
    expect(sayWhy(plan, { week: 1, exercise: 'one-arm-row' })).toContain('once with the left (Epley');
    expect(sayWhy(plan, { week: 1, exercise: 'one-arm-row' })).not.toContain('a share of the body');
  });

  test('a rule told to the client and the coach is told once, as to the coach', () => {
    const press = sayWhy(plan, { week: 1, exercise: 'floor-press' });
    expect(press.match(/\[feeler-rise;/g)).toHaveLength(1);
    expect(press).toContain('The feeler set finds the load');
  });
});

/**
 * The rest of a block planned again from `plan.json` and events alone, held against what the planner itself makes of the
 * same marks with the library, for every week of the simulated people.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import { isoOfDay } from '../../src/model/day.js';
import type { LogEvent } from '../../src/model/log.js';
import type { Item, Plan, PlanSession, PlanSet } from '../../src/model/plan.js';
import { type ReplannedItem, replan } from '../../src/session/replan.js';
import { sayPlan } from '../../src/words/say-plan.js';
import { readCaseFile } from '../cases/read-case.js';
import { readLibrary } from '../cases/read-library.js';
import { HURT, PEOPLE, type Person, STALLS, THRIVES, THRIVES_COARSELY, VANISHES } from '../simulate/people.js';
import { type ReviewedWeek, type Run, runBlocks } from '../simulate/run-blocks.js';
import { sessionsOf } from '../simulate/simulate.js';
import { doAsPlanned, sessionAt } from './make-marks.js';

const free = (person: Person): Person => ({ ...person, client: { ...person.client, replanning: 'within bounds' } });
const runs = new Map<string, Run>();
function runOf(person: Person): Run {
  const run = runs.get(person.name) ?? runBlocks(free(person), 1);
  runs.set(person.name, run);
  return run;
}

const changedIn = (plan: Plan, events: readonly LogEvent[], today: string): readonly ReplannedItem[] => {
  const again = replan(plan, events, today);
  return again.kind === 'planned' ? again.changed : expect.fail(again.kind);
};
const itemsOf = ({ groups }: PlanSession): readonly Item[] =>
  groups.flatMap(({ kind, items }) => (kind === 'straight' || kind === 'circuit' ? items : []));
const itemAt = (plan: Plan, occurrence: number, row: string): Item | undefined =>
  itemsOf(sessionAt(plan, occurrence)).find((item) => item.row === row);

type Doing = Pick<Item, 'exercise' | 'tempo'> & { readonly sets: readonly PlanSet[] };

/** Sets of work on one line: what is tried or must be earned first stands in the place of one. */
const workOf = ({ exercise, tempo, sets }: Doing): string =>
  [
    exercise,
    tempo,
    ...sets
      .filter(({ kind }) => kind !== 'warm-up')
      .map((set) => `${set.reps ?? set.seconds ?? set.metres} @ ${set.load?.label ?? ''}`),
  ].join(', ');
const wholeOf = (doing: Doing): string =>
  `${workOf(doing)}; ${doing.sets
    .filter(({ kind }) => kind === 'warm-up')
    .map(({ reps, load }) => `${reps} @ ${load?.label}`)
    .join(', ')}`;
const earnsFirst = ({ sets }: Doing): boolean =>
  sets.some(({ kind, gate, otherwise }) => kind === 'trial' || gate !== undefined || otherwise !== undefined);

interface Compared {
  readonly week: ReviewedWeek;
  readonly occurrence: number;
  readonly row: string;
  readonly paper: Item;
  readonly phone: Doing;
  readonly fresh: Doing | null;
}

function compare({ weeks }: Run): readonly Compared[] {
  return weeks.flatMap((week) => {
    const changed = changedIn(week.plan, week.marked, isoOfDay(week.today));
    const done = new Set(week.again.inputs.done?.map(({ occurrence }) => occurrence));
    return sessionsOf(week.again)
      .filter(({ occurrence }) => !done.has(occurrence))
      .flatMap((session) =>
        itemsOf(sessionAt(week.plan, session.occurrence)).map((paper): Compared => {
          const { occurrence } = session;
          const own = changed.find((one) => one.occurrence === occurrence && one.row === paper.row);
          const phone: Doing = own === undefined ? paper : { ...own, sets: own.sets.flatMap(({ set }) => set ?? []) };
          const fresh = itemsOf(session).find(({ row }) => row === paper.row) ?? null;
          return { week, occurrence, row: paper.row, paper, phone, fresh };
        }),
      );
  });
}

describe('where nothing was done', () => {
  const exercises = readLibrary();
  const cases = readdirSync(new URL('../cases', import.meta.url)).flatMap(
    (name) => /^(.+)\.case\.txt$/.exec(name)?.[1] ?? [],
  );
  test('the plan’s own sets, in every real-life case that makes a plan', () => {
    let planned = 0;
    for (const name of cases) {
      const { library, client, today } = readCaseFile(name, exercises);
      const { value } = planBlock({ library, client: { ...client, replanning: 'within bounds' }, today, edition: 1 });
      if (value === null) continue;
      const again = replan(sayPlan(value), [], value.today);
      if (again.kind === 'fixed') continue;
      planned += 1;
      expect(again, name).toEqual({ kind: 'planned', changed: [] });
    }
    expect(planned).toBeGreaterThan(60);
  });
});

describe('what it reads', () => {
  const schema: object = JSON.parse(
    readFileSync(new URL('../../src/engine/plan.schema.json', import.meta.url), 'utf8'),
  );
  const validate = new Ajv2020({ allowUnionTypes: true }).compile(schema);

  test('stands in the plan as its schema has it, and only where the coach lets the phone plan again', () => {
    const { plan } = runOf(THRIVES).weeks[2] ?? expect.fail('no week');
    validate(JSON.parse(JSON.stringify(plan)));
    expect(validate.errors ?? []).toEqual([]);
    expect(plan.inputs.replanning?.rows.map(({ id }) => id)).toEqual(plan.inputs.strands.map(({ id }) => id));
    const named = new Set(plan.inputs.replanning?.exercises.map(({ exercise }) => exercise));
    for (const { versions } of plan.inputs.strands)
      for (const { exercise } of versions) expect(named).toContain(exercise);
    const fixed = runBlocks({ ...THRIVES, away: Array.from({ length: 12 }, (_, index) => index + 1) }, 1).weeks[0];
    expect(fixed?.plan.inputs.replanning).toBeUndefined();
  });
});

describe('held against the planner', () => {
  test.each(PEOPLE)('$name: the same sets in the first block, but for what must first be earned', (person) => {
    const first = compare(runOf(person)).filter(({ week }) => week.block === 1);
    const differs = first.filter(({ phone, fresh }) =>
      fresh === null ? phone.sets.length > 0 : wholeOf(phone) !== wholeOf(fresh),
    );
    const others = differs.filter(({ fresh, paper }) => !(fresh !== null && earnsFirst(fresh)) && !earnsFirst(paper));
    expect(
      others.map(({ week, occurrence, row, phone, fresh }) => [
        week.number,
        occurrence,
        row,
        wholeOf(phone),
        fresh && wholeOf(fresh),
      ]),
    ).toEqual([]);
    expect(differs.length).toBeLessThan(first.length / 10);
    // Where the paper offers a trial that the planner takes back, the phone does the same work in its place.
    for (const { phone, fresh, paper } of differs) {
      if (fresh !== null && earnsFirst(paper) && !earnsFirst(fresh)) expect(workOf(phone)).toBe(workOf(fresh));
    }
  });

  test.each(PEOPLE)(
    '$name: never more than one load above the paper, nor more sets, nor a load that is not there',
    (person) => {
      for (const { week, phone, paper } of compare(runOf(person))) {
        const strand = week.plan.inputs.strands.find(({ id }) => paper.id.startsWith(`${id}/`));
        const grams = (sets: readonly PlanSet[]) => Math.max(0, ...sets.map(({ load }) => load?.grams ?? 0));
        expect(phone.sets.length).toBeLessThanOrEqual(paper.sets.length);
        if (strand === undefined) continue;
        const { loads } =
          strand.versions.find(({ exercise }) => exercise === phone.exercise) ?? expect.fail(phone.exercise);
        const above = loads.find((load) => load.grams > grams(paper.sets))?.grams ?? grams(paper.sets);
        expect(grams(phone.sets)).toBeLessThanOrEqual(above);
        for (const { load } of phone.sets)
          if (load !== undefined) expect(loads.map((one) => one.grams)).toContain(load.grams);
      }
    },
  );

  test('done-trial: what was tried twice is worked with on the phone too, and never before the next edition would', () => {
    const grams = ({ sets }: Doing) =>
      Math.max(0, ...sets.flatMap(({ kind, load }) => (kind === 'work' ? (load?.grams ?? 0) : [])));
    const opened = compare(runOf(THRIVES_COARSELY)).filter(({ week, row, paper }) => {
      const strand = week.again.inputs.strands.find(({ id }) => paper.id.startsWith(`${id}/`));
      return row === 'goblet-squat' && strand?.tried !== undefined;
    });
    for (const { phone, fresh } of opened) expect(grams(phone)).toBeLessThanOrEqual(fresh === null ? 0 : grams(fresh));
    const risen = opened.filter(({ phone, paper }) => grams(phone) > grams(paper));
    expect(risen.length).toBeGreaterThan(0);
    // Opened in a block before, it stays open in what is planned again.
    const before = opened.filter(({ week }) => week.plan.inputs.strands.some(({ tried }) => tried !== undefined));
    expect(before.map(({ phone, fresh }) => fresh !== null && grams(phone) === grams(fresh))).not.toContain(false);
    expect(before.length).toBeGreaterThan(0);
  });

  test('the same again, in whatever order events come, and however often', () => {
    for (const person of [STALLS, HURT]) {
      for (const { plan, marked, today } of runOf(person).weeks.slice(0, 4)) {
        const whole = JSON.stringify(replan(plan, marked, isoOfDay(today)));
        expect(JSON.stringify(replan(plan, marked, isoOfDay(today)))).toBe(whole);
        expect(JSON.stringify(replan(plan, [...marked].reverse(), isoOfDay(today)))).toBe(whole);
        expect(JSON.stringify(replan(plan, [...marked, ...marked.slice(3)], isoOfDay(today)))).toBe(whole);
        expect(JSON.stringify(replan(JSON.parse(JSON.stringify(plan)), marked, isoOfDay(today)))).toBe(whole);
      }
    }
  });
});

describe('what a client meets', () => {
  const plan = runOf(THRIVES).weeks[0]?.plan ?? expect.fail('no plan');
  const day = '2027-01-05';
  const done = (more: Parameters<typeof doAsPlanned>[2]): readonly LogEvent[] =>
    doAsPlanned(plan, 1, { day: '2027-01-04', ...more });
  const squatIn = (changed: readonly ReplannedItem[]) =>
    changed.find(({ occurrence, row }) => occurrence === 4 && row === 'goblet-squat');

  test('as printed where the coach has not let it be otherwise, or only the coach should', () => {
    const { replanning: _, ...inputs } = plan.inputs;
    expect(replan({ ...plan, inputs }, done({}), day)).toEqual({ kind: 'fixed' });
    const moderate = { ...plan.inputs, standing: { ...plan.inputs.standing, moderate: true } };
    expect(replan({ ...plan, inputs: moderate }, done({}), day)).toEqual({ kind: 'fixed' });
  });

  test('as planned stays as planned', () => {
    expect(squatIn(changedIn(plan, done({}), day))).toBeUndefined();
  });

  test('too heavy: one load lighter, with the rule', () => {
    const missed = done({ reserve: 2, but: (set) => (set.kind === 'work' ? { reps: 5, asPlanned: false } : {}) });
    const squat = squatIn(changedIn(plan, missed, day));
    expect(squat?.paper?.load?.label).toBe('16 kg');
    expect(squat?.today?.load?.label).toBe('14 kg');
    expect(squat?.because.map(({ rule }) => rule)).toContain('done-missed');
  });

  test('pain of 4: left out, and the rest goes on; worse the next morning, one band higher', () => {
    const [first] = done({});
    const pain: LogEvent = {
      ...{ id: '00000000-0000-4000-8000-000000009999', seq: 9999, edition: 1, at: '2027-01-04T19:30:00+01:00' },
      ...{
        kind: 'pain',
        occurrence: 1,
        row: itemAt(plan, 1, 'goblet-squat')?.row ?? expect.fail(),
        report: { where: 'knee', degree: 4 },
      },
    };
    expect(first).toBeDefined();
    const changed = changedIn(plan, [...done({}), pain], day);
    expect(squatIn(changed)).toMatchObject({ today: null, paper: { kind: 'work' } });
    expect(squatIn(changed)?.because.map(({ rule }) => rule)).toContain('pain-leave');
    expect(changed.filter(({ today, row }) => today === null && row !== 'goblet-squat')).toEqual([]);
    const three = { ...pain, report: { where: 'knee', degree: 3 } } as const;
    const easier = squatIn(changedIn(plan, [...done({}), three], day));
    expect(easier?.today?.load?.grams).toBeLessThan(easier?.paper?.load?.grams ?? 0);
    const morning = (degree: number, worseNextMorning: boolean) =>
      squatIn(changedIn(plan, [...done({}), { ...pain, report: { where: 'knee', degree, worseNextMorning } }], day));
    expect(morning(2, false)?.today?.load).toEqual(squatIn(changedIn(plan, done({}), day))?.today?.load);
    expect(morning(2, true)?.today?.load).toEqual(easier?.today?.load);
    expect(morning(2, true)?.because.map(({ rule }) => rule)).toContain('pain-next-morning');
    expect(morning(3, true)).toMatchObject({ today: null });
    const alarm = { ...pain, report: { where: 'elsewhere', degree: 1, alarm: 'fainting' } } as const;
    expect(replan(plan, [...done({}), alarm], day)).toEqual({ kind: 'stopped', signs: ['fainting'] });
  });

  test('back after three weeks: lighter, fewer sets, more in reserve, nothing harder', () => {
    const [, , third] = runOf(VANISHES).weeks;
    if (third === undefined) return expect.fail();
    const changed = changedIn(third.plan, third.marked, '2027-02-15');
    const [next] = changed;
    const squat = changed.find(({ row, occurrence }) => row === 'goblet-squat' && occurrence === next?.occurrence);
    expect(squat?.today?.load?.grams).toBeLessThan(squat?.paper?.load?.grams ?? 0);
    expect(squat?.sets.filter(({ set }) => set === null).length).toBeGreaterThan(0);
    expect(squat?.today?.reserve).toBeGreaterThanOrEqual(40);
  });
});

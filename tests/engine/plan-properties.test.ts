/** What holds of every plan, over made-up studios, clients and kits; read from the plan and from what it was made of. */

import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { beforeAll, describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import { addDays, dayOfIso } from '../../src/model/day.js';
import type { KitItem } from '../../src/model/kit.js';
import type { Item, Plan, PlanSet } from '../../src/model/plan.js';
import type { Problem } from '../../src/model/problem.js';
import { runs } from '../deep.js';
import { type Breadth, generateStudio, type MadeUp } from './generate-studio.js';

/** More in `npm run verify:deep`. */
const RUNS = runs(200, 12_000);

interface Case {
  readonly seed: number;
  readonly breadth: Breadth;
  readonly made: MadeUp;
  readonly plan: Plan | null;
  readonly problems: readonly Problem[];
}
const cases: Case[] = [];
const planned = (): readonly (Case & { readonly plan: Plan })[] =>
  cases.flatMap((one) => (one.plan === null ? [] : [{ ...one, plan: one.plan }]));

function freeze<Value>(value: Value): Value {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(freeze);
  }
  return value;
}
const itemsOf = (plan: Plan): readonly Item[] =>
  plan.weeks.flatMap((week) => week.sessions.flatMap((session) => session.groups.flatMap((group) => group.items)));
/** Without the drills of a warm-up or cool-down, whose sets are no work. */
const workItems = (plan: Plan): readonly Item[] =>
  itemsOf(plan).filter(({ sets }) => sets.some(({ kind }) => kind === 'work' || kind === 'trial'));
const everySet = (item: Item): readonly PlanSet[] => [...item.sets, ...item.easier.flatMap((version) => version.sets)];
const isWork = (set: PlanSet): boolean => set.kind === 'work' || set.kind === 'trial';
/** A test stands in place of a work set. */
const isDone = (set: PlanSet): boolean => isWork(set) || set.kind === 'test';

/** Fails with the seed. */
function holds(of: Case, condition: boolean, what: string): void {
  if (!condition) throw new Error(`${of.breadth}, seed ${of.seed}: ${what}`);
}

beforeAll(() => {
  for (const breadth of ['walked', 'everything'] as const) {
    for (let seed = 1; seed <= RUNS; seed += breadth === 'walked' ? 1 : 2) {
      const made = freeze(generateStudio(seed, breadth));
      const { value, problems } = planBlock({ ...made, edition: 0 });
      cases.push({ seed, breadth, made, plan: value, problems });
    }
  }
});

describe('every plan', () => {
  test('is withheld exactly where an error is found, and enough of them stand to tell anything', () => {
    for (const one of cases) {
      const wrong = one.problems.some(({ severity }) => severity === 'error');
      holds(one, (one.plan === null) === wrong, 'withheld without an error, or planned with one');
    }
    expect(planned().length * 10).toBeGreaterThan(cases.length * 2);
  });

  test('is the same when made again', () => {
    for (const one of planned().filter((_, index) => index % 5 === 0)) {
      const again = planBlock({ ...generateStudio(one.seed, one.breadth), edition: 0 });
      expect(JSON.stringify(again.value)).toBe(JSON.stringify(one.plan));
    }
  });

  test('fits its published schema', () => {
    const schema: unknown = JSON.parse(
      readFileSync(new URL('../../src/engine/plan.schema.json', import.meta.url), 'utf8'),
    );
    const validate = new Ajv2020({ allErrors: true, allowUnionTypes: true }).compile(schema as object);
    for (const one of planned().filter((_, index) => index % 2 === 0)) {
      holds(one, validate(one.plan) === true, JSON.stringify(validate.errors?.slice(0, 3)));
    }
  });

  test('asks only for what the kit makes, no item in two places', () => {
    for (const one of planned()) {
      const grams = (item: KitItem): number => ('mass' in item ? item.mass.grams : 0);
      const kit = new Map(one.made.client.kit.map((item) => [item.id, grams(item)]));
      for (const set of itemsOf(one.plan).flatMap(everySet)) {
        const { load } = set;
        if (load === undefined) continue;
        const ids = load.pieces.map(({ id }) => id);
        holds(one, ids.length > 0 && new Set(ids).size === ids.length, `${set.key}: an item twice`);
        holds(
          one,
          load.pieces.every(({ id, grams }) => kit.get(id) === grams),
          `${set.key}: not in the kit`,
        );
        const all = load.pieces.reduce((sum, { grams }) => sum + grams, 0);
        if (load.band !== undefined) holds(one, ids.length === 1 && all === 0, `${set.key}: a band`);
        else holds(one, load.grams === all || Math.floor(all / 2) === load.grams, `${set.key}: does not add up`);
      }
    }
  });

  test('leaves the floor of reserve, in work, trials, gates and what to do otherwise', () => {
    for (const one of planned()) {
      for (const strand of one.plan.inputs.strands) {
        const { client } = one.made;
        for (const { week, floor } of strand.occurrences) {
          const least = Math.max(
            20,
            client.experience === 'novice' ? 30 : 20,
            client.blocksBefore === 0 && week <= 2 ? 40 : 20,
          );
          holds(one, floor >= least, `${strand.id}: floor ${floor} in week ${week}`);
        }
        for (const item of itemsOf(one.plan).filter(({ id }) => id.startsWith(`${strand.id}/`))) {
          if (item.capacity === null) continue;
          const week = Number(item.id.split('/').at(-1));
          const floor = Math.max(...strand.occurrences.filter((at) => at.week === week).map((at) => at.floor));
          for (const set of item.sets.filter(isWork)) {
            holds(one, (set.reserve ?? -1) >= floor, `${set.key}: leaves ${set.reserve} of ${floor}`);
            for (const other of set.otherwise ?? [])
              holds(one, (other.reserve ?? -1) >= floor, `${set.key}: otherwise`);
          }
        }
      }
    }
  });

  test('asks no more reserve than it floors, and a circuit asks one rep more', () => {
    for (const one of planned()) {
      for (const session of one.plan.weeks.flatMap((week) => week.sessions)) {
        for (const group of session.groups) {
          for (const item of group.items) {
            const floor = group.kind === 'circuit' ? 30 : 20;
            holds(
              one,
              item.asked.reserve === null || item.asked.reserve >= floor,
              `${item.id}: asks ${item.asked.reserve}`,
            );
          }
        }
      }
    }
  });

  test('needs no sign-off that was not given, and stays below the load signed off', () => {
    for (const one of planned()) {
      for (const item of itemsOf(one.plan)) {
        for (const set of item.sets) {
          const id = set.exercise ?? item.exercise;
          const exercise = one.made.library.exercises.find((other) => other.id === id);
          if (exercise?.facts.signOff !== true) continue;
          const seen = one.made.client.signOffs.filter((signOff) => signOff.exercise === id);
          const upTo = Math.max(...seen.map((signOff) => signOff.upTo?.grams ?? 0));
          const given = seen.some((signOff) => signOff.date <= one.made.today);
          holds(one, given, `${set.key}: not signed off`);
          const inPounds = set.load?.label.endsWith(' lb') === true;
          const other = seen.some((signOff) => (signOff.upTo?.unit === 'lb') !== inPounds);
          // A bell of 53 lb is the one of 24 kg.
          const most = other ? Math.floor((upTo * 101) / 100) : upTo + 8;
          holds(one, (set.load?.grams ?? 0) <= most, `${set.key}: above the load signed off`);
        }
      }
    }
  });

  test('asks nothing that must be avoided, nor much of what wants care', () => {
    for (const one of planned()) {
      const dates = one.plan.weeks.flatMap((week) => week.sessions.map(({ date }) => dayOfIso(date) ?? 0));
      const [first, last] = [Math.min(...dates), Math.max(...dates)];
      for (const caution of one.made.client.cautions) {
        if (caution.phases.length > 0 || caution.from > last || (caution.until ?? last) < first) continue;
        const used = itemsOf(one.plan).flatMap((item) => [
          item.exercise,
          ...item.easier.map(({ exercise }) => exercise?.split('#')[0]),
        ]);
        for (const id of new Set(used)) {
          const asks = one.made.library.exercises.find((exercise) => exercise.id === id)?.facts.asks ?? [];
          const met = asks.filter((ask) => ask.of === caution.what);
          const wrong = met.some((ask) => caution.degree === 'avoid' || ask.degree === 'much');
          holds(one, !wrong, `${id} asks ${caution.what}`);
        }
      }
    }
  });

  test('fits the minutes', () => {
    for (const one of planned()) {
      for (const session of one.plan.weeks.flatMap((week) => week.sessions)) {
        holds(one, session.minutes <= one.made.client.minutes, `${session.id}: ${session.minutes} minutes`);
        const [first] = session.groups;
        const composed = first?.items.every(({ row }) => row.startsWith('warm-up-')) === true;
        holds(one, first?.kind === 'warm-up' && (!composed || (first.minutes ?? 0) >= 5), `${session.id}: no warm-up`);
      }
    }
  });

  test('eases in an easy week: fewer sets where there were several, and no heavier', () => {
    for (const one of planned()) {
      for (const { occurrences, id } of one.plan.inputs.strands) {
        occurrences.forEach((occurrence, index) => {
          const before = occurrences
            .slice(0, index)
            .filter(({ easy }) => !easy)
            .at(-1);
          if (!occurrence.easy || before === undefined) return;
          holds(
            one,
            occurrence.sets === 1 || occurrence.sets < before.sets,
            `${id}: ${before.sets} then ${occurrence.sets}`,
          );
        });
      }
    }
  });

  test('has an easier version of everything, and sets for it', () => {
    for (const one of planned()) {
      for (const item of itemsOf(one.plan)) holds(one, item.easier.length > 0, `${item.id}: nothing easier`);
      for (const item of workItems(one.plan)) {
        const worked = item.sets.filter(isDone).length;
        for (const version of item.easier) holds(one, version.sets.length === worked, `${item.id}: ${version.say}`);
      }
    }
  });

  test('lists every set once: rounds × sides, the weaker side first', () => {
    for (const one of planned()) {
      const keys = itemsOf(one.plan).flatMap((item) => item.sets.map(({ key }) => key));
      holds(one, new Set(keys).size === keys.length, 'a key twice');
      for (const item of workItems(one.plan)) {
        const sides = item.sides === 'each' ? 2 : 1;
        holds(one, item.sets.filter(isDone).length === item.asked.sets * sides, `${item.id}: sets`);
        const first = item.sets.find(isDone)?.side;
        const weaker = item.capacity?.side;
        if (sides === 2 && weaker !== undefined && weaker !== 'both') holds(one, first === weaker, `${item.id}: side`);
      }
    }
  });

  test('begins weeks on a training day, and keeps the queue in order', () => {
    for (const one of planned()) {
      const sessions = one.plan.weeks.flatMap((week) => week.sessions);
      holds(one, one.plan.weeks[0]?.begins === sessions[0]?.date, 'the first week begins with the first session');
      sessions.forEach((session, index) => {
        const date = dayOfIso(session.date) ?? addDays(one.made.client.starts, -1);
        const weekday = ((((date + 3) % 7) + 7) % 7) + 1;
        holds(one, session.occurrence === index + 1, 'queue');
        holds(
          one,
          one.made.client.days.some((of) => of === weekday),
          `${session.date} is no training day`,
        );
        holds(one, index === 0 || (sessions[index - 1]?.date ?? '') < session.date, 'dates rise');
        holds(one, date >= one.made.client.starts, 'before the start');
      });
    }
  });
});

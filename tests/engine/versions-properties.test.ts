/**
 * Whatever the studio: no exercise in a plan, wherever it stands in it, is one that a caution says to avoid or that was
 * never passed where it must be. Written apart from the engine, from what the words say.
 */
import { describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import type { Client } from '../../src/model/client.js';
import { dayOfIso } from '../../src/model/day.js';
import type { Exercise } from '../../src/model/exercise.js';
import type { Group, Item, Plan, PlanSet } from '../../src/model/plan.js';
import type { Library } from '../../src/model/studio.js';
import { generateStudio } from './generate-studio.js';

const RUNS = 400;

interface Reference {
  readonly exercise: string;
  readonly where: string;
  readonly item: Item;
  readonly grams: number;
}

const gramsOf = (load: PlanSet['load']): number => load?.grams ?? 0;

function referencesOf(item: Item, kind: Group['kind']): readonly Reference[] {
  const found: Reference[] = [];
  const add = (exercise: string, where: string, grams = 0): void => {
    found.push({ exercise: exercise.split('#')[0] ?? '', where: `${kind}, ${where}`, item, grams });
  };
  add(item.exercise, 'item');
  for (const set of item.sets) {
    add(set.exercise ?? item.exercise, set.kind, gramsOf(set.load));
    if (set.then !== undefined) add(item.exercise, 'then', gramsOf(set.then.load));
    for (const other of set.otherwise ?? []) add(other.exercise, 'otherwise', gramsOf(other.load));
    for (const choice of set.choose ?? []) add(choice.exercise, 'choose', gramsOf(choice.load));
    if (set.gate !== undefined) add(set.gate.needs.exercise, 'gate', gramsOf(set.gate.needs.load));
  }
  for (const option of item.allowed) add(option.exercise, 'allowed');
  for (const easier of item.easier) {
    add(easier.exercise ?? item.exercise, 'easier');
    for (const set of easier.sets) add(easier.exercise ?? item.exercise, 'easier', gramsOf(set.load));
  }
  for (const harder of item.harder) add(harder.exercise ?? item.exercise, 'harder');
  return found;
}

const everyReference = (plan: Plan): readonly Reference[] =>
  plan.weeks.flatMap(({ sessions }) =>
    sessions.flatMap(({ groups }) =>
      groups.flatMap(({ kind, items }) => items.flatMap((item) => referencesOf(item, kind))),
    ),
  );

/** The exercise, and every part of it. */
function wholeOf(exercise: Exercise, library: Library): readonly Exercise[] {
  const parts = library.exercises.filter(({ id }) => exercise.facts.parts.includes(id));
  return [exercise, ...parts.flatMap((part) => wholeOf(part, library))];
}

interface Days {
  readonly first: number;
  readonly last: number;
}

function cautionMet(exercise: Exercise, client: Client, { first, last }: Days, done: boolean): string | null {
  const lower = (phases: readonly string[]) => phases.map((phase) => phase.toLowerCase());
  for (const { what, degree, phases, from, until } of client.cautions) {
    if (from > last || (until !== undefined && until < first)) continue;
    for (const ask of exercise.facts.asks) {
      const apart = phases.length > 0 && ask.phases.length > 0;
      if (ask.of !== what || (apart && !lower(ask.phases).some((phase) => lower(phases).includes(phase)))) continue;
      if (degree === 'avoid') return `avoid ${what}`;
      if (ask.degree === 'much' && !done) return `take care with ${what}`;
    }
  }
  return null;
}

function mustBePassed({ facts }: Exercise): boolean {
  const { asks, signOff, room, way } = facts;
  return (
    signOff ||
    way === 'swing' ||
    room.ceiling === 'load overhead' ||
    asks.some(({ of }) => of === 'speed' || of === 'loaded twist')
  );
}

/** Why it is not passed: never, too long ago for the block's first day, or too heavy. */
function unpassed(exercise: Exercise, client: Client, today: number, first: number, grams: number): string | null {
  const passed = client.signOffs.filter(({ exercise: id, date }) => id === exercise.id && date <= today);
  const used = [...passed, ...client.tests.filter(({ exercise: id, date }) => id === exercise.id && date <= today)];
  if (passed.length === 0) return mustBePassed(exercise) ? 'never passed' : null;
  const latest = Math.max(...passed.map(({ date }) => date));
  const upTo = Math.max(
    ...passed
      .filter(({ date }) => date === latest)
      .map((each) => each.upTo?.grams ?? (mustBePassed(exercise) ? 0 : Infinity)),
  );
  // Half a gram for each piece is let pass where pounds are turned into grams.
  if (grams > upTo + 5) return `${grams} g, passed to ${upTo}`;
  const lapsed = first - Math.max(...used.map(({ date }) => date)) > 84;
  return lapsed && mustBePassed(exercise) ? 'lapsed' : null;
}

describe('every exercise that a plan names anywhere', () => {
  const faults: string[] = [];
  const seen = { plans: 0, cautioned: 0, signed: 0, references: 0 };
  for (let seed = 1; seed <= RUNS; seed += 1) {
    const { library, client, today } = generateStudio(seed);
    const { value } = planBlock({ library, client, today, edition: 0 });
    if (value === null) continue;
    const dates = value.weeks.flatMap(({ sessions }) => sessions.map(({ date }) => dayOfIso(date) ?? 0));
    const days = { first: Math.min(...dates), last: Math.max(...dates) };
    seen.plans += 1;
    seen.cautioned += client.cautions.length > 0 ? 1 : 0;
    seen.signed += client.signOffs.length > 0 ? 1 : 0;
    for (const { exercise: id, where, item, grams } of everyReference(value)) {
      const exercise = library.exercises.find((each) => each.id === id);
      if (exercise === undefined) {
        faults.push(`seed ${seed}: ${id} is not in the library`);
        continue;
      }
      seen.references += 1;
      const done = item.done !== undefined && item.exercise === id;
      for (const part of wholeOf(exercise, library)) {
        const met = cautionMet(part, client, days, done);
        const not = unpassed(part, client, today, days.first, grams);
        if (met !== null) faults.push(`seed ${seed}: ${id} (${where}): ${met}`);
        if (not !== null) faults.push(`seed ${seed}: ${id} (${where}): ${not}`);
      }
    }
  }

  test('is one this client may do', () => {
    expect(faults.slice(0, 10)).toEqual([]);
  });

  test('and there are enough of them to tell anything', () => {
    expect(seen.plans).toBeGreaterThan(60);
    expect(seen.cautioned).toBeGreaterThan(20);
    expect(seen.signed).toBeGreaterThan(30);
    expect(seen.references).toBeGreaterThan(10_000);
  });
});

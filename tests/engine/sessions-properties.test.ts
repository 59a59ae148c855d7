/** What holds of the sessions of every plan, over made-up studios with every way of working. */
import { beforeAll, describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import type { Exercise } from '../../src/model/exercise.js';
import type { Group, Item, Plan, PlanSession, PlanSet } from '../../src/model/plan.js';
import { generateStudio, type MadeUp } from './generate-studio.js';

const SEEDS = 500;
interface Planned {
  readonly seed: number;
  readonly made: MadeUp;
  readonly plan: Plan;
}
const plans: Planned[] = [];
const sessionsOf = ({ plan }: Planned): readonly PlanSession[] => plan.weeks.flatMap(({ sessions }) => sessions);
const setsOf = ({ groups }: PlanSession): readonly PlanSet[] =>
  groups.flatMap(({ items }) => items.flatMap(({ sets }) => sets));
const exerciseOf = ({ made }: Planned, id: string): Exercise =>
  made.library.exercises.find((exercise) => exercise.id === id) ?? expect.fail(`${id} is not there`);

beforeAll(() => {
  for (let seed = 1; seed <= SEEDS; seed += 1) {
    const made = generateStudio(seed, 'everything');
    const { value } = planBlock({ ...made, edition: 0 });
    if (value !== null) plans.push({ seed, made, plan: value });
  }
});

function each(check: (of: Planned, session: PlanSession) => void): void {
  for (const of of plans) for (const session of sessionsOf(of)) check(of, session);
}
const circuits = ({ groups }: PlanSession): readonly Group[] => groups.filter(({ kind }) => kind === 'circuit');

describe('every session', () => {
  test('is one of many, with circuits, warm-ups and cool-downs among them', () => {
    expect(plans.length).toBeGreaterThan(40);
    const groups = plans.flatMap((of) => sessionsOf(of).flatMap((session) => session.groups));
    const many = (kind: Group['kind']) =>
      groups.filter((group) => group.kind === kind && group.items.length > 0).length;
    for (const kind of ['circuit', 'warm-up', 'cool-down', 'straight'] as const)
      expect(many(kind), kind).toBeGreaterThan(20);
  });

  test('fits the client’s minutes', () => {
    each(({ made, seed }, { minutes }) => expect(minutes, `seed ${seed}`).toBeLessThanOrEqual(made.client.minutes));
  });

  test('takes no longer than counted, set by set', () => {
    each((of, session) => {
      expect(plainSeconds(of, session), `seed ${of.seed} ${session.id}`).toBeLessThanOrEqual(60 * session.minutes);
    });
  });

  test('has a key of its own for every set, and a row once', () => {
    for (const of of plans) {
      const keys = sessionsOf(of).flatMap((session) => setsOf(session).map(({ key }) => key));
      expect(new Set(keys).size, `seed ${of.seed}`).toBe(keys.length);
    }
    each(({ seed }, { groups }) => {
      const rows = groups.flatMap(({ items }) => items.map(({ row }) => row));
      expect(new Set(rows).size, `seed ${seed}`).toBe(rows.length);
    });
  });

  test('asks nothing fast in a warm-up, no load in a composed one', () => {
    each((of, { groups, id }) => {
      const template = of.made.library.programmes[0]?.sessions.find((one) => one.id === id);
      const own = template?.blocks.some(({ kind }) => kind === 'warm-up') ?? false;
      for (const item of groups.flatMap((group) => (group.kind === 'warm-up' && !own ? group.items : []))) {
        expect(item.sets.every(({ load }) => load === undefined)).toBe(true);
        expect(exerciseOf(of, item.exercise).facts.asks.some((ask) => ask.of === 'speed')).toBe(false);
        expect(item.easier.length).toBeGreaterThan(0);
      }
    });
  });
});

describe('every circuit', () => {
  test('has at most two pieces in hand over its rounds', () => {
    each((of, session) => {
      for (const { items } of circuits(session)) {
        const plates = new Set<string>(of.made.client.kit.filter(({ kind }) => kind === 'plate').map(({ id }) => id));
        const worked = items.flatMap(({ sets }) => sets.filter(({ kind }) => kind === 'work' || kind === 'trial'));
        const held = worked.flatMap(({ load, then }) => [...(load?.pieces ?? []), ...(then?.load.pieces ?? [])]);
        const inHand = new Set(held.map(({ id }) => id).filter((id) => !plates.has(id)));
        expect(inHand.size, `seed ${of.seed}`).toBeLessThanOrEqual(2);
      }
    });
  });

  test('changes no plates inside', () => {
    each((of, session) => {
      const holders = new Set<string>(
        of.made.client.kit.filter(({ kind }) => kind === 'handle' || kind === 'bar').map(({ id }) => id),
      );
      for (const { items } of circuits(session)) {
        const loads = items.flatMap(({ sets }) =>
          sets.flatMap(({ kind, load }) =>
            (kind === 'work' || kind === 'trial') && load !== undefined ? [load.pieces.map(({ id }) => id)] : [],
          ),
        );
        for (const id of holders) {
          const states = new Set(
            loads.filter((pieces) => pieces.some((piece) => piece === id)).map((pieces) => pieces.join(' ')),
          );
          expect(states.size, `seed ${of.seed}`).toBeLessThanOrEqual(1);
        }
      }
    });
  });

  test('has no two hard grips and no two hinges side by side, round after round', () => {
    each((of, session) => {
      for (const { items } of circuits(session)) {
        if (items.length < 2) continue;
        items.forEach((item, index) => {
          const [a, b] = [item, items[(index + 1) % items.length]].map((one) => exerciseOf(of, one?.exercise ?? ''));
          const grips = [a, b].filter((one) =>
            one?.facts.asks.some((ask) => ask.of === 'grip' && ask.degree === 'much'),
          );
          const hinges = [a, b].filter((one) => one?.facts.pattern === 'hinge');
          expect(grips.length, `seed ${of.seed}: grip`).toBeLessThan(2);
          expect(hinges.length, `seed ${of.seed}: hinge`).toBeLessThan(2);
        });
      }
    });
  });
});

describe('every short version', () => {
  test('is some of the session’s own sets, each once, within ten minutes', () => {
    each(({ seed }, session) => {
      const own = new Map(setsOf(session).map((set) => [set.key, set]));
      const { minutes, sets } = session.short;
      expect(minutes, `seed ${seed}`).toBeLessThanOrEqual(10);
      expect(new Set(sets).size).toBe(sets.length);
      for (const key of sets) {
        const set = own.get(key) ?? expect.fail(`seed ${seed}: ${key} is no set of the session`);
        expect(['work', 'warm-up', 'feeler']).toContain(set.kind);
        expect(set.gate).toBeUndefined();
      }
    });
  });

  test('has both sides of every set, and a feeler set wherever its row has one', () => {
    each(({ seed }, session) => {
      const kept = new Set(session.short.sets);
      for (const { sets } of session.groups.flatMap(({ items }) => items)) {
        const own = sets.filter(({ key }) => kept.has(key));
        if (own.length === 0) continue;
        for (const { kind, round } of own) {
          const sides = sets.filter((set) => set.kind === kind && set.round === round);
          expect(
            sides.every(({ key }) => kept.has(key)),
            `seed ${seed}`,
          ).toBe(true);
        }
        for (const { kind, key } of sets) if (kind === 'feeler') expect(kept.has(key), `seed ${seed}`).toBe(true);
      }
    });
  });
});

/** The least that what is planned can take: work by the tempo planned, rests between sets, and what is around it. */
function plainSeconds(of: Planned, { groups }: PlanSession): number {
  return groups.reduce((sum, group) => {
    if (group.kind === 'warm-up' || group.kind === 'cool-down') return sum + 60 * (group.minutes ?? 0);
    return sum + group.items.reduce((all, item) => all + itemSeconds(of, item, group), 0);
  }, 0);
}

function itemSeconds(of: Planned, item: Item, group: Group): number {
  const sets = item.sets.filter(({ kind }) => kind !== 'warm-up');
  const rounds = sets.filter(({ side }) => side === undefined || side === sets[0]?.side);
  if (group.everySeconds !== undefined) return rounds.length * group.everySeconds;
  const work = sets.reduce((sum, set) => sum + setSeconds(of, item, set), 0);
  return work + Math.max(0, rounds.length - 1) * item.restSeconds;
}

function setSeconds(of: Planned, item: Item, { reps = 0, seconds = 0, exercise }: PlanSet): number {
  const { tempo } = exerciseOf(of, exercise ?? item.exercise).facts;
  const lower = item.tempo === 'normal' ? tempo.lower : Math.max(4, tempo.lower);
  const rep = lower + tempo.bottom + (tempo.lift === 'fast' ? 1 : tempo.lift) + tempo.top;
  return Math.max(seconds, reps * rep);
}

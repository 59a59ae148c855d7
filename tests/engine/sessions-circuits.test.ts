/** Circuits: what is in hand over all rounds, what stands side by side, and what is done straight instead. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import { orderCircuit } from '../../src/engine/sessions/order-circuit.js';
import type { Client } from '../../src/model/client.js';
import type { Exercise, Facts } from '../../src/model/exercise.js';
import type { Plan } from '../../src/model/plan.js';
import type { Programme, Row } from '../../src/model/programme.js';
import { PLACE } from './generate-exercises.js';
import { kitOf } from './generate-studio.js';
import {
  aBlock,
  aClient,
  aLibrary,
  anExercise,
  aProgramme,
  aRow,
  aSession,
  ask,
  aTest,
  bells,
  bodyweight,
  kg,
  on,
} from './make-block.js';
import { idsOf, made, type Overrides } from './make-session.js';

const circuit = (ids: string, rows: Partial<Row> = {}, rounds = 3) =>
  aProgramme([
    aSession(
      'A',
      aBlock(
        ids.split(' ').map((id) => aRow(id, rows)),
        { kind: 'circuit', rounds, name: 'Round' },
      ),
    ),
  ]);
const of = (id: string, facts: Partial<Facts> = {}): Exercise => anExercise(id, facts);
const tested = (of: Readonly<Record<string, string>>, reps = 12) =>
  Object.entries(of).map(([id, load]) => aTest(id, reps, { load: kg(load), reserve: 30 }));

describe('what is in hand', () => {
  const three = [of('a'), of('b'), of('c')];
  const shape = (client: Partial<Client>, exercises: readonly Exercise[] = three, values: Overrides = {}) =>
    made(circuit(exercises.map(({ id }) => id).join(' ')), exercises, client, values).shape;
  const loads = (client: Partial<Client>, exercises?: readonly Exercise[]) =>
    shape(client, exercises).rows.map(({ chain }) => chain.versions.map((one) => one.loads.map(({ label }) => label)));
  const stays = (client: Partial<Client>, exercises?: readonly Exercise[], values?: Overrides) =>
    shape(client, exercises, values).rows.every(({ inCircuit }) => inCircuit);

  test('two bells are never too many, whichever they are', () => {
    const two = [of('a'), of('b'), of('c', bodyweight)];
    expect(stays({}, two)).toBe(true);
    expect(loads({}, two)[0]?.[0]).toHaveLength(5);
    const shaped = shape({}, two);
    expect(shaped.rows.flatMap(shaped.reasonsOf)).toEqual([]);
  });

  test('three rows are held to the two bells they begin with', () => {
    const client = { tests: tested({ a: '16', b: '16', c: '12' }) };
    expect(stays(client)).toBe(true);
    expect(loads(client)).toEqual([[['12 kg', '16 kg']], [['12 kg', '16 kg']], [['12 kg', '16 kg']]]);
    const shaped = shape(client);
    expect(shaped.rows.flatMap(shaped.reasonsOf).map(({ rule, audience }) => `${rule} ${audience}`)).toEqual(
      ['a', 'b', 'c'].flatMap(() => ['circuit-bells client', 'circuit-bells coach']),
    );
    expect(shaped.findings).toEqual([]);
  });

  test.each<[string, Partial<Client>]>([
    ['they begin with three', { tests: tested({ a: '16', b: '20', c: '12' }) }],
    ['one is not known', { tests: tested({ a: '16', b: '16' }) }],
    ['what one begins with leaves too little', { tests: tested({ a: '16', b: '16', c: '12' }, 4) }],
    [
      'loads are cut after a break',
      {
        tests: tested({ a: '16', b: '16', c: '12' }),
        breaks: [{ from: on('2026-11-01'), until: on('2026-11-20'), cause: 'away', place: PLACE }],
      },
    ],
  ])('%s: done straight, and both are told', (_, client) => {
    expect(stays(client)).toBe(false);
    const shaped = shape(client);
    const told = shaped.reasonsOf(shaped.rows[0] ?? expect.fail('no row'));
    expect(told.map(({ rule, audience }) => `${rule} ${audience}`)).toEqual([
      'circuit-bells client',
      'circuit-bells coach',
    ]);
    expect(shaped.findings.map(({ rule, audience, row }) => [rule, audience, row])).toEqual([
      ['circuit-bells', 'coach', 'a'],
    ]);
  });

  test('circuit-bells set to 3 lets three be', () => {
    expect(stays({}, three, { 'circuit-bells': 3 })).toBe(true);
    expect(stays({}, [of('a'), of('b')], { 'circuit-bells': 1 })).toBe(false);
  });

  test('a pair is two pieces, a main bell with the next one up twice one', () => {
    const pair = of('a', { kit: { load: [{ kind: 'bell', count: 2, unequal: false }], unloaded: false, things: [] } });
    const kit = bells('12', '12', '16');
    expect(stays({ kit }, [pair, of('b', bodyweight)])).toBe(true);
    expect(stays({ kit }, [pair, of('b')])).toBe(false);
    // The same bells serve both: a pair of 12, and one of them.
    expect(stays({ kit, tests: tested({ a: '24', b: '12' }) }, [pair, of('b')])).toBe(true);
  });

  test('plates are never changed inside: two rows on one handle begin with the same, or are done straight', () => {
    const plated = {
      kit: { load: [{ kind: 'dumbbell', count: 1, unequal: false }], unloaded: false, things: [] },
    } as const;
    const kit = kitOf([['handle', kg('2')], ...['2', '2', '4', '4'].map((figure) => ['plate', kg(figure)] as const)]);
    const rows = [of('a', plated), of('b', plated)];
    expect(stays({ kit, tests: tested({ a: '6', b: '10' }) }, rows)).toBe(false);
    expect(stays({ kit, tests: tested({ a: '10', b: '10' }) }, rows)).toBe(true);
    const held = loads({ kit, tests: tested({ a: '10', b: '10' }) }, rows);
    expect(held.map((one) => one[0]?.length)).toEqual([1, 1]);
    expect(stays({ kit }, [of('a', plated), of('b', bodyweight)])).toBe(true);
  });

  test('the stronger of two sides keeps no bell of its own inside one', () => {
    const sided = [of('a', { sides: 'each' }), of('b')];
    const apart = [
      aTest('a', 9, { load: kg('20'), reserve: 20, side: 'right' }),
      aTest('a', 9, { load: kg('12'), reserve: 20, side: 'left' }),
      aTest('b', 12, { load: kg('16'), reserve: 30 }),
    ];
    const client = aClient({ tests: apart, minutes: 90 });
    const plan = (programme: Programme) => {
      const { value, problems } = planBlock({
        library: aLibrary(sided, programme),
        client,
        today: on('2026-12-20'),
        edition: 0,
      });
      if (value === null) throw new Error(JSON.stringify(problems));
      return value;
    };
    const bellsOf = (of: Plan) => {
      const items =
        of.weeks[2]?.sessions[0]?.groups.flatMap((group) => group.items.filter(({ row }) => row === 'a')) ?? [];
      return new Set(
        items.flatMap(({ sets }) => sets.filter(({ kind }) => kind === 'work').map(({ load }) => load?.label)),
      );
    };
    const dose = { kind: 'sets', sets: 3, reps: { min: 4, max: 8 }, eachSide: true } as const;
    const rows = [aRow('a', { dose, trials: false }), aRow('b', { trials: false })];
    const straight = aProgramme([aSession('A', aBlock(rows))]);
    expect(bellsOf(plan(straight)).size).toBe(2);
    expect(bellsOf(plan(aProgramme([aSession('A', aBlock(rows, { kind: 'circuit', rounds: 3 }))]))).size).toBe(1);
  });

  test('a part of a maximum may want something lighter than what was tested: done straight', () => {
    const client = { tests: tested({ a: '16', b: '16', c: '12' }) };
    const percent = circuit('a b c', { effort: { kind: 'percent', percent: 60 } });
    expect(made(percent, three, client).shape.rows.some(({ inCircuit }) => inCircuit)).toBe(false);
  });

  test('a trial wants a load of its own: only where there is room for it, and never with plates', () => {
    const trials = (client: Partial<Client>, exercises: readonly Exercise[]) =>
      shape(client, exercises).rows.map(({ row }) => row.trials);
    expect(trials({}, [of('a'), of('b', bodyweight)])).toEqual([true, true]);
    expect(trials({}, [of('a'), of('b')])).toEqual([false, false]);
    const plated = {
      kit: { load: [{ kind: 'dumbbell', count: 1, unequal: false }], unloaded: false, things: [] },
    } as const;
    const kit = kitOf([['handle', kg('2')], ...['2', '2'].map((figure) => ['plate', kg(figure)] as const)]);
    expect(trials({ kit }, [of('a', plated), of('b', bodyweight)])).toEqual([false, true]);
  });
});

describe('what stands side by side', () => {
  const grip = { ...bodyweight, asks: [ask('grip', 'much')] };
  const hinge = { ...bodyweight, pattern: 'hinge' } as const;
  const library = ['g1', 'g2', 'g3', 'h1', 'h2', 'h3', 'n1', 'n2', 'n3'].map((id) =>
    of(id, id.startsWith('g') ? grip : id.startsWith('h') ? hinge : bodyweight),
  );
  const shape = (ids: string, values: Overrides = {}) => made(circuit(ids), library, {}, values).shape;
  const order = (ids: string, values?: Overrides) => {
    const { rows } = shape(ids, values);
    return `${rows.every(({ inCircuit }) => inCircuit) ? '' : 'straight: '}${idsOf(rows)}`;
  };

  test('hard grips and hinges are kept apart, round after round, in the order nearest to the coach’s', () => {
    expect(order('h1 h2 n1 n2')).toBe('h1 n1 h2 n2');
    expect(order('g1 n1 g2 n2')).toBe('g1 n1 g2 n2');
    // The last of a round stands beside the first of the next.
    expect(order('g1 n1 n2 g2')).toBe('g1 n1 g2 n2');
    expect(order('g1 h1 g2 h2')).toBe('g1 h1 g2 h2');
    expect(order('g1 g2 h1 h2')).toBe('g1 h1 g2 h2');
    expect(order('n1 n2 g1')).toBe('n1 n2 g1');
  });

  test('where no order does they are done straight', () => {
    expect(order('h1 h2 n1')).toBe('straight: h1 h2 n1');
    expect(order('g1 g2')).toBe('straight: g1 g2');
    expect(shape('g1 g2').findings.map(({ rule }) => rule)).toEqual(['circuit-apart']);
  });

  test('circuit-apart set to 0 leaves the order, to 2 wants two rows between', () => {
    expect(order('h1 h2 n1', { 'circuit-apart': 0 })).toBe('h1 h2 n1');
    expect(order('h1 h2 n1 n2', { 'circuit-apart': 2 })).toBe('straight: h1 h2 n1 n2');
    expect(order('h1 h2 n1 n2 n3 g1', { 'circuit-apart': 2 })).toBe('h1 n1 n2 h2 n3 g1');
  });

  test('rows that passed another say so', () => {
    const { rows, reasonsOf } = shape('h1 h2 n1 n2');
    const moved = rows.filter((row) => reasonsOf(row).some(({ rule }) => rule === 'circuit-apart'));
    expect(idsOf(moved)).toBe('n1 h2');
  });

  test('no order nearer to the coach’s does: all of them tried', () => {
    fc.assert(
      fc.property(
        fc.shuffledSubarray(
          library.map(({ id }) => id),
          { minLength: 2, maxLength: 6 },
        ),
        (ids) => {
          const { context, shape: all } = made(aProgramme([aSession('A', aBlock(ids.map((id) => aRow(id))))]), library);
          const rows = all.rows;
          const ours = orderCircuit(rows, context.rules);
          const first = permutations(ids).find((one) => keepsApart(one));
          expect(ours === null ? null : idsOf(ours)).toBe(first === undefined ? null : first.join(' '));
        },
      ),
      { numRuns: 60, seed: 20_261_125 },
    );
  });

  /** In the order in which the first that differs comes from earlier in the list. */
  function permutations(ids: readonly string[]): readonly (readonly string[])[] {
    if (ids.length === 0) return [[]];
    return ids.flatMap((id) => permutations(ids.filter((other) => other !== id)).map((rest) => [id, ...rest]));
  }
  const keepsApart = (ids: readonly string[]): boolean =>
    ids.every((id, index) => {
      const next = ids[(index + 1) % ids.length] ?? '';
      return next === id || !['g', 'h'].some((kind) => id.startsWith(kind) && next.startsWith(kind));
    });
});

describe('a circuit done straight', () => {
  const planOf = (ids: string, exercises: readonly Exercise[], client: Partial<Client>): Plan => {
    const library = aLibrary(exercises, circuit(ids, { restSeconds: 30 }));
    const { value, problems } = planBlock({ library, client: aClient(client), today: on('2026-12-20'), edition: 0 });
    if (value === null) throw new Error(JSON.stringify(problems));
    return value;
  };
  const three = [of('a'), of('b', { pattern: 'push' }), of('c', { pattern: 'pull' })];

  test('leaves no rep more in reserve, keeps its rounds as sets, and counts as straight sets do', () => {
    const straight = planOf('a b c', three, { tests: tested({ a: '16', b: '20', c: '12' }) });
    const kept = planOf('a b c', three, { tests: tested({ a: '16', b: '16', c: '12' }) });
    const first = (plan: Plan) => plan.weeks[0]?.sessions[0]?.groups[1];
    expect(first(straight)).toMatchObject({ kind: 'straight', rounds: 1 });
    expect(first(kept)).toMatchObject({ kind: 'circuit', rounds: 3 });
    expect(first(straight)?.items.map(({ asked }) => [asked.sets, asked.reserve])).toEqual([
      [3, 30],
      [3, 30],
      [3, 30],
    ]);
    expect(first(kept)?.items.map(({ asked }) => [asked.sets, asked.reserve])).toEqual([
      [3, 40],
      [3, 40],
      [3, 40],
    ]);
    // Straight, each: 3 × 30 s, two rests of 30 s, a change of 15 s, a lighter set of 18 s with its change of 15 s, a
    // trial there and back 30 s, 20 s to the next: 248 s. Three of them and five minutes: 17.4 minutes.
    expect(straight.weeks[0]?.sessions[0]?.minutes).toBe(18);
    // In turn: 3 rounds × 3 rows × (30 + 30 s); a change at each of nine visits, 15 s; three ways of 20 s: 735 s.
    expect(kept.weeks[0]?.sessions[0]?.minutes).toBe(Math.ceil((300 + 735) / 60));
  });

  test('what is planned stays with two pieces in hand in every session', () => {
    const plan = planOf('a b c', three, { tests: tested({ a: '16', b: '16', c: '12' }) });
    for (const { sessions } of plan.weeks) {
      const items = sessions.flatMap(({ groups }) =>
        groups.filter(({ kind }) => kind === 'circuit').flatMap((g) => g.items),
      );
      const held = new Set(
        items.flatMap((item) => item.sets.flatMap(({ load }) => load?.pieces.map(({ id }) => id) ?? [])),
      );
      expect(held.size).toBeLessThanOrEqual(2);
    }
  });
});

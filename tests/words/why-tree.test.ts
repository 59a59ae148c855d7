/** The tree of reasons: every figure with its unit, every refusal with what would open it, and the same tree aloud. */
import { describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import { listMaxima } from '../../src/engine/repetition-maximum.js';
import type { Client } from '../../src/model/client.js';
import { exerciseId, sessionId } from '../../src/model/identity.js';
import type { Item, Plan } from '../../src/model/plan.js';
import { sayWhy, sayWhyTree } from '../../src/words/say-why.js';
import { tellItem, tellWhy } from '../../src/words/tell-why.js';
import { accountOf, type Called } from '../../src/words/why-account.js';
import { tellNext } from '../../src/words/why-next.js';
import type { WhyItem, WhyTree } from '../../src/words/why-tree.js';
import { aClient, aLibrary, anExercise, aTest, kg, on, oneSession } from '../engine/make-block.js';

const squat = anExercise('goblet-squat', { bodyShare: { share: 878, standing: 'published', source: 'a table' } });
const press = anExercise('press', { pattern: 'push' });
const called: Called = {
  client: 'Somebody New',
  programme: 'Block',
  exercise: (id) => (id === 'goblet-squat' ? 'Goblet squat' : 'Press'),
  maxima: listMaxima,
};

function planOf(client: Partial<Client> = {}): Plan {
  const { value, problems } = planBlock({
    library: aLibrary([squat, press], oneSession('goblet-squat', 'press')),
    client: aClient({
      bodyMass: { mass: kg('70') },
      tests: [aTest('goblet-squat', 8, { load: kg('16') }), aTest('press', 8, { load: kg('12') })],
      ...client,
    }),
    today: on('2026-12-10'),
    edition: 0,
  });
  if (value === null) throw new Error(problems.map(({ code }) => code).join());
  return value;
}
const plan = planOf();

function treeOf(of: Plan = plan, asked = {}): WhyTree {
  const tree = tellWhy(of, asked, called);
  if (tree === null) throw new Error('there is an account');
  return tree;
}
const itemsOf = (tree: WhyTree): readonly WhyItem[] =>
  tree.weeks
    .flatMap(({ sessions }) => sessions.flatMap(({ items }) => items))
    .filter(({ group }) => group === 'straight');

describe('the tree', () => {
  test('has every week, session and item of the plan, in its order', () => {
    const tree = treeOf();
    expect(tree.client).toEqual({ id: 'somebody', name: 'Somebody New' });
    expect(tree.weeks.map(({ week, easy }) => [week, easy])).toEqual(
      [1, 2, 3, 4, 5, 6].map((week) => [week, week === 6]),
    );
    const ids = plan.weeks.flatMap(({ sessions }) =>
      sessions.flatMap(({ groups }) => groups.flatMap(({ items }) => items.map(({ id }) => id))),
    );
    expect(tree.weeks.flatMap(({ sessions }) => sessions.flatMap(({ items }) => items.map(({ id }) => id)))).toEqual(
      ids,
    );
  });

  test('narrows to what is asked, by id or by name; nothing where the plan has nothing of it', () => {
    const narrowed = treeOf(plan, { week: 2, session: 'a', exercise: 'goblet SQUAT' });
    expect(itemsOf(narrowed).map(({ id }) => id)).toEqual(['A/goblet-squat/2']);
    expect(tellWhy(plan, { week: 7 }, called)).toBeNull();
    expect(tellWhy(plan, { exercise: 'nothing' }, called)).toBeNull();
    expect(sayWhy(plan, { session: 'z' }, called)).toBe('');
  });

  test('every reason has a sentence, a source and its inputs with units', () => {
    const reasons = itemsOf(treeOf()).flatMap((item) => [
      ...item.reasons,
      ...item.next.flatMap((next) => next.reasons),
    ]);
    expect(reasons.length).toBeGreaterThan(12);
    for (const { rule, says, source, inputs, confidence } of reasons) {
      expect(says, rule).toMatch(/^[A-Z0-9].*\.$/);
      expect(source, rule).not.toBe('');
      expect(['measured', 'estimated', 'weak']).toContain(confidence);
      for (const { name, value, unit } of inputs) {
        if (typeof value === 'number' && ['load', 'predicted', 'reps', 'asked', 'floor'].includes(name)) {
          expect(unit, `${rule} ${name}`).not.toBe('');
        }
      }
    }
  });

  test('an option that is refused says by which rule, why, and what would open it', () => {
    const next = itemsOf(treeOf()).flatMap((item) => item.next);
    const refused = next.filter(({ standing }) => standing === 'refused');
    expect(refused.length).toBeGreaterThan(2);
    for (const { refusedBy, says, unlock, predicted } of refused) {
      expect(refusedBy).toMatch(/^walk-/);
      expect(says).toMatch(/\.$/);
      expect(unlock).toMatch(/^[A-Z].*\.$/);
      if (predicted !== null) expect(predicted.unit).toBe('tenths');
    }
    const first = refused.find(({ refusedBy }) => refusedBy === 'walk-earned-twice');
    expect(first).toMatchObject({
      option: '20\u00a0kg',
      load: { value: 20_000, unit: 'g' },
      unlock: 'Two more good sessions running at the top of the range, or a good trial set, would open it.',
    });
    expect(next.some(({ standing }) => standing === 'taken')).toBe(false);
  });

  test('a test stands with what published equations make of it, each once and none deciding', () => {
    const [item] = itemsOf(treeOf());
    expect(item?.test?.resisted).toEqual({ value: 16_000 + 61_460, unit: 'g' });
    expect(item?.test?.reps).toEqual({ value: 100, unit: 'tenths' });
    // 77.46 kg × 10: Brzycki 77.46 × 36 / 27, Epley 77.46 × 4 / 3, O’Conner 77.46 × 1.25.
    const singles = new Map(item?.test?.maxima.map(({ equation, single }) => [equation, single.value]));
    expect([...singles.keys()]).toEqual(['Brzycki', 'Epley', 'Lander', 'Lombardi', 'Mayhew', 'O’Conner', 'Wathan']);
    expect([singles.get('Brzycki'), singles.get('Epley'), singles.get('O’Conner')]).toEqual([103_300, 103_300, 96_800]);
    expect(tellWhy(plan)?.weeks[0]?.sessions[0]?.items.flatMap(({ test: of }) => of?.maxima ?? [])).toEqual([]);
  });

  test('an equation is not asked beyond the reps it was published for', () => {
    expect(listMaxima(10_000, 11).map(({ equation }) => equation)).toEqual(['Mayhew']);
    expect(listMaxima(10_000, 16)).toEqual([]);
    expect(new Set(listMaxima(10_000, 1).map(({ grams }) => grams))).toEqual(new Set([10_000]));
  });

  test('the coach’s own value stands with its reason', () => {
    const own: Plan = {
      ...plan,
      rules: plan.rules.map((rule) => ({ ...rule, overridden: { value: 3, reason: 'ours are new' } })),
    };
    expect(itemsOf(treeOf(own))[0]?.reasons[0]?.own).toEqual({ value: '3', reason: 'ours are new' });
    expect(sayWhyTree(treeOf(own))).toContain('Your own value, 3: ours are new');
  });

  test('breaks, and a day after which nothing is planned, stand at its head', () => {
    const stopped: Plan = {
      ...plan,
      stops: { after: '2027-01-20', because: 'clearance' },
      inputs: { ...plan.inputs, breaks: [{ from: '2027-01-11', until: '2027-01-14', cause: 'ill' }] },
    };
    const said = sayWhyTree(treeOf(stopped));
    expect(said).toContain('Away from training from 11 January 2027 to 14 January 2027, ill.');
    expect(said).toContain('Nothing is planned after 20 January 2027: the clearance ends there.');
    expect(JSON.parse(JSON.stringify(treeOf(stopped))).stops.because).toBe('clearance');
  });
});

describe('a ladder', () => {
  const load = (grams: number) => ({
    grams,
    mode: 'total' as const,
    pieces: [],
    label: `${grams / 1000} kg`,
  });
  const rung = (grams: number, seconds: number, stage: number) => ({
    exercise: exerciseId('press'),
    load: load(grams),
    nextUp: null,
    deadStop: false,
    dose: { kind: 'seconds' as const, seconds },
    stage,
  });
  const first = plan.weeks[0]?.sessions[0]?.groups.flatMap(({ items }) => items).find(({ row }) => row === 'press');
  if (first === undefined) throw new Error('the row is planned');
  const item: Item = {
    ...first,
    rung: { number: 2, of: 3 },
    allowed: [
      { exercise: exerciseId('press'), tempo: 'normal', grams: 12_000, predicted: 0, rung: 2 },
      {
        exercise: exerciseId('press'),
        tempo: 'normal',
        grams: 16_000,
        predicted: 0,
        rung: 3,
        refusedBy: 'ladder-earned',
      },
    ],
  };
  const onLadder: Plan = {
    ...plan,
    inputs: {
      ...plan.inputs,
      ladders: [
        {
          id: 'A/press',
          session: sessionId('A'),
          row: item.row,
          way: 'hold',
          rungs: [rung(12_000, 20, 0), rung(12_000, 30, 0), rung(16_000, 20, 1)],
          start: 0,
          earned: 0,
          gates: true,
          occurrences: [],
          rules: { earned: 2, weeks: 2, easyDown: 1 },
        },
      ],
    },
  };
  const account = accountOf(onLadder, called, 'en-GB');

  test('says the next rung by its load and dose, predicts nothing, and leaves out the one held', () => {
    const told = tellItem(account, 'straight', item);
    expect(told.rung).toEqual({ number: 2, of: 3 });
    expect(
      told.next.map(({ option, predicted, rung: at }) => [option.replaceAll('\u00a0', ' '), predicted, at]),
    ).toEqual([['16 kg, 20 s', null, 3]]);
    expect(told.next[0]?.says).toMatch(/\.$/);
  });

  test('a rung behind a gate is taken if it is earned', () => {
    const [set] = item.sets.filter(({ kind }) => kind === 'work');
    if (set === undefined) throw new Error('there is work');
    const gated: Item = { ...item, sets: [{ ...set, otherwise: [] }] };
    const [held] = item.allowed;
    if (held === undefined) throw new Error('there is an option');
    expect(tellNext(account, gated, held)?.standing).toBe('if-earned');
    expect(tellNext(account, item, held)).toBeNull();
  });
});

describe('aloud', () => {
  const text = sayWhyTree(treeOf());
  const lines = text.split('\n');

  test('every line but a heading and a source is a whole sentence', () => {
    const told = lines.filter((line) => /^ {4}\S/.test(line)).map((line) => line.trim());
    expect(told.length).toBeGreaterThan(20);
    for (const line of told) expect(line).toMatch(/^[A-Z0-9].*\.$/);
    expect(text).not.toMatch(/undefined|NaN|\[object| {2}\.|\(\)/);
  });

  test('a source follows each reason, and a test is told once a row', () => {
    expect(lines.filter((line) => line.startsWith('      [')).length).toBeGreaterThan(20);
    expect(
      lines.filter((line) => line.includes('Goblet squat') || line.includes('published equations')),
    ).toContainEqual(expect.stringContaining('Epley 103.3 kg'));
    expect(lines.filter((line) => line.includes('published equations'))).toHaveLength(2);
  });

  test('what is worth knowing comes last', () => {
    const at = lines.indexOf('Worth knowing');
    expect(at).toBeGreaterThan(0);
    expect(lines.slice(at + 1).every((line) => line.startsWith('  '))).toBe(true);
  });
});

/** What of a plan may travel with a booklet: by the path of every value in it, whatever the plan it was taken from. */
import { describe, expect, test } from 'vitest';
import { bookletId, exerciseId, kitItemId, ruleId } from '../../src/model/identity.js';
import type { Item, Plan } from '../../src/model/plan.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { everyShapePlan } from '../fixtures/every-shape-plan.js';
import { load, plan as otherShapes } from '../fixtures/plan.js';
import { planDemo } from '../studio/demo-plans.js';
import { fixturePlan, SECRET, SECRET_NUMBER } from './plan-fixture.js';

const held = (path: string): readonly string[] =>
  ['kg', 'grams', 'mode', 'band', 'step', 'label', 'pieces.id', 'pieces.grams'].map((name) => `${path}.${name}`);
const amount = (path: string): readonly string[] => [
  ...['reps', 'seconds', 'metres', 'steps', 'then.reps'].map((name) => `${path}.${name}`),
  ...held(`${path}.load`),
  ...held(`${path}.then.load`),
];
const set = (path: string): readonly string[] => [
  ...amount(path),
  ...['key', 'kind', 'round', 'deadStop', 'side', 'exercise', 'optional', 'stopAt.reserve'].map((s) => `${path}.${s}`),
  ...amount(`${path}.gate.needs`),
  ...['exercise', 'reserve', 'weeks'].map((name) => `${path}.gate.needs.${name}`),
  ...amount(`${path}.otherwise`),
  ...['exercise', 'tempo', 'sets'].map((name) => `${path}.otherwise.${name}`),
  ...['left.min', 'left.max', 'exercise', 'reps'].map((name) => `${path}.choose.${name}`),
  ...held(`${path}.choose.load`),
];
const SESSION = 'weeks.sessions';
const GROUP = `${SESSION}.groups`;
const ITEM = `${GROUP}.items`;

/** Everything that may travel, and nothing else may. */
const ALLOWED: ReadonlySet<string> = new Set([
  ...['schema', 'bookletId', 'edition', 'standing', 'block', 'starts', 'last', 'away'],
  ...['phone.restLonger', 'phone.intoPlace', 'phone.awaySaid'],
  ...['pain.gentle', 'pain.easier', 'pain.leave', 'pain.nextMorning', 'weeks.number', 'weeks.begins', 'weeks.deload'],
  ...['id', 'name', 'date', 'occurrence', 'minutes', 'short.minutes', 'short.sets'].map((n) => `${SESSION}.${n}`),
  ...['kind', 'name', 'rounds', 'everySeconds', 'workSeconds', 'pauseSeconds', 'minutes'].map((n) => `${GROUP}.${n}`),
  ...['row', 'exercise', 'done.way', 'done.say', 'way', 'sides', 'tempo', 'restSeconds', 'counts'].map(
    (n) => `${ITEM}.${n}`,
  ),
  ...['min', 'max', 'unit', 'reserve', 'sets'].map((name) => `${ITEM}.asked.${name}`),
  ...['talk', 'rung.number', 'rung.of', 'easier.exercise', 'easier.say'].map((name) => `${ITEM}.${name}`),
  ...held(`${ITEM}.loads`),
  ...set(`${ITEM}.sets`),
  ...set(`${ITEM}.easier.set`),
]);

/** The path of every plain value; places in lists are left out. */
function pathsIn(value: unknown, path = ''): readonly string[] {
  if (Array.isArray(value)) return value.flatMap((one) => pathsIn(one, path));
  if (typeof value !== 'object' || value === null) return [path];
  return Object.entries(value).flatMap(([name, inner]) => pathsIn(inner, path === '' ? name : `${path}.${name}`));
}

/** As it travels: what is absent is not there. What planning again reads is looked through in tests/session/replan-part.test.ts. */
const sentOf = (plan: Plan): unknown => JSON.parse(JSON.stringify({ ...clientPlanOf(plan), replan: undefined }));
const strangersIn = (plan: Plan): readonly string[] => [
  ...new Set(pathsIn(sentOf(plan)).filter((path) => !ALLOWED.has(path))),
];

const first = (plan: Plan, row: string): Item | undefined =>
  plan.weeks
    .flatMap(({ sessions }) => sessions.flatMap(({ groups }) => groups.flatMap(({ items }) => items)))
    .find((item) => item.row === row);

const demo = await planDemo();

describe('the client’s part of a plan', () => {
  test('holds nothing that is the coach’s own', () => {
    const text = JSON.stringify(clientPlanOf(fixturePlan));
    expect(JSON.stringify(fixturePlan)).toContain(SECRET);
    expect(text).not.toContain(SECRET);
    expect(text).not.toContain(`${SECRET_NUMBER}`);
  });

  test.each([
    ['the plan written by hand', fixturePlan],
    ['every shape', everyShapePlan(3)],
    ['a feeler set, a trial and a gate', otherShapes],
    ...[...demo.plans],
  ])('of %s only what may travel travels', (_, plan) => {
    expect(strangersIn(plan)).toEqual([]);
  });

  test('between them these plans show nearly everything that may', () => {
    const seen = new Set([fixturePlan, everyShapePlan(3), otherShapes, ...demo.plans.values()].flatMap(pathsOfSent));
    const never = [...ALLOWED].filter(
      (path) => !seen.has(path) && !/\.(gate|otherwise|easier|then|choose)\./.test(path),
    );
    expect(never).toEqual(['bookletId']);
  });

  test('a field that is new in the plan stays at home', () => {
    const [week] = fixturePlan.weeks;
    const more = { ...fixturePlan, diagnosis: SECRET, weeks: [{ ...week, mood: SECRET }] };
    expect(JSON.stringify(sentOf(JSON.parse(JSON.stringify(more))))).not.toContain(SECRET);
  });

  test('keeps every set of every plan as it is printed, without what is predicted of it', () => {
    for (const plan of [everyShapePlan(3), otherShapes, ...demo.plans.values()]) {
      const sets = (of: Pick<ReturnType<typeof clientPlanOf> | Plan, 'weeks'>) =>
        of.weeks.flatMap(({ sessions }) =>
          sessions.flatMap(({ groups }) => groups.flatMap(({ items }) => items.flatMap((item) => item.sets))),
        );
      const printed = sets(plan).map((set) => {
        const bare = (own: readonly object[] | undefined) => own?.map((one) => ({ ...one, reserve: undefined }));
        return { ...set, reserve: undefined, otherwise: bare(set.otherwise), choose: bare(set.choose) };
      });
      expect(sets(clientPlanOf(plan))).toEqual(printed);
    }
  });

  test('why it ends where it ends is a fact of health and stays at home', () => {
    const plan = everyShapePlan(3);
    expect(plan.stops?.because).toBe('clearance');
    expect(JSON.stringify(sentOf(plan))).not.toMatch(/clearance|reasons|findings|inputs|caution/);
    expect(clientPlanOf(plan).last).toBe('2027-01-24');
  });

  test('a draft belongs to no booklet; what was issued says which; nothing of one withdrawn can be trained from', () => {
    expect(clientPlanOf(fixturePlan).bookletId).toBeUndefined();
    expect(clientPlanOf(fixturePlan).standing).toBe('stands');
    const own = bookletId('0123456789abcdef0123456789abcdef');
    expect(clientPlanOf(fixturePlan, { bookletId: own, standing: 'ended' })).toMatchObject({
      bookletId: own,
      standing: 'ended',
      weeks: [{ number: 1 }, { number: 2 }],
    });
    expect(clientPlanOf(fixturePlan, { bookletId: own, standing: 'withdrawn' }).weeks).toEqual([]);
  });
});

describe('degrees of pain', () => {
  const rule = {
    id: ruleId('pain-leave'),
    unit: 'of 10',
    source: '',
    locator: '',
    standing: 'practice',
    date: '',
  } as const;

  test('are the rulebook’s own, else as the plan quotes them, else the coach’s', () => {
    expect(clientPlanOf(fixturePlan).pain).toEqual({ gentle: 2, easier: 3, leave: 4, nextMorning: 1 });
    const quoted = { ...fixturePlan, rules: [{ ...rule, value: 5 }] };
    expect(clientPlanOf(quoted).pain.leave).toBe(5);
    const own = { ...fixturePlan, rules: [{ ...rule, value: 5, overridden: { value: 3, reason: SECRET } }] };
    expect(clientPlanOf(own).pain.leave).toBe(3);
    expect(JSON.stringify(clientPlanOf(own))).not.toContain(SECRET);
  });
});

describe('what an exercise can be done with', () => {
  const labels = (item: ReturnType<typeof clientItem>) => item?.loads?.map(({ label }) => label);
  const clientItem = (plan: Plan, row: string) =>
    clientPlanOf(plan)
      .weeks.flatMap(({ sessions }) => sessions.flatMap(({ groups }) => groups.flatMap(({ items }) => items)))
      .find((item) => item.row === row);

  test('is what lies in the house, lightest first, heavier than may be planned too', () => {
    expect(labels(clientItem(fixturePlan, 'goblet-squat'))).toEqual(['16 kg', '20 kg', '24 kg']);
    expect(labels(clientItem(everyShapePlan(1), 'push-up'))).toBeUndefined();
  });

  test('two bells of one mass make a pair; one alone does not', () => {
    const pair = (kg: number) => ({
      ...load(kg),
      mode: 'per-hand' as const,
      pieces: [1, 2].map((n) => ({ id: kitItemId(`bell-${kg}-${n}`), grams: kg * 1000 })),
    });
    const item = first(otherShapes, 'goblet-squat') ?? expect.fail();
    const [week] = otherShapes.weeks;
    const [session] = week?.sessions ?? [];
    if (week === undefined || session === undefined) expect.fail();
    const sets = item.sets.slice(0, 1).map((one) => ({ ...one, load: pair(12) }));
    const bell = (id: string, kg: number) => ({
      id: kitItemId(id),
      kind: 'bell' as const,
      grams: kg * 1000,
      label: `${kg} kg`,
    });
    const kit = [
      bell('bell-12-1', 12),
      bell('bell-12-2', 12),
      bell('bell-16-1', 16),
      bell('bell-20-1', 20),
      bell('bell-20-2', 20),
    ];
    const groups = [
      {
        kind: 'straight' as const,
        name: '',
        rounds: 1,
        items: [{ ...item, sets, exercise: exerciseId('front-squat') }],
      },
    ];
    const plan: Plan = {
      ...otherShapes,
      inputs: { ...otherShapes.inputs, kit },
      weeks: [{ ...week, sessions: [{ ...session, groups }] }],
    };
    const loads = clientItem(plan, 'goblet-squat')?.loads ?? [];
    expect(loads.map(({ label, pieces }) => [label, pieces.map(({ id }) => id).join(' ')])).toEqual([
      ['12 kg', 'bell-12-1 bell-12-2'],
      ['20 kg', 'bell-20-1 bell-20-2'],
    ]);
  });

  test('in every demo plan holds the load that is printed, and rises', () => {
    for (const plan of demo.plans.values()) {
      for (const { sessions } of clientPlanOf(plan).weeks) {
        for (const item of sessions.flatMap(({ groups }) => groups.flatMap(({ items }) => items))) {
          const known = (item.loads ?? []).map(({ label, mode }) => `${mode} ${label}`);
          for (const { load: own } of item.sets)
            if (own !== undefined) expect(known).toContain(`${own.mode} ${own.label}`);
          const grams = (item.loads ?? []).map((one) => one.grams ?? one.step ?? 0);
          expect(grams).toEqual([...grams].sort((a, b) => a - b));
          expect(new Set(known).size).toBe(known.length);
        }
      }
    }
  });
});

function pathsOfSent(plan: Plan): readonly string[] {
  return pathsIn(sentOf(plan));
}

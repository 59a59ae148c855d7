/** Two plans of one client held against each other: every difference in the work is told, and nothing else. */
import { describe, expect, test } from 'vitest';
import { compareEditions } from '../../src/engine/compare-plans.js';
import { planBlock } from '../../src/engine/plan-block.js';
import { type Change, isRowChange, type RowChange } from '../../src/model/change.js';
import { type ExerciseId, exerciseId, type ProgrammeId, programmeId, rowId } from '../../src/model/identity.js';
import type { Group, Item, Plan, PlanSession } from '../../src/model/plan.js';
import { load, plan, reason } from '../fixtures/plan.js';
import { generateStudio } from './generate-studio.js';

/** The fixture with one thing otherwise in the items of a row. */
const changed = (row: string, change: (item: Item, session: PlanSession) => Item | null, of: Plan = plan): Plan => ({
  ...of,
  weeks: of.weeks.map((week) => ({
    ...week,
    sessions: week.sessions.map((session) => ({
      ...session,
      groups: session.groups.map((group) => ({
        ...group,
        items: group.items.flatMap((item) => (item.row === row ? (change(item, session) ?? []) : [item])),
      })),
    })),
  })),
});
const SQUAT = 'goblet-squat';
const work = (item: Item, more: Partial<Item['sets'][number]>): Item => ({
  ...item,
  sets: item.sets.map((set) => (set.kind === 'work' ? { ...set, ...more } : set)),
});
const rows = (after: Plan, before = plan): readonly RowChange[] => compareEditions(before, after).filter(isRowChange);
const brief = (changes: readonly Change[]) =>
  changes.filter(isRowChange).map(({ what, way, row, places, toEnd }) => ({
    [`${row} ${what}`]: way,
    at: places.map(({ occurrence }) => occurrence),
    toEnd,
  }));
const weeks = plan.weeks.map(({ number }) => number);
const from2 = weeks.slice(1);

describe('row by row', () => {
  test('a plan against itself has nothing to tell, and neither has one made on another day', () => {
    expect(compareEditions(plan, plan)).toEqual([]);
    expect(compareEditions(plan, { ...plan, today: '2027-01-06', planId: 'another', edition: 7 })).toEqual([]);
    expect(compareEditions(plan, JSON.parse(JSON.stringify(plan)))).toEqual([]);
  });

  test.each<[string, string, string, (item: Item) => Item]>([
    ['load', 'load', 'down', (item) => work(item, { load: load(8) })],
    ['load', 'load', 'up', (item) => work(item, { load: load(28), reps: 3 })],
    ['reps', 'amount', 'down', (item) => work(item, { reps: 2 })],
    ['reps', 'amount', 'up', (item) => work(item, { reps: 12 })],
    ['fewer sets', 'sets', 'down', (item) => ({ ...item, sets: item.sets.slice(0, -1) })],
    ['tempo', 'tempo', 'other', (item) => ({ ...item, tempo: 'slow lowering' })],
    ['rest', 'rest', 'other', (item) => ({ ...item, restSeconds: 240 })],
    ['reserve', 'effort', 'down', (item) => ({ ...item, asked: { ...item.asked, reserve: 50 } })],
    ['reserve', 'effort', 'up', (item) => ({ ...item, asked: { ...item.asked, reserve: 10 } })],
    ['easier version', 'version', 'down', (item) => ({ ...item, exercise: exerciseId('box-squat') })],
    ['other version', 'version', 'other', (item) => ({ ...item, exercise: exerciseId('step-up') })],
  ])('%s: told as %s, %s, from the first session it holds in to the last', (_, what, way, change) => {
    const after = changed(SQUAT, (item, { occurrence }) => (occurrence >= 2 ? change(item) : item));
    expect(brief(compareEditions(plan, after))).toEqual([{ [`${SQUAT} ${what}`]: way, at: from2, toEnd: true }]);
  });

  test('what holds for one session alone does not hold to the end', () => {
    const after = changed(SQUAT, (item, { occurrence }) => (occurrence === 2 ? work(item, { reps: 2 }) : item));
    expect(brief(compareEditions(plan, after))).toEqual([{ [`${SQUAT} amount`]: 'down', at: [2], toEnd: false }]);
  });

  test('a gate that is there no more, with the same work, is told as that', () => {
    const after = changed(SQUAT, (item) => ({ ...item, sets: item.sets.map(({ gate, ...set }) => set) }));
    expect(rows(after).map(({ what }) => what)).toEqual(['conditions']);
  });

  test('a row that is new or left out, with what was or is done in it', () => {
    const without = changed(SQUAT, (item, { occurrence }) => (occurrence >= 2 ? null : item));
    const [gone] = rows(without);
    expect(gone).toMatchObject({ what: 'removed', way: 'down', toEnd: true });
    expect(gone?.places.every(({ before, after }) => before !== null && after === null)).toBe(true);
    const [back] = rows(plan, without);
    expect(back).toMatchObject({ what: 'added', way: 'up' });
    expect(back?.places.map(({ occurrence }) => occurrence)).toEqual(from2);
  });

  test('what is done is done: its session is held against nothing', () => {
    const after = changed(SQUAT, (item) => work(item, { load: load(8) }));
    const done = [{ occurrence: 1, day: '2027-01-04', edition: 1 }];
    const again = { ...after, inputs: { ...after.inputs, done } };
    expect(rows(again)[0]?.places.map(({ occurrence }) => occurrence)).toEqual(from2);
  });
});

describe('why', () => {
  const lighter = (...reasons: readonly ReturnType<typeof reason>[]) =>
    rows(changed(SQUAT, (item) => ({ ...work(item, { load: load(8) }), reasons: [...item.reasons, ...reasons] })))[0];

  test('a reason the plan before did not have; pain before anything else, marks before the walk', () => {
    const knee = [{ name: 'where', value: 'knee', unit: '' }];
    const told = lighter(
      reason('walk-held', 'coach'),
      reason('done-missed', 'coach'),
      reason('pain-easier', 'client', knee),
      reason('pain-easier', 'coach', knee),
    );
    expect(told?.reason).toMatchObject({ rule: 'pain-easier', audience: 'coach' });
    expect(told?.safety).toBe(true);
    expect(lighter(reason('walk-held', 'coach'), reason('done-missed', 'coach'))?.reason?.rule).toBe('done-missed');
    expect(lighter(reason('walk-held', 'coach'), reason('done-missed', 'coach'))?.safety).toBe(false);
  });

  test('a caution that lets an exercise stay never explains another one', () => {
    const after = changed(SQUAT, (item) => ({
      ...item,
      exercise: exerciseId('box-squat'),
      reasons: [reason('caution-met', 'coach'), reason('begin-lighter', 'coach')],
    }));
    expect(rows(after)[0]?.reason?.rule).toBe('begin-lighter');
  });

  test('of a row left out for want of minutes, what the session says of it', () => {
    const cut = { row: rowId(SQUAT), what: 'row' as const, sets: 3, reason: reason('minutes-cap', 'coach') };
    const without = changed(SQUAT, () => null);
    const trimmed = without.weeks.map((week) => ({
      ...week,
      sessions: week.sessions.map((session) => ({ ...session, trimmed: [...session.trimmed, cut] })),
    }));
    expect(rows({ ...without, weeks: trimmed })[0]?.reason?.rule).toBe('minutes-cap');
  });

  test('of a row left out, a finding of its own that is new', () => {
    const without = changed(SQUAT, () => null);
    const session = without.weeks[0]?.sessions[0]?.id;
    const finding = { rule: 'pain-leave', audience: 'coach' as const, row: rowId(SQUAT), weeks: [1, 2, 3] };
    const told = { ...finding, ...(session === undefined ? {} : { session }), reason: reason('pain-leave', 'coach') };
    const [gone] = rows({ ...without, findings: [...without.findings, told] });
    expect([gone?.reason?.rule, gone?.safety]).toEqual(['pain-leave', true]);
  });
});

describe('the block as a whole', () => {
  const later = (date: string) => `${date.slice(0, 8)}${String(Number(date.slice(8)) + 1).padStart(2, '0')}`;
  test('days that moved, sessions more or fewer, the last day, another programme', () => {
    const moved = {
      ...plan,
      weeks: plan.weeks.map((week, i) =>
        i === 0 ? week : { ...week, sessions: week.sessions.map((one) => ({ ...one, date: later(one.date) })) },
      ),
    };
    expect(compareEditions(plan, moved)).toMatchObject([
      { what: 'dates', moved: from2.map((occurrence) => ({ occurrence })) },
    ]);
    const shorter = { ...plan, weeks: plan.weeks.map((week, i) => (i === 2 ? { ...week, sessions: [] } : week)) };
    expect(compareEditions(plan, shorter)).toEqual([{ what: 'sessions', before: 3, after: 2 }]);
    const stops = { ...plan, stops: { after: '2027-01-20', because: 'clearance' as const } };
    expect(compareEditions(plan, stops)).toEqual([{ what: 'stops', before: null, after: '2027-01-20' }]);
    const programme: ProgrammeId = programmeId('another');
    expect(compareEditions(plan, { ...plan, programme })).toMatchObject([{ what: 'programme', after: 'another' }]);
  });

  test('the next block: its first sessions against the last heavy ones of the one before, exercise by exercise', () => {
    const next = { ...plan, block: 2, inputs: { ...plan.inputs, blocksBefore: 1 } };
    const changes = compareEditions({ ...plan, block: 1 }, next);
    expect(changes[0]).toEqual({ what: 'block', before: 1, after: 2, goesOn: false });
    const squat = changes.filter(isRowChange).find(({ row }) => row === SQUAT);
    // Week 3 is an easier one: the block got as far as week 2.
    expect(squat?.places[0]?.before?.sets[0]?.load?.label).toBe('20 kg');
    expect(squat?.places[0]?.after?.sets[0]?.load?.label).toBe('16 kg');
    const swap = (item: Item): Item => ({ ...item, exercise: exerciseId('step-up'), row: rowId('step') });
    const other = changed('one-arm-row', swap, next);
    const found = compareEditions({ ...plan, block: 1 }, other).filter(isRowChange);
    expect(found.map(({ what, row }) => `${what} ${row}`)).toEqual(
      expect.arrayContaining(['added step', 'removed one-arm-row']),
    );
  });
});

/** Work of every row by place in the queue: exercise, and each set's load and amount. */
function workIn({ weeks }: Plan): ReadonlyMap<string, string> {
  const figures = (item: Item, exercise: ExerciseId): string =>
    JSON.stringify([
      exercise,
      item.sets
        .filter(({ kind }) => kind === 'work' || kind === 'test')
        .map(({ load: held, reps, seconds, metres, side }) => [held?.label, reps, seconds, metres, side]),
    ]);
  const kind = (group: Group): string => (group.kind === 'test' ? 'test/' : '');
  return new Map(
    weeks.flatMap(({ sessions }) =>
      sessions.flatMap((session) =>
        session.groups.flatMap((group) =>
          group.items.map(
            (item) => [`${session.occurrence}/${kind(group)}${item.row}`, figures(item, item.exercise)] as const,
          ),
        ),
      ),
    ),
  );
}

describe('over made-up studios, with a test doubled', () => {
  const planned = Array.from({ length: 60 }, (_, seed) => {
    const { library, client, today } = generateStudio(seed);
    const tests = client.tests.map((one) => ({ ...one, reps: Math.min(60, one.reps * 2) }));
    const before = planBlock({ library, client, today, edition: 1 }).value;
    const after = planBlock({ library, client: { ...client, tests }, today, edition: 2 }).value;
    return before === null || after === null ? [] : [{ seed, before, after }];
  }).flat();

  test('there are some, and some of them differ', () => {
    expect(planned.length).toBeGreaterThan(10);
    expect(planned.some(({ before, after }) => compareEditions(before, after).length > 0)).toBe(true);
  });

  test('wherever the work of a row is otherwise there is a change of that row at that place', () => {
    for (const { seed, before, after } of planned) {
      const told = new Set(
        compareEditions(before, after)
          .filter(isRowChange)
          .flatMap(({ row, group, places }) =>
            places.map(({ occurrence }) => `${occurrence}/${group === 'test' ? 'test/' : ''}${row}`),
          ),
      );
      const [then, now] = [workIn(before), workIn(after)];
      for (const key of new Set([...then.keys(), ...now.keys()])) {
        if (then.get(key) !== now.get(key)) expect(told, `${seed}: ${key}`).toContain(key);
      }
    }
  });
});

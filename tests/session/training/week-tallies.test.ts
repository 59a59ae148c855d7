/** The tallies of a week say what is so: of each set that is printed, and of no other but those beyond the plan. */
import { describe, expect, test } from 'vitest';
import { bookOf } from '../../../layouts/book/leaves.js';
import { composeBooklet } from '../../../src/booklet/compose-booklet.js';
import type { ClientPlan, ClientSession } from '../../../src/model/client-plan.js';
import type { RowId } from '../../../src/model/identity.js';
import type { Act, SetScreen, TallyRow } from '../../../src/model/training.js';
import { sessionLeafId } from '../../../src/phone/read-leaf.js';
import { type RowTally, weekTallies } from '../../../src/session/training/week-tallies.js';
import { clientPlanOf } from '../../../src/web/client-plan.js';
import { speechOf } from '../../../src/words/speech.js';
import { planDemo } from '../../studio/demo-plans.js';
import { circuitPlan } from '../circuit-plan.js';
import { withItems } from '../with-items.js';
import { Held, nextAct } from './hold.js';

const demo = await planDemo();
const planOf = (client: string): ClientPlan => clientPlanOf(demo.plans.get(client) ?? expect.fail(client));
const DAY = 24 * 3600;

const tallies = (held: Held, week = 1): readonly RowTally[] => weekTallies(held.told(), held.state, week);

/** `left: done, to do`, of one row. */
const told = (rows: readonly TallyRow[]): readonly string[] =>
  rows.map(
    ({ side, marks }) => `${side === undefined ? '' : `${side}: `}${marks.map(({ state }) => state).join(', ')}`,
  );
const tallyOf = (held: Held, occurrence: number, row: string, week = 1): readonly string[] => {
  const own = tallies(held, week).filter((one) => one.occurrence === occurrence && one.row === row);
  expect(own).toHaveLength(1);
  return told(own[0]?.tally ?? []);
};
/** Every state of a session, in order. */
const statesIn = (held: Held, occurrence: number, week = 1): readonly string[] =>
  tallies(held, week)
    .filter((one) => one.occurrence === occurrence)
    .flatMap(({ tally }) => tally.flatMap(({ marks }) => marks.map(({ state }) => state)));

const sessionsOf = ({ weeks }: ClientPlan): readonly ClientSession[] => weeks.flatMap(({ sessions }) => sessions);

function onTo(held: Held, is: (held: Held) => boolean): Held {
  for (let taps = 0; taps < 300 && !is(held); taps += 1) held.wait(20).act(nextAct(held.screen()) ?? expect.fail());
  expect(is(held)).toBe(true);
  return held;
}
const atSet = (held: Held): boolean => {
  const screen = held.screen();
  return screen.kind === 'set' && screen.rest === null && screen.figures.set.kind === 'work';
};
const setOn = (held: Held): SetScreen => {
  const screen = held.screen();
  return screen.kind === 'set' ? screen : expect.fail(screen.kind);
};
/** In the first session, at its first set of work. */
const begun = (plan: ClientPlan): Held => {
  const held = new Held(plan, plan.starts);
  held.act({ act: 'open', occurrence: 1 });
  return onTo(held, atSet);
};
const toEnd = (held: Held): Held => onTo(held, ({ state }) => state.view === 'finished');

test.each([...demo.plans.keys()])(
  'of %s: before anything is marked, as many feet as are printed, on the same leaves',
  (id) => {
    const plan = demo.plans.get(id) ?? expect.fail(id);
    const client = demo.clients.find((one) => one.id === id) ?? expect.fail(id);
    const booklet = composeBooklet({ library: demo.library, client, plan });
    const { weeks } = bookOf(booklet, speechOf('en-GB').words);
    const sent = clientPlanOf(plan);
    const held = new Held(sent, sent.starts);
    for (const { week, days } of weeks) {
      const drawn = tallies(held, week).map((one): readonly [string, readonly string[]] => [
        `${sessionLeafId(sent, one)}--${one.row}`,
        told(one.tally),
      ]);
      const printed = days.flatMap(({ turns }) =>
        turns.map(({ id: address, cell }): readonly [string, readonly string[]] => [
          address,
          cell.tally.map(
            ({ label, strokes }) =>
              `${label === '' ? '' : label === booklet.labels.left ? 'left: ' : 'right: '}${Array(strokes).fill('to do').join(', ')}`,
          ),
        ]),
      );
      expect(new Map(drawn)).toEqual(new Map(printed));
    }
  },
);

describe('in a session under way', () => {
  const plan = planOf('rowan-ashby');

  test('each mark stands in it at once, and what is rubbed out is to do again; lighter sets before the work count for nothing', () => {
    const held = begun(plan);
    const { row, key } = setOn(held);
    expect(held.events.some((event) => event.kind === 'set' && event.key.includes(`/${row}/both/warm-up/`))).toBe(true);
    expect(tallyOf(held, 1, row)).toEqual(['to do, to do']);
    held.act({ act: 'mark', key });
    expect(tallyOf(held, 1, row)).toEqual(['done, to do']);
    held.wait(10).act({ act: 'rub out', key });
    expect(tallyOf(held, 1, row)).toEqual(['to do, to do']);
    held.wait(10).act({ act: 'leave out', key });
    expect(tallyOf(held, 1, row)).toEqual(['left out, to do']);
    held.reload();
    expect(tallyOf(held, 1, row)).toEqual(['left out, to do']);
  });

  test('easier and extra are told apart, side by side', () => {
    const held = begun(plan);
    const { row } = setOn(held);
    onTo(held, (one) => atSet(one) && setOn(one).row !== row);
    const sided = setOn(held);
    expect(sided.tally.map(({ side }) => side)).toEqual(['left', 'right']);
    held.wait(90).act({ act: 'mark', key: sided.key });
    const easier = sided.easier.find(({ set }) => set !== undefined) ?? expect.fail('no easier way');
    held.wait(90).act({ act: 'choose easier', easier });
    held.wait(90).act({ act: 'mark', key: setOn(held).key });
    expect(tallyOf(held, 1, sided.row)).toEqual(['left: done, to do', 'right: easier, to do']);
    held.wait(90).act({ act: 'one more', row: sided.row });
    expect(tallyOf(held, 1, sided.row)).toEqual(['left: done, to do, to do', 'right: easier, to do, to do']);
    onTo(held, (one) => !(one.screen().kind === 'set' && setOn(one).row === sided.row));
    expect(tallyOf(held, 1, sided.row)).toEqual(['left: done, easier, extra', 'right: easier, easier, extra']);
  });

  test('of its short version, what is not asked for today is left out, and to do again in the whole of it', () => {
    const held = new Held(plan, plan.starts);
    held.act({ act: 'open', occurrence: 1 });
    held.act({ act: 'today', today: 'short of time' });
    const short = new Set<string>(sessionsOf(plan)[0]?.short.sets);
    const asked = (): readonly string[] =>
      tallies(held).flatMap(({ occurrence, tally }) =>
        tally.flatMap(({ marks }) =>
          marks.flatMap(({ key, state }) => (occurrence === 1 && state === 'to do' ? [key] : [])),
        ),
      );
    const whole = asked();
    held.act({ act: 'go', how: 'short' });
    expect(asked()).toEqual(whole.filter((key) => short.has(key)));
    expect(asked().length).toBeLessThan(whole.length);
    expect(statesIn(held, 1)).toContain('left out');
    expect(new Set(statesIn(held, 2))).toEqual(new Set(['to do']));
    held.act({ act: 'go', how: 'as planned' });
    expect(asked()).toEqual(whole);
  });
});

describe('once nobody goes on with it', () => {
  const plan = planOf('rowan-ashby');
  const begin = (): Held => {
    const held = begun(plan);
    held.act({ act: 'mark', key: setOn(held).key });
    return held;
  };

  test('what is not marked of a session that is closed is left out, also where the page is read anew and in a later session', () => {
    const held = begin();
    held.wait(10).act({ act: 'stop here' });
    toEnd(held);
    const states = statesIn(held, 1);
    expect(states.filter((state) => state === 'done')).toHaveLength(1);
    expect(new Set(states)).toEqual(new Set(['done', 'left out']));
    held.die();
    expect(statesIn(held, 1)).toEqual(states);
    held.wait(3 * DAY).act({ act: 'open', occurrence: 2 });
    expect(statesIn(held, 1)).toEqual(states);
    expect(new Set(statesIn(held, 2))).toEqual(new Set(['to do']));
  });

  test('a session that was left off is over after half a day, and one of which nothing was done is not', () => {
    const held = begin();
    expect(statesIn(held.wait(11 * 3600), 1)).toContain('to do');
    expect(new Set(statesIn(held.wait(2 * 3600), 1))).toEqual(new Set(['done', 'left out']));
    const opened = new Held(plan, plan.starts);
    opened.act({ act: 'open', occurrence: 1 });
    opened.act({ act: 'today', today: 'as usual' });
    expect(new Set(statesIn(opened.wait(3 * DAY), 1))).toEqual(new Set(['to do']));
  });

  test('one more that was asked for and not done is not told as left out: no plan asked for it', () => {
    const held = begun(plan);
    const { row } = setOn(held);
    onTo(held, (one) => one.screen().kind === 'reserve');
    held.act({ act: 'one more', row });
    expect(tallyOf(held, 1, row)).toEqual(['done, done, to do']);
    held.wait(13 * 3600);
    expect(tallyOf(held, 1, row)).toEqual(['done, done']);
  });

  test('in a booklet that has ended nothing is to do', () => {
    const held = begin();
    held.standing = 'ended';
    for (const week of plan.weeks) {
      for (const { occurrence } of week.sessions) {
        const states = new Set(statesIn(held, occurrence, week.number));
        expect(states).toEqual(new Set(occurrence === 1 ? ['done', 'left out'] : ['left out']));
      }
    }
  });
});

describe('otherwise than printed', () => {
  test('what was planned again without a set leaves it out before its day, on it and after it, and no other', () => {
    const plan = planOf('rowan-ashby');
    const held = new Held(plan, plan.starts);
    const item =
      sessionsOf(plan)[0]
        ?.groups.filter(({ kind }) => kind === 'straight')
        .flatMap(({ items }) => items)[0] ?? expect.fail();
    const work = item.sets.filter(({ kind }) => kind === 'work');
    const last = work.at(-1) ?? expect.fail();
    held.replanned = [
      {
        occurrence: 1,
        row: item.row,
        exercise: item.exercise,
        tempo: item.tempo,
        sets: item.sets.map((set) => ({ key: set.key, set: set.key === last.key ? null : { ...set, choose: [] } })),
        paper: null,
        today: null,
        because: [],
        bounds: [],
      },
    ];
    const expected = [[...Array(work.length - 1).fill('to do'), 'left out'].join(', ')];
    expect(tallyOf(held, 1, item.row)).toEqual(expected);
    held.act({ act: 'open', occurrence: 1 });
    onTo(held, atSet);
    expect(tallyOf(held, 1, item.row)).toEqual(expected);
    toEnd(held);
    held.replanned = [];
    expect(tallyOf(held, 1, item.row)).toEqual([[...Array(work.length - 1).fill('done'), 'left out'].join(', ')]);
    expect(statesIn(held, 1).filter((state) => state === 'left out')).toHaveLength(1);
  });

  test('what must first be earned is to do as printed until its day', () => {
    const plan = planOf('aldous-brack');
    const gated = plan.weeks.flatMap(({ number, sessions }) =>
      sessions.flatMap(({ occurrence, groups }) =>
        groups.flatMap(({ items }) =>
          items.flatMap(({ row, sets }) =>
            sets.some(({ gate, otherwise }) => gate !== undefined || otherwise !== undefined)
              ? [{ number, occurrence, row, sets }]
              : [],
          ),
        ),
      ),
    );
    // One of them has fewer sets where it is not earned: before its day that is not known.
    const fewer = gated.find(({ sets }) => {
      const instead = sets.find(({ otherwise }) => otherwise !== undefined)?.otherwise ?? [];
      return instead.reduce((sum, one) => sum + one.sets, 0) < sets.filter(({ kind }) => kind === 'work').length;
    });
    const made = fewer ?? gated[0] ?? expect.fail('nothing is to be earned');
    const cut = withItems(plan, (item) => ({
      ...item,
      sets: item.sets.map((set) =>
        set.otherwise === undefined ? set : { ...set, otherwise: set.otherwise.map((one) => ({ ...one, sets: 1 })) },
      ),
    }));
    const held = new Held(cut, cut.starts);
    const printed = tallyOf(held, made.occurrence, made.row, made.number);
    expect(printed.join()).not.toContain('left out');
    held.act({ act: 'open', occurrence: made.occurrence });
    const today = tallyOf(held, made.occurrence, made.row, made.number);
    expect(today.join()).toMatch(/^(left: )?to do, left out/);
    expect(today.join().split(',').length).toBe(printed.join().split(',').length);
  });

  test('an exercise that waits for the coach is left out of every later session', () => {
    const plan = clientPlanOf(circuitPlan);
    const held = begun(plan);
    const { row } = setOn(held);
    const acts: readonly Act[] = [
      { act: 'something hurts' },
      { act: 'sign', sign: null },
      { act: 'where', where: 'knee' },
      { act: 'side', side: 'left' },
      { act: 'degree', degree: plan.pain.leave },
      { act: 'heed', take: 'leave' },
    ];
    for (const act of acts) held.act(act);
    toEnd(held);
    const later = plan.weeks.flatMap(({ number, sessions }) =>
      sessions.filter(({ occurrence }) => occurrence > 1).map(({ occurrence }) => ({ number, occurrence })),
    );
    const states = later.map(({ number, occurrence }) => {
      const own = tallies(held, number).filter((one) => one.occurrence === occurrence);
      const of = (is: (one: RowId) => boolean): ReadonlySet<string> =>
        new Set(
          own
            .filter((one) => is(one.row))
            .flatMap(({ tally }) => tally.flatMap(({ marks }) => marks.map(({ state }) => state))),
        );
      return [of((one) => one === row), of((one) => one !== row)];
    });
    expect(states.filter(([hurt]) => hurt?.size === 1 && hurt.has('left out')).length).toBeGreaterThan(0);
    for (const [hurt, others] of states) {
      expect(hurt?.has('to do')).toBe(false);
      expect([...(others ?? [])].filter((state) => state !== 'to do')).toEqual([]);
    }
  });
});

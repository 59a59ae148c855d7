/** Every shape of exercise on the demo's own booklets: what is asked, what is shown and what is marked. */
import { describe, expect, test } from 'vitest';
import type { ClientItem, ClientPlan, ClientSession } from '../../../src/model/client-plan.js';
import type { Act, Screen, SetScreen } from '../../../src/model/training.js';
import { clientPlanOf } from '../../../src/web/client-plan.js';
import { everyShapeSent } from '../../browser/every-shape-booklet.js';
import { planDemo } from '../../studio/demo-plans.js';
import { Held, nextAct } from './hold.js';

const demo = await planDemo();

function planOf(client: string): ClientPlan {
  const found = [...demo.plans].find(([id]) => id === client);
  return clientPlanOf(found?.[1] ?? expect.fail(`no plan of ${client}`));
}

const sessionsOf = ({ weeks }: ClientPlan): readonly ClientSession[] => weeks.flatMap(({ sessions }) => sessions);
const itemsOf = ({ groups }: ClientSession): readonly ClientItem[] => groups.flatMap(({ items }) => items);

/** The first session with such an exercise. */
function sessionWith(plan: ClientPlan, holds: (item: ClientItem) => boolean): ClientSession {
  return sessionsOf(plan).find((session) => itemsOf(session).some(holds)) ?? expect.fail('no such session');
}

type Answer = (screen: Screen) => Act | null | undefined;

/** From its day's evening on, as planned but for what is answered otherwise; each screen that was seen, in order. */
function go(held: Held, session: ClientSession, answer: Answer = () => undefined): readonly Screen[] {
  held.now = Math.max(held.now, Date.parse(`${session.date}T18:00:00Z`));
  held.act({ act: 'open', occurrence: session.occurrence });
  const seen: Screen[] = [];
  for (let taps = 0; taps < 400; taps += 1) {
    const screen = held.screen();
    seen.push(screen);
    if (screen.kind === 'finished') return seen;
    const act = answer(screen);
    if (act === null) return seen;
    const next = act ?? nextAct(screen);
    if (next === null) break;
    held.wait(10).act(next);
  }
  return expect.fail('came to no end');
}

const setsOf = (seen: readonly Screen[], row: string): readonly SetScreen[] => {
  const found = seen.flatMap((screen) => (screen.kind === 'set' && screen.row === row ? [screen] : []));
  return found.filter((screen, index) => found.findIndex(({ key }) => key === screen.key) === index);
};
const workOf = (seen: readonly Screen[], row: string): readonly SetScreen[] =>
  setsOf(seen, row).filter(({ figures }) => figures.set.kind === 'work');

const from = (plan: ClientPlan): Held => new Held(plan, plan.starts);

describe('a step that must be earned', () => {
  const plan = planOf('aldous-brack');
  const gated = sessionWith(plan, ({ sets }) => sets.some(({ gate }) => gate !== undefined));
  const item = itemsOf(gated).find(({ sets }) => sets.some(({ gate }) => gate !== undefined)) ?? expect.fail();
  const needs = item.sets.flatMap(({ gate }) => gate?.needs ?? [])[0] ?? expect.fail();
  const otherwise = item.sets.flatMap((set) => set.otherwise ?? [])[0] ?? expect.fail();
  const own = sessionsOf(plan).filter(({ id }) => id === gated.id);
  const later = own.find(({ occurrence }) => occurrence > gated.occurrence) ?? expect.fail();
  const before = own.filter(({ occurrence }) => occurrence < gated.occurrence);
  const enough: Answer = (screen) =>
    screen.kind === 'reserve' ? { act: 'reserve', reps: Math.ceil((needs.reserve ?? 0) / 10) } : undefined;

  test('not shown by marks, every set is done otherwise, in its week and in the week that rests on it', () => {
    for (const session of [gated, later]) {
      const sets = workOf(go(from(plan), session), item.row);
      expect(sets.length).toBeGreaterThan(1);
      const instead =
        itemsOf(session)
          .find(({ row }) => row === item.row)
          ?.sets.flatMap((set) => set.otherwise ?? [])[0] ?? expect.fail();
      for (const { figures, gate } of sets) {
        expect(gate?.earned).toBe(false);
        expect(figures).toMatchObject({ exercise: instead.exercise, set: { reps: instead.reps, load: instead.load } });
      }
    }
    expect(otherwise.load).not.toEqual(item.sets.find(({ kind }) => kind === 'work')?.load);
  });

  test('earned in every week it names, it stands as printed, and so does what rests on it once it was done', () => {
    const held = from(plan);
    for (const session of before) go(held, session, enough);
    const up = workOf(go(held, gated, enough), item.row);
    for (const { figures, gate, key } of up) {
      expect(gate?.earned).toBe(true);
      expect(figures.set.load).toEqual(item.sets.find((set) => set.key === key)?.load);
    }
    const then = workOf(go(held, later, enough), item.row);
    expect(then.map(({ gate }) => gate?.earned)).toEqual(then.map(() => true));
  });

  test('earned but not gone up, what rests on it stays as it was', () => {
    const held = from(plan);
    for (const session of before) go(held, session, enough);
    go(held, gated, (screen) =>
      screen.kind === 'set' && screen.row === item.row ? { act: 'leave exercise', row: item.row } : enough(screen),
    );
    const then = workOf(go(held, later, enough), item.row);
    expect(then.map(({ gate }) => gate?.earned)).toEqual(then.map(() => false));
  });

  test.each<[string, Answer]>([
    ['too little was left', (s) => (s.kind === 'reserve' ? { act: 'reserve', reps: 0 } : undefined)],
    [
      'a set was left out',
      (s) =>
        s.kind === 'set' && s.row === item.row && s.number === 2 && s.figures.set.kind === 'work'
          ? { act: 'leave out', key: s.key }
          : enough(s),
    ],
    [
      'a rep was missing',
      (s) =>
        s.kind === 'set' && s.row === item.row && s.figures.set.kind === 'work' && s.figures.set.reps !== undefined
          ? { act: 'say', key: s.key, amount: s.figures.set.reps - 1 }
          : enough(s),
    ],
  ])('not earned where %s', (_, short) => {
    const held = from(plan);
    for (const session of before) {
      const inWeek = plan.weeks.find(({ sessions }) => sessions.includes(session))?.number;
      go(held, session, needs.weeks.includes(inWeek ?? 0) ? short : enough);
    }
    const sets = workOf(go(held, gated, enough), item.row);
    expect(new Set(sets.map(({ gate }) => gate?.earned))).toEqual(new Set([false]));
  });

  test('said by nobody, sets done as planned are taken as the plan has them, and one more than planned takes nothing back', () => {
    const held = from(plan);
    for (const session of before) {
      go(held, session, (screen) => {
        if (screen.kind !== 'reserve') return undefined;
        const extra = held.events.some((event) => event.kind === 'set' && event.done === 'extra');
        const more = screen.row === item.row && !extra;
        return more ? { act: 'one more', row: screen.row } : { act: 'reserve', reps: null };
      });
    }
    expect(held.events.some((event) => event.kind === 'set' && event.done === 'extra')).toBe(true);
    const sets = workOf(go(held, gated, enough), item.row);
    expect(new Set(sets.map(({ gate }) => gate?.earned))).toEqual(new Set([true]));
  });
});

describe('a feeler set', () => {
  const plan = planOf('maud-ferrier');
  const session = sessionWith(
    plan,
    ({ sets, sides }) => sides === 'each' && sets.some(({ kind }) => kind === 'feeler'),
  );
  const isFelt = ({ sets, sides }: ClientItem): boolean =>
    sides === 'each' && sets.some(({ choose }) => choose !== undefined);
  const item = itemsOf(session).find(isFelt) ?? expect.fail();
  const table = item.sets.flatMap(({ choose }) => choose ?? []);
  const row = table.at(-1) ?? expect.fail();
  const felt =
    (left: readonly number[], otherwise: Answer = () => undefined): Answer =>
    (screen) => {
      if (screen.kind !== 'reserve' || screen.row !== item.row || !screen.feeler) return otherwise(screen);
      return { act: 'reserve', reps: left[screen.side === 'left' ? 0 : 1] ?? null };
    };

  test('is asked of each side; the side with fewer chooses the work of this session and of those after it', () => {
    const held = from(plan);
    const seen = go(held, session, felt([row.left.min + 3, row.left.min]));
    const asked = seen.filter((screen) => screen.kind === 'reserve' && screen.feeler && screen.row === item.row);
    expect(asked).toHaveLength(2);
    for (const { figures } of workOf(seen, item.row)) {
      expect(figures).toMatchObject({ exercise: row.exercise, set: { reps: row.reps } });
      expect(figures.set.load).toEqual(row.load);
    }
    const next = sessionsOf(plan).find((one) => one.id === session.id && one.occurrence > session.occurrence);
    const again = itemsOf(next ?? expect.fail()).find((one) => one.row === item.row);
    const line = again?.sets.flatMap(({ choose }) => choose ?? []).find(({ left }) => left.max >= row.left.min);
    const later = workOf(go(held, next ?? expect.fail()), item.row);
    expect(later[0]?.figures.set.load).toEqual(line?.load);
  });

  test('not said, or done with fewer reps than it was made for, it chooses nothing', () => {
    const fewer: Answer = (screen) =>
      screen.kind === 'set' && screen.row === item.row && screen.figures.set.kind === 'feeler'
        ? { act: 'say', key: screen.key, amount: (screen.figures.set.reps ?? 0) - 1 }
        : undefined;
    for (const answer of [felt([]), felt([row.left.min, row.left.min], fewer)]) {
      const sets = workOf(go(from(plan), session, answer), item.row);
      expect(sets.length).toBeGreaterThan(0);
      for (const { figures, key } of sets) {
        expect(figures.set).toEqual(item.sets.find((set) => set.key === key));
      }
    }
  });
});

describe('clocks', () => {
  const plan = planOf('torben-slade');
  const at = (session: ClientSession, kind: 'everySeconds' | 'workSeconds') =>
    session.groups.find((group) => group[kind] !== undefined) ?? null;
  const clocked = (kind: 'everySeconds' | 'workSeconds') => {
    const session = sessionsOf(plan).find((one) => at(one, kind) !== null) ?? expect.fail();
    const group = at(session, kind) ?? expect.fail();
    const held = from(plan);
    const { row, sets } = group.items[0] ?? expect.fail();
    go(held, session, (screen) => (screen.kind === 'set' && screen.row === row ? null : undefined));
    const shown = (): SetScreen => {
      const screen = held.screen();
      return screen.kind === 'set' ? screen : expect.fail(screen.kind);
    };
    return { held, group, row, sets, shown };
  };

  test('a set at every signal: begun once, it runs through all sets, over a reload, and begins anew once it is long over', () => {
    const { held, group, sets, shown } = clocked('everySeconds');
    const every = group.everySeconds ?? expect.fail();
    expect(shown()).toMatchObject({ clock: { kind: 'every', everySeconds: every, rounds: sets.length, began: null } });
    held.act({ act: 'begin' });
    const began = held.now;
    held.wait(20).act({ act: 'mark', key: shown().key });
    held.reload();
    expect(shown()).toMatchObject({ number: 2, rest: null, clock: { began } });
    held.wait(every * (sets.length + 2));
    expect(shown().clock).toMatchObject({ began: null });
    held.act({ act: 'begin' });
    expect(shown().clock).toMatchObject({ began: held.now });
  });

  test('work and pause: the pause runs from the mark, and the next work begins by itself', () => {
    const { held, group, shown } = clocked('workSeconds');
    const [work, pause] = [group.workSeconds ?? expect.fail(), group.pauseSeconds ?? expect.fail()];
    held.act({ act: 'begin' });
    expect(shown().clock).toMatchObject({ kind: 'work and pause', workSeconds: work, began: held.now });
    held.wait(work).act({ act: 'mark', key: shown().key });
    const over = held.now + 1000 * pause;
    expect(shown()).toMatchObject({ number: 2, rest: { began: held.now, over }, clock: { began: null } });
    held.wait(pause);
    expect(shown()).toMatchObject({ number: 2, rest: null, clock: { began: over } });
    expect(held.wait(3600).reload()).toMatchObject({ kind: 'set', number: 2, clock: { began: null } });
  });

  /** Before a hold, and the screen of it. */
  const atHold = (): Held => {
    const held = new Held(everyShapeSent, '2027-01-04');
    const session = sessionsOf(everyShapeSent)[0] ?? expect.fail();
    const seen = go(held, session, (s) => (s.kind === 'set' && s.clock.kind === 'timed' ? null : undefined));
    expect(seen.at(-1)).toMatchObject({ clock: { kind: 'timed', began: null } });
    return held;
  };

  test('a hold runs from when one is in place, some seconds after the tap that began it', () => {
    const held = atHold();
    const placed = held.now + 1000 * held.plan.phone.intoPlace;
    expect(held.act({ act: 'begin' })).toMatchObject({ rest: null, clock: { began: placed } });
    // Neither waiting nor a page opened anew moves it.
    expect(held.wait(held.plan.phone.intoPlace + 1).reload()).toMatchObject({ clock: { began: placed } });
    const screen = held.screen();
    if (screen.kind !== 'set') return expect.fail();
    const { key, figures } = screen;
    held.act({ act: 'mark', key });
    expect(held.events.at(-1)).toMatchObject({ kind: 'set', key, seconds: figures.set.seconds });
  });

  test('its start is taken back, before the first second and after, and nothing is marked', () => {
    const held = atHold();
    const before = { state: held.state, marks: held.events.length };
    for (const after of [1, held.plan.phone.intoPlace + 2]) {
      held.act({ act: 'begin' });
      expect(held.wait(after).act({ act: 'start again' })).toMatchObject({ kind: 'set', clock: { began: null } });
      expect({ state: held.state, marks: held.events.length }).toEqual(before);
    }
    const again = held.now + 1000 * held.plan.phone.intoPlace;
    expect(held.act({ act: 'begin' })).toMatchObject({ clock: { began: again } });
  });
});

describe('measures and tests', () => {
  const plan = planOf('edda-marlow');

  test('reps are counted in the seconds of a chair stand, and seconds stood on one leg', () => {
    const held = from(plan);
    const seen = go(
      held,
      sessionWith(plan, ({ counts }) => counts === 'reps'),
    );
    const asked = seen.flatMap((screen) => (screen.kind === 'different' ? [screen] : []));
    const counted = new Map(asked.map(({ key, counts }) => [key.split('/')[2], counts]));
    expect([...counted]).toEqual(
      expect.arrayContaining([
        ['test-chair-stand-test', 'reps'],
        ['test-one-leg-stand-test', 'seconds'],
      ]),
    );
    const marked = held.events.flatMap((event) =>
      event.kind === 'set' && event.key.includes('/test/') ? [event] : [],
    );
    expect(marked.every(({ asPlanned }) => !asPlanned)).toBe(true);
    expect(marked.find(({ key }) => key.includes('chair'))).toMatchObject({ reps: 10 });
    expect(marked.find(({ key }) => key.includes('one-leg'))).toMatchObject({ seconds: 10 });
  });

  test('a row that is a test alone is asked how many more were left, and one with work after it only after the work', () => {
    const b = { ...everyShapeSent, weeks: everyShapeSent.weeks.map(onlyB) };
    const session = sessionsOf(b)[0] ?? expect.fail();
    const seen = go(new Held(b, '2027-01-04'), session);
    expect(seen.some((screen) => screen.kind === 'reserve' && screen.row === 'row-test')).toBe(true);
    const a = sessionsOf(everyShapeSent)[0] ?? expect.fail();
    const asked = go(new Held(everyShapeSent, '2027-01-04'), a).filter(
      (screen) => screen.kind === 'reserve' && screen.row === 'push-up',
    );
    expect(asked).toHaveLength(1);
  });
});

const onlyB = (week: ClientPlan['weeks'][number]): ClientPlan['weeks'][number] => ({
  ...week,
  sessions: week.sessions.filter(({ id }) => id === 'b'),
});

describe('a circuit', () => {
  const plan = { ...everyShapeSent, weeks: everyShapeSent.weeks.map(onlyB) };
  const session = sessionsOf(plan)[0] ?? expect.fail();

  test('nobody is stopped between two turns: nothing is asked until all of them are over', () => {
    const seen = go(new Held(plan, '2027-01-04'), session);
    const turns = seen.flatMap((screen, index) => (screen.kind === 'set' && screen.round !== undefined ? [index] : []));
    const [first = 0, last = 0] = [turns[0], turns.at(-1)];
    expect(new Set(seen.slice(first, last + 1).map(({ kind }) => kind))).toEqual(new Set(['set']));
  });

  test('every set of it, of carries, tests and bands is marked once, in its order', () => {
    const held = new Held(plan, '2027-01-04');
    go(held, session);
    const keys = held.events.flatMap((event) => (event.kind === 'set' ? [event.key] : []));
    const planned = itemsOf(session).flatMap(({ sets }) => sets.map(({ key }) => key));
    expect([...keys].sort()).toEqual([...planned].sort());
    const rounds = keys.filter((key) => /band-row|march|flow/.test(key)).map((key) => key.split('/')[2]);
    expect(rounds).toEqual(Array.from({ length: 3 }, () => ['band-row', 'march', 'flow']).flat());
  });

  test('sides stand in two rows of the tally, and a side’s own bell on its own set', () => {
    const sets = workOf(go(new Held(plan, '2027-01-04'), session), 'carry');
    expect(sets[0]?.tally.map(({ side, marks }) => [side, marks.length])).toEqual([
      ['left', 2],
      ['right', 2],
    ]);
    expect(sets.map(({ figures }) => [figures.set.side, figures.set.load?.label])).toEqual([
      ['left', '12 kg'],
      ['right', '12 kg'],
      ['left', '12 kg'],
      ['right', '16 kg'],
    ]);
  });

  test('what is tried before its rounds is none of them', () => {
    const untried = planOf('sunniva-lund');
    const inRounds = sessionsOf(untried).flatMap((one) =>
      one.groups.flatMap(({ kind, items }) =>
        kind === 'circuit'
          ? items.filter(({ sets }) => sets.some((set) => set.kind === 'feeler')).map((item) => ({ one, item }))
          : [],
      ),
    );
    const { one, item } = inRounds[0] ?? expect.fail('no such circuit');
    const seen = setsOf(go(from(untried), one), item.row);
    expect(seen.find(({ figures }) => figures.set.kind === 'feeler')?.round).toBeUndefined();
    const rounds = seen.filter(({ figures }) => figures.set.kind === 'work');
    expect(rounds.map(({ round }) => round?.number)).toEqual(rounds.map((_, index) => index + 1));
  });
});

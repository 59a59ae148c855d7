/** Last time: what was done of the very same set, in the latest session of that name in which any of its exercise was done. */
import { expect, test } from 'vitest';
import type { ClientPlan } from '../../../src/model/client-plan.js';
import type { Act, SetScreen } from '../../../src/model/training.js';
import { clientPlanOf } from '../../../src/web/client-plan.js';
import { circuitPlan } from '../circuit-plan.js';
import { Held, nextAct } from './hold.js';

const plan: ClientPlan = { ...clientPlanOf(circuitPlan), edition: 1 };
const sessions = plan.weeks.flatMap(({ sessions: own }) => own);
/** Sessions of the first name, in order. */
const OWN = sessions.filter(({ id }) => id === sessions[0]?.id).map(({ occurrence }) => occurrence);
const [FIRST = 0, SECOND = 0, THIRD = 0] = OWN;

type Otherwise = (screen: SetScreen) => Act | undefined;

/** Done to its end but for what is otherwise; every screen of a set of work that came, once a key. */
function through(held: Held, occurrence: number, otherwise: Otherwise = () => undefined): readonly SetScreen[] {
  const seen = new Map<string, SetScreen>();
  held.wait(86_400).act({ act: 'open', occurrence });
  for (let taps = 0; taps < 300 && held.screen().kind !== 'finished'; taps += 1) {
    const screen = held.screen();
    const isWork = screen.kind === 'set' && screen.rest === null && screen.figures.set.kind === 'work';
    if (isWork && !seen.has(screen.key)) seen.set(screen.key, screen);
    const act = (isWork ? otherwise(screen) : undefined) ?? nextAct(screen) ?? expect.fail();
    held.wait(20).act(act);
  }
  expect(held.screen().kind).toBe('finished');
  return [...seen.values()];
}

const of = (screens: readonly SetScreen[], row: string) =>
  screens
    .filter((screen) => screen.row === row)
    .map(({ lastTime }) => (lastTime === null ? null : (lastTime.set.reps ?? 0)));

const sayOf =
  (row: string, ...reps: readonly (number | undefined)[]): Otherwise =>
  ({ row: own, key, number }) => {
    const amount = own === row ? reps[number - 1] : undefined;
    return amount === undefined ? undefined : { act: 'say', key, amount };
  };

test('none before it was done; then the same set, as it was said', () => {
  const held = new Held(plan, plan.starts);
  const first = through(held, FIRST, sayOf('squat', 5, 4, 3));
  expect(first.every(({ lastTime }) => lastTime === null)).toBe(true);
  expect(of(through(held, SECOND), 'squat').slice(0, 3)).toEqual([5, 4, 3]);
});

test('another session of the same exercise is not that session', () => {
  const held = new Held(plan, plan.starts);
  through(held, FIRST, sayOf('squat', 5, 4, 3));
  const other = sessions.find(({ id }) => id !== sessions[0]?.id)?.occurrence ?? expect.fail();
  const screens = through(held, other);
  expect(of(screens, 'squat').length).toBeGreaterThan(0);
  expect(of(screens, 'squat').every((reps) => reps === null)).toBe(true);
});

test('a set that was left out shows the last that was done; an exercise that was, the session before', () => {
  const held = new Held(plan, plan.starts);
  through(held, FIRST, (screen) =>
    screen.row === 'squat' && screen.number > 2 ? { act: 'leave out', key: screen.key } : sayOf('squat', 7, 6)(screen),
  );
  const second = through(held, SECOND, ({ row }) => (row === 'squat' ? { act: 'leave exercise', row } : undefined));
  expect(of(second, 'squat')).toEqual([7]);
  expect(of(through(held, THIRD), 'squat').slice(0, 3)).toEqual([7, 6, 6]);
});

test('the last word of several counts, and none that was rubbed out', () => {
  const held = new Held(plan, plan.starts);
  const said = new Set<string>();
  through(held, FIRST, ({ row, key, number, last }) => {
    if (row !== 'squat') return undefined;
    const name = `${number}/${key}`;
    if (said.has(name)) return undefined;
    said.add(name);
    if (number === 1) return { act: 'say', key, amount: 9 };
    if (number === 2 && last !== null) return { act: 'say', key: last.key, amount: 4 };
    return undefined;
  });
  expect(of(through(held, SECOND), 'squat')[0]).toBe(4);
});

test('each side has its own', () => {
  const held = new Held(plan, plan.starts);
  through(held, FIRST, (screen) =>
    screen.row === 'row'
      ? { act: 'say', key: screen.key, amount: screen.figures.set.side === 'left' ? 6 : 9 }
      : undefined,
  );
  const sides = through(held, SECOND)
    .filter(({ row }) => row === 'row')
    .map(({ figures, lastTime }) => [figures.set.side, lastTime?.set.side, lastTime?.set.reps]);
  expect(sides.length).toBeGreaterThan(3);
  for (const [side, lastSide, reps] of sides) expect([lastSide, reps]).toEqual([side, side === 'left' ? 6 : 9]);
});

/** What hurts, asked in order and taken back in order: signs first, then where, on which side, how much, and what follows. */
import { describe, expect, test } from 'vitest';
import type { ClientPlan } from '../../../src/model/client-plan.js';
import { BODY_PARTS, type BodyPart } from '../../../src/model/exercise.js';
import type { Screen, SetScreen } from '../../../src/model/training.js';
import { inOrder } from '../../../src/session/training/marked-sets.js';
import { adviceFor } from '../../../src/session/training/pain-screen.js';
import { clientPlanOf } from '../../../src/web/client-plan.js';
import { circuitPlan } from '../circuit-plan.js';
import { Held, nextAct } from './hold.js';

const plan: ClientPlan = clientPlanOf(circuitPlan);

function isSet(screen: Screen): SetScreen {
  return screen.kind === 'set' ? screen : expect.fail(`a ${screen.kind} screen`);
}

/** At the first set of work. */
function begun(): Held {
  const held = new Held(plan, '2027-01-04');
  held.act({ act: 'open', occurrence: 1 });
  held.act({ act: 'today', today: 'as usual' });
  for (let screen = held.screen(); screen.kind !== 'set' || screen.figures.set.kind !== 'work'; )
    screen = held.act(nextAct(screen) ?? expect.fail());
  held.act({ act: 'begin' });
  return held;
}

/** Sets that stand left out. */
const leftOut = (held: Held): readonly string[] =>
  inOrder(held.events).flatMap((event) => (event.kind === 'set' && event.done === 'left out' ? [event.key] : []));

describe('what hurts', () => {
  const hurt = (degree: number): Held => {
    const held = begun();
    held.act({ act: 'something hurts' });
    expect(held.screen()).toMatchObject({ kind: 'pain', row: 'squat', step: { at: 'signs' } });
    held.act({ act: 'sign', sign: null });
    held.act({ act: 'where', where: 'knee' });
    held.act({ act: 'side', side: 'left' });
    held.act({ act: 'degree', degree });
    return held;
  };
  const asked = (where: BodyPart | 'elsewhere'): Held => {
    const held = begun();
    held.act({ act: 'something hurts' });
    held.act({ act: 'sign', sign: null });
    held.act({ act: 'where', where });
    return held;
  };

  test('the emergency list comes first; a sign is kept at once, and nothing is trained on', () => {
    const held = begun();
    held.act({ act: 'something hurts' });
    const emergency = held.act({ act: 'sign', sign: 'fainting' });
    expect(emergency).toMatchObject({ kind: 'pain', step: { at: 'emergency', sign: 'fainting' } });
    expect(held.events.at(-1)).toMatchObject({ kind: 'pain', report: { alarm: 'fainting' } });
    const home = held.act({ act: 'heed', take: 'stop' });
    expect(home).toMatchObject({ kind: 'home', next: null });
    expect(held.act({ act: 'open', occurrence: 1 })).toMatchObject({ kind: 'home', next: null });
  });

  test.each([
    [plan.pain.gentle, 'gently'],
    [plan.pain.easier, 'easier'],
    [plan.pain.leave, 'leave'],
  ] as const)('%i of 10: %s', (degree, advice) => {
    expect(hurt(degree).screen()).toMatchObject({ step: { at: 'advice', advice, degree } });
  });

  test.each([...BODY_PARTS, 'elsewhere'] as const)('%s: its side is asked only where there are two', (where) => {
    const two = ['shoulder', 'elbow', 'wrist', 'hand', 'hip', 'knee', 'ankle', 'foot'].includes(where);
    expect(asked(where).screen()).toMatchObject({ step: { at: two ? 'side' : 'degree', where } });
  });

  test.each([
    ['left', { where: 'knee', degree: 2, side: 'left' }],
    ['right', { where: 'knee', degree: 2, side: 'right' }],
    ['both', { where: 'knee', degree: 2 }],
  ] as const)('%s: kept as it was said, with nothing where it is both', (side, report) => {
    const held = asked('knee');
    // Nothing is answered for anybody: before the side no degree is taken.
    expect(held.act({ act: 'degree', degree: 2 })).toMatchObject({ step: { at: 'side' } });
    held.act({ act: 'side', side });
    held.act({ act: 'degree', degree: 2 });
    expect(held.events.at(-1)).toMatchObject({ kind: 'pain', row: 'squat' });
    expect(held.events.flatMap((event) => (event.kind === 'pain' ? [event.report] : []))).toEqual([report]);
  });

  test('back goes one question back, and at its first to the set it was asked in', () => {
    const held = asked('knee');
    held.act({ act: 'side', side: 'right' });
    const steps: unknown[] = [];
    for (let taps = 0; taps < 4; taps += 1) {
      const screen = held.act({ act: 'back' });
      steps.push(screen.kind === 'pain' ? screen.step.at : screen.kind);
    }
    expect(steps).toEqual(['side', 'where', 'signs', 'set']);
    expect(held.events.filter(({ kind }) => kind === 'pain')).toEqual([]);
  });

  test('a degree tapped by mistake is taken back, and with it what was left out because of it', () => {
    const held = begun();
    const first = isSet(held.screen());
    held.act({ act: 'leave out', key: first.key });
    const { row, key } = isSet(held.screen());
    held.act({ act: 'something hurts' });
    held.act({ act: 'sign', sign: null });
    held.act({ act: 'where', where: 'neck' });
    held.act({ act: 'degree', degree: plan.pain.leave });
    expect(leftOut(held).length).toBeGreaterThan(1);
    expect(held.act({ act: 'back' })).toMatchObject({ step: { at: 'degree', where: 'neck' } });
    held.act({ act: 'degree', degree: 0 });
    expect(isSet(held.act({ act: 'heed', take: 'gently' }))).toMatchObject({ row, key });
    const pains = inOrder(held.events).flatMap((event) => (event.kind === 'pain' ? [event.report.degree] : []));
    expect(pains).toEqual([0]);
    // What was left out before it stays so.
    expect(leftOut(held)).toEqual([first.key]);
  });

  test('while one rests it is said of what was just done, and once the next is begun, of that', () => {
    const held = begun();
    const rows: string[] = [];
    for (let taps = 0; taps < 200 && rows.length < 2; taps += 1) {
      const screen = held.screen();
      if (screen.kind === 'set' && screen.rest !== null && screen.last !== null && screen.last.row !== screen.row) {
        rows.push(screen.last.row);
        expect(held.act({ act: 'something hurts' })).toMatchObject({ kind: 'pain', row: screen.last.row });
        held.act({ act: 'back' });
        held.act({ act: 'begin' });
        expect(held.act({ act: 'something hurts' })).toMatchObject({ kind: 'pain', row: screen.row });
        held.act({ act: 'back' });
      }
      held.wait(20).act(nextAct(held.screen()) ?? expect.fail());
    }
    expect(rows).toHaveLength(2);
  });

  test('said before a session and not meant, it is asked again how the day is', () => {
    const held = new Held(plan, '2027-01-04');
    held.act({ act: 'open', occurrence: 1 });
    held.act({ act: 'today', today: 'something hurts' });
    expect(held.act({ act: 'back' })).toMatchObject({ kind: 'today' });
    held.act({ act: 'today', today: 'as usual' });
    expect(held.screen().kind).not.toBe('today');
  });

  test('what kept from training before a session is said on the way in, and asked of anew', () => {
    const held = new Held(plan, '2027-01-04');
    held.act({ act: 'open', occurrence: 1 });
    held.act({ act: 'today', today: 'something hurts' });
    held.act({ act: 'sign', sign: null });
    held.act({ act: 'where', where: 'neck' });
    held.act({ act: 'degree', degree: plan.pain.leave });
    const home = held.act({ act: 'heed', take: 'stop' });
    expect(home).toMatchObject({ kind: 'home', notices: [{ kind: 'hurt' }], next: { occurrence: 1 } });
    expect(held.die()).toMatchObject({ kind: 'home', notices: [{ kind: 'hurt' }] });
    // Nobody goes on into it as if nothing had been said.
    expect(held.act({ act: 'open', occurrence: 1 })).toMatchObject({ kind: 'today' });
    held.act({ act: 'today', today: 'as usual' });
    expect(held.screen().kind).not.toBe('today');
    expect(JSON.stringify(held.act({ act: 'home' }))).not.toContain('"hurt"');
  });

  test('between what is gentle and what is easier nothing goes on as it was, as the planner has it', () => {
    const rules = { gentle: 1, easier: 5, leave: 7, nextMorning: 1 };
    const at = (degree: number): string => adviceFor({ pain: rules }, degree);
    expect([0, 1, 2, 4, 5, 6, 7, 10].map(at)).toEqual([
      'gently',
      'gently',
      'easier',
      'easier',
      'easier',
      'easier',
      'leave',
      'leave',
    ]);
  });

  test('from the degree at which it is left alone, its open sets are left out whatever is tapped next', () => {
    const held = hurt(plan.pain.leave);
    const next = held.act({ act: 'heed', take: 'gently' });
    expect(isSet(next).row).not.toBe('squat');
    const done = held.events.flatMap((event) =>
      event.kind === 'set' && event.key.includes('/work/') ? [event.done] : [],
    );
    expect(new Set(done)).toEqual(new Set(['left out']));
  });
});

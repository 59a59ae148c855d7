/** Whatever is tapped, in whatever order, at whatever moment: nothing breaks, nothing is lost, nothing is doubled. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { logOf } from '../../../src/content/read-log.js';
import type { ClientPlan } from '../../../src/model/client-plan.js';
import { BODY_PARTS } from '../../../src/model/exercise.js';
import { ALARM_SIGNS } from '../../../src/model/log.js';
import type { Act, Screen } from '../../../src/model/training.js';
import { inOrder } from '../../../src/session/training/marked-sets.js';
import { everyShapeSent } from '../../browser/every-shape-booklet.js';
import { Held, nextAct } from './hold.js';

const RUNS = process.env.CHALKLEAF_DEEP === '1' ? 1000 : 25;
const plan: ClientPlan = everyShapeSent;

/** Acts that the screen offers, and some that belong to another, as of a tap that comes too late. */
function actsOn(screen: Screen, pick: number): Act {
  const row = screen.kind === 'set' ? screen.row : plan.weeks[0]?.sessions[0]?.groups[0]?.items[0]?.row;
  const key = screen.kind === 'set' ? (screen.last?.key ?? screen.key) : null;
  const offered: readonly Act[] = [
    ...(nextAct(screen) === null ? [] : [nextAct(screen) ?? { act: 'home' as const }]),
    { act: 'home' },
    { act: 'back' },
    { act: 'easier' },
    { act: 'stop here' },
    { act: 'begin' },
    { act: 'something hurts' },
    { act: 'sign', sign: pick % 40 === 0 ? (ALARM_SIGNS[pick % ALARM_SIGNS.length] ?? null) : null },
    { act: 'where', where: BODY_PARTS[pick % BODY_PARTS.length] ?? 'elsewhere' },
    { act: 'degree', degree: pick % 11 },
    { act: 'heed', take: (['gently', 'easier', 'leave', 'stop'] as const)[pick % 4] ?? 'gently' },
    { act: 'reserve', reps: pick % 6 === 5 ? null : pick % 6 },
    { act: 'longer rest', seconds: 30 },
    { act: 'send' },
    { act: 'open', occurrence: 1 + (pick % 3) },
    { act: 'go', how: (['as planned', 'short', 'easier throughout'] as const)[pick % 3] ?? 'short' },
    ...(row === undefined
      ? []
      : ([
          { act: 'one more', row },
          { act: 'leave exercise', row },
        ] as const)),
    ...(key === null
      ? []
      : ([
          { act: 'mark', key },
          { act: 'rub out', key },
          { act: 'different', key },
          { act: 'say', key, amount: pick % 20 },
          { act: 'leave out', key },
        ] as const)),
    ...(screen.kind === 'easier' && screen.options[0]
      ? [{ act: 'choose easier', easier: screen.options[0] } as const]
      : []),
  ];
  return offered[pick % offered.length] ?? { act: 'home' };
}

const TAPS = fc.array(
  fc.record({ pick: fc.nat(9999), wait: fc.integer({ min: -400, max: 4000 }), dies: fc.boolean() }),
  {
    maxLength: 60,
  },
);

test('no tap breaks a screen; what is kept reads as a log; a reload shows the same', () => {
  fc.assert(
    fc.property(TAPS, (taps) => {
      const held = new Held(plan, '2027-01-04');
      for (const { pick, wait, dies } of taps) {
        const shown = held.wait(wait).act(actsOn(held.screen(), pick));
        if (dies) expect(held.reload()).toEqual(shown);
      }
      const log = logOf({ schema: 1, bookletId: 'a'.repeat(32), device: 'phone-1', events: held.events });
      expect(log).not.toHaveProperty('why');
    }),
    { numRuns: RUNS },
  );
});

test('from anywhere a session can be brought to its end, but after a sign of alarm', () => {
  fc.assert(
    fc.property(TAPS, (taps) => {
      const held = new Held(plan, '2027-01-04');
      for (const { pick, wait } of taps) held.wait(Math.abs(wait)).act(actsOn(held.screen(), pick));
      const alarm = held.events.some((event) => event.kind === 'pain' && event.report.alarm !== undefined);
      held.act({ act: 'home' });
      if (alarm) return expect(held.screen()).toMatchObject({ next: null });
      const home = held.screen();
      const { occurrence } = (home.kind === 'home' ? home.next : null) ?? { occurrence: 0 };
      if (occurrence === 0) return;
      for (let tap = 0; tap < 300 && held.screen().kind !== 'finished'; tap += 1) {
        held.wait(30).act(nextAct(held.screen()) ?? { act: 'home' });
      }
      expect(held.screen().kind).toBe('finished');
      const closed = inOrder(held.events).filter((event) => event.kind === 'closed' && event.occurrence === occurrence);
      expect(closed).toHaveLength(1);
    }),
    { numRuns: RUNS },
  );
});

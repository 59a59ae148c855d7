/** Whatever is tapped, in whatever order, at whatever moment: nothing breaks, nothing is lost, nothing is doubled. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { logOf } from '../../../src/content/read-log.js';
import type { ClientPlan } from '../../../src/model/client-plan.js';
import { BODY_PARTS } from '../../../src/model/exercise.js';
import { ALARM_SIGNS, type LogEvent } from '../../../src/model/log.js';
import type { Act, Screen } from '../../../src/model/training.js';
import { inOrder } from '../../../src/session/training/marked-sets.js';
import { clientPlanOf } from '../../../src/web/client-plan.js';
import { everyShapeSent } from '../../browser/every-shape-booklet.js';
import { runs } from '../../deep.js';
import { planDemo } from '../../studio/demo-plans.js';
import { Held, nextAct } from './hold.js';

const RUNS = runs(6, 100);
const demo = await planDemo();
const sent = (client: string): ClientPlan => clientPlanOf(demo.plans.get(client) ?? expect.fail(client));
const secondSessions: ClientPlan = {
  ...everyShapeSent,
  weeks: everyShapeSent.weeks.map((week) => ({ ...week, sessions: week.sessions.filter(({ id }) => id === 'b') })),
};

/** Every shape, and booklets of the demo with feeler sets on each side, gates, signals and measures. */
const PLANS: readonly (readonly [string, ClientPlan])[] = [
  ['every shape', everyShapeSent],
  ['every shape in turns', secondSessions],
  ...['maud-ferrier', 'aldous-brack', 'torben-slade', 'edda-marlow'].map((id) => [id, sent(id)] as const),
];

const TODAYS = ['as usual', 'not my best', 'something hurts', 'short of time'] as const;

/** Acts that the screen offers, and some that belong to another, as of a tap that comes too late. */
function actsOn(plan: ClientPlan, screen: Screen, pick: number): Act {
  const row = screen.kind === 'set' ? screen.row : plan.weeks[0]?.sessions[0]?.groups[0]?.items[0]?.row;
  const key = screen.kind === 'set' ? (screen.last?.key ?? screen.key) : null;
  const offered: readonly Act[] = [
    ...(nextAct(screen) === null ? [] : [nextAct(screen) ?? { act: 'home' as const }]),
    { act: 'home' },
    { act: 'back' },
    { act: 'easier' },
    { act: 'stop here' },
    { act: 'begin' },
    { act: 'start again' },
    { act: 'something hurts' },
    { act: 'sign', sign: pick % 40 === 0 ? (ALARM_SIGNS[pick % ALARM_SIGNS.length] ?? null) : null },
    { act: 'where', where: BODY_PARTS[pick % BODY_PARTS.length] ?? 'elsewhere' },
    { act: 'side', side: (['left', 'right', 'both'] as const)[pick % 3] ?? 'both' },
    { act: 'degree', degree: pick % 11 },
    { act: 'heed', take: (['gently', 'easier', 'leave', 'stop'] as const)[pick % 4] ?? 'gently' },
    { act: 'reserve', reps: pick % 6 === 5 ? null : pick % 6 },
    { act: 'longer rest', seconds: 30 },
    { act: 'send' },
    { act: 'morning', worse: ([true, false, null] as const)[pick % 3] ?? null },
    { act: 'today', today: TODAYS[pick % TODAYS.length] ?? 'as usual' },
    { act: 'around', done: pick % 2 === 0 },
    { act: 'effort', effort: null },
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

/** Screens on which it can be said. */
const SAYS_SO: ReadonlySet<Screen['kind']> = new Set<Screen['kind']>([
  'warm-up',
  'set',
  'reserve',
  'cool-down',
  'effort',
]);

const TAPS = fc.array(
  fc.record({ pick: fc.nat(9999), wait: fc.integer({ min: -400, max: 4000 }), dies: fc.boolean() }),
  {
    minLength: 10,
    maxLength: 60,
    size: 'max',
  },
);

/** Where a set was ticked as planned while it stood marked already. */
function doubled(events: readonly LogEvent[]): readonly string[] {
  const standing = new Map<string, string>();
  const twice: string[] = [];
  for (const event of [...events].sort((a, b) => a.seq - b.seq)) {
    if (event.kind === 'void') standing.delete(event.event);
    if (event.kind !== 'set') continue;
    if (event.asPlanned && [...standing.values()].includes(event.key)) twice.push(event.key);
    standing.set(event.id, event.key);
  }
  return twice;
}

describe.each(PLANS)('%s', (_, plan) => {
  test('no tap breaks a screen; what is kept reads as a log, no set is ticked twice; a reload shows the same', () => {
    fc.assert(
      fc.property(TAPS, (taps) => {
        const held = new Held(plan, plan.starts);
        for (const { pick, wait, dies } of taps) {
          const shown = held.wait(wait).act(actsOn(plan, held.screen(), pick));
          if (dies) expect(held.reload()).toEqual(shown);
        }
        const log = logOf({ schema: 1, bookletId: 'a'.repeat(32), device: 'phone-1', events: held.events });
        expect(log).not.toHaveProperty('why');
        expect(doubled(held.events)).toEqual([]);
      }),
      { numRuns: RUNS },
    );
  });

  test('wherever it can be said that something hurts, what is taken back leads to where it was said', () => {
    fc.assert(
      fc.property(TAPS, fc.nat(10), (taps, degree) => {
        const held = new Held(plan, plan.starts);
        for (const { pick, wait } of taps) held.wait(wait).act(actsOn(plan, held.screen(), pick));
        for (let taps = 0; taps < 9 && !SAYS_SO.has(held.screen().kind); taps += 1)
          held.act(nextAct(held.screen()) ?? { act: 'home' });
        const stood = held.screen();
        // After a sign of alarm nothing is trained on.
        if (!SAYS_SO.has(stood.kind)) return;
        const before = inOrder(held.events);
        held.act({ act: 'something hurts' });
        held.act({ act: 'sign', sign: null });
        held.act({ act: 'where', where: 'neck' });
        expect(held.act({ act: 'degree', degree })).toMatchObject({ kind: 'pain', step: { at: 'advice' } });
        for (let back = 0; back < 4; back += 1) held.act({ act: 'back' });
        expect(inOrder(held.events)).toEqual(before);
        expect(held.screen()).toEqual(stood);
      }),
      { numRuns: RUNS },
    );
  });

  test('from anywhere a session can be brought to its end, but after a sign of alarm', () => {
    fc.assert(
      fc.property(TAPS, (taps) => {
        const held = new Held(plan, plan.starts);
        for (const { pick, wait, dies } of taps) {
          held.wait(wait).act(actsOn(plan, held.screen(), pick));
          if (dies) held.die();
        }
        const alarm = inOrder(held.events).some((event) => event.kind === 'pain' && event.report.alarm !== undefined);
        held.act({ act: 'home' });
        const home = held.screen();
        if (alarm) {
          expect(home).toMatchObject({ kind: 'home', next: null });
          return;
        }
        const { occurrence } = (home.kind === 'home' ? home.next : null) ?? { occurrence: 0 };
        if (occurrence === 0) return;
        for (let tap = 0; tap < 300 && held.screen().kind !== 'finished'; tap += 1) {
          held.wait(30).act(nextAct(held.screen()) ?? { act: 'home' });
        }
        expect(held.screen().kind).toBe('finished');
        const closed = held.events.filter((event) => event.kind === 'closed' && event.occurrence === occurrence);
        expect(closed).toHaveLength(1);
      }),
      { numRuns: RUNS },
    );
  });
});

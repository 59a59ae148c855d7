/** What of a plan may travel with a booklet. */
import { describe, expect, test } from 'vitest';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { everyShapePlan } from '../fixtures/every-shape-plan.js';
import { fixturePlan, SECRET, SECRET_NUMBER } from './plan-fixture.js';

/** Every key of a value, at any depth. */
function keysIn(value: unknown): Set<string> {
  const keys = new Set<string>();
  JSON.parse(JSON.stringify(value), (key: string, inner: unknown) => {
    if (key !== '' && !/^\d+$/.test(key)) keys.add(key);
    return inner;
  });
  return keys;
}

describe('the client’s part of a plan', () => {
  const text = JSON.stringify(clientPlanOf(fixturePlan));

  test('holds nothing that is the coach’s own', () => {
    expect(JSON.stringify(fixturePlan)).toContain(SECRET);
    expect(text).not.toContain(SECRET);
    expect(text).not.toContain(`${SECRET_NUMBER}`);
  });

  test('has these names and no others', () => {
    expect([...keysIn(clientPlanOf(fixturePlan))].sort()).toEqual(
      [
        ...['schema', 'edition', 'starts', 'weeks', 'number', 'begins', 'easy', 'sessions', 'id', 'name', 'date'],
        ...['occurrence', 'minutes', 'groups', 'kind', 'rounds', 'items', 'row', 'exercise', 'way', 'sides', 'tempo'],
        ...['restSeconds', 'reserve', 'sets', 'easier', 'say', 'set', 'key', 'round', 'reps', 'load', 'grams', 'mode'],
        ...['label', 'optional'],
      ].sort(),
    );
  });

  test('keeps every set with its key and its load', () => {
    const sets = clientPlanOf(fixturePlan).weeks.flatMap(({ sessions }) =>
      sessions.flatMap(({ groups }) => groups.flatMap(({ items }) => items.flatMap((item) => item.sets))),
    );
    expect(sets.map(({ key, load, reps }) => `${key} ${load?.label} ${reps}`)).toEqual([
      '1/1/goblet-squat/both/trial/1 20 kg 4',
      '1/1/goblet-squat/both/work/1 16 kg 8',
      '1/1/goblet-squat/both/work/2 16 kg 8',
      '1/2/goblet-squat/both/trial/1 20 kg 4',
      '1/2/goblet-squat/both/work/1 16 kg 8',
      '1/2/goblet-squat/both/work/2 16 kg 8',
    ]);
  });

  test('of every shape a plan can have: what the phone needs, and nothing of why', () => {
    const plan = everyShapePlan(3);
    const sent = clientPlanOf(plan);
    expect([...keysIn(sent)].sort()).toEqual(
      [
        ...[
          'schema',
          'edition',
          'starts',
          'last',
          'weeks',
          'number',
          'begins',
          'easy',
          'sessions',
          'id',
          'name',
          'date',
        ],
        ...['occurrence', 'minutes', 'groups', 'kind', 'rounds', 'items', 'row', 'exercise', 'way', 'sides', 'tempo'],
        ...['restSeconds', 'reserve', 'sets', 'easier', 'say', 'set', 'key', 'round', 'reps', 'load', 'grams', 'mode'],
        ...[
          'label',
          'optional',
          'seconds',
          'metres',
          'side',
          'steps',
          'next',
          'deadStop',
          'stopAt',
          'step',
          'talk',
          'done',
        ],
        ...['short', 'everySeconds', 'workSeconds', 'pauseSeconds'],
      ].sort(),
    );
    // Why it ends there is a fact of health; so are the reasons.
    expect(plan.stops?.because).toBe('clearance');
    expect(JSON.stringify(sent)).not.toMatch(/clearance|reasons|findings|inputs|rung|caution/);
    const sets = sent.weeks.flatMap(({ sessions }) =>
      sessions.flatMap(({ groups }) => groups.flatMap(({ items }) => items.flatMap((item) => item.sets))),
    );
    const of = (key: string) => sets.find((set) => set.key === key);
    expect(of('1/1/main-next/both/work/1')?.next).toEqual({
      reps: 5,
      load: { grams: 20_000, mode: 'total', label: '20 kg' },
    });
    expect(of('1/2/band-row/both/work/1')?.load).toEqual({ grams: 0, mode: 'band', label: 'light band', step: 2 });
    expect(of('1/1/press-steps/both/work/1')?.steps).toEqual([1, 2, 3]);
    expect(of('1/1/push-up/both/test/1')?.stopAt).toBe(20);
    expect(sent.last).toBe('2027-01-24');
    expect(sent.weeks[0]?.sessions[0]?.short?.sets.length).toBe(6);
  });
});

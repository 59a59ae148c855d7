/** What of a plan may travel with a booklet. */
import { describe, expect, test } from 'vitest';
import { clientPlanOf } from '../../src/web/client-plan.js';
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
});

/** Floors of reserve, who has them and in which weeks; and the gain that is counted on. */
import { describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import type { Client } from '../../src/model/client.js';
import type { Plan } from '../../src/model/plan.js';
import { PLACE } from './generate-exercises.js';
import { aCaution, aClient, aLibrary, anExercise, ask, aTest, kg, on, oneSession } from './make-block.js';

const today = on('2026-12-20');
const tests = [aTest('squat', 10, { load: kg('16') })];
const planOf = (
  client: Partial<Client>,
  overrides: readonly { readonly rule: string; readonly value: number }[] = [],
): Plan => {
  const library = aLibrary([anExercise('squat', { asks: [ask('knee')] })], oneSession('squat'));
  const rulesOverridden = overrides.map((each) => ({ ...each, reason: 'tried', place: PLACE }));
  const { value, problems } = planBlock({
    library,
    client: aClient({ tests, ...client }),
    today,
    edition: 0,
    rulesOverridden,
  });
  if (value === null) throw new Error(JSON.stringify(problems));
  return value;
};
const floors = (...given: Parameters<typeof planOf>) =>
  planOf(...given).inputs.floors.map(({ rule, reserve, weeks }) => [rule, reserve, weeks.length]);
const inWeeks = (...given: Parameters<typeof planOf>) =>
  planOf(...given).inputs.strands[0]?.occurrences.map(({ floor }) => floor);
const gain = (client: Partial<Client>) => planOf(client).inputs.strands[0]?.gain;

describe('floors', () => {
  test('floor-alone for everybody, in every week', () => {
    expect(floors({})).toEqual([['floor-alone', 20, 6]]);
    expect(inWeeks({}, [{ rule: 'floor-alone', value: 30 }])).toEqual([30, 30, 30, 30, 30, 30]);
  });

  test('floor-novice for novices and floor-older from older-from; of equal ones the first', () => {
    expect(inWeeks({ experience: 'novice' })).toEqual([30, 30, 30, 30, 30, 30]);
    expect(inWeeks({ birthYear: 1962 })).toEqual([30, 30, 30, 30, 30, 30]);
    expect(inWeeks({ birthYear: 1963 })).toEqual([20, 20, 20, 20, 20, 20]);
    expect(floors({ experience: 'novice', birthYear: 1950 })).toEqual([
      ['floor-alone', 20, 6],
      ['floor-novice', 30, 6],
      ['floor-older', 30, 6],
    ]);
  });

  test('floor-first-weeks in the first-weeks of a first block', () => {
    expect(inWeeks({ blocksBefore: 0 })).toEqual([40, 40, 20, 20, 20, 20]);
    expect(inWeeks({ blocksBefore: 0 }, [{ rule: 'first-weeks', value: 3 }])).toEqual([40, 40, 40, 20, 20, 20]);
    expect(inWeeks({ blocksBefore: 1 })).toEqual([20, 20, 20, 20, 20, 20]);
  });

  test('floor-cautioned in a row that meets a caution, and in no other', () => {
    const careful = { cautions: [aCaution('knee', { degree: 'take care' })] } as const;
    expect(inWeeks(careful)).toEqual([30, 30, 30, 30, 30, 30]);
    expect(inWeeks(careful, [{ rule: 'floor-cautioned', value: 50 }])).toEqual([50, 50, 50, 50, 50, 50]);
    expect(inWeeks({ ...careful, blocksBefore: 0 })).toEqual([40, 40, 30, 30, 30, 30]);
    expect(inWeeks({ cautions: [aCaution('hip', { degree: 'take care' })] })).toEqual([20, 20, 20, 20, 20, 20]);
    expect(floors(careful)).toEqual([['floor-alone', 20, 6]]);
  });

  test('break-floor in the first weeks back', () => {
    const breaks = [{ from: on('2026-12-15'), until: on('2027-01-02'), cause: 'away', place: PLACE }] as const;
    expect(inWeeks({ breaks }, [{ rule: 'break-floor', value: 50 }])).toEqual([50, 50, 20, 20, 20, 20]);
    expect(inWeeks({ breaks }, [{ rule: 'break-floor-weeks', value: 3 }])).toEqual([40, 40, 40, 20, 20, 20]);
    expect(inWeeks({ breaks }, [{ rule: 'break-away', value: 28 }])).toEqual([20, 20, 20, 20, 20, 20]);
  });

  test('the floor of a moderate plan is one of them', () => {
    const disease = {
      date: on('2026-12-01'),
      regularExercise: 'yes',
      knownDisease: 'yes',
      symptoms: 'no',
      place: PLACE,
    } as const;
    const clearance = { by: 'A doctor', date: on('2026-12-01'), for: 'moderate' } as const;
    const client = { screening: disease, clearance };
    const moderate = planOf(client);
    const [highest] = [...moderate.inputs.floors].sort((a, b) => b.reserve - a.reserve);
    expect(highest?.rule).toBe('floor-moderate');
    expect(highest?.weeks).toEqual([1, 2, 3, 4, 5, 6]);
    expect(moderate.inputs.strands[0]).toMatchObject({ gain: 0, trials: false });
  });
});

describe('the gain counted on', () => {
  const breaks = [{ from: on('2026-12-15'), until: on('2027-01-02'), cause: 'away', place: PLACE }] as const;

  test('gain-trained, gain-novice; none with gain-cautioned, gain-return or gain-steady', () => {
    expect(gain({})).toBe(50);
    expect(gain({ experience: 'novice' })).toBe(100);
    expect(gain({ cautions: [aCaution('knee', { degree: 'take care' })] })).toBe(0);
    expect(gain({ breaks })).toBe(0);
  });

  test('and why is said to the coach', () => {
    const told = (client: Partial<Client>) =>
      planOf(client).weeks[0]?.sessions[0]?.groups.flatMap(({ items }) =>
        items.flatMap(({ reasons }) => reasons.map(({ rule }) => String(rule))),
      ) ?? [];
    expect(told({ breaks })).toContain('gain-return');
    expect(told({})).not.toContain('gain-return');
    expect(told({ cautions: [aCaution('knee', { degree: 'take care' })] })).toContain('gain-cautioned');
  });
});

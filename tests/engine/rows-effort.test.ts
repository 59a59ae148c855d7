/** Floors, a row's own effort, RPE, circuits, and the coach's own values. */
import { describe, expect, test } from 'vitest';
import { type BlockInput, planBlock } from '../../src/engine/plan-block.js';
import type { Client } from '../../src/model/client.js';
import type { Plan } from '../../src/model/plan.js';
import { PLACE } from './generate-exercises.js';
import { aBlock, aClient, aLibrary, aProgramme, aRow, aSession, oneSession } from './make-block.js';
import { codes, itemsOf, planOf, squat, tests, today, withRow } from './rows-made.js';

const asked = (plan: Plan) => itemsOf(plan).map((item) => item.asked.reserve);

describe('floors and effort', () => {
  test.each<[string, Partial<Client>, readonly number[]]>([
    ['trained, later block', {}, [30, 30, 20, 20, 20, 40]],
    ['novice', { experience: 'novice' }, [30, 30, 30, 30, 30, 40]],
    ['first block', { blocksBefore: 0 }, [40, 40, 20, 20, 20, 40]],
    ['may be 65 when it ends', { birthYear: 1962 }, [30, 30, 30, 30, 30, 40]],
    ['64 at the most', { birthYear: 1963 }, [30, 30, 20, 20, 20, 40]],
  ])('%s', (_, client, reserves) => {
    expect(asked(planOf(oneSession('squat'), client))).toEqual(reserves);
  });

  test('a row’s own effort takes the place of the curve’s, and an easy week stays the easier of the two', () => {
    expect(asked(planOf(withRow({ effort: { kind: 'reserve', tenths: 10 } })))).toEqual([20, 20, 20, 20, 20, 40]);
    expect(asked(planOf(withRow({ effort: { kind: 'reserve', tenths: 50 } })))).toEqual([50, 50, 50, 50, 50, 50]);
  });

  test('RPE 7 to 10 leaves ten less that many (Zourdos et al. 2016, J Strength Cond Res 30(1):267-275)', () => {
    for (const [rpe, reserve] of [
      [70, 30],
      [75, 25],
      [80, 20],
      [85, 20],
      [90, 20],
    ] as const) {
      expect(asked(planOf(withRow({ effort: { kind: 'rpe', tenths: rpe } })))[2]).toBe(reserve);
    }
    expect(codes(withRow({ effort: { kind: 'rpe', tenths: 65 } }))).toEqual(['effort-not-readable']);
  });

  test('a circuit asks one rep more', () => {
    const circuit = aProgramme([aSession('A', aBlock([aRow('squat')], { kind: 'circuit', rounds: 2 }))]);
    expect(asked(planOf(circuit))).toEqual([40, 40, 30, 30, 30, 50]);
  });

  test('the coach’s own values are used and shown; what cannot be set is an error of the folder', () => {
    const library = aLibrary([squat], oneSession('squat'));
    const override = (rule: string, value: number): BlockInput => ({
      library,
      client: aClient({ tests }),
      today,
      edition: 0,
      rulesOverridden: [{ rule, value, reason: 'seen it', place: PLACE }],
    });
    const { value } = planBlock(override('floor-alone', 30));
    expect(value && asked(value)).toEqual([30, 30, 30, 30, 30, 40]);
    expect(value?.rules.find(({ id }) => id === 'floor-alone')?.overridden).toEqual({ value: 30, reason: 'seen it' });
    const wrong = (rule: string, to: number) =>
      planBlock(override(rule, to)).problems.map(({ code, scope }) => [code, scope.kind]);
    expect(wrong('floor-alone', 0)).toEqual([['rule-out-of-range', 'folder']]);
    expect(wrong('floor-alon', 30)).toEqual([['rule-not-found', 'folder']]);
    expect(wrong('walk-trial', 1)).toEqual([['rule-not-found', 'folder']]);
  });
});

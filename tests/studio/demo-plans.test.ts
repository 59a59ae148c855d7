/**
 * The demo's plans, jotted down as a coach would, against the jottings beside this file, and against figures worked by
 * hand. To accept a change that was meant: `npx vitest run --config tests/vitest.config.ts tests/studio -u`.
 */

import { beforeAll, describe, expect, test } from 'vitest';
import { sayWhy } from '../../src/words/say-why.js';
import { type PlannedDemo, planDemo, planIn, rowOf, workOf } from './demo-plans.js';
import { planLines } from './plan-lines.js';

let demo: PlannedDemo;
beforeAll(async () => {
  demo = await planDemo();
});

describe('jottings', () => {
  test.each(['rowan-ashby', 'hester-vane', 'torben-slade'])('%s', async (client) => {
    const lines = planLines(planIn(demo, client));
    expect(lines.length).toBeLessThan(200);
    await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`goldens/${client}.txt`);
  });
});

test('the account of one number: what it is, why, and why not the next one up', async () => {
  const asked = { week: 4, session: 'A', exercise: 'goblet-squat' };
  const said = sayWhy(planIn(demo, 'rowan-ashby'), asked);
  expect(said).toContain('Why not 20 kg');
  await expect(`${said}\n`).toMatchFileSnapshot('goldens/why-rowan-ashby.txt');
});

/**
 * Worked by hand. R is the load and, in a squat, 0.878 of body mass; K = R × (300 + 10 × (reps + reserve)) of the test,
 * raised after each work week by half a per cent (a novice’s too, as the studio’s own rules.md has it) unless the row itself meets a caution; reps to
 * failure = (K − 300 R) / R, in tenths. The most reps that leave the asked reserve (less 0.2) and the floor: 2, and 3
 * where the row meets a caution.
 *
 * rowan-ashby, A, goblet squat, 70 kg, 16 kg × 10 and 2 left: R = 16,000 + 61,460 = 77,460; K = 77,460 × 420 = 32,533,200.
 *   Week 4: K = 33,023,641; at 16 kg 126.3, so 10 leaves 2.6. Week 5: K = 33,188,759; at 20 kg (81,460; a step of 25 %,
 *   earned twice) 107.4: the bottom and the floor, 8, fit, so a gate; 8 leaves 2.7, 9 only 1.7.
 *   Week 6 asks 4: K = 33,354,702; 109.4, 7 leaves 3.9.
 * rowan-ashby, A, row, left, 12 kg × 9 and 2 left: K = 12,000 × 410. Week 3: 4,969,323; 114.1, 9 leaves 2.4.
 * rowan-ashby, B, deadlift, 24 kg × 9 and 3 left: K = 24,000 × 420. Week 3: 10,181,052; 124.2, the top, 9, leaves 3.4.
 * hester-vane, A, squat, 148 lb, 40 lb × 10 and 2 left, a caution, so no gain: R = 18,144 + 58,941 = 77,085: 120 in every
 *   week. Weeks 1 and 4: a caution leaves 3, so 9; and no new load. Week 6 asks 4: 8.
 * hester-vane, A, press, left, 27.5 lb × 8 and 2 left: K = 12,474 × 400 = 4,989,600. Week 4: 5,064,818; at 30 lb, 13,608
 *   (9.1 % more, earned once) 72: the bottom and the floor, 7, fit; 5 leaves 2.2, 6 only 1.2.
 * hester-vane, B, row, left, 35 lb × 10 and 2 left: K = 15,876 × 420. Week 4: 6,768,438; at 37.5 lb, 17,010, 97.9: 7 leaves 2.7.
 * hester-vane, B, deadlift, 57.5 lb × 12 and 2 left, above 12 and so weak: K = 26,082 × 440 = 11,476,080. Weeks 3 and 4:
 *   144 and 146, 12 is the top, earned twice. Week 5: 11,707,327; at 60 lb, 27,216, 130.1: 11 leaves 2.
 * torben-slade, A, front squat, 88 kg, 2 × 20 kg × 8 and 3 left: R = 40,000 + 77,264 = 117,264; K = 117,264 × 410 =
 *   48,078,240. Week 1, at the main bell, 2 × 24 kg, 125,264: 83.8, asked 3, 5 leaves 3.3.
 * torben-slade, A, press, left, 20 kg × 5 and 2 left: K = 20,000 × 370. Week 1 asks 3: 70, 4. Week 3: 7,474,185; 73.7, 5
 *   leaves 2.3. The right, tested with 24 kg, does no more reps.
 * torben-slade, C, row, left, 28 kg × 8 and 2 left: 100; exertion of 7.5 leaves 2.5: 7, as 8 would leave 2.
 * edda-marlow, wall push-up, 8 and 3 left, a caution: 110 in every week; asked 4, 7; from week 3 asked 3, 8.
 * edda-marlow, bridge, 10 and 3 left: 130; asked 4, 9. Split squat, left, 6 and 3 left: 90; asked 4, 5.
 * aldous-brack, A, front squat, 84 kg, 45 kg × 10 and 2 left: R = 45,000 + 73,752 = 118,752; K = 118,752 × 420 =
 *   49,875,840. Week 1 asks 3: 120, 9. Week 5: K = 50,880,862; at 50 kg (123,752), earned twice, 111.1: 9 leaves 2.1.
 * aldous-brack, B, deadlift, 70 kg × 10 and 2 left: 120; asked 3, 9.
 * odile-marsh, wall push-up, 9 and 4 left: 130; after a fracture 4 are always left: 9.
 * imre-fane, A, squat, 82 kg, 24 kg × 9 and 2 left, seen hurrying, so begun with the slow lowering, 0.8 of the reps to
 *   failure: R = 24,000 + 71,996 = 95,996; K = 95,996 × 410 = 39,358,360. Week 1 asks 3: 110 × 0.8 = 88, 6 leaves 2.8. Week 3:
 *   K = 39,752,927; 114 × 0.8 = 91, 7 leaves 2.1.
 * orla-thwaite, pregnant, so moderate, 4 left, and no gain. A, squat, 12 kg × 8 and 4 left: 120 in every week: 8. A, row, left,
 *   8 kg × 9 and 4 left: 130: 9. B, deadlift, 16 kg × 8 and 4 left: 120: 8, weeks 1 and 5.
 * carys-holm, wall push-up, 10 and 4 left, weeks 9 to 12 after a birth: 140 and no gain; 5 are left in the first weeks of
 *   such a block: 9, in both. Band squat, never tested: the lightest band and the bottom of the range, 10.
 */
test('every line of a programme’s Expect holds', () => {
  const expected = demo.library.programmes.flatMap(({ expectations }) => expectations);
  expect(expected.length).toBeGreaterThanOrEqual(24);
  for (const { client, week, session, row, text } of expected) {
    const [work] = workOf(rowOf(planIn(demo, client), session, row).get(week));
    const said = work?.load === undefined ? `${work?.reps} reps` : `${work.load.label} × ${work.reps}`;
    expect(said, `${client}, week ${week}, ${session}, ${row}`).toBe(text);
  }
});

test('fourteen are planned; one is held back for what nobody has asked', () => {
  const wrong = demo.problems.filter(({ severity }) => severity === 'error');
  expect(wrong.map(({ code, scope, data }) => [code, scope, data])).toEqual([
    ['screening-unclear', { kind: 'client', client: 'wim-tarrow' }, { questions: ['known disease'] }],
  ]);
  expect([...demo.plans.keys()]).toEqual([
    'aldous-brack',
    'ansel-quill',
    'carys-holm',
    'edda-marlow',
    'hester-vane',
    'imre-fane',
    'maud-ferrier',
    'nell-fane',
    'odile-marsh',
    'orla-thwaite',
    'osgar-pell',
    'rowan-ashby',
    'sunniva-lund',
    'torben-slade',
  ]);
});

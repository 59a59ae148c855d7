/** A load tried and done as asked in two weeks: what marks must say for it, and what the walk does then. */
import { describe, expect, it, test } from 'vitest';
import { exercisesById } from '../../src/engine/block-context.js';
import { remember } from '../../src/engine/history/remember.js';
import { planBlock } from '../../src/engine/plan-block.js';
import { planStrand } from '../../src/engine/plan-strand.js';
import { layOverrides } from '../../src/engine/rulebook.js';
import type { Client } from '../../src/model/client.js';
import { addDays } from '../../src/model/day.js';
import type { DoneSession } from '../../src/model/history.js';
import { exerciseId } from '../../src/model/identity.js';
import { sayPlan } from '../../src/words/say-plan.js';
import { sayReason } from '../../src/words/say-reason.js';
import { speechOf } from '../../src/words/speech.js';
import { PLACE } from './generate-exercises.js';
import {
  aBlock,
  aClient,
  aLibrary,
  anExercise,
  aProgramme,
  aRow,
  aSession,
  aTest,
  bells,
  kg,
  on,
} from './make-block.js';
import { aHistory, aMarkedRow, aSessionDone, type MadeRow, type MadeSet, planLoad } from './make-history.js';
import { otherwiseText, strandOf, type Written, walkText } from './walk-notation.js';

const today = on('2026-12-28');
const squat = anExercise('squat');

/** Two sets of 10 with 16 kg were asked after three of 20 kg. */
const asked = (kilograms: number, reps: number, more: MadeSet = {}): MadeSet => {
  const { kind = 'work' } = more;
  const key = aMarkedRow('squat', { sets: [{ kind }] }).sets[0]?.key ?? expect.fail();
  return { planned: { key, kind, round: 1, reps, load: planLoad(kilograms) }, kg: kilograms, reps, ...more };
};
const tried = (more: MadeSet = {}, of = 20): MadeSet => asked(of, 3, { kind: 'trial', ...more });
const work = (reps = 10): readonly MadeSet[] => [asked(16, 10, { reps }), asked(16, 10, { reps })];

/** One session so many days ago, in its own week; `left` said of the row. */
const ago = (days: number, sets: readonly MadeSet[], left?: number, more: Partial<DoneSession> = {}): DoneSession => {
  const row: MadeRow = { sets, ...(left === undefined ? {} : { left }) };
  const own = { occurrence: 60 - days, week: 8 - Math.ceil(days / 7), ...more };
  return aSessionDone(addDays(today, -days), [aMarkedRow('squat', row)], own);
};

/** `3 @ 20 in 2, open`. */
function opened(client: Partial<Client>, value: number | null, ...sessions: readonly DoneSession[]): string {
  const own = value === null ? [] : [{ rule: 'done-trial', value, reason: 'to see', place: PLACE }];
  const { recalls } = remember({
    client: aClient(client),
    history: aHistory(...sessions),
    exercises: exercisesById([squat]),
    rules: layOverrides(own).value,
    today,
  });
  return (recalls.get(exerciseId('squat'))?.trials ?? [])
    .map((one) => `${one.reps} @ ${one.grams / 1000} in ${one.weeks}${one.opened ? ', open' : ''}`)
    .join(' · ');
}

describe('done-trial: what counts', () => {
  const good = [ago(10, [tried(), ...work()], 4), ago(3, [tried(), ...work()], 4)];
  const [first = expect.fail()] = good;

  test.each<[string, readonly DoneSession[], string]>([
    ['twice in two weeks', good, '3 @ 20 in 2, open'],
    [
      'and with nothing said of what was left',
      [ago(10, [tried(), ...work()]), ago(3, [tried(), ...work()])],
      '3 @ 20 in 2, open',
    ],
    ['once', [first], '3 @ 20 in 1'],
    ['twice in one week', [ago(5, [tried()], 4), ago(3, [tried()], 4)], '3 @ 20 in 1'],
    ['a rep short the second time', [first, ago(3, [tried({ reps: 2 }), ...work()], 4)], '0 @ 20 in 0'],
    ['with less than asked', [first, ago(3, [tried({ kg: 18 }), ...work()], 4)], '0 @ 20 in 0'],
    ['the easier way', [first, ago(3, [tried({ done: 'easier' }), ...work()], 4)], '0 @ 20 in 0'],
    ['left out', [first, ago(3, [tried({ done: 'left out' }), ...work()], 4)], '0 @ 20 in 0'],
    [
      'left out since time was short',
      [...good, ago(1, [tried({ done: 'left out' })], 4, { today: 'short of time' })],
      '3 @ 20 in 2, open',
    ],
    ['with less left than the floor', [first, ago(3, [tried(), ...work()], 1)], '3 @ 20 in 1'],
    ['then work that fell short', [...good, ago(1, work(5), 0)], '0 @ 20 in 0'],
    ['missed, then twice', [ago(17, [tried({ reps: 1 })], 0), ...good], '3 @ 20 in 2, open'],
    [
      'ticked as planned',
      good.map((one) => ({
        ...one,
        rows: one.rows.map((row) => ({
          ...row,
          sets: row.sets.map(({ load: _, ...set }) => ({ ...set, asPlanned: true })),
        })),
      })),
      '3 @ 20 in 2, open',
    ],
    ['too long ago', [ago(50, [tried()], 4), ago(3, [tried()], 4)], '3 @ 20 in 1'],
  ])('%s', (_, sessions, said) => {
    expect(opened({}, null, ...sessions)).toBe(said);
  });

  it('not where the coach has tested since', () => {
    const tests = [aTest('squat', 10, { load: kg('16'), date: on('2026-12-27') })];
    expect(opened({ tests }, null, ...good)).toBe('');
  });

  it('as often as the coach sets', () => {
    expect(opened({}, 3, ...good)).toBe('3 @ 20 in 2');
    expect(opened({}, 1, first)).toBe('3 @ 20 in 1, open');
  });
});

describe('done-trial: what the walk does', () => {
  const WEAK: Written = {
    ...{ kit: '12-24 by 4', share: '878', body: 74, test: '16 x 10, 7 left weak', range: '6-10', asked: '3 3 2 e4' },
    sets: '3 3 3 2',
  };
  const walked = (more: Partial<Written> = {}): string => walkText(planStrand(strandOf({ ...WEAK, ...more })));
  // R 80.9 and 84.9 kg: 80972 × 470 / 84972 − 300 = 147.8.
  const RISES = '6@20 · 7@20 · 8@20 · e 8@20';

  it('before: on a weak estimate it is tried again and again', () => {
    expect(walked({ earned: 2 })).toBe('10@16 + 3@20 · 10@16 + 3@20 · 10@16 + 3@20 · e 10@16');
  });

  test.each<[string, Partial<Written>, string]>([
    ['after: a rise to the bottom of the range, though nothing is earned', {}, RISES],
    ['a load that is not the next one changes nothing', { tried: { kg: 24 } }, walked()],
    ['held: not yet', { held: 'held' }, walked({ held: 'held' })],
    ['where no gates are offered, no', { gates: false, trials: false }, walked({ trials: false })],
    [
      'where the bottom and the floor are not predicted, tried on',
      { range: '13-15' },
      '14@16 + 3@20 · 14@16 + 3@20 · 15@16 + 3@20 · e 13@16',
    ],
  ])('%s', (_, more, said) => {
    expect(walked({ tried: { kg: 20 }, ...more })).toBe(said);
  });

  it('is no gate: nothing is printed to do otherwise, and it says why', () => {
    const result = planStrand(strandOf({ ...WEAK, tried: { kg: 20 } }));
    expect(otherwiseText(result)).toBe('');
    const [step] = result.kind === 'walked' ? result.steps : [];
    expect(step?.gate).toBeUndefined();
    expect(step?.rule).toBe('big-step');
    expect(step?.reasons.map(({ rule }) => rule)).toEqual(['done-trial', 'done-trial']);
  });

  it('a harder version too', () => {
    const push: Written = {
      ...{ kit: 'body | body', share: '640 | 700', body: 80, bodyweight: true, test: '0 x 10, 7 left weak' },
      ...{ range: '6-10', asked: '3 3 e4', sets: '3 3 2' },
    };
    expect(walkText(planStrand(strandOf(push)))).toBe('10@0 · 10@0 · e 10@0');
    const after = planStrand(strandOf({ ...push, tried: { kg: 0, version: 1 } }));
    expect(walkText(after)).toBe('v1 6@0 · v1 7@0 · e v1 7@0');
  });
});

describe('done-trial: in a plan', () => {
  const kit = bells('12', '16', '20');
  const programme = aProgramme([aSession('A', aBlock([aRow('squat')]))]);
  const client = aClient({ kit, tests: [aTest('squat', 10, { load: kg('16'), date: on('2026-11-01') })] });
  const plan = (...sessions: readonly DoneSession[]) => {
    const history = aHistory(...sessions);
    const made = planBlock({ library: aLibrary([squat], programme), client, today, edition: 0, history }).value;
    return made === null ? expect.fail('no plan') : sayPlan(made);
  };
  const said = (made: ReturnType<typeof plan>) =>
    made.weeks[0]?.sessions[0]?.groups.flatMap(({ items }) => items).find(({ row }) => row === 'squat');

  it('the row begins with it, and coach and client read why', () => {
    const sessions = [ago(10, [tried(), ...work()], 10), ago(3, [tried(), ...work()], 10)];
    const before = plan(...sessions.slice(0, 1));
    // 16 × (300 + 10 × (10 + 10)) / 20 − 300 = 100 tenths.
    expect(before.inputs.strands[0]?.tried).toBeUndefined();
    const after = plan(...sessions);
    expect(after.inputs.strands[0]?.tried).toEqual({ exercise: 'squat', grams: 20000, reps: 3, weeks: 2 });
    const item = said(after);
    const first = item?.sets.find(({ kind }) => kind === 'work');
    expect(`${first?.reps} @ ${first?.load?.label}`).toBe('6 @ 20 kg');
    const [why] = (item?.reasons ?? []).filter(({ rule }) => rule === 'done-trial');
    const toCoach = why === undefined ? '' : sayReason(why, 'coach', speechOf('en-GB'));
    expect([why?.says, toCoach].map((text) => text?.replaceAll('\u00a0', ' '))).toEqual([
      'You did 3 with the 20 kg twice. It is yours to work with.',
      '3 with the 20 kg done twice as asked: open, however weak the estimate (10 to failure). It begins with the fewest reps of the range.',
    ]);
  });
});

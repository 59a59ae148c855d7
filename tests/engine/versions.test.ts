/** Which version a client does: cautions by phase and degree, kit, room, sign-offs, and the choice by cause. */
import { describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import type { Client } from '../../src/model/client.js';
import type { Ask, Cause, Exercise } from '../../src/model/exercise.js';
import type { Group, Plan } from '../../src/model/plan.js';
import type { Problem } from '../../src/model/problem.js';
import { PLACE } from './generate-exercises.js';
import { kitOf } from './generate-studio.js';
import {
  aBlock,
  aCaution,
  aClient,
  aLibrary,
  aLink,
  anExercise,
  aProgramme,
  aRow,
  aSession,
  aSignOff,
  ask,
  aTest,
  aWay,
  bells,
  bodyweight,
  kg,
  lb,
  type MadeExercise,
  on,
  oneSession,
} from './make-block.js';

const today = on('2026-12-20');
const made = (exercises: readonly Exercise[], client: Partial<Client> = {}, of = 'squat') =>
  planBlock({ library: aLibrary(exercises, oneSession(of)), client: aClient(client), today, edition: 0 });
const planOf = (exercises: readonly Exercise[], client: Partial<Client> = {}): Plan => {
  const { value, problems } = made(exercises, client);
  if (value === null) throw new Error(JSON.stringify(problems));
  return value;
};
const isWork = ({ kind }: Group): boolean => kind === 'straight' || kind === 'circuit';
const itemsOf = (plan: Plan) =>
  plan.weeks.flatMap((week) =>
    week.sessions.flatMap(({ groups }) => groups.filter(isWork).flatMap((group) => group.items)),
  );
const first = (plan: Plan) => {
  const [item] = itemsOf(plan);
  if (item === undefined) throw new Error('nothing planned');
  return item;
};
const refusedWith = (problems: readonly Problem[]) =>
  problems.flatMap((problem) => (problem.code === 'no-version-allowed' ? problem.data.refused : []));
const tests = [aTest('squat', 10, { load: kg('16') })];

describe('cautions', () => {
  const squat = (asks: MadeExercise['asks'] = []) => [anExercise('squat', { asks, cues: ['down', 'bottom', 'up'] })];
  const outcome = (asks: MadeExercise['asks'], caution: ReturnType<typeof aCaution>) => {
    const { value } = made(squat(asks), { tests, cautions: [caution] });
    return value === null ? 'refused' : value.inputs.strands[0]?.gain === 0 ? 'no gain' : 'open';
  };
  const care = { degree: 'take care' } as const;

  test('avoid refuses whatever asks it; take care refuses much and counts no gain on some', () => {
    expect(outcome([ask('knee')], aCaution('knee'))).toBe('refused');
    expect(outcome([ask('knee', 'much')], aCaution('knee', care))).toBe('refused');
    expect(outcome([ask('knee')], aCaution('knee', care))).toBe('no gain');
    expect(outcome([ask('hip')], aCaution('knee'))).toBe('open');
  });

  test('a phase narrows a caution only where the exercise knows it', () => {
    expect(outcome([ask('knee', 'some', 'bottom')], aCaution('knee', { phases: ['bottom'] }))).toBe('refused');
    expect(outcome([ask('knee', 'some', 'bottom')], aCaution('knee', { phases: ['up'] }))).toBe('open');
    expect(outcome([ask('knee', 'some', 'bottom')], aCaution('knee', { phases: ['at the very end'] }))).toBe('refused');
    expect(outcome([ask('knee')], aCaution('knee', { phases: ['up'] }))).toBe('refused');
  });

  test('a caution of one side is met by work for both', () => {
    expect(outcome([ask('knee')], aCaution('knee', { side: 'left' }))).toBe('refused');
  });

  test('one that begins or ends inside the block counts for all of it; one that is over or not yet begun does not', () => {
    const asks = [ask('knee')];
    expect(outcome(asks, aCaution('knee', { from: on('2027-02-08') }))).toBe('refused');
    expect(outcome(asks, aCaution('knee', { from: on('2027-02-09') }))).toBe('open');
    expect(outcome(asks, aCaution('knee', { until: on('2027-01-04') }))).toBe('refused');
    expect(outcome(asks, aCaution('knee', { until: on('2027-01-03') }))).toBe('open');
    expect(outcome(asks, aCaution('knee', { review: on('2027-01-02') }))).toBe('refused');
  });

  test('a room that must be high asks overhead, said or not', () => {
    const press = [anExercise('squat', { room: { ceiling: 'arms overhead' } })];
    const client = { tests, room: { ceilingMillimetres: 3000 } };
    expect(made(press, client).value).not.toBeNull();
    expect(refusedWith(made(press, { ...client, cautions: [aCaution('overhead')] }).problems)).toEqual([
      { exercise: 'squat', cause: 'avoid', detail: 'overhead' },
    ]);
  });

  test.each<[Ask['of'], Cause]>([
    ['overhead', 'shoulder'],
    ['breath hold', 'load'],
    ['head down', 'floor'],
    ['lying on the back', 'floor'],
    ['impact', 'speed'],
    ['deep bend', 'range'],
    ['deep twist', 'range'],
    ['reach', 'range'],
    ['spinal load', 'load'],
    ['loaded bend', 'load'],
    ['loaded twist', 'load'],
    ['grip', 'load'],
    ['balance', 'balance'],
    ['speed', 'speed'],
    ['floor', 'floor'],
  ])('%s is answered by a link that is for %s', (of, cause) => {
    const other: Cause = cause === 'load' ? 'range' : 'load';
    const chain = [
      anExercise('squat', { asks: [ask(of)], easier: [aLink('nearer', [other]), aLink('meant', [cause])] }),
      anExercise('nearer'),
      anExercise('meant'),
    ];
    expect(first(planOf(chain, { tests, cautions: [aCaution(of)] })).exercise).toBe('meant');
  });

  test.each(['grip', 'hand'] as const)('a caution on the grip is answered by a link that is for %s too', (cause) => {
    const chain = [
      anExercise('squat', { asks: [ask('grip')], easier: [aLink('nearer', ['range']), aLink('meant', [cause])] }),
      anExercise('nearer'),
      anExercise('meant'),
    ];
    expect(first(planOf(chain, { tests, cautions: [aCaution('grip')] })).exercise).toBe('meant');
  });

  test('a moderate plan looks for what is for speed', () => {
    const fast = [
      anExercise('squat', {
        asks: [ask('speed', 'much')],
        easier: [aLink('nearer', ['load']), aLink('slow', ['speed'])],
      }),
      anExercise('nearer'),
      anExercise('slow'),
    ];
    const screening = {
      date: on('2026-12-01'),
      regularExercise: 'yes',
      knownDisease: 'yes',
      symptoms: 'no',
      place: PLACE,
    } as const;
    const clearance = { by: 'A doctor', date: on('2026-12-01'), for: 'moderate' } as const;
    const plan = planOf(fast, { tests, screening, clearance });
    expect(first(plan).exercise).toBe('slow');
  });

  test('no trial and no gain in the row that asks it, and in no other of its pattern', () => {
    const two = [anExercise('squat', { asks: [ask('knee')] }), anExercise('other', {})];
    const programme = aProgramme([aSession('A', aBlock([aRow('squat'), aRow('other')]))]);
    const client = aClient({
      tests: [...tests, aTest('other', 10, { load: kg('16') })],
      cautions: [aCaution('knee', { degree: 'take care' })],
    });
    const { value } = planBlock({ library: aLibrary(two, programme), client, today, edition: 0 });
    expect(value?.inputs.strands.map(({ gain, trials }) => [gain, trials])).toEqual([
      [0, false],
      [50, true],
    ]);
  });

  const climbing = (
    asks: Readonly<Record<'low' | 'squat' | 'high', MadeExercise['asks']>>,
    of: Partial<Client> = {},
  ) => {
    const chain = [
      anExercise('low', { asks: asks.low ?? [] }),
      anExercise('squat', { asks: asks.squat ?? [], easier: [aLink('low')], harder: [aLink('high')] }),
      anExercise('high', { asks: asks.high ?? [], easier: [aLink('squat')] }),
    ];
    const { value } = made(chain, { tests, cautions: [aCaution('knee', care)], ...of });
    const strand = value?.inputs.strands[0];
    return [strand?.gain, strand?.versions.map(({ exercise }) => exercise)];
  };

  test('an easier version that is only there to fall back on stops no gain; a harder one is not entered', () => {
    const some = [ask('knee')];
    expect(climbing({ low: [], squat: [], high: [] })).toEqual([50, ['low', 'squat', 'high']]);
    expect(climbing({ low: some, squat: [], high: [] })).toEqual([50, ['low', 'squat', 'high']]);
    expect(climbing({ low: [], squat: [], high: some })).toEqual([50, ['low', 'squat']]);
    expect(climbing({ low: [], squat: some, high: [] })).toEqual([0, ['low', 'squat', 'high']]);
  });

  test('once the plan falls to the version that asks it, no gain is counted on', () => {
    // 4 to failure at the one bell there is for the squat: nothing leaves two from six down to four reps.
    const heavy = [
      anExercise('low', { asks: [ask('knee')], kit: { ...anExercise('x').facts.kit, load: [], unloaded: true } }),
      anExercise('squat', { easier: [aLink('low', ['load'], 500)] }),
    ];
    const shared = { bodyShare: { share: 878, standing: 'derived', source: 'Dempster' } } as const;
    const chain = heavy.map((exercise) => ({ ...exercise, facts: { ...exercise.facts, ...shared } }));
    const { value } = made(chain, {
      tests: [aTest('squat', 4, { load: kg('16'), reserve: 0 })],
      kit: bells('16'),
      bodyMass: { mass: kg('70') },
      cautions: [aCaution('knee', care)],
    });
    expect(value === null ? [] : itemsOf(value).map(({ exercise }) => exercise)).toContain('low');
    expect(value?.inputs.strands[0]?.gain).toBe(0);
    expect(value === null ? [] : first(value).reasons.flatMap(({ inputs }) => inputs)).toContainEqual({
      ...{ name: 'met by', value: 'low', unit: '' },
    });
  });
});

describe('kit and room', () => {
  test('things, loads and room, each with what would unlock it', () => {
    const squat = anExercise('squat', {
      kit: { load: [{ kind: 'bell', count: 2, unequal: false }], unloaded: false, things: ['bench'] },
      room: { ceiling: 'load overhead', floorMillimetres: { long: 2000, wide: 1500 } },
    });
    const client = { signOffs: [aSignOff('squat', { upTo: kg('24') })] };
    const causes = (room: Client['room']) =>
      refusedWith(made([squat], { ...client, room }).problems).map(({ cause, detail }) => `${cause} ${detail}`);
    expect(causes({})).toEqual(['thing bench', 'load 2 × bell', 'ceiling-unknown 2500', 'floor-unknown 2000 × 1500']);
    expect(causes({ ceilingMillimetres: 2499, floorMillimetres: { long: 1400, wide: 2600 } })).toEqual([
      'thing bench',
      'load 2 × bell',
      'ceiling-low 2500',
      'floor-small 2000 × 1500',
    ]);
    expect(causes({ ceilingMillimetres: 2500, floorMillimetres: { long: 1500, wide: 2000 } })).toEqual([
      'thing bench',
      'load 2 × bell',
    ]);
  });
});

describe('sign-offs', () => {
  const needing = [anExercise('squat', { signOff: true })];
  const causes = (exercises: readonly Exercise[], client: Partial<Client>) =>
    refusedWith(made(exercises, client).problems).map(({ cause }) => cause);

  test('same-bell: 53 lb passes where 24 kg was signed off, 55 lb and 24.1 kg do not', () => {
    const signOffs = [aSignOff('squat', { upTo: kg('24') })];
    const refused = (bell: ReturnType<typeof kg>) => causes(needing, { kit: kitOf([['bell', bell]]), signOffs });
    expect(refused(lb('53'))).toEqual([]);
    expect(refused(lb('55'))).toEqual(['sign-off-load']);
    expect(refused(kg('24'))).toEqual([]);
    expect(refused(kg('24.1'))).toEqual(['sign-off-load']);
    const exactly = [{ rule: 'same-bell', value: 0, reason: 'to see', place: PLACE }];
    const library = { ...aLibrary(needing, oneSession('squat')), overrides: exactly };
    const client = aClient({ kit: kitOf([['bell', lb('53')]]), signOffs });
    const { problems } = planBlock({ library, client, today, edition: 0 });
    expect(refusedWith(problems).map(({ cause }) => cause)).toEqual(['sign-off-load']);
  });

  test('needed, and only up to the load passed', () => {
    expect(causes(needing, { tests })).toEqual(['sign-off-missing']);
    const plan = planOf(needing, { tests, signOffs: [aSignOff('squat', { upTo: kg('16') })] });
    expect(plan.inputs.strands[0]?.versions[0]?.loads.map(({ label }) => label)).toEqual(['8 kg', '12 kg', '16 kg']);
    expect(causes(needing, { signOffs: [aSignOff('squat', { upTo: kg('6') })] })).toEqual(['sign-off-load']);
    expect(causes(needing, { signOffs: [aSignOff('squat')] })).toEqual(['sign-off-load']);
  });

  test('it lapses after twelve weeks without use, and a test is use', () => {
    const passed = (iso: string) => ({ signOffs: [aSignOff('squat', { upTo: kg('16'), date: on(iso) })] });
    expect(causes(needing, passed('2026-10-12'))).toEqual([]);
    expect(causes(needing, passed('2026-10-11'))).toEqual(['sign-off-lapsed']);
    expect(causes(needing, { ...passed('2026-09-01'), tests })).toEqual([]);
    expect(causes(needing, passed('2026-12-21'))).toEqual(['sign-off-missing']);
  });

  test('the latest one decides, also downwards', () => {
    const signOffs = [
      aSignOff('squat', { upTo: kg('24'), date: on('2026-11-01') }),
      aSignOff('squat', { upTo: kg('12'), date: on('2026-12-01') }),
    ];
    const plan = planOf(needing, { tests, signOffs });
    expect(plan.inputs.strands[0]?.versions[0]?.signedOffTo).toBe(12_000);
    expect(plan.inputs.strands[0]?.start?.load).toBe(12_000);
  });

  test('fast, overhead, loaded-twist and barbell work always needs one', () => {
    const kit = kitOf([
      ['bar', kg('20')],
      ['bell', kg('16')],
    ]);
    const bar = { load: [{ kind: 'bar' } as const], unloaded: false, things: [] };
    expect(causes([anExercise('squat', { asks: [ask('speed')] })], {})).toEqual(['sign-off-missing']);
    expect(causes([anExercise('squat', { asks: [ask('loaded twist')] })], {})).toEqual(['sign-off-missing']);
    expect(causes([anExercise('squat', { asks: [ask('overhead')] })], {})).toEqual(['sign-off-missing']);
    expect(causes([anExercise('squat', { kit: bar })], { kit })).toEqual(['sign-off-missing']);
    const either = anExercise('squat', {
      kit: { ...bar, load: [{ kind: 'bar' }, { kind: 'bell', count: 1, unequal: false }] },
    });
    const loads = (client: Partial<Client>) =>
      planOf([either], { kit, ...client }).inputs.strands[0]?.versions[0]?.loads.map(({ label }) => label);
    expect(loads({})).toEqual(['16 kg']);
    expect(loads({ signOffs: [aSignOff('squat', { upTo: kg('40') })] })).toEqual(['16 kg', '20 kg']);
  });

  test('also when reached as an easier version or a harder one', () => {
    const exercises = [
      anExercise('squat', { easier: [aLink('box'), aWay('slower')], asks: [ask('knee')] }),
      anExercise('box', { signOff: true }),
      anExercise('front', { signOff: true, easier: [aLink('squat')] }),
    ];
    const plan = planOf(exercises, { tests });
    expect(first(plan).easier.map(({ exercise }) => exercise)).toEqual(['squat#slower']);
    expect(plan.inputs.strands[0]?.versions.map(({ exercise }) => exercise)).toEqual(['squat']);
    const refused = made(exercises, { tests, cautions: [aCaution('knee')] }).problems;
    expect(refusedWith(refused)).toEqual([
      { exercise: 'squat', cause: 'avoid', detail: 'knee' },
      { exercise: 'box', cause: 'sign-off-missing', detail: '' },
    ]);
  });
});

describe('the choice of an easier version', () => {
  const chosen = (exercises: readonly Exercise[], client: Partial<Client>) => first(planOf(exercises, client)).exercise;
  const sore = { cautions: [aCaution('knee')] };

  test('by cause first, then the movement pattern, then the shortest way', () => {
    const squat = (...easier: Parameters<typeof aLink>[]) =>
      anExercise('squat', { asks: [ask('knee')], easier: easier.map((link) => aLink(...link)) });
    const near = anExercise('near');
    const far = anExercise('far');
    const hinge = anExercise('hinge', { pattern: 'hinge' });
    expect(chosen([squat(['near', ['load']], ['far', ['knee']]), near, far], sore)).toBe('far');
    expect(chosen([squat(['hinge', ['knee']], ['near', ['load']]), near, hinge], sore)).toBe('hinge');
    expect(chosen([squat(['hinge', ['knee']], ['near', ['knee']]), near, hinge], sore)).toBe('near');
    const step = anExercise('step', { asks: [ask('knee')], easier: [aLink('far', ['knee'])] });
    expect(chosen([squat(['step'], ['near', ['load']]), step, near, far], sore)).toBe('far');
    expect(chosen([squat(['near'], ['far']), near, far], sore)).toBe('near');
  });

  test('a link written only on the harder exercise’s side, or only on the easier one’s, counts the same', () => {
    const squat = anExercise('squat', { asks: [ask('knee')], easier: [] });
    expect(chosen([squat, anExercise('box', { harder: [aLink('squat', ['knee'])] })], sore)).toBe('box');
  });

  test('a missing bell is answered by what is for kit, and the coach is told what was refused', () => {
    const squat = anExercise('squat', { easier: [aLink('box', ['range']), aLink('chair', ['kit'])] });
    const exercises = [squat, anExercise('box'), anExercise('chair', bodyweight)];
    const plan = planOf(exercises, { kit: [], tests: [aTest('chair', 10)] });
    expect(first(plan).exercise).toBe('chair');
    const told = plan.findings.find(({ rule }) => rule === 'version-chosen');
    expect(told?.reason.inputs.map(({ name, value }) => `${name} ${value}`)).toContain('squat: load bell');
  });

  test('two exercises that are each other’s easier one do not hold the search up', () => {
    const squat = anExercise('squat', { asks: [ask('knee')], easier: [aLink('box')] });
    const box = anExercise('box', { asks: [ask('knee')], easier: [aLink('squat')] });
    expect(made([squat, box], sore).problems.map(({ code }) => code)).toEqual(['no-version-allowed']);
  });

  test('nothing easier is an error that says what was refused', () => {
    const alone = [anExercise('squat', { easier: [aLink('box')] }), anExercise('box', { signOff: true })];
    const { problems } = made(alone, { tests });
    expect(problems.map(({ code, data }) => [code, 'refused' in data ? data.refused : []])).toEqual([
      ['no-easier-version', [{ exercise: 'box', cause: 'sign-off-missing', detail: '' }]],
    ]);
  });

  test('a pattern is filled with what was tested last, else by id', () => {
    const programme = aProgramme([
      aSession('A', aBlock([aRow('squat', { target: { kind: 'pattern', pattern: 'squat' } })])),
    ]);
    const library = aLibrary([anExercise('a'), anExercise('b'), anExercise('c', { pattern: 'hinge' })], programme);
    const filled = (tested: Client['tests']) => {
      const { value } = planBlock({ library, client: aClient({ tests: tested }), today, edition: 0 });
      return value === null ? null : first(value).exercise;
    };
    expect(filled([])).toBe('a');
    expect(filled([aTest('b', 10, { load: kg('16') })])).toBe('b');
  });
});

describe('easier versions', () => {
  const shared = { bodyShare: { share: 878, standing: 'derived', source: 'Dempster' } } as const;
  const bodyMass = { bodyMass: { mass: kg('70') } };

  test('with their own loads and reps from the same capacity, never heavier than what is held', () => {
    const exercises = [
      anExercise('squat', { ...shared, easier: [aLink('box', ['range']), aLink('chair', ['load']), aWay('half')] }),
      anExercise('box', { ...shared, harder: [] }),
      anExercise('chair', { ...shared, ...bodyweight }),
    ];
    const item = first(planOf(exercises, { tests, ...bodyMass }));
    const dose = item.easier.map(({ exercise, sets }) => [exercise, sets[0]?.load?.label, sets[0]?.reps, sets.length]);
    expect(dose).toEqual([
      // A way comes before another exercise. It may be a slower one: 12 to failure × 0.8 leaves 9.6, and with 3 left 6.
      ['squat#half', '16 kg', 6, 3],
      ['box', '16 kg', 9, 3],
      ['chair', undefined, 9, 3],
    ]);
    const [, box, chair] = item.easier;
    expect(chair?.sets[0]?.reserve ?? 0).toBeGreaterThan(box?.sets[0]?.reserve ?? 0);
  });

  test('behind a gate as without it: nobody who did not pass reads the heavier load', () => {
    const exercises = [
      anExercise('squat', { ...shared, easier: [aLink('box', ['range']), aWay('half')] }),
      anExercise('box', { ...shared, harder: [] }),
    ];
    const plan = planOf(exercises, { tests, ...bodyMass });
    const items = plan.weeks.flatMap((week) =>
      week.sessions.flatMap((session) => session.groups.flatMap((group) => group.items)),
    );
    const gated = items.filter((item) => item.sets.some((set) => set.otherwise !== undefined));
    expect(gated.length).toBeGreaterThan(0);
    for (const item of gated) {
      const otherwise = item.sets.find((set) => set.otherwise !== undefined)?.otherwise?.[0];
      const work = item.sets.find((set) => set.kind === 'work');
      expect(otherwise?.load?.grams ?? 0).toBeLessThan(work?.load?.grams ?? 0);
      const warmUp = item.sets.find((set) => set.kind === 'warm-up');
      expect(warmUp?.load?.grams ?? 0).toBeLessThan(otherwise?.load?.grams ?? 0);
      for (const { sets } of item.easier) {
        for (const { load, reps } of sets) {
          expect(load?.grams ?? 0).toBeLessThanOrEqual(otherwise?.load?.grams ?? 0);
          expect(reps ?? 0).toBeLessThanOrEqual(otherwise?.reps ?? 0);
        }
      }
    }
  });

  test('by the link’s ratio where a share is not known, and without either no load is claimed', () => {
    const { bodyShare: _, ...facts } = anExercise('x').facts;
    const lone = (id: string, easier: MadeExercise['easier'] = [aWay('half')]): Exercise => {
      const exercise = anExercise(id, { easier });
      return { ...exercise, facts: { ...facts, asks: [] } };
    };
    const item = first(
      planOf([lone('squat', [aLink('a', ['load'], 800), aLink('b')]), lone('a'), lone('b')], { tests }),
    );
    const dose = item.easier.map(({ exercise, sets }) => [exercise, sets[0]?.load?.label, sets[0]?.reps]);
    expect(dose).toEqual([
      ['a', '12 kg', 9],
      ['b', undefined, 6],
    ]);
  });
});

describe('kit in the hands', () => {
  test('neither of two unequal bells is above what was signed off', () => {
    const pair = anExercise('squat', {
      signOff: true,
      holds: 'per-hand',
      kit: { load: [{ kind: 'bell', count: 2, unequal: true }], unloaded: false, things: [] },
    });
    const signOffs = [aSignOff('squat', { upTo: kg('16') })];
    const plan = planOf([pair], { kit: bells('8', '12', '16', '20'), signOffs });
    const labels = plan.inputs.strands[0]?.versions[0]?.loads.map(({ label }) => label);
    expect(labels).toEqual(['12 kg + 16 kg']);
  });
});

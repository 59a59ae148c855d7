/** Easier ways before other exercises, combinations, bands, sign-offs that lapse, what would open a refusal, and words. */
import { describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import { layOverrides } from '../../src/engine/rulebook.js';
import { CAUSES_OF, inOrderOfRegress } from '../../src/engine/versions/regress-order.js';
import type { Client } from '../../src/model/client.js';
import { BODY_PARTS, type Exercise, QUALITIES } from '../../src/model/exercise.js';
import { exerciseId } from '../../src/model/identity.js';
import type { Finding, Group, Item, Plan } from '../../src/model/plan.js';
import type { Programme } from '../../src/model/programme.js';
import { cautionWords } from '../../src/words/english-cautions.js';
import { sayReason } from '../../src/words/say-reason.js';
import { speechOf } from '../../src/words/speech.js';
import { PLACE } from './generate-exercises.js';
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
  bodyweight,
  kg,
  on,
  oneSession,
} from './make-block.js';

const today = on('2026-12-20');
const tests = [aTest('squat', 10, { load: kg('16') })];
const made = (exercises: readonly Exercise[], client: Partial<Client> = {}, programme?: Programme) =>
  planBlock({
    library: aLibrary(exercises, programme ?? oneSession('squat')),
    client: aClient({ tests, ...client }),
    today,
    edition: 0,
  });
const planOf = (...given: Parameters<typeof made>): Plan => {
  const { value, problems } = made(...given);
  if (value === null) throw new Error(JSON.stringify(problems));
  return value;
};
const isWork = ({ kind }: Group): boolean => kind === 'straight' || kind === 'circuit';
const itemsOf = (plan: Plan): readonly Item[] =>
  plan.weeks.flatMap(({ sessions }) => sessions.flatMap(({ groups }) => groups.filter(isWork).flatMap((g) => g.items)));
const first = (plan: Plan): Item => {
  const [item] = itemsOf(plan);
  if (item === undefined) throw new Error('nothing planned');
  return item;
};
const refusedOf = (...given: Parameters<typeof made>) =>
  made(...given).problems.flatMap((problem) => ('refused' in problem.data ? problem.data.refused : []));
const english = speechOf('en-GB');
const told = (item: Item, rule: string, audience: 'client' | 'coach') =>
  item.reasons
    .filter((reason) => reason.rule === rule && reason.audience === audience)
    .map((reason) => sayReason(reason, audience, english));

describe('an easier way of its own comes before another exercise (way-unlocks)', () => {
  const box = anExercise('box');
  const squat = (...ways: Parameters<typeof aWay>[]) =>
    anExercise('squat', {
      asks: [ask('knee', 'much')],
      easier: [aLink('box', ['knee']), ...ways.map((way) => aWay(...way))],
    });
  const care = { cautions: [aCaution('knee', { degree: 'take care' })] };

  test('where only take care refuses it, and the way is for that', () => {
    const item = first(planOf([squat(['high-box', ['knee', 'range']]), box], care));
    expect([item.exercise, item.done]).toEqual(['squat', { way: 'squat#high-box', say: 'high-box' }]);
    // Nobody was tested in it, nothing is counted on, and nothing is tried.
    expect(item.sets[0]?.kind).toBe('feeler');
    expect(planOf([squat(['high-box', ['knee']]), box], care).inputs.strands[0]).toMatchObject({
      gain: 0,
      trials: false,
    });
    // The way itself is not offered as the easier one beside itself.
    expect(item.easier.map(({ exercise }) => exercise)).toEqual(['box']);
    expect(told(item, 'way-unlocks', 'client')).toEqual(['Only like this for you: high-box.']);
  });

  test('never where a caution says avoid', () => {
    const avoid = { cautions: [aCaution('knee')] };
    const item = first(planOf([squat(['high-box', ['knee']]), box], avoid));
    expect([item.exercise, item.done]).toEqual(['box', undefined]);
  });

  test('not where anything else refuses it too, nor where the way is for something else', () => {
    const signed = { ...squat(['high-box', ['knee']]) };
    const unsigned = { ...signed, facts: { ...signed.facts, signOff: true } };
    expect(first(planOf([unsigned, box], care)).exercise).toBe('box');
    expect(first(planOf([squat(['slower', ['speed']]), box], care)).exercise).toBe('box');
  });

  test('every caution on it must be answered by the one way', () => {
    const both = anExercise('squat', {
      asks: [ask('knee', 'much'), ask('deep bend', 'much')],
      easier: [aWay('hand', ['knee']), aWay('high-box', ['knee', 'range']), aLink('box', ['knee'])],
    });
    const client = {
      cautions: [aCaution('knee', { degree: 'take care' }), aCaution('deep bend', { degree: 'take care' })],
    };
    expect(first(planOf([both, box], client)).done?.way).toBe('squat#high-box');
  });

  test('another easier version must stand beside it', () => {
    const alone = anExercise('squat', { asks: [ask('knee', 'much')], easier: [aWay('high-box', ['knee'])] });
    expect(refusedOf([alone], care)).toEqual([{ exercise: 'squat', cause: 'take-care', detail: 'knee' }]);
  });

  test('no harder version is led to from it', () => {
    const chain = [
      anExercise('squat', {
        asks: [ask('knee', 'much')],
        easier: [aWay('high-box', ['knee']), aLink('box', ['knee'])],
        harder: [aLink('front')],
      }),
      anExercise('front'),
      box,
    ];
    const versions = planOf(chain, care).inputs.strands[0]?.versions.map(({ exercise }) => exercise);
    expect(versions).toEqual(['box', 'squat']);
  });

  test('a coach may switch it off', () => {
    const library = aLibrary([squat(['high-box', ['knee']]), box], oneSession('squat'));
    const rulesOverridden = [{ rule: 'way-unlocks', value: 0, reason: 'always another exercise', place: PLACE }];
    const { value } = planBlock({ library, client: aClient({ tests, ...care }), today, edition: 0, rulesOverridden });
    expect(value === null ? null : first(value).exercise).toBe('box');
    expect(layOverrides([{ rule: 'way-unlocks', value: 2, reason: '', place: PLACE }]).problems).toHaveLength(1);
  });
});

test('ways stand in the order a coach makes an exercise easier', () => {
  const ways = [
    aWay('sore', ['knee']),
    aWay('lighter', ['load']),
    aWay('support', ['balance']),
    aWay('shorter', ['range', 'knee']),
    aWay('slower', ['speed']),
    aWay('cue', []),
  ].map(({ to, causes }) => ({ slug: to.kind === 'way' ? to.slug : '', causes }));
  const order = inOrderOfRegress(ways).map(({ slug }) => slug);
  expect(order).toEqual(['cue', 'slower', 'shorter', 'support', 'lighter', 'sore']);
  const squat = anExercise('squat', { easier: [aLink('box'), aWay('hand', ['balance']), aWay('slow', ['speed'])] });
  const item = first(planOf([squat, anExercise('box')]));
  expect(item.easier.map(({ exercise }) => exercise)).toEqual(['squat#slow', 'squat#hand', 'box']);
  for (const [quality, causes] of Object.entries(CAUSES_OF)) {
    expect(QUALITIES).toContain(quality);
    expect(causes).not.toEqual([]);
  }
});

describe('a combination meets what stands against its parts', () => {
  const whole = (easier = [aLink('box')]) =>
    anExercise('squat', {
      way: 'combination',
      parts: [exerciseId('clean'), exerciseId('press')],
      easier,
    });
  const library = (clean: Parameters<typeof anExercise>[1], press: Parameters<typeof anExercise>[1] = {}) => [
    whole(),
    anExercise('clean', clean),
    anExercise('press', press),
    anExercise('box'),
  ];
  const chosen = (exercises: readonly Exercise[], client: Partial<Client> = {}) =>
    first(planOf(exercises, client)).exercise;

  test('its cautions, things, room and sign-off', () => {
    expect(chosen(library({}))).toBe('squat');
    const cautions = [aCaution('wrist')];
    expect(chosen(library({ asks: [ask('wrist')] }), { cautions })).toBe('box');
    const bell = { kind: 'bell', count: 1, unequal: false } as const;
    expect(chosen(library({ kit: { load: [bell], unloaded: false, things: ['bench'] } }))).toBe('box');
    expect(chosen(library({ room: { ceiling: 'arms overhead' } }))).toBe('box');
    expect(chosen(library({ signOff: true }))).toBe('box');
    expect(chosen(library({ signOff: true }), { signOffs: [aSignOff('clean', { upTo: kg('16') })] })).toBe('squat');
  });

  test('of several sign-offs the lowest counts', () => {
    const exercises = library({ signOff: true }, { signOff: true });
    const signOffs = [aSignOff('clean', { upTo: kg('20') }), aSignOff('press', { upTo: kg('12') })];
    const [strand] = planOf(exercises, { signOffs }).inputs.strands;
    expect(strand?.versions.at(-1)?.loads.map(({ label }) => label)).toEqual(['8 kg', '12 kg']);
  });

  test('care for a part is care for the whole', () => {
    const cautions = [aCaution('wrist', { degree: 'take care' })];
    expect(planOf(library({ asks: [ask('wrist')] }), { cautions }).inputs.strands[0]?.gain).toBe(0);
  });

  test('a part of a part counts, a circle of parts does not hold it up, a part that is not there refuses', () => {
    const deep = library({ way: 'combination', parts: [exerciseId('press'), exerciseId('squat')] }, { signOff: true });
    expect(chosen(deep)).toBe('box');
    const gone = [whole(), anExercise('clean'), anExercise('box')];
    expect(chosen(gone)).toBe('box');
    const unlock = planOf(gone).findings.find(({ rule }) => rule === 'would-unlock');
    expect(unlock?.reason.inputs).toContainEqual({ name: 'unlock: part', value: 'press', unit: '' });
  });
});

describe('a sign-off lapses (sign-off-lapses)', () => {
  // Sessions on Mondays, 4 January to 8 February 2027; 84 days before 8 February is 16 November 2026.
  const signed = (date: string) => [aSignOff('box', { upTo: kg('16'), date: on(date) })];
  const easier = (date: string) => {
    const exercises = [
      anExercise('squat', { easier: [aLink('box'), aWay('slow')] }),
      anExercise('box', { signOff: true }),
    ];
    return first(planOf(exercises, { signOffs: signed(date) })).easier.map(({ exercise }) => exercise);
  };

  test('inside the block too, for what nobody may have done: it must hold to the last session', () => {
    expect(easier('2026-11-16')).toEqual(['squat#slow', 'box']);
    expect(easier('2026-11-15')).toEqual(['squat#slow']);
  });

  test('a test uses it', () => {
    const exercises = [
      anExercise('squat', { easier: [aLink('box'), aWay('slow')] }),
      anExercise('box', { signOff: true }),
    ];
    const used = [...tests, aTest('box', 10, { load: kg('16'), date: on('2026-11-16') })];
    const item = first(planOf(exercises, { signOffs: signed('2026-10-01'), tests: used }));
    expect(item.easier.map(({ exercise }) => exercise)).toEqual(['squat#slow', 'box']);
  });

  test('the version a row is planned with keeps itself in use, if it is begun in time', () => {
    const exercises = [
      anExercise('squat', { asks: [ask('knee')], easier: [aLink('box', ['knee'])] }),
      anExercise('box', { signOff: true }),
      anExercise('chair', { harder: [aLink('box')] }),
    ];
    const cautions = [aCaution('knee')];
    // 84 days before 4 January is 12 October.
    expect(first(planOf(exercises, { cautions, signOffs: signed('2026-10-12') })).exercise).toBe('box');
    expect(refusedOf(exercises.slice(0, 2), { cautions, signOffs: signed('2026-10-11') })).toContainEqual({
      exercise: 'box',
      cause: 'sign-off-lapsed',
      detail: '2026-10-11',
    });
  });

  test('a row of the programme uses it on its days, so that it holds elsewhere', () => {
    const exercises = [
      anExercise('squat', { easier: [aLink('box'), aWay('slow')] }),
      anExercise('box', { signOff: true }),
    ];
    const programme = aProgramme([aSession('A', aBlock([aRow('squat'), aRow('box')]))]);
    const plan = planOf(exercises, { signOffs: signed('2026-10-12') }, programme);
    const last = itemsOf(plan).findLast(({ row }) => row === 'squat');
    expect(last?.easier.map(({ exercise }) => exercise)).toEqual(['squat#slow', 'box']);
  });

  test('swing work always needs one', () => {
    const swing = [anExercise('squat', { way: 'swing' })];
    expect(refusedOf(swing)).toEqual([{ exercise: 'squat', cause: 'sign-off-missing', detail: '' }]);
  });
});

describe('what would open a refusal (would-unlock)', () => {
  const unlocksIn = (...given: Parameters<typeof made>) =>
    made(...given).problems.flatMap((problem) => ('unlocks' in problem.data ? (problem.data.unlocks ?? []) : []));

  test('is a typed list beside each problem', () => {
    const bell = { kind: 'bell', count: 1, unequal: false } as const;
    const squat = anExercise('squat', {
      signOff: true,
      asks: [ask('knee')],
      kit: { load: [bell], unloaded: false, things: ['bench'] },
      room: { ceiling: 'load overhead', floorMillimetres: { long: 2000, wide: 1000 } },
    });
    const caution = aCaution('knee', { by: 'Physio', side: 'left', review: on('2027-01-11') });
    const client = { kit: [], cautions: [caution], room: { ceilingMillimetres: 2400 } };
    expect(unlocksIn([squat], client)).toEqual([
      {
        kind: 'caution',
        exercise: 'squat',
        what: 'knee',
        degree: 'avoid',
        side: 'left',
        by: 'Physio',
        until: '',
        review: '2027-01-11',
      },
      { kind: 'thing', exercise: 'squat', thing: 'bench' },
      { kind: 'load', exercise: 'squat', load: 'bell' },
      { kind: 'ceiling', exercise: 'squat', least: 2500, known: true },
      { kind: 'floor', exercise: 'squat', least: '2000 × 1000', known: false },
      { kind: 'sign-off', exercise: 'squat', beyond: '', seen: '' },
    ]);
    const low = {
      kit: made([squat]).value === null ? aClient().kit : [],
      signOffs: [aSignOff('squat', { upTo: kg('4') })],
    };
    const passed = anExercise('squat', { signOff: true });
    expect(unlocksIn([passed], low)).toEqual([{ kind: 'sign-off', exercise: 'squat', beyond: '4 kg', seen: '' }]);
  });

  const opening = (plan: Plan, exercise: string): readonly Finding[] =>
    plan.findings.filter(
      ({ rule, reason }) =>
        rule === 'would-unlock' && reason.inputs.some(({ name, value }) => name === 'exercise' && value === exercise),
    );

  test('is told of the version another took the place of, and says whose caution it is', () => {
    const exercises = [
      anExercise('squat', { asks: [ask('knee')], easier: [aLink('box', ['knee'])] }),
      anExercise('box'),
    ];
    const plan = planOf(exercises, { cautions: [aCaution('knee', { by: 'Physio' })] });
    const [finding] = opening(plan, 'squat');
    expect(finding?.audience).toBe('coach');
    expect(finding === undefined ? '' : sayReason(finding.reason, 'coach', english)).toBe(
      'Squat opens once the caution on knee (Physio) ends.',
    );
  });

  test('is told of the harder version next to the hardest in reach: refused, asking for care, or never tested', () => {
    const share = { bodyShare: { share: 0, standing: 'practice', source: 'made up' } } as const;
    const squat = anExercise('squat', { ...share, harder: [aLink('front')] });
    const refused = planOf([squat, anExercise('front', { signOff: true })]);
    expect(opening(refused, 'front')[0]?.reason.inputs).toContainEqual({
      name: 'unlock: sign-off',
      value: 'seen and passed',
      unit: '',
    });
    const asks = planOf([squat, anExercise('front', { asks: [ask('knee')] })], {
      cautions: [aCaution('knee', { degree: 'take care' })],
    });
    expect(opening(asks, 'front')[0]?.reason.inputs).toContainEqual({
      name: 'unlock: caution',
      value: 'knee (Coach)',
      unit: '',
    });
    const unknown = planOf([squat, anExercise('front', bodyweight)]);
    expect(opening(unknown, 'front')[0]?.reason.inputs).toContainEqual({
      name: 'unlock: test',
      value: 'tested',
      unit: '',
    });
    expect(opening(planOf([squat, anExercise('front')]), 'front')).toEqual([]);
  });

  test('never of one that was tested already, nor of one that stands in the block: a test would open nothing', () => {
    const share = { bodyShare: { share: 0, standing: 'practice', source: 'made up' } } as const;
    const exercises = [
      anExercise('squat', { ...share, harder: [aLink('front')] }),
      anExercise('front', { ...bodyweight, easier: [aWay('half')] }),
    ];
    const opens = (...given: readonly [Partial<Client>?, Programme?]) => opening(planOf(exercises, ...given), 'front');
    expect(opens()).toHaveLength(1);
    const front = aTest('front', 8, { date: on('2026-12-14') });
    expect(opens({ tests: [...tests, front] })).toEqual([]);
    const away = { from: on('2026-10-01'), until: on('2026-12-19'), cause: 'away', place: PLACE } as const;
    const long = {
      tests: [...tests.map((one) => ({ ...one, date: on('2026-12-20') })), { ...front, date: on('2026-09-01') }],
    };
    expect(opens({ ...long, breaks: [away] })).toHaveLength(1);
    expect(opens({ tests: [] })).toHaveLength(1);
    expect(opens({ tests: [] }, oneSession('squat', 'front'))).toEqual([]);
  });

  test('and a harder version that asks for care does not stand among those ahead', () => {
    const squat = anExercise('squat', { harder: [aLink('front')] });
    const cautions = [aCaution('knee', { degree: 'take care' })];
    const ahead = (asks: Parameters<typeof anExercise>[1]) =>
      first(planOf([squat, anExercise('front', asks)], { cautions })).harder.map(({ exercise }) => exercise);
    expect(ahead({})).toEqual(['front']);
    expect(ahead({ asks: [ask('knee')] })).toEqual([]);
  });
});

describe('a review date (caution-review)', () => {
  const reviewed = (review: string) =>
    planOf([anExercise('squat', { asks: [ask('knee')], easier: [aLink('box', ['knee'])] }), anExercise('box')], {
      cautions: [aCaution('knee', { review: on(review), by: 'Physio' })],
    });
  const said = (plan: Plan) =>
    plan.findings
      .filter(({ rule }) => rule === 'caution-review')
      .map(({ reason }) => sayReason(reason, 'coach', english).replaceAll('\u00a0', ' '));

  test('returns nothing, before it or after it; the coach is told', () => {
    for (const date of ['2026-12-10', '2027-01-12', '2027-02-08']) {
      const plan = reviewed(date);
      expect(itemsOf(plan).every(({ exercise }) => exercise === 'box')).toBe(true);
      expect(said(plan)).toHaveLength(1);
    }
    expect(said(reviewed('2027-02-09'))).toEqual([]);
    expect(said(reviewed('2026-12-10'))[0]).toContain('that day is past');
    expect(said(reviewed('2027-01-12'))[0]).toContain('you meant to look again by');
    expect(said(reviewed('2027-01-12'))[0]).toContain('(Physio, since 1 December 2026)');
  });
});

describe('what the client reads (caution-met)', () => {
  const exercises = [
    anExercise('squat', { asks: [ask('knee', 'much')], easier: [aLink('box', ['knee'])] }),
    anExercise('box'),
  ];
  const cared = [anExercise('squat', { asks: [ask('knee')] })];
  const care = aCaution('knee', { degree: 'take care', side: 'left' });

  test('the coach’s own words, else a sentence for the part, on what was changed and on what stays', () => {
    const own = aCaution('knee', { say: 'Only as deep as your chair.' });
    expect(told(first(planOf(exercises, { cautions: [own] })), 'caution-met', 'client')).toEqual([
      'Only as deep as your chair.',
    ]);
    expect(told(first(planOf(exercises, { cautions: [aCaution('knee')] })), 'caution-met', 'client')).toEqual([
      'This one is kind to your knee.',
    ]);
    expect(told(first(planOf(cared, { cautions: [care] })), 'caution-met', 'client')).toEqual([
      'Mind your left knee: stay where it is comfortable.',
    ]);
    expect(told(first(planOf(cared)), 'caution-met', 'client')).toEqual([]);
  });

  test('the coach reads whose it is and since when', () => {
    const [coach] = told(first(planOf(cared, { cautions: [care] })), 'caution-met', 'coach');
    expect(coach).toContain('the left knee (Coach, since');
  });

  test('there is a sentence for every part and quality, and none names what is wrong', () => {
    for (const what of [...BODY_PARTS, ...QUALITIES]) {
      for (const changed of [true, false]) {
        const sentence = cautionWords(what, '', changed);
        expect(sentence, what).toMatch(/^[A-Z].*\.$/);
        expect(sentence).not.toMatch(/injur|diagnos|arthr|patholog|condition|disease|screen/i);
      }
    }
    expect(cautionWords('something else', '', true)).toBe('');
  });
});

/** The audit is silent on a right plan, and each of its checks speaks up on a plan spoilt for it. */
import { describe, expect, it } from 'vitest';
import { auditPlan } from './audit.js';
import { makePlan } from './make-plan.js';
import { type Fault, follow, item, type Path, REMOVED, spoil } from './spoil-plan.js';

/** The press has a trial in week 3 and its gate in week 4; the squat its gate in week 5. */
const press = (week: number): Path => item(week, 0, 1, 0);
const squat = (week: number): Path => item(week, 0, 1, 1);
const row = (week: number): Path => item(week, 1, 2, 0);
const session = (week: number, at: number): Path => ['weeks', week - 1, 'sessions', at];
const strand = (at: number): Path => ['inputs', 'strands', at];
const bell20 = {
  ...{ kg: 20, grams: 20_000, mode: 'total', label: '20 kg' },
  pieces: [{ id: 'bell-20000', grams: 20_000 }],
};
const bell28 = { id: 'bell-28000', grams: 28_000 };

const newMovement = {
  ...{ rule: 'new-movement-lighter', source: 'practice' },
  inputs: [{ name: 'relative', value: 'other', unit: '' }],
};
const hunch = { rule: 'hunch', source: '', inputs: [] };
const gatedSet = {
  key: '2/9/press/left/work/1',
  kind: 'work',
  round: 1,
  reps: 5,
  side: 'left',
  gate: { needs: { exercise: 'press', reps: 9, reserve: 20, weeks: [4] } },
};
/** Week 3's press, to be put into its session a second time. */
const trialItem = follow(makePlan(), press(3));

const FAULTS: readonly Fault[] = [
  ['a name missing', /weeks\.0\.sessions\.0\.minutes/, [[[...session(1, 0), 'minutes'], REMOVED]]],
  [
    'a load in kilograms to spare',
    /sets\.0\.load: Invalid input/,
    [[[...squat(1), 'sets', 0, 'load', 'grams'], 16_000.5]],
  ],
  ['another version of the format', /schema/, [[['schema'], 2]]],
  ['an item of kit twice', /kit item bell-12000 stands twice/, [[['inputs', 'kit', 1, 'id'], 'bell-12000']]],
  ['a strand gone', /neither a strand and a ladder to repeat it from/, [[[...strand(1), 'row'], 'other']]],
  ['an exercise that is no version', /is not a version of its strand/, [[[...squat(1), 'exercise'], 'leap']]],

  ['a week out of place', /week 3 stands in place 2/, [[['weeks', 1, 'number'], 3]]],
  ['a deload forgotten', /week 6: the curve says easy true/, [[['weeks', 5, 'deload'], false]]],
  ['a week too many in the curve', /6 weeks for a curve of 5/, [[['inputs', 'curve', 'length'], 5]]],
  ['a week that begins late', /week 2 begins on 2027-01-12/, [[['weeks', 1, 'begins'], '2027-01-12']]],
  ['a date that does not exist', /2027-02-30 is not in it/, [[[...session(5, 0), 'date'], '2027-02-30']]],
  ['a session on a day off', /2027-01-05 is not a training day/, [[[...session(1, 0), 'date'], '2027-01-05']]],
  ['sessions the wrong way round', /comes after a later session/, [[[...session(1, 0), 'date'], '2027-01-08']]],
  ['a queue with a gap', /session a is not number 3/, [[[...session(2, 0), 'occurrence'], 4]]],
  ['a session too long', /41 minutes of 40/, [[[...session(1, 0), 'minutes'], 41]]],
  ['a session that cannot be so short', /1 minutes hold/, [[[...session(1, 0), 'minutes'], 1]]],

  ['an item missing', /5 items for 6 occurrences/, [[[...session(2, 0), 'groups', 1, 'items', 'length'], 1]]],
  [
    'less asked than the floor',
    /asked is not max/,
    [
      [[...strand(1), 'occurrences', 0, 'asked'], 10],
      [[...squat(1), 'asked', 'reserve'], 10],
    ],
  ],
  ['a circuit without the rep more', /asked is not max/, [[[...strand(2), 'occurrences', 2, 'asked'], 20]]],
  ['asked unlike the strand', /asks 20, the strand 30/, [[[...squat(1), 'asked', 'reserve'], 20]]],
  ['a floor lowered', /floor 10, not 20/, [[[...strand(1), 'occurrences', 0, 'floor'], 10]]],
  [
    'a caution met without its floor',
    /floor 20, not 30/,
    [[[...squat(1), 'reasons', 0], { rule: 'gain-cautioned', source: 'practice', inputs: [] }]],
  ],
  ['a floor not stated', /floor 20, not 30/, [[['inputs', 'floors', 0, 'reserve'], 30]]],
  [
    'sets that do not follow the curve',
    /do not follow the curve's shares/,
    [[[...strand(1), 'occurrences', 1, 'sets'], 4]],
  ],
  ['an easy week with as many sets', /an easy week of 3 sets after 3/, [[[...squat(6), 'asked', 'sets'], 3]]],
  ['rounds unlike sets', /sets are not the rounds/, [[[...session(1, 1), 'groups', 1, 'rounds'], 3]]],
  ['another range', /not the range of the strand/, [[[...squat(1), 'asked', 'max'], 12]]],
  ['other weeks', /weeks are not those of the curve/, [[[...strand(1), 'weeks', 5, 'easy'], false]]],

  [
    'a bell nobody owns',
    /nobody owns bell-14000/,
    [[[...squat(1), 'sets', 0, 'load', 'pieces', 0, 'id'], 'bell-14000']],
  ],
  [
    'a bell of another mass',
    /weighs 16000 g, not 15000 g/,
    [[[...squat(1), 'sets', 0, 'load', 'pieces', 0, 'grams'], 15_000]],
  ],
  [
    'one bell in two hands',
    /an item is used twice/,
    [
      [
        [...squat(1), 'sets', 0, 'load', 'pieces'],
        [bell28, bell28],
      ],
    ],
  ],
  [
    'printed otherwise than held',
    /16000 g held, printed as 20000 g/,
    [[[...squat(1), 'sets', 0, 'load', 'grams'], 20_000]],
  ],
  ['kilograms that are not the grams', /17 kg is not 16000 g/, [[[...squat(1), 'sets', 0, 'load', 'kg'], 17]]],
  ['a load out of thin air', /made of nothing/, [[[...squat(1), 'sets', 0, 'load', 'pieces'], []]]],
  [
    'a bell of the otherwise nobody owns',
    /nobody owns/,
    [[[...squat(5), 'sets', 0, 'otherwise', 0, 'load', 'pieces', 0, 'id'], 'x']],
  ],
  [
    'a bell of the feeler table nobody owns',
    /nobody owns/,
    [[[...row(1), 'sets', 0, 'choose', 1, 'load', 'pieces', 0, 'id'], 'x']],
  ],
  [
    'above the sign-off',
    /goblet-squat with 20 kg is above what is signed off/,
    [[[...strand(1), 'versions', 0, 'signedOffTo'], 16_000]],
  ],
  ['a sign-off made up', /no sign-off reaches/, [[['inputs', 'signOffs'], []]]],
  [
    'loads out of order',
    /loads are not lightest first/,
    [[[...strand(1), 'versions', 0, 'loads', 0, 'pieces', 0], bell28]],
  ],
  [
    'a load of the kit left out',
    /20000 g of one bell is left out/,
    [
      [
        [...strand(0), 'versions', 0, 'loads', 2],
        { grams: 24_000, mode: 'total', label: '24 kg', pieces: [{ id: 'bell-24000', grams: 24_000 }] },
      ],
    ],
  ],

  ['a key twice', /stands twice/, [[[...squat(1), 'sets', 1, 'key'], '2/1/squat/both/work/1']]],
  ['a key of another row', /does not name its set/, [[[...squat(1), 'sets', 0, 'key'], '2/1/press/both/work/9']]],
  ['a key in another shape', /does not name its set/, [[[...squat(1), 'sets', 0, 'key'], 'first']]],
  ['an item with another name', /is not session\/row\/week/, [[[...squat(1), 'id'], 'a/squat/2']]],

  ['a set missing', /7 sets for 4 on 2 sides/, [[[...press(1), 'sets', 'length'], 7]]],
  ['the stronger side first', /the stronger side goes first/, [[[...strand(0), 'capacity', 'side'], 'right']]],
  ['one side twice', /two sets running on the left/, [[[...press(1), 'sets', 1, 'side'], 'left']]],
  ['sides that do not do the same', /the sides do not do the same/, [[[...press(1), 'sets', 1, 'reps'], 8]]],
  ['a side where both work', /a side where both work/, [[[...press(1), 'sides'], 'both']]],
  ['no easier way', /no easier way/, [[[...squat(1), 'easier'], []]]],
  [
    'an easier way that is the same',
    /the easier way is the same exercise/,
    [[[...squat(1), 'easier', 0, 'exercise'], 'goblet-squat']],
  ],
  [
    'an easier way as heavy as the gate',
    /Something easier with 20 kg is heavier than what is done in any case/,
    [[[...squat(5), 'easier', 0, 'sets', 0, 'load'], bell20]],
  ],
  [
    'a warm-up as heavy as the gate',
    /a warm-up with 20 kg is heavier than what follows/,
    [[[...squat(5), 'sets', 0, 'kind'], 'warm-up']],
  ],
  [
    'an easier way of more reps',
    /Something easier for 30 reps is more than what is done in any case/,
    [[[...squat(5), 'easier', 0, 'sets', 0, 'reps'], 30]],
  ],
  ['no reasons', /no reasons/, [[[...squat(1), 'reasons'], []]]],

  ['a rep too many', /a set is .*"reps":10.*walked again .*"reps":9/, [[[...squat(1), 'sets', 0, 'reps'], 10]]],
  ['another reserve', /a set is .*"reserve":40/, [[[...squat(1), 'sets', 0, 'reserve'], 40]]],
  ['another tempo', /tempo slow lowering, walked again normal/, [[[...squat(1), 'tempo'], 'slow lowering']]],
  ['a rule relaxed unawares', /relaxed reps/, [[[...squat(1), 'relaxed'], ['reps']]]],
  ['a capacity raised in the strand', /walked again/, [[[...strand(1), 'capacity', 'reps'], 140]]],
  [
    'a trial called work',
    /0 trial sets/,
    [
      [[...press(3), 'sets', 0, 'kind'], 'work'],
      [[...press(3), 'sets', 1, 'kind'], 'work'],
    ],
  ],
  ['a trial of too many', /the trial is .*"reps":5/, [[[...press(3), 'sets', 0, 'reps'], 5]]],
  [
    'a gate gone',
    /a gate too many or too few/,
    [0, 1, 2, 3, 4, 5, 6, 7].map((n) => [[...press(4), 'sets', n, 'gate'], REMOVED]),
  ],
  ['a gate without an otherwise', /a gate without an otherwise/, [[[...squat(5), 'sets', 0, 'otherwise'], REMOVED]]],
  ['a gate that needs less', /the gate needs 8 of/, [[[...squat(5), 'sets', 0, 'gate', 'needs', 'reps'], 8]]],
  [
    'a gate that needs what is to come',
    /needs something yet to come/,
    [[[...squat(5), 'sets', 0, 'gate', 'needs', 'weeks'], [6]]],
  ],
  ['an otherwise that rises', /otherwise is .*"reps":12/, [[[...squat(5), 'sets', 0, 'otherwise', 0, 'reps'], 12]]],
  ['an otherwise of other sets', /otherwise 4 sets/, [[[...squat(5), 'sets', 0, 'otherwise', 0, 'sets'], 4]]],
  [
    'a prediction made up',
    /predicts 120, not 200/,
    [[[...squat(1), 'allowed'], [{ exercise: 'goblet-squat', tempo: 'normal', grams: 16_000, predicted: 200 }]]],
  ],
  ['the capacity of another side', /the capacity of another side/, [[[...squat(1), 'capacity', 'side'], 'left']]],
  ['a row that cannot be done', /nothing can be done in week 1/, [[[...strand(2), 'capacity', 'reps'], 10]]],

  ['a gate twice', /2 gates/, [[[...press(5), 'sets', 0], gatedSet]]],
  ['two trials in a week', /two trials in a week/, [[[...session(3, 0), 'groups', 1, 'items', 1], trialItem]]],
  [
    'a trial after work',
    /the trial is not the first set/,
    [
      [[...press(3), 'sets', 0, 'kind'], 'work'],
      [[...press(3), 'sets', 2, 'kind'], 'trial'],
    ],
  ],
  ['a trial on one side', /1 trial sets/, [[[...press(3), 'sets', 1, 'kind'], 'work']]],
  ['a reason from nowhere', /neither a rule nor has a source/, [[[...squat(1), 'reasons', 0], hunch]]],
  ['keys of two blocks', /keys of 2 blocks/, [[[...squat(1), 'sets', 0, 'key'], '1/1/squat/both/work/1']]],
  [
    'an option open that nothing is known of',
    /stands open, and nothing can be said of it/,
    [[[...squat(1), 'allowed'], [{ exercise: 'leap', tempo: 'normal', grams: 0, predicted: 90 }]]],
  ],
  ['an easier way without a name', /an easier way without a name/, [[[...squat(1), 'easier', 0, 'say'], ' ']]],
  ['no capacity where there is one', /no capacity where there is a walk/, [[[...squat(1), 'capacity'], null]]],
  ['an item in another week', /stands in another week/, [[[...strand(1), 'occurrences', 1, 'week'], 1]]],
  ['a strand by another name', /is not session\/row/, [[[...strand(1), 'id'], 'squat']]],
  [
    'a load where nothing is known',
    /a load is claimed where nothing is known/,
    [
      [
        [...row(2), 'sets', 0],
        {
          key: '2/4/row/both/work/1',
          kind: 'work',
          round: 1,
          reps: 6,
          load: { kg: 28, grams: 28_000, mode: 'total', label: '28 kg', pieces: [bell28] },
        },
      ],
    ],
  ],
  ['no feeler set', /there is no feeler set/, [[[...row(1), 'sets', 0, 'kind'], 'warm-up']]],
  ['a feeler set with a gap', /does not answer 5 left/, [[[...row(1), 'sets', 0, 'choose', 1, 'left', 'min'], 6]]],
  [
    'a feeler set that ends early',
    /does not answer 10 left/,
    [[[...row(1), 'sets', 0, 'choose', 1, 'left', 'max'], 9]],
  ],

  ['K not by Epley', /capacity of push-up, both: 19264001/, [[['inputs', 'capacities', 3, 'k'], 19_264_001]]],
  [
    'K of nobody',
    /K 10056060 is not that of a test/,
    [
      [[...strand(0), 'capacity', 'resisted'], 23_943],
      [[...strand(0), 'capacity', 'reps'], 120],
    ],
  ],
  ['K of the stronger side', /though a side has 10080000/, [[[...strand(0), 'capacity', 'reps'], 130]]],
  [
    'a beginning above what was tested',
    /begins with 24000 g, though no more than 16000 g of goblet-squat was tested/,
    [[[...strand(1), 'start', 'load'], 24_000]],
  ],
  [
    'a beginning out of the blue',
    /begins with goblet-squat, which nothing tested speaks of/,
    [[['inputs', 'capacities', 2, 'exercise'], 'other']],
  ],
  [
    'a new movement above its relative',
    /begins with 16000 g, though no more than 12000 g of other was tested/,
    [
      [['inputs', 'capacities', 2, 'exercise'], 'other'],
      [['inputs', 'capacities', 2, 'test', 'grams'], 12_000],
      [[...squat(1), 'reasons', 0], newMovement],
    ],
  ],
  ['a weak estimate called sure', /is a weak estimate/, [[['inputs', 'capacities', 3, 'weak'], false]]],
];

describe('an audit of a plan', () => {
  it('finds nothing in a right plan', () => {
    expect(auditPlan(makePlan())).toEqual([]);
  });

  it('does not choke on anything else', () => {
    for (const nothing of [undefined, null, 3, 'plan', [], {}]) expect(auditPlan(nothing)).not.toEqual([]);
  });

  it.each(FAULTS)('sees %s', (_name, finding, changes) => {
    expect(auditPlan(spoil(...changes)).join('\n')).toMatch(finding);
  });
});

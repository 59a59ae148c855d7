/** Ladders: the audit speaks up on each fault planted in one. */
import { describe, expect, it } from 'vitest';
import { auditPlan } from './audit.js';
import { makePlan } from './make-plan.js';
import { type Fault, follow, item, type Path, REMOVED, spoil } from './spoil-plan.js';

/** The swing has its gate in week 5. */
const swing = (week: number): Path => item(week, 1, 3, 0);
const ladder: Path = ['inputs', 'ladders', 0];
const strand = (at: number): Path => ['inputs', 'strands', at];
const bell20 = {
  ...{ kg: 20, grams: 20_000, mode: 'total', label: '20 kg' },
  pieces: [{ id: 'bell-20000', grams: 20_000 }],
};
/** The first set of the first week, with more to it. */
const firstSet = (more: object) => ({ ...follow(makePlan(), [...swing(1), 'sets', 0]), ...more });
const THEN = 'then';

const rule = (id: string, value: number) => ({ id, value, source: 'practice' });

const FAULTS: readonly Fault[] = [
  ['stages too many', /2 stages/, [[['rules', 0], rule('stages-ahead', 0)]]],
  ['a leap of reps', /rung 4: 2 at once/, [[['rules', 0], rule('rung-reps', 1)]]],
  [
    'a leap of load',
    /rung 3: 4000 g heavier at once/,
    [
      [['rules', 0], rule('ladder-step-share', 200)],
      [['rules', 1], rule('ladder-step-grams', 2000)],
    ],
  ],
  ['more than was asked for', /rung 4 asks for more than the programme/, [[[...swing(1), 'asked', 'max'], 9]]],
  [
    'a row repeated twice over',
    /both a strand and a ladder/,
    [
      [[...strand(1), 'row'], 'swing'],
      [[...strand(1), 'session'], 'b'],
    ],
  ],
  ['a ladder of another name', /ladder|is not session\/row/, [[[...ladder, 'id'], 'b/other']]],
  ['a start above the ladder', /starts on rung 5 of 4/, [[[...ladder, 'start'], 4]]],
  ['a stage left out', /rung 3: stage 2/, [[[...ladder, 'rungs', 2, 'stage'], 2]]],
  ['two loads in a stage', /a stage is one exercise and load/, [[[...ladder, 'rungs', 2, 'stage'], 0]]],
  [
    'a lighter rung above',
    /rung 3: lighter than the rung before/,
    [[[...ladder, 'rungs', 2, 'load', 'pieces', 0, 'grams'], 12_000]],
  ],
  ['less on the next rung', /rung 2: less than the rung before/, [[[...ladder, 'rungs', 1, 'dose', 'reps'], 6]]],
  ['a rung too soon', /rung 2 of 4, walked again 1 of 4/, [[[...swing(2), 'rung', 'number'], 2]]],
  ['more than its rung asks', /does not do what its rung asks/, [[[...swing(2), 'sets', 0, 'reps'], 9]]],
  ['another bell than its rung', /has not the load of its rung/, [[[...swing(2), 'sets', 0, 'load'], bell20]]],
  ['no dead stop', /from a stop or not/, [[[...swing(1), 'sets', 0, 'deadStop'], REMOVED]]],
  [
    'a heavier bell to end with',
    /does not end as its rung does/,
    [[[...swing(1), 'sets', 0], firstSet({ [THEN]: { reps: 3, load: bell20 } })]],
  ],
  ['sets that rise and fall', /not the steps of its rung/, [[[...swing(1), 'sets', 0], firstSet({ steps: [3, 5] })]]],
  ['a reserve out of the air', /predicts a reserve/, [[[...swing(1), 'sets', 0], firstSet({ reserve: 30 })]]],
  ['a reserve asked for', /a reserve is claimed where none is counted/, [[[...swing(1), 'asked', 'reserve'], 30]]],
  ['a round more', /4 sets, walked again 3/, [[[...swing(1), 'asked', 'sets'], 4]]],
  ['no gate before the next bell', /a gate too many or too few/, [[[...swing(5), 'sets', 0, 'gate'], REMOVED]]],
  [
    'a gate that asks for less',
    /needs something else than the rung before it/,
    [[[...swing(5), 'sets', 0, 'gate', 'needs', 'reps'], 8]],
  ],
  [
    'a gate that asks for another week',
    /needs something else than the rung before it/,
    [
      [
        [...swing(5), 'sets', 0, 'gate', 'needs', 'weeks'],
        [1, 2],
      ],
    ],
  ],
  ['nothing to do otherwise', /an otherwise too many or too few/, [[[...swing(6), 'sets', 0, 'otherwise'], REMOVED]]],
  [
    'the heavier bell otherwise',
    /otherwise is not what the ladder/,
    [[[...swing(5), 'sets', 0, 'otherwise', 0, 'load'], bell20]],
  ],
  ['a gate where none may be', /a gate where none may be offered/, [[[...ladder, 'gates'], false]]],
  ['a ladder held, and climbed', /walked again 1 of 4/, [[[...ladder, 'occurrences', 2, 'held'], { why: 'hurt' }]]],
  [
    'a rung nobody can load',
    /b\/swing rung 1: .* cannot be made: nobody owns bell-14000/,
    [[[...ladder, 'rungs', 0, 'load', 'pieces', 0, 'id'], 'bell-14000']],
  ],
];

describe('an audit of ladders', () => {
  it.each(FAULTS)('sees %s', (_name, finding, changes) => {
    expect(auditPlan(spoil(...changes)).join('\n')).toMatch(finding);
  });
});

/** What each way of working makes of its dose: rungs, loads and sets, as a client finds them in their weeks. */
import { describe, expect, it } from 'vitest';
import { LADDER_STEP_GRAMS } from '../../src/engine/rules/ladder-step-grams.js';
import { LADDER_STEP_SHARE } from '../../src/engine/rules/ladder-step-share.js';
import { STAGES_AHEAD } from '../../src/engine/rules/stages-ahead.js';
import type { Client } from '../../src/model/client.js';
import { kitItemId } from '../../src/model/identity.js';
import { PLACE } from './generate-exercises.js';
import {
  BAND,
  CARRY,
  every,
  findingsOf,
  HOLD,
  itemsOf,
  metres,
  type OneRow,
  otherwiseOf,
  planOf,
  planOne,
  STEP,
  sets,
  setText,
  timed,
  weeksOf,
} from './ladder-plans.js';
import { aLink, anExercise, aSignOff, aTest, bells, kg, on } from './make-block.js';

/** Signed off up to so many kilograms; the main bell of the hinge where one is given. */
const swinger = (upTo: string, main?: string, client: Partial<Client> = {}): Partial<Client> => ({
  signOffs: [aSignOff('move', { upTo: kg(upTo) })],
  mainBells: main === undefined ? [] : [{ pattern: 'hinge', mass: kg(main), place: PLACE }],
  ...client,
});
const bands = (...labels: readonly string[]) =>
  labels.map((label, index) => ({ id: kitItemId(`band-${label}`), kind: 'band', step: index + 1, label }) as const);

describe('swing work', () => {
  it('climbs by reps, then by load behind a gate', () => {
    const one: OneRow = { dose: sets(5, 8, 10), client: swinger('24', '16') };
    expect(weeksOf(one)).toEqual([
      '8 @ 16 kg × 5',
      '8 @ 16 kg × 5',
      '10 @ 16 kg × 5',
      '10 @ 16 kg × 5',
      'gate 8 @ 20 kg × 5',
      '8 @ 20 kg × 3',
    ]);
    expect(otherwiseOf(planOf(one))).toEqual(['', '', '', '', '10 @ 16 kg × 5', '10 @ 16 kg × 3']);
    expect(weeksOf({ ...one, rules: { 'rung-reps': 1 } })[2]).toBe('9 @ 16 kg × 5');
    const [gated] = itemsOf(planOf(one)).slice(4);
    expect(gated?.sets[0]?.gate).toEqual({
      needs: { exercise: 'move', load: expect.objectContaining({ grams: 16_000 }), reps: 10, weeks: [3, 4] },
    });
    expect(gated?.rung).toEqual({ number: 3, of: 6 });
  });

  it('never has more reps in a set than keep their quality: the common cap, or the exercise’s own', () => {
    const most = (one: OneRow): readonly number[] => itemsOf(planOf(one)).map((item) => item.sets[0]?.reps ?? 0);
    const client = swinger('16', '16');
    expect(Math.max(...most({ dose: sets(3, 25), client }))).toBe(15);
    expect(Math.max(...most({ dose: sets(3, 25), client, exercise: { mostReps: 8 } }))).toBe(8);
    expect(Math.max(...most({ dose: sets(3, 25), client, rules: { 'swing-cap': 12 } }))).toBe(12);
    // 15 swings at 2.7 s each are 40.5 s.
    expect(weeksOf({ dose: timed(3, 60), client })[0]).toBe('40s @ 16 kg × 3');
  });

  it('begins from a dead stop, with the bell it was passed with, where it is new', () => {
    const one: OneRow = { dose: sets(5, 8, 10), client: swinger('16', undefined, { blocksBefore: 0 }) };
    expect(weeksOf(one)).toEqual([
      'stop 5 @ 16 kg × 5',
      'stop 5 @ 16 kg × 5',
      '8 @ 16 kg × 5',
      '8 @ 16 kg × 5',
      '10 @ 16 kg × 5',
      '10 @ 16 kg × 3',
    ]);
    expect(weeksOf({ ...one, rules: { 'dead-stop-reps': 3 } })[0]).toBe('stop 3 @ 16 kg × 5');
    const reasons = itemsOf(planOf(one)).map((item) => item.reasons.map(({ rule }) => rule));
    expect(reasons[0]).toContain('dead-stop-reps');
    expect(reasons[0]).toContain('ladder-start-signed-off');
    expect(reasons[2]).not.toContain('dead-stop-reps');
  });

  it('is known, and needs no dead stop, once tested, or with a main bell after a first block', () => {
    const dose = sets(5, 8, 10);
    const tests = [aTest('move', 10, { load: kg('12') })];
    expect(weeksOf({ dose, client: swinger('16', undefined, { blocksBefore: 0, tests }) })[0]).toBe('8 @ 12 kg × 5');
    expect(weeksOf({ dose, client: swinger('16', '16') })[0]).toBe('8 @ 16 kg × 5');
    expect(weeksOf({ dose, client: swinger('16', '16', { blocksBefore: 0 }) })[0]).toBe('stop 5 @ 16 kg × 5');
    expect(weeksOf({ dose, client: swinger('16') })[0]).toBe('stop 5 @ 16 kg × 5');
  });

  it('by the signal: who knows it has all the minutes with fewer reps, then more at every signal', () => {
    const one: OneRow = { dose: every(10, 8), client: swinger('24', '16') };
    expect(weeksOf(one)).toEqual([
      '6 @ 16 kg × 10',
      '6 @ 16 kg × 10',
      '7 @ 16 kg × 10',
      '7 @ 16 kg × 10',
      '8 @ 16 kg × 10',
      '8 @ 16 kg × 7',
    ]);
    expect(weeksOf({ ...one, rules: { 'signal-reps-first': 500 } })[0]).toBe('4 @ 16 kg × 10');
    expect(weeksOf({ ...one, rules: { 'rung-signal-reps': 2 } })[2]).toBe('8 @ 16 kg × 10');
    const groups = planOf(one).weeks[0]?.sessions[0]?.groups ?? [];
    expect(groups.find(({ kind }) => kind === 'straight')?.everySeconds).toBe(60);
  });

  it('by the signal, new: fewer minutes too, from a dead stop; then minute by minute', () => {
    const one: OneRow = { dose: every(10, 8), client: swinger('16') };
    const twice = { ...one, rules: { 'ladder-earned': 1 } };
    expect(weeksOf(twice)).toEqual([
      'stop 5 @ 16 kg × 6',
      '6 @ 16 kg × 6',
      '6 @ 16 kg × 8',
      '6 @ 16 kg × 10',
      '7 @ 16 kg × 10',
      '7 @ 16 kg × 7',
    ]);
    const longer = { ...twice, rules: { 'ladder-earned': 1, 'signal-minutes-first': 800, 'rung-minutes': 1 } };
    expect(weeksOf(longer).slice(0, 3)).toEqual(['stop 5 @ 16 kg × 8', '6 @ 16 kg × 8', '6 @ 16 kg × 9']);
  });

  it('on one side by the signal: turn about, as often on either side', () => {
    const one: OneRow = { dose: every(5, 8), client: swinger('16', '16'), exercise: { sides: 'each' } };
    const [item] = itemsOf(planOf(one));
    expect(item?.sets.map(({ side }) => side)).toEqual(['left', 'right', 'left', 'right']);
    expect(item?.asked).toEqual({ min: 8, max: 8, unit: 'reps', reserve: null, sets: 2 });
  });

  it('main and next up: the heavier reps climb; without a bell to end with, the main one alone, and the coach is told', () => {
    const dose = { kind: 'main-next', main: 15, next: 5 } as const;
    const one: OneRow = { dose, client: swinger('20', '16') };
    expect(weeksOf(one)).toEqual([
      '15 + 3 @ 20 kg @ 16 kg × 1',
      '15 + 3 @ 20 kg @ 16 kg × 1',
      '15 + 4 @ 20 kg @ 16 kg × 1',
      '15 + 4 @ 20 kg @ 16 kg × 1',
      '15 + 5 @ 20 kg @ 16 kg × 1',
      '15 + 4 @ 20 kg @ 16 kg × 1',
    ]);
    expect(weeksOf({ ...one, rules: { 'next-up-first': 1000 } })[0]).toBe('15 + 5 @ 20 kg @ 16 kg × 1');
    const alone = planOf({ dose, client: swinger('16', '16') });
    expect(itemsOf(alone).map((item) => setText(item.sets[0] ?? item.sets[1] ?? fail()))).toEqual(
      Array.from({ length: 6 }, () => '15 @ 16 kg'),
    );
    expect(findingsOf(alone)).toContain('next-up-passed');
    expect(findingsOf(planOf(one))).not.toContain('next-up-passed');
  });

  it('a gate in main and next up keeps what follows each set', () => {
    const plan = planOf({ dose: { kind: 'main-next', main: 10, next: 2 }, client: swinger('24', '16') });
    expect(weeksOf({ dose: { kind: 'main-next', main: 10, next: 2 }, client: swinger('24', '16') })[4]).toBe(
      'gate 10 + 1 @ 24 kg @ 20 kg × 1',
    );
    expect(otherwiseOf(plan)[4]).toBe('10 + 2 @ 20 kg @ 16 kg × 1');
    expect(itemsOf(plan)[4]?.sets[0]?.gate?.needs.then?.reps).toBe(2);
  });

  it('rising reps: without the longest step first', () => {
    const dose = { kind: 'steps', reps: [1, 2, 3], times: 4 } as const;
    const weeks = weeksOf({ dose, client: swinger('16', '16') });
    expect([weeks[0], weeks[2]]).toEqual(['1-2 @ 16 kg × 4', '1-2-3 @ 16 kg × 4']);
    const pair = weeksOf({ dose: { kind: 'steps', reps: [5, 4], times: 2 }, client: swinger('16', '16') });
    expect([pair[0], pair[2]]).toEqual(['4 @ 16 kg × 2', '5-4 @ 16 kg × 2']);
  });
});

const fail = (): never => {
  throw new Error('an item has sets');
};

describe('holds and carries', () => {
  it('a hold climbs by seconds up its range', () => {
    const one: OneRow = { exercise: HOLD, dose: timed(3, 20, 30) };
    expect(weeksOf(one)).toEqual(['20s × 3', '20s × 3', '25s × 3', '25s × 3', '30s × 3', '30s × 2']);
    expect(weeksOf({ ...one, rules: { 'rung-seconds': 10 } })[2]).toBe('30s × 3');
    expect(itemsOf(planOf(one))[0]?.asked).toEqual({ min: 20, max: 30, unit: 'seconds', reserve: null, sets: 3 });
  });

  it('a hold with a load that was never tested begins with the lightest, and the coach is told', () => {
    const exercise = { ...HOLD, kit: anExercise('x').facts.kit };
    const plan = planOf({ exercise, dose: timed(2, 20) });
    expect(itemsOf(plan)[0]?.sets[0]?.load?.grams).toBe(8000);
    expect(findingsOf(plan)).toContain('ladder-start-lightest');
  });

  it('a carry climbs by metres, the weaker side first, from the lighter of the tests', () => {
    const tests = [
      aTest('move', 1, { side: 'left', load: kg('16') }),
      aTest('move', 1, { side: 'right', load: kg('12') }),
    ];
    const one: OneRow = { exercise: CARRY, dose: metres(2, 20, 30), client: { tests } };
    expect(weeksOf(one)).toEqual([
      '20m @ 12 kg × 4',
      '20m @ 12 kg × 4',
      '25m @ 12 kg × 4',
      '25m @ 12 kg × 4',
      '30m @ 12 kg × 4',
      '30m @ 12 kg × 2',
    ]);
    expect(weeksOf({ ...one, rules: { 'rung-metres': 10 } })[2]).toBe('30m @ 12 kg × 4');
    const [item] = itemsOf(planOf(one));
    expect(item?.sets.map(({ side }) => side)).toEqual(['right', 'left', 'right', 'left']);
    expect(item?.reasons.map(({ rule }) => rule)).toContain('ladder-start-tested');
  });

  it('hold-most: no set is longer, whatever is written, and the coach is told', () => {
    const long = planOf({ exercise: HOLD, dose: timed(2, 60, 300) });
    const seconds = itemsOf(long).flatMap(({ sets: of }) => of.flatMap((set) => set.seconds ?? []));
    expect(Math.max(...seconds)).toBeLessThanOrEqual(120);
    const rungs = long.inputs.ladders.flatMap((ladder) => ladder.rungs.map(({ dose }) => dose));
    expect(rungs).toContainEqual({ kind: 'seconds', seconds: 120 });
    expect(findingsOf(long)).toContain('hold-most');
    const always = planOf({ exercise: HOLD, dose: timed(2, 600, 600) });
    expect(itemsOf(always)[0]?.sets[0]?.seconds).toBe(120);
    expect(findingsOf(planOf({ exercise: HOLD, dose: timed(2, 60, 120) }))).not.toContain('hold-most');
  });

  it('a pair is two equal bells, or two unequal ones where the exercise says so', () => {
    const pair = (unequal: boolean) => ({
      ...CARRY,
      sides: 'both' as const,
      kit: { load: [{ kind: 'bell' as const, count: 2 as const, unequal }], unloaded: false, things: [] },
    });
    expect(weeksOf({ exercise: pair(true), dose: metres(1, 20), client: { kit: bells('12', '16') } })[0]).toBe(
      '20m @ 12 kg + 16 kg × 1',
    );
    const [item] = itemsOf(planOf({ exercise: pair(true), dose: metres(1, 20), client: { kit: bells('12', '16') } }));
    expect(item?.reasons.flatMap(({ rule, audience }) => (rule === 'unequal-hands' ? [audience] : []))).toEqual([
      'client',
      'coach',
    ]);
    expect(weeksOf({ exercise: pair(false), dose: metres(1, 20), client: { kit: bells('12', '16', '16') } })[0]).toBe(
      '20m @ 2 × 16 kg × 1',
    );
    const { problems } = planOne({ exercise: pair(false), dose: metres(1, 20), client: { kit: bells('12', '16') } });
    expect(problems.map(({ code }) => code)).toContain('no-version-allowed');
  });
});

describe('mobility and conditioning', () => {
  it('mobility stays as it is, and says so', () => {
    const one: OneRow = { exercise: { ...HOLD, way: 'mobility', pattern: 'mobility' }, dose: sets(2, 8, 10) };
    expect(weeksOf(one)).toEqual([...Array.from({ length: 5 }, () => '8 × 2'), '8 × 1']);
    expect(itemsOf(planOf(one))[0]?.reasons.map(({ rule }) => rule)).toEqual(['mobility-fixed']);
    expect(findingsOf(planOf(one))).toEqual([]);
  });

  it('conditioning: longer work against the same rest, rounds as they are', () => {
    const plan = planOf({ exercise: STEP, dose: timed(6, 30, 40), row: { restSeconds: 45 } });
    expect(itemsOf(plan).map((item) => item.sets[0]?.seconds)).toEqual([30, 30, 35, 35, 40, 40]);
    const group = plan.weeks[2]?.sessions[0]?.groups.find(({ kind }) => kind === 'straight');
    expect([group?.workSeconds, group?.pauseSeconds]).toEqual([35, 45]);
    const rounds = weeksOf({ exercise: STEP, dose: { kind: 'rounds', rounds: 3 } });
    expect(rounds).toEqual([...Array.from({ length: 5 }, () => 'round × 3'), 'round × 2']);
  });

  it('is told by breath: whole sentences unless the row says phrases, and never beyond what the plan allows', () => {
    const talk = (one: Partial<OneRow>) => {
      const [item] = itemsOf(planOf({ exercise: STEP, dose: timed(4, 30), ...one }));
      return [item?.talk, item?.reasons.map(({ rule }) => rule).filter((rule) => rule.startsWith('talk'))];
    };
    const phrases = { row: { effort: { kind: 'talk', level: 'phrases' } } } as const;
    expect(talk({})).toEqual(['sentences', ['talk-sentences']]);
    expect(talk(phrases)).toEqual(['phrases', []]);
    const clearance = { by: 'Dr Orme', date: on('2026-12-01'), for: 'moderate' } as const;
    expect(talk({ ...phrases, client: { clearance } })).toEqual(['sentences', ['talk-limit']]);
    expect(talk({ client: { health: { medicines: ['slows the heart'] } } })).toEqual(['sentences', ['talk-sentences']]);
    const held = { exercise: HOLD, client: { health: { medicines: ['slows the heart'] } } } as const;
    expect(talk(held)).toEqual(['phrases', ['talk-limit']]);
    expect(talk({ exercise: HOLD })).toEqual([undefined, []]);
  });
});

describe('bands', () => {
  const kit = bands('light', 'medium', 'strong');

  it('climb by reps, then to the next band behind one gate, never in kilograms', () => {
    const one: OneRow = { exercise: BAND, dose: sets(3, 12, 14), client: { kit } };
    expect(weeksOf(one)).toEqual([
      '12 @ light band × 3',
      '12 @ light band × 3',
      '14 @ light band × 3',
      '14 @ light band × 3',
      'gate 12 @ medium band × 3',
      '12 @ medium band × 2',
    ]);
    const [item] = itemsOf(planOf(one));
    expect(item?.sets[0]?.load).toEqual({
      band: 'light',
      step: 1,
      mode: 'band',
      pieces: [{ id: 'band-light', grams: 0 }],
      label: 'light band',
    });
    expect(item?.allowed).toEqual([
      { exercise: 'move', tempo: 'normal', grams: 0, predicted: 0, rung: 2, refusedBy: 'ladder-earned' },
      { exercise: 'move', tempo: 'normal', grams: 0, predicted: 0, rung: 3, refusedBy: 'ladder-one-at-a-time' },
    ]);
  });

  it('that help are taken away: the hardest to stretch first', () => {
    const exercise = { ...BAND, holds: 'assisted' as const };
    const one: OneRow = {
      exercise,
      dose: sets(3, 5),
      client: { kit },
      rules: { 'ladder-earned': 1, 'ladder-weeks': 1 },
    };
    expect(weeksOf(one)).toEqual([
      '5 @ strong band × 3',
      'gate 5 @ medium band × 3',
      ...Array.from({ length: 3 }, () => '5 @ medium band × 3'),
      '5 @ medium band × 2',
    ]);
  });
});

describe('where a ladder begins, and how far it may go', () => {
  const dose = timed(2, 20);
  const exercise = { ...HOLD, pattern: 'squat' as const, kit: anExercise('x').facts.kit };
  const main = (figure: string): Partial<Client> => ({
    mainBells: [{ pattern: 'squat', mass: kg(figure), place: PLACE }],
  });
  const startOf = (one: Partial<OneRow>): readonly unknown[] => {
    const plan = planOf({ exercise, dose, ...one });
    const [ladder] = plan.inputs.ladders;
    const rules = itemsOf(plan)[0]?.reasons.map(({ rule }) => rule);
    return [ladder?.rungs[ladder.start]?.load?.label, rules?.find((rule) => rule.startsWith('ladder-start'))];
  };

  it('a test before the main bell before the lightest', () => {
    const tests = [aTest('move', 5, { load: kg('15') })];
    expect(startOf({ client: { ...main('16'), tests } })).toEqual(['12 kg', 'ladder-start-tested']);
    expect(startOf({ client: main('17') })).toEqual(['16 kg', 'ladder-start-main-bell']);
    expect(startOf({})).toEqual(['8 kg', 'ladder-start-lightest']);
    expect(startOf({ client: main('4') })).toEqual(['8 kg', 'ladder-start-lightest']);
  });

  it('a bell named by its role before all of them; from the lighter one nothing is gone up to', () => {
    const client = { ...main('16'), tests: [aTest('move', 5, { load: kg('8') })] };
    expect(startOf({ client, row: { bell: 'main' } })).toEqual(['16 kg', 'ladder-start-role']);
    expect(startOf({ client, row: { bell: 'next up' } })).toEqual(['20 kg', 'ladder-start-role']);
    expect(startOf({ client, row: { bell: 'lighter' } })).toEqual(['12 kg', 'ladder-start-role']);
    const lighter = planOf({ exercise, dose, client, row: { bell: 'lighter' } });
    expect(new Set(itemsOf(lighter).map((item) => item.sets[0]?.load?.label))).toEqual(new Set(['12 kg']));
  });

  it('after a long break one load below the test, after a longer one as if never tested', () => {
    const tests = [aTest('move', 5, { load: kg('16'), date: on('2026-08-01') })];
    const away = (until: string) =>
      ({ from: on('2026-10-05'), until: on(until), cause: 'away', place: PLACE }) as const;
    expect(startOf({ client: { tests } })).toEqual(['16 kg', 'ladder-start-tested']);
    expect(startOf({ client: { tests, breaks: [away('2026-11-02')] } })).toEqual(['12 kg', 'ladder-start-tested']);
    expect(startOf({ client: { tests, breaks: [away('2026-12-28')] } })).toEqual(['8 kg', 'ladder-start-lightest']);
  });

  it('lists so many stages ahead, harder versions after the last load', () => {
    const stages = (one: Partial<OneRow>): readonly string[] => {
      const { rungs } = planOf({ exercise, dose, ...one }).inputs.ladders[0] ?? fail();
      return rungs.map((rung) => `${rung.exercise} ${rung.load?.label}`);
    };
    expect(STAGES_AHEAD.value).toBe(2);
    expect(stages({})).toEqual(['move 8 kg', 'move 12 kg', 'move 16 kg']);
    const harder = anExercise('harder', { ...exercise, easier: [aLink('move', ['load'], 1200)] });
    const others = [harder];
    const client = { kit: bells('8', '12') };
    const linked = { ...exercise, harder: [aLink('harder', ['load'], 800)] };
    expect(stages({ exercise: linked, others, client })).toEqual(['move 8 kg', 'move 12 kg', 'harder 8 kg']);
    expect(weeksOf({ exercise: linked, others, dose, client: { kit: bells('8') } })[2]).toBe('gate 20s @ 8 kg × 2');
    expect(
      stages({ exercise: linked, others: [anExercise('harder', { ...exercise, way: 'strength' })], client }),
    ).toEqual(['move 8 kg', 'move 12 kg']);
  });

  it('goes to no load that is too far above: half as heavy again, or 4 kg', () => {
    const labels = (figures: readonly string[], rules = {}): readonly unknown[] => {
      const { rungs } =
        planOf({ exercise, dose, client: { kit: bells(...figures) }, rules }).inputs.ladders[0] ?? fail();
      return rungs.map(({ load }) => load?.label);
    };
    expect([LADDER_STEP_GRAMS.value, LADDER_STEP_SHARE.value]).toEqual([4000, 500]);
    expect(labels(['4', '8', '12'])).toEqual(['4 kg', '8 kg', '12 kg']);
    expect(labels(['8', '16'])).toEqual(['8 kg']);
    expect(labels(['16', '24', '40'])).toEqual(['16 kg', '24 kg']);
    expect(labels(['16', '24', '40'], { 'ladder-step-share': 700 })).toEqual(['16 kg', '24 kg', '40 kg']);
    expect(
      weeksOf({
        dose: { kind: 'main-next', main: 10, next: 4 },
        client: { ...swinger('32', '16'), kit: bells('16', '28') },
      })[0],
    ).toBe('10 @ 16 kg × 1');
  });

  it('opens nothing new with a caution on the way or in a moderate plan, and says which', () => {
    const caution = {
      what: 'knee',
      degree: 'take care',
      side: 'both',
      phases: [],
      from: on('2026-12-01'),
      by: 'Coach',
      place: PLACE,
    } as const;
    const careful = { ...exercise, asks: [{ of: 'knee', degree: 'some', side: 'both', phases: [] }] } as const;
    const plan = planOf({ exercise: careful, dose, client: { cautions: [caution] } });
    expect(new Set(itemsOf(plan).map((item) => item.sets[0]?.load?.label))).toEqual(new Set(['8 kg']));
    const refusal = itemsOf(plan)[2]?.reasons.find(({ rule }) => rule === 'ladder-new-stage');
    expect(refusal?.inputs).toContainEqual({ name: 'caution', value: 'knee', unit: '' });
    const clearance = { by: 'Dr Orme', date: on('2026-12-01'), for: 'moderate' } as const;
    const moderate = planOf({ exercise, dose, client: { clearance } });
    expect(itemsOf(moderate).flatMap((item) => item.sets.filter(({ gate }) => gate !== undefined))).toEqual([]);
  });

  it('makes nothing harder in the weeks back after an illness', () => {
    const ill = { from: on('2026-12-14'), until: on('2027-01-03'), cause: 'ill', place: PLACE } as const;
    const plan = planOf({ exercise: HOLD, dose: timed(2, 20, 30), client: { breaks: [ill] } });
    const held = plan.inputs.ladders[0]?.occurrences.filter((occurrence) => occurrence.held !== undefined) ?? [];
    expect(held.length).toBeGreaterThan(0);
    expect(itemsOf(plan)[2]?.sets[0]?.seconds).toBe(20);
    expect(itemsOf(plan).flatMap(({ allowed }) => allowed.map(({ refusedBy }) => refusedBy))).toContain('ladder-held');
  });
});

describe('easier versions beside a ladder', () => {
  const carry = anExercise('carry-both', {
    ...CARRY,
    sides: 'both',
    kit: { load: [{ kind: 'bell', count: 2, unequal: false }], unloaded: false, things: [] },
    easier: [aLink('move', ['load'])],
  });

  it('are no heavier than what is done for sure, in all hands and in any one, nor than was tested', () => {
    const kit = bells('8', '12', '16', '16', '20', '24', '32');
    const one: OneRow = {
      exercise: { ...CARRY, sides: 'both', kit: carry.facts.kit, easier: [aLink('single', ['load'])] },
      others: [anExercise('single', CARRY)],
      dose: metres(1, 20),
      client: { kit },
    };
    const loads = (client: Partial<Client>) =>
      itemsOf(planOf({ ...one, client: { kit, ...client } }))[0]?.easier[0]?.sets.map(({ load }) => load?.label);
    expect(loads({})).toEqual(['16 kg']);
    expect(loads({ tests: [aTest('single', 1, { load: kg('12') })] })).toEqual(['12 kg']);
  });

  it('from a gate on are made from what is done without it', () => {
    const plan = planOf({
      dose: sets(5, 8),
      client: swinger('24', '16'),
      rules: { 'ladder-earned': 1, 'ladder-weeks': 1 },
    });
    const gated = itemsOf(plan)[1];
    expect(gated?.sets[0]?.gate).toBeDefined();
    expect(gated?.easier[0]?.sets.map(setText)).toEqual(Array.from({ length: 5 }, () => '8 @ 16 kg'));
    expect(gated?.easier[0]?.sets.map(({ key }) => key)).toEqual(gated?.sets.map(({ key }) => key));
  });

  it('are counted as they are done: a hold by a few seconds (easier-hold), what does not travel by seconds', () => {
    const easierOf = (one: OneRow) => itemsOf(planOf(one))[0]?.easier.map(({ sets: [set] }) => set && setText(set));
    const still = anExercise('still', HOLD);
    const easier = [aLink('still', ['load'])];
    expect(easierOf({ exercise: { easier }, others: [still], dose: sets(2, 8), client: swinger('16', '16') })).toEqual([
      '10s',
    ]);
    expect(easierOf({ exercise: { ...CARRY, easier }, others: [still], dose: metres(1, 20) })).toEqual(['10s']);
    // 20 m at 1.5 s.
    const onTheSpot = anExercise('still', { ...HOLD, way: 'conditioning' });
    expect(easierOf({ exercise: { ...CARRY, easier }, others: [onTheSpot], dose: metres(1, 20) })).toEqual(['30s']);
  });

  it('are needed: without one the client is withheld', () => {
    const { value, problems } = planOne({ exercise: { ...HOLD, easier: [] }, dose: timed(2, 20) });
    expect(value).toBeNull();
    expect(problems.map(({ code }) => code)).toEqual(['no-easier-version']);
  });
});

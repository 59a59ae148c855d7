/** What holds of every walk, whatever the strand. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { externalLoad, resistedLoad } from '../../src/engine/capacity.js';
import { planStrand } from '../../src/engine/plan-strand.js';
import type { Option, WalkStep } from '../../src/engine/walk-step.js';
import type { StrandInput } from '../../src/model/strand.js';
import { runs } from '../deep.js';
import { oneLoadStrands, strands } from './walk-strands.js';

const RUNS = { numRuns: runs(300, 3000) };
const RISES = ['back-up', 'small-step', 'big-step', 'slower', 'harder-version'];
const FALLS = ['fewer-reps', 'normal-tempo', 'lower-load', 'easier-version'];

function stepsOf(strand: StrandInput): readonly WalkStep[] {
  const result = planStrand(strand);
  return result.kind === 'walked' ? result.steps : [];
}

/** For every step of every walk. */
function always(check: (strand: StrandInput, step: WalkStep, index: number, steps: readonly WalkStep[]) => void): void {
  fc.assert(
    fc.property(strands, (strand) => {
      const steps = stepsOf(strand);
      steps.forEach((step, index) => {
        check(strand, step, index, steps);
      });
    }),
    RUNS,
  );
}

function freeze<Value>(value: Value): Value {
  if (typeof value === 'object' && value !== null) {
    Object.freeze(value);
    for (const part of Object.values(value)) freeze(part);
  }
  return value;
}

describe('every walk', () => {
  it('is the same each time, leaves its input alone, and most strands can be walked', () => {
    let walked = 0;
    fc.assert(
      fc.property(strands, (strand) => {
        const first = planStrand(freeze(strand));
        expect(planStrand(strand)).toEqual(first);
        if (first.kind === 'walked') walked += 1;
      }),
      RUNS,
    );
    expect(walked).toBeGreaterThan(RUNS.numRuns / 2);
  });

  it('leaves the floor in every set, trial and otherwise', () => {
    always(({ occurrences }, { reserve, trial, otherwise }, index) => {
      const floor = occurrences[index]?.floor ?? 0;
      expect(reserve).toBeGreaterThanOrEqual(floor);
      expect(trial?.reserve ?? floor).toBeGreaterThanOrEqual(floor);
      expect(otherwise?.reserve ?? floor).toBeGreaterThanOrEqual(floor);
    });
  });

  it('says nothing is possible only where two reps under the range leave too little', () => {
    fc.assert(
      fc.property(oneLoadStrands, (strand) => {
        const result = planStrand(strand);
        if (result.kind !== 'impossible') return;
        const figure = (wanted: string): number =>
          Number(result.reason.inputs.find(({ name }) => name === wanted)?.value);
        expect(figure('predicted')).toBeLessThan(10 * Math.max(1, strand.bottom - 2) + figure('floor'));
      }),
      RUNS,
    );
  });

  it('goes only to loads of the version, and never above the range or a hold', () => {
    always((strand, { option, reps, trial, otherwise }, index) => {
      const cap = strand.occurrences[index]?.held?.maxReps ?? strand.top;
      for (const place of [option, trial?.option, otherwise?.option]) {
        if (place === undefined) continue;
        expect(strand.versions[place.version]?.loads.map(({ grams }) => grams)).toContain(place.load);
        expect(strand.tempi[place.tempo]).toBeDefined();
      }
      expect(reps).toBeGreaterThanOrEqual(1);
      expect(reps).toBeLessThanOrEqual(Math.min(strand.top, cap));
    });
  });

  it('takes no step and no trial while held', () => {
    always(({ occurrences }, { rule, trial, gate }, index) => {
      if (occurrences[index]?.held === undefined) return;
      expect(RISES).not.toContain(rule);
      expect([trial, gate]).toEqual([undefined, undefined]);
    });
  });

  it('has one gate at most, no trial after it, one trial a week, and otherwise from the gate on', () => {
    always((_strand, step, index, steps) => {
      const gate = steps.findIndex((each) => each.gate !== undefined);
      expect(step.otherwise !== undefined).toBe(gate >= 0 && index >= gate);
      if (step.gate !== undefined) expect(index).toBe(gate);
      if (step.trial === undefined) return;
      expect(gate < 0 || index < gate).toBe(true);
      expect(steps.filter((each) => each.week === step.week && each.trial !== undefined)).toHaveLength(1);
    });
  });

  it('goes on, if a gate did not open, as one who is held goes on', () => {
    let gates = 0;
    fc.assert(
      fc.property(strands, (strand) => {
        const steps = stepsOf(strand);
        const gate = steps.findIndex((each) => each.gate !== undefined);
        if (gate < 0) return;
        gates += 1;
        const occurrences = strand.occurrences.map((occurrence, index) =>
          index < gate ? occurrence : { ...occurrence, held: occurrence.held ?? { maxReps: null, why: 'pain' } },
        );
        const barred = stepsOf({ ...strand, occurrences }).slice(gate);
        expect(barred.map(({ option, reps, reserve, sets }) => ({ option, reps, reserve, sets }))).toEqual(
          steps.slice(gate).map(({ otherwise }) => otherwise),
        );
      }),
      // One strand in twenty or thirty has a gate; of these always the same number.
      { numRuns: runs(600, 3000), seed: 20261129 },
    );
    expect(gates).toBeGreaterThan(20);
  });

  it('knows nothing of what comes later', () => {
    fc.assert(
      fc.property(strands, fc.integer({ min: 1, max: 7 }), (strand, count) => {
        const bare = ({ otherwise, ...step }: WalkStep): unknown => step;
        const short = stepsOf({ ...strand, occurrences: strand.occurrences.slice(0, count) });
        const long = stepsOf(strand);
        if (long.length > 0) expect(short.map(bare)).toEqual(long.slice(0, count).map(bare));
      }),
      RUNS,
    );
  });

  it('counts earned from 0 to 2, at the top of the range only', () => {
    always((strand, { earned, reps, option, easy }, index, steps) => {
      const before = steps[index - 1];
      const start = strand.start?.earned ?? 0;
      const had = before === undefined ? start : before.earned;
      expect([0, 1, 2]).toContain(earned);
      expect(earned - had).toBeLessThanOrEqual(1);
      if (earned > had) expect(reps).toBe(strand.top);
      if (easy) expect(earned).toBe(had);
      else if (before !== undefined && !before.easy && !same(option, before.option)) expect(earned).toBeLessThan(2);
    });
  });

  it('keeps within the volume of before, unless it says that it does not', () => {
    always((strand, { reps, option, relaxed, easy, rule }, index, steps) => {
      const done = steps.slice(0, index).filter((step) => !step.easy);
      if (easy || done.length === 0 || relaxed.includes('walk-volume') || FALLS.includes(rule)) return;
      const volumes = done.map((step) => step.reps * resistedAt(strand, step.option));
      const greatest = Math.max(strand.greatest ?? 0, ...volumes);
      const now = resistedAt(strand, option);
      expect(reps * now).toBeLessThanOrEqual(Math.max(Math.floor((greatest * 1100) / 1000), greatest + now));
    });
  });

  it('does no more in an easy week than in the last work week', () => {
    always((_strand, step, index, steps) => {
      if (!step.easy || FALLS.includes(step.rule)) return;
      const last = steps.slice(0, index).findLast((each) => !each.easy);
      if (last === undefined) return;
      expect(step.option).toEqual(last.option);
      expect(step.reps).toBeLessThanOrEqual(Math.max(1, step.sets < last.sets ? last.reps : last.reps - 1));
    });
  });

  it('names every option it did not take, with the rule that refuses it', () => {
    always((strand, { option, considered, rule, easy, gate, trial }, index) => {
      if (easy || FALLS.includes(rule)) return;
      const open = considered.filter(({ refusedBy }) => refusedBy === undefined);
      if (RISES.includes(rule) || gate !== undefined) expect(open.map((each) => each.option)).toEqual([option]);
      else expect(open.map((each) => each.option)).toEqual(trial === undefined ? [] : [trial.option]);
      const heavier = strand.versions[option.version]?.loads.some((load) => load.grams > option.load);
      if ((rule === 'stay' || rule === 'start') && heavier && index >= 0) expect(considered.length).toBeGreaterThan(0);
    });
  });

  it('is the same in any unit of mass', () => {
    fc.assert(
      fc.property(strands, fc.integer({ min: 2, max: 5 }), (strand, times) => {
        const still = { ...strand, gain: 0 };
        const reps = (input: StrandInput): unknown =>
          stepsOf(input).map((step) => [step.reps, step.rule, step.reserve]);
        expect(reps(scaled(still, times))).toEqual(reps(still));
      }),
      RUNS,
    );
  });
});

describe('with one load and nothing else to climb by', () => {
  it('a greater gain never takes a rep away', () => {
    fc.assert(
      fc.property(oneLoadStrands, fc.integer({ min: 1, max: 100 }), (strand, more) => {
        neverFewer(strand, { ...strand, gain: strand.gain + more });
      }),
      RUNS,
    );
  });

  it('a better test never takes a rep away', () => {
    fc.assert(
      fc.property(oneLoadStrands, fc.integer({ min: 1, max: 30 }), (strand, more) => {
        const { capacity } = strand;
        if (capacity === null) return;
        const better = { ...capacity, reps: capacity.reps + more };
        neverFewer({ ...strand, equation: 'epley' }, { ...strand, equation: 'epley', capacity: better });
      }),
      RUNS,
    );
  });
});

function neverFewer(strand: StrandInput, better: StrandInput): void {
  const now = stepsOf(strand);
  const then = stepsOf(better);
  if (now.length === 0) return;
  expect(then).toHaveLength(now.length);
  now.forEach((step, index) => {
    expect(then[index]?.reps).toBeGreaterThanOrEqual(step.reps);
  });
}

function same(a: Option, b: Option): boolean {
  return a.version === b.version && a.load === b.load && a.tempo === b.tempo;
}

function resistedAt(strand: StrandInput, option: Option): number {
  const version = strand.versions[option.version];
  const load = version?.loads.find(({ grams }) => grams === option.load);
  return version === undefined || load === undefined ? 0 : resistedLoad(version, load, strand.bodyMass);
}

function scaled(strand: StrandInput, times: number): StrandInput {
  const { capacity, start } = strand;
  const versions = strand.versions.map((version) => ({
    ...version,
    loads: version.loads.map((load) => ({ ...load, grams: externalLoad(load) * times })),
  }));
  const bodyMass = strand.bodyMass === null ? null : strand.bodyMass * times;
  return {
    ...strand,
    versions,
    bodyMass,
    capacity: capacity === null ? null : { ...capacity, resisted: scaledResisted(capacity.resisted, times) },
    start: start === null ? null : { ...start, load: start.load * times },
    greatest: strand.greatest === null ? null : strand.greatest * times,
  };
}

/** The constant 1 of an uncounted version is no mass. */
function scaledResisted(resisted: number, times: number): number {
  return resisted === 1 ? 1 : resisted * times;
}

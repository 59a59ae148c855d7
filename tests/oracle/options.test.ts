/** No walk passes over a permitted better choice; and the listing of options sees it when one does. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runs } from '../deep.js';
import { CHECK_VALUES } from './check-values.js';
import { strands } from './generate-strand.js';
import { findPassedOver, type Seen } from './options.js';
import { sayWalk } from './say-walk.js';
import type { StrandJson } from './strand-json.js';
import { walkStrand } from './walk.js';

const SEED = 20_261_125;
const RUNS = runs(1500, 5000);

function seen(strand: StrandJson): Seen[] {
  const walk = walkStrand(strand);
  return walk.kind === 'walked' ? walk.steps.map((step) => ({ ...step, gated: step.gate !== undefined })) : [];
}

describe('every option listed', () => {
  it(`nothing better was passed over in ${RUNS} walks (seed ${SEED})`, () => {
    fc.assert(
      fc.property(strands, (strand) => {
        const steps = seen(strand);
        if (steps.length === 0) return;
        const found = findPassedOver(strand, steps);
        if (found.length > 0) expect.fail(`${sayWalk(strand, steps)}\n${found.join('\n')}\n${JSON.stringify(strand)}`);
      }),
      { numRuns: RUNS, seed: SEED },
    );
  });

  it.each(CHECK_VALUES.map((value) => [value.name, value.strand] as const))('check value: %s', (_name, strand) => {
    expect(findPassedOver(strand, seen(strand))).toEqual([]);
  });

  /** A walk with one step changed must be found out at that step. */
  const planted = (name: string, at: number, change: (step: Seen) => Seen): readonly string[] => {
    const strand = CHECK_VALUES.find((value) => value.name === name)?.strand;
    if (strand === undefined) expect.fail(`no check value ${name}`);
    return findPassedOver(
      strand,
      seen(strand).map((step, index) => (index === at ? change(step) : step)),
    );
  };

  it('sees a rep too few', () => {
    const change = (step: Seen) => ({ ...step, reps: step.reps - 1, reserve: step.reserve + 10 });
    expect(planted('goblet squat through a gate', 0, change)).toContain(
      'occurrence 1, week 1: 8 reps; permitted are 6, 7, 8, 9, so 9',
    );
  });

  it('sees a rise not taken', () => {
    const change = ({ gated: _, ...step }: Seen) => ({
      ...step,
      gated: false,
      option: { ...step.option, load: 16_000 },
      reps: 10,
      reserve: 37,
    });
    const found = planted('goblet squat through a gate', 4, change).join('\n');
    expect(found).toContain('first that applies is big step: gate expected true');
    expect(found).toContain('passed over');
  });

  it('sees a trial left out, and a trial of too few', () => {
    const without = ({ trial: _, ...step }: Seen): Seen => step;
    expect(planted('trial, then the gate', 2, without).join('\n')).toContain('trial expected true');
    const fewer = (step: Seen): Seen =>
      step.trial === undefined ? step : { ...step, trial: { ...step.trial, reps: step.trial.reps - 1 } };
    expect(planted('trial, then the gate', 2, fewer).join('\n')).toContain('trial of 3: 4 leave the floor');
  });

  it('sees a fall further than needed, a wrong reserve, and a load nobody has', () => {
    const lighter = (step: Seen): Seen => ({ ...step, option: { ...step.option, load: 35_000 }, reps: 8, reserve: 70 });
    expect(planted('too heavy at the test: down, and back up', 0, lighter).join('\n')).toContain('rule 7 passed over');
    expect(planted('push-up', 1, (step) => ({ ...step, reserve: 99 })).join('\n')).toContain('is not predicted');
    const unowned = (step: Seen): Seen => ({ ...step, option: { ...step.option, load: 17_000 } });
    expect(planted('goblet squat through a gate', 1, unowned).join('\n')).toContain('cannot be made');
  });
});

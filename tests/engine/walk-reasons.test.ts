import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { planStrand } from '../../src/engine/plan-strand.js';
import { rulesOfTheWalk } from '../../src/engine/rules-of-the-walk.js';
import type { WalkStep } from '../../src/engine/walk-step.js';
import type { Reason } from '../../src/model/reason.js';
import { ADDED_VALUES } from './walk-added-values.js';
import { CHECK_VALUES } from './walk-check-values.js';
import { strandOf, type Written } from './walk-notation.js';

function stepsOf(written: Written): readonly WalkStep[] {
  const result = planStrand(strandOf(written));
  return result.kind === 'walked' ? result.steps : [];
}

/** `rule name=value …`, without where. */
function said(reason: Reason | undefined): string {
  if (reason === undefined) return '';
  const inputs = reason.inputs.filter(({ name }) => name !== 'exercise' && name !== 'tempo');
  return [reason.rule, ...inputs.map(({ name, value }) => `${name}=${value}`)].join(' ');
}

const TRY: Written = {
  ...{ kit: '20-32 by 4', test: '24 x 9, 3 left', range: '5-9', asked: '3 3 2 2 2 e4', gain: 1, sets: '4 4 4 4 4 2' },
};

describe('why, and why not the next one up', () => {
  const steps = stepsOf(TRY);

  it('names the rule that refuses the next bell, with its figures', () => {
    expect(steps[0]?.considered).toEqual([
      { option: { version: 0, load: 28000, tempo: 0 }, predicted: 60, refusedBy: 'walk-earned-twice' },
    ]);
    expect(said(steps[0]?.reasons[0])).toBe('walk-earned-twice load=28000 earned=0 needed=2');
  });

  it('says what a trial lacks of a rise, and lists it as open', () => {
    expect(steps[2]?.considered).toEqual([{ option: { version: 0, load: 28000, tempo: 0 }, predicted: 67 }]);
    expect(steps[2]?.reasons.map(said)).toEqual([
      'walk-trial load=28000 held=24000 predicted=67 bottom=5 floor=20 earned=2',
      'walk-bottom-and-floor load=28000 predicted=67 bottom=5 floor=20',
      'walk-range load=24000 reps=9 predicted=128 reserve=38 asked=20 floor=20 bottom=5 top=9',
    ]);
  });

  it('says what a gate needs: here the trial before it', () => {
    expect(steps[3]?.gate?.needs).toEqual({
      option: { version: 0, load: 28000, tempo: 0 },
      reps: 4,
      reserve: 20,
      weeks: [3],
    });
    const earned = stepsOf({ ...TRY, test: '24 x 9, 4 left', rules: { weakAbove: 200 } }).find((step) => step.gate);
    expect(earned?.gate?.needs).toEqual({
      option: { version: 0, load: 24000, tempo: 0 },
      reps: 9,
      reserve: 30,
      weeks: [1, 2],
    });
  });

  it('is measured at the test, estimated after, weak on a weak test', () => {
    const confidence = (written: Written): readonly (string | undefined)[] =>
      stepsOf(written).map(({ reasons }) => reasons[reasons.length - 1]?.confidence);
    expect(confidence(TRY).slice(0, 2)).toEqual(['measured', 'estimated']);
    expect(confidence({ ...TRY, test: '24 x 9, 3 left weak' })[0]).toBe('weak');
  });

  it('says which limit sets the reps, and what was given up', () => {
    const last = ({ reasons }: WalkStep): string => reasons[reasons.length - 1]?.rule ?? '';
    const volume = stepsOf({ kit: '24', test: '24 x 8, 2 left', range: '4-9', asked: '4 1 1', floor: '1', sets: '3' });
    expect(volume.map(last)).toEqual(['walk-asked', 'walk-volume', 'walk-volume']);
    const short = stepsOf({ kit: '24', test: '24 x 5, 2 left', range: '5-8', asked: '4', sets: '3' });
    expect(short.map(({ relaxed }) => relaxed)).toEqual([['walk-asked']]);
    const fell = stepsOf({ kit: '24', test: '24 x 5, 2 left', range: '6-10', asked: '4', sets: '3' });
    expect(fell.map(({ relaxed, rule }) => [rule, relaxed])).toEqual([
      ['fewer-reps', ['walk-fewer-reps', 'walk-asked']],
    ]);
  });

  it('says of a kit too light how far the client is signed off', () => {
    const strand = strandOf({ kit: '16', test: '16 x 10, 2 left', range: '6-10', asked: '2 2 2', gain: 1, sets: '3' });
    const versions = strand.versions.map((version) => ({ ...version, signedOffTo: 16000 }));
    const finding = (input: typeof strand): string => {
      const result = planStrand(input);
      return result.kind === 'walked' ? said(result.findings[0]?.reason) : '';
    };
    expect(finding(strand)).toBe('kit-too-light load=16000 bell=18000 bottom=6 floor=20');
    expect(finding({ ...strand, versions })).toContain('signed off to=16000');
    // 28 × 440 / 360 = 34.2: a bell of 32 kg is commonly made, and one of 34 kg is not; none is above 48 kg.
    const heavier = (kit: string, range: string) =>
      finding(strandOf({ kit, test: `${kit} x 12, 2 left`, range, asked: '2 2 2', gain: 1, sets: '3' }));
    expect(heavier('28', '4-12')).toContain('bell=32000');
    expect(heavier('44', '4-12')).toContain('bell=48000');
    // Printed in pounds: 40 lb are 18.144 kg; 42 lb would leave the floor too, and are no whole five.
    const inPounds = strand.versions.map((version) => ({
      ...version,
      loads: version.loads.map((load) => ({ ...load, label: '35 lb' })),
    }));
    expect(finding({ ...strand, bottom: 5, versions: inPounds })).toContain('bell=18144');
  });

  it('gives every reason the id and the source of a rule in the list', () => {
    const rows = new Map<string, string>(rulesOfTheWalk.map(({ row }) => [row.id, row.source]));
    for (const written of [...CHECK_VALUES, ...ADDED_VALUES]) {
      const result = planStrand(strandOf(written));
      if (result.kind !== 'walked') continue;
      const reasons = [...result.steps.flatMap((step) => step.reasons), ...result.findings.map((each) => each.reason)];
      for (const { rule, source } of reasons) expect(rows.get(rule)).toBe(source);
      for (const { refusedBy } of result.steps.flatMap((step) => step.considered)) {
        if (refusedBy !== undefined) expect(rows.has(refusedBy)).toBe(true);
      }
    }
  });
});

describe('the engine’s own page', () => {
  const page = readFileSync(new URL('../../src/engine/ENGINE.md', import.meta.url), 'utf8');

  it.each(rulesOfTheWalk.map(({ row }) => row.id))('names %s', (id) => {
    expect(page).toContain(`\`${id}\``);
    expect(readFileSync(new URL(`../../src/engine/rules/${id}.ts`, import.meta.url), 'utf8')).toContain(`'${id}'`);
  });

  it('names no rule that is not there', () => {
    const ids = new Set<string>(rulesOfTheWalk.map(({ row }) => row.id));
    for (const [, id = ''] of page.matchAll(/`(walk-[a-z-]+)`/g)) expect(ids).toContain(id);
  });
});

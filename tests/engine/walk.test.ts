import { describe, expect, it } from 'vitest';
import { planStrand } from '../../src/engine/plan-strand.js';
import { rulesOfTheWalk } from '../../src/engine/rules-of-the-walk.js';
import { ADDED_VALUES } from './walk-added-values.js';
import { CHECK_VALUES } from './walk-check-values.js';
import { findingsText, otherwiseText, strandOf, walkOf, walkText } from './walk-notation.js';

describe('the walk', () => {
  it.each(CHECK_VALUES)('$kit; $test; $range; $asked', ({ walk, ...written }) => {
    expect(walkOf(written)).toBe(walk);
  });

  it.each(ADDED_VALUES)('$why', ({ walk, otherwise, findings, ...written }) => {
    const result = planStrand(strandOf(written));
    expect(walkText(result)).toBe(walk);
    expect(otherwiseText(result)).toBe(otherwise ?? '');
    expect(findingsText(result)).toBe(findings ?? '');
  });
});

describe('no rule of the walk is idle', () => {
  const strands = [...CHECK_VALUES, ...ADDED_VALUES].map(strandOf);
  const told = (rules = rulesOfTheWalk): readonly string[] =>
    strands.map((strand) => {
      const result = planStrand(strand, rules);
      return `${walkText(result)} / ${otherwiseText(result)} / ${findingsText(result)}`;
    });
  const whole = told();

  it.each(rulesOfTheWalk.map((rule) => rule.row.id))('without %s some row comes out otherwise', (id) => {
    expect(told(rulesOfTheWalk.filter((rule) => rule.row.id !== id))).not.toEqual(whole);
  });

  it('has every id once', () => {
    const ids = rulesOfTheWalk.map((rule) => rule.row.id);
    expect(new Set(ids).size).toBe(ids.length);
  });
});

describe('where the walk has nothing to stand on', () => {
  const strand = strandOf({ kit: '16, 20', test: '16 x 8, 2 left', range: '6-10', asked: '3 3', sets: '3' });

  it('asks for a feeler set without a capacity or a start', () => {
    expect(planStrand({ ...strand, capacity: null })).toEqual({ kind: 'feeler' });
    expect(planStrand({ ...strand, start: null })).toEqual({ kind: 'feeler' });
  });

  it('asks for one where every load of the kit is heavier than the tested one', () => {
    const start = { version: 0, load: 12000, tempo: 0, earned: 0 as const };
    expect(planStrand({ ...strand, start })).toEqual({ kind: 'feeler' });
  });

  it('starts at the heaviest load below one that cannot be made', () => {
    const start = { version: 0, load: 19000, tempo: 0, earned: 0 as const };
    expect(walkText(planStrand({ ...strand, start }))).toBe('7@16 · 7@16');
  });
});

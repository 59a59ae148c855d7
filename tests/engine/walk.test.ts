import { describe, expect, it } from 'vitest';
import { CHECK_VALUES } from './walk-check-values.js';
import { walkOf } from './walk-notation.js';

describe('the walk', () => {
  it.each(CHECK_VALUES)('$kit; $test; $range; $asked', ({ walk, ...written }) => {
    expect(walkOf(written)).toBe(walk);
  });
});

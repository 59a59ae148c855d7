/** The oracle against the check values: it must be right before it may judge the engine. */
import { describe, expect, it } from 'vitest';
import { CHECK_VALUES } from './check-values.js';
import { sayWalk } from './say-walk.js';
import { walkStrand } from './walk.js';

describe('the oracle walks the check values', () => {
  it.each(CHECK_VALUES.map((value) => [value.name, value] as const))('%s', (_name, { strand, walk }) => {
    const walked = walkStrand(strand);
    if (walked.kind !== 'walked') expect.fail(`nothing can be done in week ${walked.week}`);
    expect(sayWalk(strand, walked.steps)).toBe(walk);
  });
});

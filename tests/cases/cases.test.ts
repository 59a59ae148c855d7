/** Every case planned, and every line of it judged. */
import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { whyNot } from './judge-claim.js';
import { planCase } from './plan-of-case.js';
import { readCaseFile } from './read-case.js';
import { readLibrary } from './read-library.js';

const exercises = readLibrary();
const names = readdirSync(import.meta.dirname)
  .flatMap((file) => (file.endsWith('.case.txt') ? [file.replace('.case.txt', '')] : []))
  .sort();

describe('a careful coach', () => {
  it('has met at least eighty clients', () => {
    expect(names.length).toBeGreaterThanOrEqual(80);
  });

  it.each(names)('%s', (name) => {
    const one = readCaseFile(name, exercises);
    const planned = planCase(one);
    const wrong = one.claims.flatMap((claim) => {
      const why = whyNot(claim, planned);
      return why === undefined ? [] : [`${name}.case.txt:${claim.line} ${why}`];
    });
    expect(wrong.join('\n')).toBe('');
  });
});

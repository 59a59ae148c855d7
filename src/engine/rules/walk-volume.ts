/** reps × R of a set, against the greatest so far. */
import { resistedAt } from '../walk/situation.js';
import type { Limit } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const volumeLimit: Limit = {
  kind: 'limit',
  row: practiceRow('walk-volume', 0, 'per-mille'),
  weeks: 'work',
  most: (at, place) => {
    const { habits, values } = at.ground;
    if (at.greatest === null && habits.volumeFirstExempt) return Number.MAX_SAFE_INTEGER;
    const greatest = at.greatest ?? 0;
    const resisted = resistedAt(at.ground, place);
    const oneMore = habits.volumeOneRep ? greatest + resisted : 0;
    return Math.floor(Math.max(Math.floor((greatest * values.volume) / 1000), oneMore) / resisted);
  },
};

/** One trial set of a strand a week. */
import type { Guard } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const trialOnceAWeekGuard: Guard = {
  kind: 'guard',
  row: practiceRow('walk-trial-once-a-week', 1, 'weeks'),
  permits: (at) => at.tried === null || at.tried.week !== at.occurrence.week,
  numbers: (at) => [{ name: 'week', value: at.occurrence.week, unit: 'weeks' }],
};

/** While a trial of the next load is open nothing else is made harder: a set already tried this week waits for the next. */
import type { Guard } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const trialWaitsGuard: Guard = {
  kind: 'guard',
  row: practiceRow('walk-trial-waits', 0, ''),
  permits: (at) => !(at.gate === 'open' && at.tried?.week === at.occurrence.week),
  numbers: (at) => [{ name: 'week', value: at.occurrence.week, unit: 'weeks' }],
};

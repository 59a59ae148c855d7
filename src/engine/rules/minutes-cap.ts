/** A session is no longer than the minutes the client has; a minute begun, of so many seconds, counts whole. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const MINUTES_CAP: Rule = {
  id: ruleId('minutes-cap'),
  value: 60,
  unit: 's',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-24',
};

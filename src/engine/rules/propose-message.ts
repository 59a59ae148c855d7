/** So many days without a mark although a session was planned, pain that is left out for, or a sign of alarm: write to the client, or ring. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PROPOSE_MESSAGE: Rule = {
  id: ruleId('propose-message'),
  value: 7,
  unit: 'days',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};

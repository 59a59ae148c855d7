/** So many days before a clearance ends the client is told, in the booklet itself. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const CLEARANCE_WARNED: Rule = {
  id: ruleId('clearance-warned'),
  value: 14,
  unit: 'days',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};

/** A clearance that is needed holds no longer than this after it was given. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const CLEARANCE_HOLDS: Rule = {
  id: ruleId('clearance-holds'),
  value: 365,
  unit: 'days',
  source: 'Riebe et al. 2015, Med Sci Sports Exerc 47:2473-2479',
  locator: 'regular exerciser with known disease: clearance within the last 12 months',
  standing: 'published',
  date: '2026-11-25',
};

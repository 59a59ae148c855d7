/** Placenta praevia: no plan that reaches this week of pregnancy; ask first before it. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PLACENTA_FROM: Rule = {
  id: ruleId('placenta-from'),
  value: 26,
  unit: 'weeks',
  source: 'ACOG Committee Opinion 804, 2020',
  locator: 'after 26 weeks; Mottola et al. 2019, table 2, has after 28: the more careful decides',
  standing: 'published',
  date: '2026-11-25',
};

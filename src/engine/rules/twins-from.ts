/** Twins: ask first where the block reaches this week of pregnancy. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const TWINS_FROM: Rule = {
  id: ruleId('twins-from'),
  value: 28,
  unit: 'weeks',
  source: 'Mottola et al. 2019, Br J Sports Med 52:1339-1346',
  locator: 'table 2, relative: twin pregnancy after the 28th week',
  standing: 'published',
  date: '2026-11-25',
};

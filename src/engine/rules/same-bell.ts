/** A bell in pounds is the one signed off in kilograms, or the other way round, where they differ by no more than this. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SAME_BELL: Rule = {
  id: ruleId('same-bell'),
  value: 10,
  unit: 'per-mille',
  source: 'Rules of bell sport',
  locator: 'a bell weighs within one per cent of its mark; known second-hand',
  standing: 'adapted',
  date: '2026-11-25',
};

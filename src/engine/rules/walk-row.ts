/** How a row of the rulebook is written down; the rules of the walk all use it. */
import { ruleId } from '../../model/identity.js';
import type { Rule, Standing } from '../../model/reason.js';

const LOOKED_AT = '2026-11-24';

/** A rule that is a habit of the trade, without a published source. */
export function practiceRow(id: string, value: number, unit: string): Rule {
  return sourcedRow(id, value, unit, 'practice', 'common practice, no source', '');
}

export function sourcedRow(
  id: string,
  value: number,
  unit: string,
  standing: Standing,
  source: string,
  locator: string,
): Rule {
  return { id: ruleId(id), value, unit, source, locator, standing, date: LOOKED_AT };
}

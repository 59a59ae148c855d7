/** Length of a controlled rep where the tempo says nothing. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SECONDS_A_REP: Rule = {
  id: ruleId('seconds-a-rep'),
  value: 3,
  unit: 's',
  source: 'ACSM resistance training position stand, 2009, Med Sci Sports Exerc 41(3):687-708',
  locator: '1 to 2 s lifting and 1 to 2 s lowering',
  standing: 'adapted',
  date: '2026-11-24',
};

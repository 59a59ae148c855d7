/** Sets × reps × part of a maximum, of one exercise in one session, at most this in the first two weeks back. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const RETURN_VOLUME: Rule = {
  id: ruleId('return-volume'),
  value: 30,
  unit: 'reps',
  source: 'Caterisano et al. 2019 (CSCCa and NSCA), Strength Cond J 41(3):1-23',
  locator: 'frequency, intensity, time: relative volume of 11 to 30',
  standing: 'adapted',
  date: '2026-11-25',
};

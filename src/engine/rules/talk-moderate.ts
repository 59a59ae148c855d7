/** In a moderate plan breath always suffices for whole sentences. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const TALK_MODERATE: Rule = {
  id: ruleId('talk-moderate'),
  value: 1,
  unit: 'sentences',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};

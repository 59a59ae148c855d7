/** With a medicine that slows the heart, effort goes by breath and words, never beyond phrases; no pulse is ever asked for. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const SLOWS_THE_HEART: Rule = {
  id: ruleId('slows-the-heart'),
  value: 1,
  unit: 'phrases',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};

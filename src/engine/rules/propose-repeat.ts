/** After a block of which few sessions were done, the same one is proposed once more, from where the marks left it. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const PROPOSE_REPEAT: Rule = {
  id: ruleId('propose-repeat'),
  value: 1,
  unit: 'blocks',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-28',
};

/** After a vertebral fracture: take care with getting down to the floor and up again. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const FRACTURE_FLOOR: Rule = {
  id: ruleId('fracture-floor'),
  value: 1,
  unit: 'cautions',
  source: 'common practice, no source',
  locator: '',
  standing: 'practice',
  date: '2026-11-25',
};

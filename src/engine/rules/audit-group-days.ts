/** A week that trains a major muscle group on fewer days than this is told. */
import { ruleId } from '../../model/identity.js';
import type { Rule } from '../../model/reason.js';

export const AUDIT_GROUP_DAYS: Rule = {
  id: ruleId('audit-group-days'),
  value: 2,
  unit: 'days',
  source: 'WHO guidelines on physical activity and sedentary behaviour, 2020',
  locator:
    'adults: muscle strengthening of all major groups on 2 days a week or more; the ACSM stand of 2026, known here second-hand only, says the same',
  standing: 'published',
  date: '2026-11-25',
};

/** Facts of health as the plan lists them for the coach: each with its value, or that nobody asked. */
import type { Health } from '../../model/client.js';
import { isoOfDay } from '../../model/day.js';

interface HealthFact {
  readonly fact: string;
  readonly value: string;
}

export function listHealth(health: Health): readonly HealthFact[] {
  const { medicines, conditions, bloodPressure, pregnancy, birth, falls } = health;
  const one = (fact: string, value: string): readonly HealthFact[] => [{ fact, value }];
  return [
    ...one('medicines', listed(medicines)),
    ...one('conditions', listed(conditions)),
    ...(bloodPressure === undefined
      ? []
      : one(
          'blood pressure',
          [
            `${bloodPressure.systolic}/${bloodPressure.diastolic}`,
            isoOfDay(bloodPressure.date),
            bloodPressure.cuff ? 'cuff at home' : 'no cuff',
          ].join('; '),
        )),
    ...(pregnancy === undefined
      ? []
      : one('pregnancy', [`due ${isoOfDay(pregnancy.due)}`, ...pregnancy.conditions].join('; '))),
    ...(birth === undefined
      ? []
      : one(
          'birth',
          [
            isoOfDay(birth.date),
            birth.by,
            birth.checked === undefined ? 'not checked' : `checked ${isoOfDay(birth.checked)}`,
          ].join('; '),
        )),
    ...one('falls', falls === undefined ? NOT_ASKED : String(falls)),
  ];
}

const NOT_ASKED = 'not asked';

function listed(entries: readonly string[] | undefined): string {
  if (entries === undefined) return NOT_ASKED;
  return entries.length === 0 ? 'none' : entries.join('; ');
}

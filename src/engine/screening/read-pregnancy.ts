/** How far a pregnancy is, and which of its conditions speak against exercise in this block. */
import { PREGNANCY_ABSOLUTE, type Pregnancy, type PregnancyCondition } from '../../model/client.js';
import { addDays, type Day } from '../../model/day.js';
import { PLACENTA_FROM } from '../rules/placenta-from.js';
import { PREGNANCY_ASKS_DIASTOLIC } from '../rules/pregnancy-asks-diastolic.js';
import { PREGNANCY_ASKS_KNOWN } from '../rules/pregnancy-asks-known.js';
import { PREGNANCY_ASKS_SYSTOLIC } from '../rules/pregnancy-asks-systolic.js';
import { PREGNANCY_LENGTH } from '../rules/pregnancy-length.js';
import { TWINS_FROM } from '../rules/twins-from.js';
import { diseaseOnFile, knownPressure } from './on-file.js';
import type { Screened } from './screened.js';

/** The first day of the pregnancy, as weeks are counted. */
export const pregnancyBegan = ({ due }: Pregnancy, { rules }: Screened): Day =>
  addDays(due, -rules.valueOf(PREGNANCY_LENGTH));

/** Whole weeks of pregnancy on the last day of the block; what is reached counts for all of it. */
export const weekReached = (pregnancy: Pregnancy, screened: Screened): number =>
  Math.floor((screened.lastDay - pregnancyBegan(pregnancy, screened)) / 7);

/** Conditions with which nothing is planned (Mottola et al. 2019, table 2, absolute), in the order on file. */
export function refusedOfPregnancy(screened: Screened): readonly PregnancyCondition[] {
  const { pregnancy } = screened.client.health;
  if (pregnancy === undefined) return [];
  return pregnancy.conditions.filter((condition) => isAbsolute(condition) && !isEarlyPlacenta(condition, screened));
}

/** With what a licensed person is asked first (the same table, relative): conditions in the order on file, then others. */
export function asksOfPregnancy(screened: Screened): readonly string[] {
  const { pregnancy } = screened.client.health;
  if (pregnancy === undefined) return [];
  return [...askedByConditions(pregnancy, screened), ...askedByOthers(pregnancy, screened)];
}

/**
 * Other facts on file that are relative contraindications in a pregnancy, whatever it names: pressure that matters or
 * was 140/90 or more, and diabetes.
 */
function askedByOthers({ conditions }: Pregnancy, screened: Screened): readonly string[] {
  const { health } = screened.client;
  const known = screened.rules.valueOf(PREGNANCY_ASKS_KNOWN) > 0;
  const pressure = known && knownPressure(health);
  const high = (pressure || isHighInPregnancy(screened)) && !conditions.includes('gestational hypertension');
  return [...(high ? ['high blood pressure'] : []), ...(known && diseaseOnFile(health) ? ['diabetes'] : [])];
}

/** A reading at or above the figures of gestational hypertension. */
export function isHighInPregnancy({ client, rules }: Screened): boolean {
  const { bloodPressure: reading } = client.health;
  if (reading === undefined) return false;
  const over = reading.systolic >= rules.valueOf(PREGNANCY_ASKS_SYSTOLIC);
  return over || reading.diastolic >= rules.valueOf(PREGNANCY_ASKS_DIASTOLIC);
}

function askedByConditions(pregnancy: Pregnancy, screened: Screened): readonly PregnancyCondition[] {
  return pregnancy.conditions.filter((condition) => {
    if (isAbsolute(condition)) return isEarlyPlacenta(condition, screened);
    return condition !== 'twins' || weekReached(pregnancy, screened) >= screened.rules.valueOf(TWINS_FROM);
  });
}

const isAbsolute = (condition: PregnancyCondition): boolean => PREGNANCY_ABSOLUTE.some((one) => one === condition);

/** Placenta praevia in a block that does not reach `placenta-from`. */
function isEarlyPlacenta(condition: PregnancyCondition, screened: Screened): boolean {
  const { pregnancy } = screened.client.health;
  if (condition !== 'placenta praevia' || pregnancy === undefined) return false;
  return weekReached(pregnancy, screened) < screened.rules.valueOf(PLACENTA_FROM);
}

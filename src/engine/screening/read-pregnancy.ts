/** How far a pregnancy is, and which of its conditions speak against exercise in this block. */
import { PREGNANCY_ABSOLUTE, type Pregnancy, type PregnancyCondition } from '../../model/client.js';
import { addDays, type Day } from '../../model/day.js';
import { PLACENTA_FROM } from '../rules/placenta-from.js';
import { PREGNANCY_LENGTH } from '../rules/pregnancy-length.js';
import { TWINS_FROM } from '../rules/twins-from.js';
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

/** Conditions with which a licensed person is asked first (the same table, relative), in the order on file. */
export function asksOfPregnancy(screened: Screened): readonly PregnancyCondition[] {
  const { pregnancy } = screened.client.health;
  if (pregnancy === undefined) return [];
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

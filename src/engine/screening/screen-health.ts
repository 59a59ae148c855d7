/** Facts of health that withhold a plan: blood pressure, pregnancy, and the months after a birth. */
import { isoOfDay } from '../../model/day.js';
import { ofClient, type Problem } from '../../model/problem.js';
import { PREGNANCY_LAST } from '../rules/pregnancy-last.js';
import { PREGNANCY_LENGTH } from '../rules/pregnancy-length.js';
import { PRESSURE_ASK_DIASTOLIC } from '../rules/pressure-ask-diastolic.js';
import { PRESSURE_ASK_SYSTOLIC } from '../rules/pressure-ask-systolic.js';
import { PRESSURE_STOP_DIASTOLIC } from '../rules/pressure-stop-diastolic.js';
import { PRESSURE_STOP_SYSTOLIC } from '../rules/pressure-stop-systolic.js';
import { isUnchecked } from './read-birth.js';
import { isCleared } from './read-clearance.js';
import { asksOfPregnancy, isHighInPregnancy, pregnancyBegan, refusedOfPregnancy } from './read-pregnancy.js';
import { readPressure } from './read-pressure.js';
import type { Screened } from './screened.js';

export const screenHealth = (screened: Screened): readonly Problem[] => [
  ...screenPressure(screened),
  ...screenPregnancy(screened),
  ...screenBirth(screened),
];

/**
 * Above the higher pair of limits nothing is planned, above the lower one only with a clearance as young as the
 * reading. Reports `pressure-too-high` and `pressure-ask-first`.
 */
function screenPressure(screened: Screened): readonly Problem[] {
  const { client, rules } = screened;
  const reading = client.health.bloodPressure;
  const { stops, asks } = readPressure(screened);
  if (reading === undefined || !asks) return [];
  const { systolic, diastolic, date, place } = reading;
  const head = { severity: 'error', scope: ofClient(client.id), place, unsafe: true } as const;
  const limits = stops
    ? { over: rules.valueOf(PRESSURE_STOP_SYSTOLIC), under: rules.valueOf(PRESSURE_STOP_DIASTOLIC) }
    : { over: rules.valueOf(PRESSURE_ASK_SYSTOLIC), under: rules.valueOf(PRESSURE_ASK_DIASTOLIC) };
  const data = { systolic, diastolic, ...limits, date: isoOfDay(date) };
  if (stops) return [{ ...head, code: 'pressure-too-high', data }];
  return isCleared(screened, date) ? [] : [{ ...head, code: 'pressure-ask-first', data }];
}

/**
 * The absolute contraindications of Mottola et al. 2019 (table 2) withhold; the relative ones withhold without a
 * clearance given since the pregnancy began. Reports `pregnancy-refused`, `pregnancy-ask-first`, `due-date-passed`
 * and `due-date-unlikely`: a date that cannot be right would make every week that is counted from it wrong.
 */
function screenPregnancy(screened: Screened): readonly Problem[] {
  const { client, rules, today, firstDay } = screened;
  const { pregnancy } = client.health;
  if (pregnancy === undefined) return [];
  const { due, place } = pregnancy;
  const head = { severity: 'error', scope: ofClient(client.id), place, unsafe: true } as const;
  const problems: Problem[] = [];
  const refused = refusedOfPregnancy(screened);
  if (refused.length > 0) problems.push({ ...head, code: 'pregnancy-refused', data: { conditions: refused } });
  const asks = asksOfPregnancy(screened);
  const began = pregnancyBegan(pregnancy, screened);
  // A high reading taken since then asks anew.
  const read = isHighInPregnancy(screened) ? (client.health.bloodPressure?.date ?? began) : began;
  const [since = began] = [began, read].sort((a, b) => b - a);
  if (asks.length > 0 && !isCleared(screened, since)) {
    problems.push({ ...head, code: 'pregnancy-ask-first', data: { conditions: asks, began: isoOfDay(since) } });
  }
  if (due - rules.valueOf(PREGNANCY_LAST) < firstDay) {
    const data = { due: isoOfDay(due), begins: isoOfDay(firstDay) };
    problems.push({ ...head, code: 'due-date-passed', data });
  }
  if (began > today) {
    const data = { due: isoOfDay(due), today: isoOfDay(today), mostDays: rules.valueOf(PREGNANCY_LENGTH) };
    problems.push({ ...head, code: 'due-date-unlikely', data });
  }
  return problems;
}

/** Nothing is planned before a licensed person has looked. Reports `birth-not-checked`. */
function screenBirth(screened: Screened): readonly Problem[] {
  const { client } = screened;
  const { birth } = client.health;
  if (birth === undefined || !isUnchecked(birth, screened)) return [];
  const head = { severity: 'error', scope: ofClient(client.id), place: birth.place, unsafe: true } as const;
  return [{ ...head, code: 'birth-not-checked', data: { date: isoOfDay(birth.date) } }];
}

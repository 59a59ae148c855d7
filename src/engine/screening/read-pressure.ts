/** What a client's blood pressure comes to. A figure at a limit is not above it. */
import { PRESSURE_ASK_DIASTOLIC } from '../rules/pressure-ask-diastolic.js';
import { PRESSURE_ASK_SYSTOLIC } from '../rules/pressure-ask-systolic.js';
import { PRESSURE_HOLDS } from '../rules/pressure-holds.js';
import { PRESSURE_STOP_DIASTOLIC } from '../rules/pressure-stop-diastolic.js';
import { PRESSURE_STOP_SYSTOLIC } from '../rules/pressure-stop-systolic.js';
import { knownPressure } from './on-file.js';
import type { Screened } from './screened.js';

export interface PressureRead {
  /** Above `pressure-stop-systolic` or `pressure-stop-diastolic`. */
  readonly stops: boolean;
  /** Above `pressure-ask-systolic` or `pressure-ask-diastolic`. */
  readonly asks: boolean;
  /** There is a reading, older on the first day than `pressure-holds`. */
  readonly old: boolean;
  /** By a condition, a medicine or the reading itself. */
  readonly matters: boolean;
  /** It matters, and there is no reading young enough. */
  readonly unmeasured: boolean;
}

/** However old it is, a high reading counts until a newer one stands in its place. */
export function readPressure({ client, rules, firstDay }: Screened): PressureRead {
  const { bloodPressure: reading } = client.health;
  const known = knownPressure(client.health);
  if (reading === undefined) {
    return { stops: false, asks: false, old: false, matters: known, unmeasured: known };
  }
  const { systolic, diastolic } = reading;
  const stops = systolic > rules.valueOf(PRESSURE_STOP_SYSTOLIC) || diastolic > rules.valueOf(PRESSURE_STOP_DIASTOLIC);
  const asks = systolic > rules.valueOf(PRESSURE_ASK_SYSTOLIC) || diastolic > rules.valueOf(PRESSURE_ASK_DIASTOLIC);
  const old = firstDay - reading.date > rules.valueOf(PRESSURE_HOLDS);
  const matters = known || stops || asks;
  return { stops, asks: asks || stops, old, matters, unmeasured: matters && old };
}

/** What hurts: the emergency list first, then where, then how much, then what follows from it. */

import type { ClientPlan } from '../../model/client-plan.js';
import { BODY_PARTS } from '../../model/exercise.js';
import { type RowId, rowId, type Side } from '../../model/identity.js';
import { ALARM_SIGNS, type PainReport } from '../../model/log.js';
import type { PainScreen, SessionPlace } from '../../model/training.js';
import type { PainSoFar } from './training-state.js';

export type Advice = 'gently' | 'easier' | 'leave';

export function adviceFor({ pain }: ClientPlan, degree: number): Advice {
  if (degree >= pain.leave) return 'leave';
  return degree >= pain.easier ? 'easier' : 'gently';
}

export const NOTHING_SAID: PainSoFar = { row: null, sign: null, none: false, where: null, side: null, degree: null };

export const rowOf = ({ row }: PainSoFar): RowId | null => (row === null ? null : rowId(row));
export const whereOf = ({ where }: PainSoFar): PainReport['where'] =>
  BODY_PARTS.find((part) => part === where) ?? 'elsewhere';
export const sideIn = ({ side }: PainSoFar): Side | undefined =>
  side === 'left' || side === 'right' ? side : undefined;

export function painScreen(
  plan: ClientPlan,
  place: SessionPlace | null,
  pain: PainSoFar,
  easierOpen: boolean,
): PainScreen {
  const row = rowOf(pain);
  const side = sideIn(pain);
  const sign = ALARM_SIGNS.find((one) => one === pain.sign);
  const at = (step: PainScreen['step']): PainScreen => ({ kind: 'pain', place, row, step });
  if (sign !== undefined) return at({ at: 'emergency', sign });
  if (!pain.none) return at({ at: 'signs' });
  if (pain.where === null) return at({ at: 'where' });
  const where = whereOf(pain);
  if (pain.degree === null) return at({ at: 'degree', where, ...(side === undefined ? {} : { side }) });
  const { degree } = pain;
  return at({ at: 'advice', where, degree, advice: adviceFor(plan, degree), easier: easierOpen });
}

/** What hurts: the emergency list first, then where and on which side, then how much, then what follows from it. */

import type { ClientPlan } from '../../model/client-plan.js';
import { BODY_PARTS, isInPairs } from '../../model/exercise.js';
import { type RowId, rowId, type Side } from '../../model/identity.js';
import { ALARM_SIGNS, type PainReport } from '../../model/log.js';
import type { PainScreen, SessionPlace } from '../../model/training.js';
import type { PainSoFar } from './training-state.js';

export type Advice = 'gently' | 'easier' | 'leave';

/** Banded as the planner bands what comes back to it: beyond what is gentle nothing goes on as it was. */
export function adviceFor({ pain }: Pick<ClientPlan, 'pain'>, degree: number): Advice {
  if (degree >= pain.leave) return 'leave';
  return degree > pain.gentle || degree >= pain.easier ? 'easier' : 'gently';
}

export const NOTHING_SAID: PainSoFar = {
  when: 'before',
  row: null,
  sign: null,
  none: false,
  where: null,
  side: null,
  degree: null,
};

export const rowOf = ({ row }: PainSoFar): RowId | null => (row === null ? null : rowId(row));
/** What no version of this program knows is elsewhere. */
export const whereOf = ({ where }: Pick<PainSoFar, 'where'>): PainReport['where'] =>
  BODY_PARTS.find((part) => part === where) ?? 'elsewhere';
export const sideIn = ({ side }: { readonly side?: string | null }): Side | undefined =>
  side === 'left' || side === 'right' ? side : undefined;

/** Where it is said, and of what. */
export interface PainSaid {
  readonly place: SessionPlace | null;
  readonly exercise: string | null;
  /** Is an easier way open for it that is not taken yet; said of no exercise, for all of the session? */
  readonly easierOpen: boolean;
  /** Is there something that can be stopped? */
  readonly stops: boolean;
}

export function painScreen(
  plan: ClientPlan,
  pain: PainSoFar,
  { place, exercise, easierOpen, stops }: PainSaid,
): PainScreen {
  const row = rowOf(pain);
  const side = sideIn(pain);
  const sign = ALARM_SIGNS.find((one) => one === pain.sign);
  const at = (step: PainScreen['step']): PainScreen => ({ kind: 'pain', place, row, exercise, step });
  if (sign !== undefined) return at({ at: 'emergency', sign });
  if (!pain.none) return at({ at: 'signs' });
  if (pain.where === null) return at({ at: 'where' });
  const where = whereOf(pain);
  const on = side === undefined ? { where } : { where, side };
  const { degree } = pain;
  if (degree === null) return at(isSideOpen(pain) ? { at: 'side', where } : { at: 'degree', ...on });
  const over = pain.when === 'after';
  return at({ at: 'advice', ...on, degree, advice: adviceFor(plan, degree), easier: easierOpen, over, stops });
}

/** It is asked, and was not answered: with *both* it is. */
export const isSideOpen = ({ where, side }: PainSoFar): boolean => where !== null && isInPairs(where) && side === null;

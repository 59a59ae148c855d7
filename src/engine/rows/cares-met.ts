/** Which cautions to take care a row meets: by the version it starts in, and by those its plan goes through. */
import type { ExerciseId } from '../../model/identity.js';
import type { Judged } from '../versions/judge-version.js';
import type { FittedRow } from './fit-rows.js';

/**
 * The start version where it asks some of what wants care, whatever is planned later. A harder version that does is
 * no part of the row's chain; an easier one counts only once the plan falls to it.
 */
export const caresAtStart = ({ chain }: FittedRow): readonly Judged[] =>
  withCare(chain.judged.slice(chain.base, chain.base + 1));

/** The versions of the row that meet a caution among those planned, the start's included. */
export function caresPlanned({ chain }: FittedRow, planned: ReadonlySet<ExerciseId>): readonly Judged[] {
  return withCare(chain.judged.filter(({ exercise }, index) => index === chain.base || planned.has(exercise.id)));
}

const withCare = (versions: readonly Judged[]): readonly Judged[] => versions.filter(({ care }) => care.length > 0);

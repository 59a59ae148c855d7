/** Puts the sessions done back where they stood: as they were in the edition they were done in, letter for letter. */

import { isoOfDay } from '../../../model/day.js';
import type { PlanSession, Week } from '../../../model/plan.js';
import type { DoneInput } from '../../../model/plan-inputs.js';
import type { Begun } from './begun-block.js';

/** `weeks` hold what is still to come. */
export function layDone(weeks: readonly Week[], begun: Begun | null): readonly Week[] {
  if (begun === null) return weeks;
  const frozen = doneIn(begun);
  return weeks.map((week): Week => {
    const own = frozen.filter((one) => one.week === week.number).map(({ session }) => session);
    if (own.length === 0) return week;
    return { ...week, sessions: [...own, ...week.sessions].sort((a, b) => a.occurrence - b.occurrence) };
  });
}

/** In order of occurrence. */
function doneIn({ done, planned }: Begun): readonly { readonly week: number; readonly session: PlanSession }[] {
  const places = new Set(done.map(({ occurrence }) => occurrence));
  return planned.queue.filter(({ session }) => places.has(session.occurrence));
}

/** As the plan lists them. */
export const doneInputs = ({ done }: Begun): readonly DoneInput[] =>
  done.map(({ occurrence, day, edition }) => ({ occurrence, day: isoOfDay(day), edition }));

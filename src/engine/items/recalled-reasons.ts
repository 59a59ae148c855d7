/** Why a row is as it is by what was marked or seen before: of where it begins in its first session, of care while it lasts. */
import type { Day } from '../../model/day.js';
import type { ExerciseId } from '../../model/identity.js';
import type { Reason } from '../../model/reason.js';
import type { BlockContext } from '../block-context.js';
import { NO_RECALL } from '../history/recall.js';
import type { FittedRow } from '../rows/fit-rows.js';
import { DONE_DAYS } from '../rules/done-days.js';
import { PAIN_BACK } from '../rules/pain-back.js';
import { PAIN_EASIER } from '../rules/pain-easier.js';
import { PAIN_GENTLE } from '../rules/pain-gentle.js';
import { PAIN_NEXT_MORNING } from '../rules/pain-next-morning.js';
import { SEEN_DAYS } from '../rules/seen-days.js';

interface At {
  readonly index: number;
  readonly day: Day | undefined;
}

/** Of the exercise it begins in, and what is to be heeded of the one the programme names; each once. */
export function recalledReasons(
  { recalls }: BlockContext,
  { target, choice }: Pick<FittedRow, 'target' | 'choice'>,
  begins: ExerciseId,
  { index, day }: At,
): readonly Reason[] {
  const reasons = [...new Set([begins, target.id])].flatMap((id): readonly Reason[] => {
    const { hold, floor, reasons: all } = recalls.get(id) ?? NO_RECALL;
    const lasts = (until: Day | undefined): boolean => day !== undefined && until !== undefined && day <= until;
    const held = lasts(hold?.until);
    const first = index === 0 && id === begins;
    return all.filter(({ rule }) => {
      if (OF_A_WHILE.has(rule)) return held;
      if (rule === PAIN_BACK.id) return held || first;
      // What was answered by an easier version is told with that version.
      if (isOfSeen(rule))
        return id === begins && choice.seen?.rule.id !== rule && (first || held || lasts(floor?.until));
      return !isOfMarks(rule) || first;
    });
  });
  const written = reasons.map(({ rule, audience, inputs }) =>
    audience === 'client' ? `${rule}/client` : JSON.stringify([rule, inputs]),
  );
  return reasons.filter((_, at) => written.indexOf(written[at] ?? '') === at);
}

const OF_A_WHILE: ReadonlySet<string> = new Set([PAIN_EASIER.id, PAIN_GENTLE.id, PAIN_NEXT_MORNING.id]);
/** The family that a rule's name begins with. */
const OF_MARKS = DONE_DAYS.id.slice(0, DONE_DAYS.id.indexOf('-') + 1);
/** Likewise. */
const OF_SEEN = SEEN_DAYS.id.slice(0, SEEN_DAYS.id.indexOf('-') + 1);
const isOfSeen = (rule: string): boolean => rule.startsWith(OF_SEEN);
const isOfMarks = (rule: string): boolean => rule.startsWith(OF_MARKS);

/**
 * How much is done of an easier version that is counted otherwise than the row: reps and seconds say nothing of each other, so
 * the least that the client's own programme asks of it, else a short dose. A hold as long as the reps took would be a hard one.
 */
import type { Exercise, Way } from '../../model/exercise.js';
import type { Row } from '../../model/programme.js';
import type { Seconds } from '../../model/quantity.js';
import { type BlockContext, names } from '../block-context.js';
import { EASIER_HOLD } from '../rules/easier-hold.js';
import { EASIER_REPS } from '../rules/easier-reps.js';
import { HOLD_MOST } from '../rules/hold-most.js';

/** What of the client's plan decides it. */
export type Dosing = Pick<BlockContext, 'exercises' | 'programme' | 'rules'>;

const IN_REPS: readonly Way[] = ['strength', 'bodyweight', 'combination', 'swing'];

/** Mobility as the programme asks for it; where it asks for none, in reps if its tempo is written in figures. */
export function isCountedInReps(context: Dosing, exercise: Exercise): boolean {
  const { way, tempo } = exercise.facts;
  if (way !== 'mobility') return IN_REPS.includes(way);
  const asked = rowsOf(context, exercise);
  if (asked.length > 0) return asked.some(({ dose }) => dose.kind === 'sets');
  return tempo.lower + tempo.bottom + tempo.top > 0 || tempo.lift !== 0;
}

/** In place of what is not held. */
export function easierHold(context: Dosing, exercise: Exercise): Seconds {
  const { rules } = context;
  return Math.min(leastHold(context, exercise) ?? rules.valueOf(EASIER_HOLD), rules.valueOf(HOLD_MOST));
}

/** The shortest that a row of the programme asks of this hold; `null` where none does. */
export function leastHold(context: Dosing, exercise: Exercise): Seconds | null {
  return least(rowsOf(context, exercise).flatMap(({ dose }) => (dose.kind === 'timed' ? [dose.seconds.min] : [])));
}

/** In place of what is not counted in reps. */
export function easierReps(context: Dosing, exercise: Exercise): number {
  const asked = rowsOf(context, exercise).flatMap(({ dose }) => (dose.kind === 'sets' ? [dose.reps.min] : []));
  return least(asked) ?? context.rules.valueOf(EASIER_REPS);
}

const least = (asked: readonly number[]): number | null => (asked.length === 0 ? null : Math.min(...asked));

const rowsOf = (context: Dosing, exercise: Exercise): readonly Row[] =>
  context.programme.sessions.flatMap(({ blocks }) =>
    blocks.flatMap(({ rows }) =>
      rows.filter(({ target }) => target.kind === 'exercise' && names(context, target.id, exercise)),
    ),
  );

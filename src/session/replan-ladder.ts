/** One row on a ladder from what was done on: the rungs stay as they are printed, and it goes on from the one marked last. */
import { returnOf, setsOnReturn } from '../engine/breaks/returns.js';
import type { LadderStep } from '../engine/ladder/ladder-step.js';
import { planLadder } from '../engine/ladder/plan-ladder.js';
import { rungToBegin } from '../engine/ladder/rung-to-begin.js';
import { lastRung } from '../engine/ladder/start-ladder.js';
import { recallOf } from '../engine/rows/from-marks.js';
import type { Judged } from '../engine/versions/judge-version.js';
import { meetCautions } from '../engine/versions/meet-caution.js';
import type { Exercise } from '../model/exercise.js';
import type { LadderInput, LadderOccurrence } from '../model/ladder.js';
import type { Row } from '../model/programme.js';
import { earnedSince, NOWHERE, type PlanContext } from './plan-context.js';
import type { OpenItem } from './replan-strand.js';

export type Reclimbed =
  | { readonly kind: 'left out'; readonly because: 'pain'; readonly exercise: Exercise }
  | {
      readonly kind: 'climbed';
      readonly ladder: LadderInput;
      readonly steps: readonly LadderStep[];
      readonly exercise: Exercise;
    }
  | { readonly kind: 'as printed' };

/** `open` are the row's occurrences that are still to come, in order; at least one. */
export function reclimb(
  { context, pained, lately }: PlanContext,
  ladder: LadderInput,
  open: readonly OpenItem[],
): Reclimbed {
  const exercises = [...new Set(ladder.rungs.map(({ exercise }) => exercise))];
  const judged = exercises.map((id): Judged | null => {
    const exercise = context.exercises.get(id);
    if (exercise === undefined) return null;
    return {
      exercise,
      allowed: true,
      refusals: [],
      loads: [],
      bands: [],
      signedOffTo: null,
      care: meetCautions(exercise, pained).filter(({ outcome }) => outcome === 'no gain'),
      refusedBy: meetCautions(exercise, pained).filter(({ outcome }) => outcome === 'refused'),
      lapses: null,
      way: null,
      tooMany: false,
    };
  });
  const versions = judged.flatMap((one) => one ?? []);
  const own = versions.find(({ exercise }) => exercise.id === ladder.rungs[ladder.start]?.exercise);
  if (versions.length < judged.length || own === undefined) return { kind: 'as printed' };
  const recall = recallOf(context, own);
  if (recall.leave !== null || own.refusedBy.length > 0)
    return { kind: 'left out', because: 'pain', exercise: own.exercise };
  const last = lastRung(context, {
    session: { id: ladder.session, name: '', notes: [], blocks: [], place: NOWHERE },
    row: rowOf(ladder, own),
    chain: { versions: [], judged: versions, base: versions.indexOf(own) },
  });
  const lighter = Math.max(last?.lighter ?? 0, recall.lighter);
  const begun =
    last === null && lighter === 0
      ? { start: ladder.start, earned: ladder.earned }
      : rungToBegin(ladder.rungs, ladder.start, last);
  const since = lately.recalls.get(own.exercise.id)?.rungIn.get(ladder.id)?.earned ?? 0;
  const worked = lately.worked.get(ladder.id) ?? 0;
  const earned = begun.start === ladder.start ? earnedSince(ladder.earned, since, worked, begun.earned) : begun.earned;
  // A lighter load is an earlier stage; where there is none, the easiest rung that is printed at all.
  const start = lighter > 0 ? firstOfStage(ladder, begun.start, lighter) : begun.start;
  const most = recall.lighter > 0 ? 0 : recall.earned;
  const hold = recall.hold;
  const whole = Math.max(...ladder.occurrences.map(({ sets }) => sets));
  const made: LadderInput = {
    ...ladder,
    start,
    earned: lighter > 0 || (last?.lower ?? 0) > 0 ? 0 : mostOf(earned, most),
    gates: ladder.gates && own.care.length === 0,
    occurrences: open.map(({ at, index }): LadderOccurrence => {
      const was = ladder.occurrences[index];
      const held =
        returnOf(context, at.day)?.held ?? (hold !== null && at.day <= hold.until ? hold : null) ?? was?.held;
      const planned = was?.sets ?? 1;
      const sets = Math.min(planned, setsOnReturn(context, at.day, [{ whole, planned, reps: null }]));
      const occurrence = { week: at.week, easy: was?.easy ?? false, sets };
      return held === undefined ? occurrence : { ...occurrence, held: { why: held.why } };
    }),
  };
  return { kind: 'climbed', ladder: made, steps: planLadder(made).steps, exercise: own.exercise };
}

const mostOf = (a: 0 | 1 | 2, b: 0 | 1 | 2): 0 | 1 | 2 => (a >= b ? a : b);

const rowOf = ({ row }: LadderInput, { exercise }: Judged): Row => ({
  id: row,
  target: { kind: 'exercise', id: exercise.id },
  dose: { kind: 'rounds', rounds: 1 },
  restSeconds: 0,
  tempi: ['normal'],
  trials: false,
  optional: false,
  place: NOWHERE,
});

function firstOfStage({ rungs }: LadderInput, at: number, lighter: number): number {
  const stage = Math.max(0, (rungs[at]?.stage ?? 0) - lighter);
  return Math.max(
    0,
    rungs.findIndex((rung) => rung.stage === stage),
  );
}

/** Exercises left out for pain: what takes the place of one asks nothing of the part that hurt. */
import { BODY_PARTS } from '../../model/exercise.js';
import type { Row } from '../../model/programme.js';
import type { BlockContext } from '../block-context.js';
import type { Left } from '../history/recall.js';
import { type Judge, judgeFor } from '../versions/judge-version.js';

/** The pain for which the exercise a row names is left out. */
export function leftOf({ exercises, recalls }: BlockContext, { target }: Row): Left | null {
  const exercise = target.kind === 'exercise' ? exercises.get(target.id) : undefined;
  return exercise === undefined ? null : (recalls.get(exercise.id)?.leave ?? null);
}

/** As they are judged with that part to be avoided. */
export function sparing(context: BlockContext, judge: Judge, { from, where, side }: Left): Judge {
  const what = BODY_PARTS.find((part) => part === where);
  if (what === undefined) return judge;
  const { standing, client } = context;
  const avoid = { what, degree: 'avoid', side, phases: [], from, by: '', place: client.place } as const;
  const spared = { ...context, standing: { ...standing, cautions: [...standing.cautions, avoid] } };
  return judgeFor(spared);
}

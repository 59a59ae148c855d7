/** What every part of the planner reads: one client, their programme, the library and the rules in force. */
import type { Client } from '../model/client.js';
import type { Day } from '../model/day.js';
import type { Exercise } from '../model/exercise.js';
import type { ExerciseId, SessionId } from '../model/identity.js';
import type { Programme } from '../model/programme.js';
import type { Recalls } from './history/recall.js';
import type { Rulebook } from './rulebook.js';
import type { Standing } from './screening/standing.js';

export interface BlockContext {
  readonly client: Client;
  readonly programme: Programme;
  /** By id, former ids included. */
  readonly exercises: ReadonlyMap<string, Exercise>;
  readonly rules: Rulebook;
  /** What was done and seen of each exercise; empty where nothing was. */
  readonly recalls: Recalls;
  readonly today: Day;
  /** What screening and health come to. */
  readonly standing: Standing;
  /** First and last training day of the block. */
  readonly firstDay: Day;
  readonly lastDay: Day;
  /** Every session of the block in order; of one that is begun those done too, each on the day it was done. */
  readonly days: readonly SessionDay[];
  /** Where training goes on: the first session of the block, or the first that is not done yet. */
  readonly next: { readonly day: Day; readonly week: number };
}

export interface SessionDay {
  readonly session: SessionId;
  readonly day: Day;
  /** 1-based. */
  readonly week: number;
  /** 1-based place in the queue. */
  readonly occurrence: number;
}

/** The library by id; a former id leads to the exercise it became, unless another now bears it. */
export function exercisesById(exercises: readonly Exercise[]): ReadonlyMap<string, Exercise> {
  const byId = new Map<string, Exercise>();
  for (const exercise of exercises) for (const former of exercise.formerIds) byId.set(former, exercise);
  for (const exercise of exercises) byId.set(exercise.id, exercise);
  return byId;
}

/** Whether `id`, as written in a client's file, names this exercise, now or formerly. */
export const names = (context: Pick<BlockContext, 'exercises'>, id: ExerciseId, exercise: Exercise): boolean =>
  context.exercises.get(id)?.id === exercise.id;

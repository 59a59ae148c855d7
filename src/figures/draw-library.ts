/** Every exercise of a library that has a table of poses → its drawing. */
import type { Exercise } from '../model/exercise.js';
import type { Drawings } from '../model/picture.js';
import { drawExercise } from './draw-exercise.js';

export const drawLibrary = (exercises: readonly Exercise[]): Drawings =>
  new Map(
    exercises.flatMap((exercise) => {
      const drawing = drawExercise(exercise);
      return drawing === null ? [] : [[exercise.id, { drawing, poses: exercise.poses }] as const];
    }),
  );

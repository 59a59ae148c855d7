/** Every table of poses → what is wrong with the bodies drawn from it. */
import { readFigureAsks } from '../content/read-figure-asks.js';
import { checkPoses } from '../figures/check-poses.js';
import { poseBodies } from '../figures/pose-body.js';
import type { Exercise } from '../model/exercise.js';
import type { Problem } from '../model/problem.js';

export const checkFigures = (exercises: readonly Exercise[]): readonly Problem[] =>
  exercises.flatMap(({ poses, words }) => checkPoses(poseBodies(poses), readFigureAsks(words)));

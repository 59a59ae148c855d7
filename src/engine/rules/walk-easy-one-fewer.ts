/** Where an easy week could not take a set away it takes a rep. */
import type { Limit } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const easyOneFewerLimit: Limit = {
  kind: 'limit',
  row: practiceRow('walk-easy-one-fewer', 1, 'reps'),
  weeks: 'easy',
  most: (at) =>
    at.lastWork === null || at.occurrence.sets < at.lastWork.sets
      ? Number.MAX_SAFE_INTEGER
      : Math.max(1, at.lastWork.reps - 1),
};

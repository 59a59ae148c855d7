/** Where nothing in the range leaves the floor at a slower tempo: the load held at normal tempo, before any lower load. */
import { fallbacksAt } from '../walk/fallback.js';
import { bottomOf, predictedAt, type Situation, topOf } from '../walk/situation.js';
import type { Fall, Fallback } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const normalTempo: Fall = {
  kind: 'fall',
  row: practiceRow('walk-normal-tempo', 0, ''),
  turn: 1,
  named: 'normal-tempo',
  offers: atNormalTempo,
};

/** Those in the range. None where the tempo held is the normal one. */
export function atNormalTempo(at: Situation): readonly Fallback[] {
  const { version, load, tempo } = at.place;
  if (tempo === 0) return [];
  const place = { version, load, tempo: 0 };
  return fallbacksAt(at, place, predictedAt(at, version, load, 0), bottomOf(at), topOf(at));
}

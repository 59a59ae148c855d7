/**
 * A load or a version from which nothing can be predicted is not gone to: no body mass on file, or no ratio on
 * the way between two versions.
 */
import { externalAt } from '../walk/situation.js';
import type { Guard } from '../walk/walk-rule.js';
import { practiceRow } from './walk-row.js';

export const derivedGuard: Guard = {
  kind: 'guard',
  row: practiceRow('walk-derived', 0, ''),
  permits: (at, next) =>
    (at.week.capacities[next.version] ?? 0) > 0 &&
    (at.ground.footings[next.version]?.counted === true ||
      externalAt(at.ground, next) === externalAt(at.ground, at.place)),
  numbers: () => [],
};

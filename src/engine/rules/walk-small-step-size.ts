/** A step of load is small up to 10 % of the external load held. The published advice raised loads by 2-10 %. */
import { externalAt, type Place, type Situation } from '../walk/situation.js';
import type { Custom } from '../walk/walk-rule.js';
import { sourcedRow } from './walk-row.js';

export const smallStepSize: Custom = {
  kind: 'custom',
  row: sourcedRow(
    'walk-small-step-size',
    100,
    'per-mille',
    'adapted',
    'ACSM position stand 2009 (Ratamess et al., Med Sci Sports Exerc 41(3):687-708); superseded in 2026',
    'load increments of 2-10 %',
  ),
};

export function isSmallStep(at: Situation, next: Place): boolean {
  const held = externalAt(at.ground, at.place);
  return 1000 * (externalAt(at.ground, next) - held) <= at.ground.values.smallStep * held;
}

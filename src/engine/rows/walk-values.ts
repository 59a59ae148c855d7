/** The values the walk reads, with the coach's own laid over them, as they stand in each strand. */
import type { Rule } from '../../model/reason.js';
import type { WalkRules } from '../../model/strand.js';
import { smallStepSize } from '../rules/walk-small-step-size.js';
import { tolerance } from '../rules/walk-tolerance.js';
import { trialMarginGuard } from '../rules/walk-trial-margin.js';
import { volumeShare } from '../rules/walk-volume-share.js';
import { weakAbove } from '../rules/walk-weak-above.js';

/** The rules of the walk whose values stand in a strand. */
export const WALK_VALUES: readonly Rule[] = [smallStepSize, tolerance, trialMarginGuard, volumeShare, weakAbove].map(
  (rule) => rule.row,
);

/** `valueOf` is the rulebook's. */
export function walkValues({ valueOf: inForce }: { readonly valueOf: (rule: Rule) => number }): WalkRules {
  return {
    tolerance: inForce(tolerance.row),
    smallStep: inForce(smallStepSize.row),
    trialMargin: inForce(trialMarginGuard.row),
    volume: inForce(volumeShare.row),
    weakAbove: inForce(weakAbove.row),
  };
}

/**
 * The rules a reason may name, and what the coach is told of each. The engine's rulebook and this list are held equal
 * by a test: words may not read the engine, and a rule without a sentence would be a number nobody can explain.
 */

import type { Saying } from './rule-words.js';
import { AUDIT_RULES } from './rules/audit.js';
import { HISTORY_RULES } from './rules/history.js';
import { LADDER_RULES } from './rules/ladder.js';
import { REVIEW_RULES } from './rules/review.js';
import { SCREENING_RULES } from './rules/screening.js';
import { SESSION_RULES } from './rules/sessions.js';
import { VERSION_RULES } from './rules/versions.js';

export const WALK_RULES = [
  'walk-asked',
  'walk-back-up',
  'walk-below-tested',
  'walk-big-step',
  'walk-bodyweight-version-first',
  'walk-bottom-and-asked',
  'walk-bottom-and-floor',
  'walk-derived',
  'walk-earned-at-top',
  'walk-earned-once',
  'walk-earned-reserve',
  'walk-earned-reset',
  'walk-earned-twice',
  'walk-easier-version',
  'walk-easy-asked',
  'walk-easy-cap',
  'walk-easy-depth',
  'walk-easy-least',
  'walk-easy-one-fewer',
  'walk-easy-week',
  'walk-fewer-reps',
  'walk-fewest',
  'walk-floor',
  'walk-gain',
  'walk-gate-once',
  'walk-gates-allowed',
  'walk-half-reps',
  'walk-harder-version',
  'walk-heavier-first',
  'walk-held',
  'walk-held-reps',
  'walk-lower-load',
  'walk-more-reps-first',
  'walk-nearest-asked',
  'walk-new-is-lighter',
  'walk-no-trial-after-gate',
  'walk-normal-tempo',
  'walk-range',
  'walk-slower',
  'walk-slower-earned',
  'walk-slower-leaves-floor',
  'walk-small-step',
  'walk-small-step-size',
  'walk-tempi-used-up',
  'walk-tempo-factor',
  'walk-tempo-reset',
  'walk-tolerance',
  'walk-trial',
  'walk-trial-allowed',
  'walk-trial-closes',
  'walk-trial-in-range',
  'walk-trial-margin',
  'walk-trial-once-a-week',
  'walk-trial-two-sets',
  'walk-trial-waits',
  'walk-version-trial',
  'walk-volume',
  'walk-volume-first',
  'walk-volume-one-rep',
  'walk-volume-share',
  'walk-weak-above',
  'walk-weak-no-rise',
  'walk-weak-trial',
  'walk-weak-twice',
] as const;

/** Of rows and their effort; the other rooms' names stand with their words in `rules/`. */
const ROW_RULES = [
  'begin-lighter',
  'begin-tested',
  'circuit-reserve',
  'clock-one-tempo',
  'dose-of-version',
  'easier-hold',
  'easier-reps',
  'effort-of-version',
  'feeler-rise',
  'first-weeks',
  'floor-alone',
  'floor-cautioned',
  'floor-first-weeks',
  'floor-novice',
  'floor-older',
  'floor-signal',
  'gain-cautioned',
  'gain-novice',
  'gain-trained',
  'lighter-bell',
  'main-bell',
  'new-movement-lighter',
  'next-up-bell',
  'one-side-tested',
  'percent-of-maximum',
  'plates-a-side',
  'own-dose',
  'refuge-once',
  'rpe-to-reserve',
  'side-gap-own-bell',
  'side-gap-told',
  'side-gap-why',
  'signal-work',
  'tempo-slow-lowering',
  'tempo-slow-with-a-pause',
  'unequal-at-most',
  'unequal-hands',
  'unequal-near',
  'warm-up-load',
  'weak-reserve',
  'weaker-side',
  'weakest-part',
] as const;

export const BLOCK_RULES = [
  ...ROW_RULES,
  ...AUDIT_RULES,
  ...HISTORY_RULES,
  ...LADDER_RULES,
  ...REVIEW_RULES,
  ...SCREENING_RULES,
  ...SESSION_RULES,
  ...VERSION_RULES,
] as const;

/** What a whole walk tells the coach. */
export const TELLINGS = ['kit-too-light', 'nothing-climbs', 'range-too-high', 'to-earn-a-try'] as const;

export type WalkRuleName = (typeof WALK_RULES)[number];
export type RowRuleName = (typeof ROW_RULES)[number];
export type BlockRuleName = (typeof BLOCK_RULES)[number];
export type TellingName = (typeof TELLINGS)[number];

export interface ReasonWords {
  readonly walk: Readonly<Record<WalkRuleName, Saying>>;
  readonly block: Readonly<Record<BlockRuleName, Saying>>;
  readonly tellings: Readonly<Record<TellingName, Saying>>;
}

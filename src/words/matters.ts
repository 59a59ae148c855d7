/**
 * What each finding asks of the coach, most pressing first. A finding's rule stands in one of these lists; its place in
 * them is its rank. How a finding is worded stands with its rule.
 */
import type { BlockRuleName, TellingName } from './reason-words.js';

/** `decide`: nobody else can; `look`: worth a glance; `desk`: as the programme and the rules have it, to be looked up. */
export type Asks = 'decide' | 'look' | 'desk';

/** What is read from the plan itself, and found by no rule. */
export type OwnMatter = 'twice-in-a-session' | 'row-left-out';
export type MatterName = BlockRuleName | TellingName | OwnMatter;

const DECIDE = [
  // Somebody else is to be asked, or the client.
  'pain-leave',
  'pain-sign-off',
  'done-gap',
  'done-quiet',
  'other-medicine',
  'falls-refer',
  'break-hurt',
  'break-ill',
  'pressure-holds',
  'not-asked',
  // A caution.
  'caution-review',
  'caution-in-block',
  'refuge-once',
  // Days.
  'start-moved',
  'queue-slides',
  'sessions-lost',
  'return-days-first',
  'return-days-second',
  // Something to see or to test.
  'side-gap-why',
  'chair-stand-low',
  'one-side-tested',
  'ladder-start-lightest',
  'test-not-counted',
  'test-waits',
] as const satisfies readonly MatterName[];

const LOOK = [
  // What makes the whole plan gentler.
  'diabetes-is-disease',
  'fracture-moderate',
  'pregnancy-moderate',
  'birth-window',
  'break-away',
  'break-held-ill',
  // What is not as the programme has it.
  'row-left-out',
  'version-chosen',
  'begin-lighter',
  'begin-tested',
  'seen-balance',
  'seen-grip',
  'dose-of-version',
  'signal-work',
  'effort-of-version',
  'circuit-apart',
  'circuit-bells',
  'next-up-passed',
  'hold-most',
  'twice-in-a-session',
  // What would help most.
  'kit-too-light',
  'nothing-climbs',
  'ladder-top',
  'range-too-high',
  'to-earn-a-try',
  'side-gap-told',
  'chair-stand-norm',
  // The block as a whole.
  'audit-balance-days',
  'audit-bone-back',
  'audit-bone-balance',
  'audit-side-side',
  'audit-push-pull',
  'audit-squat-hinge',
  'audit-group-days',
  'audit-weekly-sets',
  'audit-unknown-muscle',
] as const satisfies readonly MatterName[];

const DESK = [
  'missed-session',
  'floor-begins',
  'floor-light',
  'floor-moderate',
  'talk-moderate',
  'clearance-warned',
  'pregnancy-last',
  // What follows from health, in detail.
  'slows-the-heart',
  'lowers-blood-sugar',
  'lowers-blood-pressure',
  'thins-the-blood',
  'pressure-at-home',
  'pressure-breath',
  'pregnancy-signs',
  'pregnancy-back',
  'pregnancy-belly',
  'pregnancy-breath',
  'pregnancy-falls',
  'birth-signs',
  'birth-belly',
  'birth-breath',
  'birth-impact',
  'bone-bend',
  'bone-fast',
  'bone-lift',
  'bone-twist',
  'fracture-bend',
  'fracture-fast',
  'fracture-floor',
  'fracture-lift',
  'fracture-twist',
  'falls-support',
  'minutes-cap',
  'would-unlock',
] as const satisfies readonly MatterName[];

export type FoundMatter = (typeof DECIDE)[number] | (typeof LOOK)[number] | (typeof DESK)[number];

/** All of them, by rank. */
export const MATTERS: Readonly<Record<Asks, readonly FoundMatter[]>> = { decide: DECIDE, look: LOOK, desk: DESK };
export const ASKS: readonly Asks[] = ['decide', 'look', 'desk'];

/** What would open a version that is closed. */
export const OPENS: FoundMatter = 'would-unlock';

/** What is true of many clients alike is told once for all of them: it is about the studio's forms, or its library. */
export const OF_THE_STUDIO: ReadonlySet<string> = new Set<FoundMatter>(['not-asked', 'audit-unknown-muscle']);

const RANKS: ReadonlyMap<string, { readonly asks: Asks; readonly rank: number }> = new Map(
  ASKS.flatMap((asks, order) =>
    MATTERS[asks].map((name, index) => [name, { asks, rank: 1000 * order + index }] as const),
  ),
);

/** A matter nobody has placed is never hidden: it is for the coach to decide, first of all. */
export const placeOf = (name: string): { readonly asks: Asks; readonly rank: number } =>
  RANKS.get(name) ?? { asks: 'decide', rank: -1 };

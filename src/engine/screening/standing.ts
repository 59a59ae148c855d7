/** What screening and the facts of health come to for one block. Which facts hold a client back stands beside it. */
import type { Caution, Client } from '../../model/client.js';
import type { Day } from '../../model/day.js';
import type { RuleId } from '../../model/identity.js';
import type { Talk } from '../../model/plan.js';
import type { Tenths } from '../../model/quantity.js';

export interface Standing {
  /** Only moderate work: more left in reserve, no trials, no gates, nothing fast, talk test. */
  readonly moderate: boolean;
  /** The coach's cautions and those that follow by a rule from a fact of health. */
  readonly cautions: readonly Caution[];
  readonly derived: readonly {
    readonly rule: RuleId;
    readonly what: Caution['what'];
    readonly degree: Caution['degree'];
  }[];
  /** The highest floor of reserve that follows from it, for every week. */
  readonly floor: { readonly rule: RuleId; readonly reserve: Tenths } | null;
  /** Breath never beyond this; `null` where the row decides. */
  readonly talk: Talk | null;
  /** No gain is counted on, no trial or gate is offered. */
  readonly steady: boolean;
  /** The last day a session may be held; `null` where the block runs to its end. */
  readonly lastDay: { readonly day: Day; readonly because: 'clearance' | 'due date' } | null;
}

export const standingOf = (client: Client): Standing => ({
  moderate: false,
  cautions: client.cautions,
  derived: [],
  floor: null,
  talk: null,
  steady: false,
  lastDay: null,
});

/** One set as it is done today. */
import type { ClientEasier, ClientGroup, ClientItem, ClientSet } from '../../model/client-plan.js';
import type { TempoStep } from '../../model/programme.js';
import type { Reason } from '../../model/reason.js';
import type { Figures, GateAsked } from '../../model/training.js';
import type { SteppedSet } from '../step-session.js';
import type { FirstWord } from './marked-sets.js';

export interface SetToday {
  readonly stepped: SteppedSet;
  /** `null` where nothing is marked of it. */
  readonly first: FirstWord | null;
  /** Beyond the plan: marked, or still to be done. */
  readonly extra?: true;
  readonly group: ClientGroup;
  readonly item: ClientItem;
  readonly figures: Figures;
  readonly tempo: TempoStep;
  readonly chosen: ClientEasier | null;
  readonly gate?: GateAsked;
  readonly paper?: { readonly set: ClientSet; readonly because: readonly Reason[] };
}

/**
 * The part of the plan that travels with a client's booklet. A list of what may go, not of what may not: a field added
 * to the plan stays private until it is named here. It leaves out every input (tests, cautions, body mass, screening),
 * what was considered and refused, findings and every reason: the client's own sentences stand in the booklet, and a
 * reason's figures can tell a body mass.
 * Names and shapes are those of the plan, so that what reads a client's plan reads a plan as well.
 */
import type { IsoDate } from './day.js';
import type { EditionStanding } from './edition.js';
import type { BookletId } from './identity.js';
import type { PublicKey } from './marks-key.js';
import type { Choice, EasierItem, Group, Item, PlanLoad, PlanSession, PlanSet, Week } from './plan.js';
import type { ReplanPart } from './replan-part.js';

/** Without what is predicted of it. */
export type ClientChoice = Omit<Choice, 'reserve'>;

/** Without what is predicted of it. */
export type ClientSet = Omit<PlanSet, 'reserve' | 'choose'> & { readonly choose?: readonly ClientChoice[] };

export type ClientEasier = Pick<EasierItem, 'exercise' | 'say'> & {
  /** One set of it; it is done for as many sets as the exercise it stands in for. Absent where none is planned. */
  readonly set?: ClientSet;
};

export type ClientItem = Pick<
  Item,
  'row' | 'exercise' | 'done' | 'way' | 'sides' | 'tempo' | 'restSeconds' | 'asked' | 'talk' | 'rung'
> & {
  readonly sets: readonly ClientSet[];
  readonly easier: readonly ClientEasier[];
  /** Of a published measure: what is counted in its time; absent where the time itself is found. */
  readonly counts?: 'reps';
  /** What of one's own kit it can be done with, lightest first; absent where nothing is held. */
  readonly loads?: readonly PlanLoad[];
};

export type ClientGroup = Pick<
  Group,
  'kind' | 'name' | 'rounds' | 'everySeconds' | 'workSeconds' | 'pauseSeconds' | 'minutes'
> & {
  readonly items: readonly ClientItem[];
};

export type ClientSession = Pick<PlanSession, 'id' | 'name' | 'date' | 'occurrence' | 'minutes'> & {
  readonly groups: readonly ClientGroup[];
  /** What counts as the session done on a bad day; without sets where there is none. */
  readonly short: PlanSession['short'];
};

export type ClientWeek = Pick<Week, 'number' | 'begins' | 'deload'> & {
  readonly sessions: readonly ClientSession[];
};

export interface ClientPlan {
  readonly schema: 1;
  /** Absent in a draft, which keeps marks for trying it out alone: they belong to no booklet. */
  readonly bookletId?: BookletId;
  /** 0 for a draft. */
  readonly edition: number;
  /** As on the day it was drawn; of one withdrawn no week travels. */
  readonly standing: EditionStanding;
  /** The client's block, from 1. */
  readonly block: number;
  readonly starts: IsoDate;
  /** The last day sessions are planned for; why is the coach's own. */
  readonly last?: IsoDate;
  /**
   * Degrees of pain, 0 to 10: up to `gentle` go on gently, from `easier` the easier version, from `leave` leave it; worse the next
   * morning counts as `nextMorning` of these bands more.
   */
  readonly pain: Readonly<Record<'gentle' | 'easier' | 'leave' | 'nextMorning', number>>;
  /** So many days without a mark are a break: the coach is to be asked how to go on. */
  readonly away: number;
  /** Seconds by which one tap makes a rest longer, and to get into place for a hold; days without a mark that are told. */
  readonly phone: { readonly restLonger: number; readonly intoPlace: number; readonly awaySaid: number };
  readonly weeks: readonly ClientWeek[];
  /** The studio's key that marks are sealed to; absent where they go as plain text. */
  readonly marksTo?: PublicKey;
  /** Only where the coach lets the phone plan the rest again. */
  readonly replan?: ReplanPart;
}

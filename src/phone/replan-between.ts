/**
 * The rest of the block planned again between sessions: never from what is marked in a session that is still under way,
 * so that nothing on its screens changes until it is over. Each reason comes with its sentence in the client's language.
 */
import type { ClientPlan } from '../model/client-plan.js';
import type { IsoDate } from '../model/day.js';
import { readSetKey } from '../model/identity.js';
import type { LogEvent } from '../model/log.js';
import type { PlanLoad } from '../model/plan.js';
import type { Reason } from '../model/reason.js';
import type { Moment } from '../model/training.js';
import type { InSteps } from '../session/in-steps.js';
import { planOfPart } from '../session/plan-of-part.js';
import { type ReplannedItem, replanRowByRow } from '../session/replan.js';
import { stepSession } from '../session/step-session.js';
import { inSentence } from '../words/in-sentence.js';
import { reasonSpeechOf } from '../words/reason-speech.js';
import { type Names, PLAIN_NAMES } from '../words/say-figures.js';
import { sayToClient } from '../words/say-to-client.js';

export interface Between {
  readonly plan: ClientPlan;
  /** All of this booklet, in any order. */
  readonly events: readonly LogEvent[];
  readonly now: Moment;
  /** The local day. */
  readonly today: IsoDate;
  /** BCP 47: the client's. */
  readonly language: string;
  /** What the page calls an exercise; `undefined` where it has none of it. */
  readonly called: (exercise: string) => string | undefined;
}

/** Nothing where the plan stays as it is, or where nothing may be trained until the coach has looked. */
export function* replanBetween(between: Between): InSteps<readonly ReplannedItem[]> {
  const { plan, events, now, today, language, called } = between;
  // Before its first day, with nothing done, there is nothing to plan from: a phone that opens it first waits for nothing.
  if (events.length === 0 && today <= plan.starts) return [];
  const whole = planOfPart(plan);
  if (whole === null) return [];
  yield;
  const { sessions, next } = stepSession(plan, events, new Date(now));
  const under = sessions.find(({ status, occurrence }) => status === 'under way' && occurrence === next);
  const isOver = (event: LogEvent): boolean => under === undefined || occurrenceOf(event) !== under.occurrence;
  // A session that runs past midnight stays as it began.
  const begun = events.filter((event) => !isOver(event)).map(({ at }) => at.slice(0, 10));
  const day = [today, ...begun].sort()[0] ?? today;
  yield;
  const again = yield* replanRowByRow(whole, events.filter(isOver), day);
  if (again.kind !== 'planned') return [];
  const speech = reasonSpeechOf(language);
  const names: Names = {
    exercise: (id) => {
      const name = called(id);
      return name === undefined ? PLAIN_NAMES.exercise(id) : inSentence(name);
    },
    load: (grams, exercise) => labelOf(plan, grams, exercise) ?? PLAIN_NAMES.load(grams),
  };
  return again.changed.map((item) => ({
    ...item,
    because: tell(item.because, (one) => sayToClient(one, speech, names)),
  }));
}

const occurrenceOf = (event: LogEvent): number | undefined =>
  event.kind === 'set' ? readSetKey(event.key)?.occurrence : 'occurrence' in event ? event.occurrence : undefined;

/**
 * From what weighs most to what is always so: what was too much; what hurt so much that it waits; what hurt, days away and marks;
 * the walk; whose marks; how sets are counted.
 */
const WEIGHT: readonly RegExp[] = [
  /^pain-next-morning$/,
  /^pain-leave$/,
  /^(pain|break|return|done)-(?!median$|unsaid$)/,
  /^(?!walk-(asked|range|floor|volume|easy)|done-|begin-tested$)/,
  /^(done-|begin-tested$)/,
];

function weightOf({ rule }: Reason): number {
  const found = WEIGHT.findIndex((pattern) => pattern.test(rule));
  return found === -1 ? WEIGHT.length : found;
}

/** The one that weighs most of those a client is told: a screen has room for one, and so has whoever stands before it. */
function tell(reasons: readonly Reason[], say: (reason: Reason) => string): readonly Reason[] {
  const told = reasons.map((one) => ({ ...one, says: say(one) })).filter(({ says }) => says !== '');
  return [...told].sort((a, b) => weightOf(a) - weightOf(b)).slice(0, 1);
}

/** As its owner calls it: with the exercise it is held for, else with any. */
function labelOf({ weeks }: ClientPlan, grams: number, exercise: string | undefined): string | undefined {
  const items = weeks.flatMap(({ sessions }) =>
    sessions.flatMap(({ groups }) => groups.flatMap((group) => group.items)),
  );
  const own = items.filter((item) => item.exercise === exercise);
  const isIt = (load: PlanLoad): boolean => load.grams === grams;
  return [...own, ...items].flatMap(({ loads }) => loads ?? []).find(isIt)?.label;
}

/** One plan with how its things are called: what every part of an account of it is made from. */

import type { Plan } from '../model/plan.js';
import type { Reason } from '../model/reason.js';
import { type CoachSpeech, coachSpeechOf } from './coach-speech.js';
import { sayRefusal } from './problems/refusals.js';
import { heldIn, type Names, PLAIN_NAMES } from './say-figures.js';
import { exercisesIn, namesAmong } from './say-names.js';
import { namesIn } from './say-plan.js';
import { sayReason } from './say-reason.js';
import type { WhyReason } from './why-tree.js';

/** A published equation's answer for a set. */
interface Maximum {
  readonly equation: string;
  readonly grams: number;
}

/** How those a plan knows by id are called, and what may be shown beside a test. */
export interface Called {
  readonly client: string;
  readonly programme: string;
  /** As a heading has it: `Goblet squat`. */
  readonly exercise: (id: string) => string;
  /** What published equations make of a load and so many reps to failure; nothing is shown where it is absent. */
  readonly maxima?: (grams: number, reps: number) => readonly Maximum[];
}

export interface Account {
  readonly plan: Plan;
  readonly speech: CoachSpeech;
  readonly called: Called;
  /** As they stand inside a sentence. */
  readonly names: Names;
}

/** Of a plan alone, without the library: ids with spaces. */
export const calledById = (plan: Plan): Called => ({
  client: plan.client,
  programme: plan.programme,
  exercise: PLAIN_NAMES.exercise,
});

export function accountOf(plan: Plan, called: Called, language: string): Account {
  const speech = coachSpeechOf(language);
  const exercise = namesAmong(exercisesIn(plan), called.exercise, speech);
  return { plan, speech, called, names: { ...namesIn(plan), exercise } };
}

/** Of one item: its loads are held as its exercise holds them. */
export const withinItem = (account: Account, { exercise }: { readonly exercise: string }): Account => ({
  ...account,
  names: heldIn(exercise, account.names),
});

export function tellReason({ plan, speech, names }: Account, reason: Reason): WhyReason {
  const own = plan.rules.find(({ id }) => id === reason.rule)?.overridden;
  const says = sayReason(reason, 'coach', speech, names) || reason.says;
  return {
    rule: reason.rule,
    says: `${says}${whyNotWritten(reason, names)}`,
    inputs: reason.inputs,
    source: reason.source,
    confidence: reason.confidence,
    audience: reason.audience,
    ...(own === undefined ? {} : { own: { value: `${own.value}`, reason: own.reason } }),
  };
}

/** Where another version stands in for the one in the programme: what that one was refused for, each once. */
export function refusedFor({ inputs }: Reason): readonly string[] {
  const written = inputs.find(({ name }) => name === 'programme')?.value;
  if (typeof written !== 'string') return [];
  const refused = inputs.flatMap(({ name, value }) => {
    const [of = '', cause = ''] = name.split(': ');
    return of === written || of === 'refused' ? [{ cause, detail: String(value) }] : [];
  });
  const hurt = new Set(refused.flatMap(({ cause, detail }) => (cause === 'pain' ? [detail] : [])));
  const said = refused
    // Another is looked for as if what hurt were to be avoided: no caution says so.
    .filter(({ cause, detail }) => cause !== 'avoid' || !hurt.has(detail))
    .map(({ cause, detail }) => sayRefusal(cause, detail))
    .filter((text) => text !== '');
  return [...new Set(said)];
}

/** The same as a sentence of its own, after another. */
export function whyNotWritten(reason: Reason, names: Names): string {
  const written = reason.inputs.find(({ name }) => name === 'programme')?.value;
  const said = refusedFor(reason);
  if (typeof written !== 'string') return '';
  return said.length === 0 ? '' : ` Why not the ${names.exercise(written)}: ${said.join('; ')}.`;
}

/** Fills in the sentence of every reason of a plan. The figures stay as they are; nothing else is touched. */

import type { Item, Plan, PlanSession } from '../model/plan.js';
import type { Reason } from '../model/reason.js';
import { type CoachSpeech, coachSpeechOf } from './coach-speech.js';
import { sayTenths } from './say-dose.js';
import { heldIn, type Names, PLAIN_NAMES } from './say-figures.js';
import { sayReason } from './say-reason.js';
import { unbroken } from './spacing.js';
import type { Speech } from './speech.js';

/**
 * Each reason is said for its own audience; one meant for the client that has no sentence for clients is said as to
 * the coach, whose own the plan is. `language` is the coach's, a BCP 47 tag. What is said already, in a session done in
 * an earlier edition, stays as it was said there.
 */
export function sayPlan(plan: Plan, language = 'en-GB'): Plan {
  const speech = coachSpeechOf(language);
  const names = namesIn(plan);
  const told = (reason: Reason, within = names): Reason =>
    reason.says === '' ? { ...reason, says: sayInFull(reason, speech, within) } : reason;
  const item = (of: Item): Item => {
    const within = heldIn(of.exercise, names);
    return { ...of, reasons: of.reasons.map((reason) => told(reason, within)) };
  };
  const session = (of: PlanSession): PlanSession => ({
    ...of,
    trimmed: of.trimmed.map((trim) => ({ ...trim, reason: told(trim.reason) })),
    groups: of.groups.map((group) => ({ ...group, items: group.items.map(item) })),
  });
  return {
    ...plan,
    weeks: plan.weeks.map((week) => ({ ...week, sessions: week.sessions.map(session) })),
    findings: plan.findings.map((finding) => ({ ...finding, reason: told(finding.reason) })),
  };
}

function sayInFull(reason: Reason, speech: Speech, names: Names): string {
  return sayReason(reason, reason.audience, speech, names) || sayReason(reason, 'coach', speech, names);
}

/** Grams. Where no load can be derived capacity counts reps alone, and is no mass worth showing. */
const SHOWN_FROM = 1000;
/** Of one pound (avoirdupois, exact by the International Yard and Pound agreement of 1959), in grams. */
const POUND = 453.59237;

/** A load that nobody has: in pounds where it is whole pounds, and the kit knows them. */
function nameOfAny(plan: Plan, grams: number): string {
  const pounds = Math.round(grams / POUND);
  return Math.round(pounds * POUND) === grams ? sayMass(plan, grams) : PLAIN_NAMES.load(grams);
}

/** A mass to a tenth, in the unit of the client's kit. */
export function sayMass({ inputs }: Plan, grams: number): string {
  const pounds = inputs.kit.some(({ label }) => label.endsWith('lb'));
  const tenths = Math.floor((grams * 10) / (pounds ? POUND : 1000) + 0.5);
  return unbroken(`${sayTenths(tenths)} ${pounds ? 'lb' : 'kg'}`);
}

/** What is taken to be lifted once; empty where there is nothing to show. */
export function sayCapacity(plan: Plan, { capacity, exercise }: Item, speech: CoachSpeech): string {
  if (capacity === null || capacity.grams < SHOWN_FROM) return '';
  const { why } = speech.coach;
  return why.capacity({
    side: why.sides[capacity.side],
    figure: sayMass(plan, capacity.grams),
    withBody: plan.inputs.shares.some((share) => share.exercise === exercise && share.share > 0),
    equation: why.equations[capacity.equation],
    confidence: why.confidence[capacity.confidence],
  });
}

/**
 * Loads as their owner calls them; exercises by their ids, since a plan carries no names. One mass may be one bell in
 * one exercise and a pair of them in another; of no exercise it is the one piece of kit.
 */
export function namesIn(plan: Plan): Names {
  const held = new Map<string, string>();
  const any = new Map<number, string>();
  const note = (exercise: string, grams: number, label: string): void => {
    held.set(`${exercise}/${grams}`, label);
    if (!any.has(grams)) any.set(grams, label);
  };
  for (const { grams, label } of plan.inputs.kit) if (grams !== null) any.set(grams, label);
  for (const { versions } of plan.inputs.strands)
    for (const { exercise, loads } of versions) for (const { grams, label } of loads) note(exercise, grams, label);
  for (const { rungs } of plan.inputs.ladders)
    for (const { exercise, load } of rungs)
      if (load !== null && 'grams' in load) note(exercise, load.grams, load.label);
  return {
    exercise: PLAIN_NAMES.exercise,
    load: (grams, exercise) => unbroken(held.get(`${exercise}/${grams}`) ?? any.get(grams) ?? nameOfAny(plan, grams)),
  };
}

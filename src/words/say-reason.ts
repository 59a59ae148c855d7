/** One plain sentence from a reason's rule and figures, for the coach or for the client. */
import type { Audience, Reason } from '../model/reason.js';
import { englishCoach } from './english-coach.js';
import { type Figure, type Saying, spoken } from './rule-words.js';
import { figuresOf, type Names, PLAIN_NAMES } from './say-figures.js';
import { sayToClient } from './say-to-client.js';
import type { Speech } from './speech.js';

/** A sentence for whoever it is meant for; empty where this audience is told nothing. */
export function sayReason(reason: Reason, audience: Audience, speech: Speech, names: Names = PLAIN_NAMES): string {
  if (audience === 'client') return sayToClient(reason, speech, names);
  return coachSaying(reason.rule)?.(figuresOf(reason, speech, names)) ?? '';
}

/** What the coach is told of a rule; `undefined` for one that has no words. */
export function coachSaying(rule: string): ((figure: Figure) => string) | undefined {
  const { walk, block, tellings } = englishCoach.reasons;
  const saying = find(walk, rule) ?? find(block, rule) ?? find(tellings, rule);
  return saying === undefined ? undefined : spoken(saying);
}

function find(table: Readonly<Record<string, Saying>>, rule: string): Saying | undefined {
  return Object.hasOwn(table, rule) ? table[rule] : undefined;
}

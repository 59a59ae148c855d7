/** One plain sentence for the client from a reason's rule and figures. It knows nothing of what the coach is told. */
import type { Reason } from '../model/reason.js';
import { type Figure, type Saying, spoken } from './rule-words.js';
import { type FigureSpeech, figuresOf, type Names, PLAIN_NAMES } from './say-figures.js';
import type { SpeechWith } from './speech.js';

/** Empty where the client is told nothing of the rule. */
export function sayToClient(
  reason: Reason,
  speech: FigureSpeech & SpeechWith<'reasons'>,
  names: Names = PLAIN_NAMES,
): string {
  return clientSaying(reason.rule, speech)?.(figuresOf(reason, speech, names)) ?? '';
}

/** What the client is told of a rule; `undefined` where that is nothing. */
export function clientSaying(rule: string, { words }: SpeechWith<'reasons'>): ((figure: Figure) => string) | undefined {
  const reasons: Readonly<Record<string, Saying>> = words.reasons;
  const saying = Object.hasOwn(reasons, rule) ? reasons[rule] : undefined;
  return saying === undefined ? undefined : spoken(saying);
}

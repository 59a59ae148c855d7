/** What the rulebook's page says of its own, and each rule in words that stand alone: title, sentence, value. */

import type { Rule, Standing } from '../model/reason.js';
import type { RuleBounds, RuleRoom } from '../model/rulebook.js';
import { begun } from './rule-words.js';
import { PLAIN } from './rules/plain.js';
import { RULE_TITLES } from './rules/titles.js';
import { PLAIN_NAMES, sayInput } from './say-figures.js';
import { coachSaying } from './say-reason.js';
import { NO_BREAK, unbroken } from './spacing.js';
import type { Speech } from './speech.js';

export interface RulebookWords {
  readonly title: string;
  readonly intro: readonly string[];
  readonly rooms: Readonly<Record<RuleRoom, { readonly head: string; readonly about: string }>>;
  readonly contents: string;
  readonly value: string;
  readonly from: string;
  readonly standing: Readonly<Record<Standing, string>>;
  readonly lookedAt: string;
  readonly own: string;
  readonly because: (value: string, reason: string) => string;
  readonly mayBeSet: string;
  /** `floor-alone in rules.md, from 10 (1 rep) to 60 (6 reps)`: as it is written, and as it is said. */
  readonly bounds: (id: string, least: string, most: string) => string;
}

const englishRulebook: RulebookWords = {
  title: 'The rulebook',
  intro: [
    'Every rule the planner goes by: what it decides, its value, and where that comes from. A value from practice is a habit of the trade, and is called that.',
    'No rule here stands above a doctor, a midwife, a physiotherapist, or local rules on who may prescribe exercise.',
  ],
  rooms: {
    screening: {
      head: 'Whom a plan is made for',
      about: 'What is asked first, and what then holds for the whole plan.',
    },
    versions: { head: 'Which exercise', about: 'Versions, cautions, the room, and what must have been seen first.' },
    rows: { head: 'Where a row begins, and how hard it is', about: 'Tests, sides, reserve and gain.' },
    sessions: { head: 'When, in what order, how long', about: 'Dates, sets, minutes, warm-up and cool-down.' },
    walk: {
      head: 'How the weeks climb',
      about: 'Reps first, then load, tempo or version: one right next step each time.',
    },
    ladder: {
      head: 'Where no reps to failure are counted',
      about: 'Swings, holds, carries, bands and breath: rung by rung.',
    },
    history: {
      head: 'What came back, and what was seen',
      about:
        'Marks made at home, pain, and what the coach saw: how they shape the next plan. Care goes before what was earned.',
    },
    audit: { head: 'The block as a whole', about: 'What the coach is told of a finished plan. It changes nothing.' },
    review: {
      head: 'The weekly review',
      about: 'What is proposed to the coach when marks have come back. It changes nothing by itself.',
    },
  },
  contents: 'In this book',
  value: 'Value',
  from: 'From',
  standing: {
    published: 'As published',
    derived: 'Worked out from',
    adapted: 'Adapted from',
    practice: 'Common practice, no source',
  },
  lookedAt: 'Looked at',
  own: 'Here instead',
  because: (value, reason) => `${value}: ${reason}`,
  mayBeSet: 'The coach may set',
  bounds: (id, least, most) => `${id} in rules.md, from ${least} to ${most}`,
};

/** English until another language has them. */
export const sayRulebookWords = (_language: string): RulebookWords => englishRulebook;

/** Words of two parts that an id cannot tell from two words. */
const JOINED = /\b(warm up|cool down|sign off|put down|re plating|new stage|one leg)\b/g;

/** `Seconds a rep`: from the rule's name, where no better one is written down. */
export function sayRuleTitle(id: string): string {
  const written = RULE_TITLES[id];
  if (written !== undefined) return written;
  const bare = id.replace(/^(walk|ladder|audit)-/, '').replaceAll('-', ' ');
  return begun(bare.replace(JOINED, (words) => words.replace(' ', '-')));
}

export const inForce = ({ value, overridden }: Rule): number => overridden?.value ?? value;

/** Units that measure; what any other unit counts is there or not, and says nothing unless it may be set. */
const MEASURED: ReadonlySet<string> = new Set([
  ...['s', 'tenths of a second', 'minutes', 'days', 'weeks', 'years', 'percentile', 'mm', 'mmHg', 'g', 'falls'],
  ...['reps', 'tenths', 'sets', 'per-mille', 'per-ten-thousand', 'loads', 'sessions', 'exercises'],
]);

/** As a person says it; empty where the rule has none, but stands or falls as a whole. */
export function sayRuleValue(rule: Rule, value: number, bounds: RuleBounds | null, speech: Speech): string {
  if (bounds === null && (value === 0 || !MEASURED.has(rule.unit))) return '';
  if (rule.unit === 'yes or no') return value === 0 ? 'no' : 'yes';
  const said = sayInput({ name: rule.id, value, unit: rule.unit }, PLAIN_NAMES, speech);
  if (rule.id === 'rpe-to-reserve' || (rule.unit !== 'tenths' && rule.unit !== 'reps')) return said;
  return unbroken(`${said} ${said === '1' ? 'rep' : 'reps'}`);
}

/** What a rule decides, with the value in force; empty for one that has no words. */
export function sayRule(rule: Rule, speech: Speech): string {
  const value = sayInput({ name: 'value', value: inForce(rule), unit: rule.unit }, PLAIN_NAMES, speech);
  const figure = (name: string): string => (name === 'value' ? value : '');
  return PLAIN[rule.id]?.(figure) ?? coachSaying(rule.id)?.(figure) ?? '';
}

/** As it is written in `rules.md`, and as it is said where that is not the same figure. */
export function sayBound(rule: Rule, value: number, bounds: RuleBounds, speech: Speech): string {
  const said = sayRuleValue(rule, value, bounds, speech);
  return said.startsWith(`${value}${NO_BREAK}`) ? said : `${value} (${said})`;
}

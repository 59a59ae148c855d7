/** What the plan tells its client of the whole block, of a session, or of one row in it. */
import type { WeekText } from '../model/booklet.js';
import type { Finding } from '../model/plan.js';
import { SIGNS_TO_STOP } from '../words/client-reason-words.js';
import { sayToClient } from '../words/say-to-client.js';
import type { Subject } from './subject.js';

/** What belongs with the signs to stop at, of the whole block. */
export const signsFor = (subject: Subject): readonly string[] =>
  once(clientFindings(subject).filter(({ rule }) => SIGNS_TO_STOP.has(rule)));

/** What else holds all the while: to be minded before anything else. */
export const alwaysFound = (subject: Subject): readonly string[] =>
  once(blockFindings(subject).filter(({ weeks }) => isAlways(subject, weeks)));

/** Of some weeks of the block, each with its weeks. */
export const foundInWeeks = (subject: Subject): readonly Pick<Found, 'weeks' | 'text'>[] =>
  blockFindings(subject).filter(({ weeks }) => !isAlways(subject, weeks));

/** Of a session, or of a row in it: a sentence for each week. */
export function findingsIn(subject: Subject, { session, row }: Pick<Finding, 'session' | 'row'>): readonly WeekText[] {
  const said = clientFindings(subject)
    .filter((found) => found.session === session && found.row === row)
    .flatMap(({ weeks, text }) => weeks.map((week) => ({ week, text })));
  return [...new Map(said.map((one) => [`${one.week} ${one.text}`, one])).values()];
}

interface Found extends Pick<Finding, 'rule' | 'weeks'> {
  readonly session: Finding['session'];
  readonly row: Finding['row'];
  readonly text: string;
}

const once = (found: readonly Found[]): readonly string[] => [...new Set(found.map(({ text }) => text))];

/** No week named is every week. */
const isAlways = ({ plan }: Subject, weeks: readonly number[]): boolean =>
  weeks.length === 0 || weeks.length === plan.weeks.length;

const blockFindings = (subject: Subject): readonly Found[] =>
  clientFindings(subject).filter(({ session, rule }) => session === undefined && !SIGNS_TO_STOP.has(rule));

function clientFindings({ plan, speech, names }: Subject): readonly Found[] {
  return plan.findings
    .filter(({ audience }) => audience === 'client')
    .map(({ rule, session, row, weeks, reason }) => ({
      rule,
      session,
      row,
      weeks,
      text: sayToClient(reason, speech, names),
    }))
    .filter(({ text }) => text !== '');
}

/** The account a coach asks for, as plain text: each number, the rule behind it, and why not the next one up. */

import type { Plan } from '../model/plan.js';
import { type CoachSpeech, coachSpeechOf } from './coach-speech.js';
import { sayDate, sayFullDate } from './say-date.js';
import { sayTenths } from './say-dose.js';
import { plainSpaces } from './spacing.js';
import { tellWhy } from './tell-why.js';
import { type Called, calledById } from './why-account.js';
import type { WhyAsked, WhyItem, WhyNext, WhyReason, WhySession, WhyTest, WhyTree, WhyWeek } from './why-tree.js';

/** Empty where the plan has nothing of what was asked. Spaces are plain ones: it is read in a terminal. */
export function sayWhy(
  plan: Plan,
  asked: WhyAsked = {},
  called: Called = calledById(plan),
  language = 'en-GB',
): string {
  const tree = tellWhy(plan, asked, called, language);
  return tree === null ? '' : sayWhyTree(tree, language);
}

/** A row's test is told once, where the row first comes; what a whole warm-up rests on once in a session. */
interface Printing {
  readonly speech: CoachSpeech;
  readonly tested: Set<string>;
}

export function sayWhyTree(tree: WhyTree, language = 'en-GB'): string {
  const printing: Printing = { speech: coachSpeechOf(language), tested: new Set() };
  const { why } = printing.speech.coach;
  const lines = [
    why.block(tree.client.name, tree.programme.name, sayFullDate(tree.begins, printing.speech)),
    ...tree.breaks.map(({ from, until, cause }) =>
      why.away(sayFullDate(from, printing.speech), sayFullDate(until, printing.speech), cause),
    ),
    ...(tree.stops === null ? [] : [why.stops(sayFullDate(tree.stops.after, printing.speech), tree.stops.because)]),
    '',
    ...tree.weeks.flatMap((week) => week.sessions.flatMap((session) => sessionLines(printing, week, session))),
    ...findingLines(printing, tree),
  ];
  return plainSpaces(lines.join('\n')).trimEnd();
}

function sessionLines(printing: Printing, week: WhyWeek, session: WhySession): readonly string[] {
  const { speech } = printing;
  const { why } = speech.coach;
  const head = why.session(week.week, session.title, sayDate(session.date, speech), session.minutes);
  return [
    week.easy ? `${head}, ${why.easyWeek}` : head,
    ...session.trimmed.flatMap(({ says, reason }) => [`  ${says}`, ...reasonLines(printing, reason)]),
    ...session.items.flatMap((item, at) => itemLines(printing, item, session.items.slice(0, at))),
    '',
  ];
}

/** `before`: what stands earlier in the session. */
function itemLines(printing: Printing, item: WhyItem, before: readonly WhyItem[]): readonly string[] {
  const { why } = printing.speech.coach;
  const where = why.groups[item.group];
  const dose = [`${item.dose.join('; ')}.`, item.effort].filter((part) => part !== '').join(' ');
  return [
    `  ${why.row(where === '' ? item.name : why.within(where, item.name), dose)}`,
    ...(item.rung === undefined || item.rung.of < 2 ? [] : [`    ${why.rung(item.rung.number, item.rung.of)}`]),
    ...(item.capacity === '' ? [] : [`    ${item.capacity}`]),
    ...testLines(printing, item.row, item.test),
    ...item.reasons
      .filter((reason) => where === '' || !before.some((one) => one.group === item.group && saysSo(one, reason)))
      .flatMap((reason) => reasonLines(printing, reason)),
    ...(item.relaxed.length === 0 ? [] : [`    ${why.relaxed(item.relaxed.join(', '))}`]),
    ...item.next.flatMap((next) => nextLines(printing, next)),
  ];
}

const saysSo = ({ reasons }: WhyItem, { rule, says }: WhyReason): boolean =>
  reasons.some((reason) => reason.rule === rule && reason.says === says);

function testLines({ speech, tested }: Printing, row: string, test: WhyTest | null): readonly string[] {
  if (test === null || test.maxima.length === 0 || tested.has(row)) return [];
  tested.add(row);
  const singles = test.maxima.map(({ equation, says }) => `${equation} ${says}`);
  return [`    ${speech.coach.why.maxima(test.set, singles.join(', '))}`];
}

function reasonLines({ speech }: Printing, reason: WhyReason): readonly string[] {
  const { why } = speech.coach;
  return [
    `    ${reason.says}`,
    `      ${why.source(reason.rule, reason.source, why.confidence[reason.confidence])}`,
    ...(reason.own === undefined ? [] : [`      ${why.overridden(reason.own.value, reason.own.reason)}`]),
  ];
}

function nextLines({ speech }: Printing, next: WhyNext): readonly string[] {
  const { why } = speech.coach;
  const asked = why.next(next.option, next.predicted === null ? '' : sayTenths(next.predicted.value));
  // How much more is needed is in the sentence itself where it is counted.
  const counted = next.reasons.some(({ inputs }) => inputs.some(({ name }) => name === 'needed'));
  const answer = [asked, next.says, counted ? '' : (next.unlock ?? '')].filter((part) => part !== '').join(' ');
  const sources = next.reasons.map(({ rule, source, confidence }) =>
    why.source(rule, source, why.confidence[confidence]),
  );
  const bare = next.refusedBy === undefined || sources.length > 0 ? [] : [`[${next.refusedBy}]`];
  return [`    ${answer}`, ...[...sources, ...bare].map((line) => `      ${line}`)];
}

function findingLines({ speech }: Printing, { matters }: WhyTree): readonly string[] {
  const { why } = speech.coach;
  if (matters.length === 0) return [];
  return [
    why.findings,
    ...matters.map(({ asks, says }) => (asks === 'desk' ? `  ${says}` : `  ${why.asks[asks]}: ${says}`)),
  ];
}

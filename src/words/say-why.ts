/** The account a coach asks for, as plain text: each number, the rule and figures behind it, and why not the next one up. */
import type { AllowedOption, Item, Plan, PlanSession, Week } from '../model/plan.js';
import type { Reason } from '../model/reason.js';
import { sayDate, sayFullDate } from './say-date.js';
import { sayEffort, sayTenths } from './say-dose.js';
import { sayDoses } from './say-doses.js';
import { namesIn } from './say-plan.js';
import { type Names, PLAIN_NAMES, sayInput, sayReason, wordsOf } from './say-reason.js';
import { NO_BREAK } from './spacing.js';
import { type Speech, speechOf } from './speech.js';

/** What to account for; all of it where nothing is named. */
export interface WhyAsked {
  readonly week?: number;
  /** A session's id or name, in any case. */
  readonly session?: string;
  /** An exercise's id, a row's id, or a name written with spaces, in any case. */
  readonly exercise?: string;
}

interface Account {
  readonly plan: Plan;
  readonly speech: Speech;
  readonly names: Names;
}

/** Empty where the plan has nothing of what was asked. Spaces are plain ones: it is read in a terminal. */
export function sayWhy(plan: Plan, asked: WhyAsked = {}, language = 'en-GB'): string {
  const account: Account = { plan, speech: speechOf(language), names: namesIn(plan) };
  const sessions = plan.weeks.flatMap((week) =>
    asked.week === undefined || asked.week === week.number
      ? week.sessions.flatMap((session) => aboutSession(account, week, session, asked))
      : [],
  );
  if (sessions.length === 0) return '';
  const { why } = account.speech.words;
  const head = why.block(
    plan.client,
    plan.programme,
    sayFullDate(plan.weeks[0]?.begins ?? plan.starts, account.speech),
  );
  return [head, '', ...sessions, ...findings(account, asked)].join('\n').replaceAll(NO_BREAK, ' ').trimEnd();
}

const same = (a: string, b: string): boolean =>
  a.toLowerCase().replaceAll('-', ' ') === b.trim().toLowerCase().replaceAll('-', ' ');

function aboutSession(account: Account, week: Week, session: PlanSession, asked: WhyAsked): readonly string[] {
  const { why } = account.speech.words;
  if (asked.session !== undefined && !same(session.id, asked.session) && !same(session.name, asked.session)) return [];
  const items = session.groups
    .flatMap((group) => group.items)
    .filter(({ exercise, row }) => {
      const { exercise: wanted } = asked;
      return wanted === undefined || same(exercise, wanted) || same(row, wanted);
    });
  if (items.length === 0) return [];
  const head = why.session(week.number, session.id, sayDate(session.date, account.speech), session.minutes);
  const trims = asked.exercise === undefined ? session.trimmed : [];
  return [
    week.deload ? `${head}, ${why.easyWeek}` : head,
    ...trims.flatMap((trim) => [
      `  ${why.trimmed(account.names.exercise(trim.row), trim.sets, trim.what === 'row')}`,
      ...aboutReason(account, trim.reason),
    ]),
    ...items.flatMap((item) => aboutItem(account, item)),
    '',
  ];
}

/** Grams. Where no load can be derived capacity counts reps alone, and is no mass worth showing. */
const SHOWN_FROM = 1000;

function aboutItem(account: Account, item: Item): readonly string[] {
  const { speech, names } = account;
  const { why } = speech.words;
  const { capacity } = item;
  return [
    `  ${why.row(names.exercise(item.exercise), `${sayDoses(account.plan, item.sets, speech).join('; ')}. ${sayEffort(item.asked.reserve, speech)}`)}`,
    ...(item.sets.some(({ kind }) => kind === 'feeler') ? [`    ${why.feeler}`] : []),
    ...(capacity === null || capacity.grams < SHOWN_FROM
      ? []
      : [
          `    ${why.capacity(
            why.sides[capacity.side],
            PLAIN_NAMES.load(capacity.grams),
            capacity.equation,
            why.confidence[capacity.confidence],
          )}`,
        ]),
    ...reasonsToTell(item).flatMap((reason) => aboutReason(account, reason)),
    ...(item.relaxed.length === 0 ? [] : [`    ${why.relaxed(item.relaxed.join(', '))}`]),
    ...item.allowed.flatMap((option) => aboutNext(account, item, option)),
  ];
}

function aboutReason(account: Account, reason: Reason): readonly string[] {
  const { plan, speech, names } = account;
  const { why } = speech.words;
  const says = sayReason(reason, 'coach', speech, names) || reason.says;
  const rule = plan.rules.find(({ id }) => id === reason.rule);
  const own = rule?.overridden;
  return [
    `    ${says}`,
    ...withInputs(account, reason),
    `      ${why.source(reason.rule, reason.source, why.confidence[reason.confidence])}`,
    ...(own === undefined ? [] : [`      ${why.overridden(`${own.value}`, own.reason)}`]),
  ];
}

/** One of each rule, as for the coach; those that only refuse the next one up are told where it is asked about. */
function reasonsToTell({ reasons, allowed }: Item): readonly Reason[] {
  const refusals = new Set(allowed.map(({ refusedBy }) => refusedBy));
  return reasons.filter(
    ({ rule, audience }, i) =>
      !(audience === 'coach' && refusals.has(rule)) &&
      !reasons.some(
        (other, j) => other.rule === rule && (other.audience === 'coach' ? j !== i && audience === 'client' : j < i),
      ),
  );
}

function aboutNext(account: Account, item: Item, option: AllowedOption): readonly string[] {
  const { plan, speech, names } = account;
  const { why, sets } = speech.words;
  const parts = [
    option.exercise === item.exercise ? '' : names.exercise(option.exercise),
    option.grams > 0 ? names.load(option.grams) : '',
    sets.tempo[option.tempo],
  ].filter((part) => part !== '');
  const what = parts.length === 0 ? names.exercise(option.exercise) : parts.join(', ');
  const head = why.next(what, option.predicted > 0 ? sayTenths(option.predicted) : '');
  const { refusedBy } = option;
  if (refusedBy === undefined) return [`    ${head} ${why.open}`];
  const refusal = item.reasons.find((reason) => reason.rule === refusedBy && isAbout(reason, option));
  const says =
    refusal === undefined ? wordsOf(refusedBy, speech)?.coach(() => '') : sayReason(refusal, 'coach', speech, names);
  const source = refusal?.source ?? plan.rules.find(({ id }) => id === refusedBy)?.source ?? '';
  return [
    `    ${head} ${says ?? refusedBy}`,
    ...(refusal === undefined ? [] : withInputs(account, refusal)),
    `      [${[refusedBy, source].filter((part) => part !== '').join('; ')}]`,
  ];
}

function isAbout({ inputs }: Reason, option: AllowedOption): boolean {
  const value = (name: string) => inputs.find((input) => input.name === name)?.value;
  return (value('exercise') ?? option.exercise) === option.exercise && (value('load') ?? option.grams) === option.grams;
}

function withInputs({ speech, names }: Account, { inputs }: Reason): readonly string[] {
  const said = inputs.flatMap((input) => {
    const figure = sayInput(input, names, speech);
    return figure === '' ? [] : [`${input.name} ${figure}`];
  });
  return said.length === 0 ? [] : [`      ${speech.words.why.with(said.join(', '))}`];
}

function findings({ plan, speech, names }: Account, asked: WhyAsked): readonly string[] {
  const { why, sets } = speech.words;
  const told = plan.findings.filter(({ session, row, weeks }) => {
    if (asked.week !== undefined && weeks.length > 0 && !weeks.includes(asked.week)) return false;
    if (asked.session !== undefined && session !== undefined && !same(session, asked.session)) return false;
    return asked.exercise === undefined || row === undefined || same(row, asked.exercise);
  });
  if (told.length === 0) return [];
  const lines = told.map(({ reason, session, row, weeks }) => {
    const where = [
      session ?? '',
      row === undefined ? '' : names.exercise(row),
      weeks.length === 0 ? '' : sets.weekList(weeks),
    ];
    return `  ${why.finding(where.filter((part) => part !== '').join(', '), sayReason(reason, 'coach', speech, names) || reason.says)}`;
  });
  return [why.findings, ...lines];
}

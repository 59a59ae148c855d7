/** The account a coach asks for, as plain text: each number, the rule behind it, and why not the next one up. */
import type { AllowedOption, Item, Plan, PlanSession, PlanSet, Week } from '../model/plan.js';
import type { Reason } from '../model/reason.js';
import { sayDate, sayFullDate } from './say-date.js';
import { sayItemEffort, sayTenths } from './say-dose.js';
import { sayDoses } from './say-doses.js';
import { namesIn, sayCapacity } from './say-plan.js';
import { type Names, PLAIN_NAMES, sayReason, wordsOf } from './say-reason.js';
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

/** How those a plan knows by id are called. */
export interface Called {
  readonly client: string;
  readonly programme: string;
  /** As a heading has it: `Goblet squat`. */
  readonly exercise: (id: string) => string;
}

interface Account {
  readonly plan: Plan;
  readonly speech: Speech;
  readonly called: Called;
  /** As they stand inside a sentence. */
  readonly names: Names;
}

/** Of a plan alone, without the library: ids with spaces. */
const calledById = (plan: Plan): Called => ({
  client: plan.client,
  programme: plan.programme,
  exercise: PLAIN_NAMES.exercise,
});

/** Empty where the plan has nothing of what was asked. Spaces are plain ones: it is read in a terminal. */
export function sayWhy(
  plan: Plan,
  asked: WhyAsked = {},
  called: Called = calledById(plan),
  language = 'en-GB',
): string {
  const speech = speechOf(language);
  const exercise = (id: string): string => speech.words.sets.inSentence(called.exercise(id));
  const account: Account = { plan, speech, called, names: { ...namesIn(plan), exercise } };
  const sessions = plan.weeks.flatMap((week) =>
    asked.week === undefined || asked.week === week.number
      ? week.sessions.flatMap((session) => aboutSession(account, week, session, asked))
      : [],
  );
  if (sessions.length === 0) return '';
  const { why } = speech.words;
  const head = why.block(called.client, called.programme, sayFullDate(plan.weeks[0]?.begins ?? plan.starts, speech));
  return [head, '', ...sessions, ...findings(account, asked)].join('\n').replaceAll(NO_BREAK, ' ').trimEnd();
}

const plain = (text: string): string => text.trim().toLowerCase().replaceAll('-', ' ');
const same = (a: string, b: string): boolean => plain(a) === plain(b);

/** By id or by the name it goes by. */
const isCalled = ({ called }: Account, id: string, wanted: string): boolean =>
  same(id, wanted) || same(called.exercise(id), wanted);

function aboutSession(account: Account, week: Week, session: PlanSession, asked: WhyAsked): readonly string[] {
  const { why, booklet } = account.speech.words;
  if (asked.session !== undefined && !same(session.id, asked.session) && !same(session.name, asked.session)) return [];
  const items = session.groups
    .flatMap((group) => group.items)
    .filter(({ exercise, row }) => {
      const { exercise: wanted } = asked;
      return wanted === undefined || isCalled(account, exercise, wanted) || same(row, wanted);
    });
  if (items.length === 0) return [];
  const title = booklet.sessionTitle(session.id, session.name);
  const head = why.session(week.number, title, sayDate(session.date, account.speech), session.minutes);
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

function aboutItem(account: Account, item: Item): readonly string[] {
  const { plan, speech, called } = account;
  const { why } = speech.words;
  const doses = sayDoses(plan, item.sets, speech).join('; ');
  const capacity = sayCapacity(plan, item, speech);
  return [
    `  ${why.row(called.exercise(item.exercise), `${doses}. ${sayItemEffort(item, speech)}`)}`,
    ...(capacity === '' ? [] : [`    ${capacity}`]),
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
    `      ${why.source(reason.rule, reason.source, why.confidence[reason.confidence])}`,
    ...(own === undefined ? [] : [`      ${why.overridden(`${own.value}`, own.reason)}`]),
  ];
}

/** One of each rule, as for the coach; those that only refuse an option are told where it is asked about. */
function reasonsToTell(item: Item): readonly Reason[] {
  const { reasons, allowed } = item;
  return reasons.filter((reason) => {
    if (allowed.some((option) => refuses(reason, item, option))) return false;
    const ofRule = reasons.filter(({ rule }) => rule === reason.rule);
    return (
      reason.audience === 'coach' || (reason === ofRule[0] && !ofRule.some(({ audience }) => audience === 'coach'))
    );
  });
}

/** Whether a reason does nothing but say why this option is not what the work is done with. */
const refuses = (reason: Reason, item: Item, option: AllowedOption): boolean =>
  reason.audience === 'coach' &&
  (reason.rule === option.refusedBy || (standingOf(item, option) === 'tried' && isAbout(reason, option)));

function isAbout({ inputs }: Reason, option: AllowedOption): boolean {
  const value = (name: string) => inputs.find((input) => input.name === name)?.value;
  return (
    value('exercise') === option.exercise &&
    (value('load') ?? 0) === option.grams &&
    (value('tempo') ?? 'normal') === option.tempo
  );
}

type Standing = 'taken' | 'if-earned' | 'tried' | 'open' | 'refused';

/** What becomes of an option this week. */
function standingOf(item: Item, option: AllowedOption): Standing {
  if (option.refusedBy !== undefined) return 'refused';
  const meant = ({ exercise, load }: PlanSet): boolean =>
    (exercise ?? item.exercise) === option.exercise && (load?.grams ?? 0) === option.grams;
  if (item.sets.some((set) => set.kind === 'trial' && meant(set))) return 'tried';
  const work = item.sets.filter((set) => set.kind === 'work' && meant(set) && item.tempo === option.tempo);
  if (work.length === 0) return 'open';
  return work.some(({ otherwise }) => otherwise !== undefined) ? 'if-earned' : 'taken';
}

function aboutNext(account: Account, item: Item, option: AllowedOption): readonly string[] {
  const { plan, speech, names } = account;
  const { why, sets } = speech.words;
  const standing = standingOf(item, option);
  if (standing === 'taken') return [];
  const parts = [
    option.exercise === item.exercise ? '' : names.exercise(option.exercise),
    option.grams > 0 ? names.load(option.grams) : '',
    sets.tempo[option.tempo],
  ].filter((part) => part !== '');
  const what = parts.length === 0 ? names.exercise(option.exercise) : parts.join(', ');
  const head = `    ${why.next(what, option.predicted > 0 ? sayTenths(option.predicted) : '')}`;
  const refusals = item.reasons.filter((reason) => refuses(reason, item, option) && isAbout(reason, option));
  const told = refusals.map((refusal) => sayReason(refusal, 'coach', speech, names)).join(' ');
  const ruled = refusals.map(
    ({ rule, source, confidence }) => `      ${why.source(rule, source, why.confidence[confidence])}`,
  );
  if (standing !== 'refused') {
    const says = standing === 'tried' ? why.tried : standing === 'if-earned' ? why.ifEarned : why.open;
    return [`${head} ${[says, told].filter((part) => part !== '').join(' ')}`, ...ruled];
  }
  const { refusedBy = '' } = option;
  if (refusals.length > 0) return [`${head} ${told}`, ...ruled];
  const source = plan.rules.find(({ id }) => id === refusedBy)?.source ?? '';
  return [
    `${head} ${wordsOf(refusedBy, speech)?.coach(() => '') ?? refusedBy}`,
    `      [${[refusedBy, source].filter((part) => part !== '').join('; ')}]`,
  ];
}

function findings({ plan, speech, names }: Account, asked: WhyAsked): readonly string[] {
  const { why, sets, booklet } = speech.words;
  const told = plan.findings.filter(({ session, row, weeks }) => {
    if (asked.week !== undefined && weeks.length > 0 && !weeks.includes(asked.week)) return false;
    if (asked.session !== undefined && session !== undefined && !same(session, asked.session)) return false;
    return asked.exercise === undefined || row === undefined || same(row, asked.exercise);
  });
  if (told.length === 0) return [];
  const lines = told.map(({ reason, session, row, weeks }) => {
    const where = [
      session === undefined ? '' : booklet.sessionTitle(session, ''),
      row === undefined ? '' : names.exercise(row),
      weeks.length === 0 ? '' : sets.weekList(weeks),
    ].filter((part) => part !== '');
    const [first = '', ...rest] = where;
    const begun = [first.slice(0, 1).toUpperCase() + first.slice(1), ...rest].join(', ');
    return `  ${why.finding(begun, sayReason(reason, 'coach', speech, names) || reason.says)}`;
  });
  return [why.findings, ...lines];
}

/** Makes the tree of reasons of a plan, of all of it or of what is asked. It leaves printing to `say-why.ts`. */
import type { Group, Item, Plan, PlanSession, PlanSet, Trim, Week } from '../model/plan.js';
import type { Reason } from '../model/reason.js';
import { gatherFindings, plansBy } from './gather-findings.js';
import { sayItemEffort, sayTenths } from './say-dose.js';
import { sayDoses } from './say-doses.js';
import { findingsOf } from './say-findings.js';
import { sayCapacity, sayMass } from './say-plan.js';
import { type Account, accountOf, type Called, calledById, tellReason, withinItem } from './why-account.js';
import { refuses, tellNext } from './why-next.js';
import type {
  WhyAsked,
  WhyFinding,
  WhyItem,
  WhyMatter,
  WhySession,
  WhyTest,
  WhyTree,
  WhyTrim,
  WhyWeek,
} from './why-tree.js';

/** `null` where the plan has nothing of what was asked. */
export function tellWhy(
  plan: Plan,
  asked: WhyAsked = {},
  called: Called = calledById(plan),
  language = 'en-GB',
): WhyTree | null {
  const account = accountOf(plan, called, language);
  const weeks = plan.weeks
    .filter(({ number }) => asked.week === undefined || asked.week === number)
    .map((week) => tellWeek(account, week, asked))
    .filter(({ sessions }) => sessions.length > 0);
  if (weeks.length === 0) return null;
  return {
    client: { id: plan.client, name: called.client },
    programme: { id: plan.programme, name: called.programme },
    edition: plan.edition,
    begins: plan.weeks[0]?.begins ?? plan.starts,
    breaks: plan.inputs.breaks,
    stops: plan.stops ?? null,
    weeks,
    findings: tellFindings(account, asked),
    matters: tellMatters(account, asked),
  };
}

const plain = (text: string): string => text.trim().toLowerCase().replaceAll('-', ' ');
const same = (a: string, b: string): boolean => plain(a) === plain(b);

/** By id or by the name it goes by. */
const isCalled = ({ called }: Account, id: string, wanted: string): boolean =>
  same(id, wanted) || same(called.exercise(id), wanted);

function tellWeek(account: Account, week: Week, asked: WhyAsked): WhyWeek {
  const { session: wanted } = asked;
  const chosen = week.sessions.filter(({ id, name }) => wanted === undefined || same(id, wanted) || same(name, wanted));
  return {
    week: week.number,
    begins: week.begins,
    easy: week.deload,
    sessions: chosen.map((session) => tellSession(account, session, asked)).filter(({ items }) => items.length > 0),
  };
}

function tellSession(account: Account, session: PlanSession, asked: WhyAsked): WhySession {
  const { exercise: wanted } = asked;
  const isWanted = ({ exercise, row }: Item): boolean =>
    wanted === undefined || isCalled(account, exercise, wanted) || same(row, wanted);
  return {
    id: session.id,
    name: session.name,
    title: account.speech.words.booklet.sessionTitle(session.id, session.name),
    date: session.date,
    minutes: session.minutes,
    trimmed: wanted === undefined ? session.trimmed.map((trim) => tellTrim(account, trim)) : [],
    items: session.groups.flatMap(({ kind, items }) =>
      items.filter(isWanted).map((item) => tellItem(account, kind, item)),
    ),
  };
}

function tellTrim(account: Account, { row, sets, what, reason }: Trim): WhyTrim {
  const says = account.speech.coach.why.trimmed(account.names.exercise(row), sets, what === 'row');
  return { row, says, reason: tellReason(account, reason) };
}

export function tellItem(of: Account, group: Group['kind'], item: Item): WhyItem {
  const account = withinItem(of, item);
  const { plan, speech, called } = account;
  // What stands under a heading of its own need not be called warm-up once more.
  const apart = group === 'warm-up' || group === 'cool-down';
  return {
    id: item.id,
    row: item.row,
    exercise: item.exercise,
    name: called.exercise(item.exercise),
    way: item.way,
    group,
    dose: sayDoses(plan, apart ? item.sets.map((set): PlanSet => ({ ...set, kind: 'work' })) : item.sets, speech),
    effort: sayItemEffort(item, speech),
    ...(item.rung === undefined ? {} : { rung: item.rung }),
    capacity: sayCapacity(plan, item, speech),
    test: tellTest(account, item),
    reasons: reasonsToTell(item).map((reason) => tellReason(account, reason)),
    relaxed: item.relaxed,
    next: item.allowed.flatMap((option) => tellNext(account, item, option) ?? []),
  };
}

/** Grams. Where no load can be derived capacity counts reps alone, and there is no load to show. */
const SHOWN_FROM = 1000;

function tellTest({ plan, speech, called }: Account, item: Item): WhyTest | null {
  const strand = plan.inputs.strands.find(({ id }) => item.id.startsWith(`${id}/`));
  const capacity = strand?.capacity ?? null;
  if (item.capacity === null || capacity === null || capacity.resisted < SHOWN_FROM) return null;
  const { resisted, reps, side } = capacity;
  const maxima = called.maxima?.(resisted, reps / 10) ?? [];
  return {
    set: speech.coach.why.testSet(sayTenths(reps), sayMass(plan, resisted)),
    resisted: { value: resisted, unit: 'g' },
    reps: { value: reps, unit: 'tenths' },
    side,
    maxima: maxima.map(({ equation, grams }) => ({
      equation,
      single: { value: grams, unit: 'g' },
      says: sayMass(plan, grams),
    })),
  };
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

/** Whether something found is about what was asked. */
function isAsked(
  asked: WhyAsked,
  { session, row, weeks }: { readonly session?: string; readonly row?: string; readonly weeks: readonly number[] },
): boolean {
  if (asked.week !== undefined && weeks.length > 0 && !weeks.includes(asked.week)) return false;
  if (asked.session !== undefined && session !== undefined && !same(session, asked.session)) return false;
  return asked.exercise === undefined || row === undefined || same(row, asked.exercise);
}

function tellFindings(account: Account, asked: WhyAsked): readonly WhyFinding[] {
  const { plan, speech, names } = account;
  const { sets, booklet } = speech.words;
  return plan.findings
    .filter((finding) => isAsked(asked, finding))
    .map(({ reason, session, row, weeks }) => {
      const where = [
        session === undefined ? '' : booklet.sessionTitle(session, ''),
        row === undefined ? '' : names.exercise(row),
        weeks.length === 0 ? '' : sets.weekList(weeks),
      ].filter((part) => part !== '');
      return {
        where: where.join(', '),
        ...(session === undefined ? {} : { session }),
        ...(row === undefined ? {} : { row }),
        weeks,
        reason: tellReason(account, reason),
      };
    });
}

/** What was cut for time stands with its session. */
const CUTS: ReadonlySet<string> = new Set(['minutes-cap', 'row-left-out']);

function tellMatters(account: Account, asked: WhyAsked): readonly WhyMatter[] {
  const found = findingsOf(account).filter((finding) => isAsked(asked, finding) && !CUTS.has(finding.matter));
  return gatherFindings(found, plansBy([account.plan]), account.speech).map(({ asks, findings, says }) => ({
    asks,
    rule: findings[0]?.rule ?? '',
    says,
  }));
}

/** Findings that are one matter told once, most pressing first, with the rows and weeks they concern. Prints nothing. */
import type { Plan } from '../model/plan.js';
import { type Asks, OF_THE_STUDIO } from './matters.js';
import { begun, midway } from './rule-words.js';
import { type Told, togetherOf } from './rules/together.js';
import type { Finding } from './say-findings.js';
import { plainSpaces } from './spacing.js';
import type { Speech } from './speech.js';

export interface Gathered {
  readonly asks: Asks;
  readonly rank: number;
  readonly matter: string;
  /** A sentence that names its rows and weeks. */
  readonly says: string;
  /** What it was gathered from, in the plan's order; one at least. */
  readonly findings: readonly Finding[];
}

/** When each client trains: what holds in all of it needs no weeks beside it. */
export type Plans = ReadonlyMap<string, Plan>;

export const plansBy = (plans: readonly Plan[]): Plans => new Map(plans.map((plan) => [plan.client, plan]));

/** By rank, then in the order found. */
export function gatherFindings(findings: readonly Finding[], plans: Plans, speech: Speech): readonly Gathered[] {
  const groups = new Map<string, Finding[]>();
  for (const one of findings) {
    const together = togetherOf(one.matter);
    const alike = together === undefined ? one.says : (together.alike?.(one.figure) ?? '');
    const name = `${one.matter}\n${alike}`;
    groups.set(name, [...(groups.get(name) ?? []), one]);
  }
  const gathered = [...groups.values()].flatMap((own): readonly Gathered[] => {
    const [first] = own;
    if (first === undefined) return [];
    const { asks, rank, matter } = first;
    return [{ asks, rank, matter, says: sayTogether(own, first, plans, speech), findings: own }];
  });
  return gathered.sort((a, b) => a.rank - b.rank);
}

/** What is told once for several clients, and what is each client's own. */
export function apart(findings: readonly Finding[]): {
  readonly studio: readonly Finding[];
  readonly own: readonly Finding[];
} {
  const clients = (of: string): number =>
    new Set(findings.flatMap(({ matter, client }) => (matter === of ? [client] : []))).size;
  const shared = new Set([...OF_THE_STUDIO].filter((matter) => clients(matter) > 1));
  return {
    studio: findings.filter(({ matter }) => shared.has(matter)),
    own: findings.filter(({ matter }) => !shared.has(matter)),
  };
}

function sayTogether(own: readonly Finding[], first: Finding, plans: Plans, speech: Speech): string {
  const together = togetherOf(first.matter);
  if (together !== undefined) return plainSpaces(together.says(byRow(own).map((rows) => tell(rows, plans, speech))));
  const where = [...new Set(byRow(own).map(called))].filter((name) => name !== '').join(', ');
  const weeks = weeksOf(own, plans, speech);
  const before = [where, weeks].filter((part) => part !== '').join(', ');
  return plainSpaces(before === '' ? first.says : `${begun(before)}: ${midway(first.says)}`);
}

/** Those of one client and row that say the same, whatever their session. */
function byRow(own: readonly Finding[]): readonly (readonly [Finding, ...Finding[]])[] {
  const rows = new Map<string, [Finding, ...Finding[]]>();
  for (const one of own) {
    const name = JSON.stringify([one.client, one.row ?? one.session ?? '', one.says]);
    const before = rows.get(name);
    if (before === undefined) rows.set(name, [one]);
    else before.push(one);
  }
  return [...rows.values()];
}

/** `goblet squat (A and C)`, or `session A` where it is about no row. */
function called(rows: readonly [Finding, ...Finding[]]): string {
  const [{ exercise }] = rows;
  const sessions = sessionsOf(rows);
  if (sessions === '') return exercise ?? '';
  return exercise === undefined ? `session ${sessions}` : `${exercise} (${sessions})`;
}

const sessionsOf = (rows: readonly Finding[]): string =>
  [...new Set(rows.flatMap(({ session }) => session ?? []))].join(' and ');

function tell(rows: readonly [Finding, ...Finding[]], plans: Plans, speech: Speech): Told {
  const [{ client, exercise = '', says, figure, values, refused }] = rows;
  const weeks = weeksOf(rows, plans, speech);
  return { client, exercise, sessions: sessionsOf(rows), weeks, says, figure, values, refused };
}

/** Empty where they hold in every week of work in which their sessions are trained. */
function weeksOf(own: readonly Finding[], plans: Plans, { words }: Speech): string {
  const always = own.every(({ client, session, weeks }) => {
    const trained = (plans.get(client)?.weeks ?? []).filter(
      ({ deload, sessions }) => !deload && (session === undefined || sessions.some(({ id }) => id === session)),
    );
    return weeks.length === 0 || (trained.length > 0 && trained.every(({ number }) => weeks.includes(number)));
  });
  if (always) return '';
  const weeks = [...new Set(own.flatMap(({ weeks: during }) => during))].sort((a, b) => a - b);
  return words.sets.weekList(weeks);
}

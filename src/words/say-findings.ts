/**
 * What is worth knowing of a plan that stops nothing, as records: what the engine found, what was cut for time, and an
 * exercise that comes twice in one session. Each knows what it asks of the coach. Telling those alike together is left
 * to `gather-findings.ts`, every figure's reason to `say-why.ts`.
 */
import { compareIds } from '../model/identity.js';
import type { Plan, PlanSession, Trim } from '../model/plan.js';
import type { Reason } from '../model/reason.js';
import type { Library } from '../model/studio.js';
import { type Asks, type FoundMatter, placeOf } from './matters.js';
import type { Figure } from './rule-words.js';
import { figuresOf, namesOf, PLAIN_NAMES, sayInput } from './say-figures.js';
import { sayReason } from './say-reason.js';
import { plainSpaces } from './spacing.js';
import { type Account, accountOf, refusedFor, whyNotWritten } from './why-account.js';

/** As programs read it. */
export interface SaidFinding {
  readonly client: string;
  /** Absent where it is about the whole block. */
  readonly session?: string;
  /** As the library names it; absent where it is about no exercise. */
  readonly exercise?: string;
  readonly weeks: readonly number[];
  /** The rule behind it, or `twice-in-a-session`, which is read from the plan itself. */
  readonly rule: string;
  readonly asks: Asks;
  readonly says: string;
}

/** One finding with all that a sentence about several needs. */
export interface Finding extends SaidFinding {
  /** What it is ranked and told together by: its rule, or what the plan itself shows. */
  readonly matter: string;
  readonly rank: number;
  readonly row?: string;
  readonly figure: Figure;
  readonly values: (name: string) => readonly string[];
  readonly refused: readonly string[];
  /** Absent where no rule found it. */
  readonly reason?: Reason;
}

/** The account of a plan by the names in a library. */
export function accountIn(plan: Plan, library: Library): Account {
  const exercises = new Map<string, string>(library.exercises.map(({ id, name }) => [id, name]));
  const called = {
    client: plan.client,
    programme: library.programmes.find(({ id }) => id === plan.programme)?.name ?? plan.programme,
    exercise: (id: string): string => exercises.get(id) ?? PLAIN_NAMES.exercise(id),
  };
  return accountOf(plan, called, library.studio.language);
}

/** By the plan's own order: of the whole block, then row by row, then what was cut, then what comes twice. */
export function findingsOf(account: Account): readonly Finding[] {
  const { plan, names } = account;
  const found: readonly Found[] = [...ofEngine(account), ...trimmed(account), ...twice(account)];
  return found.map(({ session, row, weeks, rule, matter = rule, says, reason }): Finding => {
    const inputs = reason?.inputs ?? [];
    const within = namesOf(inputs, names);
    return {
      client: plan.client,
      ...(session === undefined ? {} : { session }),
      ...(row === undefined ? {} : { row, exercise: names.exercise(row) }),
      weeks,
      rule,
      matter,
      ...placeOf(matter),
      says: plainSpaces(says),
      figure: reason === undefined ? () => '' : figuresOf(reason, account.speech, names),
      values: (name) => {
        const own = inputs.filter((input) => input.name === name);
        return [...new Set(own.map((input) => sayInput(input, within, account.speech)))];
      },
      refused: reason === undefined ? [] : refusedFor(reason),
      ...(reason === undefined ? {} : { reason }),
    };
  });
}

/** As programs read them. */
export function recordsOf(findings: readonly Finding[]): readonly SaidFinding[] {
  return findings.map(({ client, session, exercise, weeks, rule, asks, says }) => ({
    client,
    ...(session === undefined ? {} : { session }),
    ...(exercise === undefined ? {} : { exercise }),
    weeks,
    rule,
    asks,
    says,
  }));
}

interface Found {
  readonly session?: string;
  readonly row?: string;
  readonly weeks: readonly number[];
  readonly rule: string;
  readonly matter?: FoundMatter;
  readonly says: string;
  readonly reason?: Reason;
}

/** What the client is told besides is not told the coach again. */
function ofEngine({ plan, speech, names }: Account): readonly Found[] {
  const ofCoach = new Set(plan.findings.filter(({ audience }) => audience === 'coach').map(({ rule }) => rule));
  return plan.findings
    .filter(({ audience, rule }) => audience === 'coach' || !ofCoach.has(rule))
    .map(({ session, row, weeks, rule, reason }) => ({
      ...(session === undefined ? {} : { session }),
      ...(row === undefined ? {} : { row }),
      weeks,
      rule,
      says: [sayReason(reason, 'coach', speech, names) || reason.says, whyNotWritten(reason, names)].join(''),
      reason,
    }));
}

/** Findings that differ in their weeks alone are one. */
function acrossWeeks(found: readonly Found[]): readonly Found[] {
  const together = new Map<string, Found>();
  for (const one of found) {
    const name = JSON.stringify([one.session, one.row, one.rule, one.says]);
    const weeks = new Set([...(together.get(name)?.weeks ?? []), ...one.weeks]);
    together.set(name, { ...one, weeks: [...weeks].sort((a, b) => a - b) });
  }
  return [...together.values()];
}

const sessionsOf = ({ weeks }: Plan): readonly { readonly week: number; readonly session: PlanSession }[] =>
  weeks.flatMap(({ number: week, sessions }) => sessions.map((session) => ({ week, session })));

const CUT: Readonly<Record<Trim['what'], FoundMatter>> = { row: 'row-left-out', sets: 'minutes-cap' };

function trimmed({ plan, speech, names }: Account): readonly Found[] {
  const cuts = sessionsOf(plan).flatMap(({ week, session }) =>
    session.trimmed.map(({ row, what, sets, reason }): Found => {
      const says = speech.coach.why.trimmed(names.exercise(row), sets, what === 'row');
      return { session: session.id, row, weeks: [week], rule: reason.rule, matter: CUT[what], says, reason };
    }),
  );
  return acrossWeeks(cuts);
}

/** A version chosen for one row may be what another row has already. */
function twice({ plan, names }: Account): readonly Found[] {
  const found = sessionsOf(plan).flatMap(({ week, session }) => {
    const work = session.groups.filter(({ kind }) => kind === 'straight' || kind === 'circuit');
    const items = work.flatMap((group) => group.items);
    const exercises = [...new Set(items.map(({ exercise }) => exercise))].sort(compareIds);
    return exercises.flatMap((exercise): readonly Found[] => {
      const rows = new Set(items.filter((item) => item.exercise === exercise).map(({ row }) => row));
      if (rows.size < 2) return [];
      const listed = [...rows].map((row) => names.exercise(row)).join(' and ');
      const says = `It comes ${rows.size === 2 ? 'twice' : `${rows.size} times`} in this session, in the rows ${listed}.`;
      return [{ session: session.id, row: exercise, weeks: [week], rule: 'twice-in-a-session', says }];
    });
  });
  return acrossWeeks(found);
}

/**
 * What is worth knowing of a plan that stops nothing, a line each, for whoever checks or builds it: what the engine
 * found, what was cut for time, and an exercise that comes twice in one session. Every figure's reason is left to `say-why.ts`.
 */
import { compareIds } from '../model/identity.js';
import type { Plan, PlanSession } from '../model/plan.js';
import type { Library } from '../model/studio.js';
import { namesIn } from './say-plan.js';
import { type Names, sayReason } from './say-reason.js';
import { NO_BREAK } from './spacing.js';
import { type Speech, speechOf } from './speech.js';
import { whyNotWritten } from './why-account.js';

export interface SaidFinding {
  readonly client: string;
  /** Absent where it is about the whole block. */
  readonly session?: string;
  /** As the library names it; absent where it is about no exercise. */
  readonly exercise?: string;
  readonly weeks: readonly number[];
  /** The rule behind it, or `twice-in-a-session`, which is read from the plan itself. */
  readonly rule: string;
  readonly says: string;
}

/** By the plan's own order: of the whole block, then row by row, then what was cut, then what comes twice. */
export function findingsOf(plan: Plan, library: Library): readonly SaidFinding[] {
  const speech = speechOf(library.studio.language);
  const called = new Map<string, string>(library.exercises.map(({ id, name }) => [id, name]));
  const inSentence = (id: string): string => speech.words.sets.inSentence(called.get(id) ?? id.replaceAll('-', ' '));
  const names: Names = { ...namesIn(plan), exercise: inSentence };
  const found: readonly Found[] = [
    ...plan.findings.map(({ reason, ...finding }) => ({
      ...finding,
      says: [sayReason(reason, 'coach', speech, names) || reason.says, whyNotWritten(reason, names)].join(''),
    })),
    ...trimmed(plan, speech, names),
    ...twice(plan, names),
  ];
  return found.map(({ session, row, weeks, rule, says }) => ({
    client: plan.client,
    ...(session === undefined ? {} : { session }),
    ...(row === undefined ? {} : { exercise: names.exercise(row) }),
    weeks,
    rule,
    says: says.replaceAll(NO_BREAK, ' '),
  }));
}

interface Found {
  readonly session?: string;
  readonly row?: string;
  readonly weeks: readonly number[];
  readonly rule: string;
  readonly says: string;
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

function trimmed(plan: Plan, { words }: Speech, names: Names): readonly Found[] {
  const cuts = sessionsOf(plan).flatMap(({ week, session }) =>
    session.trimmed.map(({ row, what, sets, reason }): Found => {
      const says = words.why.trimmed(names.exercise(row), sets, what === 'row');
      return { session: session.id, row, weeks: [week], rule: reason.rule, says };
    }),
  );
  return acrossWeeks(cuts);
}

/** A version chosen for one row may be what another row has already. */
function twice(plan: Plan, names: Names): readonly Found[] {
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

/** Lines of plain text under a heading, and an empty line after them; nothing where nothing was found. */
export function sayFindings(findings: readonly SaidFinding[]): readonly string[] {
  if (findings.length === 0) return [];
  const { why, sets } = speechOf('en-GB').words;
  const lines = findings.map(({ client, session, exercise, weeks, says }) => {
    const where = [
      client,
      weeks.length === 0 ? '' : sets.weekList(weeks),
      session === undefined ? '' : `session ${session}`,
      exercise ?? '',
    ].filter((part) => part !== '');
    return `  ${where.join(', ')}: ${says}`.replaceAll(NO_BREAK, ' ');
  });
  return [why.findings, ...lines, ''];
}

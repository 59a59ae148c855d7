/** Editions and marks written out by hand: say only what differs. */
import type { Edition } from '../../src/model/edition.js';
import { bookletId, type RowId, type SetKey } from '../../src/model/identity.js';
import type { Log, LogEvent } from '../../src/model/log.js';
import type { Plan, PlanSession, PlanSet } from '../../src/model/plan.js';

const BOOKLET = bookletId('0123456789abcdef0123456789abcdef');

export const anEdition = (plan: Plan, n: number): Edition => ({
  schema: 1,
  bookletId: BOOKLET,
  n,
  issued: plan.today,
  from: plan.starts,
  block: plan.block,
  ...(n > 1 ? { supersedes: n - 1 } : {}),
  contentHash: '',
  engineVersion: plan.engine,
  rulesHash: '',
  plan,
  wordsHash: '',
});

export const aLog = (events: readonly LogEvent[], device = 'phone'): Log => ({
  schema: 1,
  bookletId: BOOKLET,
  device,
  events,
});

export function sessionAt(plan: Plan, occurrence: number): PlanSession {
  const found = plan.weeks.flatMap(({ sessions }) => sessions).find((one) => one.occurrence === occurrence);
  if (found === undefined) throw new Error(`no session ${occurrence}`);
  return found;
}

export interface Doing {
  readonly edition?: number;
  /** Else the planned day. */
  readonly day?: string;
  /** Reps in reserve said of every row of work; else what the plan predicts, in halves; `null` where nothing is said. */
  readonly reserve?: number | null;
  /** What is otherwise of a set; `null` leaves it unmarked. */
  readonly but?: (set: PlanSet, row: RowId) => Partial<Extract<LogEvent, { kind: 'set' }>> | null;
}

/** A UUID from an edition and a count. */
export const markId = (edition: number, seq: number): string =>
  `00000000-0000-4000-8000-${String(1_000_000 * edition + seq).padStart(12, '0')}`;

/** Everything of a session ticked as planned, and closed. */
export function doAsPlanned(plan: Plan, occurrence: number, doing: Doing = {}): readonly LogEvent[] {
  const { edition = Math.max(1, plan.edition), but = () => ({}), reserve } = doing;
  const session = sessionAt(plan, occurrence);
  const day = doing.day ?? session.date;
  let seq = 1000 * occurrence;
  const head = () => {
    seq += 1;
    const minute = String(seq % 60).padStart(2, '0');
    return { id: markId(edition, seq), seq, edition, at: `${day}T18:${minute}:00+01:00` };
  };
  const events: LogEvent[] = [];
  for (const group of session.groups) {
    if (group.kind === 'warm-up' || group.kind === 'cool-down') continue;
    for (const item of group.items) {
      for (const set of item.sets) {
        const otherwise = but(set, item.row);
        if (otherwise === null) continue;
        events.push({
          ...head(),
          kind: 'set',
          key: set.key,
          exercise: set.exercise ?? item.exercise,
          tempo: item.tempo,
          done: 'done',
          ...(set.reps === undefined ? {} : { reps: set.reps }),
          ...(set.seconds === undefined ? {} : { seconds: set.seconds }),
          ...(set.metres === undefined ? {} : { metres: set.metres }),
          ...(set.load === undefined ? {} : { load: set.load }),
          asPlanned: true,
          ...otherwise,
        });
      }
      const predicted = item.sets.findLast(({ kind }) => kind === 'work')?.reserve;
      // Said in halves, and rather less than more.
      const said = reserve === undefined ? Math.floor((predicted ?? 0) / 5) / 2 : reserve;
      if (said === null || item.asked.reserve === null) continue;
      events.push({ ...head(), kind: 'reserve', occurrence, row: item.row, side: 'both', reps: said });
    }
  }
  return [...events, { ...head(), kind: 'closed', occurrence, effort: 6, minutes: session.minutes }];
}

export const keysOf = (session: PlanSession): readonly SetKey[] =>
  session.groups.flatMap(({ items }) => items.flatMap(({ sets }) => sets.map(({ key }) => key)));

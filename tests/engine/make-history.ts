/** What came back, written out by hand or done from a plan: say only what differs. */
import type { Day } from '../../src/model/day.js';
import { dayOfIso } from '../../src/model/day.js';
import type { DoneRow, DoneSession, DoneSet, History } from '../../src/model/history.js';
import { NO_HISTORY } from '../../src/model/history.js';
import { exerciseId, rowId, type SetKind, type Side, sessionId, setKey } from '../../src/model/identity.js';
import type { PainReport } from '../../src/model/log.js';
import type { Item, Plan, PlanLoad, PlanSession, PlanSet } from '../../src/model/plan.js';
import { on } from './make-block.js';

export const planLoad = (kg: number): PlanLoad => ({
  kg,
  grams: Math.round(kg * 1000),
  mode: 'total',
  pieces: [],
  label: `${kg} kg`,
});

export interface MadeSet extends Partial<Omit<DoneSet, 'load' | 'key'>> {
  readonly kg?: number;
}

export interface MadeRow extends Partial<Omit<DoneRow, 'sets' | 'exercise' | 'reserve' | 'asked'>> {
  readonly asked?: Partial<DoneRow['asked']>;
  readonly sets?: readonly MadeSet[];
  /** In reps, for both sides or of each. */
  readonly left?: number | Partial<Record<Side, number>>;
}

/** Three sets of 6 to 10 with 2 left were asked for. */
export function aMarkedRow(exercise: string, { asked, sets = [], left, ...row }: MadeRow = {}): DoneRow {
  const said =
    typeof left === 'number'
      ? [{ side: 'both' as const, reserve: 10 * left }]
      : (['left', 'right'] as const).flatMap((side) => {
          const reps = left?.[side];
          return reps === undefined ? [] : [{ side, reserve: 10 * reps }];
        });
  return {
    row: rowId(exercise),
    exercise: exerciseId(exercise),
    way: 'strength',
    sides: 'both',
    tempo: 'normal',
    asked: { min: 6, max: 10, unit: 'reps', reserve: 20, sets: 3, ...asked },
    inCircuit: false,
    reserve: said,
    pain: [],
    ...row,
    sets: sets.map((set, index) => aSet(exercise, set, index + 1)),
  };
}

function aSet(exercise: string, { kg, ...set }: MadeSet, ordinal: number): DoneSet {
  const { kind = 'work', side = 'both' } = set;
  return {
    key: setKey({ block: 1, occurrence: 1, row: rowId(exercise), side, kind, ordinal }),
    kind,
    side,
    exercise: exerciseId(exercise),
    tempo: 'normal',
    done: 'done',
    asPlanned: false,
    ...(kg === undefined ? {} : { load: planLoad(kg) }),
    ...set,
  };
}

/** So many equal sets. */
export const alike = (count: number, set: MadeSet): readonly MadeSet[] => Array.from({ length: count }, () => set);

export const aSessionDone = (
  day: string | Day,
  rows: readonly DoneRow[],
  more: Partial<DoneSession> = {},
): DoneSession => {
  const done = typeof day === 'string' ? on(day) : day;
  return {
    block: 1,
    occurrence: 1,
    session: sessionId('A'),
    name: 'A',
    week: 1,
    easy: false,
    edition: 1,
    planned: done,
    day: done,
    today: 'as usual',
    closed: true,
    effort: null,
    minutes: null,
    minutesPlanned: 60,
    pain: [],
    ...more,
    rows,
  };
};

export const aHistory = (...sessions: readonly DoneSession[]): History => ({
  ...NO_HISTORY,
  sessions,
  lastMark: sessions.at(-1)?.day ?? null,
});

/** One row of one planned session. */
export interface Place {
  readonly session: PlanSession;
  readonly item: Item;
  readonly week: number;
  readonly easy: boolean;
}

export interface HowDone {
  /** `null` leaves it unmarked; ticked as planned where absent. */
  readonly set?: (set: PlanSet) => Partial<DoneSet> | null;
  /** In tenths. */
  readonly reserve?: DoneRow['reserve'];
  readonly pain?: readonly PainReport[];
}

const DONE: readonly SetKind[] = ['work', 'trial', 'feeler', 'test'];

/** Every session of a plan done on its day, each row as `how` has it; `null` leaves the row unmarked. */
export function doneFrom(plan: Plan, how: (place: Place) => HowDone | null = () => ({}), block = 2): History {
  const queue = plan.weeks.flatMap(({ number, sessions }) =>
    sessions.map((session) => ({ edition: 1, week: number, session })),
  );
  const sessions = plan.weeks.flatMap(({ number, deload, sessions: planned }) =>
    planned.map((session): DoneSession => {
      const day = dayOfIso(session.date) ?? on('2027-01-04');
      const rows = session.groups.flatMap(({ kind, items }) =>
        kind === 'warm-up' || kind === 'cool-down'
          ? []
          : items.map((item) => rowDone(item, kind === 'circuit', how({ session, item, week: number, easy: deload }))),
      );
      const { occurrence, id, name, minutes } = session;
      const of = { block, occurrence, session: id, name, week: number, easy: deload, planned: day };
      return aSessionDone(day, rows, { ...of, minutesPlanned: minutes });
    }),
  );
  return {
    blocks: [{ block, edition: 1, plan, queue }],
    sessions: sessions.filter(({ rows }) => rows.some(({ sets, pain }) => sets.length + pain.length > 0)),
    notes: [],
    lastMark: sessions.at(-1)?.day ?? null,
  };
}

function rowDone(item: Item, inCircuit: boolean, how: HowDone | null): DoneRow {
  const { row, exercise, way, sides, tempo, asked, rung } = item;
  const sets = item.sets
    .filter(({ kind }) => how !== null && DONE.includes(kind))
    .flatMap((planned): readonly DoneSet[] => {
      const change = how?.set === undefined ? {} : how.set(planned);
      if (change === null) return [];
      const { key, kind, reps, seconds, metres, load } = planned;
      const own = {
        ...(reps === undefined ? {} : { reps }),
        ...(seconds === undefined ? {} : { seconds }),
        ...(metres === undefined ? {} : { metres }),
        ...(load === undefined ? {} : { load }),
      };
      const done: DoneSet = {
        ...{ key, kind, side: planned.side ?? 'both', exercise: planned.exercise ?? exercise, tempo, ...own },
        ...{ done: 'done', asPlanned: how?.set === undefined, planned },
        ...change,
      };
      return [done];
    });
  return {
    ...{ row, exercise, way, sides, tempo, asked, inCircuit, sets },
    ...(rung === undefined ? {} : { rung: rung.number }),
    reserve: how?.reserve ?? [],
    pain: how?.pain ?? [],
  };
}

/** One week of one person with one booklet: the events that a phone would write. Everything comes from the seed. */

import { addDays, dayOfIso, isoOfDay, weekdayOf } from '../../src/model/day.js';
import { type ExerciseId, readSetKey, type Side } from '../../src/model/identity.js';
import type { LogEvent, PainReport } from '../../src/model/log.js';
import type { GateNeeds, Item, Plan, PlanLoad, PlanSession, PlanSet } from '../../src/model/plan.js';
import { type Chance, chanceFrom } from '../engine/chance.js';
import type { Person } from './people.js';
import type { Body } from './true-capacity.js';

/** Where one is: which booklet, which week, and what was marked until now. */
export interface Then {
  readonly plan: Plan;
  readonly edition: number;
  /** Calendar week from 1, and its Monday. */
  readonly week: number;
  readonly monday: string;
  readonly before: readonly LogEvent[];
  readonly body: Body;
}

type SetEvent = Extract<LogEvent, { kind: 'set' }>;
type Unheaded<Event> = Event extends LogEvent ? Omit<Event, 'id' | 'seq' | 'edition' | 'at'> : never;

/** On each training day of the week the next session of the queue that is not done yet, or nothing on a bad day. */
export function simulate(person: Person, then: Then, seed: number): readonly LogEvent[] {
  if (person.away.includes(then.week)) return [];
  const events: LogEvent[] = [];
  const monday = dayOfIso(then.monday) ?? raise(then.monday);
  for (let offset = 0; offset < 7; offset += 1) {
    const day = addDays(monday, offset);
    if (!person.client.days.includes(weekdayOf(day))) continue;
    const chance = chanceFrom(seed * 7919 + then.week * 101 + offset);
    if (!chance.happens(person.adherence)) continue;
    const marked = [...then.before, ...events];
    const next = sessionsOf(then.plan).find((session) => !isDone(then.plan, session, marked));
    if (next === undefined) return events;
    events.push(...train(person, then, next, isoOfDay(day), chance, marked, events.length === 0));
  }
  return events;
}

const raise = (what: string): never => {
  throw new Error(what);
};

export const sessionsOf = ({ weeks }: Plan): readonly PlanSession[] => weeks.flatMap(({ sessions }) => sessions);

function isDone(plan: Plan, { occurrence }: PlanSession, marked: readonly LogEvent[]): boolean {
  const at = `${plan.block}/${occurrence}/`;
  return marked.some((event) => event.kind === 'set' && event.key.startsWith(at));
}

function train(
  person: Person,
  then: Then,
  session: PlanSession,
  day: string,
  chance: Chance,
  marked: readonly LogEvent[],
  first: boolean,
): readonly LogEvent[] {
  const events: LogEvent[] = [];
  let minute = 0;
  const write = (event: Unheaded<LogEvent>): LogEvent => {
    minute += 2;
    const seq = marked.length + events.length + 1;
    const id = `00000000-0000-4000-8000-${String(then.edition * 1_000_000 + seq).padStart(12, '0')}`;
    const [hours, minutes] = [person.hour + Math.floor(minute / 60), minute % 60];
    const at = `${day}T${String(hours).padStart(2, '0')}:${String(minutes).padStart(2, '0')}:00+00:00`;
    const whole = { id, seq, edition: then.edition, at, ...event };
    events.push(whole);
    return whole;
  };
  const { occurrence } = session;
  const form = near(chance, person.daily) / 1000;
  write({ kind: 'opened', occurrence, today: form < -0.04 ? 'not my best' : 'as usual' });
  for (const { kind, items } of session.groups) {
    if (kind === 'warm-up' || kind === 'cool-down') continue;
    for (const item of items) {
      doRow(person, then, item, session, form, chance, [...marked, ...events], write);
      const pain = first ? painIn(person, then.week, item) : undefined;
      if (pain !== undefined) write({ kind: 'pain', occurrence, row: item.row, report: pain });
    }
  }
  write({ kind: 'closed', occurrence, effort: chance.whole(5, 8), minutes: session.minutes + chance.whole(-5, 6) });
  return events;
}

const SQUATS = ['goblet-squat', 'chair-squat', 'box-squat'];

function painIn({ pains }: Person, week: number, { exercise }: Item): PainReport | undefined {
  const pain = pains.find((one) => one.week === week);
  return pain === undefined || !SQUATS.includes(exercise) ? undefined : { where: pain.where, degree: pain.degree };
}

/** Around 0, two times of three within `most`: three throws of dice. */
function near(chance: Chance, most: number): number {
  const throws = [chance.whole(-100, 100), chance.whole(-100, 100), chance.whole(-100, 100)];
  return (throws.reduce((sum, one) => sum + one, 0) / 100) * most;
}

interface Dose {
  readonly exercise: ExerciseId;
  readonly reps: number | undefined;
  readonly load: PlanLoad | undefined;
}

function doRow(
  person: Person,
  then: Then,
  item: Item,
  { occurrence }: PlanSession,
  form: number,
  chance: Chance,
  marked: readonly LogEvent[],
  write: (event: Unheaded<LogEvent>) => LogEvent,
): void {
  const sets = item.sets.filter(({ kind }) => kind !== 'warm-up' && kind !== 'cool-down');
  const counted = item.asked.reserve !== null;
  const sore = isSore(then.edition, item, marked);
  const other = openedIn(then.plan, item, marked) ? undefined : sets.flatMap(({ otherwise = [] }) => otherwise)[0];
  const sides: readonly (Side | 'both')[] = item.sides === 'each' ? ['left', 'right'] : ['both'];
  const left = new Map<Side | 'both', number>();
  let felt: PlanSet['choose'] | undefined;
  let found: Dose | undefined;
  sets.forEach((set, index) => {
    const side = set.side ?? 'both';
    felt = set.choose ?? felt;
    const planned: Dose =
      set.kind === 'work' && other !== undefined
        ? { exercise: other.exercise, reps: other.reps, load: other.load }
        : set.kind === 'work' && found !== undefined
          ? found
          : { exercise: set.exercise ?? item.exercise, reps: set.reps, load: set.load };
    const { exercise, load } = planned;
    const fresh = then.body.repsToFailure(exercise, side, load, then.week) * (1 + form * FORM_IN_REPS);
    const slow = item.tempo === 'normal' ? 1 : item.tempo === 'slow lowering' ? 0.8 : 0.7;
    const able = Math.max(0, fresh * slow - 0.25 * Math.floor(index / sides.length));
    // Nobody is told to fail: a set ends with one left at the latest.
    const most = sore ? 0 : Math.max(0, Math.floor(able - 0.5));
    const asked = set.kind === 'test' ? Math.max(1, most - 1) : planned.reps;
    const reps = asked === undefined || !counted ? asked : Math.min(asked, most);
    if (reps !== undefined && counted) left.set(side, able - reps);
    const done = reps === 0 ? 'left out' : 'done';
    const amount = done === 'left out' ? {} : reps === undefined ? {} : { reps };
    const body: Unheaded<SetEvent> = {
      kind: 'set',
      key: set.key,
      exercise,
      tempo: item.tempo,
      done,
      ...amount,
      ...(set.seconds === undefined || counted ? {} : { seconds: set.seconds }),
      ...(set.metres === undefined ? {} : { metres: set.metres }),
      ...(load === undefined || done === 'left out' ? {} : { load }),
      asPlanned: planned.reps === reps && set.load?.grams === load?.grams && set.kind !== 'feeler',
    };
    if (chance.happens(3)) {
      // A slip of the thumb, taken back and written again.
      const slip = write({ ...body, asPlanned: false, ...(reps === undefined ? {} : { reps: reps + 10 }) });
      write({ kind: 'void', event: slip.id });
    }
    write(body);
    if (set.kind === 'feeler' && felt !== undefined) {
      const good = Math.max(
        0,
        Math.round(able - (reps ?? 0) + near(chance, person.misjudges.by) - person.misjudges.fewer),
      );
      const line = felt.find(({ left: range }) => good >= range.min && good <= range.max) ?? felt[0];
      if (line !== undefined) found = { exercise: line.exercise, reps: line.reps, load: line.load };
    }
  });
  if (!counted || sore || left.size === 0 || !chance.happens(person.says)) return;
  for (const [side, after] of left) {
    const said = Math.max(0, Math.round(after - person.misjudges.fewer + near(chance, person.misjudges.by)));
    write({ kind: 'reserve', occurrence, row: item.row, side, reps: Math.min(said, 10) });
  }
}

/** As every booklet says: after pain of 4 and over an exercise is left out until the coach has looked. */
function isSore(edition: number, item: Item, marked: readonly LogEvent[]): boolean {
  return marked.some(
    (event) =>
      event.kind === 'pain' && event.edition === edition && event.report.degree >= 4 && SQUATS.includes(item.exercise),
  );
}

/** A day's form in capacity is felt several times as much in reps. */
const FORM_IN_REPS = 3.5;

/** Whether the row's gate was opened: by what was marked in the weeks that it names. Without a gate it is open. */
function openedIn(plan: Plan, { row, sets }: Item, marked: readonly LogEvent[]): boolean {
  if (!sets.some(({ otherwise }) => otherwise !== undefined)) return true;
  const gates = sessionsOf(plan).flatMap(({ groups }) =>
    groups.flatMap(({ items }) =>
      items.filter((item) => item.row === row).flatMap((item) => item.sets.flatMap(({ gate }) => gate?.needs ?? [])),
    ),
  );
  const [needs] = gates;
  return (
    needs === undefined ||
    needs.weeks.length === 0 ||
    needs.weeks.every((week) => didIn(plan, needs, row, week, marked))
  );
}

function didIn(plan: Plan, needs: GateNeeds, row: string, week: number, marked: readonly LogEvent[]): boolean {
  const occurrences = (plan.weeks.find(({ number }) => number === week)?.sessions ?? []).map((one) => one.occurrence);
  return occurrences.some((occurrence) => {
    const at = (key: string) => {
      const parts = readSetKey(key);
      return parts?.occurrence === occurrence && parts.row === row && parts.block === plan.block;
    };
    const sets = marked.flatMap((event) =>
      event.kind === 'set' && at(event.key) && !event.key.includes('/warm-up/') ? [event] : [],
    );
    const enough = sets.filter(
      (set) => (set.reps ?? 0) >= (needs.reps ?? 0) && (set.load?.grams ?? 0) >= (needs.load?.grams ?? 0),
    );
    const said = marked.flatMap((event) =>
      event.kind === 'reserve' && event.occurrence === occurrence && event.row === row ? [event.reps] : [],
    );
    return enough.length > 0 && 10 * Math.min(99, ...said) >= (needs.reserve ?? 0);
  });
}

/**
 * A plan read back as the planner reads a client: from `plan.json` alone, without the library, so that a phone plans
 * the rest by the planner's own functions. What only words, kits or the coach's desk need is left empty.
 */
import type { BlockContext, SessionDay } from '../engine/block-context.js';
import type { Recalls } from '../engine/history/recall.js';
import { remember } from '../engine/history/remember.js';
import type { Rulebook } from '../engine/rulebook.js';
import { FIRST_WEEKS } from '../engine/rules/first-weeks.js';
import { FLOOR_BEGINS } from '../engine/rules/floor-begins.js';
import { FLOOR_MODERATE } from '../engine/rules/floor-moderate.js';
import type { Standing } from '../engine/screening/standing.js';
import type { Break, Caution, Client, Test } from '../model/client.js';
import { type Day, day, dayOfIso, type Weekday, weekdayOf } from '../model/day.js';
import type { Exercise } from '../model/exercise.js';
import type { History } from '../model/history.js';
import { bookletId } from '../model/identity.js';
import type { LogEvent } from '../model/log.js';
import type { Place } from '../model/place.js';
import type { Plan, PlanSession } from '../model/plan.js';
import type { RecallInput, ReplannedExercise, ReplanningInput } from '../model/plan-inputs.js';
import type { Programme } from '../model/programme.js';
import { gatherHistory } from './gather-history.js';
import { localDay } from './gather-session.js';

/** Where nothing of it is written. */
export const NOWHERE: Place = { file: '', line: 1, column: 1, length: 1 };

/** A session that is still to come, on the first day on which it can be. */
export interface OpenSession {
  readonly session: PlanSession;
  /** 1-based. */
  readonly week: number;
  readonly day: Day;
}

export interface PlanContext {
  readonly context: BlockContext;
  readonly history: History;
  /** In order of the queue. */
  readonly open: readonly OpenSession[];
  /** Cautions that pain marked since the plan was made calls for. */
  readonly pained: readonly Caution[];
  /** The first day of the block: marks since then are read again from the events. */
  readonly since: Day;
  /** The day the plan was made: breaks up to then are answered in it. */
  readonly made: Day;
  /** What marks and observations said of each exercise when it was made. */
  readonly recalled: readonly RecallInput[];
  /** What the sessions done since the plan was made say by themselves, and how many work occurrences each row had. */
  readonly lately: { readonly recalls: Recalls; readonly worked: ReadonlyMap<string, number> };
}

/** `events` are all of this booklet, of any device and edition, in any order. */
export function contextOfPlan(
  plan: Plan,
  replanning: ReplanningInput,
  events: readonly LogEvent[],
  today: Day,
): PlanContext {
  const rules = rulesOf(plan);
  const history = historyOf(plan, events.filter(concerns(plan)));
  const exercises = new Map(replanning.exercises.map((one) => [one.exercise, exerciseOf(one)]));
  const begins = dayOfIso(plan.weeks[0]?.begins ?? plan.starts) ?? today;
  const written = clientOf(plan, begins);
  const remembering = { client: written, history, exercises, rules, today };
  const { client, recalls } = remember(remembering);
  const known = new Set((plan.inputs.done ?? []).map(({ occurrence }) => occurrence));
  const fresh = { ...history, sessions: history.sessions.filter(({ occurrence }) => !known.has(occurrence)) };
  const open = openSessions(plan, history, today);
  const days = daysOf(plan, history, open);
  const firstDay = days[0]?.day ?? begins;
  const lastDay = days.at(-1)?.day ?? begins;
  const [next] = open;
  return {
    context: {
      client,
      programme: programmeOf(plan),
      exercises,
      rules,
      recalls,
      today,
      standing: standingIn(plan, replanning, rules),
      firstDay,
      lastDay,
      days,
      next: next === undefined ? { day: today, week: plan.weeks.length } : { day: next.day, week: next.week },
    },
    history,
    open,
    pained: client.cautions,
    since: begins,
    made: dayOfIso(plan.today) ?? begins,
    recalled: plan.inputs.recalls ?? [],
    lately: { recalls: remember({ ...remembering, history: fresh }).recalls, worked: workedIn(fresh) },
  };
}

/** The rules as the plan quotes them, the coach's own values laid over. */
function rulesOf({ rules }: Plan): Rulebook {
  const inForce = new Map(rules.map(({ id, value, overridden }): [string, number] => [id, overridden?.value ?? value]));
  return { rows: rules, valueOf: ({ id, value }) => inForce.get(id) ?? value };
}

/** Pain that was said of an earlier edition is in the plan already: the coach has planned again since. */
const concerns =
  (plan: Plan) =>
  (event: LogEvent): boolean =>
    event.kind !== 'pain' || event.edition >= plan.edition || localDay(event.at) > (dayOfIso(plan.today) ?? 0);

/** Sessions done stand in the plan as they were done, whatever edition they were done in. */
function historyOf(plan: Plan, events: readonly LogEvent[]): History {
  const id = bookletId('');
  const numbers = new Set([plan.edition, ...events.map(({ edition }) => edition)]);
  const editions = [...numbers].map((n) => ({
    schema: 1 as const,
    bookletId: id,
    n,
    issued: plan.today,
    from: plan.starts,
    block: plan.block,
    contentHash: '',
    engineVersion: plan.engine,
    rulesHash: '',
    plan,
    wordsHash: '',
  }));
  return gatherHistory(editions, [{ schema: 1, bookletId: id, device: '', events }]).value;
}

function exerciseOf(read: ReplannedExercise): Exercise {
  const { exercise, load, unloaded, ceiling, share, measure, ...facts } = read;
  return {
    id: exercise,
    formerIds: [],
    name: '',
    facts: {
      ...facts,
      kit: { load, unloaded, things: [] },
      room: { ceiling },
      ...(share === null ? {} : { bodyShare: { share, standing: 'practice', source: '' } }),
      ...(measure === undefined ? {} : { measure }),
      muscles: { main: [], assisting: [] },
      tempo: { lower: 0, bottom: 0, lift: 0, top: 0 },
      parts: [],
      partsDone: 'as one',
      rehearses: [],
      cools: false,
    },
    words: {
      description: [],
      setUp: [],
      pickUp: [],
      putDown: [],
      cues: [],
      breath: [],
      faults: [],
      easier: [],
      harder: [],
      stopIf: [],
      partner: [],
    },
    poses: [],
    place: NOWHERE,
  };
}

/** Tests made of this block's own marks are made again from the marks; those of a block before stand as they are. */
function clientOf({ client, programme, starts, inputs }: Plan, begins: Day): Client {
  const tests = inputs.capacities.flatMap(({ exercise, side, test, weak }): readonly Test[] => {
    const date = dayOfIso(test.date) ?? begins;
    if (test.marked === true && date >= begins) return [];
    const load = test.grams === 0 ? {} : { load: massOf(test.grams) };
    const marked = test.marked === true ? { marked: true as const } : {};
    const { reps, reserve, tempo } = test;
    const slow = tempo === 'slow lowering' || tempo === 'slow with a pause' ? { tempo } : {};
    return [{ exercise, side, ...load, reps, reserve, ...slow, inCircuit: weak, date, ...marked, place: NOWHERE }];
  });
  const breaks = inputs.breaks.flatMap(({ from, until, cause }): readonly Break[] => {
    const [first, last] = [dayOfIso(from), dayOfIso(until)];
    if (first === undefined || last === undefined) return [];
    return [{ from: first, until: last, cause: cause === 'ill' || cause === 'hurt' ? cause : 'away', place: NOWHERE }];
  });
  return {
    id: client,
    name: '',
    starts: dayOfIso(starts) ?? begins,
    programme,
    days: inputs.days.flatMap((one) => WEEKDAYS.filter((weekday) => weekday === one)),
    minutes: inputs.minutesCap,
    birthYear: inputs.birthYear,
    experience: inputs.experience === 'novice' ? 'novice' : 'trained',
    ...(inputs.bodyMass === null ? {} : { bodyMass: { mass: massOf(inputs.bodyMass) } }),
    // The coach's own are in the plan as it was made.
    cautions: [],
    health: {},
    breaks,
    mainBells: [],
    unhandled: [],
    kit: [],
    unit: 'kg',
    room: {},
    language: '',
    largePrint: false,
    replanning: 'within bounds',
    blocksBefore: inputs.blocksBefore,
    signOffs: [],
    tests,
    observations: [],
    notes: [],
    place: NOWHERE,
  };
}

const WEEKDAYS: readonly Weekday[] = [1, 2, 3, 4, 5, 6, 7];
const massOf = (grams: number) => ({ grams, figure: String(grams / 1000), unit: 'kg' as const });

function programmeOf({ programme, inputs }: Plan): Programme {
  return {
    id: programme,
    name: '',
    forWhom: '',
    public: false,
    curve: inputs.curve,
    sessions: [],
    rotations: [],
    neverCut: [],
    tests: [],
    cutFirst: [],
    description: [],
    expectations: [],
    place: NOWHERE,
  };
}

function standingIn({ inputs }: Plan, { steady }: ReplanningInput, rules: Rulebook): Standing {
  const { moderate, health } = inputs.standing;
  const floorOf = (rule: typeof FLOOR_MODERATE) => ({ rule, reserve: rules.valueOf(rule) });
  const used = inputs.screening?.regularExercise === 'yes';
  return {
    moderate,
    moderateBecause: [],
    cautions: [],
    derived: [],
    floor: moderate ? floorOf(FLOOR_MODERATE) : null,
    begins: used ? [] : [{ ...floorOf(FLOOR_BEGINS), weeks: rules.valueOf(FIRST_WEEKS) }],
    talk: null,
    steady,
    lastDay: null,
    health,
  };
}

/** By `session/row`; easy weeks neither count nor break. */
function workedIn({ sessions }: History): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { session, rows, easy } of sessions) {
    if (easy) continue;
    for (const { row, sets } of rows) {
      if (!sets.some(({ kind, done }) => kind === 'work' && done !== 'left out')) continue;
      const key = `${session}/${row}`;
      counts.set(key, (counts.get(key) ?? 0) + 1);
    }
  }
  return counts;
}

/**
 * What is earned in a row that stands where it was planned to begin: marks of a block before are known by what the plan
 * began with, to which whatever was done since adds where all of it earned. What was earned by leaving more than asked
 * is not added to: it is earned anew or not at all.
 */
export function earnedSince(before: number, since: number, worked: number, all: number): 0 | 1 | 2 {
  const sum = worked === 0 ? before : since >= Math.min(worked, 2) ? before + since : 0;
  const earned = Math.max(all, sum);
  return earned >= 2 ? 2 : earned === 1 ? 1 : 0;
}

/** In order of the queue, one on each training day from today on, and none before its planned day. */
function openSessions(plan: Plan, history: History, today: Day): readonly OpenSession[] {
  const { block } = plan;
  const done = new Set(history.sessions.filter((one) => one.block === block).map(({ occurrence }) => occurrence));
  const days = new Set(plan.inputs.days);
  let least = today;
  const trainingDay = (from: Day): Day => {
    let at = from;
    while (days.size > 0 && !days.has(weekdayOf(at))) at = day(at + 1);
    return at;
  };
  return plan.weeks.flatMap(({ number, sessions }) =>
    sessions.flatMap((session): readonly OpenSession[] => {
      if (done.has(session.occurrence)) return [];
      const planned = dayOfIso(session.date) ?? least;
      const at = planned >= least ? planned : trainingDay(least);
      least = day(at + 1);
      return [{ session, week: number, day: at }];
    }),
  );
}

function daysOf(plan: Plan, history: History, open: readonly OpenSession[]): readonly SessionDay[] {
  const { block } = plan;
  const done = history.sessions.filter((one) => one.block === block);
  return [
    ...done.map(({ session, day: at, week, occurrence }) => ({ session, day: at, week, occurrence })),
    ...open.map(({ session, day: at, week }) => ({
      session: session.id,
      day: at,
      week,
      occurrence: session.occurrence,
    })),
  ].sort((a, b) => a.occurrence - b.occurrence);
}

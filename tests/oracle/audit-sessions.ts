/**
 * Sessions, with the facts of the exercises in them: the minutes counted again, the short version, the limits of
 * circuits, warm-up and cool-down. The count is of what is planned, at its own tempo; the planner counts at the longest,
 * so its minutes are never fewer.
 */
import type { ExerciseFacts } from './audit-facts.js';
import type { PlanGroup, PlanItem, PlanJson, PlanSession, PlanSet } from './plan-json.js';

export interface SessionFacts extends ExerciseFacts {
  readonly facts: ExerciseFacts['facts'] & {
    readonly pattern: string;
    readonly tempo: {
      readonly lower: number;
      readonly bottom: number;
      readonly lift: number | 'fast';
      readonly top: number;
    };
    readonly onTheFloor: boolean;
  };
}

type Library = ReadonlyMap<string, SessionFacts>;

export function auditSessions(plan: PlanJson, exercises: readonly SessionFacts[]): string[] {
  const library: Library = new Map(exercises.map((one) => [one.id, one]));
  return plan.weeks.flatMap((week) =>
    week.sessions.flatMap((session) => {
      const found = [
        ...minutesFindings(plan, session, library),
        ...shortFindings(plan, session, library),
        ...session.groups.flatMap((group) => (group.kind === 'circuit' ? circuitFindings(plan, group, library) : [])),
        ...aroundFindings(plan, session, library),
      ];
      return found.map((text) => `week ${week.number} ${session.id}: ${text}`);
    }),
  );
}

const ruled = (plan: PlanJson, id: string): number => plan.rules.find((rule) => rule.id === id)?.value ?? 0;
const isMain = ({ kind }: PlanGroup): boolean => kind === 'straight' || kind === 'circuit';
const isFloor = (item: PlanItem, library: Library): boolean =>
  library.get(item.exercise)?.facts.asks.some(({ of }) => of === 'floor' || of === 'lying on the back') === true;

function minutesFindings(plan: PlanJson, session: PlanSession, library: Library): string[] {
  const around = session.groups.reduce((sum, group) => sum + (isMain(group) ? 0 : 60 * (group.minutes ?? 0)), 0);
  const main = session.groups.filter(isMain);
  const items = main.flatMap((group) => group.items);
  const least =
    around +
    main.reduce((sum, group) => sum + groupSeconds(plan, group, library), 0) +
    ruled(plan, 'between-exercises') * Math.max(0, items.length - 1) +
    2 * ruled(plan, 'down-or-up') * tripsIn(items, library);
  return 60 * session.minutes < least ? [`${session.minutes} minutes for ${Math.ceil(least)} s of work`] : [];
}

/** Runs of work on the floor, in the order done. */
const tripsIn = (items: readonly PlanItem[], library: Library): number =>
  items.filter((item, index) => {
    const before = items[index - 1];
    return isFloor(item, library) && (before === undefined || !isFloor(before, library));
  }).length;

function groupSeconds(plan: PlanJson, group: PlanGroup, library: Library): number {
  return group.items.reduce((sum, item) => {
    const rounds = item.asked.sets;
    if (group.everySeconds !== undefined) return sum + rounds * group.everySeconds;
    const work = item.sets.reduce((all, set) => all + secondsOf(plan, item, set, library), 0);
    return sum + work + Math.max(0, rounds - 1) * item.restSeconds;
  }, 0);
}

function secondsOf(plan: PlanJson, item: PlanItem, set: PlanSet, library: Library): number {
  const facts = library.get(set.exercise ?? item.exercise)?.facts;
  if (facts === undefined || set.kind === 'test') return 0;
  const isRound = set.reps === undefined && set.seconds === undefined && set.metres === undefined;
  if (isRound) return ruled(plan, 'seconds-a-round');
  const put = facts.onTheFloor && set.load !== undefined ? ruled(plan, 'put-down') : 0;
  const reps = (set.reps ?? 0) + (set.then?.reps ?? 0);
  const metres = ((set.metres ?? 0) * ruled(plan, 'seconds-a-metre')) / 10;
  const own =
    facts.way === 'swing' ? (reps * ruled(plan, 'seconds-a-swing')) / 10 : reps * secondsARep(plan, item, facts);
  return put + Math.max(set.seconds ?? 0, metres, own);
}

function secondsARep(plan: PlanJson, item: PlanItem, { tempo }: SessionFacts['facts']): number {
  const slow = item.tempo === 'normal' ? 0 : ruled(plan, 'slow-lowering-seconds');
  const pause = item.tempo === 'slow with a pause' ? ruled(plan, 'pause-seconds') : 0;
  const lift = tempo.lift === 'fast' ? 1 : tempo.lift;
  const all = Math.max(tempo.lower, slow) + Math.max(tempo.bottom, pause) + lift + tempo.top;
  return all === 0 ? ruled(plan, 'seconds-a-rep') : all;
}

/** Some of the session's own sets, in its order, within its minutes; nothing tried or tested, nothing behind a gate. */
function shortFindings(plan: PlanJson, session: PlanSession, library: Library): string[] {
  const found: string[] = [];
  const { minutes, sets } = session.short;
  const all = session.groups.flatMap((group) =>
    group.items.flatMap((item) => item.sets.map((set) => ({ group, item, set }))),
  );
  const kept = sets.map((key) => all.find(({ set }) => set.key === key));
  if (new Set(sets).size !== sets.length) found.push('a set twice in the short version');
  if (minutes > ruled(plan, 'short-minutes')) found.push(`a short version of ${minutes} minutes`);
  if (minutes > session.minutes) found.push('a short version longer than the session');
  const cap = ruled(plan, 'short-warm-up') * 60;
  let work = 0;
  let rests = 0;
  const told = new Set<string>();
  for (const one of kept) {
    if (one === undefined) {
      found.push('a set in the short version that is not in the session');
      continue;
    }
    const { group, item, set } = one;
    if (set.kind === 'trial' || set.kind === 'test') found.push(`${set.key}: a ${set.kind} on a bad day`);
    if (item.sets.some(({ gate }) => gate !== undefined)) found.push(`${set.key} stands behind a gate`);
    if (group.kind === 'cool-down') found.push(`${set.key}: a cool-down on a bad day`);
    if (!isMain(group)) continue;
    // At a signal both sides may be done: it is counted once.
    const signal = set.kind === 'work' ? group.everySeconds : undefined;
    const again = told.has(`${item.id} ${set.round}`);
    work += signal === undefined ? secondsOf(plan, item, set, library) : again ? 0 : signal;
    if (set.kind === 'work') told.add(`${item.id} ${set.round}`);
    if (set.kind === 'work' && told.has(item.id) && group.everySeconds === undefined && item.sides !== 'each')
      rests += item.restSeconds;
    if (set.kind === 'work') told.add(item.id);
  }
  if (work + rests > 60 * minutes)
    found.push(`${minutes} minutes for ${Math.ceil(work + rests)} s of the short version`);
  const main = session.groups.filter(isMain).flatMap((group) => group.items);
  const open = main.some((item) => item.sets.every(({ gate }) => gate === undefined));
  if (open && work === 0 && cap > 0 && !main.every((item) => isLong(plan, item, library)))
    found.push('a short version without any work');
  return found;
}

/** One set of it, with what comes before, takes more than the minutes of a short version leave. */
function isLong(plan: PlanJson, item: PlanItem, library: Library): boolean {
  const left = 60 * (ruled(plan, 'short-minutes') - ruled(plan, 'short-warm-up'));
  const first = item.sets.filter(({ round, kind }) => round === 1 || kind !== 'work');
  if (first.some(({ kind }) => kind === 'test')) return true;
  const hands = item.sides === 'both' ? 1 : 2;
  const top = item.asked.max * (item.asked.unit === 'reps' ? 8 : item.asked.unit === 'metres' ? 2 : 1);
  const work = first.reduce((sum, set) => sum + secondsOf(plan, item, set, library), 0);
  return 2 * work + hands * top * 2 + item.restSeconds + 2 * 60 + 2 * ruled(plan, 'down-or-up') > left;
}

/** Few pieces in hand, no plates changed, no two that tire the grip or two hinges side by side, round after round. */
function circuitFindings(plan: PlanJson, { items, rounds }: PlanGroup, library: Library): string[] {
  const found: string[] = [];
  const { kit } = plan.inputs;
  const kindOf = (id: string) => kit.find((one) => one.id === id)?.kind;
  const loads = items.flatMap(({ sets }) =>
    sets.flatMap((set) => (set.kind === 'work' || set.kind === 'trial' ? [set.load, set.then?.load] : [])),
  );
  const pieces = loads.flatMap((load) => load?.pieces.map(({ id }) => id) ?? []);
  const inHand = new Set(pieces.filter((id) => kindOf(id) !== 'plate'));
  const most = ruled(plan, 'circuit-bells');
  if (inHand.size > most) found.push(`${inHand.size} pieces in hand over a circuit`);
  for (const holder of [...inHand].filter((id) => kindOf(id) === 'bar' || kindOf(id) === 'handle')) {
    const plated = loads.flatMap((load) =>
      load?.pieces.some(({ id }) => id === holder)
        ? [
            load.pieces
              .map(({ id }) => id)
              .sort()
              .join(),
          ]
        : [],
    );
    if (new Set(plated).size > 1) found.push(`plates of ${holder} are changed in a circuit`);
  }
  const facts = items.map(({ exercise }) => library.get(exercise)?.facts);
  items.forEach((item, index) => {
    const last = index === items.length - 1;
    const next = last ? 0 : index + 1;
    if (items.length < 2 || (last && rounds < 2)) return;
    const [one, other] = [facts[index], facts[next]];
    const gripped = (of: typeof one) => of?.asks.some((ask) => ask.of === 'grip' && ask.degree === 'much') === true;
    if (gripped(one) && gripped(other)) found.push(`${item.exercise} and the next both ask much of the grip`);
    if (one?.pattern === 'hinge' && other?.pattern === 'hinge') found.push(`${item.exercise} and the next are hinges`);
  });
  return found;
}

/** Dose of the warm-up and cool-down, and what a composed one may hold. */
function aroundFindings(plan: PlanJson, session: PlanSession, library: Library): string[] {
  const found: string[] = [];
  const year = (iso: string | undefined) => Number(iso?.slice(0, 4));
  const last = plan.weeks.flatMap((week) => week.sessions).at(-1)?.date;
  const older = year(last) - plan.inputs.birthYear >= ruled(plan, 'older-from');
  const breath = [...plan.inputs.cautions, ...plan.inputs.standing.derived].some(({ what }) => what === 'breath hold');
  const minutesIn = (kind: string) =>
    session.groups.filter((group) => group.kind === kind).reduce((sum, group) => sum + (group.minutes ?? 0), 0);
  const composed = (kind: string) =>
    session.groups.filter((group) => group.kind === kind && group.items.every(({ row }) => row.startsWith(`${kind}-`)));
  const [warmUp] = composed('warm-up');
  if (warmUp !== undefined) {
    const least = ruled(plan, older ? 'warm-up-older' : 'warm-up');
    const most = ruled(plan, older || breath ? 'warm-up-older-most' : 'warm-up-most');
    if (minutesIn('warm-up') < least) found.push(`a warm-up of ${minutesIn('warm-up')} minutes`);
    if (minutesIn('warm-up') > most) found.push(`a warm-up of ${minutesIn('warm-up')} minutes, of ${most}`);
  }
  if (older && minutesIn('cool-down') < ruled(plan, 'cool-down-older') && composed('cool-down').length > 0)
    found.push(`a cool-down of ${minutesIn('cool-down')} minutes`);
  if (older && !session.groups.some(({ kind }) => kind === 'cool-down')) found.push('no cool-down');
  const { derived, health } = plan.inputs.standing;
  const fell = health.some(({ fact, value }) => fact === 'falls' && Number(value) > 0);
  const down = ['floor', 'lying on the back', 'head down'];
  const dates = plan.weeks.flatMap((week) => week.sessions.map(({ date }) => date)).sort();
  const [begins = '', ends = ''] = [dates[0], dates.at(-1)];
  const held = plan.inputs.cautions.filter(({ from, until = ends }) => from <= ends && until >= begins);
  const stands = older || fell || [...held, ...derived].some(({ what }) => down.includes(what));
  for (const { exercise } of composed('warm-up').flatMap((group) => group.items)) {
    if (stands && library.get(exercise)?.facts.asks.some(({ of }) => down.includes(of)))
      found.push(`${exercise} warms up on the floor`);
  }
  for (const item of [...composed('warm-up'), ...composed('cool-down')].flatMap((group) => group.items)) {
    const facts = library.get(item.exercise)?.facts;
    if (item.sets.some(({ load }) => load !== undefined))
      found.push(`${item.exercise} warms up with something in hand`);
    if (
      facts === undefined ||
      facts.way === 'swing' ||
      facts.way === 'carry' ||
      facts.asks.some(({ of }) => of === 'speed')
    )
      found.push(`${item.exercise} is no way to warm up`);
    if (Math.max(0, ...item.sets.map(({ round }) => round)) > ruled(plan, 'warm-up-rounds'))
      found.push(`${item.exercise}: too many times through`);
    if (item.sets.some(({ kind }) => kind !== 'warm-up' && kind !== 'cool-down'))
      found.push(`${item.exercise}: work in a warm-up`);
  }
  if (session.groups[0]?.kind !== 'warm-up') found.push('no warm-up first');
  return found;
}

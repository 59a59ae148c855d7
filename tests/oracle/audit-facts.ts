/**
 * Never what a client must avoid, has no sign-off for, no kit or no room: judged from the plan's inputs and the facts of
 * the exercises it names, over everything printed anywhere in it: work, easier, harder, answers to a feeler set, what is
 * done otherwise, what a gate needs, warm-ups, cool-downs, tests, and what follows straight after a set.
 */
import { inOneHand, isSameBell } from './audit-kit.js';
import type { PlanItem, PlanJson, PlanLoad, PlanSession, PlanSet } from './plan-json.js';

/** What this needs to know of an exercise; declared apart from the project's own types. */
export interface ExerciseFacts {
  readonly id: string;
  readonly formerIds: readonly string[];
  readonly facts: {
    readonly way: string;
    readonly sides: string;
    readonly holds: string;
    readonly kit: {
      readonly load: readonly { readonly kind: string; readonly count?: number; readonly unequal?: boolean }[];
      readonly unloaded: boolean;
      readonly things: readonly string[];
    };
    readonly room: { readonly ceiling: string };
    readonly asks: readonly { readonly of: string; readonly degree: string; readonly phases: readonly string[] }[];
    readonly signOff: boolean;
    readonly onTheFloor: boolean;
    readonly parts: readonly string[];
    readonly mostReps?: number | undefined;
  };
  readonly words: { readonly cues: readonly { readonly phase: string }[] };
}

interface Use {
  readonly item: PlanItem;
  readonly session: PlanSession;
  readonly exercise: string;
  /** An easier way of the exercise itself, by its name. */
  readonly way: string | undefined;
  readonly load: PlanLoad | undefined;
  readonly reps: number | undefined;
  /** Printed among what is ahead or what is needed, not to be done in this session. */
  readonly told: boolean;
}

export interface ClientFacts {
  readonly tests: readonly { readonly exercise: string; readonly date: string }[];
}

export function auditFacts(plan: PlanJson, exercises: readonly ExerciseFacts[], client: ClientFacts): string[] {
  const byId = new Map(exercises.flatMap((one) => [...one.formerIds, one.id].map((id) => [id, one] as const)));
  for (const one of exercises) byId.set(one.id, one);
  const found = new Set<string>();
  for (const use of usesIn(plan)) {
    const exercise = byId.get(use.exercise);
    if (exercise === undefined) {
      found.add(`${use.item.id}: ${use.exercise} is not in the library`);
      continue;
    }
    const all = withParts(exercise, byId);
    const said = [
      ...all.flatMap((one) => cautionsMet(plan, one, use)),
      ...all.flatMap((one) => signOffMissing(plan, one, use, client, byId)),
      ...all.flatMap((one) => kitMissing(plan, one)),
      ...all.flatMap((one) => liftedFromTheFloor(plan, one, use)),
      ...heldWrongly(plan, exercise, use),
      ...tooManyReps(plan, exercise, use),
      ...tooFast(plan, all),
    ];
    for (const text of said) found.add(`${use.item.id}: ${use.exercise}${use.way ? `#${use.way}` : ''}: ${text}`);
  }
  return [...found, ...testedTooSoon(plan)];
}

/** As many as there are: never in pregnancy or with a vertebral fracture, not at the start of a moderate or first plan. */
function testedTooSoon({ weeks, inputs }: PlanJson): string[] {
  const { moderate, health, derived } = inputs.standing;
  const never = health.some(({ fact }) => fact === 'pregnancy') || derived.some(({ rule }) => rule === 'fracture-lift');
  const gently = moderate || inputs.blocksBefore === 0;
  return weeks.flatMap(({ sessions }, week) =>
    sessions.flatMap((session) =>
      session.groups
        .filter(({ kind }) => kind !== 'test')
        .flatMap(({ items }) => items)
        .filter(({ sets }) => sets.some(({ kind }) => kind === 'test') && (never || (gently && week === 0)))
        .map(({ id }) => `${id}: tested too soon`),
    ),
  );
}

function withParts(exercise: ExerciseFacts, byId: ReadonlyMap<string, ExerciseFacts>): readonly ExerciseFacts[] {
  const all = [exercise];
  for (const one of all) {
    for (const id of one.facts.parts) {
      const part = byId.get(id);
      if (part !== undefined && !all.includes(part)) all.push(part);
    }
  }
  return all;
}

function usesIn(plan: PlanJson): readonly Use[] {
  const uses: Use[] = [];
  for (const session of plan.weeks.flatMap((week) => week.sessions)) {
    for (const item of session.groups.flatMap((group) => group.items)) {
      const add = (exercise: string, load: PlanLoad | undefined, reps: number | undefined, told = false) => {
        const [id = '', own] = exercise.split('#');
        uses.push({ item, session, exercise: id, way: own ?? doneAs(item, id), load, reps, told });
      };
      const addSets = (exercise: string, sets: readonly PlanSet[]) => {
        if (sets.length === 0) add(exercise, undefined, undefined);
        for (const set of sets) {
          const held = set.exercise ?? exercise;
          // Of rising or falling reps each step is within what an exercise keeps its quality for.
          add(held, set.load, set.steps === undefined ? set.reps : Math.max(...set.steps));
          if (set.then !== undefined) add(held, set.then.load, set.then.reps);
          const needs = set.gate?.needs;
          if (needs !== undefined) add(needs.exercise, needs.load, needs.reps, true);
          for (const other of set.otherwise ?? []) add(other.exercise, other.load, other.reps);
          for (const choice of set.choose ?? []) add(choice.exercise, choice.load, choice.reps);
        }
      };
      addSets(item.exercise, item.sets);
      for (const easier of item.easier) addSets(easier.exercise ?? item.exercise, easier.sets);
    }
  }
  return uses;
}

/** The way of its own that the whole item is done in, where it is. */
function doneAs(item: PlanItem, exercise: string): string | undefined {
  const { done } = item;
  if (exercise !== item.exercise || typeof done !== 'object' || done === null) return undefined;
  const way: unknown = Reflect.get(done, 'way');
  return typeof way === 'string' ? way.split('#').at(-1) : undefined;
}

/** *Avoid* whatever asks it; *take care*: nothing that asks much of it, but in an easier way of its own. */
function cautionsMet({ inputs, weeks }: PlanJson, { facts, words }: ExerciseFacts, { way }: Use): string[] {
  const dates = weeks.flatMap((week) => week.sessions.map((session) => session.date));
  const [first = '', last = ''] = [dates[0], dates.at(-1)];
  const overhead = facts.room.ceiling === 'any' ? [] : [{ of: 'overhead', degree: ceilingDegree(facts), phases: [] }];
  const named = facts.asks.some((ask) => ask.of === 'overhead');
  const asks = named ? facts.asks : [...facts.asks, ...overhead];
  const known = [...asks.flatMap((ask) => ask.phases), ...words.cues.map((cue) => cue.phase)].map(lower);
  const own = inputs.cautions
    .filter((caution) => caution.from <= last && (caution.until ?? last) >= first)
    .map(({ what, degree, phases = [] }) => ({ what, degree, phases: phases.map(lower) }));
  const derived = inputs.standing.derived.map(({ what, degree }) => ({ what, degree, phases: [] as string[] }));
  return [...own, ...derived].flatMap(({ what, degree, phases }) => {
    const narrow = phases.length > 0 && phases.every((phase) => known.includes(phase));
    const met = asks.filter(
      (ask) =>
        ask.of === what &&
        (!narrow || ask.phases.length === 0 || ask.phases.some((one) => phases.includes(lower(one)))),
    );
    if (met.length === 0) return [];
    if (degree === 'avoid') return [`asks ${what}, which is to be avoided`];
    return met.some((ask) => ask.degree === 'much') && way === undefined
      ? [`asks much of ${what}, which wants care`]
      : [];
  });
}

/** Whatever is held and set down on the floor; a band is not. */
function liftedFromTheFloor({ inputs }: PlanJson, { facts }: ExerciseFacts, { load }: Use): string[] {
  const avoided = [...inputs.cautions, ...inputs.standing.derived].some(
    ({ what, degree }) => what === 'lifting from the floor' && degree === 'avoid',
  );
  const heavy = load?.band === undefined && (load?.grams ?? 0) > 0;
  return avoided && facts.onTheFloor && heavy ? [`lifts ${load?.label} from the floor`] : [];
}

const lower = (text: string): string => text.toLowerCase();
const ceilingDegree = (facts: ExerciseFacts['facts']): string =>
  facts.room.ceiling === 'load overhead' ? 'much' : 'some';

const MS_PER_DAY = 86_400_000;
const dayOf = (iso: string): number => new Date(`${iso}T00:00:00Z`).getTime() / MS_PER_DAY;
const ruleOf = (plan: PlanJson, id: string): number => plan.rules.find((rule) => rule.id === id)?.value ?? Number.NaN;

function needsSignOff({ facts }: ExerciseFacts): boolean {
  const asks = facts.asks.map((ask) => ask.of);
  const loaded = facts.kit.load.length > 0;
  return (
    facts.signOff ||
    facts.way === 'swing' ||
    facts.room.ceiling === 'load overhead' ||
    asks.includes('speed') ||
    asks.includes('loaded twist') ||
    (loaded && asks.includes('overhead')) ||
    (loaded && facts.kit.load.every((need) => need.kind === 'bar'))
  );
}

function signOffMissing(
  plan: PlanJson,
  exercise: ExerciseFacts,
  use: Use,
  client: ClientFacts,
  byId: ReadonlyMap<string, ExerciseFacts>,
): string[] {
  const ids = [exercise.id, ...exercise.formerIds];
  const given = plan.inputs.signOffs
    .filter((one) => ids.includes(one.exercise) && one.date <= plan.today)
    .sort((a, b) => (a.date === b.date ? (b.grams ?? 0) - (a.grams ?? 0) : a.date < b.date ? 1 : -1));
  const [latest] = given;
  const { load, session } = use;
  const bar = load?.pieces.some(({ id }) => plan.inputs.kit.some((item) => item.id === id && item.kind === 'bar'));
  const needed = needsSignOff(exercise);
  if (latest === undefined) return needed || bar === true ? ['was never signed off'] : [];
  const found: string[] = [];
  const mass =
    load?.band === undefined && load !== undefined ? Math.max(load.grams, inOneHand(load, plan.inputs.kit)) : 0;
  const top = latest.grams ?? (needed ? 0 : Number.POSITIVE_INFINITY);
  const same = load !== undefined && 'label' in load && isSameBell(load, mass, top);
  if (mass > top + 1 && !same) found.push(`${load?.label} is above what was signed off`);
  if (!needed && bar !== true) return found;
  const tests = client.tests.filter((test) => ids.includes(test.exercise) && test.date <= plan.today);
  /** Done by itself, or as a part of what is done. */
  const usesIt = (id: string): boolean => {
    const done = byId.get(id);
    return done !== undefined && withParts(done, byId).includes(exercise);
  };
  const planned = plan.weeks.flatMap((week) =>
    week.sessions.filter(
      ({ date, groups }) =>
        date < session.date && groups.some((group) => group.items.some((item) => usesIt(item.exercise))),
    ),
  );
  const used = Math.max(...[latest, ...tests, ...planned].map(({ date }) => dayOf(date)));
  if (dayOf(session.date) - used > ruleOf(plan, 'sign-off-lapses')) found.push(`not seen since ${latest.date}`);
  return found;
}

function kitMissing(plan: PlanJson, { facts }: ExerciseFacts): string[] {
  const { kit, room } = plan.inputs;
  const owned = new Set(kit.map(({ kind }) => kind));
  const missing = facts.kit.things.filter((thing) => !owned.has(thing));
  const { ceiling } = facts.room;
  const high = ceiling === 'any' ? 0 : ruleOf(plan, ceiling === 'load overhead' ? 'ceiling-load' : 'ceiling-arms');
  const low = high > (room.ceilingMillimetres ?? 0);
  return [
    ...missing.map((thing) => `needs a ${thing}, and there is none`),
    ...(low ? [`needs ${high} mm of height, and there are ${room.ceilingMillimetres ?? 'none known'}`] : []),
  ];
}

/** One where one is asked, two alike unless it says otherwise, a bar or a band only where it is done with one. */
function heldWrongly({ inputs }: PlanJson, { facts }: ExerciseFacts, { load }: Use): string[] {
  if (load === undefined) {
    return [];
  }
  const pieces = load.pieces.map(({ id }) => inputs.kit.find((item) => item.id === id));
  const holders = pieces.filter((piece) => piece?.kind !== 'plate');
  const kind = holders[0]?.kind ?? 'nothing';
  const masses = new Set(holders.map((piece) => piece?.grams));
  const held = holders.map((piece) => piece?.grams ?? 0);
  /** A third is the most: 12 with 16, 24 with 32. */
  const isNotTooUnlike = 3 * Math.max(...held) <= 4 * Math.min(...held);
  const fits = facts.kit.load.some((need) => {
    if (need.kind === 'bar' || need.kind === 'band') return kind === need.kind && holders.length === 1;
    const like = kind === need.kind || (need.kind === 'dumbbell' && kind === 'handle');
    return like && holders.length === need.count && (masses.size === 1 || (need.unequal === true && isNotTooUnlike));
  });
  const found = fits ? [] : [`not done with ${load.label} of ${holders.length} ${kind}`];
  return load.mode === facts.holds ? found : [...found, `held ${load.mode}, not ${facts.holds}`];
}

/** Fast lifts lose their quality: the exercise's own most, else the common one. */
function tooManyReps(plan: PlanJson, { facts }: ExerciseFacts, { reps, item }: Use): string[] {
  if (facts.way !== 'swing' || reps === undefined || item.way !== 'swing') return [];
  const most = facts.mostReps ?? ruleOf(plan, 'swing-cap');
  return reps <= most ? [] : [`${reps} reps in a set, and it keeps its quality for ${most}`];
}

/** No part of a moderate plan: swing work, and what asks much speed. */
const tooFast = ({ inputs }: PlanJson, all: readonly ExerciseFacts[]): string[] =>
  inputs.standing.moderate &&
  all.some(
    ({ facts }) => facts.way === 'swing' || facts.asks.some((ask) => ask.of === 'speed' && ask.degree === 'much'),
  )
    ? ['fast work in a moderate plan']
    : [];

/**
 * A client's plan as it travels, so that a phone fetches little. It leaves out what stands in it or beside it already: of a
 * set's key all that its session, row, side, kind and round say; of an easier way the name, where the page of that exercise
 * has it for a heading. Sessions stand beside those of the same name, for the second is much like the first, and what is
 * left is told by its differences. What comes out is what went in.
 */
import type { ClientItem, ClientPlan, ClientSession, ClientSet } from '../model/client-plan.js';
import type { SetKey } from '../model/identity.js';
import { type ByDifference, readByDifference, tellByDifference } from './by-difference.js';

export type Travelling = ByDifference;

/** What the booklet's own page calls an exercise; `undefined` where it has no page. */
export type Called = (exercise: string) => string | undefined;

/** Begins what is left of a text whose stem is said by where it stands; no key and no exercise begins so. */
const CUT = '/';

const cut = <T extends string>(text: T, stem: string): T =>
  text.startsWith(stem) ? (`${CUT}${text.slice(stem.length)}` as T) : text;
const made = <T extends string>(text: T, stem: string): T =>
  text.startsWith(CUT) ? (`${stem}${text.slice(CUT.length)}` as T) : text;

type Easier = ClientItem['easier'][number];

/** How one part changes on its way; `packing` and `unpacking` are each other's reverse. */
interface Way {
  readonly key: (key: SetKey, stem: string) => SetKey;
  readonly set: (set: ClientSet, stem: string) => ClientSet;
  readonly easier: (easier: Easier, item: ClientItem) => Easier;
}

const endOf = ({ side, kind, round }: Omit<ClientSet, 'key'>): string => `${side ?? 'both'}/${kind}/${round}`;
/** A key that is quite said by its set. */
const SAID = '' as SetKey;

const packing = (called: Called): Way => ({
  key: cut,
  set: (set, stem) => ({ ...set, key: set.key === `${stem}${endOf(set)}` ? SAID : cut(set.key, stem) }),
  easier: (easier, item) => ({
    ...easier,
    ...(easier.exercise === undefined ? {} : { exercise: cut(easier.exercise, `${item.exercise}#`) }),
    say: easier.exercise !== undefined && easier.say !== '' && called(easier.exercise) === easier.say ? '' : easier.say,
  }),
});

const unpacking = (called: Called): Way => ({
  key: made,
  set: (set, stem) => ({ ...set, key: set.key === SAID ? (`${stem}${endOf(set)}` as SetKey) : made(set.key, stem) }),
  easier: (easier, item) => ({
    ...easier,
    ...(easier.exercise === undefined ? {} : { exercise: made(easier.exercise, `${item.exercise}#`) }),
    say: easier.say === '' ? (called(easier.exercise ?? '') ?? '') : easier.say,
  }),
});

/** Every part of a plan anew that changes on its way, each with what stands before it. */
function change(plan: ClientPlan, way: Way): ClientPlan {
  const inItem = (item: ClientItem, session: string): ClientItem => {
    const stem = `${session}${item.row}/`;
    const easier = item.easier.map((one) => {
      const { set } = one;
      return way.easier(set === undefined ? one : { ...one, set: way.set(set, stem) }, item);
    });
    return { ...item, sets: item.sets.map((set) => way.set(set, stem)), easier };
  };
  const inSession = (session: ClientSession): ClientSession => {
    const stem = `${plan.block}/${session.occurrence}/`;
    const groups = session.groups.map((group) => ({ ...group, items: group.items.map((item) => inItem(item, stem)) }));
    const short = { ...session.short, sets: session.short.sets.map((key) => way.key(key, stem)) };
    return { ...session, groups, short };
  };
  return { ...plan, weeks: plan.weeks.map((week) => ({ ...week, sessions: week.sessions.map(inSession) })) };
}

/** Weeks with the names of their sessions alone; the sessions beside them, by name, in the order done. */
interface Sorted {
  readonly plan: Omit<ClientPlan, 'weeks'> & {
    readonly weeks: readonly (Omit<ClientPlan['weeks'][number], 'sessions'> & {
      readonly sessions: readonly string[];
    })[];
  };
  readonly sessions: readonly (readonly ClientSession[])[];
}

function sort(plan: ClientPlan): Sorted {
  const byName = new Map<string, ClientSession[]>();
  for (const session of plan.weeks.flatMap(({ sessions }) => sessions)) {
    byName.set(session.id, [...(byName.get(session.id) ?? []), session]);
  }
  const weeks = plan.weeks.map((week) => ({ ...week, sessions: week.sessions.map(({ id }) => id) }));
  return { plan: { ...plan, weeks }, sessions: [...byName.values()] };
}

function putBack({ plan, sessions }: Sorted): ClientPlan {
  const left = new Map<string, ClientSession[]>();
  for (const own of sessions) if (own[0] !== undefined) left.set(own[0].id, [...own]);
  const weeks = plan.weeks.map((week) => ({
    ...week,
    sessions: week.sessions.flatMap((name) => left.get(name)?.shift() ?? []),
  }));
  return { ...plan, weeks };
}

const NOBODY: Called = () => undefined;

export const packPlan = (plan: ClientPlan, called: Called = NOBODY): Travelling =>
  tellByDifference(sort(change(plan, packing(called))));

/** Reads what `packPlan` wrote into a booklet's own page back to the very same plan; `called` as it was then. */
export function unpackPlan(travelling: Travelling, called: Called = NOBODY): ClientPlan {
  // The page was written by the same build, and stands in no other's hands.
  return change(putBack(readByDifference(travelling) as Sorted), unpacking(called));
}

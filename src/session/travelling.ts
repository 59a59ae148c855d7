/**
 * A client's plan as it travels, so that a phone fetches little. It leaves out what stands in it or beside it already: of a
 * set's key all that its session, row, side, kind and round say; of an easier version the name, where the page of that
 * exercise has it for a heading, and of a way of doing the same one its words and id, where they stand on its page. Sessions stand beside those of the same name, for the second is much like the first, and what is
 * left is told by its differences. What comes out is what went in.
 */
import type { ClientItem, ClientPlan, ClientSession, ClientSet } from '../model/client-plan.js';
import type { SetKey } from '../model/identity.js';
import { slugOf } from '../model/slug.js';
import { type ByDifference, readByDifference, tellByDifference } from './by-difference.js';
import { finish, type InSteps } from './in-steps.js';

export type Travelling = ByDifference;

/** What the booklet's own page of an exercise says of it. */
export interface PageSays {
  /** What it is called; `undefined` where it has no page. */
  readonly called: (exercise: string) => string | undefined;
  /** The words that lead a line there and no link, in order: among them the ways of doing it. */
  readonly leads: (exercise: string) => readonly string[];
}

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

/** The place of a way among the words of its exercise's page, where they say its id as well. */
const PLACE = /^\/(\d+)$/;

function packWay({ exercise = '', say }: Easier, item: ClientItem, { called, leads }: PageSays): Partial<Easier> {
  const slug = cut(exercise, `${item.exercise}#`);
  const place = leads(item.exercise).indexOf(say);
  if (say !== '' && place >= 0 && slug === `${CUT}${slugOf(say)}`) return { exercise: `${CUT}${place}`, say: '' };
  if (say !== '' && called(exercise) === say) return { exercise: slug, say: '' };
  return PLACE.test(slug) ? {} : { exercise: slug };
}

function unpackWay({ exercise = '', say }: Easier, item: ClientItem, { called, leads }: PageSays): Partial<Easier> {
  const place = say === '' ? PLACE.exec(exercise)?.[1] : undefined;
  if (place !== undefined) {
    const said = leads(item.exercise)[Number(place)] ?? '';
    return { exercise: `${item.exercise}#${slugOf(said)}`, say: said };
  }
  const whole = made(exercise, `${item.exercise}#`);
  return { exercise: whole, say: say === '' ? (called(whole) ?? '') : say };
}

const packing = (page: PageSays): Way => ({
  key: cut,
  set: (set, stem) => ({ ...set, key: set.key === `${stem}${endOf(set)}` ? SAID : cut(set.key, stem) }),
  easier: (easier, item) => ({ ...easier, ...(easier.exercise === undefined ? {} : packWay(easier, item, page)) }),
});

const unpacking = (page: PageSays): Way => ({
  key: made,
  set: (set, stem) => ({ ...set, key: set.key === SAID ? (`${stem}${endOf(set)}` as SetKey) : made(set.key, stem) }),
  easier: (easier, item) => ({ ...easier, ...(easier.exercise === undefined ? {} : unpackWay(easier, item, page)) }),
});

/** Every part of a plan anew that changes on its way, each with what stands before it. */
function* change(plan: ClientPlan, way: Way): InSteps<ClientPlan> {
  const inItem = (item: ClientItem, session: string): ClientItem => {
    const stem = `${session}${item.row}/`;
    const easier = item.easier.map((one) => {
      const { set } = one;
      return way.easier(set === undefined ? one : { ...one, set: way.set(set, stem) }, item);
    });
    return { ...item, sets: item.sets.map((set) => way.set(set, stem)), easier };
  };
  function* inSession(session: ClientSession): InSteps<ClientSession> {
    const stem = `${plan.block}/${session.occurrence}/`;
    const groups: ClientSession['groups'][number][] = [];
    for (const group of session.groups) {
      yield;
      groups.push({ ...group, items: group.items.map((item) => inItem(item, stem)) });
    }
    const short = { ...session.short, sets: session.short.sets.map((key) => way.key(key, stem)) };
    return { ...session, groups, short };
  }
  const weeks: ClientPlan['weeks'][number][] = [];
  for (const week of plan.weeks) {
    const sessions: ClientSession[] = [];
    for (const session of week.sessions) sessions.push(yield* inSession(session));
    weeks.push({ ...week, sessions });
  }
  return { ...plan, weeks };
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

const NO_PAGE: PageSays = { called: () => undefined, leads: () => [] };

export const packPlan = (plan: ClientPlan, page: PageSays = NO_PAGE): Travelling =>
  tellByDifference(sort(finish(change(plan, packing(page)))));

/** Reads what `packPlan` wrote into a booklet's own page back to the very same plan; `page` as it was then. */
export const unpackPlan = (travelling: Travelling, page: PageSays = NO_PAGE): ClientPlan =>
  finish(unpackInSteps(travelling, page));

/** The same, for a phone on which it takes longer than a tap may wait. */
export function* unpackInSteps(travelling: Travelling, page: PageSays): InSteps<ClientPlan> {
  // The page was written by the same build, and stands in no other's hands.
  const sorted = (yield* readByDifference(travelling)) as Sorted;
  return yield* change(putBack(sorted), unpacking(page));
}

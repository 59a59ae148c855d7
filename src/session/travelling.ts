/**
 * A client's plan as it travels: what stands in it more than once is written once and named by its place in a list, so that
 * a phone fetches little. A set's key says again in which session and row it stands: only what comes after travels, and
 * so one week is like another. What comes out is what went in.
 */
import type { ClientItem, ClientPlan, ClientSet } from '../model/client-plan.js';
import type { SetKey } from '../model/identity.js';

export interface Travelling {
  /** Each may name those before it. */
  readonly parts: readonly unknown[];
  readonly plan: unknown;
}

/** In place of a part: its index in `parts`. No plan has a field of this name. */
const AT = '=';
/** Letters from which on a part is worth a name. */
const WORTH = 24;

const isGroup = (value: unknown): value is object => typeof value === 'object' && value !== null;

/** Begins a key of which the stem is left out; no key begins so. */
const CUT = '/';

const cut = (key: SetKey, stem: string): SetKey =>
  key.startsWith(stem) ? (`${CUT}${key.slice(stem.length)}` as SetKey) : key;
const made = (key: SetKey, stem: string): SetKey =>
  key.startsWith(CUT) ? (`${stem}${key.slice(CUT.length)}` as SetKey) : key;

/** Every key of a plan anew, each with all that stands before it where it stands. */
function withKeys(plan: ClientPlan, change: (key: SetKey, stem: string) => SetKey): ClientPlan {
  const inItem = (item: ClientItem, session: string): ClientItem => {
    const stem = `${session}${item.row}/`;
    const own = (set: ClientSet): ClientSet => ({ ...set, key: change(set.key, stem) });
    const easier = item.easier.map((one) => (one.set === undefined ? one : { ...one, set: own(one.set) }));
    return { ...item, sets: item.sets.map(own), easier };
  };
  const weeks = plan.weeks.map((week) => ({
    ...week,
    sessions: week.sessions.map((session) => {
      const stem = `${plan.block}/${session.occurrence}/`;
      const groups = session.groups.map((group) => ({
        ...group,
        items: group.items.map((item) => inItem(item, stem)),
      }));
      const short = { ...session.short, sets: session.short.sets.map((key) => change(key, stem)) };
      return { ...session, groups, short };
    }),
  }));
  return { ...plan, weeks };
}

export function packPlan(whole: ClientPlan): Travelling {
  return pack(withKeys(whole, cut));
}

function pack(plan: ClientPlan): Travelling {
  const counts = new Map<string, number>();
  const letters = new Map<object, string>();
  const count = (value: unknown): string => {
    if (!isGroup(value)) return JSON.stringify(value) ?? 'null';
    const inner = Array.isArray(value)
      ? `[${value.map(count).join()}]`
      : `{${Object.entries(value)
          .filter(([, each]) => each !== undefined)
          .map(([name, each]) => `${JSON.stringify(name)}:${count(each)}`)
          .join()}}`;
    letters.set(value, inner);
    counts.set(inner, (counts.get(inner) ?? 0) + 1);
    return inner;
  };
  count(plan);
  const parts: unknown[] = [];
  const places = new Map<string, number>();
  const whole = (value: object): unknown =>
    Array.isArray(value)
      ? value.map(named)
      : Object.fromEntries(Object.entries(value).map(([name, each]) => [name, named(each)]));
  const named = (value: unknown): unknown => {
    if (!isGroup(value)) return value;
    const inner = letters.get(value) ?? '';
    if ((counts.get(inner) ?? 0) < 2 || inner.length < WORTH) return whole(value);
    const known = places.get(inner);
    if (known !== undefined) return { [AT]: known };
    const packed = whole(value);
    places.set(inner, parts.length);
    parts.push(packed);
    return { [AT]: parts.length - 1 };
  };
  return { plan: named(plan), parts };
}

/** Reads what `packPlan` wrote into a booklet's own page back to the very same plan. */
export function unpackPlan({ parts, plan }: Travelling): ClientPlan {
  const known: unknown[] = [];
  const whole = (value: unknown): unknown => {
    if (!isGroup(value)) return value;
    if (Array.isArray(value)) return value.map(whole);
    if (AT in value) return typeof value[AT] === 'number' ? known[value[AT]] : undefined;
    return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, whole(each)]));
  };
  for (const part of parts) known.push(whole(part));
  // The page was written by the same build, and stands in no other's hands.
  return withKeys(whole(plan) as ClientPlan, made);
}

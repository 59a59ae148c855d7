/**
 * Steps that lead back to where they began. The work grows with the steps: those that lie on no circle are told apart by
 * one walk (Tarjan 1972, SIAM Journal on Computing 1, 146–160), and of a circle that was told no step is looked at again.
 */

export interface Step {
  readonly from: string;
  readonly to: string;
}

export interface Circle<S extends Step> {
  /** The first step of it, as they are given. */
  readonly step: S;
  /** From where it begins round to where it comes back from, the shortest way; one id alone where it leads to itself. */
  readonly ids: readonly string[];
}

type Next = ReadonlyMap<string, readonly string[]>;

/** In order of the steps. Where any step lies on a circle at least one is told. */
export function circlesIn<S extends Step>(steps: readonly S[]): readonly Circle<S>[] {
  const next = new Map<string, string[]>();
  for (const { from, to } of steps) {
    const known = next.get(from);
    if (known === undefined) next.set(from, [to]);
    else known.push(to);
  }
  const rings = ringsIn(next);
  const told = new Set<string>();
  const found: Circle<S>[] = [];
  for (const step of steps) {
    const { from, to } = step;
    if (told.has(named(from, to)) || rings.get(from) !== rings.get(to)) continue;
    const ids = from === to ? [from] : [from, ...pathBetween(next, rings, to, from).slice(0, -1)];
    for (const [at, id] of ids.entries()) told.add(named(id, ids[at + 1] ?? from));
    found.push({ step, ids });
  }
  return found;
}

/** No id has a space in it. */
const named = (from: string, to: string): string => `${from} ${to}`;

interface Visit {
  readonly at: string;
  readonly to: readonly string[];
  readonly met: number;
  /** How many of `to` were seen. */
  seen: number;
  /** The earliest that can be come back to from here. */
  earliest: number;
}

/** A number for each id; two have the same where each leads to the other. */
function ringsIn(next: Next): ReadonlyMap<string, number> {
  const met = new Map<string, number>();
  const rings = new Map<string, number>();
  const open: string[] = [];
  const walk: Visit[] = [];
  const enter = (at: string): void => {
    const number = met.size;
    met.set(at, number);
    open.push(at);
    walk.push({ at, to: next.get(at) ?? [], met: number, seen: 0, earliest: number });
  };
  for (const start of next.keys()) {
    if (!met.has(start)) enter(start);
    for (let here = walk.at(-1); here !== undefined; here = walk.at(-1)) {
      const to = here.to[here.seen];
      here.seen += 1;
      if (to !== undefined) {
        const before = met.get(to);
        if (before === undefined) enter(to);
        else if (!rings.has(to)) here.earliest = Math.min(here.earliest, before);
        continue;
      }
      walk.pop();
      const below = walk.at(-1);
      if (below !== undefined) below.earliest = Math.min(below.earliest, here.earliest);
      if (here.earliest !== here.met) continue;
      for (let one = open.pop(); one !== undefined; one = open.pop()) {
        rings.set(one, here.met);
        if (one === here.at) break;
      }
    }
  }
  return rings;
}

/** Ids from `start` to `goal` within their ring, the shortest way, both included. */
function pathBetween(next: Next, rings: ReadonlyMap<string, number>, start: string, goal: string): readonly string[] {
  const cameFrom = new Map<string, string | undefined>([[start, undefined]]);
  // Grows while it is walked.
  for (const at of cameFrom.keys()) {
    if (at === goal) break;
    for (const to of next.get(at) ?? []) {
      if (rings.get(to) === rings.get(goal) && !cameFrom.has(to)) cameFrom.set(to, at);
    }
  }
  const path: string[] = [];
  for (let at: string | undefined = goal; at !== undefined; at = cameFrom.get(at)) path.push(at);
  return path.reverse();
}

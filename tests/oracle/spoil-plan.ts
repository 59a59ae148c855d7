/** A right plan with one thing wrong: so that each check of the audit is seen to speak up. */
import { expect } from 'vitest';
import { makePlan } from './make-plan.js';

type Step = string | number;
export type Path = readonly Step[];

export function follow(from: unknown, path: Path): object {
  let at: unknown = from;
  for (const step of path) {
    if (typeof at !== 'object' || at === null) expect.fail(`nothing at ${path.join('.')}`);
    at = Reflect.get(at, step);
  }
  if (typeof at !== 'object' || at === null) expect.fail(`nothing at ${path.join('.')}`);
  return at;
}

export const REMOVED = Symbol('removed');

/** The plan with one value put elsewhere, or taken away. */
export function spoil(...changes: readonly (readonly [Path, unknown])[]): unknown {
  const plan = makePlan();
  for (const [path, value] of changes) {
    const last = path.at(-1);
    const parent = follow(plan, path.slice(0, -1));
    const isAdded = last === 'held' || typeof last === 'number';
    if (last === undefined || (!isAdded && !Reflect.has(parent, last))) expect.fail(`nothing at ${path.join('.')}`);
    if (value === REMOVED) Reflect.deleteProperty(parent, last);
    else Reflect.set(parent, last, value);
  }
  return plan;
}

export const item = (week: number, session: number, group: number, at: number): Path => [
  ...['weeks', week - 1, 'sessions', session, 'groups', group, 'items', at],
];

export type Fault = readonly [name: string, finding: RegExp, changes: readonly (readonly [Path, unknown])[]];

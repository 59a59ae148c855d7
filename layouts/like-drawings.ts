/** An order of drawings in which those with much in common stand near each other, for whoever packs what is sent. */
import type { Drawing } from '../src/model/picture.js';
import { pathData } from './path-data.js';

/** What is like one of so many before it can still be packed by it: gzip sees 32 KB back, some ten drawings. */
const NEAR = 4;

/** What its lines do, two steps at a time: the same wherever a limb is. */
function pairsOf({ row: { places } }: Drawing): ReadonlySet<string> {
  const pairs = new Set<string>();
  for (const { room, figure, arrow } of places) {
    for (const { outline } of [...room, ...figure, ...arrow]) {
      const steps = pathData([outline]).match(/[a-z][^a-z]*/g) ?? [];
      for (let i = 1; i < steps.length; i += 1) pairs.add(`${steps[i - 1]}${steps[i]}`);
    }
  }
  return pairs;
}

function inCommon(one: ReadonlySet<string>, others: ReadonlySet<string>): number {
  let count = 0;
  for (const pair of one) if (others.has(pair)) count += 1;
  return count;
}

/** From the first on, each time the one that has most in common with the last few. */
export function nearTheirLike<T extends { readonly drawing: Drawing }>(drawn: readonly T[]): readonly T[] {
  const pairs = new Map(drawn.map((one) => [one, pairsOf(one.drawing)]));
  const NONE: ReadonlySet<string> = new Set();
  const left = new Set(drawn);
  const order: T[] = [];
  for (let next = drawn[0]; next !== undefined; ) {
    order.push(next);
    left.delete(next);
    const seen = new Set(order.slice(-NEAR).flatMap((one) => [...(pairs.get(one) ?? NONE)]));
    next = undefined;
    let most = -1;
    for (const one of left) {
      const common = inCommon(pairs.get(one) ?? NONE, seen);
      if (common > most) {
        most = common;
        next = one;
      }
    }
  }
  return order;
}

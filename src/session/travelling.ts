/**
 * A client's plan as it travels: what stands in it more than once is written once and named by its place in a list, so that
 * a phone fetches little. What comes out is what went in.
 */
import type { ClientPlan } from '../model/client-plan.js';

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

export function packPlan(plan: ClientPlan): Travelling {
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
      ? value.map(pack)
      : Object.fromEntries(Object.entries(value).map(([name, each]) => [name, pack(each)]));
  const pack = (value: unknown): unknown => {
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
  return { plan: pack(plan), parts };
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
  return whole(plan) as ClientPlan;
}

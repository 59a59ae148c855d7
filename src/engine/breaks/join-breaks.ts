/** Breaks end to end, or over one another, are one: training never came back between them. */
import type { Break } from '../../model/client.js';
import { addDays, type Day } from '../../model/day.js';
import type { BlockContext } from '../block-context.js';
import { BREAK_JOINED } from '../rules/break-joined.js';

export interface Joined {
  readonly from: Day;
  readonly until: Day;
  /** Those it is made of, in order. */
  readonly parts: readonly Break[];
}

interface Breaking {
  readonly client: Pick<BlockContext['client'], 'breaks'>;
  readonly rules: Pick<BlockContext['rules'], 'valueOf'>;
}

/** In order of their beginnings; no more than `break-joined` days lie between two that are one. */
export function joinBreaks({ client, rules }: Breaking): readonly Joined[] {
  const joined: Joined[] = [];
  for (const next of [...client.breaks].sort((a, b) => a.from - b.from || a.until - b.until)) {
    const last = joined.at(-1);
    if (last === undefined || next.from > addDays(last.until, rules.valueOf(BREAK_JOINED) + 1)) {
      joined.push({ from: next.from, until: next.until, parts: [next] });
      continue;
    }
    const [until = last.until] = [last.until, next.until].sort((a, b) => b - a);
    joined[joined.length - 1] = { from: last.from, until, parts: [...last.parts, next] };
  }
  return joined;
}

/** Days of a break that count for one cause: the longest of its own. */
export const daysOf = (parts: readonly Break[], cause: Break['cause']): number =>
  Math.max(0, ...parts.filter((part) => part.cause === cause).map(({ from, until }) => until - from + 1));

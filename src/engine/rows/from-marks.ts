/** Where a row goes on: with the option its marks ended with, and with what is remembered of the exercise. */
import type { Day } from '../../model/day.js';
import type { Grams } from '../../model/quantity.js';
import type { StrandInput, VersionInput } from '../../model/strand.js';
import { type BlockContext, names } from '../block-context.js';
import { trustIn } from '../breaks/trust.js';
import { readCapacity } from '../capacity/read-capacity.js';
import { capacityOf, isCounted, repsToFailure, resistedLoad } from '../capacity.js';
import type { LastWork, Recall } from '../history/recall.js';
import { NO_RECALL } from '../history/recall.js';
import { heaviestUpTo } from '../kit/at-most.js';
import type { Judged } from '../versions/judge-version.js';
import type { Begun } from './beginning.js';
import type { WalkFitted } from './fit-rows.js';
import { neededAtFirst } from './from-relative.js';
import { walkTempi } from './walk-tempi.js';

type Start = NonNullable<StrandInput['start']>;
type Fitted = Pick<WalkFitted, 'session' | 'row' | 'chain' | 'reps' | 'dose'>;

export const rowKey = ({ session, row }: Pick<WalkFitted, 'session' | 'row'>): string => `${session.id}/${row.id}`;

export const recallOf = ({ recalls }: BlockContext, judged: Judged | undefined): Recall =>
  (judged === undefined ? undefined : recalls.get(judged.exercise.id)) ?? NO_RECALL;

/** Loads down for what hurt, from what was done or known up to that day; `null` stands for what no day is known of. */
export const soreDown = ({ sore }: Recall, since: Day | null): number =>
  sore === null || (since !== null && since > sore.day) ? 0 : sore.lighter;

/** Where the row ended among the versions of its chain, by the latest mark; of one day the easier. */
export interface Ended {
  readonly version: number;
  readonly judged: Judged;
  readonly last: LastWork;
}

/** Not where the coach has tested the version, or the row's own, since, nor from before a break after which nothing is known. */
export function endedIn(context: BlockContext, fitted: Pick<WalkFitted, 'session' | 'row' | 'chain'>): Ended | null {
  const { judged: chain, base } = fitted.chain;
  const key = rowKey(fitted);
  const ends = chain.flatMap((judged, version): readonly Ended[] => {
    const last = recallOf(context, judged).lastIn.get(key);
    return last === undefined || judged.way !== null ? [] : [{ version, judged, last }];
  });
  const open = ends.filter(({ judged, last }) => {
    if (trustIn(context, last.day).kind === 'nothing') return false;
    const own = [judged, chain[base]].flatMap((one) => one?.exercise ?? []);
    return !context.client.tests.some(
      ({ exercise, date, marked }) =>
        marked !== true && date > last.day && date <= context.today && own.some((one) => names(context, exercise, one)),
    );
  });
  return open.sort((a, b) => b.last.day - a.last.day || a.version - b.version)[0] ?? null;
}

/** With the load, the tempo and what was earned there; `null` where nothing was marked, or nothing says what can be lifted. */
export function beginWhereItEnded(context: BlockContext, fitted: Fitted, chain: readonly VersionInput[]): Begun | null {
  const ended = endedIn(context, fitted);
  const version = ended === null ? undefined : chain[ended.version];
  if (ended === null || version === undefined) return null;
  const tested = readCapacity(context, ended.judged, version);
  if (tested === null) return null;
  const { last } = ended;
  const heaviest = heaviestUpTo(version.loads, last.grams);
  const index = heaviest === null ? -1 : version.loads.indexOf(heaviest);
  const load = version.loads[Math.max(0, index - last.lighter)];
  if (index < 0 || load === undefined) return null;
  const same = last.range.min === fitted.reps.min && last.range.max === fitted.reps.max;
  const exact = load.grams === last.grams;
  const tempi = walkTempi(context, fitted);
  const start: Start = {
    version: ended.version,
    load: load.grams,
    tempo: exact ? Math.max(0, tempi.indexOf(last.tempo)) : 0,
    earned: same && exact && !last.short ? last.earned : 0,
  };
  const found = { how: 'tested', capacity: tested.capacity, start, tested, source: ended.judged } as const;
  return { ...found, versions: chain, since: last.day, role: null };
}

/**
 * What is remembered of the exercise it begins in, whatever it begins from: lighter, slower, the weaker side first, and
 * what is earned at least. Where it begins lighter, or fell short, nothing is.
 */
export function asRecalled(context: BlockContext, fitted: WalkFitted, begun: Begun): Begun {
  const { start, capacity, role } = begun;
  if (start === null || capacity === null) return begun;
  const judged = fitted.chain.judged[start.version];
  const recall = recallOf(context, judged);
  const ended = endedIn(context, fitted);
  const last = ended?.version === start.version ? ended.last : null;
  const target = recallOf(context, fitted.chain.judged[fitted.chain.base]);
  // Where it goes on as it ended, the loads that its marks take off are off already.
  const taken = last?.lighter ?? 0;
  // A bell that is stated stays what it is, however often the row is done; marks of a lighter one are lighter already.
  const since = role === null ? (begun.since ?? begun.tested?.test.date ?? null) : null;
  const lighter = Math.max(recall.lighter, soreDown(recall, since));
  const down = role === null && last !== null ? Math.max(0, lighter - taken) : Math.max(lighter, taken);
  const load = underSore(begun, recall, lowered(context, fitted, begun, down, lighter > taken));
  const tempo = recall.tempo === null ? 0 : Math.max(0, walkTempi(context, fitted).indexOf(recall.tempo));
  const short = last?.short === true || [recall, target].some((one) => one.lighter > 0 || one.sore !== null);
  const earned = short ? 0 : [start.earned, recall.earned].includes(2) ? 2 : Math.max(start.earned, recall.earned);
  const each = judged?.exercise.facts.sides === 'each';
  return {
    ...begun,
    capacity: {
      ...capacity,
      weak: capacity.weak || recall.weak,
      side: each && recall.side !== null ? recall.side : capacity.side,
    },
    start: {
      ...start,
      load,
      tempo: Math.max(load === start.load ? start.tempo : 0, tempo),
      earned: earned === 2 ? 2 : earned === 1 ? 1 : 0,
    },
  };
}

/**
 * So many loads down from where it begins, or from the heaviest load that leaves the asked reserve at the bottom of the
 * range where it could not stay there: else the walk, which would have fallen further, might hold more than without.
 */
function lowered(
  context: BlockContext,
  fitted: WalkFitted,
  { start, capacity, versions }: Begun,
  down: number,
  surely: boolean,
): Grams {
  const version = versions[start?.version ?? -1];
  if (start === null || capacity === null || version === undefined || down === 0) return start?.load ?? 0;
  const { loads } = version;
  const bodyMass = context.client.bodyMass?.mass.grams ?? null;
  const counted = isCounted(version, bodyMass);
  const k = capacityOf('epley', capacity, counted);
  const needed = neededAtFirst(context, fitted);
  const begins = loads.findLastIndex(({ grams }) => grams <= start.load);
  const stays = loads.findLastIndex(
    (load) =>
      !surely || !counted || repsToFailure('epley', k, capacity.reps, resistedLoad(version, load, bodyMass)) >= needed,
  );
  return loads[Math.max(0, Math.min(begins, stays) - down)]?.grams ?? start.load;
}

/** Never with as much as hurt, whatever was done since: lighter by as much as what hurts is made, as far as there are any. */
function underSore({ start, versions }: Begun, { sore }: Recall, load: Grams): Grams {
  const { under, lighter = 0 } = sore ?? { under: null };
  if (under === null) return load;
  const loads = versions[start?.version ?? -1]?.loads ?? [];
  const below = loads.filter(({ grams }) => grams < under).at(-lighter) ?? loads[0];
  return Math.min(load, below?.grams ?? load);
}

/** Nothing is made harder up to and on this day: by what hurt or was seen in any version the row may stand on. */
export function heldOf(
  context: BlockContext,
  fitted: WalkFitted | Pick<WalkFitted, 'chain' | 'target'>,
): Recall['hold'] {
  const own = fitted.chain.judged[fitted.chain.base];
  const holds = [context.recalls.get(fitted.target.id), recallOf(context, own)].flatMap((recall) => recall?.hold ?? []);
  return holds.reduce<Recall['hold']>(
    (found, next) => (found === null || next.until > found.until ? next : found),
    null,
  );
}

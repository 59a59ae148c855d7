/** The screen of one set: its figures, its place, the tally, the clock and the rest before it. */
import { readSetKey, type SetKey } from '../../model/identity.js';
import type { LogEvent } from '../../model/log.js';
import type { Clock, Figures, Rest, SessionPlace, SetScreen, TallyRow, TallyState } from '../../model/training.js';
import { lastTimeOf } from './marked-sets.js';
import { likeIt, type SessionToday, type SetToday } from './sets-today.js';
import type { Told } from './told.js';
import type { TrainingState } from './training-state.js';

export interface InSession {
  readonly told: Told;
  readonly state: TrainingState;
  /** In order, without what was taken back. */
  readonly marks: readonly LogEvent[];
  readonly place: SessionPlace;
  readonly today: SessionToday;
}

/** The set marked latest among the work; `null` where none is. */
export function latestMarked({ work }: SessionToday): SetToday | null {
  let latest: SetToday | null = null;
  for (const one of work) {
    if (one.stepped.marked !== null && (latest === null || momentOf(one) >= momentOf(latest))) latest = one;
  }
  return latest;
}

const momentOf = ({ stepped: { marked } }: SetToday): number => (marked === null ? 0 : Date.parse(marked.at) || 0);

/** The first open set after the one marked latest, else the first open one; `null` where nothing is open. */
export function nextOpen(today: SessionToday): SetToday | null {
  const latest = latestMarked(today);
  const from = latest === null ? 0 : today.work.indexOf(latest) + 1;
  const open = ({ stepped }: SetToday): boolean => stepped.marked === null;
  return today.work.slice(from).find(open) ?? today.work.find(open) ?? null;
}

export function setScreen(at: InSession, set: SetToday): SetScreen {
  const { told, place, today, marks } = at;
  const { item, group, stepped } = set;
  const like = likeIt(today.work, set);
  const rows = [...new Set(today.work.map((one) => one.stepped.row))];
  const latest = latestMarked(today);
  const inCircuit = group.kind === 'circuit';
  const occurrences = told.plan.weeks
    .flatMap(({ sessions }) => sessions)
    .filter(({ id }) => id === place.session)
    .map(({ occurrence }) => occurrence);
  const before = lastTimeOf(marks, told.plan.block, place.occurrence, occurrences, item.row);
  return {
    kind: 'set',
    place,
    row: item.row,
    item,
    group,
    turn: { number: rows.indexOf(item.row) + 1, of: rows.length },
    number: like.indexOf(set) + 1,
    of: like.length,
    ...(inCircuit ? { round: { number: like.indexOf(set) + 1, of: like.length } } : {}),
    key: stepped.key,
    figures: set.figures,
    ...(set.paper === undefined ? {} : { paper: set.paper }),
    ...(set.gate === undefined ? {} : { gate: set.gate }),
    tally: tallyOf(today, set),
    clock: clockOf(at, set),
    rest: restOf(at, set),
    last:
      latest === null
        ? null
        : { key: latest.stepped.key, number: likeIt(today.work, latest).indexOf(latest) + 1, row: latest.item.row },
    lastTime: lastFigures(before, set),
    easier: item.easier,
  };
}

function lastFigures(before: ReturnType<typeof lastTimeOf>, { stepped }: SetToday): Figures | null {
  const own = readSetKey(stepped.key);
  const same = before.filter((event) => {
    const key = readSetKey(event.key);
    return key?.kind === own?.kind && key?.side === own?.side;
  });
  const found = same.find((event) => readSetKey(event.key)?.ordinal === own?.ordinal) ?? same.at(-1);
  if (found === undefined) return null;
  const { exercise, key, reps, seconds, metres, load } = found;
  const { kind, round, side } = stepped.set;
  return {
    exercise,
    set: {
      key,
      kind,
      round,
      ...(side === undefined ? {} : { side }),
      ...(reps === undefined ? {} : { reps }),
      ...(seconds === undefined ? {} : { seconds }),
      ...(metres === undefined ? {} : { metres }),
      ...(load === undefined ? {} : { load }),
    },
  };
}

/** A row for each side, in the order done; sets that warm up are not counted. */
export function tallyOf({ work, extra }: SessionToday, { item }: SetToday): readonly TallyRow[] {
  const own = work.filter((one) => one.item === item && one.stepped.set.kind !== 'warm-up');
  const sides = [...new Set(own.map((one) => one.stepped.set.side))];
  return sides.map((side): TallyRow => {
    const planned = own.filter((one) => one.stepped.set.side === side);
    const beyond = extra.flatMap((event) => {
      const key = event === null ? null : readSetKey(event.key);
      if (event === null || key?.row !== item.row || key.side !== (side ?? 'both')) return [];
      return [{ key: event.key, state: 'extra' as const }];
    });
    const marks = planned.map((one) => ({ key: one.stepped.key, state: stateOf(one) }));
    return side === undefined ? { marks: [...marks, ...beyond] } : { side, marks: [...marks, ...beyond] };
  });
}

function stateOf({ stepped: { marked } }: SetToday): TallyState {
  return marked === null ? 'to do' : marked.done;
}

function clockOf({ state }: InSession, { group, item, figures, stepped }: SetToday): Clock {
  const began = state.clock?.row === item.row ? state.clock.began : null;
  if (group.everySeconds !== undefined && group.items.length === 1) {
    return { kind: 'every', everySeconds: group.everySeconds, rounds: item.sets.length, began };
  }
  const own = state.inHand?.key === stepped.key ? state.inHand.began : null;
  if (group.workSeconds !== undefined) {
    return {
      kind: 'work and pause',
      workSeconds: group.workSeconds,
      pauseSeconds: group.pauseSeconds ?? 0,
      began: own,
    };
  }
  const { seconds } = figures.set;
  return seconds === undefined ? { kind: 'none' } : { kind: 'timed', seconds, began: own };
}

/**
 * From the moment the latest set was marked. None before the first set, after one that was left out, between the two
 * sides of one round, where a clock leads, or once the next set was begun.
 */
export function restOf({ state, today, told }: InSession, next: SetToday): Rest | null {
  const latest = latestMarked(today);
  if (latest?.stepped.marked == null || latest.stepped.marked.done === 'left out') return null;
  if (state.inHand?.key === next.stepped.key) return null;
  const { group, stepped } = latest;
  if (group.everySeconds !== undefined) return null;
  const seconds = group.workSeconds === undefined ? stepped.rest : (group.pauseSeconds ?? 0);
  if (seconds === 0 || isOtherSide(latest, next)) return null;
  const longer = state.longer?.after === stepped.key ? state.longer.seconds : 0;
  const began = Math.min(momentOf(latest), told.now);
  return { began, over: began + 1000 * (seconds + longer) };
}

function isOtherSide(a: SetToday, b: SetToday): boolean {
  const [one, other] = [readSetKey(a.stepped.key), readSetKey(b.stepped.key)];
  return (
    one !== null &&
    other !== null &&
    one.row === other.row &&
    one.kind === other.kind &&
    one.ordinal === other.ordinal &&
    one.side !== other.side
  );
}

export const keyOf = (set: SetToday): SetKey => set.stepped.key;

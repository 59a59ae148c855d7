/** The screen of one set: its figures, its place, the tally, the clock and the rest before it. */
import { readSetKey } from '../../model/identity.js';
import type { Figures, SetScreen, TallyRow } from '../../model/training.js';
import { waysOf } from './chain.js';
import { clockOf, restOf } from './clocks.js';
import { type InSession, lastMarked } from './in-session.js';
import { lastTimeOf } from './marked-sets.js';
import type { SetToday } from './set-today.js';
import { placeAmong, type SessionToday } from './sets-today.js';
import { tallyRows } from './tally-rows.js';

export function setScreen(at: InSession, set: SetToday): SetScreen {
  const { place, today } = at;
  const { item, group, stepped } = set;
  const { number, of } = placeAmong(today.work, set);
  const rows = [...new Set(today.work.map((one) => one.stepped.row))];
  const rest = restOf(at, set);
  const clock = clockOf(at, set, rest);
  const goesOn = clock.kind === 'work and pause' && clock.began !== null;
  return {
    kind: 'set',
    place,
    row: item.row,
    item,
    group,
    turn: { number: rows.indexOf(item.row) + 1, of: rows.length },
    number,
    of,
    // A set that is tried before the rounds is none of them.
    ...(group.kind === 'circuit' && (of > 1 || stepped.set.kind === 'work') ? { round: { number, of } } : {}),
    key: stepped.key,
    figures: set.figures,
    ...(set.paper === undefined ? {} : { paper: set.paper }),
    ...(set.gate === undefined ? {} : { gate: set.gate }),
    tally: tallyOf(today, set),
    clock,
    rest: goesOn ? null : rest,
    restLonger: at.told.plan.phone.restLonger,
    last: lastMarked(today),
    lastTime: lastFigures(at, set),
    easier: waysOf(item, today.sore),
  };
}

function lastFigures({ told, place, marks }: InSession, { stepped }: SetToday): Figures | null {
  const own = readSetKey(stepped.key);
  if (own === null) return null;
  const earlier = told.plan.weeks
    .flatMap(({ sessions }) => sessions)
    .filter(({ id, occurrence }) => id === place.session && occurrence < place.occurrence)
    .map(({ occurrence }) => occurrence);
  const same = lastTimeOf(marks, own, earlier);
  const found = same.find((event) => readSetKey(event.key)?.ordinal === own.ordinal) ?? same.at(-1);
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

/** Sets that warm up are not counted. */
function tallyOf({ work }: SessionToday, { item }: SetToday): readonly TallyRow[] {
  const own = work.filter((one) => one.item === item && one.stepped.set.kind !== 'warm-up');
  return tallyRows(
    own.map(({ stepped }) => stepped),
    ({ marked }) => marked?.done ?? 'to do',
  );
}

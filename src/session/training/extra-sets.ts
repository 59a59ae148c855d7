/** Sets beyond the plan: those marked, and those a client asked for and has yet to do. */
import { readSetKey, type SetKey, setKey } from '../../model/identity.js';
import type { LogEvent } from '../../model/log.js';
import type { SteppedSession } from '../step-session.js';
import type { FirstWord, SetEvent } from './marked-sets.js';
import type { SetToday } from './set-today.js';

/** Each after the last of its row. A key of a row that is not done today is passed by. */
export function withExtras(
  planned: readonly SetToday[],
  marked: SteppedSession['extra'],
  wanted: readonly string[],
  first: ReadonlyMap<string, FirstWord>,
): readonly SetToday[] {
  const known = new Set<string>(marked.map(({ key }) => key));
  const more = [
    ...marked.flatMap((event) => likeLast(planned, event.key, event, first.get(event.key) ?? null)),
    ...wanted.flatMap((key) => (known.has(key) ? [] : likeLast(planned, key, null, null))),
  ];
  return planned.flatMap((one, index) => {
    const { row } = one.stepped;
    const isLast = planned.findLastIndex(({ stepped }) => stepped.row === row) === index;
    return isLast ? [one, ...more.filter(({ stepped }) => stepped.row === row)] : [one];
  });
}

/** With the figures of the last planned one of its row and side. */
function likeLast(
  planned: readonly SetToday[],
  text: string,
  marked: SetEvent | null,
  first: FirstWord | null,
): readonly SetToday[] {
  const key = readSetKey(text);
  if (key === null) return [];
  const own = planned.filter(({ stepped }) => stepped.row === key.row);
  const like = own.findLast(({ stepped: { set } }) => set.kind === key.kind && (set.side ?? 'both') === key.side);
  if (like === undefined) return [];
  const { stepped, figures, item, group, tempo, chosen } = like;
  const fresh = { key: setKey(key), round: key.ordinal };
  return [
    {
      stepped: { ...stepped, key: fresh.key, set: { ...stepped.set, ...fresh }, marked },
      first,
      extra: true,
      item,
      group,
      tempo,
      chosen,
      figures: { ...figures, set: { ...figures.set, ...fresh } },
    },
  ];
}

/** The keys of one more set of a row's work, on each of its sides. */
export function keysOfOneMore(work: readonly SetToday[], marks: readonly LogEvent[], row: string): readonly SetKey[] {
  const own = work.filter(({ stepped }) => stepped.row === row && stepped.set.kind === 'work');
  const sides = new Map(own.flatMap(({ stepped }) => sideOf(stepped.key)));
  const taken = [...work.map(({ stepped }) => stepped.key), ...marks.flatMap(keysIn)].flatMap((text) => {
    const key = readSetKey(text);
    return key === null ? [] : [key];
  });
  return [...sides.values()].map((parts) => {
    const { block, occurrence, kind, side } = parts;
    const ordinals = taken
      .filter((key) => key.block === block && key.occurrence === occurrence && key.row === row)
      .filter((key) => key.kind === kind && key.side === side)
      .map(({ ordinal }) => ordinal);
    return setKey({ ...parts, ordinal: Math.max(0, ...ordinals) + 1 });
  });
}

function sideOf(text: string): readonly (readonly [string, NonNullable<ReturnType<typeof readSetKey>>])[] {
  const key = readSetKey(text);
  return key === null ? [] : [[key.side, key]];
}

const keysIn = (event: LogEvent): readonly SetKey[] => (event.kind === 'set' ? [event.key] : []);

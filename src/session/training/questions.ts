/** Which question stands open: how many more good ones, after a feeler set and after an exercise's last set. */
import type { SetKey, Side } from '../../model/identity.js';
import type { ReserveScreen } from '../../model/training.js';
import { isAnswered } from './marked-sets.js';
import type { InSession } from './set-screen.js';
import { type SetToday, sideOf } from './sets-today.js';

export interface Question {
  readonly screen: ReserveScreen;
  /** What it is called where it was passed by. */
  readonly name: string;
}

/** Asked once, after all sets it is about; one that was passed by is not asked again. */
export function openQuestion(at: InSession): Question | null {
  const { today } = at;
  for (const row of new Set(today.work.map(({ stepped }) => stepped.row))) {
    const own = today.work.filter(({ stepped }) => stepped.row === row);
    const found = feelerQuestion(at, own) ?? lastQuestion(at, own);
    if (found !== null) return found;
  }
  return null;
}

function feelerQuestion(at: InSession, own: readonly SetToday[]): Question | null {
  const feelers = own.filter(({ stepped }) => stepped.set.kind === 'feeler');
  // Once the work has begun, the answer would be one to another question.
  if (own.some(({ stepped }) => stepped.set.kind === 'work' && stepped.marked !== null)) return null;
  for (const feeler of feelers) {
    const side = sideOf(feeler.stepped.key);
    if (feeler.stepped.marked?.done !== 'done' || feeler.chosen !== null) continue;
    const found = ask(at, feeler, [feeler.stepped.key], side, true);
    if (found !== null) return found;
  }
  return null;
}

function lastQuestion(at: InSession, own: readonly SetToday[]): Question | null {
  const work = own.filter(({ stepped }) => stepped.set.kind === 'work');
  const asksIt = work[0]?.item.asked.reserve !== null;
  if (work.length === 0 || !asksIt || own.some(({ stepped }) => stepped.marked === null)) return null;
  const done = work.filter(({ stepped }) => stepped.marked?.done === 'done' || stepped.marked?.done === 'easier');
  const sides = [...new Set(done.map(({ stepped }) => sideOf(stepped.key)))];
  const differ = sides.length > 1 && new Set(sides.map((side) => wasDone(done, side))).size > 1;
  for (const side of differ ? sides : sides.slice(0, 1)) {
    const asked = differ ? done.filter(({ stepped }) => sideOf(stepped.key) === side) : done;
    const last = asked.at(-1);
    if (last === undefined) continue;
    const found = ask(
      at,
      last,
      asked.map(({ stepped }) => stepped.key),
      differ ? side : bothOr(sides),
      false,
    );
    if (found !== null) return found;
  }
  return null;
}

const bothOr = ([first, second]: readonly (Side | 'both')[]): Side | 'both' =>
  second === undefined && first !== undefined ? first : 'both';

/** What was lifted with one side, set by set. */
const wasDone = (done: readonly SetToday[], side: Side | 'both'): string =>
  JSON.stringify(
    done
      .filter(({ stepped }) => sideOf(stepped.key) === side)
      .map(({ stepped: { marked } }) => [marked?.reps, marked?.seconds, marked?.metres, marked?.load?.label]),
  );

function ask(
  { state, marks, place }: InSession,
  { item, figures }: SetToday,
  keys: readonly SetKey[],
  side: Side | 'both',
  feeler: boolean,
): Question | null {
  const name = `${item.row}/${side}${feeler ? '/feeler' : ''}`;
  if (state.passedBy.includes(name)) return null;
  if (isAnswered(marks, new Set(keys), place.occurrence, item.row, side)) return null;
  return {
    name,
    screen: {
      kind: 'reserve',
      place,
      row: item.row,
      exercise: figures.exercise,
      ...(side === 'both' ? {} : { side }),
      feeler,
    },
  };
}

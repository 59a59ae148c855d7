/** Which question stands open: how many more good ones, after a feeler set and after an exercise's last set. */
import type { SetKey, Side } from '../../model/identity.js';
import type { ReserveScreen } from '../../model/training.js';
import { type InSession, lastMarked } from './in-session.js';
import { isAnswered } from './marked-sets.js';
import type { SetToday } from './set-today.js';
import { sideOf } from './sets-today.js';

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

/** After the work; where a row is a test alone, after the test. */
function lastQuestion(at: InSession, own: readonly SetToday[]): Question | null {
  const asks = askedAfter(own);
  if (asks.length === 0 || !isOver(at, own)) return null;
  const done = asks.filter(({ stepped }) => stepped.marked !== null && stepped.marked.done !== 'left out');
  const sides = [...new Set(done.map(({ stepped }) => sideOf(stepped.key)))];
  const differ = sides.length > 1 && new Set(sides.map((side) => wasDone(done, side))).size > 1;
  for (const side of differ ? sides : sides.slice(0, 1)) {
    const asked = differ ? done.filter(({ stepped }) => sideOf(stepped.key) === side) : done;
    const last = asked.at(-1);
    if (last === undefined) continue;
    const keys = asked.map(({ stepped }) => stepped.key);
    const found = ask(at, last, keys, differ ? side : bothOr(sides), false);
    if (found !== null) return found;
  }
  return null;
}

function askedAfter(own: readonly SetToday[]): readonly SetToday[] {
  const work = own.filter(({ stepped }) => stepped.set.kind === 'work');
  if (work.length > 0) return work.filter(({ item }) => item.asked.reserve !== null);
  return own.filter(({ stepped, figures }) => stepped.set.kind === 'test' && figures.set.stopAt !== undefined);
}

/** Where exercises are done turn about nobody is stopped between two turns: it is asked when all of them are over. */
function isOver({ today }: InSession, own: readonly SetToday[]): boolean {
  const group = own.at(-1)?.group;
  const inTurns = group !== undefined && group.items.length > 1 && isInTurns(group);
  const all = inTurns ? [...own, ...today.work.filter((one) => one.group === group)] : own;
  return all.every(({ stepped }) => stepped.marked !== null);
}

const isInTurns = ({ kind, everySeconds, workSeconds }: SetToday['group']): boolean =>
  kind === 'circuit' || everySeconds !== undefined || workSeconds !== undefined;

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
  { state, marks, place, today }: InSession,
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
      last: lastMarked(today),
    },
  };
}

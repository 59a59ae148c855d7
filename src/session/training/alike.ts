/** What of a session is done with the same exercise as a row, or with a harder one: what hurts in one hurts in the other. */
import { firstWay, withHarder } from './chain.js';
import type { InSession } from './in-session.js';
import type { SetToday } from './set-today.js';

function alikeIn({ told, today: { work } }: InSession, row: string): readonly SetToday[] {
  const exercisesOf = ({ item, figures }: SetToday): readonly string[] => [item.exercise, figures.exercise];
  const own = work.filter(({ item }) => item.row === row);
  const hurt = withHarder(told.plan, own.flatMap(exercisesOf));
  return work.filter((one) => one.item.row === row || exercisesOf(one).some((exercise) => hurt.has(exercise)));
}

export const openAlike = (at: InSession, row: string): readonly SetToday[] =>
  alikeIn(at, row).filter(({ stepped }) => stepped.marked === null);

/** Who does it the easier way already has no easier one. */
export const canBeEased =
  ({ today: { sore } }: InSession) =>
  ({ chosen, item }: SetToday): boolean =>
    chosen === null && firstWay(item, sore) >= 0;

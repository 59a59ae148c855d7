/** The easier ways beside an exercise, each with what it is for and its dose in each week. */
import type { EasierText } from '../model/booklet.js';
import { CAUSES, type Cause, type Exercise } from '../model/exercise.js';
import { exerciseId } from '../model/identity.js';
import type { EasierItem, Item } from '../model/plan.js';
import { sayPlanned } from '../words/say-planned.js';
import { nameOf, type Standing, type Subject } from './subject.js';

const isCause = (word: string): word is Cause => CAUSES.some((cause) => cause === word);
const causesOf = (words: readonly string[]): readonly Cause[] => words.filter(isCause);

/** The page an easier or harder version has in the booklet; a way of doing an exercise has none of its own. */
export const pageOf = (version: Pick<EasierItem, 'exercise'>): string | undefined =>
  version.exercise === undefined || version.exercise.includes('#') ? undefined : version.exercise;

/** In the order the coach gave them, as they first come up over the weeks. */
export function composeEasier(subject: Subject, standings: readonly Standing[]): readonly EasierText[] {
  const ways = new Map<string, { item: EasierItem; doses: { week: number; text: string }[] }>();
  for (const { column, item } of standings)
    for (const easier of item.easier) {
      const key = easier.exercise ?? easier.say;
      const way = ways.get(key) ?? { item: easier, doses: [] };
      const text = dosesOf(subject, item, easier);
      if (text !== '') way.doses.push({ week: column.week.number, text });
      ways.set(key, way);
    }
  return [...ways.values()].map(({ item, doses }) => {
    const page = pageOf(item);
    return {
      name: page === undefined ? item.say : nameOf(subject, page),
      ...(page === undefined ? {} : { exercise: exerciseId(page) }),
      when: subject.speech.words.causes(causesOf(item.for)),
      doses,
    };
  });
}

/**
 * Each different set once: `12 kg × 8`. Where the plan claims no load for a movement that has one, another exercise is
 * done with the lightest there is, and another way of the same exercise with the load its feeler set found.
 */
function dosesOf(subject: Subject, item: Item, easier: EasierItem): string {
  const { plan, speech } = subject;
  const page = pageOf(easier);
  const loaded = isHeld(subject.exercises.get(page ?? item.exercise));
  const { sets, doses: words } = speech.words;
  const unnamed = page === undefined ? sets.withYourLoad : sets.withLightest;
  const doses = easier.sets.map((set) =>
    set.load === undefined && set.reps !== undefined && loaded
      ? unnamed(words.reps(`${set.reps}`))
      : sayPlanned(set, plan.inputs.kit, speech).text,
  );
  return [...new Set(doses)].join(', ');
}

/** Whether something has to be in the hands. */
const isHeld = (exercise: Exercise | undefined): boolean =>
  exercise !== undefined && exercise.facts.kit.load.length > 0 && !exercise.facts.kit.unloaded;

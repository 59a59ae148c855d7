/** What a client minds in an exercise: of a caution only the words the coach wrote for the client, never what it is for. */
import type { Caution } from '../model/client.js';
import { dayOfIso } from '../model/day.js';
import type { Exercise } from '../model/exercise.js';
import type { Subject } from './subject.js';

/** Each as a sentence, each once, in the order of the client's file. */
export function mindedIn(subject: Subject, exercise: Exercise): readonly string[] {
  const met = cautionsHeld(subject).filter((caution) =>
    exercise.facts.asks.some(
      (ask) => ask.of === caution.what && (ask.phases.length === 0 || meets(ask.phases, caution.phases)),
    ),
  );
  return saidOf(met);
}

/** Everything this client minds anywhere in the block. */
export const mindedAtAll = (subject: Subject): readonly string[] => saidOf(cautionsHeld(subject));

const meets = (asked: readonly string[], minded: readonly string[]): boolean =>
  minded.length === 0 || minded.some((phase) => asked.includes(phase));

const saidOf = (cautions: readonly Caution[]): readonly string[] => [
  ...new Set(cautions.flatMap(({ say }) => (say === undefined ? [] : [sentence(say)]))),
];

/** Cautions that hold on some day of the block; a review date alone ends nothing. */
function cautionsHeld({ client, plan }: Subject): readonly Caution[] {
  const first = dayOfIso(plan.weeks[0]?.begins ?? plan.starts) ?? client.starts;
  const last = first + 7 * plan.weeks.length - 1;
  return client.cautions.filter(({ from, until }) => from <= last && (until === undefined || until >= first));
}

/** An author's words as a sentence of their own. */
export function sentence(words: string): string {
  const [first = ''] = Array.from(words);
  const begun = first.toUpperCase() + words.slice(first.length);
  return /[.!?…]$/.test(begun) ? begun : `${begun}.`;
}

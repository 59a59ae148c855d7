/** Work whose load a feeler set finds: what can be said of it before it is found. */
import type { Choice, Item } from '../model/plan.js';
import { type FoundReps, sayFound, sayFoundAloud, stackFound } from '../words/say-found.js';
import type { SaidSet } from '../words/say-planned.js';
import type { Subject } from './subject.js';

/** The lines of the table an item carries; empty where its load is known. */
export const choicesOf = (item: Item): readonly Choice[] => item.sets.flatMap(({ choose }) => choose ?? []);

export function sayOpenDose({ speech }: Subject, found: FoundReps): SaidSet {
  return {
    amount: found.least === found.most ? `${found.least}` : `${found.least}–${found.most}`,
    text: sayFound(found, speech),
    spoken: sayFoundAloud(found, speech),
    stack: stackFound(found, speech),
  };
}

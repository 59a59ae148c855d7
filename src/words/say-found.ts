/** Work whose load a feeler set finds: what can be said of it before it is found. */
import type { Choice, PlanSet } from '../model/plan.js';
import { sayRange } from './say-dose.js';
import { NO_BREAK, unbroken } from './spacing.js';
import type { Speech } from './speech.js';

/** Work whose load, and how many reps of it, a feeler set finds. */
export interface FoundReps {
  readonly least: number;
  readonly most: number;
  /** Whether there is a load to find. */
  readonly loaded: boolean;
}

const foundRange = ({ least, most }: FoundReps): string => sayRange({ min: least, max: most });

/** `your load × 6–8`. */
export function sayFound(found: FoundReps, speech: Speech): string {
  const { sets, doses } = speech.words;
  return found.loaded ? sayUnnamed(sets.yourLoad, foundRange(found), speech) : doses.reps(foundRange(found));
}

/** A load that goes by words and not by mass. */
const sayUnnamed = (load: string, reps: string, speech: Speech): string =>
  speech.hold(`${unbroken(load)} ×${NO_BREAK}${reps}`);

export function sayFoundAloud(found: FoundReps, { words }: Speech): string {
  const reps = words.doses.spokenReps(
    found.least === found.most ? `${found.least}` : words.doses.spokenRange(`${found.least}`, `${found.most}`),
  );
  return found.loaded ? `${words.sets.yourLoad}, ${reps}` : reps;
}

export function stackFound(found: FoundReps, speech: Speech): readonly string[] {
  const { sets, doses } = speech.words;
  return found.loaded ? [unbroken(sets.yourLoad), `×${foundRange(found)}`] : [doses.reps(foundRange(found))];
}

/** What the table of an item leaves open for one of its sets; `undefined` where the set is as planned. */
export function openDose(set: PlanSet, choices: readonly Choice[]): FoundReps | undefined {
  if (choices.length === 0 || set.kind !== 'work') return undefined;
  const reps = choices.map((choice) => choice.reps);
  return {
    least: Math.min(...reps),
    most: Math.max(...reps),
    loaded: choices.some(({ load }) => load !== undefined && (load.grams ?? 1) > 0),
  };
}

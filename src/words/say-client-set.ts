/** One set as a client's phone says it, in the unit wanted: what follows straight on is said with it. */
import type { ClientSet } from '../model/client-plan.js';
import type { PlanLoad } from '../model/plan.js';
import type { PhoneSettings } from '../model/training.js';
import { type SetSpeech, saySet, saySetAloud } from './say-dose.js';
import { inUnit } from './say-in-unit.js';
import { NO_LOAD, sayLoad, sayLoadText } from './say-load.js';

type Units = PhoneSettings['units'];

const loadIn = (load: PlanLoad | undefined, units: Units, speech: SetSpeech) =>
  load === undefined ? NO_LOAD : inUnit(sayLoad(load, [], speech), units, speech);

/** `16 kg`, `16 kg (35 lb)`. */
export const sayClientLoad = (load: PlanLoad, units: Units, speech: SetSpeech): string =>
  sayLoadText(loadIn(load, units, speech));

/** `16 kg × 8`, `16 kg × 15, then 20 kg × 5`. */
export const sayClientSet = (set: ClientSet, units: Units, speech: SetSpeech): string =>
  straightOn(set, speech, (one) => saySet(loadIn(one.load, units, speech), one, speech));

/** `16 kilograms, 8 reps`. */
export const sayClientSetAloud = (set: ClientSet, units: Units, speech: SetSpeech): string =>
  straightOn(set, speech, (one) => saySetAloud(loadIn(one.load, units, speech), one, speech));

type Part = Pick<ClientSet, 'load' | 'reps' | 'seconds' | 'metres' | 'steps'>;

function straightOn(set: ClientSet, { words }: SetSpeech, say: (part: Part) => string): string {
  const { then: next } = set;
  return next === undefined ? say(set) : words.doses.followed(say(set), say(next));
}

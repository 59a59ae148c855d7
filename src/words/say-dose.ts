/** Sets, reps, seconds and metres as said: a row's dose as the coach wrote it, and one set as the client does it. */
import type { LoadText } from '../model/booklet.js';
import type { Dose } from '../model/dose.js';
import type { Item } from '../model/plan.js';
import type { Range, Tenths } from '../model/quantity.js';
import type { DoseWords, MannerWords } from './catalogue.js';
import type { Spoken } from './language.js';
import { isLoaded, sayLoadAloud, sayLoadText } from './say-load.js';
import { NO_BREAK } from './spacing.js';
import type { SpeechWith } from './speech.js';

/** What one set is said with. */
export type SetSpeech = SpeechWith<'doses' | 'loads' | 'numbers'>;
type AmountSpeech = SpeechWith<'doses'>;
type EffortSpeech = Spoken<{ readonly sets: Pick<MannerWords, 'effort' | 'effortAtLeast'> }>;

export const sayRange = (range: Range): string =>
  range.min === range.max ? `${range.min}` : `${range.min}–${range.max}`;

/** `3 × 8–12 each side`, `10 min: 8 every minute`. */
export function sayDose(dose: Dose, speech: AmountSpeech): string {
  const { doses } = speech.words;
  const times = (sets: number, amount: string, eachSide: boolean): string => {
    const said = speech.hold(`${sets}${NO_BREAK}×${NO_BREAK}${amount}`);
    return eachSide ? doses.eachSide(said) : said;
  };
  switch (dose.kind) {
    case 'sets':
      return times(dose.sets, sayRange(dose.reps), dose.eachSide);
    case 'timed':
      return times(dose.sets, doses.seconds(sayRange(dose.seconds)), dose.eachSide);
    case 'distance':
      return times(dose.sets, doses.metres(sayRange(dose.metres)), dose.eachSide);
    case 'every':
      return doses.every(`${dose.minutes}`, `${dose.reps}`, dose.everySeconds);
    case 'main-next':
      return doses.mainNext(`${dose.main}`, `${dose.next}`);
    case 'steps':
      return doses.steps(dose.reps.join('-'), dose.times);
    case 'rounds':
      return doses.rounds(dose.rounds);
  }
}

/** How much of it one set is. Seconds go before reps: then the reps are those that fit in the time. */
export interface Amount {
  readonly reps?: number;
  readonly seconds?: number;
  readonly metres?: number;
  /** Rising or falling reps, once through. */
  readonly steps?: readonly number[];
}

/** Two whole minutes and more are said as minutes. */
const isInMinutes = (of: Amount): of is Amount & { readonly seconds: number } =>
  of.seconds !== undefined && of.seconds >= 120 && of.seconds % 60 === 0;

/** Whether reps are what is counted. */
const isCounted = (of: Amount): boolean => of.seconds === undefined && of.metres === undefined && of.reps !== undefined;

/** `8`, `1-2-3`, `30 s`, `20 m`. */
export function sayAmount(of: Amount, { words }: AmountSpeech): string {
  if (of.steps !== undefined) return of.steps.join('-');
  if (isInMinutes(of)) return words.doses.minutes(`${of.seconds / 60}`);
  if (of.seconds !== undefined) return words.doses.seconds(`${of.seconds}`);
  if (of.metres !== undefined) return words.doses.metres(`${of.metres}`);
  return of.reps === undefined ? '' : `${of.reps}`;
}

/** `8 reps`, `30 s`, `20 m`. */
function sayAmountInFull(of: Amount, speech: AmountSpeech): string {
  return isCounted(of) ? speech.words.doses.reps(sayAmount(of, speech)) : sayAmount(of, speech);
}

/** `16 kg × 8`, `16 kg, 30 s`, `8 reps`; may break only before the ×. */
export function saySet(load: LoadText, of: Amount, speech: SetSpeech): string {
  if (!isLoaded(load)) return sayAmountInFull(of, speech);
  const amount = sayAmount(of, speech);
  if (amount === '') return sayLoadText(load);
  // A unit of time or length is a word of the language, and runs as the line does.
  if (!isCounted(of)) return `${speech.hold(sayLoadText(load))}, ${amount}`;
  return speech.hold(`${sayLoadText(load)} ×${NO_BREAK}${amount}`);
}

/** `16 kilograms, 8 reps`. */
export function saySetAloud(load: LoadText, of: Amount, speech: SetSpeech): string {
  const { doses } = speech.words;
  const amount = sayAmountAloud(of, doses);
  return isLoaded(load) ? `${sayLoadAloud(load, speech)}, ${amount}` : amount;
}

function sayAmountAloud(of: Amount, doses: DoseWords): string {
  if (of.steps !== undefined) return doses.spokenSteps(of.steps);
  if (isInMinutes(of)) return doses.spokenMinutes(`${of.seconds / 60}`);
  if (of.seconds !== undefined) return doses.spokenSeconds(`${of.seconds}`);
  if (of.metres !== undefined) return doses.spokenMetres(`${of.metres}`);
  return doses.spokenReps(`${of.reps ?? 0}`);
}

/** Short lines for a narrow column: `16 kg`, `×8`. */
export function stackSet(load: LoadText, of: Amount, speech: SetSpeech): readonly string[] {
  if (!isLoaded(load)) return [sayAmountInFull(of, speech)];
  const amount = sayAmount(of, speech);
  return [sayLoadText(load), ...(amount === '' ? [] : [isCounted(of) ? `×${amount}` : amount])];
}

/** Tenths of a rep as said: `2`, `8.4`. */
export function sayTenths(tenths: Tenths): string {
  const size = Math.abs(tenths);
  const whole = Math.floor(size / 10);
  const rest = size - 10 * whole;
  return `${tenths < 0 ? '−' : ''}${whole}${rest === 0 ? '' : `.${rest}`}`;
}

/** What an item asks to be left; where a feeler set finds the load, what its table leaves at least. */
export function sayItemEffort({ asked, sets }: Pick<Item, 'asked' | 'sets'>, speech: EffortSpeech): string {
  if (asked.reserve === null) return '';
  const left = sets.flatMap(({ choose }) => choose ?? []).map(({ reserve }) => reserve);
  const least = Math.min(asked.reserve, ...left);
  return least < asked.reserve
    ? speech.words.sets.effortAtLeast(Math.floor(least / 10))
    : sayEffort(asked.reserve, speech);
}

/** `Leave 2 in reserve.`; a half is said as the whole numbers either side of it. */
export function sayEffort(asked: Tenths, { words }: EffortSpeech): string {
  return words.sets.effort(Math.floor(asked / 10), Math.ceil(asked / 10));
}

/** Figures with the decimal sign of a language. */
import type { SpeechWith } from './speech.js';

/** `12.5 kg` → `12,5 kg` where a comma stands between whole and part. */
export const localFigures = (text: string, { words }: SpeechWith<'numbers'>): string =>
  words.numbers.decimal === '.' ? text : text.replace(/(\d)\.(?=\d)/g, `$1${words.numbers.decimal}`);

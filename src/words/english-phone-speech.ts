/** English as the training screens speak it. */
import { englishDates, englishDoses, englishLoads, englishNumbers, englishSides } from './english-figures.js';
import { englishManner } from './english-manner.js';
import { englishPhone } from './english-phone.js';
import type { PhoneCatalogue } from './phone-speech.js';

export const englishPhoneSpeech: PhoneCatalogue = {
  language: 'en-GB',
  numbers: englishNumbers,
  dates: englishDates,
  sides: englishSides,
  loads: englishLoads,
  doses: englishDoses,
  sets: englishManner,
  phone: englishPhone,
};

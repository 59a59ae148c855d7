/** The languages with no more of them than the training screens say: their script carries this alone. */
import type { BookletLanguage } from '../model/languages.js';
import type { Catalogue, MannerWords } from './catalogue.js';
import { englishDates, englishDoses, englishLoads, englishNumbers, englishSides } from './english-figures.js';
import { englishManner } from './english-manner.js';
import { englishPhone } from './english-phone.js';
import { type Spoken, speakIn } from './language.js';
import {
  norwegianDates,
  norwegianDoses,
  norwegianLoads,
  norwegianNumbers,
  norwegianSides,
} from './norwegian-figures.js';
import { norwegianManner } from './norwegian-manner.js';
import { norwegianPhone } from './norwegian-phone.js';
import type { PhoneWords } from './phone-words.js';

export interface PhoneCatalogue
  extends Pick<Catalogue, 'language' | 'numbers' | 'dates' | 'sides' | 'loads' | 'doses'> {
  readonly sets: MannerWords;
  readonly phone: PhoneWords;
}

export type PhoneSpeech = Spoken<PhoneCatalogue>;

/** A language without its training screens does not compile. */
const BY_LANGUAGE: Readonly<Record<BookletLanguage, PhoneCatalogue>> = {
  en: {
    language: 'en-GB',
    numbers: englishNumbers,
    dates: englishDates,
    sides: englishSides,
    loads: englishLoads,
    doses: englishDoses,
    sets: englishManner,
    phone: englishPhone,
  },
  nb: {
    language: 'nb',
    numbers: norwegianNumbers,
    dates: norwegianDates,
    sides: norwegianSides,
    loads: norwegianLoads,
    doses: norwegianDoses,
    sets: norwegianManner,
    phone: norwegianPhone,
  },
};

export const phoneSpeechOf = (tag: string): PhoneSpeech => speakIn(tag, [BY_LANGUAGE.en, BY_LANGUAGE.nb]);

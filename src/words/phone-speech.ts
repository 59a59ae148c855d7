/** The languages with no more of them than the training screens say: their script carries this alone. */
import type { BookletLanguage } from '../model/languages.js';
import type { Catalogue } from './catalogue.js';
import { englishPhone } from './english-phone.js';
import { englishDates, englishDoses, englishLoads, englishNumbers, englishSets, englishSides } from './english-sets.js';
import { type Spoken, speakIn } from './language.js';
import { norwegianDates, norwegianLoads, norwegianNumbers, norwegianSides } from './norwegian-figures.js';
import { norwegianPhone } from './norwegian-phone.js';
import { norwegianDoses, norwegianSets } from './norwegian-sets.js';
import type { PhoneWords } from './phone-words.js';

export interface PhoneCatalogue
  extends Pick<Catalogue, 'language' | 'numbers' | 'dates' | 'sides' | 'loads' | 'doses' | 'sets'> {
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
    sets: englishSets,
    phone: englishPhone,
  },
  nb: {
    language: 'nb',
    numbers: norwegianNumbers,
    dates: norwegianDates,
    sides: norwegianSides,
    loads: norwegianLoads,
    doses: norwegianDoses,
    sets: norwegianSets,
    phone: norwegianPhone,
  },
};

export const phoneSpeechOf = (tag: string): PhoneSpeech => speakIn(tag, [BY_LANGUAGE.en, BY_LANGUAGE.nb]);

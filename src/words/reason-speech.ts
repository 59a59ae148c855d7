/** The languages with no more of them than reasons are told to a client with: a phone that plans again carries this alone. */
import type { BookletLanguage } from '../model/languages.js';
import type { Catalogue } from './catalogue.js';
import { englishDates, englishDoses, englishNumbers, englishSides } from './english-figures.js';
import { englishReasonsCare } from './english-reasons-care.js';
import { englishReasonsWork } from './english-reasons-work.js';
import { type Spoken, speakIn } from './language.js';
import { norwegianDates, norwegianDoses, norwegianNumbers, norwegianSides } from './norwegian-figures.js';
import { norwegianReasonsCare } from './norwegian-reasons-care.js';
import { norwegianReasonsWork } from './norwegian-reasons-work.js';

export type ReasonWords = Pick<Catalogue, 'language' | 'numbers' | 'dates' | 'sides' | 'doses' | 'reasons'>;

const BY_LANGUAGE: Readonly<Record<BookletLanguage, ReasonWords>> = {
  en: {
    language: 'en-GB',
    numbers: englishNumbers,
    dates: englishDates,
    sides: englishSides,
    doses: englishDoses,
    reasons: { ...englishReasonsWork, ...englishReasonsCare },
  },
  nb: {
    language: 'nb',
    numbers: norwegianNumbers,
    dates: norwegianDates,
    sides: norwegianSides,
    doses: norwegianDoses,
    reasons: { ...norwegianReasonsWork, ...norwegianReasonsCare },
  },
};

export const reasonSpeechOf = (tag: string): Spoken<ReasonWords> => speakIn(tag, [BY_LANGUAGE.en, BY_LANGUAGE.nb]);

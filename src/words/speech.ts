/** A language as one client reads it: the catalogue that speaks it, and the direction its lines run. */
import type { BookletLanguage } from '../model/languages.js';
import type { Catalogue } from './catalogue.js';
import { english } from './english.js';
import { type Catalogues, type Spoken, speakIn } from './language.js';
import { norwegian } from './norwegian.js';

export type Speech = Spoken<Catalogue>;

/** A language with as much of its catalogue as a sentence needs. */
export type SpeechWith<Part extends keyof Catalogue> = Spoken<Pick<Catalogue, Part>>;

const BY_LANGUAGE: Readonly<Record<BookletLanguage, Catalogue>> = { en: english, nb: norwegian };

/** Every language there is; the first speaks where none is meant. */
const CATALOGUES: Catalogues<Catalogue> = [BY_LANGUAGE.en, BY_LANGUAGE.nb];

export const speechOf = (tag: string, catalogues: Catalogues<Catalogue> = CATALOGUES): Speech =>
  speakIn(tag, catalogues);

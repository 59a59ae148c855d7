/** A language with no more of it than the training screens say: their script carries one alone. */
import type { Catalogue, MannerWords } from './catalogue.js';
import type { Spoken } from './language.js';
import type { PhoneWords } from './phone-words.js';

export interface PhoneCatalogue
  extends Pick<Catalogue, 'language' | 'numbers' | 'dates' | 'sides' | 'loads' | 'doses'> {
  readonly sets: MannerWords;
  readonly phone: PhoneWords;
}

export type PhoneSpeech = Spoken<PhoneCatalogue>;

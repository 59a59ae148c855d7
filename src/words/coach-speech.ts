/** How the coach is spoken to, whatever language a client’s booklet is in. */
import type { CoachWords } from './coach-words.js';
import { english } from './english.js';
import { englishCoach } from './english-coach.js';
import { speakIn } from './language.js';
import type { Speech } from './speech.js';

export interface CoachSpeech extends Speech {
  readonly coach: CoachWords;
}

const ENGLISH: CoachSpeech = { ...speakIn('en-GB', [english]), coach: englishCoach };

/** English until another language has the coach’s part; `language` is the studio’s, a BCP 47 tag. */
export const coachSpeechOf = (_language: string): CoachSpeech => ENGLISH;

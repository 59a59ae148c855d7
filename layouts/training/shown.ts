/** What every training screen is given beside itself: a voice, the booklet's own words, the moment, and where a tap goes. */

import type { ClientSet } from '../../src/model/client-plan.js';
import type { PlanLoad } from '../../src/model/plan.js';
import type { Act, SessionPlace } from '../../src/model/training.js';
import type { PhoneSpeech } from '../../src/words/phone-speech.js';
import type { Movement } from '../movement.js';

/** What the booklet's own leaf says of an exercise on that day, as nodes of the page to be shown again. */
export interface LeafSays {
  /** Address of the leaf; empty where the booklet has none. */
  readonly id: string;
  /** Address of the exercise's own page; empty where it has none. */
  readonly page: string;
  readonly cues: readonly Node[];
  readonly stop: readonly Node[];
  /** What one may see go wrong, and what to say to it, with its heading. */
  readonly faults: readonly Node[];
  readonly why: readonly Node[];
  /** What must be earned, or found, in the booklet's words. */
  readonly gate: readonly Node[];
  readonly choose: readonly Node[];
  readonly test: readonly Node[];
  /** What makes the load, where that is not plain. */
  readonly pieces: readonly Node[];
  /** How a clock or a circuit leads it. */
  readonly led: readonly Node[];
  /** The exercise's drawing, where it has one. */
  readonly picture: readonly Node[];
}

/** A film of one set, as the exercise's own page asks for it. */
export interface FilmAsked {
  /** Address of that page. */
  readonly page: string;
  readonly exercise: string;
  readonly name: string;
  readonly lines: readonly string[];
}

export interface Shown {
  readonly speech: PhoneSpeech;
  readonly act: (act: Act) => void;
  readonly now: number;
  /** The seconds of slow reps are to be counted. */
  readonly counting: boolean;
  /** `16 kg × 8`, in the unit wanted. */
  readonly dose: (set: ClientSet) => string;
  /** `16 kilograms, 8 reps`. */
  readonly aloud: (set: ClientSet) => string;
  /** `16 kg`, in the unit wanted. */
  readonly load: (load: PlanLoad) => string;
  readonly nameOf: (exercise: string) => string;
  /** BCP 47, of the exercises, where it is not the language of the screens. */
  readonly exerciseLanguage: string | undefined;
  readonly leaf: (place: SessionPlace, row: string, exercise: string) => LeafSays;
  /** How an exercise's drawing moves; `null` where it has none that moves, or the reader wants nothing to move. */
  readonly movement: (exercise: string) => Movement | null;
  /** The lines of a warm-up or cool-down, from the booklet's leaf. */
  readonly around: (place: SessionPlace, which: 'warm-up' | 'cool-down') => readonly Node[];
  readonly sessionTitle: (place: SessionPlace) => string;
  /** What a new edition changes, from the booklet's cover. */
  readonly changes: readonly Node[];
  /** The studio's emergency line: as it is said, and its number to call. */
  readonly emergency: { readonly call: string; readonly number: string };
  /** What became of the last try to pass marks on. */
  readonly passed: 'shared' | 'copied' | 'saved' | 'not passed' | null;
  readonly pass: (how: 'pass' | 'copy' | 'save') => void;
  /** Of a session with an exercise that the coach asks to see: its page, its name, and how to film it. */
  readonly film: (place: SessionPlace) => FilmAsked | null;
  /** Of a draft, whose marks go nowhere. */
  readonly draft: boolean;
  /** What is passed on is sealed to the studio. */
  readonly sealed?: boolean;
  /** Made lighter since it was printed: the session that is next. */
  readonly lighter: boolean;
}

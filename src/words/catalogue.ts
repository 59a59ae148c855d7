/**
 * What a language must be able to say before a booklet can be made in it: all that a client reads, and nothing that the
 * coach alone reads (`coach-words.ts`). A language is one object of this type, so that one which lacks a sentence does not
 * compile. Arguments are figures and texts already said; a language orders and bends them.
 */
import type { BookletLabel } from '../model/booklet.js';
import type { Weekday } from '../model/day.js';
import type { Cause } from '../model/exercise.js';
import type { KitKind } from '../model/kit.js';
import type { Talk } from '../model/plan.js';
import type { TempoStep } from '../model/programme.js';
import type { MassUnit } from '../model/quantity.js';
import type { BookletWords } from './booklet-words.js';
import type { ChangeWords } from './change-words.js';
import type { ClientReasons } from './client-reason-words.js';
import type { DrawingWords } from './drawing-words.js';
import type { HandOverWords } from './hand-over-words.js';
import type { PageWords } from './page-words.js';
import type { PaperWords } from './paper-words.js';
import type { SealWords } from './seal-words.js';

export interface DateParts {
  readonly weekday: Weekday;
  /** 1 to 31. */
  readonly day: number;
  /** 1 to 12. */
  readonly month: number;
  readonly year: number;
}

/** Dates come from the catalogue and not from the machine, whose own tables differ from one to the next. */
export interface DateWords {
  /** `Mon 4 Jan`, held on one line. */
  readonly short: (date: DateParts) => string;
  /** `4 January 2027`. */
  readonly full: (date: DateParts) => string;
  /** `4 January to 14 February 2027`. */
  readonly span: (from: DateParts, to: DateParts) => string;
}

export interface NumberWords {
  /** Between whole and part: `8.4`, `8,4`. */
  readonly decimal: '.' | ',';
  /** Of a figure in a reason: `3 sessions`; the unit is the engine's own, in the plural. */
  readonly counted: (count: string, unit: string) => string;
}

export interface LoadWords {
  /** As read aloud: `16 kilograms`. */
  readonly spokenUnit: Readonly<Record<MassUnit, (figure: string) => string>>;
  /** `2 times 16 kilograms`, as read aloud. */
  readonly spokenPair: (count: string, load: string) => string;
  /** What is carried beside one's own body, as read aloud: `plus 8 kilograms`. */
  readonly spokenAdded: (load: string) => string;
  /** A load by its own mark, then in another unit, as read aloud: `16 kilograms, about 35 pounds`. */
  readonly spokenOther: (load: string, other: string) => string;
  /** One item of kit by its kind, where its mass is not named: `bar`. */
  readonly kind: Readonly<Record<KitKind, string>>;
  /** `bar + 2 × 10 kg`. */
  readonly pieces: (first: string, rest: readonly string[]) => string;
}

export interface DoseWords {
  readonly reps: (count: string) => string;
  readonly seconds: (count: string) => string;
  readonly minutes: (count: string) => string;
  readonly metres: (count: string) => string;
  /** `6 to 8`, as read aloud. */
  readonly spokenRange: (least: string, most: string) => string;
  readonly spokenReps: (count: string) => string;
  readonly spokenSeconds: (count: string) => string;
  readonly spokenMinutes: (count: string) => string;
  readonly spokenMetres: (count: string) => string;
  readonly sets: (count: number) => string;
  readonly rounds: (count: number) => string;
  readonly eachSide: (dose: string) => string;
  /** On that side alone. */
  readonly oneSide: (dose: string, side: 'left' | 'right') => string;
  /** `10 min: 8 every minute`. */
  readonly every: (minutes: string, reps: string, everySeconds: number) => string;
  /** `15 main + 5 next up`. */
  readonly mainNext: (main: string, next: string) => string;
  /** `1-2-3, 4 times through`. */
  readonly steps: (reps: string, times: number) => string;
  /** Rising or falling reps as read aloud: `1, 2, then 3 reps`. */
  readonly spokenSteps: (reps: readonly number[]) => string;
  /** One load and straight on with the next: `16 kg × 15, then 20 kg × 5`. */
  readonly followed: (first: string, next: string) => string;
  /** The next load in a narrow column: `then 20 kg`. */
  readonly thenLoad: (load: string) => string;
  /** A set that is a test: `Test, 16 kg`; nothing beside it where nothing is held or timed. */
  readonly test: (of: string) => string;
  /** A dose of one side alone: `left 12 kg × 8`. */
  readonly ofSide: (side: string, dose: string) => string;
  /** One dose with how many sets of it: `16 kg × 8, 3 sets`. */
  readonly withSets: (dose: string, sets: number) => string;
}

/** How a set is to be done: what the screens of a phone say of it too. */
export interface MannerWords {
  /** `Leave 2 in reserve.` `most` differs from `least` where the plan asks for something between. */
  readonly effort: (least: number, most: number) => string;
  /** `Leave at least 2 in reserve.` */
  readonly effortAtLeast: (least: number) => string;
  /** The talk test: `You can still talk in whole sentences.` */
  readonly talk: Readonly<Record<Talk, string>>;
  readonly tempo: Readonly<Record<TempoStep, string>>;
  readonly optional: string;
}

/** The short lines beside an exercise. */
export interface SetWords extends MannerWords {
  /** Where reps are counted although a clock sets the end of the set. */
  readonly repsInTime: (reps: number) => string;
  readonly deadStop: string;
  /** Done in no other way than this. */
  readonly onlyLike: (way: string) => string;
  /** An exercise with the way it is done: `Push-up: hands on a chair`. */
  readonly namedWay: (name: string, way: string) => string;
  readonly straightOn: string;
  readonly steps: string;
  /** Sets that one side alone does otherwise: `Right: 1 of 2 sets with 16 kg, 20 m.` */
  readonly sideAlone: (side: string, count: number, of: number, dose: string) => string;
  /** Of a load that takes part of the body's weight. */
  readonly helped: string;
  readonly rest: (seconds: number) => string;
  readonly leftFirst: string;
  readonly rightFirst: string;
  readonly inTurn: string;
  readonly turnAbout: (
    rounds: readonly { readonly weeks: string; readonly rounds: number }[],
    names: readonly string[],
  ) => string;
  /** `Start a set every minute. What is left of the minute is rest.` */
  readonly signal: (seconds: number) => string;
  /** `40 seconds of work, 20 seconds to change over.`; of one exercise alone there is nothing to change to. */
  readonly workAndPause: (work: number, pause: number, changes: boolean) => string;
  /** `First set: try the 20 kg for 4.` */
  readonly tryLoad: (load: string, amount: string) => string;
  readonly tryVersion: (name: string, dose: string) => string;
  /** `left` is absent where none are counted. */
  readonly gateNeeds: (dose: string, weeks: string, left: number | undefined) => string;
  readonly gateStill: (week: number) => string;
  readonly otherwise: (dose: string) => string;
  /** Added to a dose of another version: `Box squat, 16 kg × 8`. */
  readonly versionDose: (name: string, dose: string) => string;
  /** `each`: one side, then the other. */
  readonly feelerIntro: (set: string, each: boolean) => string;
  /** Before a line to write on. */
  readonly feelerNote: (week: number) => string;
  /** The same table in a later week; `week` is that of the feeler set. */
  readonly feelerAgain: (week: number) => string;
  /** A test that stops with so many good ones left, `most` at most; or, with none counted, when they stop being good. */
  readonly testStop: (left: number, most: number | undefined) => string;
  readonly testAll: string;
  /** As many as fit in so many seconds. */
  readonly testInTime: (seconds: number) => string;
  /** Held for so many seconds at most. */
  readonly testHeld: (seconds: number) => string;
  /** Before a line to write on: `Good ones, week 1, left:`. */
  readonly testNote: (week: number, side: string, held: boolean) => string;
  /** A load that the feeler set finds, in place of one that is known. */
  readonly yourLoad: string;
  /** With the load that a feeler set found: `6 reps with the load you found`. */
  readonly withYourLoad: (reps: string) => string;
  /** A load nobody claims for a version not lifted before: `5 reps with the lightest you have`. */
  readonly withLightest: (reps: string) => string;
  /** `6 or more left`; `most` 99 has no end. */
  readonly felt: (least: number, most: number) => string;
  /** `weeks 3 and 4`. */
  readonly weekList: (weeks: readonly number[]) => string;
  /** A name as it stands inside a sentence: `goblet squat`; what comes after a comma is left away. */
  readonly inSentence: (name: string) => string;
  /** The same, with all of it: `front squat (two bells)`. */
  readonly inSentenceWhole: (name: string) => string;
}

export interface Catalogue {
  /** BCP 47. */
  readonly language: string;
  readonly labels: Readonly<Record<BookletLabel, string>>;
  readonly numbers: NumberWords;
  readonly dates: DateWords;
  /** Sides of the body, inside a sentence. */
  readonly sides: Readonly<Record<'left' | 'right' | 'both', string>>;
  readonly loads: LoadWords;
  readonly doses: DoseWords;
  readonly sets: SetWords;
  readonly booklet: BookletWords;
  readonly changes: ChangeWords;
  /** `when the knee is sore`: what an easier version is for. */
  readonly causes: (causes: readonly Cause[]) => string;
  /** The same for a harder one: `for more load`. */
  readonly harderCauses: (causes: readonly Cause[]) => string;
  readonly reasons: ClientReasons;
  readonly page: PageWords;
  readonly drawing: DrawingWords;
  readonly seal: SealWords;
  readonly paper: PaperWords;
  readonly handOver: HandOverWords;
}

/**
 * What the training screens say. Every sentence has twelve words at most: it is read from the floor, between two sets.
 * Loads, doses and dates come as texts already said.
 */
import type { BodyPart } from '../model/exercise.js';
import type { AlarmSign } from '../model/log.js';
import type { KeepFault, TallyState, Today } from '../model/training.js';

export interface PhoneWords {
  // The way in
  readonly trainingTitle: string;
  /** `Start session A`, on the main button. */
  readonly startSession: (session: string) => string;
  readonly goOn: string;
  readonly toBooklet: string;
  readonly toTraining: string;
  readonly thisPhone: string;
  /** `3 of 12 sessions done.` */
  readonly sessionsDone: (done: number, of: number) => string;
  /** `About 40 minutes.` */
  readonly about: (minutes: number) => string;
  /** `Planned for Mon 4 Jan.` */
  readonly plannedFor: (date: string) => string;
  readonly nothingNext: string;
  readonly firstOpening: readonly string[];
  readonly draft: readonly string[];
  readonly cannotKeep: Readonly<Record<KeepFault, readonly string[]>>;
  readonly newEdition: (edition: number) => readonly string[];
  /** `It has been 9 days. Nothing to catch up.` */
  readonly away: (days: number) => readonly string[];
  /** `lighter`: the session to come was made lighter since it was printed. */
  readonly awayLighter: string;
  /** So long that the coach is to be asked first. */
  readonly awayLong: string;
  /** `You were on set 2, 4 minutes ago.` */
  readonly wasOnSet: (set: number, minutes: number) => string;
  readonly didYouFinish: string;
  readonly yesFinished: string;
  readonly notYet: string;
  readonly underWay: (minutes: number) => string;
  readonly notSent: (sessions: number) => string;
  readonly ended: string;
  readonly withdrawn: string;
  readonly alarmStands: readonly string[];

  // Before
  readonly worseNextMorning: string;
  /** The day on which it was said to hurt. */
  readonly hurtOn: (date: string) => string;
  /** What follows where it was worse. */
  readonly ifWorse: Readonly<Record<'easier' | 'leave' | 'waits', readonly string[]>>;
  readonly wasWorse: string;
  readonly notWorse: string;
  readonly howIsToday: string;
  /** Before the name of what is left out of the session today. */
  readonly notToday: string;
  /** Of that exercise, before what follows. */
  readonly it: string;
  /** After it, or the name of another that hurt, where it waits for the coach. */
  readonly hurtSo: (degree: number, date: string) => string;
  readonly today: Readonly<Record<Today, string>>;
  /** Of what was said to hurt on an earlier day. */
  readonly hasItGone: string;
  /** Of a session of which all waits or was planned away. */
  readonly nothingLeft: string;
  readonly nothingLeftIsFine: readonly string[];
  readonly letBe: string;
  readonly lessIsFine: string;
  /** `Today: two exercises, 20 minutes.`; without minutes where they are not known. */
  readonly shortIs: (exercises: number, minutes: number | null) => string;
  readonly takeShort: string;
  readonly takeEasier: string;
  readonly takePlanned: string;
  readonly around: Readonly<Record<'warm-up' | 'cool-down', string>>;
  readonly warmedUp: string;
  readonly cooledDown: string;
  readonly passBy: string;

  // The set
  /** `Session B, week 2` */
  readonly inSession: (id: string, week: number) => string;
  /** `Exercise 3 of 6` */
  readonly turn: (number: number, of: number) => string;
  /** `Set 2 of 3.` */
  readonly setOf: (number: number, of: number) => string;
  /** `Round 2 of 3.` */
  readonly roundOf: (number: number, of: number) => string;
  readonly warmUpSet: string;
  readonly trialSet: string;
  readonly feelerSet: string;
  readonly testSet: string;
  readonly setDone: (number: number) => string;
  /** Of a lighter set, a feeler, a trial or a test that is the only one of its kind. */
  readonly setDoneOnly: string;
  readonly startSet: (number: number) => string;
  readonly start: string;
  /** On a button: the drawing moves once more. */
  readonly showAgain: string;
  /** Before the first second of a hold. */
  readonly intoPlace: string;
  readonly intoPlaceIn: (seconds: number) => string;
  /** Takes the start of a hold back. */
  readonly startAgain: string;
  /** `Next: set 3, 16 kg × 8` */
  readonly next: (number: number, dose: string) => string;
  readonly wasDifferent: (number: number) => string;
  readonly rubOut: (number: number) => string;
  readonly lastWasDifferent: string;
  readonly rubOutLast: string;
  readonly longerRest: (seconds: number) => string;
  /** Said aloud: `Set 2 marked. Rest, 90 seconds.` */
  readonly marked: (number: number, seconds: number) => string;
  readonly markedOnly: (number: number) => string;
  readonly rubbedOut: (number: number) => string;
  readonly restOverFor: (number: number) => string;
  readonly lastTime: (dose: string) => string;
  readonly paper: (dose: string) => string;
  readonly instead: (dose: string) => string;
  readonly earned: string;
  readonly notEarned: string;
  readonly easierToday: string;
  readonly somethingHurts: string;
  readonly leaveSet: string;
  readonly leaveExercise: string;
  readonly oneMore: string;
  readonly stopHere: string;
  readonly wholeExercise: string;
  readonly wholeWeek: string;
  /** A hold or timed work begins by itself. */
  readonly workNow: string;
  /** A hold or timed work is over. */
  readonly timeUp: string;
  readonly side: Readonly<Record<'left' | 'right', string>>;
  /** After a number of sets, where a tally is read aloud: `2 sets done; 1 to do`. */
  readonly inTally: Readonly<Record<TallyState, string>>;
  readonly stop: string;
  readonly why: string;

  // Different, easier, reserve
  readonly whatWasDone: (set: number) => string;
  readonly whatLifted: string;
  readonly howMany: Readonly<Record<'reps' | 'seconds' | 'metres', string>>;
  readonly fewer: string;
  readonly more: string;
  readonly keepThis: string;
  readonly back: string;
  readonly easierWays: string;
  readonly asPlanned: string;
  readonly howManyMore: string;
  readonly ofSide: (side: 'left' | 'right') => string;
  readonly orMore: (number: number) => string;
  readonly notSaid: string;

  // What hurts
  readonly anyOfThese: string;
  readonly signs: Readonly<Record<AlarmSign, string>>;
  readonly noneOfThese: string;
  readonly stopNow: string;
  /** Takes a sign back that was tapped by mistake. */
  readonly slip: string;
  readonly emergency: readonly string[];
  /** Of a sign that calls for a doctor the same day; whom to call stands below it. */
  readonly sameDay: readonly string[];
  readonly whereHurts: string;
  readonly parts: Readonly<Record<BodyPart | 'elsewhere', string>>;
  readonly whichSide: string;
  readonly bothSides: string;
  /** What was answered so far: a part, the side it is on, how much it hurts. */
  readonly whatHurts: (part: string, side?: 'left' | 'right', degree?: number) => string;
  readonly howMuch: string;
  readonly scale: string;
  readonly advice: Readonly<Record<'gently' | 'easier' | 'leave', readonly string[]>>;
  /** Where nothing was left of it that could be eased or left out. */
  readonly adviceAfter: readonly string[];
  /** From the degree on at which an exercise is left, said before any is begun. */
  readonly adviceBefore: readonly string[];
  readonly take: Readonly<Record<'gently' | 'easier' | 'leave' | 'stop', string>>;

  // The end
  readonly howHard: string;
  readonly hardScale: string;
  readonly openSets: (sets: number) => string;
  readonly finished: (session: string) => string;
  readonly finishedWhole: string;
  readonly finishedPart: string;
  readonly nextIs: (session: string, date: string) => string;
  readonly sendTitle: string;
  readonly send: string;
  readonly sendWhat: (sessions: number) => string;
  /** Of sessions that are not closed yet. */
  readonly sendSome: string;
  readonly passed: string;
  readonly copied: string;
  readonly saved: string;
  readonly copy: string;
  readonly save: string;
  readonly nothingToSend: string;
  /** Where the studio has a key for marks. */
  readonly sendSealed: string;
  readonly showMessage: string;

  // This phone
  readonly leftHand: string;
  readonly sound: string;
  readonly vibration: string;
  readonly tempo: string;
  readonly awake: string;
  readonly lockedNote: string;
  readonly units: string;
  readonly unit: Readonly<Record<'as printed' | 'kg' | 'lb', string>>;
  readonly marksKept: (marks: number) => string;
  readonly persisted: string;
  readonly notPersisted: string;
  readonly saveMarks: string;
}

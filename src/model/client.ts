/** What is true of one client. Every fact carries from when, until when and by whom, where that matters. */
import type { Day, Weekday } from './day.js';
import type { BodyPart, Pattern, Quality } from './exercise.js';
import type { ClientId, ExerciseId, ProgrammeId, Side } from './identity.js';
import type { KitItem, Room } from './kit.js';
import type { Place } from './place.js';
import type { TempoStep } from './programme.js';
import type { Line } from './prose.js';
import type { Grams, Mass, MassUnit, Tenths } from './quantity.js';

export interface Caution {
  readonly what: BodyPart | Quality;
  readonly degree: 'avoid' | 'take care';
  readonly side: Side | 'both';
  readonly phases: readonly string[];
  readonly from: Day;
  /** After this day it no longer holds. */
  readonly until?: Day;
  /** The coach must look again; the caution holds on until then and after. */
  readonly review?: Day;
  readonly by: string;
  /** What the client reads instead of the diagnosis. */
  readonly say?: string;
  readonly place: Place;
}

export interface SignOff {
  readonly exercise: ExerciseId;
  /** The heaviest load passed; absent where the movement has none. */
  readonly upTo?: Mass;
  readonly date: Day;
  readonly by: string;
  readonly place: Place;
}

export interface Test {
  readonly exercise: ExerciseId;
  readonly side: Side | 'both';
  readonly load?: Mass;
  readonly reps: number;
  /** How many more good reps were left. */
  readonly reserve: Tenths;
  /** Where it was slower than the exercise's own; absent at normal tempo. */
  readonly tempo?: Exclude<TempoStep, 'normal'>;
  /** Done inside a circuit, tired: a weak estimate. */
  readonly inCircuit: boolean;
  readonly date: Day;
  /** Made from a set the client marked at home, not by the coach. */
  readonly marked?: true;
  readonly place: Place;
}

/** What a coach sees on the floor, in the trade's own phrases. */
export const SEEN = [
  'new to the movement',
  'light',
  'heavy',
  'missed reps',
  'hurrying',
  'shorter on one side',
  'loses balance',
  'holds the breath',
  'grip goes first',
  'moves well',
] as const;
export type Seen = (typeof SEEN)[number];

export interface Observation {
  readonly date: Day;
  readonly exercise?: ExerciseId;
  readonly side: Side | 'both';
  /** As written. */
  readonly seen: string;
  /**
   * What the engine makes of it: a phrase it knows; pain of a degree, 0–10; `cleared`, after pain or an alarm sign was
   * looked at; or free text, which only the coach reads.
   */
  readonly means:
    | { readonly kind: 'phrase'; readonly phrase: Seen }
    | { readonly kind: 'pain'; readonly where: BodyPart | 'elsewhere'; readonly degree: number }
    | { readonly kind: 'cleared' }
    | { readonly kind: 'free' };
  readonly place: Place;
}

/** Answers to the published pre-participation questions; `unknown` where not asked. */
export type Answer = 'yes' | 'no' | 'unknown';
export type ScreeningQuestion = 'regular exercise' | 'known disease' | 'symptoms';
export interface Screening {
  readonly date: Day;
  /** Planned exercise, 30 minutes at moderate effort on three days a week, for three months. */
  readonly regularExercise: Answer;
  /** Known cardiovascular, metabolic or renal disease. */
  readonly knownDisease: Answer;
  readonly symptoms: Answer;
  readonly place: Place;
}

export interface Clearance {
  readonly by: string;
  readonly date: Day;
  readonly until?: Day;
  readonly for: 'moderate' | 'vigorous';
}

export const MEDICINES = [
  'slows the heart',
  'lowers blood pressure',
  'lowers blood sugar',
  'thins the blood',
  'other',
] as const;
/** By what it does that matters when training, never by name. */
export type Medicine = (typeof MEDICINES)[number];

export const CONDITIONS = ['low bone density', 'vertebral fracture', 'blood pressure', 'diabetes'] as const;
/** A condition that changes what is planned; known disease of heart, metabolism or kidneys is asked in screening. */
export type Condition = (typeof CONDITIONS)[number];

/** Absolute contraindications of Mottola et al. 2019 (BJSM 52:1339-1346, table 2), in the order printed. */
export const PREGNANCY_ABSOLUTE = [
  'ruptured membranes or premature labour',
  'unexplained persistent vaginal bleeding',
  'placenta praevia',
  'pre-eclampsia',
  'incompetent cervix',
  'growth restriction',
  'high-order multiple',
  'uncontrolled diabetes or hypertension or thyroid disease',
  'other serious disorder',
] as const;
/** Relative contraindications of the same table. */
export const PREGNANCY_RELATIVE = [
  'recurrent pregnancy loss',
  'earlier preterm birth',
  'gestational hypertension',
  'symptomatic anaemia',
  'malnutrition',
  'eating disorder',
  'twins',
  'mild cardiovascular or respiratory disease',
  'other significant condition',
] as const;
export type PregnancyCondition = (typeof PREGNANCY_ABSOLUTE)[number] | (typeof PREGNANCY_RELATIVE)[number];

export interface Pregnancy {
  readonly due: Day;
  readonly conditions: readonly PregnancyCondition[];
  readonly place: Place;
}

/** The months after a birth. */
export interface Birth {
  readonly date: Day;
  readonly by: 'vaginal' | 'caesarean';
  /** The day a licensed person last looked and allowed exercise. */
  readonly checked?: Day;
  readonly place: Place;
}

export interface BloodPressure {
  /** mmHg. */
  readonly systolic: number;
  readonly diastolic: number;
  readonly date: Day;
  /** Has a cuff at home: only then are figures of pressure ever printed. */
  readonly cuff: boolean;
  readonly place: Place;
}

/** Facts of health. A field that is absent was not asked; an empty list was asked and there is none. */
export interface Health {
  readonly medicines?: readonly Medicine[];
  readonly conditions?: readonly Condition[];
  readonly bloodPressure?: BloodPressure;
  readonly pregnancy?: Pregnancy;
  readonly birth?: Birth;
  /** Falls in the last twelve months. */
  readonly falls?: number;
}

/** Days without training, planned or past. */
export interface Break {
  readonly from: Day;
  /** The last day of it. */
  readonly until: Day;
  readonly cause: 'ill' | 'away' | 'hurt';
  readonly place: Place;
}

/** The bell a client works with in a movement pattern; lighter and next up are its neighbours in the kit. */
export interface MainBell {
  readonly pattern: Pattern;
  readonly mass: Mass;
  readonly place: Place;
}

export type Experience = 'novice' | 'trained';

/** Facts of a client's file that a problem may point at, by the words that stand there. */
export type ClientFact =
  | 'starts'
  | 'programme'
  | 'days'
  | 'minutes'
  | 'birth year'
  | 'body mass'
  | 'screening date'
  | 'clearance date'
  | 'medicines'
  | 'conditions'
  | 'falls'
  | 'partner'
  | 'film'
  | 'language'
  | 'large print'
  | 'replanning';

/** Where a phone stands that films a set. */
export const FILMED_FROM = ['front', 'side', 'behind'] as const;

/** One set of it, once, to be sent to the coach by the client. */
export interface Film {
  readonly exercise: ExerciseId;
  readonly from: (typeof FILMED_FROM)[number];
}

export interface Client {
  readonly id: ClientId;
  readonly name: string;
  readonly starts: Day;
  readonly programme: ProgrammeId;
  /** Training days in the week, in the order of the week that begins on the first one. */
  readonly days: readonly Weekday[];
  readonly minutes: number;
  readonly birthYear: number;
  readonly experience: Experience;
  /** Never printed. */
  readonly bodyMass?: { readonly mass: Mass; readonly date?: Day };
  readonly screening?: Screening;
  readonly clearance?: Clearance;
  readonly cautions: readonly Caution[];
  readonly health: Health;
  readonly breaks: readonly Break[];
  readonly mainBells: readonly MainBell[];
  /** Facts no rule reads yet, by name; each is the error `not-handled`. */
  readonly unhandled: readonly { readonly fact: string; readonly place: Place }[];
  readonly kit: readonly KitItem[];
  readonly unit: MassUnit;
  readonly room: Room;
  readonly language: string;
  readonly largePrint: boolean;
  readonly partner?: ClientId;
  /** What the partner is called, by their first name, where each page names the other. */
  readonly partnerName?: string;
  /** A short film that the coach asks for. */
  readonly film?: Film;
  readonly replanning: 'fixed' | 'within bounds';
  /** How many blocks went before: 0 is a first block. */
  readonly blocksBefore: number;
  readonly signOffs: readonly SignOff[];
  readonly tests: readonly Test[];
  readonly observations: readonly Observation[];
  /** Leads the next session. */
  readonly workOnThis?: Line;
  /** Private, never printed. */
  readonly notes: readonly Line[];
  readonly place: Place;
  /** Where its facts stand, as far as they are written; `place` stands in for the others. */
  readonly places?: Readonly<Partial<Record<ClientFact, Place>>>;
}

/** Where a fact stands in the client's file, or else the file's beginning. */
export const placeOfFact = (client: Client, fact: ClientFact): Place => client.places?.[fact] ?? client.place;

export type { Grams };

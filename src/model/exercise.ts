/** One exercise: facts the engine reads, words people read, poses the figures draw. */
import type { ExerciseId } from './identity.js';
import type { KitNeed, LoadMode } from './kit.js';
import type { Place } from './place.js';
import type { Pose } from './pose.js';
import type { Line } from './prose.js';
import type { PerMille } from './quantity.js';
import type { Standing } from './reason.js';

export const PATTERNS = [
  'squat',
  'hinge',
  'lunge',
  'push',
  'pull',
  'carry',
  'rotate',
  'brace',
  'travel',
  'mobility',
] as const;
export type Pattern = (typeof PATTERNS)[number];
export const PLANES = ['horizontal', 'vertical', 'side', 'turning'] as const;
export type Plane = (typeof PLANES)[number];
export const WAYS = [
  'strength',
  'bodyweight',
  'swing',
  'combination',
  'hold',
  'carry',
  'mobility',
  'conditioning',
] as const;
/** Way of working: how a set is counted and progresses. */
export type Way = (typeof WAYS)[number];
export const SIDES = ['both', 'each', 'alternate'] as const;
/** Both sides together; one side finished, then the other; or turn about within the set. */
export type Sides = (typeof SIDES)[number];

export const BODY_PARTS = [
  'neck',
  'shoulder',
  'elbow',
  'wrist',
  'hand',
  'upper back',
  'lower back',
  'hip',
  'knee',
  'ankle',
  'foot',
  'pelvic floor',
  'belly',
] as const;
export type BodyPart = (typeof BODY_PARTS)[number];
/** There are two of it: what is said of it may be said of its left, its right, or both. */
const IN_PAIRS = ['shoulder', 'elbow', 'wrist', 'hand', 'hip', 'knee', 'ankle', 'foot'] as const;
export const isInPairs = (part: string): boolean => IN_PAIRS.some((one) => one === part);
export const QUALITIES = [
  'balance',
  'grip',
  'impact',
  'speed',
  'floor',
  'overhead',
  'breath hold',
  'head down',
  'lying on the back',
  'spinal load',
  'loaded bend',
  'loaded twist',
  'deep bend',
  'deep twist',
  'reach',
  'lifting from the floor',
] as const;
/** A demand that is not one joint's. */
export type Quality = (typeof QUALITIES)[number];

/** What an exercise asks of a joint or of the body, matched against cautions. */
export interface Ask {
  readonly of: BodyPart | Quality;
  readonly degree: 'some' | 'much';
  /** Which side of the body works: `working` follows the side of the set. */
  readonly side: 'both' | 'working' | 'other';
  /** Phases of the movement in which it is asked; empty means throughout. */
  readonly phases: readonly string[];
}

export interface Tempo {
  /** Seconds lowering, at the bottom, lifting, at the top. `0` is without a stop. */
  readonly lower: number;
  readonly bottom: number;
  readonly lift: number | 'fast';
  readonly top: number;
}

export const MEASURES = ['chair stand', 'one-leg stand'] as const;
/** 30-second chair stand (Rikli & Jones 1999); one-leg stand, eyes open. */
export type Measure = (typeof MEASURES)[number];

export interface Facts {
  readonly pattern: Pattern;
  readonly plane?: Plane;
  readonly way: Way;
  readonly sides: Sides;
  readonly kit: KitNeed;
  readonly room: {
    readonly ceiling: 'any' | 'arms overhead' | 'load overhead';
    readonly floorMillimetres?: { readonly long: number; readonly wide: number };
  };
  readonly holds: LoadMode;
  /** Part of the body's mass the movement lifts; absent where it is not known. */
  readonly bodyShare?: { readonly share: PerMille; readonly standing: Standing; readonly source: string };
  readonly asks: readonly Ask[];
  /** May go home only after the coach has seen and passed it. */
  readonly signOff: boolean;
  readonly muscles: { readonly main: readonly string[]; readonly assisting: readonly string[] };
  readonly tempo: Tempo;
  /**
   * A combination: its parts in the order done, as one rep, or each part's reps in turn without putting the load down.
   * Empty for every other way.
   */
  readonly parts: readonly ExerciseId[];
  readonly partsDone: 'as one' | 'in turn';
  /** Movement patterns it readies the body for: it may stand in a warm-up. */
  readonly rehearses: readonly Pattern[];
  /** May stand in a cool-down. */
  readonly cools: boolean;
  /** Fast lifts: most reps of one set before they lose their quality; absent where the common cap will do. */
  readonly mostReps?: number;
  /** A published measure for older clients that this exercise is. */
  readonly measure?: Measure;
  /** Set down and picked up from the floor: the put-downs are counted in the minutes. */
  readonly onTheFloor: boolean;
}

export interface Cue {
  /** `set`, `down`, `up`, … as the author wrote it; empty where the cue has no phase. */
  readonly phase: string;
  readonly line: Line;
}

export interface Fault {
  readonly see: Line;
  /** Empty where the author has nothing to say yet. */
  readonly say: Line;
}

export const CAUSES = ['load', 'range', 'balance', 'speed', 'floor', 'kit', 'grip', ...BODY_PARTS] as const;
/** What an easier version is for. A body part means: sore there. */
export type Cause = (typeof CAUSES)[number];

/** An easier or harder version: another exercise, or a way of doing this one. */
export interface Version {
  readonly to: { readonly kind: 'exercise'; readonly id: ExerciseId } | { readonly kind: 'way'; readonly slug: string };
  /** What it is called here: the link's text, or the line itself. */
  readonly say: Line;
  readonly causes: readonly Cause[];
  /** What the version can be lifted with against this one, as capacity, where known. */
  readonly ratio?: { readonly share: PerMille; readonly standing: Standing; readonly source: string };
  readonly place: Place;
}

export interface Words {
  readonly description: readonly Line[];
  readonly setUp: readonly Line[];
  readonly pickUp: readonly Line[];
  readonly putDown: readonly Line[];
  /** In the order said; the first three are what the client sees during a set. */
  readonly cues: readonly Cue[];
  readonly breath: readonly Line[];
  readonly faults: readonly Fault[];
  readonly easier: readonly Version[];
  readonly harder: readonly Version[];
  readonly stopIf: readonly Line[];
  readonly partner: readonly Line[];
}

/** Whether a load is picked up from the floor and put down there: not the body alone, nor a band. */
export const liftsFromTheFloor = ({ facts: { onTheFloor, way, kit } }: Exercise): boolean =>
  onTheFloor && way !== 'bodyweight' && kit.load.some(({ kind }) => kind !== 'band');

/** A coach's own photograph or drawing, beside the exercise's page. */
export interface OwnPicture {
  /** Below the content folder, with `/`. */
  readonly file: string;
  /** What is to be seen, for who cannot see it; never empty. */
  readonly said: string;
  readonly place: Place;
}

export interface Exercise {
  readonly id: ExerciseId;
  readonly formerIds: readonly ExerciseId[];
  readonly name: string;
  readonly facts: Facts;
  readonly words: Words;
  readonly poses: readonly Pose[];
  /** What the drawing shows in the coach's own words, where they are said in place of what the table of poses says. */
  readonly drawingSaid?: string;
  /** Shown on the screen in place of the drawing. */
  readonly ownPicture?: OwnPicture;
  readonly place: Place;
}

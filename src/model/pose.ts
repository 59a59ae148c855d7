/**
 * The positions of an exercise as the author states them: what bears the body, what is known of the joints, where the
 * hands and the kit are. What is left unsaid is worked out by the drawing. Degrees are clinical: 0 is standing at
 * attention, a bend is positive. Lengths are centimetres on a person of 1.75 m.
 */
import type { Place } from './place.js';

export const BODY_SIDES = ['left', 'right'] as const;
export type BodySide = (typeof BODY_SIDES)[number];
export type OnSides<Value> = Readonly<Record<BodySide, Value>>;

/** From the figure's right side, from between there and the front, from the front, from behind, or from the ceiling. */
export const VIEWS = ['side', 'half', 'front', 'back', 'above'] as const;
export type View = (typeof VIEWS)[number];

/** Parts that come in pairs and can bear weight. */
export const LIMB_SUPPORTS = ['foot', 'toes', 'heel', 'instep', 'knee', 'hand', 'forearm', 'elbow'] as const;
export const TRUNK_SUPPORTS = [
  'back',
  'shoulders',
  'seat',
  'belly',
  'hips',
  'forehead',
  'left side',
  'right side',
] as const;
export type LimbSupport = (typeof LIMB_SUPPORTS)[number];
export type TrunkSupport = (typeof TRUNK_SUPPORTS)[number];

/** What can be stood on, leant on or lain on; the floor needs no word. */
export const SURFACES = ['floor', 'wall', 'chair', 'bench', 'box', 'step', 'blocks'] as const;
export type Surface = (typeof SURFACES)[number];

/** One part of the body bearing on something. */
export type Contact =
  | { readonly part: LimbSupport; readonly side: BodySide; readonly on: Surface }
  | { readonly part: TrunkSupport; readonly side?: never; readonly on: Surface };

/** Where one foot stands from the other, in centimetres. */
export interface Footing {
  readonly ahead?: number;
  readonly out?: number;
}

export const LYING = ['face up', 'face down', 'left side down', 'right side down'] as const;
export type Lying = (typeof LYING)[number];

export interface TrunkAngles {
  /** Roughly so: what bears the body settles the rest. */
  readonly lying?: Lying;
  /** The line from hips to shoulders from upright, forward positive; 90 is level, face down. */
  readonly lean?: number;
  /** Rounded forward; arched is negative. */
  readonly bend?: number;
  /** Bent to the right; to the left is negative. */
  readonly sideBend?: number;
  /** The chest turned to the left on the hips; to the right is negative. */
  readonly turn?: number;
  /** The whole body turned to the left; to the right is negative. */
  readonly facing?: number;
  /** The whole body tipped to the right. */
  readonly tip?: number;
}

export const GAZES = ['ahead', 'up', 'down'] as const;
export interface HeadAngles {
  readonly gaze?: (typeof GAZES)[number];
  /** Chin to chest; lifted is negative. */
  readonly nod?: number;
  /** Turned to the left; to the right is negative. */
  readonly turn?: number;
}

export interface BallJoint {
  /** Bent forward; back is negative. */
  readonly flex?: number;
  /** Away from the middle of the body; across it is negative. */
  readonly out?: number;
  /** Turned outwards in the joint; inwards is negative. */
  readonly turn?: number;
}

/** Where a hand is, when its arm's angles are not what the author knows. */
export const HAND_PLACES = [
  'up',
  'ahead',
  'down',
  'out',
  'chest',
  'shoulder',
  'ribs',
  'belly',
  'hip',
  'head',
  'thigh',
  'knee',
  'shin',
  'floor',
  'bell',
  // Both hands with one thing between them, about the head.
  'left ear',
  'right ear',
  'neck',
] as const;
export type HandPlace = (typeof HAND_PLACES)[number];

export const FREE_LOADS = ['bell', 'dumbbell'] as const;
/** In which hands something is: one, both on one piece, or a piece in each. */
export type Held = BodySide | 'both' | 'each' | 'floor';
export const BAND_ENDS = [
  'feet',
  'hands',
  'wall',
  'knees',
  'back',
  'left foot',
  'right foot',
  'left hand',
  'right hand',
] as const;
export type BandEnd = (typeof BAND_ENDS)[number];

/** Kit in the picture. Places are centimetres ahead of where the feet first stand; heights above the floor. */
export type PoseKit =
  | { readonly kind: 'bell' | 'dumbbell'; readonly held: Held; readonly ahead?: number; readonly upturned?: true }
  | { readonly kind: 'bar'; readonly held: 'both' | 'back' | 'floor' }
  | { readonly kind: 'band'; readonly ends: readonly [BandEnd, BandEnd] }
  | {
      readonly kind: 'wall' | 'chair' | 'bench' | 'box' | 'step' | 'blocks' | 'mat';
      readonly ahead?: number;
      readonly high?: number;
      /** A chair whose back is on the other side. */
      readonly turned?: true;
    };

export const POSE_COLUMNS = [
  'Position',
  'View',
  'On',
  'Feet',
  'Trunk',
  'Head',
  'Hips',
  'Knees',
  'Ankles',
  'Shoulders',
  'Elbows',
  'Hands',
  'Kit',
] as const;
export type PoseColumn = (typeof POSE_COLUMNS)[number];

/** A named position, whole: what its row left blank is what the row above it says. */
export interface Pose {
  readonly name: string;
  readonly view: View;
  readonly contacts: readonly Contact[];
  /** In mid-movement: nobody asks whether the figure would stand. */
  readonly moving: boolean;
  readonly feet: OnSides<Footing> & { readonly apart?: number };
  readonly trunk: TrunkAngles;
  readonly head: HeadAngles;
  readonly hips: OnSides<BallJoint>;
  readonly knees: OnSides<number | undefined>;
  /** Toes drawn up; pointed is negative. */
  readonly ankles: OnSides<number | undefined>;
  readonly shoulders: OnSides<BallJoint>;
  readonly elbows: OnSides<number | undefined>;
  readonly hands: OnSides<HandPlace | undefined>;
  readonly kit: readonly PoseKit[];
  readonly place: Place;
  /** Where each column's words stand, as far as this row or one above has any. */
  readonly cells: Readonly<Partial<Record<PoseColumn, Place>>>;
}

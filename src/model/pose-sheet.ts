/** What an author is shown of an exercise's positions, measured: for looking at a table of poses, not for clients. */
import type { ExerciseId } from './identity.js';
import type { Drawing, Picture, Spot } from './picture.js';
import type { BodySide, OnSides } from './pose.js';

/** Positive as each motion grows: bent forward, outwards, turned out, toes drawn up. */
const SHEET_ANGLES = [
  'hip flex',
  'hip out',
  'hip turn',
  'knee',
  'ankle',
  'shoulder flex',
  'shoulder out',
  'shoulder turn',
  'elbow',
] as const;
export type SheetAngle = (typeof SHEET_ANGLES)[number];
/** Of trunk and neck, which have no sides. */
export type SheetSpine = 'bend' | 'side bend' | 'twist' | 'nod' | 'head turn';

/** One angle of a joint, on both sides, in degrees. */
export interface SheetJoint {
  readonly angle: SheetAngle;
  readonly drawn: OnSides<number>;
  /** As the table has it. */
  readonly said: OnSides<number | undefined>;
  /** As far as most people go: published, without the ten degrees to spare. */
  readonly range: readonly [least: number, most: number];
  /** So far that it is complained of. */
  readonly beyond: OnSides<boolean>;
}

/** An angle said beside the figure, with a line to its joint. */
export interface SheetLabel {
  readonly joint: Spot;
  readonly at: Spot;
  readonly angle: SheetAngle;
  readonly degrees: number;
  /** Where the sides differ: whose it is. */
  readonly side?: BodySide;
}

export interface SheetContact {
  readonly part: string;
  readonly on: string;
  readonly at: Spot;
  /** How far it is off, at its worst point. */
  readonly millimetres: number;
}

export interface SheetPosition {
  readonly name: string;
  readonly picture: Picture;
  readonly labels: readonly SheetLabel[];
  readonly joints: readonly SheetJoint[];
  /** Of trunk and head, in degrees. */
  readonly trunk: readonly {
    readonly angle: 'lean' | SheetSpine;
    readonly drawn: number;
    readonly said: number | undefined;
    /** A lean has no range: nothing but the floor holds it. */
    readonly range?: readonly [least: number, most: number];
    readonly beyond: boolean;
  }[];
  readonly contacts: readonly SheetContact[];
  /** Where the weight of all lies, and from there straight down to the floor (the same, seen from the ceiling). */
  readonly weight: { readonly at: Spot; readonly floor: Spot };
  /** Corners of what bears the body, as they are seen. */
  readonly support: readonly Spot[];
  /** Nobody asks whether it would stand; or it would; or it would not. */
  readonly stands: 'not asked' | 'yes' | 'no';
  /** Height of the hip's crease above the top of the knee; below it is negative. */
  readonly creaseMillimetres: number;
  readonly problems: readonly { readonly message: string; readonly hint: string }[];
}

export interface PoseSheet {
  readonly exercise: ExerciseId;
  readonly name: string;
  readonly drawing: Drawing;
  readonly positions: readonly SheetPosition[];
}

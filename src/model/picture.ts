/**
 * A drawing as a list of marks in the order they are painted: outlines in centimetres on a person of 1.75 m, x to the
 * right and y upwards from the floor, with what each is. Both the screen and the page are drawn from this one list.
 */

import type { ExerciseId } from './identity.js';
import type { Pose } from './pose.js';

/** A point on the drawing's plane. */
export type Spot = readonly [number, number];

export type Command =
  | { readonly kind: 'move'; readonly to: Spot }
  | { readonly kind: 'line'; readonly to: Spot }
  /** An arc of a circle, turning left (against the clock). */
  | { readonly kind: 'arc'; readonly to: Spot; readonly radius: number; readonly large: boolean }
  | { readonly kind: 'curve'; readonly by: Spot; readonly to: Spot }
  | { readonly kind: 'close' };

export type Outline = readonly Command[];

/** How heavy a line is: what is near, what is far or only a detail, and where the body was before. */
export type Weight = 'near' | 'far' | 'ghost';

export type Paint =
  /** The shape widened by its line, in ink: what stays seen of it round the paper laid over it is the line. */
  | 'edge'
  /** The shape itself in the colour of the page. */
  | 'paper'
  /** Its line alone, open. */
  | 'line'
  /** Filled with ink. */
  | 'solid';

export interface Mark {
  readonly paint: Paint;
  readonly weight: Weight;
  readonly outline: Outline;
  /** What it moves with, where the drawing can move. */
  readonly part: string;
}

/** Line widths in centimetres at the figure's own size: shares of its height. */
export const WIDTHS: Readonly<Record<Weight, number>> = { near: 0.02 * 175, far: 0.012 * 175, ghost: 0.0085 * 175 };

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

export interface Picture {
  readonly marks: readonly Mark[];
  readonly box: Box;
}

/** One picture of a body at rest, by the name its author gave the position. */
export interface Position {
  readonly name: string;
  readonly picture: Picture;
}

/** Where a part is at a place on the way, seen from where it is in the first position. */
export interface PartStep {
  /** Of the part about its joint, in radians, against the clock. */
  readonly turn: number;
  /** Along the part: what points at the eye is seen shorter. */
  readonly stretch: number;
  /** Where its joint is. */
  readonly at: Spot;
}

/** How the marks of some parts move through one repetition: as one stiff piece. */
export interface PartMove {
  readonly parts: readonly string[];
  /** In the first position: where the joint is, and which way the part lies from it, in radians. */
  readonly joint: Spot;
  readonly lies: number;
  /** At each place on the way after the first. */
  readonly steps: readonly PartStep[];
}

export interface Motion {
  /** The first position alone; its box holds the whole repetition. */
  readonly picture: Picture;
  /** For each place on the way, the first position first: when it is passed, out and back, as shares of the repetition. */
  readonly passed: readonly (readonly number[])[];
  readonly moves: readonly PartMove[];
  /** One repetition, at the exercise's own tempo. */
  readonly seconds: number;
}

/** One position in a row. Its marks stand where they would stand alone. */
export interface RowPlace {
  /** How far to the right it is moved to stand beside the others. */
  readonly by: number;
  /** What stands about it: painted first. */
  readonly room: readonly Mark[];
  /** The index of the position before, drawn faintly in broken line under this one. */
  readonly ghost?: number;
  readonly figure: readonly Mark[];
  /** The way from the position before: painted last. */
  readonly arrow: readonly Mark[];
}

/** All positions in a row from left to right, each with where the body was before it and the way from there. */
export interface Row {
  readonly places: readonly RowPlace[];
  readonly box: Box;
}

export interface Drawing {
  readonly positions: readonly Position[];
  readonly row: Row;
  readonly motion: Motion;
}

/** An exercise's drawing with the table it was made from, of which is said what it shows. */
export interface Drawn {
  readonly drawing: Drawing;
  readonly poses: readonly Pose[];
  /** In the coach's own words; where it is absent the table's are made. */
  readonly said?: string;
}

export type Drawings = ReadonlyMap<ExerciseId, Drawn>;

/** One width of a coach's own picture; in its bytes is nothing but the picture. */
export interface PictureCopy {
  /** Of the exercise and the width; nothing of the name it came under. */
  readonly name: string;
  /** Points. */
  readonly width: number;
  readonly height: number;
  readonly type: 'image/jpeg' | 'image/png';
  readonly bytes: Uint8Array;
}

/** A coach's own picture of an exercise, shown in place of its drawing. */
export interface Photograph {
  /** What is to be seen, in the coach's words. */
  readonly said: string;
  /** At least one, narrowest first. */
  readonly copies: readonly PictureCopy[];
  /** In greys, for paper: a JPEG. */
  readonly paper?: PictureCopy;
}

export type Photographs = ReadonlyMap<ExerciseId, Photograph>;

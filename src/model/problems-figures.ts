/**
 * Codes of what is wrong with a drawn position: the body could not take it, or the text says otherwise. Codes are
 * permanent: never rename, never reuse.
 */
import type { BodySide, Surface } from './pose.js';

/** A motion of a joint, as the tables of joint range name it. */
export type JointMotion =
  | 'hip flexion'
  | 'hip extension'
  | 'hip abduction'
  | 'hip adduction'
  | 'hip turned out'
  | 'hip turned in'
  | 'knee flexion'
  | 'ankle drawn up'
  | 'ankle pointed'
  | 'shoulder flexion'
  | 'shoulder extension'
  | 'shoulder abduction'
  | 'shoulder turned out'
  | 'shoulder turned in'
  | 'elbow flexion'
  | 'bend of the trunk'
  | 'arch of the trunk'
  | 'side bend of the trunk'
  | 'turn of the chest'
  | 'nod of the head'
  | 'lift of the head'
  | 'turn of the head';

export interface FigureProblems {
  /** A joint bent further than published tables of its range allow, with ten degrees to spare. Whole degrees. */
  readonly 'pose-joint-beyond': {
    readonly position: string;
    /** Of a limb: which. */
    readonly side?: BodySide;
    readonly motion: JointMotion;
    readonly degrees: number;
    readonly most: number;
  };
  /** A part said to bear on something, or a hand said to be somewhere, that cannot get there. */
  readonly 'pose-not-reaching': {
    readonly position: string;
    readonly part: string;
    readonly to: string;
    readonly millimetres: number;
  };
  /** A part of the body below the floor, or inside something that stands on it. */
  readonly 'pose-through': {
    readonly position: string;
    readonly part: string;
    readonly on: Surface;
    readonly millimetres: number;
  };
  /** The centre of mass outside what bears the body. */
  readonly 'pose-falls': {
    readonly position: string;
    readonly way: 'forwards' | 'backwards' | 'to the left' | 'to the right';
    readonly millimetres: number;
  };
  /** The text asks for the hip below the knee, or level with it, and it is drawn above. */
  readonly 'pose-not-deep': {
    readonly position: string;
    readonly text: string;
    readonly wanted: 'below' | 'level with';
    readonly millimetres: number;
  };
  /** The text asks for a straight limb, and it is drawn bent. */
  readonly 'pose-bent': {
    readonly position: string;
    readonly limb: 'arm' | 'leg';
    readonly side: BodySide;
    readonly text: string;
    readonly degrees: number;
  };
  /** An angle said in the table that the rest of its row does not let the body take. Whole degrees. */
  readonly 'pose-against-itself': {
    readonly position: string;
    readonly what: string;
    readonly said: number;
    readonly drawn: number;
  };
}

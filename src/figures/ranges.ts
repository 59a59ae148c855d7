/**
 * How far joints go. For each motion the larger of two tables: the American Academy of Orthopaedic Surgeons (1965, from
 * memory) and the plates of the United States' rating schedule, 38 CFR 4.71. Tables differ by five to ten degrees among
 * themselves, so a drawing is complained of only ten degrees beyond the larger.
 */
import type { SheetAngle, SheetSpine } from '../model/pose-sheet.js';
import type { JointMotion } from '../model/problems-figures.js';
import type { LimbAngle } from './skeleton.js';

export const LENIENCE = 10;

/** Whole degrees. A hip is measured with the knee bent. */
export const MOST: Readonly<Record<JointMotion, number>> = {
  'hip flexion': 125,
  'hip extension': 30,
  'hip abduction': 45,
  'hip adduction': 30,
  'hip turned out': 60,
  'hip turned in': 45,
  'knee flexion': 140,
  'ankle drawn up': 20,
  'ankle pointed': 50,
  'shoulder flexion': 180,
  'shoulder extension': 60,
  'shoulder abduction': 180,
  'shoulder turned out': 90,
  'shoulder turned in': 90,
  'elbow flexion': 150,
  // Of the spine's two parts the same tables, both from memory: the schedule's are in its general formula for the spine (4.71a).
  'bend of the trunk': 90,
  'arch of the trunk': 30,
  'side bend of the trunk': 35,
  'turn of the chest': 45,
  'nod of the head': 45,
  'lift of the head': 45,
  'turn of the head': 80,
};

export interface Range {
  readonly angle: SheetAngle;
  readonly more?: JointMotion;
  readonly less?: JointMotion;
}

/** Which motion an angle is as it grows, and which as it falls below nothing. */
export const RANGES: readonly Range[] = [
  { angle: 'hip flex', more: 'hip flexion', less: 'hip extension' },
  { angle: 'hip out', more: 'hip abduction', less: 'hip adduction' },
  { angle: 'hip turn', more: 'hip turned out', less: 'hip turned in' },
  { angle: 'knee', more: 'knee flexion' },
  { angle: 'ankle', more: 'ankle drawn up', less: 'ankle pointed' },
  { angle: 'shoulder flex', more: 'shoulder flexion', less: 'shoulder extension' },
  { angle: 'shoulder out', more: 'shoulder abduction' },
  { angle: 'shoulder turn', more: 'shoulder turned out', less: 'shoulder turned in' },
  { angle: 'elbow', more: 'elbow flexion' },
];

/**
 * The same of trunk and neck, which have no sides. A wrist is not judged: no column can say it, it is kept within what
 * a wrist does while a posture is sought, and a hand that bears weight bends further than the tables' unloaded ones.
 */
export const SPINE_RANGES: readonly {
  readonly angle: SheetSpine;
  readonly more: JointMotion;
  readonly less: JointMotion;
}[] = [
  { angle: 'bend', more: 'bend of the trunk', less: 'arch of the trunk' },
  { angle: 'side bend', more: 'side bend of the trunk', less: 'side bend of the trunk' },
  { angle: 'twist', more: 'turn of the chest', less: 'turn of the chest' },
  { angle: 'nod', more: 'nod of the head', less: 'lift of the head' },
  { angle: 'head turn', more: 'turn of the head', less: 'turn of the head' },
];

/** Degrees an angle is kept between while a posture is sought. */
export const KEPT: Readonly<Record<LimbAngle, readonly [number, number]>> = {
  'shoulder flex': [-60, 185],
  'shoulder out': [-50, 180],
  'shoulder turn': [-95, 95],
  elbow: [0, 150],
  wrist: [-85, 92],
  'hip flex': [-30, 128],
  'hip out': [-30, 50],
  'hip turn': [-45, 60],
  knee: [0, 145],
  ankle: [-50, 32],
  toe: [-10, 75],
};

/** An exercise's positions, large, with what there is to measure about them. */
import type { Exercise } from '../model/exercise.js';
import type { Box } from '../model/picture.js';
import { BODY_SIDES, type BodySide, type Pose } from '../model/pose.js';
import type {
  PoseSheet,
  SheetAngle,
  SheetContact,
  SheetJoint,
  SheetLabel,
  SheetPosition,
} from '../model/pose-sheet.js';
import { spotOf } from './bearing.js';
import { type Camera, cameraFor, nearness, seen } from './camera.js';
import { creaseAbove } from './check-asked.js';
import { contactMisses } from './check-reach.js';
import { drawExercise } from './draw-exercise.js';
import { fallTold, jointsBeyond } from './judge.js';
import { ankle, elbow, hip, kneeCentre, shoulder } from './landmarks.js';
import { type PosedBody, poseBodies } from './pose-body.js';
import { MOST, RANGES, type Range, SPINE_RANGES } from './ranges.js';
import { type Angle, type Body, type Landmark, placeOf } from './skeleton.js';
import { drawnAngle, drawnLean, type StatedAngle, statedAngles } from './stated-angles.js';
import { isHeld, supportOf, weightOf } from './support.js';

const JOINTS: readonly { readonly angle: SheetAngle; readonly at: (side: BodySide) => Landmark }[] = [
  { angle: 'shoulder flex', at: shoulder },
  { angle: 'elbow', at: elbow },
  { angle: 'hip flex', at: hip },
  { angle: 'knee', at: kneeCentre },
  { angle: 'ankle', at: ankle },
];

/** Room beside a figure for what is said of its joints, and between one line of it and the next, in centimetres. */
const ROOM = 34;
const LINE = 8;
/** Degrees between the sides that are worth a label of their own. */
const APART = 3;

function rangeOf({ more, less }: Pick<Range, 'more' | 'less'>): readonly [number, number] {
  return [less === undefined ? 0 : -MOST[less], more === undefined ? 0 : MOST[more]];
}

function jointsOf(body: Body, stated: readonly StatedAngle[], beyond: ReadonlySet<Angle>): readonly SheetJoint[] {
  return RANGES.map((range): SheetJoint => {
    const drawn = (side: BodySide): number => Math.round(drawnAngle(body, `${side} ${range.angle}`));
    const said = (side: BodySide): number | undefined =>
      stated.find(({ angle }) => angle === `${side} ${range.angle}`)?.said;
    return {
      angle: range.angle,
      drawn: { left: drawn('left'), right: drawn('right') },
      said: { left: said('left'), right: said('right') },
      range: rangeOf(range),
      beyond: { left: beyond.has(`left ${range.angle}`), right: beyond.has(`right ${range.angle}`) },
    };
  });
}

type Unplaced = Omit<SheetLabel, 'at'>;

function angleLabels(body: Body, camera: Camera): readonly Unplaced[] {
  return JOINTS.flatMap(({ angle, at }) => {
    const sides = [...BODY_SIDES].sort(
      (a, b) => nearness(camera, placeOf(body, at(b))) - nearness(camera, placeOf(body, at(a))),
    );
    const labels = sides.map((side) => ({
      side,
      angle,
      joint: seen(camera, placeOf(body, at(side))),
      degrees: Math.round(drawnAngle(body, `${side} ${angle}`)),
    }));
    const [near, far] = labels;
    if (!near || !far || Math.abs(near.degrees - far.degrees) > APART) return labels;
    const { joint, degrees } = near;
    return [{ angle, joint, degrees }];
  });
}

/** In a column on each side of the figure, none upon another. */
function labelsOf({ pose, body }: PosedBody, camera: Camera, { left, right }: Box): readonly SheetLabel[] {
  const middle = seen(camera, weightOf(pose, body))[0];
  const columns: { readonly onLeft: Unplaced[]; readonly onRight: Unplaced[] } = { onLeft: [], onRight: [] };
  for (const label of [...angleLabels(body, camera)].sort((a, b) => b.joint[1] - a.joint[1])) {
    const off = label.joint[0] - middle;
    const toRight = Math.abs(off) > 4 ? off > 0 : columns.onRight.length <= columns.onLeft.length;
    (toRight ? columns.onRight : columns.onLeft).push(label);
  }
  return [...inColumn(columns.onLeft, left + 2), ...inColumn(columns.onRight, right - 2)];
}

function inColumn(labels: readonly Unplaced[], x: number): readonly SheetLabel[] {
  let above = Number.POSITIVE_INFINITY;
  return labels.map((label) => {
    above = Math.min(label.joint[1], above - LINE);
    return { ...label, at: [x, above] };
  });
}

/** All as large as the largest, so that every picture of a sheet has one scale. */
function sheetBoxes(boxes: readonly Box[]): readonly Box[] {
  const wide = Math.max(...boxes.map(({ left, right }) => right - left)) + 2 * ROOM;
  const high = Math.max(...boxes.map((box) => box.high - box.low)) + 12;
  return boxes.map((box) => {
    const middle = (box.left + box.right) / 2;
    return { left: middle - wide / 2, right: middle + wide / 2, low: box.low - 6, high: box.low - 6 + high };
  });
}

const trunkOf = (
  pose: Pose,
  body: Body,
  stated: readonly StatedAngle[],
  beyond: ReadonlySet<Angle>,
): SheetPosition['trunk'] => [
  { angle: 'lean', drawn: Math.round(drawnLean(pose, body)), said: pose.trunk.lean, beyond: false },
  ...SPINE_RANGES.map((range): SheetPosition['trunk'][number] => ({
    angle: range.angle,
    drawn: Math.round(drawnAngle(body, range.angle)),
    said: stated.find(({ angle }) => angle === range.angle)?.said,
    range: rangeOf(range),
    beyond: beyond.has(range.angle),
  })),
];

function contactsOf({ pose, body }: PosedBody, camera: Camera): readonly SheetContact[] {
  const misses = contactMisses(pose, body);
  return pose.contacts.map((contact, index) => ({
    part: misses[index]?.part ?? contact.part,
    on: contact.on,
    at: seen(camera, placeOf(body, spotOf(contact))),
    millimetres: misses[index]?.millimetres ?? 0,
  }));
}

/** Without problems, which are told elsewhere; nothing where there is no table of poses. */
export function poseSheet(exercise: Pick<Exercise, 'id' | 'name' | 'poses' | 'facts'>): PoseSheet | null {
  const drawing = drawExercise(exercise);
  if (drawing === null) return null;
  const boxes = sheetBoxes(drawing.positions.map(({ picture }) => picture.box));
  const positions = poseBodies(exercise.poses).flatMap((posed, index): readonly SheetPosition[] => {
    const { pose, body } = posed;
    const picture = drawing.positions[index]?.picture;
    const box = boxes[index];
    if (!picture || !box) return [];
    const camera = cameraFor(pose.view);
    const weight = weightOf(pose, body);
    const stated = statedAngles(pose, body);
    const beyond = new Set(jointsBeyond(posed).map(({ angle }) => angle));
    return [
      {
        name: pose.name,
        picture: { marks: picture.marks, box },
        labels: labelsOf(posed, camera, box),
        joints: jointsOf(body, stated, beyond),
        trunk: trunkOf(pose, body, stated, beyond),
        contacts: contactsOf(posed, camera),
        weight: { at: seen(camera, weight), floor: seen(camera, [weight[0], 0, weight[2]]) },
        support: supportOf(pose, body).map(([x, z]) => seen(camera, [x, 0, z])),
        stands: isHeld(pose) ? 'not asked' : fallTold(pose, body) === undefined ? 'yes' : 'no',
        creaseMillimetres: Math.round(10 * creaseAbove(body)),
        problems: [],
      },
    ];
  });
  return { exercise: exercise.id, name: exercise.name, drawing, positions };
}

/** An exercise's positions, large, with what there is to measure about them. */
import type { Exercise } from '../model/exercise.js';
import type { Box, Spot } from '../model/picture.js';
import { BODY_SIDES, type BodySide, type Pose } from '../model/pose.js';
import type { PoseSheet, SheetContact, SheetJoint, SheetLabel, SheetPosition } from '../model/pose-sheet.js';
import { spotOf } from './bearing.js';
import { type Camera, cameraFor, nearness, seen } from './camera.js';
import { creaseAbove } from './check-asked.js';
import { contactMisses } from './check-reach.js';
import { drawExercise } from './draw-exercise.js';
import { ankle, elbow, hip, kneeCentre, shoulder } from './landmarks.js';
import { type PosedBody, poseBodies } from './pose-body.js';
import { LENIENCE, MOST, RANGES, type Range } from './ranges.js';
import { type Body, type Landmark, type LimbAngle, placeOf } from './skeleton.js';
import { drawnAngle, drawnLean, type StatedAngle, statedAngles } from './stated-angles.js';
import { fallOf, isHeld, supportOf, weightOf } from './support.js';

const JOINTS: readonly {
  readonly angle: LimbAngle;
  readonly name: string;
  readonly at: (side: BodySide) => Landmark;
}[] = [
  { angle: 'shoulder flex', name: 'shoulder', at: shoulder },
  { angle: 'elbow', name: 'elbow', at: elbow },
  { angle: 'hip flex', name: 'hip', at: hip },
  { angle: 'knee', name: 'knee', at: kneeCentre },
  { angle: 'ankle', name: 'ankle', at: ankle },
];

const NAMES: Readonly<Partial<Record<LimbAngle, string>>> = {
  'hip flex': 'hip bent',
  'hip out': 'hip outwards',
  'hip turn': 'hip turned out',
  knee: 'knee bent',
  ankle: 'ankle drawn up',
  'shoulder flex': 'shoulder bent',
  'shoulder out': 'shoulder outwards',
  elbow: 'elbow bent',
};

/** Room about a figure for what is said beside its joints, in centimetres. */
const ROOM = 24;
const BESIDE = 13;
/** Degrees between the sides that are worth a label of their own. */
const APART = 3;

const sheetBox = ({ left, right, low, high }: Box): Box => ({
  left: left - ROOM,
  right: right + ROOM,
  low: low - 4,
  high: high + 8,
});

function rangeOf({ more, less }: Range): readonly [number, number] {
  return [less === undefined ? 0 : -MOST[less], more === undefined ? 0 : MOST[more]];
}

function jointsOf(body: Body, stated: readonly StatedAngle[]): readonly SheetJoint[] {
  return RANGES.map((range): SheetJoint => {
    const drawn = (side: BodySide): number => Math.round(drawnAngle(body, `${side} ${range.angle}`));
    const said = (side: BodySide): number | undefined =>
      stated.find(({ angle }) => angle === `${side} ${range.angle}`)?.said;
    const [least, most] = rangeOf(range);
    const beyond = (side: BodySide): boolean =>
      (range.more !== undefined && drawn(side) > most + LENIENCE) ||
      (range.less !== undefined && drawn(side) < least - LENIENCE);
    return {
      name: NAMES[range.angle] ?? range.angle,
      drawn: { left: drawn('left'), right: drawn('right') },
      said: { left: said('left'), right: said('right') },
      range: [least, most],
      beyond: { left: beyond('left'), right: beyond('right') },
    };
  });
}

function labelsOf({ pose, body }: PosedBody, camera: Camera): readonly SheetLabel[] {
  const middle = seen(camera, weightOf(pose, body));
  return JOINTS.flatMap(({ angle, name, at }) => {
    const sides = [...BODY_SIDES].sort(
      (a, b) => nearness(camera, placeOf(body, at(b))) - nearness(camera, placeOf(body, at(a))),
    );
    const bends = sides.map((side) => Math.round(drawnAngle(body, `${side} ${angle}`)));
    const alike = Math.abs((bends[0] ?? 0) - (bends[1] ?? 0)) <= APART;
    return sides.slice(0, alike ? 1 : 2).map((side, index): SheetLabel => {
      const spot = seen(camera, placeOf(body, at(side)));
      const [dx, dy] = [spot[0] - middle[0], spot[1] - middle[1]];
      const far = Math.hypot(dx, dy) || 1;
      const beside: Spot = [spot[0] + (dx / far) * BESIDE, spot[1] + (dy / far) * BESIDE];
      return {
        at: beside,
        text: `${alike ? '' : `${side} `}${name} ${bends[index] ?? 0}°`,
        anchor: dx / far > 0.3 ? 'start' : dx / far < -0.3 ? 'end' : 'middle',
      };
    });
  });
}

const trunkOf = (pose: Pose, body: Body): SheetPosition['trunk'] => {
  const { trunk, head } = pose;
  const one = (name: string, drawn: number, said: number | undefined) => ({ name, drawn: Math.round(drawn), said });
  return [
    one('trunk leans', drawnLean(pose, body), trunk.lean),
    one('trunk bent', drawnAngle(body, 'bend'), trunk.bend),
    one('trunk bent to the right', drawnAngle(body, 'side bend'), trunk.sideBend),
    one('chest turned left', drawnAngle(body, 'twist'), trunk.turn),
    one('head nods', drawnAngle(body, 'nod'), head.nod),
    one('head turned left', drawnAngle(body, 'head turn'), head.turn),
  ];
};

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
  const positions = poseBodies(exercise.poses).flatMap((posed, index): readonly SheetPosition[] => {
    const { pose, body } = posed;
    const picture = drawing.positions[index]?.picture;
    if (!picture) return [];
    const camera = cameraFor(pose.view);
    const weight = weightOf(pose, body);
    return [
      {
        name: pose.name,
        picture: { marks: picture.marks, box: sheetBox(picture.box) },
        labels: labelsOf(posed, camera),
        joints: jointsOf(body, statedAngles(pose, body)),
        trunk: trunkOf(pose, body),
        contacts: contactsOf(posed, camera),
        weight: { at: seen(camera, weight), floor: seen(camera, [weight[0], 0, weight[2]]) },
        support: supportOf(pose, body).map(([x, z]) => seen(camera, [x, 0, z])),
        stands: isHeld(pose) ? 'not asked' : fallOf(pose, body) === undefined ? 'yes' : 'no',
        creaseMillimetres: Math.round(10 * creaseAbove(body)),
        problems: [],
      },
    ];
  });
  return { exercise: exercise.id, name: exercise.name, drawing, positions };
}

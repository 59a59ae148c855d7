/** Positions as they are drawn → what a body could not do, and what the exercise's own words say otherwise. */
import type { FigureAsk } from '../model/figure-ask.js';
import type { Place } from '../model/place.js';
import type { PoseColumn } from '../model/pose.js';
import { FOLDER, type Problem } from '../model/problem.js';
import { unasked } from './check-asked.js';
import { contactMisses, handMisses, sunkParts } from './check-reach.js';
import { CONTACT_OFF, fallTold, jointsBeyond } from './judge.js';
import type { PosedBody } from './pose-body.js';
import type { Angle } from './skeleton.js';
import { type StatedAngle, statedAngles } from './stated-angles.js';

/** Millimetres: a hand on the body may rest a little beside its place. */
const HAND_OFF = 40;
const SUNK = 15;
/** Degrees. */
const AGAINST = 8;

const warning = { severity: 'warning', scope: FOLDER } as const;

/** In the order of the positions. Reports the codes of `FigureProblems`, all of them warnings. */
export const checkPoses = (bodies: readonly PosedBody[], asks: readonly FigureAsk[] = []): readonly Problem[] =>
  bodies.flatMap((posed, index) => [
    ...checkJoints(posed),
    ...checkReach(posed, bodies),
    ...checkBalance(posed),
    ...unasked(posed, index === 0, asks).map((found): Problem => {
      const column = found.code === 'pose-bent' && found.data.limb === 'arm' ? 'Elbows' : 'Knees';
      return { ...found, ...warning, place: cellOf(posed, column) };
    }),
  ]);

/** Where the column's words stand; the row itself where it has none. */
const cellOf = ({ pose }: PosedBody, column: PoseColumn): Place => pose.cells[column] ?? pose.place;

function columnOf(angle: Angle): PoseColumn {
  const [joint = ''] = angle.replace(/^(?:left|right) /, '').split(' ');
  return COLUMNS[joint] ?? 'Trunk';
}

/** By the first word of an angle. */
const COLUMNS: Readonly<Record<string, PoseColumn>> = {
  hip: 'Hips',
  knee: 'Knees',
  ankle: 'Ankles',
  shoulder: 'Shoulders',
  elbow: 'Elbows',
  nod: 'Head',
  head: 'Head',
};

/** Of two sides that both go too far the further is told; what goes too far is not told again for not being as said. */
function checkJoints(posed: PosedBody): readonly Problem[] {
  const { pose, body } = posed;
  const far = jointsBeyond(posed);
  const told = new Set(far.map(({ angle }) => angle));
  const furthest = far.filter((one) => {
    const first = [...far].sort((a, b) => b.degrees - a.degrees).find(({ motion }) => motion === one.motion);
    return one === first;
  });
  const beyond = furthest.map(({ angle, ...found }): Problem => {
    const data = { position: pose.name, ...found };
    return { code: 'pose-joint-beyond', ...warning, place: cellOf(posed, columnOf(angle)), data };
  });
  const said = statedAngles(pose, body);
  const against = said.filter((one) => missOf(one) > AGAINST && !(one.angle !== undefined && told.has(one.angle)));
  const worst = against.filter((one) =>
    against.every((other) => other === one || !isOtherSide(one, other) || missOf(one) > missOf(other)),
  );
  return [
    ...beyond,
    ...worst.map(({ column, what, said, drawn }): Problem => {
      const data = { position: pose.name, what, said, drawn: Math.round(drawn) };
      return { code: 'pose-against-itself', ...warning, place: cellOf(posed, column), data };
    }),
  ];
}

const missOf = ({ said, drawn }: StatedAngle): number => Math.abs(drawn - said);

/** The same said of both sides at once. */
const isOtherSide = (one: StatedAngle, other: StatedAngle): boolean =>
  one.said === other.said &&
  one.angle?.replace(/^(?:left|right) /, '') === other.angle?.replace(/^(?:left|right) /, '');

function checkReach(posed: PosedBody, bodies: readonly PosedBody[]): readonly Problem[] {
  const { pose, body } = posed;
  const position = pose.name;
  const off = contactMisses(pose, body).filter(({ millimetres }) => millimetres > CONTACT_OFF);
  const astray = handMisses(pose, body).filter(({ millimetres }) => millimetres > HAND_OFF);
  const [sunk] = sunkParts(posed, bodies);
  return [
    ...off.map(
      (miss): Problem => ({
        code: 'pose-not-reaching',
        ...warning,
        place: cellOf(posed, 'On'),
        data: { position, ...miss },
      }),
    ),
    ...astray.map(
      (miss): Problem => ({
        code: 'pose-not-reaching',
        ...warning,
        place: cellOf(posed, 'Hands'),
        data: { position, ...miss },
      }),
    ),
    ...(sunk && sunk.millimetres > SUNK
      ? [{ code: 'pose-through' as const, ...warning, place: pose.place, data: { position, ...sunk } }]
      : []),
  ];
}

function checkBalance({ pose, body }: PosedBody): readonly Problem[] {
  const fall = fallTold(pose, body);
  if (!fall) return [];
  const data = { position: pose.name, way: fall.way, millimetres: Math.round(fall.beyond * 10) };
  return [{ code: 'pose-falls', ...warning, place: pose.place, data }];
}

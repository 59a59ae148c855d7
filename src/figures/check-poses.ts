/** Positions as they are drawn → what a body could not do, and what the exercise's own words say otherwise. */
import type { FigureAsk } from '../model/figure-ask.js';
import type { Place } from '../model/place.js';
import { BODY_SIDES, type PoseColumn } from '../model/pose.js';
import { FOLDER, type Problem } from '../model/problem.js';
import { unasked } from './check-asked.js';
import { contactMisses, handMisses, sunkParts } from './check-reach.js';
import type { PosedBody } from './pose-body.js';
import { LENIENCE, MOST, RANGES } from './ranges.js';
import type { Angle } from './skeleton.js';
import { drawnAngle, type StatedAngle, statedAngles } from './stated-angles.js';
import { fallOf, isHeld } from './support.js';

/** Millimetres: a contact off by more shows; a hand on the body may rest a little beside its place. */
const CONTACT_OFF = 8;
const HAND_OFF = 40;
const SUNK = 15;
/** The edge of what bears the body is flesh: less than this beyond it nobody sees. */
const FALLING = 10;
/** Degrees. */
const AGAINST = 8;
/** An angle nobody said is the drawing's own choice, and tucked toes force an ankle: nobody can write a little less. */
const UNSAID = 8;

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
  const [, joint] = /^(?:left|right) (hip|knee|ankle|shoulder|elbow)/.exec(angle) ?? [];
  switch (joint) {
    case 'hip':
      return 'Hips';
    case 'knee':
      return 'Knees';
    case 'ankle':
      return 'Ankles';
    case 'shoulder':
      return 'Shoulders';
    default:
      return 'Elbows';
  }
}

/** Of two sides that both go too far the further is told; what goes too far is not told again for not being as said. */
function checkJoints(posed: PosedBody): readonly Problem[] {
  const { pose, body } = posed;
  const told = new Set<Angle>();
  const said = statedAngles(pose, body);
  const isSaid = (angle: Angle): boolean => said.some((one) => one.angle === angle);
  // A body stretched after what it cannot reach is told of that alone.
  const stretched = contactMisses(pose, body).some(({ millimetres }) => millimetres > CONTACT_OFF);
  const mostOf = (angle: Angle, most: number): number =>
    most + LENIENCE + (isSaid(angle) ? 0 : stretched ? Number.POSITIVE_INFINITY : UNSAID);
  const beyond = RANGES.flatMap(({ angle, more, less }) =>
    [more, less].flatMap((motion, index): readonly Problem[] => {
      if (motion === undefined) return [];
      const most = MOST[motion];
      const far = BODY_SIDES.map((side) => {
        const degrees = Math.round(drawnAngle(body, `${side} ${angle}`) * (index === 0 ? 1 : -1));
        return { side, degrees };
      }).filter(({ side, degrees }) => degrees > mostOf(`${side} ${angle}`, most));
      for (const { side } of far) told.add(`${side} ${angle}`);
      const [furthest] = far.sort((a, b) => b.degrees - a.degrees);
      if (!furthest) return [];
      const data = { position: pose.name, motion, most, ...furthest };
      return [
        { code: 'pose-joint-beyond', ...warning, place: cellOf(posed, columnOf(`${furthest.side} ${angle}`)), data },
      ];
    }),
  );
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
  if (isHeld(pose)) return [];
  const fall = fallOf(pose, body);
  if (!fall || fall.beyond * 10 <= FALLING) return [];
  const data = { position: pose.name, way: fall.way, millimetres: Math.round(fall.beyond * 10) };
  return [{ code: 'pose-falls', ...warning, place: pose.place, data }];
}

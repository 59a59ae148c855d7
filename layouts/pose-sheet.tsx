/** An author's sheet of one exercise's positions, measured; and the contact sheet of all of them. */
import type { Spot } from '../src/model/picture.js';
import { BODY_SIDES } from '../src/model/pose.js';
import type { PoseSheet, SheetAngle, SheetLabel, SheetPosition } from '../src/model/pose-sheet.js';
import { Figure, FigureRow, viewBoxOf } from './figure.js';
import { whole } from './path-data.js';

const at = ([x, y]: Spot): { readonly x: number; readonly y: number } => ({ x: whole(x), y: -whole(y) });
const points = (spots: readonly Spot[]): string => spots.map((spot) => `${at(spot).x},${at(spot).y}`).join(' ');

const MOTIONS: Readonly<Record<SheetAngle, string>> = {
  'hip flex': 'hip bent',
  'hip out': 'hip outwards',
  'hip turn': 'hip turned out',
  knee: 'knee bent',
  ankle: 'ankle drawn up',
  'shoulder flex': 'shoulder forward',
  'shoulder out': 'shoulder outwards',
  'shoulder turn': 'shoulder turned out',
  elbow: 'elbow bent',
};
const TRUNK: Readonly<Record<SheetPosition['trunk'][number]['angle'], string>> = {
  lean: 'trunk leans',
  bend: 'trunk rounded',
  'side bend': 'trunk bent to the right',
  twist: 'chest turned to the left',
  nod: 'head nods',
  'head turn': 'head turned to the left',
};

const inDegrees = (angle: number): string => `${angle < 0 ? '−' : ''}${Math.abs(angle)}°`;

function Label({ label: { joint, at: beside, angle, degrees, side } }: { readonly label: SheetLabel }) {
  const [from, to] = [at(joint), at(beside)];
  const onLeft = to.x < from.x;
  const [name = ''] = angle.split(' ');
  return (
    <>
      <line class="leader" x1={from.x} y1={from.y} x2={to.x + (onLeft ? 50 : -50)} y2={to.y} />
      <text x={to.x} y={to.y} text-anchor={onLeft ? 'start' : 'end'}>
        {side === undefined ? '' : `${side} `}
        {name} {inDegrees(degrees)}
      </text>
    </>
  );
}

/** What is measured, over the picture: in the same plane. */
function Measured({ position: { picture, labels, contacts, weight, support } }: { readonly position: SheetPosition }) {
  const [over, under] = [at(weight.at), at(weight.floor)];
  return (
    <svg class="measured" viewBox={viewBoxOf(picture.box)} aria-hidden="true">
      {support.length === 0 ? null : <polygon class="support" points={points(support)} />}
      <line class="plumb" x1={over.x} y1={over.y} x2={under.x} y2={under.y} />
      <circle class="weight" cx={over.x} cy={over.y} r="7" />
      {contacts.map((contact) => (
        <circle class="bears" cx={at(contact.at).x} cy={at(contact.at).y} r="5" />
      ))}
      {labels.map((label) => (
        <Label label={label} />
      ))}
    </svg>
  );
}

const degrees = (drawn: number, said: number | undefined): string =>
  said === undefined || said === drawn ? inDegrees(drawn) : `${inDegrees(drawn)} (said: ${inDegrees(said)})`;

const STANDS: Readonly<Record<SheetPosition['stands'], string>> = {
  'not asked': 'in movement, lying or leaning: not asked',
  yes: 'over what bears it',
  no: 'beyond what bears it',
};

function Position({ position, exercise }: { readonly position: SheetPosition; readonly exercise: string }) {
  const { name, picture, joints, trunk, contacts, problems, stands, creaseMillimetres } = position;
  return (
    <section>
      <h2>{name}</h2>
      {problems.length === 0 ? null : (
        <ul class="problems">
          {problems.map(({ message, hint }) => (
            <li>
              {message} <span class="hint">Write instead: {hint}</span>
            </li>
          ))}
        </ul>
      )}
      <div class="pair">
        <div class="large">
          <Figure picture={picture} alt={`${exercise}, ${name}`} />
          <Measured position={position} />
        </div>
        <div>
          <table>
            <thead>
              <tr>
                <th scope="col">Joint</th>
                <th scope="col">left</th>
                <th scope="col">right</th>
                <th scope="col">most people</th>
              </tr>
            </thead>
            <tbody>
              {joints.map(({ angle, drawn, said, range, beyond }) => (
                <tr>
                  <th scope="row">{MOTIONS[angle]}</th>
                  {BODY_SIDES.map((side) => (
                    <td class={beyond[side] ? 'beyond' : undefined}>{degrees(drawn[side], said[side])}</td>
                  ))}
                  <td>
                    {inDegrees(range[0])} to {inDegrees(range[1])}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
          <dl>
            {trunk.map((one) => (
              <div>
                <dt>{TRUNK[one.angle]}</dt>
                <dd>
                  <span class={one.beyond ? 'beyond' : undefined}>{degrees(one.drawn, one.said)}</span>
                  {one.range === undefined
                    ? ''
                    : `, most people ${inDegrees(one.range[0])} to ${inDegrees(one.range[1])}`}
                </dd>
              </div>
            ))}
            <div>
              <dt>bears it</dt>
              <dd>
                {contacts.length === 0
                  ? 'nothing'
                  : contacts.map(({ part, on, millimetres }) => `${part} on ${on} (${millimetres} mm off)`).join(', ')}
              </dd>
            </div>
            <div>
              <dt>its weight</dt>
              <dd>{STANDS[stands]}</dd>
            </div>
            {stands === 'not asked' ? null : (
              <div>
                <dt>crease of the hip</dt>
                <dd>
                  {Math.abs(creaseMillimetres)} mm {creaseMillimetres < 0 ? 'below' : 'above'} the top of the knee
                </dd>
              </div>
            )}
          </dl>
        </div>
      </div>
    </section>
  );
}

const countOf = ({ positions }: PoseSheet): number => positions.reduce((sum, { problems }) => sum + problems.length, 0);

const toldOf = (sheet: PoseSheet): string => {
  const count = countOf(sheet);
  return count === 0 ? 'nothing to mend' : count === 1 ? 'one thing to mend' : `${count} things to mend`;
};

/** `index` leads back to the contact sheet, where there is one. */
export function PoseSheetPage({ sheet, index }: { readonly sheet: PoseSheet; readonly index?: string }) {
  return (
    <>
      <h1>{sheet.name}</h1>
      <p>
        {index === undefined ? null : <a href={index}>All exercises</a>}
        {index === undefined ? null : ' · '}
        {toldOf(sheet)}
      </p>
      <div class="row">
        <FigureRow drawing={sheet.drawing} id={sheet.exercise} alt={`${sheet.name}, all positions`} />
      </div>
      <p class="legend">
        Degrees are counted from standing at attention. The ring is where the weight of body and kit lies, the line from
        it leads straight down, the pale shape on the floor is what bears it, and the dots are what rests on something.
        Of a joint “most people” are published ranges; only ten degrees beyond them is anything complained of, eighteen
        where nobody said the angle. A drawing is no measure of what one person's joints should do.
      </p>
      {sheet.positions.map((position) => (
        <Position position={position} exercise={sheet.name} />
      ))}
    </>
  );
}

export function PoseIndexPage({
  sheets,
  fileOf,
}: {
  readonly sheets: readonly PoseSheet[];
  readonly fileOf: (sheet: PoseSheet) => string;
}) {
  return (
    <>
      <h1>All positions</h1>
      <ul class="contact-sheet">
        {sheets.map((sheet) => (
          <li>
            <a href={fileOf(sheet)}>{sheet.name}</a>
            <span class={countOf(sheet) === 0 ? 'told' : 'told beyond'}>{toldOf(sheet)}</span>
            <FigureRow drawing={sheet.drawing} id={sheet.exercise} alt={`${sheet.name}, all positions`} />
          </li>
        ))}
      </ul>
    </>
  );
}

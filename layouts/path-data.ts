/** Outlines ⇄ path data, in half centimetres, y downwards. */
import type { Command, Outline, Spot } from '../src/model/picture.js';

/** Half centimetres: whole numbers of them are finer than a phone shows. */
const SCALE = 2;

/** A length on the drawing in its own units. */
export const whole = (length: number): number => Math.round(length * SCALE) || 0;

/** Short numbers need no blank before a minus. */
const joined = (numbers: readonly number[]): string =>
  numbers.map((number, index) => (index === 0 || number < 0 ? `${number}` : ` ${number}`)).join('');

/** From one point to the next. */
interface Step {
  readonly say: string;
  readonly by: Spot;
}

interface Way {
  readonly start: Spot;
  readonly steps: readonly Step[];
  readonly closed: boolean;
}

const rounded = ([x, y]: Spot): Spot => [whole(x), -whole(y)];
const stepTo = ([x, y]: Spot, to: Spot): Spot => [to[0] - x, to[1] - y];

function stepOf(command: Exclude<Command, { kind: 'close' | 'move' }>, at: Spot): Step {
  const by = stepTo(at, rounded(command.to));
  switch (command.kind) {
    case 'line':
      return { say: `l${joined(by)}`, by };
    case 'curve':
      return { say: `q${joined([...stepTo(at, rounded(command.by)), ...by])}`, by };
    case 'arc': {
      const radius = whole(command.radius);
      // Flags need nothing about them (SVG 2, 9.3.9).
      return { say: `a${radius} ${radius} 0 ${command.large ? 1 : 0}0${joined(by)}`, by };
    }
  }
}

/** Every point is rounded where it stands, so that nothing drifts. */
function wayOf(outline: Outline): Way {
  let start: Spot = [0, 0];
  let at = start;
  const steps: Step[] = [];
  for (const command of outline) {
    if (command.kind === 'close') continue;
    const to = rounded(command.to);
    if (command.kind === 'move') start = to;
    else steps.push(stepOf(command, at));
    at = to;
  }
  const closed = outline.at(-1)?.kind === 'close';
  return { start, steps: steps.filter(({ by }) => by.some((one) => one !== 0)), closed };
}

/** After a closed outline the next begins so far from where that one did: the same text wherever the limb is. */
export function pathData(outlines: readonly Outline[]): string {
  let from: Spot | undefined;
  return outlines
    .map((outline) => {
      const { start, steps, closed } = wayOf(outline);
      const move = from === undefined ? `M${joined(start)}` : `m${joined(stepTo(from, start))}`;
      from = closed ? start : undefined;
      return `${move}${steps.map(({ say }) => say).join('')}${closed ? 'z' : ''}`;
    })
    .join('');
}

/** Path data of `pathData` as that of each of its outlines by itself. */
export function eachOutline(data: string): readonly string[] {
  let [x, y] = [0, 0];
  return Array.from(data.matchAll(/([Mm])(-?\d+) ?(-?\d+)([^Mm]*)/g), ([, move, across, down, rest = '']) => {
    const more = move === 'm';
    [x, y] = [Number(across) + (more ? x : 0), Number(down) + (more ? y : 0)];
    return `M${joined([x, y])}${rest}`;
  });
}

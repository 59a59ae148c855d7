/**
 * The tally that stands in the margin, drawn by the table of marks: u is 40 px, strokes stand 0.32 u apart, a foot
 * is 0.15 u high, a full stroke 0.12 u thick, every fifth crosses the four before it.
 * A stroke leans by up to 3 degrees either way, by a hash of its set's key, so that it leans the same in every drawing. A
 * foot stands upright: it would lean by less than a third of a pixel.
 */
export type Mark = 'to do' | 'done' | 'easier' | 'left out' | 'extra';

export const U = 40;
const STEP = 0.32 * U;
const FOOT = 0.15 * U;
const GROUP_WIDTH = 56;
const LINE = U + 4;

/** FNV-1a over code units: small, the same everywhere. Degrees from -3 to 3. */
export function leanOf(key: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < key.length; i += 1) hash = Math.imul(hash ^ key.charCodeAt(i), 0x01000193) >>> 0;
  return ((hash % 601) - 300) / 100;
}

const round = (n: number): number => Math.floor(n * 10 + 0.5) / 10;

/** The line of one mark: `height` up from its foot, leaning. */
function stroke(x: number, base: number, height: number, degrees: number): string {
  const over = Math.tan((degrees * Math.PI) / 180) * height;
  return `M${round(x)} ${round(base)}l${round(over)} ${round(-height)}`;
}

const foot = (x: number, base: number): string => `M${round(x)} ${round(base)}v${-FOOT}`;

/** Marks in a line. */
const IN_A_LINE = 5;

/** Lines that so many marks take. */
export const linesOf = (marks: number): number => Math.max(1, Math.ceil(marks / IN_A_LINE));

const xOf = (within: number): number => 6 + (within + 0.5) * STEP - STEP / 2;

interface Drawn {
  readonly d: string;
  readonly of: 'foot' | 'slant' | 'full';
  readonly letter?: { readonly x: number; readonly y: number; readonly text: string };
  /** Beside a dotted line, of which it would be no more than another dot. */
  readonly dash?: string;
}

/** The fifth crosses the four; what tells its state stands beneath its end, beside theirs. */
function drawFifth(mark: Mark, base: number): Drawn {
  const d = `M${round(xOf(0) - 6)} ${round(base - 0.25 * U)}L${round(xOf(3) + 6)} ${round(base - 0.75 * U)}`;
  const x = round(xOf(4) - 2);
  switch (mark) {
    case 'to do':
      return { d, of: 'slant' };
    case 'done':
      return { d, of: 'full' };
    case 'easier':
      return { d, of: 'full', letter: { x, y: base + 2, text: 'e' } };
    case 'left out':
      return { d, of: 'slant', dash: `M${round(x - 4)} ${round(base - 4)}h8` };
    case 'extra':
      return { d, of: 'full', letter: { x, y: base + 2, text: '+' } };
  }
}

/** One mark as a path; `index` counts from 0 over the whole row of the tally. */
export function drawMark(mark: Mark, index: number, key: string): Drawn {
  const within = index % IN_A_LINE;
  const base = Math.floor(index / IN_A_LINE) * LINE + U;
  const x = xOf(within);
  const lean = leanOf(key);
  if (within === 4) return drawFifth(mark, base);
  switch (mark) {
    case 'to do':
      return { d: foot(x, base), of: 'foot' };
    case 'done':
      return { d: stroke(x, base, U - 4, lean), of: 'full' };
    case 'easier':
      return { d: stroke(x, base - 10, U - 14, lean), of: 'full', letter: { x: round(x), y: base + 2, text: 'e' } };
    case 'left out':
      return { d: `${foot(x, base)}M${round(x - 4)} ${base - U / 2}h8`, of: 'foot' };
    case 'extra':
      return { d: stroke(x, base - 14, U - 18, lean), of: 'full', letter: { x: round(x), y: base + 2, text: '+' } };
  }
}

/** One foot a week in a single row, for the cover; the easier weeks stand apart. */
export function WeekFeet({ weeks }: { readonly weeks: readonly { readonly easy: boolean }[] }) {
  let x = 4;
  const feet = weeks.map(({ easy }, i) => {
    x += i === 0 ? 0 : STEP + (easy ? STEP : 0);
    return foot(x, U);
  });
  return (
    <svg aria-hidden="true" width={round(x + 8)} height={U}>
      <path d={feet.join('')} />
    </svg>
  );
}

export interface TallyProps {
  readonly marks: readonly { readonly mark: Mark; readonly key: string }[];
  /** What is read aloud; empty where the words stand beside it. */
  readonly label: string;
}

export function Tally({ marks, label }: TallyProps) {
  const height = linesOf(marks.length) * LINE;
  const drawn = marks.map(({ mark, key }, index) => drawMark(mark, index, key));
  const size = { width: GROUP_WIDTH, height };
  const lines = drawn.flatMap(({ of, d, dash }) => [
    { of, d },
    ...(dash === undefined ? [] : [{ of: 'foot', d: dash }]),
  ]);
  const kinds = [...new Set(lines.map(({ of }) => of))];
  const strokes = (
    <>
      {kinds.map((kind) => (
        <path
          {...(kind === 'foot' ? {} : { class: kind })}
          d={lines
            .filter(({ of }) => of === kind)
            .map(({ d }) => d)
            .join('')}
        />
      ))}
      {drawn.map(({ letter }) =>
        letter ? (
          <text x={letter.x} y={letter.y}>
            {letter.text}
          </text>
        ) : null,
      )}
    </>
  );
  return label === '' ? (
    <svg aria-hidden="true" {...size}>
      {strokes}
    </svg>
  ) : (
    <svg role="img" aria-label={label} {...size}>
      {strokes}
    </svg>
  );
}

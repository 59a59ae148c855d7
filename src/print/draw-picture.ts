/**
 * Marks of a drawing as PDF operators, in black and white alone: a form that a page calls, in tenths of a centimetre at
 * the figure's own size, y upwards. What `layouts/figure.css` says of a screen is said here of paper, and no line of it
 * is thinner than a press or a copier keeps.
 */
import { type Command, type Mark, type Outline, type Spot, type Weight, WIDTHS } from '../model/picture.js';
import type { Layer, PictureBox } from './page.js';
import { mm } from './sheet.js';
import { type Form, showForm } from './show-form.js';

/** Tenths of a centimetre: a fiftieth of a millimetre on an A5 page. */
const TENTHS = 10;
/** No line is thinner on paper, in points. */
const LEAST_LINE = mm(0.25);

/** Where the body was: widths and strokes of its broken line in centimetres, as on the screen. */
const FAINT = { edge: 1.25, line: 1.5, detail: 1, dash: [4, 4.5] } as const;

const whole = (length: number): number => Math.round(length * TENTHS) || 0;
const at = ([x, y]: Spot): string => `${whole(x)} ${whole(y)}`;

const QUARTER = Math.PI / 2;

/** A cubic curve for each quarter of an arc: off the circle by less than 0.03 % of its radius. */
function arcCurves(from: Spot, { to, radius, large }: Extract<Command, { kind: 'arc' }>): readonly string[] {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const chord = Math.hypot(dx, dy);
  if (chord === 0) return [];
  if (radius === 0) return [`${at(to)} l`];
  // One that does not reach is widened until it does, as on the screen.
  const r = Math.max(radius, chord / 2);
  const off = Math.sqrt(Math.max(0, r * r - (chord / 2) ** 2)) * (large ? -1 : 1);
  const centre: Spot = [from[0] + dx / 2 - (off * dy) / chord, from[1] + dy / 2 + (off * dx) / chord];
  const start = Math.atan2(from[1] - centre[1], from[0] - centre[0]);
  const turn = Math.atan2(to[1] - centre[1], to[0] - centre[0]) - start;
  const sweep = turn > 0 ? turn : turn + 2 * Math.PI;
  const count = Math.ceil(sweep / QUARTER - 1e-9);
  const step = sweep / count;
  const reach = (4 / 3) * Math.tan(step / 4) * r;
  return Array.from({ length: count }, (_, i) => {
    const [a, b] = [start + i * step, start + (i + 1) * step];
    const spot = (angle: number, along: number): Spot => [
      centre[0] + r * Math.cos(angle) - along * Math.sin(angle),
      centre[1] + r * Math.sin(angle) + along * Math.cos(angle),
    ];
    return `${at(spot(a, reach))} ${at(spot(b, -reach))} ${at(i === count - 1 ? to : spot(b, 0))} c`;
  });
}

/** A curve of one handle has the two of a cubic a third of the way from it. */
function bend(from: Spot, { by, to }: Extract<Command, { kind: 'curve' }>): string {
  const handle = (end: Spot): Spot => [end[0] + (2 / 3) * (by[0] - end[0]), end[1] + (2 / 3) * (by[1] - end[1])];
  return `${at(handle(from))} ${at(handle(to))} ${at(to)} c`;
}

function pathOperators(outline: Outline): string {
  let from: Spot = [0, 0];
  const parts: string[] = [];
  for (const command of outline) {
    switch (command.kind) {
      case 'close':
        parts.push('h');
        continue;
      case 'move':
        parts.push(`${at(command.to)} m`);
        break;
      case 'line':
        parts.push(`${at(command.to)} l`);
        break;
      case 'curve':
        parts.push(bend(from, command));
        break;
      case 'arc':
        parts.push(...arcCurves(from, command));
        break;
    }
    from = command.to;
  }
  return parts.join(' ');
}

/** What is painted now; nothing is said twice. */
interface Pen {
  readonly fill: (grey: 0 | 1) => string;
  readonly width: (tenths: number) => string;
}

function freshPen(): Pen {
  let [fill, width] = [0, -1];
  return {
    fill: (grey) => {
      if (grey === fill) return '';
      fill = grey;
      return `${grey} g `;
    },
    width: (tenths) => {
      if (tenths === width) return '';
      width = tenths;
      return `${tenths} w `;
    },
  };
}

const faintWidth = (paint: Mark['paint'], weight: Weight): number =>
  paint === 'edge' ? FAINT.edge : weight === 'ghost' ? FAINT.detail : FAINT.line;

/** `least` in centimetres: what the thinnest line measures at the figure's own size. */
function markOperators({ paint, weight, outline }: Mark, faint: boolean, least: number, pen: Pen): string {
  const path = pathOperators(outline);
  const line = Math.max(least, faint ? faintWidth(paint, weight) : WIDTHS[weight]);
  switch (paint) {
    case 'edge':
      // Half of it lies under the paper that is laid over it.
      return faint ? `${pen.width(whole(2 * line))}${path} S` : `${pen.fill(0)}${pen.width(whole(2 * line))}${path} B`;
    case 'paper':
      return `${pen.fill(1)}${path} f`;
    case 'line':
      return `${pen.width(whole(line))}${path} S`;
    case 'solid':
      return faint ? '' : `${pen.fill(0)}${path} f`;
  }
}

function layerOperators({ marks, by, faint }: Layer, least: number): readonly string[] {
  const pen = freshPen();
  const drawn = marks.map((mark) => markOperators(mark, faint, least, pen)).filter((one) => one !== '');
  if (drawn.length === 0) return [];
  const moved = by[0] === 0 && by[1] === 0 ? [] : [`1 0 0 1 ${at(by)} cm`];
  const broken = faint ? [`[${FAINT.dash.map(whole).join(' ')}] 0 d`] : [];
  return ['q', ...moved, ...broken, ...drawn, 'Q'];
}

/** What was said of a drawing in one document is said again in the next. */
const said = new WeakMap<readonly Layer[], Map<number, string>>();

/** Black is what a form begins with. Ends and corners are round. */
function operatorsOf(layers: readonly Layer[], least: number): string {
  const sizes = said.get(layers) ?? new Map<number, string>();
  said.set(layers, sizes);
  const operators =
    sizes.get(least) ?? ['1 J 1 j', ...layers.flatMap((layer) => layerOperators(layer, least))].join('\n');
  sizes.set(least, operators);
  return operators;
}

/** What a document has drawn already: the same drawing at the same size is in it once, wherever it is shown. */
const drawnIn = new WeakMap<PDFKit.PDFDocument, Map<readonly Layer[], Map<number, Form>>>();

function formOf(document: PDFKit.PDFDocument, { plane, layers }: PictureBox, scale: number): Form {
  const forms = drawnIn.get(document) ?? new Map<readonly Layer[], Map<number, Form>>();
  drawnIn.set(document, forms);
  const sizes = forms.get(layers) ?? new Map<number, Form>();
  forms.set(layers, sizes);
  const known = sizes.get(scale);
  if (known) return known;
  const ref = document.ref({
    Type: 'XObject',
    Subtype: 'Form',
    BBox: [plane.left, plane.low, plane.right, plane.high].map(whole),
    Resources: {},
  });
  ref.end(operatorsOf(layers, LEAST_LINE / scale));
  const made = { name: `D${[...forms.values()].reduce((count, one) => count + one.size, 1)}`, ref };
  sizes.set(scale, made);
  return made;
}

export function drawPicture(document: PDFKit.PDFDocument, box: PictureBox): void {
  const { plane, x, y, width } = box;
  const scale = width / (plane.right - plane.left);
  const unit = scale / TENTHS;
  const [left, top] = [x - plane.left * scale, y + plane.high * scale];
  showForm(document, formOf(document, box, scale), [unit, 0, 0, -unit, left, top]);
}

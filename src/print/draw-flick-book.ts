/** Twelve leaves on one sheet, to cut and to staple at the left: a movement under the thumb. */
import type { Picture } from '../model/picture.js';
import { flickBookWords } from '../words/flick-book-words.js';
import { cardSheet } from './card-sheet.js';
import { drawPages } from './draw-pages.js';
import { formatOf } from './format.js';
import { layOutLines } from './lay-out-lines.js';
import { loadFaces, measureWith } from './load-faces.js';
import type { Measure } from './measure.js';
import type { DocumentInfo } from './open-document.js';
import { type Box, type LineBox, moved, type Page, type Tag, tag } from './page.js';
import { A4, LETTER, mm, type PaperSize } from './sheet.js';

const COLUMNS = 3;
const ROWS = 4;
/** Where no printer prints. */
const EDGE = mm(10);
/** For the words above the leaves. */
const HEAD = mm(16);
/** At the left of a leaf, for staple and fingers. */
const BINDING = mm(13);
const WHITE = mm(3);
const STAPLE = mm(12);

interface Field {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

function fieldsOf({ width, height }: PaperSize): readonly Field[] {
  const leaf = { width: (width - 2 * EDGE) / COLUMNS, height: (height - 2 * EDGE - HEAD) / ROWS };
  return Array.from({ length: COLUMNS * ROWS }, (_, i) => ({
    ...leaf,
    x: EDGE + (i % COLUMNS) * leaf.width,
    y: EDGE + HEAD + Math.floor(i / COLUMNS) * leaf.height,
  }));
}

function cuts({ width, height }: PaperSize): readonly LineBox[] {
  const [top, bottom] = [EDGE + HEAD, height - EDGE];
  const line = (x: number, y: number, toX: number, toY: number): LineBox => ({
    kind: 'line',
    x,
    y,
    toX,
    toY,
    thickness: 0.75,
    dotted: true,
  });
  const across = Array.from({ length: ROWS + 1 }, (_, i) => top + (i * (bottom - top)) / ROWS);
  const down = Array.from({ length: COLUMNS + 1 }, (_, i) => EDGE + (i * (width - 2 * EDGE)) / COLUMNS);
  return [...across.map((y) => line(EDGE, y, width - EDGE, y)), ...down.map((x) => line(x, top, x, bottom))];
}

const staple = ({ x, y, height }: Field): LineBox => ({
  kind: 'line',
  x: x + mm(6),
  y: y + (height - STAPLE) / 2,
  toX: x + mm(6),
  toY: y + (height + STAPLE) / 2,
  thickness: 1.5,
});

/** All leaves to one scale, the floor of each at the same height. */
function figure({ box: plane, marks }: Picture, { x, y, width, height }: Field, of: Tag): Box {
  const [wide, high] = [plane.right - plane.left, plane.high - plane.low];
  const scale = Math.min((width - BINDING - WHITE) / wide, (height - 2 * WHITE) / high);
  return {
    kind: 'picture',
    x: x + BINDING + (width - BINDING - WHITE - wide * scale) / 2,
    y: y + height - WHITE - high * scale,
    width: wide * scale,
    height: high * scale,
    plane,
    layers: [{ marks, by: [0, 0], faint: false }],
    tag: of,
  };
}

function pageOf(leaves: readonly Picture[], exercise: string, alt: string, paper: PaperSize, measure: Measure): Page {
  const fields = fieldsOf(paper);
  const said = (style: 'title' | 'note', text: string, role: 'H1' | 'P', y: number): readonly Box[] =>
    layOutLines([{ style, text, tag: tag(role) }], paper.width - 2 * EDGE, measure).flatMap(({ boxes }) =>
      boxes.map((box) => moved(box, EDGE, y)),
    );
  const of = tag('Figure', undefined, { alt });
  const numbers = fields.flatMap((field, i) =>
    layOutLines([{ style: 'label', text: String(i + 1) }], BINDING, measure).flatMap(({ boxes }) =>
      boxes.map((box) => moved(box, field.x + mm(4), field.y + field.height - mm(9))),
    ),
  );
  return {
    number: 1,
    side: 'recto',
    boxes: [
      ...said('title', flickBookWords.title(exercise), 'H1', mm(6)),
      ...said('note', flickBookWords.how, 'P', mm(17)),
      ...fields.flatMap((field, i) => {
        const leaf = leaves[i];
        return leaf ? [figure(leaf, field, of)] : [];
      }),
      ...numbers,
      ...cuts(paper),
      ...fields.map(staple),
    ],
    targets: [],
    bookmarks: [{ title: flickBookWords.title(exercise), level: 1, y: 0 }],
  };
}

export interface FlickBook {
  /** As it stands on its page. */
  readonly exercise: string;
  /** What the movement looks like, in words. */
  readonly alt: string;
  /** Twelve, the first on top. */
  readonly leaves: readonly Picture[];
  readonly paper: 'a4' | 'letter';
}

/** One page. `info` says whose it is; its title is the sheet's own. */
export async function drawFlickBook(
  { exercise, alt, leaves, paper }: FlickBook,
  info: Omit<DocumentInfo, 'title'>,
): Promise<Uint8Array> {
  const faces = await loadFaces();
  const size = paper === 'a4' ? A4 : LETTER;
  const sheet = cardSheet(size, 'book', 1);
  const page = pageOf(leaves, exercise, alt, size, measureWith(faces, sheet));
  return drawPages([page], { ...info, title: flickBookWords.title(exercise) }, faces, formatOf(sheet));
}

/**
 * A sheet of two sides that shows how a printer turns paper, before a booklet is printed on it: whether the back stands
 * upright, whether it lies behind the front, whether a millimetre is one. The marks of the fold are those of a booklet.
 */
import type { IsoDate } from '../model/day.js';
import { testSheetWords } from '../words/test-sheet-words.js';
import { cardSheet, layOutCard } from './card-sheet.js';
import { drawPages } from './draw-pages.js';
import { HOLES, STAPLE, STAPLES } from './fold-marks.js';
import { formatOf } from './format.js';
import { type Block, block, paragraph, rule, title, writingLines } from './lay-out-blocks.js';
import { loadFaces, measureWith } from './load-faces.js';
import type { Measure } from './measure.js';
import { type LineBox, type Page, tag } from './page.js';
import { A4, LETTER, mm, type PaperSize } from './sheet.js';

const COLUMNS = 2;
const RULER = 100;
const ARM = mm(5);
const INSET = mm(15);

const across = ({ width, height }: PaperSize): PaperSize => ({ width: height, height: width });

const line = (x: number, y: number, toX: number, toY: number, thickness = 0.5): LineBox => ({
  kind: 'line',
  x,
  y,
  toX,
  toY,
  thickness,
});

/** A cross at each corner, as far in on either side of the paper. */
function crosses({ width, height }: PaperSize): readonly LineBox[] {
  return [INSET, width - INSET].flatMap((x) =>
    [INSET, height - INSET].flatMap((y) => [line(x - ARM, y, x + ARM, y), line(x, y - ARM, x, y + ARM)]),
  );
}

function foldLine({ width, height }: PaperSize, side: 'front' | 'back'): readonly LineBox[] {
  const x = width / 2;
  const along: LineBox = { ...line(x, mm(8), x, height - mm(8), 0.75), dotted: true };
  const marks =
    side === 'front'
      ? STAPLES.map((part) => line(x, part * height - STAPLE / 2, x, part * height + STAPLE / 2, 1.5))
      : HOLES.map((part) => line(x - 1.5, part * height, x + 1.5, part * height, 3));
  return [along, ...marks];
}

/** Up is up: it stands over the words of either side. */
const arrow = (x: number, y: number): readonly LineBox[] => [
  line(x, y + mm(16), x, y, 1.5),
  line(x, y, x - mm(4), y + mm(5), 1.5),
  line(x, y, x + mm(4), y + mm(5), 1.5),
];

function ruler(measure: Measure): Block {
  const long = mm(RULER);
  const text = paragraph([{ style: 'label', text: testSheetWords.measure(RULER), tag: tag('P') }], measure);
  const ends = [0, long].map((x) => line(x, mm(1), x, mm(5)));
  return block([{ lines: 2, area: 'text', boxes: [rule(0, mm(3), long), ...ends], withNext: true }, ...text], {
    whole: true,
    before: 1,
  });
}

function sidePage(side: 'front' | 'back', paper: PaperSize, measure: Measure): Page {
  const words = testSheetWords;
  const said = (texts: readonly string[]): readonly Block[] =>
    texts.map((text) => block(paragraph([{ style: 'text', text, tag: tag('P') }], measure), { before: 1 }));
  const head = block(title(words[side], measure, { tag: tag('H1'), level: 1 }));
  const mine = block(
    [
      ...paragraph([{ style: 'label-strong', text: words.mine, tag: tag('P') }], measure),
      ...writingLines(3, 'text', measure.sheet),
    ],
    { whole: true, before: 1 },
  );
  const blocks =
    side === 'front'
      ? [
          { ...head, before: 2 },
          ...said(words.onFront.slice(0, 2)),
          ruler(measure),
          ...said(words.onFront.slice(2)),
          mine,
        ]
      : [{ ...head, before: 2 }, ...said(words.onBack)];
  const air = { lines: 4, area: 'text', boxes: [], withNext: true } as const;
  const [page] = layOutCard({ above: [air], blocks, below: [] }, COLUMNS, measure);
  const drawn = page?.boxes ?? [];
  return {
    number: side === 'front' ? 1 : 2,
    side: side === 'front' ? 'recto' : 'verso',
    boxes: [...drawn, ...crosses(paper), ...foldLine(paper, side), ...arrow(paper.width * 0.75, mm(28))],
    targets: [],
    bookmarks: page?.bookmarks ?? [],
  };
}

const LANGUAGE = 'en-GB';
/** The day it was designed. It says nothing of a build, so that every build has the same bytes. */
const DATE: IsoDate = '2026-11-29';

/** Two pages, to be printed on both sides of one sheet. */
export async function drawTestSheet(paper: 'a4' | 'letter', author: string): Promise<Uint8Array> {
  const faces = await loadFaces();
  const size = across(paper === 'a4' ? A4 : LETTER);
  const sheet = cardSheet(size, 'book', COLUMNS);
  const measure = measureWith(faces, sheet);
  const pages = (['front', 'back'] as const).map((side) => sidePage(side, size, measure));
  return drawPages(
    pages,
    { title: testSheetWords.title, author, language: LANGUAGE, date: DATE },
    faces,
    formatOf(sheet),
  );
}

/** A warm-up or cool-down: what is said of it in words, and its exercises in two columns, each with its dose and page. */
import type { Drill } from '../model/booklet.js';
import { columnOf, paragraph, type Slug, together, withNext } from './lay-out-blocks.js';
import { layOutLines, type StyledRun } from './lay-out-lines.js';
import { packed } from './lay-out-packed.js';
import { type Box, moved, type Tag, tag } from './page.js';
import { pageLink } from './page-link.js';
import type { Setting } from './setting.js';
import { LINE } from './sheet.js';

const COLUMNS = 2;
const GAP = 10;
const NO_BREAK = '\u00a0';

/** Led by the word that says what they are; words before and after the exercises stand where they are said. */
export function layOutDrills(label: string, drills: readonly Drill[], setting: Setting): readonly Slug[] {
  if (drills.length === 0) return [];
  const { before, named, after } = partsOf(drills);
  const set = [
    ...inWords(label, before, setting),
    ...(named.length === 0 ? [] : inColumns(named, setting)),
    ...(after.length === 0 ? [] : inWords('', after, setting)),
  ];
  return together(withNext(set));
}

/** The same in fewer lines: words before them, exercises, and what follows them, one after the other. */
export function packDrills(label: string, drills: readonly Drill[], setting: Setting): readonly Slug[] {
  const { before, named, after } = partsOf(drills);
  if (drills.length === 0) return [];
  const list = tag('L');
  const items = named.map((drill) => ({ runs: packedRuns(drill, tag('LBody', tag('LI', list)), setting) }));
  const words = after.map(({ text }) => ({ runs: [wordsRun(text, tag('P'))] }));
  return withNext(packed([{ runs: ledWords(label, before) }, ...items, ...words], setting.measure));
}

interface DrillParts {
  readonly before: readonly Drill[];
  readonly named: readonly Drill[];
  readonly after: readonly Drill[];
}

/** What is said before the exercises, these, and what is said after them. */
function partsOf(drills: readonly Drill[]): DrillParts {
  const first = drills.findIndex(({ name }) => name !== '');
  const last = drills.findLastIndex(({ name }) => name !== '');
  return first < 0
    ? { before: drills, named: [], after: [] }
    : { before: drills.slice(0, first), named: drills.slice(first, last + 1), after: drills.slice(last + 1) };
}

const wordsRun = (text: string, of: Tag): StyledRun => ({ style: 'note', text, tag: of });

function ledWords(label: string, drills: readonly Drill[]): readonly StyledRun[] {
  const of = tag('P');
  const lead: readonly StyledRun[] =
    label === ''
      ? []
      : [
          { style: 'label-strong', text: `${label}${NO_BREAK}`, tag: of },
          { style: 'note', text: ' ', tag: of },
        ];
  const said = drills.map(({ text }) => text).join(' ');
  return [...lead, wordsRun(said, of)];
}

const inWords = (label: string, drills: readonly Drill[], { measure }: Setting): readonly Slug[] =>
  paragraph(ledWords(label, drills), measure, columnOf('table', measure.sheet));

/** Read along the lines: first left, then right. The page stands at the right edge of the first line. */
function inColumns(drills: readonly Drill[], setting: Setting): readonly Slug[] {
  const list = tag('L');
  const width = setting.measure.sheet.tableWidth / COLUMNS;
  const slugs: Slug[] = [];
  for (let from = 0; from < drills.length; from += COLUMNS) {
    const laid = drills
      .slice(from, from + COLUMNS)
      .map((drill) => drillBoxes(drill, tag('LBody', tag('LI', list)), width - GAP, setting));
    const boxes: readonly Box[] = laid.flatMap((one, i) => one.boxes.map((box) => moved(box, i * width, 0)));
    slugs.push({ lines: Math.max(...laid.map(({ lines }) => lines)), area: 'table', boxes, withNext: true });
  }
  return slugs;
}

/** A dose as short as `30 s each side` does not part at a line's end. */
const unparted = (dose: string): string => (dose.length <= SHORT ? dose.replaceAll(' ', NO_BREAK) : dose);
const SHORT = 18;

const drillRuns = (drill: Drill, body: Tag): readonly StyledRun[] => [
  { style: 'label-strong', text: `${drill.name} `, tag: body },
  { style: 'label', text: unparted(drill.text), tag: body },
];

const packedRuns = (drill: Drill, body: Tag, setting: Setting): readonly StyledRun[] => [
  ...drillRuns(drill, body),
  ...pageLink(drill.exercise, body, setting),
];

/** The page is read last, wherever it stands. */
function drillBoxes(
  drill: Drill,
  body: Tag,
  width: number,
  setting: Setting,
): { readonly lines: number; readonly boxes: readonly Box[] } {
  const { measure } = setting;
  const [page] = layOutLines(pageLink(drill.exercise, body, setting), width, measure);
  const room = page === undefined ? 0 : page.width + GAP;
  const lines = layOutLines(drillRuns(drill, body), width - room, measure);
  return {
    lines: lines.length,
    boxes: [
      ...lines.flatMap((line, n) => line.boxes.map((box) => moved(box, 0, n * LINE))),
      ...(page?.boxes.map((box) => moved(box, width - page.width, 0)) ?? []),
    ],
  };
}

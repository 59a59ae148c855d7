/** An exercise on its page: what it looks like, then its sections, stop signs framed. */
import type { ExercisePart } from '../model/booklet.js';
import { isNeeded, type Kind, type Laid, laidSections, marginSection } from './exercise-sections.js';
import {
  type Block,
  blankSlug,
  block,
  linesOf,
  paragraph,
  type Slug,
  title,
  withNext,
  writingField,
} from './lay-out-blocks.js';
import { styledLine } from './lay-out-lines.js';
import { type Chapter, fillPages } from './lay-out-pages.js';
import type { Measure } from './measure.js';
import { moved, tag } from './page.js';
import { exerciseTarget, type Picture, type Setting } from './setting.js';
import { LINE, mm } from './sheet.js';

/** Where an empty line is most welcome, if the page has not room for one before every section. */
const AIR: readonly Kind[] = [
  'stop',
  'parts',
  'cues',
  'faults',
  'easier',
  'set-up',
  'breath',
  'film',
  'partner',
  'why',
  'pick up',
  'harder',
  'put down',
];

const airBefore = (sections: readonly Laid[], room: number): ReadonlySet<Kind> =>
  new Set(AIR.filter((kind) => sections.some((section) => section.kind === kind)).slice(0, Math.max(0, room)));

/**
 * Everything on one page if it can be; otherwise all of it up to the stop signs, and the rest after them. Where even
 * that is too long, sections go over whole.
 */
function airOf(sections: readonly Laid[], above: number, setting: Setting): ReadonlySet<Kind> {
  const height = (of: readonly Laid[]): number => above + linesOf(of.flatMap(({ slugs }) => slugs));
  const needed = sections.filter(({ kind }) => isNeeded(kind));
  const { linesOnPage } = setting.measure.sheet;
  const room = linesOnPage - height(sections);
  if (room >= 0) return airBefore(sections, room);
  if (setting.close) return new Set();
  const roomFirst = linesOnPage - height(needed);
  const rest = sections.filter((section) => !needed.includes(section));
  return roomFirst < 0 ? new Set(AIR) : new Set([...airBefore(needed, roomFirst), ...rest.map(({ kind }) => kind)]);
}

/** Above the words, with half a line of white over and under it. */
function pictureSlug({ lines, alt, draw }: Picture): Slug {
  const of = tag('Figure', undefined, { alt });
  const boxes = draw(of).map((box) => moved(box, 0, LINE / 2));
  return { lines: lines + 1, area: 'text', boxes, withNext: true };
}

/** Of the text, to the left of what stands beside it. */
const BESIDE_GAP = mm(4);

function narrowed(setting: Setting, by: number): Setting {
  const { measure } = setting;
  const { sheet } = measure;
  return { ...setting, measure: { ...measure, sheet: { ...sheet, textWidth: sheet.textWidth - by } } };
}

/** Title and what the exercise is; what is narrowed to make room for a picture beside it, and how far down. */
interface Opening {
  readonly slugs: readonly Slug[];
  /** Lines of the sections below that a picture reaches down beside. */
  readonly reach: number;
}

function openingOf(part: ExercisePart, setting: Setting, picture: Picture | undefined): Opening {
  const { measure } = setting;
  const narrow = picture?.stands === 'beside' ? narrowed(setting, picture.width + BESIDE_GAP).measure : measure;
  const headed = (width: Measure): readonly Slug[] =>
    title(part.title, width, {
      tag: tag('H2', undefined, setting.ownName),
      target: exerciseTarget(part.id),
      level: 1,
    });
  const wide = headed(measure);
  const slim = headed(narrow);
  const description = part.description.flatMap((line) => paragraph(styledLine(line, 'text', tag('P')), narrow));
  if (picture === undefined) return { slugs: [...wide, ...description], reach: 0 };
  if (picture.stands === 'over') return { slugs: [...wide, ...withNext(description), pictureSlug(picture)], reach: 0 };
  // A title that is no longer for it has the picture beside it too.
  const fromTop = linesOf(slim) === linesOf(wide);
  const slugs = [...(fromTop ? slim : wide), ...description];
  const above = linesOf(slugs.slice(0, -1)) - (fromTop ? 0 : linesOf(wide));
  const boxes = picture
    .draw(tag('Figure', undefined, { alt: picture.alt }))
    .map((box) => moved(box, measure.sheet.textWidth - picture.width, -above * LINE));
  const placed = slugs.map((slug, i) =>
    i === slugs.length - 1 ? { ...slug, boxes: [...slug.boxes, ...boxes] } : slug,
  );
  const reach = picture.lines - linesOf(slugs) + (fromTop ? 0 : linesOf(wide));
  return { slugs: withNext(placed), reach: Math.max(0, reach) };
}

/** Of the first none, one, two of them, and so on. */
function heightsTo(sections: readonly Laid[]): readonly number[] {
  const heights = [0];
  for (const { slugs } of sections) heights.push((heights.at(-1) ?? 0) + linesOf(slugs));
  return heights;
}

/**
 * Sections narrow as long as the picture stands beside them, or an empty line or two under them where that takes less
 * of the page than to narrow the next.
 */
function besidePicture(slim: readonly Laid[], wide: readonly Laid[], reach: number): readonly Laid[] {
  const [slimTo, wideTo] = [heightsTo(slim), heightsTo(wide)];
  const padding = (count: number): number => Math.max(0, reach - (slimTo[count] ?? 0));
  const cost = (count: number): number => (slimTo[count] ?? 0) - (wideTo[count] ?? 0) + padding(count);
  const costs = slim.map((_, count) => cost(count));
  const [best] = costs.map((_, count) => count).sort((a, b) => (costs[a] ?? 0) - (costs[b] ?? 0) || b - a);
  const count = best ?? 0;
  const blank = padding(count);
  const beside = slim.slice(0, count);
  const below = wide.slice(count);
  if (blank === 0) return [...beside, ...below];
  const [last] = beside.slice(-1);
  const [next, ...others] = below;
  if (last) return [...beside.slice(0, -1), { ...last, slugs: [...last.slugs, blankSlug(blank)] }, ...below];
  return next ? [{ ...next, slugs: [blankSlug(blank), ...next.slugs] }, ...others] : below;
}

interface ExerciseBlocks {
  readonly blocks: readonly Block[];
  /** How many of them, from the first, are about doing the exercise: the stop signs are the last. */
  readonly needed: number;
}

/** The sections tight or not, in a column narrower by so much. */
export type SectionsIn = (tight: boolean, narrower: number) => readonly Laid[];

const sectionsIn =
  (part: ExercisePart, setting: Setting): SectionsIn =>
  (tight, narrower) =>
    laidSections(part, tight, narrower === 0 ? setting : narrowed(setting, narrower));

/** Each set once, for pages that are tried and thrown away. */
export function triedSections(part: ExercisePart, setting: Setting): SectionsIn {
  const set = sectionsIn(part, setting);
  const tried = new Map<string, readonly Laid[]>();
  return (tight, narrower) => {
    const key = `${tight} ${narrower}`;
    const laid = tried.get(key) ?? set(tight, narrower);
    tried.set(key, laid);
    return laid;
  };
}

function exerciseBlocks(
  part: ExercisePart,
  setting: Setting,
  picture: Picture | undefined,
  sectionsOf = sectionsIn(part, setting),
): ExerciseBlocks {
  const { measure } = setting;
  const { slugs: opening, reach } = openingOf(part, setting, picture);
  const above = linesOf(opening);
  const laid = (tight: boolean): readonly Laid[] => {
    const wide = sectionsOf(tight, 0);
    if (picture === undefined || reach === 0) return wide;
    return besidePicture(sectionsOf(tight, picture.width + BESIDE_GAP), wide, reach);
  };
  const loose = laid(false);
  const fits = above + linesOf(loose.flatMap(({ slugs }) => slugs)) <= measure.sheet.linesOnPage;
  const sections = fits ? loose : laid(true);
  const air = airOf(sections, above, setting);
  const blocks: readonly Block[] = [
    block(opening),
    ...sections.map(({ kind, slugs }) => block(slugs, { whole: true, before: air.has(kind) ? 1 : 0 })),
  ];
  return { blocks, needed: 1 + sections.filter(({ kind }) => isNeeded(kind)).length };
}

/** `picture`: what it looks like; the words keep their order and their grid. */
export const layOutExercise = (
  part: ExercisePart,
  setting: Setting,
  picture?: Picture,
  sections?: SectionsIn,
): Chapter => chapterOf(part, setting, exerciseBlocks(part, setting, picture, sections).blocks);

const chapterOf = (part: ExercisePart, setting: Setting, blocks: readonly Block[]): Chapter => ({
  start: setting.close ? 'flow' : 'page',
  running: part.title,
  blocks,
  rest: (lines) => {
    const field = writingField(lines, 'text', setting.measure.sheet);
    return marginSection(setting.labels.notes, [field], setting);
  },
});

/** Which of the ways an exercise may be drawn it is, and whether that takes a page more than its words alone. */
export interface Chosen {
  readonly picture: Picture;
  readonly costsPage: boolean;
}

/**
 * The first that takes no page; where each does, the one that takes the fewest lines. None that would push the stop
 * signs over: they stay with the exercise's first words, and the phone has the drawing.
 */
export function choosePicture(
  part: ExercisePart,
  setting: Setting,
  ways: readonly Picture[],
  sections: SectionsIn,
): Chosen | undefined {
  const { linesOnPage } = setting.measure.sheet;
  const heights = (within: Setting, picture?: Picture) => {
    const { blocks, needed } = exerciseBlocks(part, within, picture, sections);
    const pages = (of: readonly Block[]): number => {
      const chapter = chapterOf(part, within, of);
      return fillPages([chapter], chapter, linesOnPage).length;
    };
    const lines = blocks.reduce((sum, { slugs }) => sum + linesOf(slugs), 0);
    const whole = pages(blocks);
    return { pages: whole, upToStop: whole === 1 ? 1 : pages(blocks.slice(0, needed)), lines };
  };
  // Whether pages are shared is not known yet: the drawing is chosen so that either way is served.
  const settings = [false, true].map((close): Setting => ({ ...setting, close }));
  const bare = settings.map((within) => heights(within));
  const isMore = (what: 'pages' | 'upToStop', drawn: typeof bare): boolean =>
    drawn.some((one, index) => one[what] > (bare[index]?.[what] ?? 0));
  let best: { readonly picture: Picture; readonly lines: number } | undefined;
  for (const picture of ways) {
    const drawn = settings.map((within) => heights(within, picture));
    if (isMore('upToStop', drawn)) continue;
    if (!isMore('pages', drawn)) return { picture, costsPage: false };
    const [{ lines } = { lines: 0 }] = drawn;
    if (best === undefined || lines < best.lines) best = { picture, lines };
  }
  return best && { picture: best.picture, costsPage: true };
}

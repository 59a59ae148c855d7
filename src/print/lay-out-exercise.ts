/** An exercise on its page: what it looks like, then its sections, stop signs framed. */
import type { ExercisePart } from '../model/booklet.js';
import { isNeeded, type Kind, type Laid, narrowed, type Room, type SectionWays } from './exercise-sections.js';
import { type Block, blankSlug, block, linesOf, paragraph, type Slug, title, withNext } from './lay-out-blocks.js';
import { styledLine } from './lay-out-lines.js';
import { type Chapter, fillPages } from './lay-out-pages.js';
import { notesUnder } from './lay-out-record.js';
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

const laidLines = (sections: readonly Laid[]): number => sections.reduce((sum, { slugs }) => sum + linesOf(slugs), 0);

const airBefore = (sections: readonly Laid[], room: number): ReadonlySet<Kind> =>
  new Set(AIR.filter((kind) => sections.some((section) => section.kind === kind)).slice(0, Math.max(0, room)));

/**
 * Everything on one page if it can be; otherwise all of it up to the stop signs, and the rest after them. Where even
 * that is too long, sections go over whole.
 */
function airOf({ opening, sections, after }: Words, setting: Setting): ReadonlySet<Kind> {
  const height = (of: readonly Laid[]): number => linesOf(opening) + laidLines(of);
  const needed = sections.filter(({ kind }) => isNeeded(kind));
  const { linesOnPage } = setting.measure.sheet;
  const room = linesOnPage - height(sections) - linesOf(after);
  if (room >= 0) return airBefore(sections, room);
  if (setting.close) return new Set();
  const roomFirst = linesOnPage - height(needed);
  const rest = sections.filter((section) => !needed.includes(section));
  return roomFirst < 0 ? new Set(AIR) : new Set([...airBefore(needed, roomFirst), ...rest.map(({ kind }) => kind)]);
}

/** Over words, with half a line of white over and under it. */
function pictureSlug({ lines, alt, draw }: Picture): Slug {
  const of = tag('Figure', undefined, { alt });
  const boxes = draw(of).map((box) => moved(box, 0, LINE / 2));
  return { lines: lines + 1, area: 'text', boxes, withNext: true };
}

/** Under the stop signs. */
const pictureAfter = (picture: Picture | undefined): readonly Slug[] =>
  picture?.stands === 'after' ? [{ ...pictureSlug(picture), withNext: false }] : [];

/** Of the text, to the left of what stands beside it. */
const BESIDE_GAP = mm(4);

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
  const slim = narrow === measure ? wide : headed(narrow);
  const description = part.description.flatMap((line) => paragraph(styledLine(line, 'text', tag('P')), narrow));
  if (picture === undefined || picture.stands === 'after') return { slugs: [...wide, ...description], reach: 0 };
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

/**
 * Sections narrow as far down as the picture stands beside them, or an empty line or two under them where that takes less
 * of the page than to narrow the next.
 */
function besidePicture(sections: readonly SectionWays[], room: Room, width: number, reach: number): readonly Laid[] {
  const narrower = width + BESIDE_GAP;
  const wide = sections.map(({ kind, slugs }): Laid => ({ kind, slugs: slugs(room, 0) }));
  const slim: Laid[] = [];
  let best = { count: 0, blank: reach, cost: reach };
  let [slimTo, wideTo] = [0, 0];
  for (const [i, { kind, slugs }] of sections.slice(0, -1).entries()) {
    slim.push({ kind, slugs: slugs(room, narrower) });
    slimTo += linesOf(slim[i]?.slugs ?? []);
    wideTo += linesOf(wide[i]?.slugs ?? []);
    const blank = Math.max(0, reach - slimTo);
    const cost = slimTo - wideTo + blank;
    if (cost <= best.cost) best = { count: i + 1, blank, cost };
    if (blank === 0) break;
  }
  const { count, blank } = best;
  const beside = slim.slice(0, count);
  const below = wide.slice(count);
  if (blank === 0) return [...beside, ...below];
  const [last] = beside.slice(-1);
  const [next, ...others] = below;
  if (last) return [...beside.slice(0, -1), { ...last, slugs: [...last.slugs, blankSlug(blank)] }, ...below];
  return next ? [{ ...next, slugs: [blankSlug(blank), ...next.slugs] }, ...others] : below;
}

/** All there is on the pages of an exercise, whether or not it shares them. */
export interface Words {
  readonly room: Room;
  readonly opening: readonly Slug[];
  readonly sections: readonly Laid[];
  /** A drawing for which there is no room before the stop signs. */
  readonly after: readonly Slug[];
  /** All of it on one page. */
  readonly fits: boolean;
}

interface Rooms {
  readonly inRoom: (room: Room) => Words;
  /** Lines that its sections may take for all to stand on one page. */
  readonly most: number;
}

/** By what stands above and beside its sections. */
function roomsOf(
  part: ExercisePart,
  setting: Setting,
  picture: Picture | undefined,
  ways: readonly SectionWays[],
): Rooms {
  const { slugs: opening, reach } = openingOf(part, setting, picture);
  const after = pictureAfter(picture);
  const most = setting.measure.sheet.linesOnPage - linesOf(opening) - linesOf(after);
  const inRoom = (room: Room): Words => {
    const sections =
      picture === undefined || reach === 0
        ? ways.map(({ kind, slugs }) => ({ kind, slugs: slugs(room, 0) }))
        : besidePicture(ways, room, picture.width, reach);
    return { room, opening, sections, after, fits: laidLines(sections) <= most };
  };
  return { inRoom, most };
}

/** Beside a drawing sections take as many lines as without it, or more: that is asked first. */
function fitIn(room: Room, { inRoom, most }: Rooms, ways: readonly SectionWays[]): Words | undefined {
  const least = ways.reduce((sum, { slugs }) => sum + linesOf(slugs(room, 0)), 0);
  if (least > most) return undefined;
  const words = inRoom(room);
  return words.fits ? words : undefined;
}

function fitsWith(part: ExercisePart, setting: Setting, picture: Picture, ways: readonly SectionWays[]): boolean {
  const rooms = roomsOf(part, setting, picture, ways);
  return (fitIn('loose', rooms, ways) ?? fitIn('closest', rooms, ways)) !== undefined;
}

/** As roomy as one page allows; `mayFit` on one, as far as is known. */
export function wordsOf(
  part: ExercisePart,
  setting: Setting,
  picture: Picture | undefined,
  ways: readonly SectionWays[],
  mayFit = true,
): Words {
  const rooms = roomsOf(part, setting, picture, ways);
  const fitting = (room: Room): Words | undefined => fitIn(room, rooms, ways);
  const fit = mayFit ? (fitting('loose') ?? fitting('tight') ?? fitting('closest')) : undefined;
  if (fit) return fit;
  const [tight, closest] = [rooms.inRoom('tight'), rooms.inRoom('closest')];
  // Of several pages too, one saved is worth it, and stop signs on the page of the first words more so.
  const pages = (words: Words): number => {
    const { blocks, needed } = exerciseBlocks(words, setting);
    return pagesOf(part, setting, blocks) + pagesOf(part, setting, blocks.slice(0, needed));
  };
  return pages(closest) < pages(tight) ? closest : tight;
}

interface ExerciseBlocks {
  readonly blocks: readonly Block[];
  /** How many of them, from the first, are about doing the exercise: the stop signs are the last. */
  readonly needed: number;
}

function exerciseBlocks(words: Words, setting: Setting): ExerciseBlocks {
  const { opening, sections, after } = words;
  const air = airOf(words, setting);
  const set = (of: readonly Laid[]): readonly Block[] =>
    of.map(({ kind, slugs }) => block(slugs, { whole: true, before: air.has(kind) ? 1 : 0 }));
  const needed = [block(opening), ...set(sections.filter(({ kind }) => isNeeded(kind)))];
  const picture = after.length === 0 ? [] : [block(after)];
  const blocks = [...needed, ...picture, ...set(sections.filter(({ kind }) => !isNeeded(kind)))];
  return { blocks, needed: needed.length };
}

/** The same in a room that was found before. */
export const wordsIn = (
  part: ExercisePart,
  setting: Setting,
  picture: Picture | undefined,
  ways: readonly SectionWays[],
  room: Room,
): Words => roomsOf(part, setting, picture, ways).inRoom(room);

/** The words keep their order and their grid. Stop signs are read with what they are about, and so is a drawing. */
export function layOutExercise(part: ExercisePart, setting: Setting, words: Words): Chapter {
  const { blocks, needed } = exerciseBlocks(words, setting);
  const chapter = chapterOf(part, setting, blocks);
  if (words.fits) return chapter;
  if (pagesOf(part, setting, blocks.slice(0, needed)) > 1) return { ...chapter, opening: 'needed' };
  return words.after.length > 0 ? { ...chapter, opening: 'better' } : chapter;
}

const chapterOf = (part: ExercisePart, setting: Setting, blocks: readonly Block[]): Chapter => ({
  start: setting.close ? 'flow' : 'page',
  running: part.title,
  blocks,
  rest: notesUnder(setting),
});

/** Of so many blocks of it, where it begins on a page of its own. */
function pagesOf(part: ExercisePart, setting: Setting, blocks: readonly Block[]): number {
  const chapter = chapterOf(part, setting, blocks);
  return fillPages([chapter], chapter, setting.measure.sheet.linesOnPage).length;
}

/** Which of the ways an exercise may be drawn it is, and whether that takes a page more than its words alone. */
export interface Chosen {
  readonly picture: Picture;
  readonly costsPage: boolean;
}

/**
 * The first that takes no page; where each does, the one that takes the fewest lines. None pushes the stop signs over: where
 * none has room before them it stands after them, at its best size, as nearly always on the next page.
 */
export function choosePicture(
  part: ExercisePart,
  setting: Setting,
  pictures: readonly Picture[],
  ways: readonly SectionWays[],
): Chosen | undefined {
  const fitting = pictures.find((one) => fitsWith(part, setting, one, ways));
  if (fitting) return { picture: fitting, costsPage: false };
  const after = pictures.slice(0, 1).map((one): Picture => ({ ...one, stands: 'after' }));
  return pictureOfMany(part, setting, [...pictures, ...after], ways);
}

/** Of an exercise that takes more than one page, or will. */
function pictureOfMany(
  part: ExercisePart,
  setting: Setting,
  pictures: readonly Picture[],
  ways: readonly SectionWays[],
): Chosen | undefined {
  // Whether pages are shared is not known yet: the drawing is chosen so that either way is served.
  const settings = [false, true].map((close): Setting => ({ ...setting, close }));
  const heights = (words: Words) =>
    settings.map((within) => {
      const { blocks, needed } = exerciseBlocks(words, within);
      const pages = (of: readonly Block[]): number => pagesOf(part, within, of);
      const lines = blocks.reduce((sum, { slugs }) => sum + linesOf(slugs), 0);
      return { pages: pages(blocks), upToStop: pages(blocks.slice(0, needed)), lines };
    });
  const bare = heights(wordsOf(part, setting, undefined, ways));
  const isMore = (what: 'pages' | 'upToStop', drawn: typeof bare): boolean =>
    drawn.some((one, index) => one[what] > (bare[index]?.[what] ?? 0));
  let best: { readonly picture: Picture; readonly lines: number } | undefined;
  for (const picture of pictures) {
    // With a drawing it does not fit on one page either.
    const drawn = heights(wordsOf(part, setting, picture, ways, false));
    if (isMore('upToStop', drawn)) continue;
    if (!isMore('pages', drawn)) return { picture, costsPage: false };
    const [{ lines } = { lines: 0 }] = drawn;
    if (best === undefined || lines < best.lines) best = { picture, lines };
  }
  return best && { picture: best.picture, costsPage: true };
}

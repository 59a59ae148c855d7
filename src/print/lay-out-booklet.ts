/**
 * The booklet tree into pages of boxes. Pure: it knows the width of letters through `measure` alone, opens no file
 * and draws nothing. What is said, and in which order, was decided when the tree was composed.
 */
import type { Booklet, ExercisePart, Part, SessionPart } from '../model/booklet.js';
import type { ClientId, ExerciseId } from '../model/identity.js';
import { ofClient } from '../model/problem.js';
import type { Result } from '../model/result.js';
import { exerciseSections, type SectionWays } from './exercise-sections.js';
import { FOLDING_PAGES } from './fold-parts.js';
import { wholeSheets } from './impose.js';
import { layOutCalendar } from './lay-out-calendar.js';
import { layOutContents } from './lay-out-contents.js';
import { layOutCover } from './lay-out-cover.js';
import { choosePicture, layOutExercise, type Words, wordsIn, wordsOf } from './lay-out-exercise.js';
import { layOutHowTo, layOutSafety } from './lay-out-front.js';
import { type Chapter, fillPages, pagesOfTargets, placePages } from './lay-out-pages.js';
import { layOutPartner } from './lay-out-partner.js';
import { layOutNotesPage, layOutRecord } from './lay-out-record.js';
import { sessionWays } from './lay-out-session.js';
import type { Measure } from './measure.js';
import type { Page } from './page.js';
import { type Picture, partTarget, type Setting, settingOf } from './setting.js';

/** Two folded booklets; beyond that it is a file, and nobody carries it to train. */
export const MOST_PAGES = 64;

/**
 * What the drafts of a booklet have in common is laid out once for all of them: sessions, and sections of exercises, hang
 * neither on which drawings there are nor on how close exercises stand. What names no page of it is taken over into the
 * booklet itself.
 */
interface Kept {
  readonly session: (part: SessionPart, setting: Setting, target: string) => readonly Chapter[];
  readonly sections: (part: ExercisePart, setting: Setting) => readonly SectionWays[];
  readonly words: (part: ExercisePart, setting: Setting) => Words;
}

function openDrafts(): Kept & { readonly finished: Kept } {
  const sessions = new Map<Part, (setting: Setting) => readonly Chapter[]>();
  const chapters = new Map<Part, readonly Chapter[]>();
  const exercises = new Map<Part, readonly SectionWays[]>();
  const worded = new Map<Part, { readonly of: Setting; readonly words: Words }>();
  const session: Kept['session'] = (part, setting, target) => {
    const ways = sessions.get(part) ?? sessionWays(part, setting, target);
    sessions.set(part, ways);
    return ways(setting);
  };
  const sections: Kept['sections'] = (part, setting) => {
    const ways = exercises.get(part) ?? exerciseSections(part, setting);
    exercises.set(part, ways);
    return ways;
  };
  const finishedSections: Kept['sections'] = (part, setting) => exerciseSections(part, setting, exercises.get(part));
  const pictured = ({ id }: ExercisePart, { pictures }: Setting): Picture | undefined => pictures.get(id);
  /** Of more pages than one it hangs on whether they are shared. */
  const known = (part: ExercisePart, setting: Setting): Words | undefined => {
    const { of, words } = worded.get(part) ?? {};
    if (of === undefined || pictured(part, of) !== pictured(part, setting)) return undefined;
    return words?.fits || of.close === setting.close ? words : undefined;
  };
  return {
    session: (part, setting, target) => {
      const laid = chapters.get(part) ?? session(part, setting, target);
      chapters.set(part, laid);
      return laid;
    },
    sections,
    words: (part, setting) => {
      const words = known(part, setting) ?? wordsOf(part, setting, pictured(part, setting), sections(part, setting));
      worded.set(part, { of: setting, words });
      return words;
    },
    finished: {
      session,
      sections: finishedSections,
      // A reference has its room from the start: what was found for the draft holds.
      words: (part, setting) => {
        const [picture, ways] = [pictured(part, setting), finishedSections(part, setting)];
        const room = known(part, setting)?.room;
        return room === undefined ? wordsOf(part, setting, picture, ways) : wordsIn(part, setting, picture, ways, room);
      },
    },
  };
}

function chaptersOf(part: Part, index: number, setting: Setting, kept: Kept): readonly Chapter[] {
  const target = partTarget(index);
  switch (part.kind) {
    case 'cover':
      return [layOutCover(part, setting)];
    case 'how-to':
      return [layOutHowTo(part, setting, target)];
    case 'safety':
      return [layOutSafety(part, setting, target)];
    case 'calendar':
      return [layOutCalendar(part, setting, target)];
    case 'session':
      return kept.session(part, setting, target);
    case 'exercise':
      return [layOutExercise(part, setting, kept.words(part, setting))];
    case 'partner':
      return [layOutPartner(part, setting, target)];
    case 'record':
      return [layOutRecord(part, setting, target)];
  }
}

const isFront = ({ kind }: Part): boolean =>
  kind !== 'session' && kind !== 'exercise' && kind !== 'partner' && kind !== 'record';

/** Contents close the front matter, before the first session. */
function allChapters(booklet: Booklet, setting: Setting, kept: Kept): readonly Chapter[] {
  const laid = booklet.parts.map((part, i) => chaptersOf(part, i, setting, kept));
  const firstBody = booklet.parts.findIndex((part) => !isFront(part));
  const at = firstBody === -1 ? laid.length : firstBody;
  const front = laid.slice(0, at).flat();
  // Of a booklet that was withdrawn its cover is left.
  if (booklet.parts.every(({ kind }) => kind === 'cover')) return front;
  const contents = layOutContents(booklet, setting);
  // Sharing a page would leave the page before the first session with nothing on it.
  const shares =
    fillPages([...front, contents], layOutNotesPage(setting), setting.measure.sheet.linesOnPage).length % 2 === 1;
  return [...front, shares ? contents : { ...contents, start: 'page' }, ...laid.slice(at).flat()];
}

interface FilledBooklet {
  readonly pages: ReturnType<typeof fillPages>;
  /** Without the notes at its end. */
  readonly used: number;
}

/** Notes stand where a chapter waits for its left-hand page. */
const opened = (chapters: readonly Chapter[], of: readonly Chapter['opening'][]): readonly Chapter[] =>
  chapters.map((chapter) => (of.includes(chapter.opening) ? { ...chapter, start: 'even' } : chapter));

/**
 * The pages of a booklet filled, notes where they make whole sheets of it. What is better on one opening has one as far as
 * that costs no sheet; leaves cost less, and in large print stop signs are nearly always on a second page.
 */
function fillBooklet(booklet: Booklet, setting: Setting, kept: Kept): FilledBooklet {
  const chapters = allChapters(booklet, setting, kept);
  const filler = layOutNotesPage(setting);
  const { linesOnPage, type } = setting.measure.sheet;
  const large = type === 'large';
  // Large print stands on leaves, not on folded sheets.
  const whole = (used: number): number => (large ? used + (used % 2) : wholeSheets(used));
  const fill = (of: readonly Chapter[]) => ({ of, pages: fillPages(of, filler, linesOnPage) });
  const plain = fill(chapters);
  const needed = opened(chapters, ['needed']);
  const ways = chapters.some(({ opening }) => opening) ? [opened(chapters, ['needed', 'better']), needed] : [];
  const free = ways.map(fill).find(({ pages }) => whole(pages.length) <= whole(plain.pages.length));
  const { of, pages: bare } = free ?? (large ? fill(needed) : plain);
  const used = bare.length;
  const notes = Array.from({ length: whole(used) - used }, () => filler);
  return { pages: notes.length === 0 ? bare : fillPages([...of, ...notes], filler, linesOnPage), used };
}

/** How a booklet comes to stand, before a page refers to another: how many pages, and where everything begins. */
interface Draft {
  readonly length: number;
  readonly used: number;
  readonly setting: Setting;
  readonly pageOf: Setting['pageOf'];
}

/** What a reference says is not known yet; its room is kept from the start, so that nothing moves when it is. */
function draftOf(booklet: Booklet, setting: Setting, kept: Kept): Draft {
  const { pages, used } = fillBooklet(booklet, setting, kept);
  return { length: pages.length, used, setting, pageOf: pagesOfTargets(pages) };
}

const finished = (booklet: Booklet, { setting, pageOf }: Draft, kept: Kept): readonly Page[] =>
  placePages(fillBooklet(booklet, { ...setting, pageOf }, kept).pages, setting.measure);

/** Of each exercise that is drawn, the ways its drawing may stand on its page, the one to be had rather first. */
export type Pictures = ReadonlyMap<ExerciseId, readonly Picture[]>;

interface ChosenPictures {
  readonly all: Setting['pictures'];
  /** Those that take no page more than the words alone. */
  readonly free: Setting['pictures'];
}

/** Chosen once and for both rounds, so that no reference goes wrong. */
function choosePictures({ parts }: Booklet, setting: Setting, pictures: Pictures, drafts: Kept): ChosenPictures {
  const chosen = parts.flatMap((part) => {
    const ways = part.kind === 'exercise' ? pictures.get(part.id) : undefined;
    const one =
      part.kind === 'exercise' && ways ? choosePicture(part, setting, ways, drafts.sections(part, setting)) : undefined;
    return part.kind === 'exercise' && one ? [[part.id, one] as const] : [];
  });
  const those = (of: typeof chosen): Setting['pictures'] => new Map(of.map(([id, { picture }]) => [id, picture]));
  return { all: those(chosen), free: those(chosen.filter(([, { costsPage }]) => !costsPage)) };
}

/** No drawing is worth a second folded booklet, or a booklet that cannot be had: then those are left out that take a page. */
function sparedPages(
  { length, used }: Draft,
  { all, free }: ChosenPictures,
  lay: (pictures: Setting['pictures']) => Draft,
): Draft | null {
  const most = length > MOST_PAGES ? MOST_PAGES : FOLDING_PAGES;
  // A page for each, and one that those before it no longer share.
  const saved = all.size - free.size + 1;
  if (length <= most || all.size === free.size || used - saved > most) return null;
  const spared = lay(free);
  return spared.length <= most ? spared : null;
}

/**
 * Pages in order, a multiple of four of them, or of two in large print, which is not folded; page 1 is the cover. Lengths
 * in layout points.
 * Reports `too-many-pages` where it would not fold in one; the value is empty only where it would not fold in two.
 */
export function layOutBooklet(
  booklet: Booklet,
  given: Measure,
  client: ClientId,
  code?: Setting['code'],
  pictures: Pictures = new Map(),
): Result<readonly Page[]> {
  const measure: Measure = { ...given, language: booklet.language };
  const setting = settingOf(booklet, measure, false, code);
  const drafts = openDrafts();
  const lay = (drawn: Setting['pictures']): Draft => {
    const roomy = draftOf(booklet, { ...setting, pictures: drawn }, drafts);
    return roomy.length <= FOLDING_PAGES ? roomy : draftOf(booklet, { ...roomy.setting, close: true }, drafts);
  };
  const chosen = choosePictures(booklet, setting, pictures, drafts);
  const full = lay(chosen.all);
  const large = measure.sheet.type === 'large';
  const spared = large ? null : sparedPages(full, chosen, lay);
  const pages = finished(booklet, spared ?? full, drafts.finished);
  if (pages.length <= FOLDING_PAGES || large) return { value: pages, problems: [] };
  const drawn = pages.length <= MOST_PAGES;
  return {
    value: drawn ? pages : [],
    problems: [
      {
        code: 'too-many-pages',
        severity: 'warning',
        scope: ofClient(client),
        data: { pages: pages.length, most: FOLDING_PAGES, drawn },
      },
    ],
  };
}

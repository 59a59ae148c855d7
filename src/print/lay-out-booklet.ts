/**
 * The booklet tree into pages of boxes. Pure: it knows the width of letters through `measure` alone, opens no file
 * and draws nothing. What is said, and in which order, was decided when the tree was composed.
 */
import type { Booklet, Part } from '../model/booklet.js';
import type { ClientId, ExerciseId } from '../model/identity.js';
import { ofClient } from '../model/problem.js';
import type { Result } from '../model/result.js';
import { FOLDING_PAGES } from './fold-parts.js';
import { PAGES_ON_A_SHEET, wholeSheets } from './impose.js';
import { layOutCalendar } from './lay-out-calendar.js';
import { layOutContents } from './lay-out-contents.js';
import { layOutCover } from './lay-out-cover.js';
import { choosePicture, layOutExercise } from './lay-out-exercise.js';
import { layOutHowTo, layOutSafety } from './lay-out-front.js';
import { type Chapter, fillPages, pagesOfTargets, placePages } from './lay-out-pages.js';
import { layOutPartner } from './lay-out-partner.js';
import { layOutNotesPage, layOutRecord } from './lay-out-record.js';
import { layOutSession } from './lay-out-session.js';
import type { Measure } from './measure.js';
import type { Page } from './page.js';
import { type Picture, partTarget, type Setting, settingOf } from './setting.js';

/** Two folded booklets; beyond that it is a file, and nobody carries it to train. */
export const MOST_PAGES = 64;

function chaptersOf(part: Part, index: number, setting: Setting): readonly Chapter[] {
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
      return layOutSession(part, setting, target);
    case 'exercise':
      return [layOutExercise(part, setting, setting.pictures.get(part.id))];
    case 'partner':
      return [layOutPartner(part, setting, target)];
    case 'record':
      return [layOutRecord(part, setting, target)];
  }
}

const isFront = ({ kind }: Part): boolean =>
  kind !== 'session' && kind !== 'exercise' && kind !== 'partner' && kind !== 'record';

/** Contents close the front matter, before the first session. */
function allChapters(booklet: Booklet, setting: Setting): readonly Chapter[] {
  const laid = booklet.parts.map((part, i) => chaptersOf(part, i, setting));
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

function layOutRound(booklet: Booklet, setting: Setting): readonly Page[] {
  const chapters = allChapters(booklet, setting);
  const filler = layOutNotesPage(setting);
  const { linesOnPage, type } = setting.measure.sheet;
  const used = fillPages(chapters, filler, linesOnPage).length;
  // Large print stands on leaves, not on folded sheets.
  const whole = type === 'large' ? used + (used % 2) : wholeSheets(used);
  const notes = Array.from({ length: whole - used }, () => filler);
  return placePages(fillPages([...chapters, ...notes], filler, linesOnPage), setting.measure);
}

/** First to learn which page everything stands on, then to say so. Room for the numbers is kept from the start. */
function layOutTwice(booklet: Booklet, setting: Setting): readonly Page[] {
  return layOutRound(booklet, { ...setting, pageOf: pagesOfTargets(layOutRound(booklet, setting)) });
}

/** Of each exercise that is drawn, the ways its drawing may stand on its page, the one to be had rather first. */
export type Pictures = ReadonlyMap<ExerciseId, readonly Picture[]>;

interface ChosenPictures {
  readonly all: Setting['pictures'];
  /** Those that take no page more than the words alone. */
  readonly free: Setting['pictures'];
}

/** Chosen once and for both rounds, so that no reference goes wrong. */
function choosePictures({ parts }: Booklet, setting: Setting, pictures: Pictures): ChosenPictures {
  const chosen = parts.flatMap((part) => {
    const ways = part.kind === 'exercise' ? pictures.get(part.id) : undefined;
    const one = part.kind === 'exercise' && ways ? choosePicture(part, setting, ways) : undefined;
    return part.kind === 'exercise' && one ? [[part.id, one] as const] : [];
  });
  const those = (of: typeof chosen): Setting['pictures'] => new Map(of.map(([id, { picture }]) => [id, picture]));
  return { all: those(chosen), free: those(chosen.filter(([, { costsPage }]) => !costsPage)) };
}

/** No drawing is worth a second folded booklet, or a booklet that cannot be had: then those are left out that take a page. */
function sparedPages(
  pages: number,
  { all, free }: ChosenPictures,
  lay: (pictures: Setting['pictures']) => readonly Page[],
): readonly Page[] | null {
  const most = pages > MOST_PAGES ? MOST_PAGES : FOLDING_PAGES;
  const saved = wholeSheets(all.size - free.size) + PAGES_ON_A_SHEET;
  if (pages <= most || all.size === free.size || pages - saved > most) return null;
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
  const lay = (drawn: Setting['pictures']): readonly Page[] => {
    const roomy = layOutTwice(booklet, { ...setting, pictures: drawn });
    return roomy.length <= FOLDING_PAGES ? roomy : layOutTwice(booklet, { ...setting, pictures: drawn, close: true });
  };
  const chosen = choosePictures(booklet, setting, pictures);
  const full = lay(chosen.all);
  const large = measure.sheet.type === 'large';
  const spared = large ? null : sparedPages(full.length, chosen, lay);
  const pages = spared ?? full;
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

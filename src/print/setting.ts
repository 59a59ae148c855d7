/** What every part needs to be laid out: the booklet it belongs to, a measure, and the pages that others stand on. */
import type { Booklet, BookletLabel, SessionPart } from '../model/booklet.js';
import type { ExerciseId } from '../model/identity.js';
import type { PaperWords } from '../words/paper-words.js';
import { speechOf } from '../words/speech.js';
import type { Measure } from './measure.js';
import type { Box, Tag } from './page.js';

/** A drawing among the words of an exercise, so many steps of the grid high. */
export interface Picture {
  /** Above the words, at the far end of the first of them, or after the stop signs. */
  readonly stands: 'over' | 'beside' | 'after';
  readonly width: number;
  readonly lines: number;
  /** What it shows, in the booklet's language. */
  readonly alt: string;
  /** From the top left corner of its field; every box carries the tag. */
  readonly draw: (of: Tag) => readonly Box[];
}

export interface Setting {
  readonly measure: Measure;
  readonly labels: Readonly<Record<BookletLabel, string>>;
  /** Words that stand on paper alone. */
  readonly words: PaperWords;
  /** `2 or 3 left`. */
  readonly sayLeft: (least: number, most: number) => string;
  readonly sessions: readonly SessionPart[];
  /** Absent in the first round, when the pages are not yet known; a reference then keeps room for two figures. */
  readonly pageOf: ReadonlyMap<string, number>;
  /** Short exercises share a page, for a booklet that would not fold otherwise. */
  readonly close: boolean;
  /** What marks a name of the exercises' own language; empty where that is the booklet's. */
  readonly ownName: { readonly lang?: string };
  /** Of each exercise that is drawn. */
  readonly pictures: ReadonlyMap<ExerciseId, Picture>;
  /** Of the booklet on the web, for the cover; absent where it has no address. */
  readonly code?: { readonly text: string; readonly caption: string };
}

export const settingOf = (booklet: Booklet, measure: Measure, close: boolean, code?: Setting['code']): Setting => ({
  measure,
  labels: booklet.labels,
  words: speechOf(booklet.language).words.paper,
  sayLeft: speechOf(booklet.language).words.sets.felt,
  sessions: booklet.parts.filter((part) => part.kind === 'session'),
  pageOf: new Map(),
  close,
  pictures: new Map(),
  ownName: booklet.exerciseLanguage === undefined ? {} : { lang: booklet.exerciseLanguage },
  ...(code === undefined ? {} : { code }),
});

export const exerciseTarget = (id: ExerciseId): string => `exercise-${id}`;
export const partTarget = (index: number): string => `part-${index}`;

/** `14`, or two figures' room while it is not known. */
export const pageNumber = (setting: Setting, target: string): string => String(setting.pageOf.get(target) ?? '00');

/** What stands in a cell of a table from paper: sets as a pencil leaves them, and what hurt. Without the plan. */
import { BODY_PARTS } from '../model/exercise.js';
import type { Side } from '../model/identity.js';
import { ALARM_SIGNS, type PainReport } from '../model/log.js';
import { asTyped } from './read-value.js';

export type Did = 'done' | 'easier' | 'left out' | 'extra';

/** Some sets alike, or all of a row's. */
export interface PaperSets {
  readonly count: number | 'all';
  readonly did: Did;
  /** Absent where a stroke alone says it: then the plan's own figures hold. */
  readonly figure?: { readonly value: number; readonly counts: 'reps' | 'seconds' | 'metres' | 'as asked' };
  /** As written; absent where none is. */
  readonly load?: string;
}

const WORDS: Readonly<Record<string, Did>> = {
  done: 'done',
  'as planned': 'done',
  stroke: 'done',
  strokes: 'done',
  easier: 'easier',
  e: 'easier',
  'left out': 'left out',
  empty: 'left out',
  '-': 'left out',
  extra: 'extra',
  '+': 'extra',
};
const didOf = (word: string): Did | undefined => WORDS[word];

const UNITS: Readonly<Record<string, 'reps' | 'seconds' | 'metres'>> = {
  rep: 'reps',
  reps: 'reps',
  s: 'seconds',
  sec: 'seconds',
  seconds: 'seconds',
  m: 'metres',
  metres: 'metres',
};

const FIGURES =
  /^(?:(\d{1,2}) ?× ?)?(easier |e |extra |\+ ?)?(\d{1,5})(?: ?(reps?|s|sec|seconds|m|metres))?(?: ?(easier|extra|e|\+))?(?: ?× ?(\S.*)| (?:with|at) (\S.*))?$/;

/** `3 × 8 × 16 kg`; `8, 8, 6`; `2 done, 1 easier`; `as planned`; `left out`. `null` where any part is none of it. */
export function readPaperSets(text: string): readonly PaperSets[] | null {
  const whole = asTyped(text).trim().toLowerCase().replace(/\s+/g, ' ');
  const all = didOf(whole);
  // One word for the whole row; an extra set is one set.
  if (all !== undefined) return [{ count: all === 'extra' ? 1 : 'all', did: all }];
  // A comma before a figure and a unit of mass is a decimal.
  const read = whole.split(/;|,(?!\d+ ?(?:kg|lb)\b)/).map((part) => readPart(part.trim()));
  const sets = read.flatMap((part) => (part === null ? [] : [part]));
  return sets.length === read.length ? sets : null;
}

function readPart(part: string): PaperSets | null {
  // With a word the figure counts sets; with the pencil’s own letter, as `7 e`, it counts reps.
  const [, times, word = ''] = /^(?:(\d{1,2}) ?×? ?)?([a-z]{3}[a-z ]*|[a-z+-])$/.exec(part) ?? [];
  const stroke = didOf(word);
  const isLetter = word.length === 1 && times !== undefined;
  if (stroke !== undefined && !isLetter) return { count: Number(times ?? 1), did: stroke };
  const match = FIGURES.exec(part);
  if (match === null) return null;
  const [, count, before = '', figure, unit = '', after = '', load, held] = match;
  return {
    count: Number(count ?? 1),
    did: didOf(before.trim()) ?? didOf(after) ?? 'done',
    figure: { value: Number(figure), counts: UNITS[unit] ?? 'as asked' },
    ...(load === undefined && held === undefined ? {} : { load: load ?? held ?? '' }),
  };
}

const NO_PAIN = /^(?:no|none|nothing|-|0)$/;
const BEFORE =
  /^(?:(left|right) )?([a-z ]+?)(?: (left|right))? (\d{1,2})(?: ?(?:of|\/) ?10)?(?:,? (worse next morning))?$/;

/** `right knee 3`, several parted by semicolons; `knee 3 worse next morning`; an alarm sign in its own words. */
export function readHurt(text: string): readonly PainReport[] | null {
  const whole = asTyped(text).trim().toLowerCase().replace(/\s+/g, ' ');
  if (NO_PAIN.test(whole)) return [];
  const read = whole.split(/;/).map((part) => readPain(part.trim()));
  const reports = read.flatMap((part) => (part === null ? [] : [part]));
  return reports.length === read.length ? reports : null;
}

function readPain(part: string): PainReport | null {
  // Nobody is asked for a figure with these: they are not a matter of degree.
  const alarm = ALARM_SIGNS.find((sign) => sign === part);
  if (alarm !== undefined) return { where: 'elsewhere', degree: 0, alarm };
  const [, before, name, after, figure, morning] = BEFORE.exec(part) ?? [];
  const where = [...BODY_PARTS, 'elsewhere' as const].find((one) => one === name);
  const degree = Number(figure);
  if (where === undefined || degree > 10) return null;
  const side = before ?? after;
  return {
    where,
    degree,
    ...(side === undefined ? {} : { side: sideOf(side) }),
    ...(morning === undefined ? {} : { worseNextMorning: true }),
  };
}

const sideOf = (word: string): Side => (word === 'left' ? 'left' : 'right');

/** `A 3`, `A, week 3`, `week 3 A`, `A`: the session's letter and the week of its column. */
export function readPaperSession(text: string): { readonly id: string; readonly week: number | null } | null {
  const word = asTyped(text).trim().replace(/\s+/g, ' ');
  const [, id, week] = /^([a-z0-9-]+?)(?:,? ?(?:week )?(\d{1,2}))?$/i.exec(word) ?? [];
  if (id !== undefined && !/^week$/i.test(id)) return { id, week: week === undefined ? null : Number(week) };
  const [, first, second] = /^week (\d{1,2}),? ([a-z0-9-]+)$/i.exec(word) ?? [];
  return second === undefined ? null : { id: second, week: Number(first) };
}

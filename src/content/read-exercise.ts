/** One exercise's file → facts and words. Whether its links lead anywhere is left to the cross checks. */
import {
  BODY_PARTS,
  CAUSES,
  type Cause,
  type Cue,
  type Exercise,
  type Fault,
  type OwnPicture,
  type Version,
  type Words,
} from '../model/exercise.js';
import { type ExerciseId, exerciseId } from '../model/identity.js';
import { type Line, plainText } from '../model/prose.js';
import { slugOf } from '../model/slug.js';
import type { Sentence } from '../prose/blocks.js';
import { cutLine, sliceLine, trimLine } from '../prose/line.js';
import { exerciseSchema, factsOf, formerIdsOf, readShare } from './exercise-schema.js';
import { idIn, resolveTarget } from './link-target.js';
import { lineOf, type OpenFile, readAt, readKeys } from './open-file.js';
import { readDepiction } from './read-depiction.js';
import { readPoses } from './read-poses.js';
import { mapRead, refuse, splitPart, trimPart } from './read-value.js';
import { readOneOf } from './read-words.js';
import { itemsOf, linesOf, readSections, type Sections } from './sections.js';

export const EXERCISE_SECTIONS = [
  'Set-up',
  'Pick up and put down',
  'Cues',
  'Breath',
  'Faults',
  'Easier',
  'Harder',
  'Stop if',
  'Partner',
  'Poses',
] as const;
type SectionName = (typeof EXERCISE_SECTIONS)[number];

export interface ReadExercise {
  readonly id: ExerciseId;
  readonly file: OpenFile;
  readonly words: Words;
  readonly sections: Sections<SectionName>;
  /** Absent where the front matter could not be read. */
  readonly exercise: Exercise | undefined;
  readonly ownPicture?: OwnPicture;
}

export function readExercise(file: OpenFile, id: string): ReadExercise {
  const sections = readSections(file, EXERCISE_SECTIONS);
  const words = readWords(file, sections);
  const { table, drawingSaid, ownPicture } = readDepiction(file, sections.get('Poses'));
  const poses = readPoses(file, table);
  const front = readKeys(file, exerciseSchema);
  const exercise: Exercise | undefined = front && {
    id: exerciseId(id),
    formerIds: formerIdsOf(front),
    name: front.name,
    facts: factsOf(front),
    words,
    poses,
    ...(drawingSaid === undefined ? {} : { drawingSaid }),
    ...(ownPicture === undefined ? {} : { ownPicture }),
    place: file.place,
  };
  return { id: exerciseId(id), file, words, sections, exercise, ...(ownPicture === undefined ? {} : { ownPicture }) };
}

function readWords(file: OpenFile, sections: Sections<SectionName>): Words {
  const items = (name: SectionName): readonly Sentence[] => itemsOf(file, sections.get(name));
  const lines = (name: SectionName): readonly Line[] => items(name).map((item) => lineOf(file, item));
  const moves = items('Pick up and put down').map((item) => readMove(file, item));
  const slugs = new Set<string>();
  const versions = (name: 'Easier' | 'Harder'): readonly Version[] =>
    items(name).map((item) => readVersion(file, item, slugs));
  return {
    description: linesOf(file, 'the description', sections.intro),
    setUp: lines('Set-up'),
    pickUp: moves.flatMap((move) => (move?.kind === 'pick up' ? [move.line] : [])),
    putDown: moves.flatMap((move) => (move?.kind === 'put down' ? [move.line] : [])),
    cues: items('Cues').map((item) => readCue(file, item)),
    breath: lines('Breath'),
    faults: items('Faults').map((item) => readFault(file, item)),
    easier: versions('Easier'),
    harder: versions('Harder'),
    stopIf: lines('Stop if'),
    partner: lines('Partner'),
  };
}

/** `Pick up: …` or `Put down: …`. */
function readMove(file: OpenFile, item: Sentence): { kind: 'pick up' | 'put down'; line: Line } | undefined {
  const line = lineOf(file, item);
  const match = /^\s*(pick\s*-?up|put\s*-?down)\s*[:—–-]\s*/i.exec(plainText(line));
  if (!match) {
    file.report.add({ code: 'pick-up-or-put-down', data: { text: plainText(line) } }, item.place);
    return undefined;
  }
  const kind = /^\s*pick/i.test(match[0]) ? 'pick up' : 'put down';
  return { kind, line: trimLine(sliceLine(line, match[0].length)) };
}

/** `**Down** — Sit between your heels.` or just the words. */
function readCue(file: OpenFile, item: Sentence): Cue {
  const line = lineOf(file, item);
  const [first, ...rest] = line;
  const dash = /^\s*[:—–-]+\s*/.exec(plainText(rest));
  if (!first?.strong || !dash) return { phase: '', line };
  return { phase: first.text.replace(/[:\s]+$/, ''), line: trimLine(sliceLine(rest, dash[0].length)) };
}

/** Between what is seen and what is said. */
const DASH = /\s+[—–-]\s+|\s*—\s*/;

function readFault(file: OpenFile, item: Sentence): Fault {
  const line = lineOf(file, item);
  const cut = cutLine(line, DASH);
  return cut ? { see: cut.before, say: withoutQuotes(cut.after) } : { see: line, say: [] };
}

/** The words alone: quotation marks are the drawing's. */
function withoutQuotes(line: Line): Line {
  const text = plainText(line);
  const quoted = /^["'“”„‘’«»].*["'“”‘’«»]$/su.test(text) && text.length > 1;
  return quoted ? trimLine(sliceLine(line, 1, text.length - 1)) : line;
}

const RATIO_BOUNDS = { least: 0.1, most: 3 } as const;

/** `[Box squat](box-squat.md) — for range, knee; ratio 0.9 (practice)`, or a way of doing this one in words. */
function readVersion(file: OpenFile, item: Sentence, slugs: Set<string>): Version {
  const line = lineOf(file, item);
  const text = plainText(line);
  const cut = /\s*[—–-]\s+(?=for\s)|\s*;\s*(?=ratio\b)/i.exec(text);
  const say = cut ? trimLine(sliceLine(line, 0, cut.index)) : line;
  const [link] = item.links;
  const target = link && resolveTarget(file.path, link.target);
  const id = target?.kind === 'file' ? idIn('exercises', target.path) : undefined;
  if (link && id === undefined) {
    file.report.add({ code: 'link-elsewhere', data: { target: link.target, to: 'exercise' } }, link.place);
  }
  const clauses = splitPart(trimPart({ text: text.slice(cut?.index ?? text.length), start: 0 }), /;/g);
  const causes: Cause[] = [];
  let ratio: Version['ratio'];
  for (const clause of clauses) {
    const words = clause.text.replace(/^[—–-]\s+/, '');
    if (words === '') continue;
    if (/^for\s/i.test(words)) causes.push(...readCauses(file, item, words.replace(/^for\s+/i, '')));
    else ratio = readRatio(file, item, words) ?? ratio;
  }
  return {
    to:
      id === undefined
        ? { kind: 'way', slug: freeSlug(slugOf(plainText(say)) || 'way', slugs) }
        : { kind: 'exercise', id: exerciseId(id) },
    say,
    causes,
    ...(ratio ? { ratio } : {}),
    place: item.place,
  };
}

/** Causes are read from plain words; the letters are looked for in the item, whose first line they mostly stand in. */
function readCauses(file: OpenFile, item: Sentence, text: string): readonly Cause[] {
  const names = text.split(/,|\s+and\s+/).map((name) => name.trim().replace(/\.$/, ''));
  return names.flatMap((name) => {
    const start = plainText(item.line).lastIndexOf(name);
    const read = readAt(file, name, endPlace(item, start, name.length), (word) => {
      const cause = readOneOf(CAUSES)(
        word.replace(/s$/, (s) => (BODY_PARTS.some((part) => part === word.slice(0, -1)) ? '' : s)),
      );
      if (cause.ok) return cause;
      const nearest = cause.faults.flatMap(({ finding }) =>
        finding.code === 'not-one-of' ? [finding.data.nearest] : [],
      );
      return refuse({ code: 'unknown-cause', data: { text: word, nearest: nearest[0] ?? '' } }, word);
    });
    return read === undefined ? [] : [read];
  });
}

function readRatio(file: OpenFile, item: Sentence, text: string): Version['ratio'] {
  const start = plainText(item.line).lastIndexOf(text);
  const place = endPlace(item, start, text.length);
  const figure = /^ratio\s+/i.exec(text);
  if (!figure) {
    file.report.add({ code: 'ratio-unreadable', data: { text } }, place);
    return undefined;
  }
  return readAt(file, text, place, (whole) => {
    const read = readShare(RATIO_BOUNDS, 'A ratio')(whole.slice(figure[0].length));
    const unreadable = !read.ok && read.faults.some(({ finding }) => finding.code === 'share-unreadable');
    return unreadable
      ? refuse({ code: 'ratio-unreadable', data: { text: whole } }, whole)
      : mapRead(read, (share) => share);
  });
}

/**
 * The place of letters near the end of an item: counted back from the item's end, since a link before them is longer in
 * the file than in its words. Only for an item of one line; else the item's place.
 */
function endPlace(item: Sentence, start: number, length: number): Sentence['place'] {
  const letters = Array.from(plainText(item.line));
  const back = Array.from(plainText(item.line).slice(Math.max(0, start))).length;
  if (start < 0 || letters.length > item.place.length) return item.place;
  return { ...item.place, column: item.place.column + item.place.length - back, length: Math.max(1, length) };
}

function freeSlug(slug: string, taken: Set<string>): string {
  let free = slug;
  for (let n = 2; taken.has(free); n += 1) free = `${slug}-${n}`;
  taken.add(free);
  return free;
}

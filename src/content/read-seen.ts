/** What a coach wrote of a session: the trade's phrases however they are inflected, pain, `cleared`, or words for the coach alone. */
import type { Observation, Seen } from '../model/client.js';
import { SEEN } from '../model/client.js';
import { BODY_PARTS, type BodyPart } from '../model/exercise.js';
import type { Side } from '../model/identity.js';
import { nearestOf } from './nearest.js';
import { within } from './read-amounts.js';
import { allOf, asTyped, good, type Part, type Read, type Reader, readPart, refuse, splitPart } from './read-value.js';

export interface SeenPart {
  /** As written. */
  readonly seen: string;
  readonly means: Observation['means'];
  /** Named in the words themselves. */
  readonly side?: Side;
  /** Free text that is not said to be free: what it may have meant, or empty. */
  readonly unread?: { readonly nearest: string };
}

const WORSE = { least: 0, most: 10 } as const;

/** How each phrase is met on the floor. The whole text must match, so that a `no longer` or a `not` before it is no phrase. */
const PHRASES: readonly (readonly [Seen, RegExp])[] = [
  [
    'new to the movement',
    /^(new|newcomer)( to (the|this|a)? ?(movement|exercise|lift|it|this))?$|^new movement$|^first time$/,
  ],
  ['light', /^((too|very|rather|felt|feels|looked|looks|was|is|much too) )*(light|easy)$/],
  ['heavy', /^((too|very|rather|felt|feels|looked|looks|was|is|much too) )*heavy$/],
  ['missed reps', /^(miss(ed|es|ing)?) ((some|a few|the last|last|a|one|two|her|his|their) )*reps?$|^reps? missed$/],
  ['hurrying', /^(hurr(y|ies|ied|ying)|rush(es|ed|ing)?)( (it|the (reps|lowering|way down)|on the way down))?$/],
  [
    'shorter on one side',
    /^(short|shorter|shortens|less range|less reach|reaches less)( range)? (on )?(the )?(one|left|right)( side)?$|^(the )?(left|right)( side)?( is)? (short|shorter)$/,
  ],
  ['loses balance', /^(los(es|t|ing)|out of|off) ((her|his|their|the) )?balance$/],
  ['holds the breath', /^(holds|holding|held|hold) ((the|her|his|their) )?breath$/],
  [
    'grip goes first',
    /^(the |her |his |their )?grips? ((goes|go|went|gives|gave|fails|failed|gives out|gave out|going|giving out) first|first to go)$/,
  ],
  ['moves well', /^(mov(es|ed|ing)) (very )?well$/],
];

const PAIN = /\b(pain|pains|painful|hurt|hurts|hurting|sore|ache|aches|aching)\b/;
const DENIED = /^(no|without|free of)\b|\b(no|without) pain\b|\bpain[- ]?free\b/;
const PARTS_LONG_FIRST = [...BODY_PARTS].sort((a, b) => b.length - a.length);
const ALSO: Readonly<Record<string, BodyPart>> = {
  'low back': 'lower back',
  feet: 'foot',
  stomach: 'belly',
  abdomen: 'belly',
};

/** Several between commas or semicolons. Never empty; reports `observation-pain` and `out-of-range`. */
export const readSeen: Reader<readonly SeenPart[]> = (text) => {
  const whole: Part = { text: text.trim(), start: text.length - text.trimStart().length };
  if (isNote(whole.text)) return good([free(whole.text)]);
  const parts = entriesOf(whole);
  if (parts.length === 0) return refuse({ code: 'empty-entry', data: {} }, text);
  const read = allOf(parts.map((part) => readPart(part, readOne)));
  if (!read.ok) return read;
  // A sentence with a comma in it is one note, not several.
  if (read.value.every(({ unread }) => unread !== undefined)) return good([unreadOf(whole.text)]);
  return read;
};

/** What stands in quotation marks or after `note:` is kept whole; the rest is divided. */
function entriesOf(whole: Part): readonly Part[] {
  const note = /(^|[,;])\s*note:/i.exec(asTyped(whole.text));
  const end = note === null ? whole.text.length : note.index + (note[1] ?? '').length;
  const before = { text: whole.text.slice(0, end).replace(/[,;]$/, ' '), start: whole.start };
  const after = { text: whole.text.slice(end), start: whole.start + end };
  // Commas inside quotation marks divide nothing, and none before a figure does: `knee pain, 3`.
  const masked = asTyped(before.text).replace(/"[^"]*"/g, (quoted) => '_'.repeat(quoted.length));
  const divided = splitPart({ text: masked, start: 0 }, /[,;](?!\s*\d)/g).map(({ text, start }) => {
    return { text: before.text.slice(start, start + text.length), start: before.start + start };
  });
  const all = [...divided.flatMap(halves), ...(note === null ? [] : [trimmed(after)])];
  return all.filter(({ text }) => text !== '');
}

const trimmed = ({ text, start }: Part): Part => {
  return { text: text.trim(), start: start + text.length - text.trimStart().length };
};

/** `heavy and hurrying` is two, where both are phrases. */
function halves(part: Part): readonly Part[] {
  if (phraseIn(part.text) !== null) return [part];
  const two = splitPart(part, / and /gi);
  return two.length > 1 && two.every(({ text }) => phraseIn(text) !== null) ? two : [part];
}

const readOne: Reader<SeenPart> = (text) => {
  if (isNote(text)) return good(free(text));
  const phrase = phraseIn(text);
  if (phrase !== null) {
    const side = sideIn(plain(text));
    return good({ seen: text, means: { kind: 'phrase', phrase }, ...(side === null ? {} : { side }) });
  }
  if (/^((pain|knee|shoulder|it)?( is| was)? ?)?cleared$/.test(plain(text))) {
    return good({ seen: text, means: { kind: 'cleared' } });
  }
  if (PAIN.test(plain(text)) && !DENIED.test(plain(text))) return readPain(text);
  return good(unreadOf(text));
};

/** Where it hurts and how much, in either order: a whole number from 0 to 10. */
function readPain(text: string): Read<SeenPart> {
  const typed = plain(text);
  const figures = [...typed.replace(/(\d+)\s*(\/|of|out of)\s*10\b/g, '$1').matchAll(/\d+(?:[.,]\d+)?/g)];
  const figure = figures[0]?.[0] ?? '';
  if (figures.length !== 1 || !/^\d+$/.test(figure)) {
    return refuse({ code: 'observation-pain', data: { text, where: '' } }, text);
  }
  const degree = within('Pain', Number(figure), figure, WORSE, text);
  if (!degree.ok) return degree;
  const words = typed
    .replace(/(\d+)\s*(\/|of|out of)\s*10\b/g, ' ')
    .replace(/[\d.,:]/g, ' ')
    .replace(PAIN, ' ')
    .replace(/\b(in|the|at|of|on|her|his|their|is|was|and|a|bit|left|right|side|both|knees)\b/g, (word) =>
      word === 'knees' ? 'knee' : ' ',
    )
    .replace(/\s+/g, ' ')
    .trim();
  const where = partIn(words);
  if (where === null) {
    const nearest = words === 'back' ? 'lower back' : nearestOf(words, BODY_PARTS);
    if (words !== '' && nearest !== '') {
      return refuse({ code: 'observation-pain', data: { text, where: nearest } }, text);
    }
  }
  const side = sideIn(typed);
  const means = { kind: 'pain', where: where ?? 'elsewhere', degree: degree.value } as const;
  return good({ seen: text, means, ...(side === null ? {} : { side }) });
}

function partIn(words: string): BodyPart | null {
  const found = PARTS_LONG_FIRST.find((part) => new RegExp(`\\b${part}s?\\b`).test(words));
  const also = Object.entries(ALSO).find(([name]) => new RegExp(`\\b${name}\\b`).test(words));
  return found ?? also?.[1] ?? null;
}

function sideIn(words: string): Side | null {
  const left = /\bleft\b/.test(words);
  const right = /\bright\b/.test(words);
  return left === right ? null : left ? 'left' : 'right';
}

const plain = (text: string): string =>
  asTyped(text)
    .normalize('NFC')
    .toLowerCase()
    .replace(/[.!]+$/, '')
    .replace(/\s+/g, ' ')
    .trim();

function phraseIn(text: string): Seen | null {
  const words = plain(text).replace(/^(still|a bit|a little|again) | (again|still)$/g, '');
  return PHRASES.find(([, pattern]) => pattern.test(words))?.[0] ?? null;
}

const isNote = (text: string): boolean => /^("[^"]*"|'[^']*'|note:.*)$/is.test(asTyped(text).trim());

const free = (text: string): SeenPart => ({ seen: text, means: { kind: 'free' } });
const unreadOf = (text: string): SeenPart => ({ ...free(text), unread: { nearest: nearestOf(plain(text), SEEN) } });

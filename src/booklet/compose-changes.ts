/** What stands at the top of a booklet's first page: what an edition changes, or that it is not to be trained from. */
import type { Booklet, CoverPart, Notice, Part } from '../model/booklet.js';
import type { Change } from '../model/change.js';
import type { IsoDate } from '../model/day.js';
import { sayChanges } from '../words/say-changes.js';
import { sayFullDate } from '../words/say-date.js';
import { speechOf } from '../words/speech.js';
import type { Subject } from './subject.js';

/** `changes` is absent in a first edition: then nothing is told. */
export function composeChanges(subject: Subject, changes: readonly Change[] | undefined): Notice | undefined {
  if (changes === undefined) return undefined;
  const { plan, speech, library, names } = subject;
  const programme = (id: string): string => library.programmes.find((one) => one.id === id)?.name ?? id;
  return {
    kind: 'changes',
    title: speech.words.changes.title(plan.edition, sayFullDate(plan.today, speech)),
    lines: sayChanges({ changes, plan, speech, names: { exercise: names.exercise, programme } }),
  };
}

const coverOf = ({ parts }: Booklet): CoverPart | undefined =>
  parts.find((part): part is CoverPart => part.kind === 'cover');

/** The booklet as it was frozen, which says first of all that it has ended. `last` is its last day. */
export function composeEnded(booklet: Booklet, last: IsoDate): Booklet {
  const speech = speechOf(booklet.language);
  const { title, lines } = speech.words.changes.ended;
  const coach = coverOf(booklet)?.coach ?? '';
  const notice: Notice = { kind: 'ended', title, lines: lines(sayFullDate(last, speech), coach) };
  return {
    ...booklet,
    parts: booklet.parts.map((part): Part => (part.kind === 'cover' ? { ...part, notice } : part)),
  };
}

/** One page in place of the booklet: nothing in it can be trained from. Why it was withdrawn is the coach's own. */
export function composeWithdrawn(booklet: Booklet, date: IsoDate): Booklet {
  const speech = speechOf(booklet.language);
  const { title, lines } = speech.words.changes.withdrawn;
  return {
    ...booklet,
    parts: booklet.parts.flatMap((part): readonly Part[] => {
      if (part.kind !== 'cover') return [];
      const notice: Notice = { kind: 'withdrawn', title, lines: lines(sayFullDate(date, speech), part.coach) };
      return [{ ...part, weeks: [], notice }];
    }),
  };
}

/** What a language must be able to say of what a new edition changes. */
import type { RowChangeKind } from '../model/change.js';

/** Why, as far as a client is told: never more than where it was sore. */
export type WhyChanged =
  | { readonly kind: 'pain'; readonly where: string }
  | {
      readonly kind:
        | 'care'
        | 'seen'
        | 'marks'
        | 'heavy'
        | 'chose-easier'
        | 'had-more'
        | 'earned'
        | 'away'
        | 'ill'
        | 'none';
    };

/** From which day on; to the end, or on the one day, or until another. */
export type WhenChanged =
  | { readonly kind: 'from' | 'on'; readonly day: string }
  | { readonly kind: 'between'; readonly day: string; readonly until: string };

/** One change of one exercise, with its figures said. */
export interface SaidChange {
  readonly what: RowChangeKind;
  readonly when: WhenChanged;
  readonly why: WhyChanged;
  /** As it stands inside a sentence. */
  readonly name: string;
  /** What it was, where it is another exercise now. */
  readonly instead: string;
  /** `12 kg`; empty for the body alone; `null` where it is not one load, or is found first. */
  readonly load: string | null;
  /** The load, the amount or the count stays what it becomes on the first day. */
  readonly steady: boolean;
  readonly way: 'down' | 'up' | 'other';
  readonly counts: 'reps' | 'seconds' | 'metres';
  readonly sets: number;
  /** `slow on the way down`; empty for the normal one. */
  readonly tempo: string;
}

/** A block that is much shorter or later. */
export interface WholeChange {
  /** `ill`: a break of which nobody needs to read what it was. */
  readonly why: 'away' | 'will-be-away' | 'ill' | 'none';
  /** Sessions still to do. */
  readonly left: number;
  /** Days of the next of them and of the last; empty where none is left. */
  readonly next: string;
  readonly last: string;
}

export interface ChangeWords {
  /** Over what is told of an edition: its number, 0 for a draft, and its day. */
  readonly title: (edition: number, date: string) => string;
  readonly row: (change: SaidChange) => string;
  /** In the first sessions of a new block. */
  readonly begins: (change: SaidChange) => string;
  readonly block: (goesOn: boolean) => string;
  readonly programme: (name: string) => string;
  readonly moved: (to: string) => string;
  readonly sessions: (count: number) => string;
  /** Many fewer sessions, or many more. */
  readonly fewer: (of: WholeChange) => string;
  /** As many sessions, on days much later or much earlier. */
  readonly later: (of: WholeChange) => string;
  readonly stops: (date: string) => string;
  /** Nothing of the work is otherwise. */
  readonly sameWork: string;
  /** Said last: what becomes of the one before. */
  readonly useThis: (marks: boolean) => string;

  readonly ended: { readonly title: string; readonly lines: (date: string, coach: string) => readonly string[] };
  readonly withdrawn: { readonly title: string; readonly lines: (date: string, coach: string) => readonly string[] };
}

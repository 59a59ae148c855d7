/** Codes of problems met while marks that came back are received. Codes are permanent: never rename, never reuse. */

/** Which mark of a log: by its number on the device, or where it stands on paper, and what it is. */
export interface WhichMark {
  readonly seq: number;
  readonly kind: 'opened' | 'set' | 'reserve' | 'pain' | 'closed' | 'note' | 'void';
  /** Of a set, a reserve or pain in one row; else empty. */
  readonly row: string;
  /** Of a mark from paper, whose number nobody has seen. */
  readonly paper?: {
    /** As it is written in a table, `A 3`; empty where the mark is of none. */
    readonly session: string;
    readonly side: 'left' | 'right' | 'both';
    /** Of a set, which of its kind, from 1; else 0. */
    readonly set: number;
  };
}

export interface LogProblems {
  /**
   * Not a log in any of its three forms; `why` ends a sentence, and is empty where nothing of any form is there. `kept`
   * is a log that is on file already.
   */
  readonly 'log-unreadable': { readonly form: 'none' | 'json' | 'message' | 'kept'; readonly why: string };
  /** Nothing to file: an empty file, or a log without a mark. */
  readonly 'log-nothing': Readonly<Record<string, never>>;
  /** A message of which something is missing, or of which letters were changed on the way. */
  readonly 'log-cut-short': {
    readonly missing: 'end' | 'beginning' | 'marks' | 'letters';
    /** Marks found, and marks the message says it has; 0 where it does not say. */
    readonly found: number;
    readonly wanted: number;
  };
  /** Marks that came sealed and are not opened; `keys` is how many of the studio's own are here. */
  readonly 'log-sealed': {
    readonly why: 'cut short' | 'foreign' | 'newer' | 'older' | 'no key';
    readonly keys: number;
  };
  /** No client has an edition of this booklet; of a table from paper, `client` has none at all. */
  readonly 'log-unknown-booklet': { readonly booklet: string; readonly client: string; readonly nearest: string };
  readonly 'log-no-such-edition': { readonly edition: number; readonly known: readonly number[] };
  /** A mark of something the edition does not have. */
  readonly 'log-no-such-set': {
    readonly mark: WhichMark;
    readonly what: 'block' | 'session' | 'row' | 'set' | 'exercise';
    readonly text: string;
    readonly edition: number;
    readonly nearest: string;
  };
  /** Dated after tomorrow. */
  readonly 'log-from-the-future': { readonly mark: WhichMark; readonly day: string; readonly today: string };
  /** Dated before the day before the edition was issued. */
  readonly 'log-before-edition': {
    readonly mark: WhichMark;
    readonly day: string;
    readonly edition: number;
    readonly issued: string;
  };
  /** One id, and two things said by it. */
  readonly 'log-conflict': { readonly mark: WhichMark; readonly id: string; readonly paper: boolean };
  readonly 'log-not-writable': { readonly folder: string; readonly why: string };
  /** A cell of a table from paper that is not as that column is written. */
  readonly 'log-cell-unreadable': {
    readonly column: 'Session' | 'Sets' | 'Left' | 'Hurt';
    readonly text: string;
  };
  /** A session that stands in several weeks, or twice in one; `known` are the ways to write it. */
  readonly 'log-which-session': { readonly text: string; readonly known: readonly string[] };
  /** Marks in a table before anything says of which session they are. */
  readonly 'log-no-session': { readonly column: 'Date' | 'Session' };
  /** A table says two things of the same set, or of the same session. */
  readonly 'log-said-twice': { readonly what: string };
}

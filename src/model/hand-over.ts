/** What is handed over with a sealed booklet, in the client's words. The coach's own until it is handed over. */
import type { IsoDate } from './day.js';
import type { SealedBy } from './state.js';

/** How a sealed booklet is opened; the link is whole, with whatever it carries. */
export interface Opening {
  readonly by: SealedBy;
  /** Absent where the studio does not say where it is hosted. */
  readonly link?: string;
  /** Absent where the link alone opens. */
  readonly words?: string;
}

export interface HandOverDay {
  /** The session's place in the queue of the block: the same in every edition. */
  readonly occurrence: number;
  readonly date: IsoDate;
  readonly title: string;
  readonly text: string;
}

export interface HandOverCalendar {
  readonly title: string;
  readonly language: string;
  readonly days: readonly HandOverDay[];
}

export interface HandOverSlip {
  readonly title: string;
  readonly howTo: readonly string[];
  readonly codeTitle: string;
  readonly wordsTitle: string;
  readonly words?: string;
}

export interface HandOver {
  readonly language: string;
  readonly direction: 'ltr' | 'rtl';
  readonly by: SealedBy;
  /** Paragraphs between empty lines; the link stands on a line of its own. Absent without a link. */
  readonly message?: string;
  readonly slip: HandOverSlip;
  readonly link?: string;
}

/** The link as a code to scan: the dark modules as a path of a drawing so many units wide, with its quiet zone. */
export interface HandOverCode {
  readonly size: number;
  readonly path: string;
}

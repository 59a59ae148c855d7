/** What goes to a client with the booklet: the message, the slip with the words that open it, the days in a calendar. */

import type { SealedBy } from '../model/state.js';

export interface HandOverMessage {
  readonly client: string;
  readonly coach: string;
  readonly studio: string;
  readonly edition: number;
  /** A day already said. */
  readonly from: string;
  readonly by: SealedBy;
  readonly emergencyNumber: string;
}

export interface HandOverWords {
  /** Paragraphs before the link. */
  readonly before: (of: HandOverMessage) => readonly string[];
  /** Paragraphs after it. */
  readonly after: (of: HandOverMessage) => readonly string[];
  readonly slip: {
    readonly title: string;
    /** To be cut out and handed over. */
    readonly howTo: (of: HandOverMessage) => readonly string[];
    readonly words: string;
    readonly code: string;
  };
  readonly calendar: {
    readonly title: (studio: string, client: string) => string;
    readonly day: (session: string, client: string) => string;
    /** `minutes` is a sentence already. */
    readonly text: (minutes: string, of: Pick<HandOverMessage, 'coach'>) => string;
  };
}

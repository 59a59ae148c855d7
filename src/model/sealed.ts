/** A client's part as it stands in a public folder, in a page that says nothing of anybody. */
import type { SealedBy } from './state.js';

export type SealedPart = 'booklet' | 'paper' | 'calendar';

export interface SealedBooklet {
  /** The form of what is sealed; a page opens what is of its own. */
  readonly form: number;
  readonly by: SealedBy;
  /** Holds the key of the folder's files; absent where the link carries it. */
  readonly lock?: string;
  readonly booklet: string;
  /** What else lies beside it, each in a file of its own. */
  readonly beside: readonly Exclude<SealedPart, 'booklet'>[];
}

/** Of a part that lies beside: its file in the folder, and what it becomes on the phone. */
export const BESIDE = {
  paper: { file: 'paper.jwe', name: 'booklet-a5.pdf', type: 'application/pdf' },
  calendar: { file: 'calendar.jwe', name: 'sessions.ics', type: 'text/calendar' },
} as const;

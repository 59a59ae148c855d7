/** What stands on the page that a sealed booklet is opened on, and beside the booklet once it is open. */
export interface SealWords {
  /** To whoever reads the page as it is: nothing runs in it, or it was turned to by hand. */
  readonly unopened: readonly string[];
  readonly askLink: string;
  readonly linkLabel: string;
  readonly askWords: string;
  readonly wordsLabel: string;
  /** The link is there: what is left to say. */
  readonly ready: string;
  readonly openKept: string;
  readonly openOnce: string;
  readonly keptNote: string;
  readonly opening: string;
  readonly fault: Readonly<Record<SealFault, string>>;
  readonly paper: string;
  readonly calendar: string;
  readonly notHad: string;
  readonly forget: string;
  readonly forgetAsk: string;
  readonly forgetYes: string;
  readonly forgetNo: string;
}

export const SEAL_FAULTS = [
  'wrong words',
  'wrong link',
  'damaged',
  'newer',
  'older',
  'not secure',
  'not kept',
] as const;
/** What stands in the way of opening; a booklet that is not kept is open all the same. */
export type SealFault = (typeof SEAL_FAULTS)[number];

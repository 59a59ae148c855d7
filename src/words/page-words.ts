/** The few sentences of the web pages that no booklet carries: they belong to the drawing, not to a client. */
export interface PageWords {
  readonly shellTitle: string;
  readonly shellOpen: string;
  readonly shellLoading: string;
  readonly readingCopy: string;
  readonly easierToday: string;
  readonly somethingHurts: string;
  readonly toContents: string;
  readonly alsoToday: string;
  /** `Week 6, easier week`, in a list. */
  readonly weekInList: (week: number, easy: boolean) => string;
  /** `Session A, week 2`, above an exercise. */
  readonly inWeek: (session: string, week: number) => string;
  /** Over a set that goes up a step: it stands beside what must be done first, and what to do otherwise. */
  readonly ifEarned: string;
  /** `3 sets`; with `first`, the side that begins: `3 sets each side, left first`. */
  readonly counted: (sets: number, first?: string) => string;
  /** `16 kg × 8, 3 sets`, `16 kg × 8, 3 sets each side`: in a list. */
  readonly inSets: (dose: string, sets: number, eachSide: boolean) => string;
  /** Sets that come before the work, in a list: `try 20 kg × 4`, `feeler set 8 kg × 6`, `test, 16 kg`. */
  readonly before: Readonly<Record<'trial' | 'feeler' | 'test', (dose: string) => string>>;
  /** A dose of one side alone, in a list: `left 12 kg × 8`. */
  readonly ofSide: (side: string, dose: string) => string;
  /** Such sets with the work they lead to. */
  readonly leadsTo: (before: string, work: string) => string;
  readonly feeler: string;
  readonly painScale: string;
  /** Stands before the name of the page one came from. */
  readonly backTo: string;
}

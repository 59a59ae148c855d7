/** The few words of the account a coach asks for: why these numbers, and why not the next one up. */
export interface WhyWords {
  readonly block: (client: string, programme: string, from: string) => string;
  readonly session: (week: number, session: string, date: string, minutes: number) => string;
  readonly easyWeek: string;
  readonly row: (exercise: string, doses: string) => string;
  readonly because: string;
  readonly with: (inputs: string) => string;
  readonly source: (rule: string, source: string, confidence: string) => string;
  readonly next: (option: string, predicted: string) => string;
  readonly open: string;
  readonly capacity: (side: string, figure: string, equation: string, confidence: string) => string;
  readonly sides: Readonly<Record<'left' | 'right' | 'both', string>>;
  readonly confidence: Readonly<Record<'measured' | 'estimated' | 'weak', string>>;
  readonly feeler: string;
  readonly trimmed: (row: string, sets: number, whole: boolean) => string;
  readonly findings: string;
  readonly finding: (where: string, says: string) => string;
  readonly relaxed: (rules: string) => string;
  readonly overridden: (value: string, reason: string) => string;
}

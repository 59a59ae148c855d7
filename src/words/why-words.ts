/** The few words of the account a coach asks for: why these numbers, and why not the next one up. */
import type { Group } from '../model/plan.js';
import type { Asks } from './matters.js';

export interface SaidCapacity {
  readonly side: string;
  /** `108.4 kg`. */
  readonly figure: string;
  /** A share of the body's own mass is counted in. */
  readonly withBody: boolean;
  readonly equation: string;
  readonly confidence: string;
}

export interface WhyWords {
  readonly block: (client: string, programme: string, from: string) => string;
  readonly session: (week: number, session: string, date: string, minutes: number) => string;
  readonly easyWeek: string;
  readonly row: (exercise: string, doses: string) => string;
  readonly with: (inputs: string) => string;
  readonly source: (rule: string, source: string, confidence: string) => string;
  readonly next: (option: string, predicted: string) => string;
  readonly open: string;
  /** The option is this week's trial set. */
  readonly tried: string;
  /** The option is this week's work, behind a gate. */
  readonly ifEarned: string;
  readonly capacity: (capacity: SaidCapacity) => string;
  readonly equations: Readonly<Record<'epley' | 'brzycki', string>>;
  readonly sides: Readonly<Record<'left' | 'right' | 'both', string>>;
  readonly confidence: Readonly<Record<'measured' | 'estimated' | 'weak', string>>;
  readonly trimmed: (row: string, sets: number, whole: boolean) => string;
  readonly findings: string;
  /** Before what a finding asks of the coach. */
  readonly asks: Readonly<Record<Asks, string>>;
  readonly relaxed: (rules: string) => string;
  readonly overridden: (value: string, reason: string) => string;
  /** Where in a session something stands that is not its work; empty for the work. */
  readonly groups: Readonly<Record<Group['kind'], string>>;
  readonly within: (group: string, exercise: string) => string;
  /** Of a ladder: the step the row stands on. */
  readonly rung: (number: number, of: number) => string;
  readonly testSet: (reps: string, load: string) => string;
  /** What published equations make of the test, beside it. */
  readonly maxima: (set: string, singles: string) => string;
  readonly away: (from: string, until: string, cause: string) => string;
  readonly stops: (after: string, because: 'clearance' | 'due date') => string;
}

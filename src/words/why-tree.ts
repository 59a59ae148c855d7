/**
 * The reasons of a plan as nested data: client, week, session, exercise, and why not the next one up. `say-why.ts`
 * prints it and programs read it as JSON; how it is called and what it decides is not here.
 */
import type { IsoDate } from '../model/day.js';
import type { Way } from '../model/exercise.js';
import type { Group, Plan } from '../model/plan.js';
import type { Confidence } from '../model/quantity.js';
import type { Audience, ReasonInput } from '../model/reason.js';
import type { Asks } from './matters.js';

/** A figure that carries its unit. */
export interface WhyFigure {
  readonly value: number;
  readonly unit: string;
}

export interface WhyReason {
  readonly rule: string;
  readonly says: string;
  readonly inputs: readonly ReasonInput[];
  readonly source: string;
  readonly confidence: Confidence;
  readonly audience: Audience;
  /** Where the coach set a value of their own for the rule. */
  readonly own?: { readonly value: string; readonly reason: string };
}

/** What becomes of an option this week. */
export type WhyStanding = 'taken' | 'if-earned' | 'tried' | 'open' | 'refused';

export interface WhyNext {
  /** As said: `20 kg`, `16 kg, slow on the way down`. */
  readonly option: string;
  readonly exercise: string;
  readonly tempo: string;
  readonly load: WhyFigure | null;
  /** Of a ladder: the rung, from 1. */
  readonly rung?: number;
  /** Reps to failure there; `null` where none are predicted. */
  readonly predicted: WhyFigure | null;
  readonly standing: WhyStanding;
  /** Rule id; absent where it is not refused. */
  readonly refusedBy?: string;
  readonly says: string;
  /** What would open it, where something can. */
  readonly unlock?: string;
  readonly reasons: readonly WhyReason[];
}

/** The set that a load rests on, and what published equations make of it: shown, never decided by. */
export interface WhyTest {
  /** As said: `12 reps to failure at 77.5 kg`. */
  readonly set: string;
  readonly resisted: WhyFigure;
  readonly reps: WhyFigure;
  readonly side: string;
  readonly maxima: readonly { readonly equation: string; readonly single: WhyFigure; readonly says: string }[];
}

export interface WhyItem {
  readonly id: string;
  readonly row: string;
  readonly exercise: string;
  readonly name: string;
  readonly way: Way;
  /** Where in the session it stands: warm-up, work, test, cool-down. */
  readonly group: Group['kind'];
  /** In the order done. */
  readonly dose: readonly string[];
  readonly effort: string;
  readonly rung?: { readonly number: number; readonly of: number };
  /** What is taken to be lifted once; empty where nothing is. */
  readonly capacity: string;
  readonly test: WhyTest | null;
  readonly reasons: readonly WhyReason[];
  /** Rules set aside to find anything at all. */
  readonly relaxed: readonly string[];
  readonly next: readonly WhyNext[];
}

export interface WhyTrim {
  readonly row: string;
  readonly says: string;
  readonly reason: WhyReason;
}

export interface WhySession {
  readonly id: string;
  readonly name: string;
  readonly title: string;
  readonly date: IsoDate;
  readonly minutes: number;
  readonly trimmed: readonly WhyTrim[];
  readonly items: readonly WhyItem[];
}

export interface WhyWeek {
  readonly week: number;
  readonly begins: IsoDate;
  readonly easy: boolean;
  readonly sessions: readonly WhySession[];
}

export interface WhyFinding {
  /** Session, exercise and weeks, as said; empty where it is about the whole block. */
  readonly where: string;
  readonly session?: string;
  readonly row?: string;
  readonly weeks: readonly number[];
  readonly reason: WhyReason;
}

/** Findings that are one matter, told once. */
export interface WhyMatter {
  readonly asks: Asks;
  readonly rule: string;
  readonly says: string;
}

export interface WhyTree {
  readonly client: { readonly id: string; readonly name: string };
  readonly programme: { readonly id: string; readonly name: string };
  readonly edition: number;
  readonly begins: IsoDate;
  readonly breaks: Plan['inputs']['breaks'];
  readonly stops: NonNullable<Plan['stops']> | null;
  readonly weeks: readonly WhyWeek[];
  readonly findings: readonly WhyFinding[];
  /** The same, gathered, most pressing first, with what comes twice. */
  readonly matters: readonly WhyMatter[];
}

/** What to account for; all of it where nothing is named. */
export interface WhyAsked {
  readonly week?: number;
  /** A session's id or name, in any case. */
  readonly session?: string;
  /** An exercise's id, a row's id, or a name written with spaces, in any case. */
  readonly exercise?: string;
}

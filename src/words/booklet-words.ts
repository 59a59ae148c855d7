/** The fixed prose of a booklet, part by part: what a language must supply. Which part comes where is the composer's business. */

import type { ExercisePart, HowToPart } from '../model/booklet.js';
import type { Film } from '../model/client.js';

/** Names said in many sentences. */
export interface WhoIsWho {
  readonly client: string;
  readonly coach: string;
  /** As the studio gives it: `999`. */
  readonly emergencyNumber: string;
  /** The day of the build, `24 November 2026`. */
  readonly date: string;
}

/** What this booklet has in it, so that nothing is explained that is not there. */
export interface Shows {
  /** One set as printed, `16 kg × 8`; empty where nothing is loaded. */
  readonly example: string;
  /** How many reps it asks for. */
  readonly exampleReps: string;
  readonly gates: boolean;
  readonly feelers: boolean;
  readonly trials: boolean;
  readonly sides: boolean;
  /** Loads made of plates. */
  readonly plates: boolean;
  readonly bands: boolean;
  /** Something heavy is held: from where it is picked up, `floor` or `raised` above it; empty where nothing is. */
  readonly bells: 'floor' | 'raised' | '';
  readonly tests: boolean;
  /** Breath is the measure. */
  readonly talk: boolean;
  /** Sets that start at a signal. */
  readonly signals: boolean;
  /** Sessions that have a short version. */
  readonly short: boolean;
}

export interface BookletWords {
  readonly title: string;
  /** For the document's own information. */
  readonly documentTitle: (client: string, weeks: number, from: string) => string;
  readonly edition: (edition: number) => string;
  readonly studioAt: (studio: string, place: string) => string;
  /** In full: the front page carries it. */
  readonly notMedical: (who: WhoIsWho) => string;
  /** In one line: every session carries it. */
  readonly sessionSafety: (who: WhoIsWho) => string;

  readonly howToTitle: string;
  readonly howTo: (shows: Shows) => readonly string[];
  readonly key: HowToPart['key'];

  readonly safetyTitle: string;
  readonly emergencyTitle: string;
  readonly emergency: readonly string[];
  readonly call: (number: string) => string;
  readonly painTitle: string;
  readonly pain: (who: WhoIsWho) => readonly { readonly degree: string; readonly text: string }[];
  readonly safety: (who: WhoIsWho, shows: Shows) => readonly string[];
  /** Said before the client's own cautions, in the coach's words. */
  readonly forYou: (words: string) => string;
  /** The same as the lead of a line beside an exercise. */
  readonly forYouLead: string;
  /** At the head of an exercise this client does in one easier way of it alone. */
  readonly onlyLike: (way: string) => string;

  readonly calendarTitle: (weeks: number) => string;
  readonly weekLabel: (week: number) => string;

  readonly sessionTitle: (id: string, name: string) => string;
  /** The same session a second time in one week. */
  readonly again: (title: string) => string;
  readonly minutes: (least: number, most: number) => string;
  readonly warmUp: (minutes: number, names: readonly string[]) => readonly string[];
  /** Before the exercises of a warm-up or cool-down; `walk` where easy walking comes first. */
  readonly inOrder: (
    minutes: number,
    walk: boolean,
    through: readonly { readonly weeks: string; readonly rounds: number }[],
  ) => string;
  /** One exercise of a warm-up or cool-down, beside its name: `8 reps`. */
  readonly drill: (doses: readonly { readonly weeks: string; readonly dose: string }[]) => string;
  /** `Before the goblet squat, one lighter set: 12 kg × 5.` */
  readonly warmUpSet: (name: string, doses: readonly { readonly weeks: string; readonly dose: string }[]) => string;
  readonly coolDown: (minutes: number) => readonly string[];
  /** `A short warm-up, then 1 set of the goblet squat. About 10 minutes. That counts.` */
  readonly shortVersion: (
    minutes: number,
    warmUp: boolean,
    sets: readonly { readonly name: string; readonly sets: number; readonly sides: boolean }[],
  ) => string;
  readonly noSessions: string;
  /** `Weeks 2 and 3: Gently again after the break.` */
  readonly inWeeks: (weeks: string, text: string) => string;
  /** The last day sessions are planned for. */
  readonly askAfter: (date: string) => string;

  readonly sections: Readonly<Record<ExercisePart['sections'][number]['name'], string>>;
  /** What the coach asks to see: one set, from where. */
  readonly film: (coach: string, from: Film['from']) => readonly string[];
  /** How the parts of a combination follow one another. */
  readonly partsDone: Readonly<Record<'as one' | 'in turn', string>>;
  readonly stopTitle: string;
  /** Marks before and after what is spoken. */
  readonly quotes: readonly [string, string];

  /** Where a reason holds: `Session A, weeks 2 and 3; session C`. Empty sessions and weeks are left unsaid. */
  readonly whyLead: (where: readonly { readonly session: string; readonly weeks: readonly number[] }[]) => string;

  /** In the place of a coach's own line for the next session: what is tested again in it. */
  readonly testAgain: (names: readonly string[]) => string;

  /** `For Nell, who stands beside`: the partner’s own page. */
  readonly partnerTitle: (partner: string) => string;
  readonly partner: (client: string) => readonly string[];
  /** Signs that end the session, as somebody beside the client meets them. */
  readonly partnerEmergency: readonly string[];
  /** Before an exercise’s own stop signs, which speak to the client. */
  readonly partnerStop: (client: string) => string;
  /** What is counted aloud, by what a set is counted in. */
  readonly partnerCounts: Readonly<Record<'reps' | 'seconds' | 'metres' | 'rounds', string>>;
  readonly partnerSides: string;

  readonly recordTitle: string;
  readonly record: (who: WhoIsWho) => readonly string[];
}

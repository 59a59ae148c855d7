/**
 * The booklet as the client sees it: a tree of parts, made once from the plan and drawn twice.
 * Every sentence and figure is final; a drawing decides where things stand and nothing else.
 * Parts are a tagged union: a new part does not compile until both drawings draw it.
 */
import type { IsoDate } from './day.js';
import type { ExerciseId, RowId, SessionId, SetKey, SetKind, Side } from './identity.js';
import type { Line } from './prose.js';
import type { MassUnit } from './quantity.js';

/** A load as figure and unit, so that a drawing can set them in different sizes. */
export interface LoadText {
  /** `16`, `2 × 16`, `35`; empty for the body alone. */
  readonly figure: string;
  /** `kg`, `lb`; empty for the body alone. */
  readonly unit: string;
  /** What makes it, where that is not plain: `bar + 2 × 10 kg`. */
  readonly pieces: string;
  /** The same mass in another unit, where a phone shows both: of one, where it is a pair. */
  readonly other?: { readonly figure: string; readonly unit: MassUnit };
}

export interface BookletSet {
  readonly key: SetKey;
  readonly kind: SetKind;
  /** 1-based within the kind. */
  readonly round: number;
  readonly side?: Side;
  readonly load?: LoadText;
  /** `8`, `30 s`, `20 m`. */
  readonly amount: string;
  /** `16 kg × 8`. */
  readonly text: string;
  /** As read aloud: `16 kilograms, 8 reps`. */
  readonly spoken: string;
}

/** A sentence for one week; a drawing that shows several weeks says equal ones once. */
export interface WeekText {
  readonly week: number;
  readonly text: string;
}

/** One line of a warm-up or cool-down. */
export interface Drill {
  /** Of the exercise, where it is one; empty for a line of plain words. */
  readonly name: string;
  /** Its page. */
  readonly exercise?: ExerciseId;
  /** `8 reps each side`, or the whole line. */
  readonly text: string;
}

/** A feeler set's table. */
export interface ChoiceRow {
  readonly felt: string;
  /** The numbers of good ones left that `felt` says, both included; editions issued before it was kept have none. */
  readonly left?: { readonly min: number; readonly max: number };
  readonly use: string;
}

/** One exercise in one week's session. */
export interface Cell {
  readonly week: number;
  readonly exercise: ExerciseId;
  /** Set when this week's version is not the row's usual one: its name. */
  readonly version: string;
  readonly sets: readonly BookletSet[];
  /** Stacked short lines for the table with a column a week: `16 kg`, `×8`. */
  readonly stack: readonly string[];
  /** Number of tally strokes for each side; one-sided work has two rows, weaker side first. */
  readonly tally: readonly { readonly label: string; readonly strokes: number }[];
  /** `16 × 8, 3 sets`, for a table cell read aloud. */
  readonly spoken: string;
  /** `Leave 2 in reserve.`, `You can still talk in whole sentences.` */
  readonly effort: string;
  /** `slow on the way down`; empty when normal. */
  readonly tempo: string;
  /** What else is to be known of a set, in whole sentences: `Start each rep from a stop.` */
  readonly how: readonly string[];
  /** What must have been done, and what to do otherwise. */
  readonly gate?: { readonly needs: string; readonly otherwise: string; readonly otherwiseStack: readonly string[] };
  /** `First set: try the 20 kg for 4.` */
  readonly trial?: string;
  /** The trial for the table with a column a week: `20 kg`, `×4`; led by its version's name where that is not the row's. */
  readonly trialStack?: readonly string[];
  /** `note` stands before a line to write on: `How many more, week 1:`; absent where nothing is to be noted. */
  readonly choose?: { readonly intro: string; readonly rows: readonly ChoiceRow[]; readonly note?: string };
  /**
   * `Test: stop with 2 good ones left.` Each note stands before a line to write on. `stack` is for a column that has
   * work of its own beside it, led by `Test`; empty where the test is all there is.
   */
  readonly test?: { readonly says: string; readonly notes: readonly string[]; readonly stack: readonly string[] };
  /** Why this number, for the client; plain sentences. */
  readonly why: readonly string[];
}

/** One line of a session over the weeks. */
export interface SessionRow {
  readonly row: RowId;
  readonly exercise: ExerciseId;
  readonly name: string;
  /** `Rest 90 seconds.` */
  readonly rest: string;
  /** Empty, or how a circuit or a clock leads it: `Turn about: row, then press.`, `Start a set every minute.` */
  readonly group: string;
  /** `Left first, then right.`; empty for both together. */
  readonly sides: string;
  /** In order of week; a week without this row has no cell. */
  readonly cells: readonly Cell[];
  readonly cues: readonly Line[];
  readonly stop: readonly Line[];
  readonly easier: readonly EasierText[];
}

export interface EasierText {
  readonly name: string;
  readonly exercise?: ExerciseId;
  /** `when depth hurts` */
  readonly when: string;
  /** `12 kg × 8` for each week, in order; empty where it is not planned. */
  readonly doses: readonly { readonly week: number; readonly text: string }[];
}

export interface WeekHead {
  readonly week: number;
  readonly date: IsoDate;
  /** `Mon 4 Jan` */
  readonly dateText: string;
  readonly easy: boolean;
  readonly minutes: number;
}

/** What stands first of all: what a new edition changes; that the booklet has ended; or that it was withdrawn. */
export interface Notice {
  readonly kind: 'changes' | 'ended' | 'withdrawn';
  /** `Edition 2, 8 January 2027`. */
  readonly title: string;
  readonly lines: readonly string[];
}

export interface CoverPart {
  readonly kind: 'cover';
  /** Absent in a first edition. */
  readonly notice?: Notice;
  readonly client: string;
  readonly title: string;
  readonly programme: string;
  readonly dates: string;
  readonly edition: string;
  readonly studio: string;
  readonly coach: string;
  readonly weeks: readonly WeekHead[];
  readonly notMedical: string;
}
export interface HowToPart {
  readonly kind: 'how-to';
  readonly title: string;
  readonly paragraphs: readonly Line[];
  /** `Stroke = done.` … */
  readonly key: readonly { readonly mark: 'to do' | 'done' | 'easier' | 'left out' | 'extra'; readonly text: string }[];
}
export interface SafetyPart {
  readonly kind: 'safety';
  readonly title: string;
  readonly emergencyTitle: string;
  readonly emergency: readonly Line[];
  readonly call: string;
  readonly painTitle: string;
  readonly pain: readonly { readonly degree: string; readonly text: string }[];
  readonly paragraphs: readonly Line[];
}
export interface CalendarPart {
  readonly kind: 'calendar';
  readonly title: string;
  readonly weeks: readonly {
    readonly week: number;
    readonly label: string;
    readonly easy: boolean;
    /** Said in place of sessions where a week has none. */
    readonly empty: string;
    readonly sessions: readonly {
      readonly session: SessionId;
      readonly name: string;
      readonly date: IsoDate;
      readonly dateText: string;
      readonly occurrence: number;
      /** `Test`, where something is tested in it. */
      readonly test?: string;
    }[];
  }[];
  /** What holds of all the weeks: `Ask before you train on after 24 January 2027.` */
  readonly notes: readonly Line[];
}
export interface SessionPart {
  readonly kind: 'session';
  readonly id: SessionId;
  readonly title: string;
  readonly minutes: string;
  /** Said at every session. */
  readonly safety: string;
  readonly workOnThis?: Line;
  /** What to know of this session. */
  readonly notes: readonly WeekText[];
  /** What counts as the session done on a bad day: `1 set of the goblet squat. That counts.` */
  readonly short: readonly WeekText[];
  readonly warmUp: readonly Drill[];
  readonly coolDown: readonly Drill[];
  readonly weeks: readonly WeekHead[];
  readonly rows: readonly SessionRow[];
}
export interface ExercisePart {
  readonly kind: 'exercise';
  readonly id: ExerciseId;
  readonly title: string;
  readonly description: readonly Line[];
  readonly sections: readonly {
    readonly name:
      | 'parts'
      | 'set-up'
      | 'pick up'
      | 'put down'
      | 'cues'
      | 'breath'
      | 'faults'
      | 'easier'
      | 'harder'
      | 'film'
      | 'partner';
    readonly title: string;
    /** `exercise` is set where the lead names one that has its own page here. */
    readonly lines: readonly { readonly lead: Line; readonly text: Line; readonly exercise?: ExerciseId }[];
  }[];
  readonly stopTitle: string;
  readonly stop: readonly Line[];
  /**
   * Why its figures are what they are, three at most, what changes the work first; every session it stands in together.
   * `lead` is `Session A, weeks 2 and 3`, empty where it holds throughout. Absent where nothing is to be said.
   */
  readonly why?: readonly { readonly lead: string; readonly text: string }[];
}
/** One exercise as whoever stands beside the client follows it. */
export interface Watched {
  readonly exercise: ExerciseId;
  readonly name: string;
  /** `Count the good reps aloud.` */
  readonly count: readonly string[];
  readonly watch: readonly Line[];
  readonly faults: readonly { readonly see: Line; readonly say: Line }[];
  readonly stop: readonly Line[];
}
/**
 * For the partner, to be handed over: it counts as public. First names, exercises and the library's own words; no load, no
 * figure, no caution, no date.
 */
export interface PartnerPart {
  readonly kind: 'partner';
  readonly title: string;
  readonly paragraphs: readonly Line[];
  readonly emergencyTitle: string;
  readonly emergency: readonly Line[];
  readonly call: string;
  readonly stopTitle: string;
  readonly sessions: readonly { readonly title: string; readonly exercises: readonly ExerciseId[] }[];
  /** Every one of them once, in the order first met. */
  readonly watched: readonly Watched[];
}
export interface RecordPart {
  readonly kind: 'record';
  readonly title: string;
  readonly lines: number;
  readonly paragraphs: readonly Line[];
}

export type Part =
  | CoverPart
  | HowToPart
  | SafetyPart
  | CalendarPart
  | SessionPart
  | ExercisePart
  | PartnerPart
  | RecordPart;

export interface Booklet {
  readonly schema: 1;
  /** BCP 47. */
  readonly language: string;
  readonly direction: 'ltr' | 'rtl';
  /** BCP 47, of the exercises: their names and their authors' lines. Absent where that is the booklet's own. */
  readonly exerciseLanguage?: string;
  readonly largePrint: boolean;
  readonly paper: 'a4' | 'letter';
  /** For the document's own information: title, and the studio as author. */
  readonly title: string;
  readonly author: string;
  /** Local date of the build, for reproducible documents. */
  readonly date: IsoDate;
  /** Headings of tables and controls in the reader's language, by name. */
  readonly labels: Readonly<Record<BookletLabel, string>>;
  readonly parts: readonly Part[];
}

export type BookletLabel =
  | 'week'
  | 'session'
  | 'exercise'
  | 'set'
  | 'of'
  | 'page'
  | 'stop'
  | 'easier'
  | 'why'
  | 'otherwise'
  | 'first-set'
  | 'needs'
  | 'easy-week'
  | 'done'
  | 'left'
  | 'right'
  | 'contents'
  | 'warm-up'
  | 'cool-down'
  | 'reserve'
  | 'rest'
  | 'you-see'
  | 'say'
  | 'if-it-felt'
  | 'use'
  | 'whole-exercise'
  | 'whole-week'
  | 'next'
  | 'previous'
  | 'notes'
  | 'test'
  | 'bad-day';

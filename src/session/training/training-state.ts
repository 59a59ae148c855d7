/**
 * What is known of a session in hand that is no mark: which screen is open, what was chosen for today, since when a set
 * is under way. It is kept beside the marks, so that a phone that died opens where it was left; lost, it costs a tap.
 */
import type { Moment } from '../../model/training.js';

const VIEWS = [
  'home',
  'today',
  'less',
  'training',
  'different',
  'easier',
  'pain',
  'finished',
  'send',
  'this phone',
] as const;
export type View = (typeof VIEWS)[number];

const HOWS = ['as planned', 'short', 'easier throughout', 'short and easier'] as const;
type How = (typeof HOWS)[number];
type Chosen = { readonly how: How };
export const isShort = ({ how }: Chosen): boolean => how.startsWith('short');
export const isEased = ({ how }: Chosen): boolean => how.includes('easier');
/** All of it the easier way, as short as it was. */
export const eased = <State extends Chosen>(state: State): State => ({
  ...state,
  how: isShort(state) ? 'short and easier' : 'easier throughout',
});

const WHENS = ['before', 'during', 'after'] as const;

export interface PainSoFar {
  /** Before a session, where it was asked how today is; during it; or when nothing was left of the exercise. */
  readonly when: (typeof WHENS)[number];
  readonly row: string | null;
  readonly sign: string | null;
  /** The emergency list was read and none of it held. */
  readonly none: boolean;
  readonly where: string | null;
  /** `left`, `right` or `both`; `null` where it was not asked, or not yet. */
  readonly side: string | null;
  readonly degree: number | null;
}

export interface TrainingState {
  readonly view: View;
  /** The session in hand; `null` on the way in. */
  readonly occurrence: number | null;
  readonly how: How;
  readonly warmedUp: boolean;
  readonly cooledDown: boolean;
  /** The client ended it where it stood. */
  readonly stopped: boolean;
  readonly inHand: { readonly key: string; readonly began: Moment } | null;
  /** A clock of signals, by the first row of its group. */
  readonly clock: { readonly row: string; readonly began: Moment } | null;
  /** When the latest set was marked, by this clock, to the millisecond. */
  readonly rested: { readonly key: string; readonly began: Moment } | null;
  readonly longer: { readonly after: string; readonly seconds: number } | null;
  /** The easier way chosen today, by row: its place in the plan's list; -1 for the planned one. */
  readonly easier: Readonly<Record<string, number>>;
  /** Rows not done today, by row: what they did was worse the next morning. */
  readonly leave: readonly string[];
  /** Questions put and passed by, as `row/side` or `row/side/feeler`. */
  readonly passedBy: readonly string[];
  /** Sets beyond the plan that were asked for and are still to be done, by key. */
  readonly more: readonly string[];
  readonly different: string | null;
  readonly pain: PainSoFar | null;
}

export const openTraining = (): TrainingState => ({
  view: 'home',
  occurrence: null,
  how: 'as planned',
  warmedUp: false,
  cooledDown: false,
  stopped: false,
  inHand: null,
  clock: null,
  rested: null,
  longer: null,
  easier: {},
  leave: [],
  passedBy: [],
  more: [],
  different: null,
  pain: null,
});

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const textOr = (value: unknown): string | null => (typeof value === 'string' ? value : null);
const numberOr = (value: unknown): number | null =>
  typeof value === 'number' && Number.isFinite(value) ? value : null;

/** What was kept, as far as it can be read; anything else begins anew. */
export function readTrainingState(kept: unknown): TrainingState {
  const fresh = openTraining();
  if (!isRecord(kept)) return fresh;
  const view = VIEWS.find((one) => one === kept.view);
  const how = HOWS.find((one) => one === kept.how);
  if (view === undefined || how === undefined) return fresh;
  const easier = isRecord(kept.easier) ? kept.easier : {};
  return {
    view,
    how,
    occurrence: numberOr(kept.occurrence),
    warmedUp: kept.warmedUp === true,
    cooledDown: kept.cooledDown === true,
    stopped: kept.stopped === true,
    inHand: readBegun(kept.inHand),
    clock: readClock(kept.clock),
    rested: readBegun(kept.rested),
    longer: readLonger(kept.longer),
    easier: Object.fromEntries(
      Object.entries(easier).flatMap(([row, place]) => (typeof place === 'number' ? [[row, place]] : [])),
    ),
    leave: textsIn(kept.leave),
    passedBy: textsIn(kept.passedBy),
    more: textsIn(kept.more),
    different: textOr(kept.different),
    pain: readPain(kept.pain),
  };
}

const textsIn = (value: unknown): readonly string[] =>
  Array.isArray(value) ? value.filter((one) => typeof one === 'string') : [];

function readBegun(kept: unknown): TrainingState['inHand'] {
  if (!isRecord(kept)) return null;
  const key = textOr(kept.key);
  const began = numberOr(kept.began);
  return key === null || began === null ? null : { key, began };
}

function readClock(kept: unknown): TrainingState['clock'] {
  if (!isRecord(kept)) return null;
  const row = textOr(kept.row);
  const began = numberOr(kept.began);
  return row === null || began === null ? null : { row, began };
}

function readLonger(kept: unknown): TrainingState['longer'] {
  if (!isRecord(kept)) return null;
  const after = textOr(kept.after);
  const seconds = numberOr(kept.seconds);
  return after === null || seconds === null ? null : { after, seconds };
}

function readPain(kept: unknown): PainSoFar | null {
  if (!isRecord(kept)) return null;
  return {
    when: WHENS.find((one) => one === kept.when) ?? 'during',
    row: textOr(kept.row),
    sign: textOr(kept.sign),
    none: kept.none === true,
    where: textOr(kept.where),
    side: textOr(kept.side),
    degree: numberOr(kept.degree),
  };
}

/** A session is opened, or taken up again: what was chosen in another does not hold in it. */
export const beginSession = (state: TrainingState, occurrence: number): TrainingState =>
  state.occurrence === occurrence ? { ...state, stopped: false } : { ...openTraining(), occurrence };

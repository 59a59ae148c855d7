/**
 * The sets of one session as they are done today: in order, in the version and with the figures that count, after what was
 * planned again, what was earned, what a feeler set found, and what the client chose.
 */
import type {
  ClientEasier,
  ClientGroup,
  ClientItem,
  ClientPlan,
  ClientSession,
  ClientSet,
  ClientWeek,
} from '../../model/client-plan.js';
import { readSetKey, type SetKey } from '../../model/identity.js';
import type { LogEvent } from '../../model/log.js';
import type { Choice } from '../../model/plan.js';
import type { TempoStep } from '../../model/programme.js';
import type { Reason } from '../../model/reason.js';
import type { Figures, GateAsked } from '../../model/training.js';
import type { ReplannedItem } from '../replan.js';
import { type SteppedSet, stepSession } from '../step-session.js';
import { isEarned, otherwiseAt, withFigures } from './gates.js';
import { feltIn } from './marked-sets.js';
import type { Told } from './told.js';
import type { TrainingState } from './training-state.js';

export interface SetToday {
  readonly stepped: SteppedSet;
  readonly group: ClientGroup;
  readonly item: ClientItem;
  readonly figures: Figures;
  readonly tempo: TempoStep;
  readonly chosen: ClientEasier | null;
  readonly gate?: GateAsked;
  readonly paper?: { readonly set: ClientSet; readonly because: readonly Reason[] };
}

export interface SessionToday {
  readonly week: ClientWeek;
  readonly session: ClientSession;
  /** Sets of the work, in order; what is not done today is not among them. */
  readonly work: readonly SetToday[];
  readonly warmUp: readonly ClientGroup[];
  readonly coolDown: readonly ClientGroup[];
  /** Sets marked beyond the plan. */
  readonly extra: readonly SteppedSet['marked'][];
}

export function sessionToday(
  told: Told,
  state: TrainingState,
  marks: readonly LogEvent[],
  occurrence: number,
): SessionToday | null {
  const { plan } = told;
  const week = plan.weeks.find(({ sessions }) => sessions.some((one) => one.occurrence === occurrence));
  const session = week?.sessions.find((one) => one.occurrence === occurrence);
  if (week === undefined || session === undefined) return null;
  const stepped = stepSession(plan, marks, new Date(told.now)).sessions.find((one) => one.occurrence === occurrence);
  if (stepped === undefined) return null;
  const work = stepped.sets.flatMap((one): readonly SetToday[] => {
    const found = placeOf(session, one.key);
    if (found === null || isAround(found.group)) return [];
    if (state.how === 'short' && one.marked === null && !session.short.sets.includes(one.key)) return [];
    const today = setToday({ told, state, marks, week, session, ...found }, one);
    return today === null ? [] : [today];
  });
  return {
    week,
    session,
    work,
    warmUp: session.groups.filter(({ kind }) => kind === 'warm-up'),
    coolDown: session.groups.filter(({ kind }) => kind === 'cool-down'),
    extra: stepped.extra,
  };
}

export const isAround = ({ kind }: Pick<ClientGroup, 'kind'>): boolean => kind === 'warm-up' || kind === 'cool-down';

function placeOf(session: ClientSession, key: SetKey): { group: ClientGroup; item: ClientItem } | null {
  for (const group of session.groups) {
    const item = group.items.find(({ sets }) => sets.some((set) => set.key === key));
    if (item !== undefined) return { group, item };
  }
  return null;
}

interface At {
  readonly told: Told;
  readonly state: TrainingState;
  readonly marks: readonly LogEvent[];
  readonly week: ClientWeek;
  readonly session: ClientSession;
  readonly group: ClientGroup;
  readonly item: ClientItem;
}

/** `null` where it is not done today. */
function setToday(at: At, stepped: SteppedSet): SetToday | null {
  const { group, item } = at;
  const chosen = chosenEasier(at.state, item);
  const gate = gateOf(at, stepped.set);
  const planned = plannedFigures(at, stepped, gate);
  // What is marked stands in the tally even where it would not be asked today.
  if (planned === null && stepped.marked === null) return null;
  const figures = planned?.figures ?? { exercise: stepped.exercise, set: stepped.set };
  const base = {
    stepped,
    group,
    item,
    tempo: planned?.tempo ?? item.tempo,
    chosen,
    ...(gate === undefined ? {} : { gate }),
    ...(planned?.paper === undefined ? {} : { paper: planned.paper }),
  };
  if (chosen?.set === undefined) return { ...base, figures };
  // The easier way is work alone: what leads to the planned load, or tries another, is not part of it.
  const leads = stepped.set.kind !== 'work' && item.sets.some(({ kind }) => kind === 'work');
  if (leads && stepped.marked === null) return null;
  const set = withFigures(stepped.set, chosen.set);
  return { ...base, figures: { exercise: exerciseOf(chosen, item), set, easier: chosen } };
}

/** An easier way within an exercise is called `exercise#way`: it is still that exercise. */
export const exerciseOf = (easier: ClientEasier, item: ClientItem): string =>
  easier.exercise?.split('#')[0] ?? item.exercise;

/** The client's choice for that row; else, where all of it is done the easier way, the first that has figures. */
export function chosenEasier(state: TrainingState, item: ClientItem): ClientEasier | null {
  const place = state.easier[item.row];
  if (place !== undefined) return item.easier[place] ?? null;
  if (state.how !== 'easier throughout') return null;
  return item.easier.find(({ set }) => set !== undefined) ?? null;
}

interface Planned {
  readonly figures: Figures;
  readonly tempo: TempoStep;
  readonly paper?: NonNullable<SetToday['paper']>;
}

function plannedFigures(at: At, { set, exercise }: SteppedSet, gate: GateAsked | undefined): Planned | null {
  const { item, told, session } = at;
  const again = told.replanned.find((one) => one.occurrence === session.occurrence && one.row === item.row);
  if (again !== undefined) return replannedFigures(again, set, item);
  if (gate !== undefined && !gate.earned) {
    const instead = otherwiseAt(gate.otherwise, nthOf(item, set));
    if (instead === null) return null;
    return { figures: { exercise: instead.exercise, set: withFigures(set, instead) }, tempo: instead.tempo };
  }
  const choice = set.kind === 'work' ? foundBy(at) : null;
  if (choice === null) return { figures: { exercise, set }, tempo: item.tempo };
  return { figures: { exercise: choice.exercise, set: withFigures(set, choice) }, tempo: item.tempo };
}

function replannedFigures(again: ReplannedItem, printed: ClientSet, item: ClientItem): Planned | null {
  const own = again.sets.find(({ key }) => key === printed.key);
  if (own === undefined)
    return { figures: { exercise: printed.exercise ?? item.exercise, set: printed }, tempo: item.tempo };
  if (own.set === null) return null;
  const paper = { set: printed, because: again.because };
  const exercise = own.set.exercise ?? again.exercise;
  return { figures: { exercise, set: own.set }, tempo: again.tempo, paper };
}

/** The place of a set among those of its kind and side, from 0. */
const nthOf = ({ sets }: ClientItem, { key, kind, side }: ClientSet): number =>
  sets.filter((one) => one.kind === kind && one.side === side).findIndex((one) => one.key === key);

function gateOf({ told, marks, session, item }: At, set: ClientSet): GateAsked | undefined {
  const { gate } = set;
  if (gate === undefined) return undefined;
  // What is done otherwise is written on the first set of those it stands for.
  const otherwise = set.otherwise ?? item.sets.find((one) => one.otherwise !== undefined)?.otherwise ?? [];
  return { earned: isEarned(told.plan, session.id, item.row, gate.needs, marks), otherwise };
}

/** The line of a feeler set's table that its answer leads to, of this session or of the one it was made in. */
function foundBy({ told, marks, session, item }: At): Choice | null {
  const table = item.sets.find(({ choose }) => choose !== undefined)?.choose;
  if (table === undefined) return null;
  const felt = feltOf(told.plan, marks, session, item.row);
  if (felt === null) return null;
  return table.find(({ left }) => felt >= left.min && felt <= left.max) ?? null;
}

function feltOf(plan: ClientPlan, marks: readonly LogEvent[], session: ClientSession, row: string): number | null {
  const own = plan.weeks
    .flatMap(({ sessions }) => sessions)
    .filter(({ id, occurrence }) => id === session.id && occurrence <= session.occurrence)
    .reverse();
  for (const { occurrence } of own) {
    const felt = feltIn(marks, plan.block, occurrence, row);
    if (felt !== null) return felt;
  }
  return null;
}

/** Sets of one kind and side of a row, in order: what a set is counted among. */
export const likeIt = (work: readonly SetToday[], { stepped }: SetToday): readonly SetToday[] =>
  work.filter((one) => {
    const [a, b] = [one.stepped, stepped];
    return a.row === b.row && a.set.kind === b.set.kind && a.set.side === b.set.side;
  });

export const sideOf = (key: string): 'left' | 'right' | 'both' => readSetKey(key)?.side ?? 'both';

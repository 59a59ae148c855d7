/**
 * The sets of one session as they are done today: in order, in the version and with the figures that count, after what was
 * planned again, what was earned, what a feeler set found, and what the client chose.
 */
import type {
  ClientEasier,
  ClientGroup,
  ClientItem,
  ClientSession,
  ClientSet,
  ClientWeek,
} from '../../model/client-plan.js';
import { readSetKey, type SetKey } from '../../model/identity.js';
import type { LogEvent } from '../../model/log.js';
import type { TempoStep } from '../../model/programme.js';
import type { Figures, GateAsked } from '../../model/training.js';
import type { ReplannedItem } from '../replan.js';
import type { SteppedSession, SteppedSet } from '../step-session.js';
import { exerciseOf, firstWay } from './chain.js';
import { withExtras } from './extra-sets.js';
import { foundBy } from './feeler-sets.js';
import { gateOf, otherwiseAt } from './gates.js';
import { type KeptOut, keptOut, tooSore } from './kept-out.js';
import { type FirstWord, firstWords } from './marked-sets.js';
import type { SetToday } from './set-today.js';
import type { Told } from './told.js';
import { isEased, isShort, type TrainingState } from './training-state.js';
import { withFigures } from './with-figures.js';

export interface SessionToday {
  readonly week: ClientWeek;
  readonly session: ClientSession;
  /** Sets of the work, in order, those beyond the plan after the others of their row; what is not done today is not among them. */
  readonly work: readonly SetToday[];
  readonly warmUp: readonly ClientGroup[];
  readonly coolDown: readonly ClientGroup[];
  /** Of its work, what waits for the coach: none of it is in `work` unless it is marked. */
  readonly keptOut: readonly KeptOut[];
  /** Exercises that are no easier way of anything now. */
  readonly sore: ReadonlySet<string>;
}

/** `stepped` is that session as it stands. */
export function sessionToday(
  told: Told,
  state: TrainingState,
  marks: readonly LogEvent[],
  stepped: SteppedSession,
): SessionToday | null {
  const { plan } = told;
  const { occurrence } = stepped;
  const week = plan.weeks.find(({ sessions }) => sessions.some((one) => one.occurrence === occurrence));
  const session = week?.sessions.find((one) => one.occurrence === occurrence);
  if (week === undefined || session === undefined) return null;
  const first = firstWords(marks);
  const gates = new Map(
    session.groups.flatMap(({ items }) => items.map((item) => [item, gateOf(plan, session, item, marks)] as const)),
  );
  const kept = keptOut(told, marks, session);
  const sore = tooSore(told, marks);
  const left = new Set<string>([...state.leave, ...kept.map(({ row }) => row)]);
  const planned = stepped.sets.flatMap((one): readonly SetToday[] => {
    const found = placeOf(session, one.key);
    if (found === null || isAround(found.group)) return [];
    if (isShort(state) && one.marked === null && !session.short.sets.includes(one.key)) return [];
    if (one.marked === null && left.has(found.item.row)) return [];
    const at = { told, state, marks, session, sore, gate: gates.get(found.item), ...found };
    const today = setToday(at, one, first.get(one.key) ?? null);
    return today === null ? [] : [today];
  });
  return {
    week,
    session,
    work: withExtras(planned, stepped.extra, state.more, first),
    warmUp: session.groups.filter(({ kind }) => kind === 'warm-up'),
    coolDown: session.groups.filter(({ kind }) => kind === 'cool-down'),
    keptOut: kept,
    sore,
  };
}

const isAround = ({ kind }: Pick<ClientGroup, 'kind'>): boolean => kind === 'warm-up' || kind === 'cool-down';
export const isWork = (group: Pick<ClientGroup, 'kind'>): boolean => !isAround(group);

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
  readonly session: ClientSession;
  readonly sore: ReadonlySet<string>;
  readonly group: ClientGroup;
  readonly item: ClientItem;
  readonly gate: GateAsked | undefined;
}

/** `null` where it is not done today. */
function setToday(at: At, stepped: SteppedSet, first: FirstWord | null): SetToday | null {
  const { group, item, told, session } = at;
  const chosen = chosenEasier(at.state, item, at.sore);
  const again = told.replanned.find((one) => one.occurrence === session.occurrence && one.row === item.row);
  // What is planned again has its gates behind it.
  const gate = again === undefined ? at.gate : undefined;
  const planned = again === undefined ? plannedFigures(at, stepped, gate) : replannedFigures(again, stepped.set, item);
  // What is marked stands in the tally even where it would not be asked today.
  if (planned === null && stepped.marked === null) return null;
  const figures = planned?.figures ?? { exercise: stepped.exercise, set: stepped.set };
  const base = { stepped, first, group, item, tempo: planned?.tempo ?? item.tempo, chosen };
  if (chosen === null) {
    const asked = gate === undefined ? {} : { gate };
    return { ...base, ...asked, figures, ...(planned?.paper === undefined ? {} : { paper: planned.paper }) };
  }
  const warming = stepped.set.kind === 'warm-up' ? easedWarmUp(stepped.set, chosen, item) : null;
  if (warming !== null) return { ...base, figures: { ...warming, easier: chosen } };
  // The easier way is work alone: what leads to the planned load, or tries another, is not part of it.
  const leads = stepped.set.kind !== 'work' && item.sets.some(({ kind }) => kind === 'work');
  if (leads && stepped.marked === null) return null;
  const set = chosen.set === undefined ? figures.set : withFigures(stepped.set, chosen.set);
  return { ...base, figures: { exercise: exerciseOf(chosen, item), set, easier: chosen } };
}

/** The lighter set leads to the easier way as well, with its own load, where that is lighter than the work of it. */
function easedWarmUp(set: ClientSet, chosen: ClientEasier, item: ClientItem): Pick<Figures, 'exercise' | 'set'> | null {
  const [own, work] = [set.load, chosen.set?.load];
  const lighter = own?.mode === work?.mode && (own?.grams ?? 0) < (work?.grams ?? 0);
  return lighter ? { exercise: exerciseOf(chosen, item), set } : null;
}

/** The client's choice for that row; else, where all of it is done the easier way, the first that has figures. */
function chosenEasier(state: TrainingState, item: ClientItem, sore: ReadonlySet<string>): ClientEasier | null {
  const place = state.easier[item.row] ?? (isEased(state) ? firstWay(item, sore) : -1);
  return item.easier[place] ?? null;
}

interface Planned {
  readonly figures: Figures;
  readonly tempo: TempoStep;
  readonly paper?: NonNullable<SetToday['paper']>;
}

function plannedFigures(at: At, { set, exercise }: SteppedSet, gate: GateAsked | undefined): Planned | null {
  const { item, told, session, marks } = at;
  if (gate !== undefined && !gate.earned && set.kind === 'work') {
    const instead = otherwiseAt(gate.otherwise, nthOf(item, set));
    if (instead === null) return null;
    return { figures: { exercise: instead.exercise, set: withFigures(set, instead) }, tempo: instead.tempo };
  }
  const choice = set.kind === 'work' ? foundBy(told.plan, session, item, marks) : null;
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

/** Set k of n of its row, kind and side; one beyond the plan is counted after those of it, and changes none of their n. */
export function placeAmong(work: readonly SetToday[], set: SetToday): { readonly number: number; readonly of: number } {
  const { stepped, extra } = set;
  const like = work.filter((one) => {
    const [a, b] = [one.stepped, stepped];
    return a.row === b.row && a.set.kind === b.set.kind && a.set.side === b.set.side;
  });
  const number = like.indexOf(set) + 1;
  return { number, of: extra === true ? number : like.filter((one) => one.extra !== true).length };
}

export const sideOf = (key: string): 'left' | 'right' | 'both' => readSetKey(key)?.side ?? 'both';

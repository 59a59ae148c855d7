/**
 * The walk of rungs once more, written from the definition page alone; nothing here comes from the engine. It reads a
 * ladder as `plan.json` lists it and says what must be done in each session.
 */

export interface LadderJson {
  readonly rungs: readonly { readonly stage: number }[];
  readonly start: number;
  readonly earned: number;
  readonly gates: boolean;
  readonly occurrences: readonly {
    readonly week: number;
    readonly easy: boolean;
    readonly sets: number;
    readonly held?: unknown;
  }[];
  readonly rules: { readonly earned: number; readonly weeks: number; readonly easyDown: number };
}

export interface RungStep {
  readonly week: number;
  readonly easy: boolean;
  readonly rung: number;
  readonly sets: number;
  /** Occurrences that count at the rung, this one included. */
  readonly earned: number;
  readonly needs?: { readonly rung: number; readonly weeks: readonly number[] };
  readonly otherwise?: { readonly rung: number; readonly sets: number };
  readonly asked: readonly { readonly rung: number; readonly refusedBy?: string }[];
  /** Earned before it, and no rung above. */
  readonly top: boolean;
}

interface State {
  rung: number;
  /** Weeks of every occurrence that counts at the rung; `0` for one before the block. */
  counted: number[];
  gateUsed: boolean;
  lastSets: number | undefined;
}

export function walkLadder(ladder: LadderJson): RungStep[] {
  const state: State = { rung: ladder.start, counted: beforeBlock(ladder), gateUsed: false, lastSets: undefined };
  const steps: RungStep[] = [];
  let otherwise: RungStep[] | undefined;
  ladder.occurrences.forEach((_, index) => {
    const before: State = { ...state, counted: [...state.counted] };
    const step = takeOccurrence(ladder, state, index);
    if (step.needs !== undefined) otherwise = walkBarred(ladder, before, index);
    const other = otherwise?.shift();
    steps.push(other === undefined ? step : { ...step, otherwise: { rung: other.rung, sets: other.sets } });
  });
  return steps;
}

const beforeBlock = ({ earned }: LadderJson): number[] => Array.from({ length: earned }, () => 0);

function walkBarred(ladder: LadderJson, from: State, index: number): RungStep[] {
  const barred = { ...ladder, gates: false };
  const state: State = { ...from, counted: [...from.counted] };
  return ladder.occurrences.slice(index).map((_, more) => takeOccurrence(barred, state, index + more));
}

function takeOccurrence(ladder: LadderJson, state: State, index: number): RungStep {
  const occurrence = ladder.occurrences[index];
  if (occurrence === undefined) throw new Error(`no occurrence ${index}`);
  const { week, easy, sets, held } = occurrence;
  const needed = ladder.rules.earned;
  const countOf = () => Math.min(needed, state.counted.length);
  if (easy) return { week, easy, rung: easyRung(ladder, state, sets), sets, earned: countOf(), asked: [], top: false };
  const asked = rungsAbove(ladder, state.rung).map((to) => {
    const refusedBy = whyRefused(ladder, state, to, held !== undefined);
    return { rung: to, ...(refusedBy === undefined ? {} : { refusedBy }) };
  });
  const open = asked.filter((one) => !('refusedBy' in one)).map((one) => one.rung);
  const from = state.rung;
  const top = countOf() >= needed && asked.length === 0;
  const isGate = open.length > 0 && stageOf(ladder, Math.max(...open)) !== stageOf(ladder, from);
  const lastWeeks = needed === 0 ? [] : state.counted.slice(-needed);
  const needs = { rung: from, weeks: [...new Set(lastWeeks.filter((one) => one > 0))] };
  if (open.length > 0) {
    state.rung = Math.max(...open);
    state.counted = [];
  }
  if (isGate) state.gateUsed = true;
  if (held === undefined) state.counted.push(week);
  state.lastSets = sets;
  return { week, easy, rung: state.rung, sets, earned: countOf(), ...(isGate ? { needs } : {}), asked, top };
}

const stageOf = (ladder: LadderJson, rung: number): number => ladder.rungs[rung]?.stage ?? Number.NaN;

/** The next rung and, where it is another one, the first of the next stage. */
function rungsAbove(ladder: LadderJson, rung: number): number[] {
  const above = ladder.rungs.flatMap((_, index) => (index > rung ? [index] : []));
  const next = above.slice(0, 1);
  const stage = above.find((index) => stageOf(ladder, index) !== stageOf(ladder, rung));
  return stage === undefined || next.includes(stage) ? next : [...next, stage];
}

/** The first that refuses: held, new stage, one gate, one at a time, earned, in different weeks. */
function whyRefused(ladder: LadderJson, state: State, to: number, held: boolean): string | undefined {
  const isNew = stageOf(ladder, to) !== stageOf(ladder, state.rung);
  if (held) return 'ladder-held';
  if (isNew && !ladder.gates) return 'ladder-new-stage';
  if (isNew && state.gateUsed) return 'ladder-gate-once';
  if (to !== state.rung + 1) return 'ladder-one-at-a-time';
  if (state.counted.length < ladder.rules.earned) return 'ladder-earned';
  const before = state.counted.filter((one) => one === 0).length;
  const weeks = before + new Set(state.counted.filter((one) => one > 0)).size;
  return isNew && weeks < ladder.rules.weeks ? 'ladder-weeks' : undefined;
}

/** The last rung worked on; lower within its stage where the sets could not fall. */
function easyRung(ladder: LadderJson, { rung, lastSets }: State, sets: number): number {
  if (lastSets === undefined || sets < lastSets) return rung;
  const first = ladder.rungs.findIndex((one) => one.stage === stageOf(ladder, rung));
  return Math.max(first, rung - ladder.rules.easyDown);
}

/**
 * The walk of one strand, a second time: written from the definition of the walk alone, slow and plain, without a
 * look at the engine. `compare.test.ts` sets the two side by side; `audit.ts` walks every strand of a plan with it.
 *
 * Readings of points on which the definition is silent (C1 to C7 stand in `capacity.ts`):
 *  1 "The tested load" is the load the walk starts at. A fall is rule 7 taking a lower load or an easier version. Back
 *    up goes no higher than that load, and is over once it is reached, or a harder version is.
 *  2 Back up asks for the bottom at asked − 0.2, even where that is just under the floor: rule 6 then decides.
 *  3 A step from no external load to any is a big one.
 *  4 A trial open with the week's trial already done: nothing else is stepped, the row stays. A trial that cannot be
 *    done (one set, margin gone) is no step, so slower and harder come into question.
 *  5 A trial stays open until a gate is used.
 *  6 The harder version is the next one in the chain, at the heaviest of its loads not above the held one, else at
 *    its lightest, at normal tempo; where loads say nothing, at the same load or not at all.
 *  7 Tempi are used up when the row's last tempo is the one in use.
 *  8 Held: every step is barred (trials too), and the cap on reps holds in every rule, easy weeks and rule 7 included.
 *  9 Greatest is moved by every occurrence's work set, easy weeks and rule 7 included, not by trial sets.
 * 10 Rule 7 keeps the tempo at lower loads of the same version; an easier version is taken at normal tempo, at loads
 *    not above the held one, reps in the range, by the same nearness; if that one gives nothing, the next easier.
 *    Where loads say nothing, the held load alone is looked at. One rep at least. All that must leave the floor.
 * 11 An easy week changes nothing the walk goes on from but the greatest. Before any work its cap is the top, and
 *    `k` is not compared. `k` could not fall: the easy occurrence has as many sets as the last work occurrence.
 * 12 At the top by rule 6's last resort, without the asked reserve: neither counts nor breaks (a changed option: 0).
 * 13 `otherwise` bars back-ups and trials too; if it comes to nothing that can be done, so does the walk.
 * 14 Only rule 7 is recorded as relaxed.
 * 15 Harder version asks for earned twice even with a trial open.
 * 16 A gate needs the last trial of what it rises to, where there was one; else the top of the range at what it leaves.
 */
import { external, findLoad, loadsOf, loadsSayNothing, repsToFailure, resisted } from './capacity.js';
import { type OccurrenceJson, type Option, type StrandJson, sameOption } from './strand-json.js';

export type Rule =
  | 'stay'
  | 'back-up'
  | 'small-step'
  | 'big-step'
  | 'trial'
  | 'slower'
  | 'harder-version'
  | 'harder-trial'
  | 'fewer-reps'
  | 'lower-load'
  | 'easier-version'
  | 'easy-week';

export interface Set {
  readonly option: Option;
  readonly reps: number;
  readonly reserve: number;
}

export interface State {
  readonly option: Option;
  readonly earned: 0 | 1 | 2;
  readonly gate: 'none' | 'trial open' | 'used';
  /** The week of the last trial. */
  readonly trialWeek: number | null;
  readonly lastTrial: Set | null;
  readonly fallen: boolean;
  readonly greatest: number | null;
  readonly lastWork: { readonly option: Option; readonly reps: number | null; readonly sets: number | null };
}

export interface Step extends Set {
  readonly week: number;
  readonly easy: boolean;
  readonly sets: number;
  readonly rule: Rule;
  readonly trial?: Set;
  /** A rise that must have been earned: at which option, with how many reps. */
  readonly gate?: { readonly needs: { readonly option: Option; readonly reps: number } };
  readonly otherwise?: Set & { readonly sets: number };
  readonly relaxed: boolean;
  readonly earned: 0 | 1 | 2;
}

export type Walk =
  | { readonly kind: 'walked'; readonly steps: readonly Step[] }
  | { readonly kind: 'impossible'; readonly week: number };

interface Move {
  readonly option: Option;
  readonly rule: Rule;
  readonly trial?: Set;
  readonly gated?: true;
}

export function walkStrand(strand: StrandJson): Walk {
  if (strand.start === null || strand.capacity === null) throw new Error('nothing is known: there is no walk');
  const { version, load, tempo, earned } = strand.start;
  const option = { version, load, tempo };
  let state: State = {
    option,
    earned,
    gate: 'none',
    trialWeek: null,
    lastTrial: null,
    fallen: false,
    greatest: strand.greatest,
    lastWork: { option, reps: null, sets: null },
  };
  /** The walk beside this one with every step barred, once a gate has been printed. */
  let barred: State | undefined;
  const steps: Step[] = [];
  for (const occurrence of strand.occurrences) {
    const before = state;
    const done = walkOne(strand, before, occurrence, occurrence.held !== undefined);
    if (done === undefined) return { kind: 'impossible', week: occurrence.week };
    state = done.state;
    if (done.step.gate !== undefined) barred = before;
    if (barred === undefined) {
      steps.push(done.step);
      continue;
    }
    const other = walkOne(strand, barred, occurrence, true);
    if (other === undefined) return { kind: 'impossible', week: occurrence.week };
    barred = other.state;
    const { option: at, reps, reserve, sets } = other.step;
    steps.push({ ...done.step, otherwise: { option: at, reps, reserve, sets } });
  }
  return { kind: 'walked', steps };
}

function walkOne(
  strand: StrandJson,
  before: State,
  occurrence: OccurrenceJson,
  barred: boolean,
): { readonly step: Step; readonly state: State } | undefined {
  return occurrence.easy ? easyWeek(strand, before, occurrence) : workWeek(strand, before, occurrence, barred);
}

function workWeek(strand: StrandJson, before: State, occurrence: OccurrenceJson, barred: boolean) {
  const stay: Move = { option: before.option, rule: 'stay' };
  const move = barred ? stay : nextStep(strand, before, occurrence);
  const inRange = repsInRange(strand, move.option, before, occurrence);
  const fell = inRange === undefined ? rule7(strand, move.option, occurrence) : undefined;
  const set = inRange ?? fell?.set;
  if (set === undefined) return undefined;

  const changed = !sameOption(set.option, before.option);
  const counts = set.reps === strand.top && set.reserve >= occurrence.asked - strand.rules.tolerance;
  const earned = earnedAfter(before.earned, changed, counts);
  const tested = strand.start?.load ?? 0;
  const harder = set.option.version > before.option.version;
  const belowTested = fell !== undefined && fell.rule !== 'fewer-reps' ? true : before.fallen;
  const gated = move.gated === true;
  const state: State = {
    option: set.option,
    earned,
    gate: gated ? 'used' : move.trial !== undefined ? 'trial open' : before.gate,
    trialWeek: move.trial !== undefined ? occurrence.week : before.trialWeek,
    lastTrial: move.trial ?? before.lastTrial,
    fallen: belowTested && !harder && !(set.option.load >= tested),
    greatest: greatestAfter(strand, before.greatest, set, occurrence.week),
    lastWork: { option: set.option, reps: set.reps, sets: occurrence.sets },
  };
  const step: Step = {
    week: occurrence.week,
    easy: false,
    ...set,
    sets: occurrence.sets,
    rule: fell?.rule ?? move.rule,
    ...(move.trial === undefined ? {} : { trial: move.trial }),
    ...(gated ? { gate: { needs: neededFor(strand, before, move.option) } } : {}),
    relaxed: fell !== undefined,
    earned,
  };
  return { step, state };
}

function earnedAfter(before: 0 | 1 | 2, changed: boolean, counts: boolean): 0 | 1 | 2 {
  const from = changed ? 0 : before;
  if (!counts) return from;
  return from === 0 ? 1 : 2;
}

function greatestAfter(strand: StrandJson, before: number | null, set: Set, week: number): number {
  const volume = set.reps * Number(resisted(strand, set.option, week) ?? 0n);
  return before === null || volume > before ? volume : before;
}

/** Reading 16. */
function neededFor(strand: StrandJson, before: State, to: Option): { readonly option: Option; readonly reps: number } {
  const { lastTrial, option } = before;
  if (lastTrial !== null && sameOption(lastTrial.option, to)) return { option: to, reps: lastTrial.reps };
  return { option, reps: strand.top };
}

/** Rule 5. */
function nextStep(strand: StrandJson, state: State, occurrence: OccurrenceJson): Move {
  const { option, earned } = state;
  const { week, floor, asked } = occurrence;
  const held = findLoad(strand, option);
  const loads = loadsOf(strand, option.version);
  const next = held === undefined ? undefined : loads[loads.indexOf(held) + 1];
  const bottom = 10 * strand.bottom;
  const weak = strand.capacity?.weak === true;

  if (held !== undefined && next !== undefined && !loadsSayNothing(strand, option.version, week)) {
    const up: Option = { version: option.version, load: next.grams, tempo: 0 };
    const predicted = repsToFailure(strand, up, week) ?? Number.NEGATIVE_INFINITY;
    const tested = strand.start?.load ?? 0;
    if (state.fallen && option.load < tested && next.grams <= tested) {
      if (predicted >= bottom + asked - strand.rules.tolerance) return { option: up, rule: 'back-up' };
    }
    const isSmall = (external(next) - external(held)) * 1000 <= strand.rules.smallStep * external(held);
    if (isSmall && earned >= (weak ? 2 : 1) && predicted >= bottom + floor) return { option: up, rule: 'small-step' };
    if (!isSmall && (earned === 2 || state.gate === 'trial open')) {
      const move = gateOrTrial(strand, state, occurrence, up, 'big-step', 'trial');
      if (move !== undefined) return move;
    }
  }

  const slower = (): Move | undefined => {
    const to: Option = { ...option, tempo: option.tempo + 1 };
    const predicted = repsToFailure(strand, to, week);
    if (earned < 2 || predicted === undefined || predicted < bottom + floor) return undefined;
    return { option: to, rule: 'slower' };
  };
  const harder = (): Move | undefined => {
    if (earned < 2 || held === undefined) return undefined;
    if (strand.way === 'strength' && option.tempo < strand.tempi.length - 1) return undefined;
    const to = harderOption(strand, option, week);
    return to === undefined ? undefined : gateOrTrial(strand, state, occurrence, to, 'harder-version', 'harder-trial');
  };
  const move = strand.way === 'bodyweight' ? (harder() ?? slower()) : (slower() ?? harder());
  return move ?? { option, rule: 'stay' };
}

function gateOrTrial(
  strand: StrandJson,
  state: State,
  occurrence: OccurrenceJson,
  to: Option,
  rise: Rule,
  attempt: Rule,
): Move | undefined {
  const predicted = repsToFailure(strand, to, occurrence.week);
  if (predicted === undefined || state.gate === 'used') return undefined;
  if (strand.capacity?.weak === false && predicted >= 10 * strand.bottom + occurrence.floor)
    return { option: to, rule: rise, gated: true };
  if (occurrence.sets < 2 || !strand.trials) return undefined;
  if (predicted < occurrence.floor + strand.rules.trialMargin) return undefined;
  if (state.trialWeek === occurrence.week) return { option: state.option, rule: 'stay' };
  const reps = Math.min(strand.top, Math.floor((predicted - occurrence.floor) / 10));
  const trial = { option: to, reps, reserve: predicted - 10 * reps };
  return { option: state.option, rule: attempt, trial };
}

function harderOption(strand: StrandJson, option: Option, week: number): Option | undefined {
  const held = findLoad(strand, option);
  const version = option.version + 1;
  if (held === undefined) return undefined;
  const loads = loadsOf(strand, version);
  const same = loads.filter((load) => external(load) === external(held));
  const below = loads.filter((load) => external(load) <= external(held));
  const load = loadsSayNothing(strand, version, week) ? same[0] : (below.at(-1) ?? loads[0]);
  return load === undefined ? undefined : { version, load: load.grams, tempo: 0 };
}

/** Rule 6. */
function repsInRange(strand: StrandJson, option: Option, state: State, occurrence: OccurrenceJson): Set | undefined {
  const rtf = repsToFailure(strand, option, occurrence.week);
  const r = resisted(strand, option, occurrence.week);
  if (rtf === undefined || r === undefined) return undefined;
  const leavesFloor = (reps: number) => rtf - 10 * reps >= occurrence.floor && reps <= mostHeld(occurrence);
  const inVolume = (reps: number) => {
    if (state.greatest === null) return true;
    const most = Math.max(Math.floor((strand.rules.volume * state.greatest) / 1000), state.greatest + Number(r));
    return reps * Number(r) <= most;
  };
  const found = (reps: number): Set => ({ option, reps, reserve: rtf - 10 * reps });
  for (let reps = strand.top; reps >= strand.bottom; reps -= 1) {
    const asAsked = rtf - 10 * reps >= occurrence.asked - strand.rules.tolerance;
    if (leavesFloor(reps) && asAsked && inVolume(reps)) return found(reps);
  }
  for (let reps = strand.bottom; reps <= strand.top; reps += 1) if (leavesFloor(reps)) return found(reps);
  return undefined;
}

const mostHeld = (occurrence: OccurrenceJson): number => occurrence.held?.maxReps ?? Number.POSITIVE_INFINITY;

interface Fall {
  readonly set: Set;
  readonly rule: 'fewer-reps' | 'lower-load' | 'easier-version';
}

function rule7(strand: StrandJson, option: Option, occurrence: OccurrenceJson): Fall | undefined {
  const held = findLoad(strand, option);
  if (held === undefined) return undefined;
  const sets = (to: Option, from: number, until: number): Set[] => {
    const rtf = repsToFailure(strand, to, occurrence.week);
    const all: Set[] = [];
    if (rtf === undefined) return all;
    for (let reps = Math.max(1, from); reps <= Math.min(until, mostHeld(occurrence)); reps += 1) {
      if (rtf - 10 * reps >= occurrence.floor) all.push({ option: to, reps, reserve: rtf - 10 * reps });
    }
    return all;
  };
  const fewer = sets(option, strand.bottom - 2, strand.bottom - 1);
  const lower = loadsSayNothing(strand, option.version, occurrence.week)
    ? []
    : loadsOf(strand, option.version)
        .filter((load) => external(load) < external(held))
        .flatMap((load) => sets({ ...option, load: load.grams }, strand.bottom, strand.top));
  const best = nearest(strand, [...fewer, ...lower], occurrence.asked);
  if (best !== undefined) return { set: best, rule: best.option.load === option.load ? 'fewer-reps' : 'lower-load' };
  for (let version = option.version - 1; version >= 0; version -= 1) {
    const alike = loadsSayNothing(strand, version, occurrence.week);
    const easier = loadsOf(strand, version)
      .filter((load) => (alike ? external(load) === external(held) : external(load) <= external(held)))
      .flatMap((load) => sets({ version, load: load.grams, tempo: 0 }, strand.bottom, strand.top));
    const set = nearest(strand, easier, occurrence.asked);
    if (set !== undefined) return { set, rule: 'easier-version' };
  }
  return undefined;
}

/** The nearest to the asked reserve in half-reps; then heavier, then more reps. */
function nearest(strand: StrandJson, sets: readonly Set[], asked: number): Set | undefined {
  const halfReps = (set: Set) => Math.floor((2 * Math.abs(set.reserve - asked) + 5) / 10);
  const mass = (set: Set) => {
    const load = findLoad(strand, set.option);
    return load === undefined ? 0 : external(load);
  };
  return [...sets].sort((a, b) => halfReps(a) - halfReps(b) || mass(b) - mass(a) || b.reps - a.reps)[0];
}

/** Rule 8. */
function easyWeek(strand: StrandJson, before: State, occurrence: OccurrenceJson) {
  const { option, reps: lastReps, sets: lastSets } = before.lastWork;
  const rtf = repsToFailure(strand, option, occurrence.week);
  if (rtf === undefined) return undefined;
  const couldNotFall = lastSets !== null && occurrence.sets >= lastSets;
  const cap = Math.min((lastReps ?? strand.top) - (couldNotFall ? 1 : 0), mostHeld(occurrence));
  const least = Math.max(1, strand.bottom - 2);
  const leavesFloor = (reps: number) => reps >= 1 && rtf - 10 * reps >= occurrence.floor;
  const asAsked = (reps: number) => rtf - 10 * reps >= occurrence.asked - strand.rules.tolerance;
  let set: Set | undefined;
  for (let reps = cap; reps >= least && set === undefined; reps -= 1) {
    if (leavesFloor(reps) && asAsked(reps)) set = { option, reps, reserve: rtf - 10 * reps };
  }
  const last = Math.min(cap, least);
  if (set === undefined && leavesFloor(last)) set = { option, reps: last, reserve: rtf - 10 * last };
  const fell = set === undefined ? rule7(strand, option, occurrence) : undefined;
  const chosen = set ?? fell?.set;
  if (chosen === undefined) return undefined;
  const state: State = { ...before, greatest: greatestAfter(strand, before.greatest, chosen, occurrence.week) };
  const step: Step = {
    week: occurrence.week,
    easy: true,
    ...chosen,
    sets: occurrence.sets,
    rule: fell?.rule ?? 'easy-week',
    relaxed: fell !== undefined,
    earned: before.earned,
  };
  return { step, state };
}

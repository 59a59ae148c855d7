/**
 * The walk of one strand, a second time: written from the definition of the walk alone, slow and plain, without a
 * look at the engine. `compare.test.ts` sets the two side by side; `audit.ts` walks every strand of a plan with it.
 *
 * Readings of points on which the definition is silent (C1 to C7 stand in `capacity.ts`). Those marked † were first
 * read otherwise here, and taken over from the engine's own document once both walks stood: either is allowed.
 *  1 "The tested load" is the load the walk starts at, in the version it starts in (†): back up is a matter of that
 *    version alone, and over once that load is reached.
 *  2 Back up asks for the bottom at asked − 0.2, and never less than the floor (†): rule 4 binds every rule.
 *  3 A step from no external load to any is a big one.
 *  4 In a second session of a week that had its trial there is no other, and nothing slower or harder either: the row
 *    waits, unless the rise in load is open (†). A trial that cannot be done (one set, margin gone, reading 5) is no
 *    step, so in other sessions slower and harder come into question.
 *  5 A trial is open for what was tried, and closed when the option held changes (†). Where the held option has no
 *    reps in the range that leave the floor, no trial can stand beside it (†).
 *  6 The harder version is the next one in the chain, at normal tempo. Being new it starts lighter: the heaviest of
 *    its loads below the held one that predicts the bottom plus the floor, else its lightest (†); where loads say
 *    nothing, the same load or not at all.
 *  7 Tempi are used up when the row's last tempo is the one in use.
 *  8 Held: every step is barred (trials too). The range is cut to the cap on reps at both ends, in every rule, so that
 *    a cap below the range is itself the range (†). Earned goes by the programme's top.
 *  9 Greatest is moved by work sets, rule 7 included, not by trial sets nor easy weeks (†); without logs it is the
 *    first work occurrence that is exempt.
 * 10 Rule 7 keeps the tempo at lower loads of the same version; an easier version is taken at normal tempo, at loads
 *    not above the held one (its lightest if all are, †), reps in the range, by the same nearness; if that one gives
 *    nothing, the next easier. Where loads say nothing, the held load alone is looked at. One rep at least. All that
 *    must leave the floor.
 * 11 An easy week leaves nothing behind. Before any work its cap is the top, and `k` is not compared. `k` could not
 *    fall: the easy occurrence has as many sets as the last work occurrence. The cap is never below one rep.
 * 12 At the top by rule 6's last resort, without the asked reserve: neither counts nor breaks (a changed option: 0).
 * 13 `otherwise` bars back-ups and trials too; if it comes to nothing that can be done, so does the walk.
 * 14 Recorded as relaxed: rule 7, and the last resorts of rules 6 and 8 (†).
 * 15 A gate needs the last trial of what it rises to, where that is open; else the top of the range at what it leaves.
 * 16 The walk starts at the heaviest load of the start's version not above the start's load.
 * 17 A rise to what was tried is none of the gates, but is refused where they are; it begins with the bottom of the range.
 */
import { external, findLoad, isTried, isWeak, loadsOf, loadsSayNothing, repsToFailure, resisted } from './capacity.js';
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
  | 'normal-tempo'
  | 'lower-load'
  | 'easier-version'
  | 'easy-week';

export interface Set {
  readonly option: Option;
  readonly reps: number;
  readonly reserve: number;
}

interface State {
  readonly option: Option;
  readonly earned: 0 | 1 | 2;
  readonly gateUsed: boolean;
  /** The trial that stands open. */
  readonly trial: Set | null;
  /** The week of the last trial. */
  readonly trialWeek: number | null;
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
  /** Its trials opened it. */
  readonly tried?: true;
}

/** Where the walk starts; absent where nothing is known, or nothing so light can be made. */
export function startOf(strand: StrandJson): Option | undefined {
  const { start, capacity } = strand;
  if (start === null || capacity === null) return undefined;
  const load = loadsOf(strand, start.version).findLast((one) => one.grams <= start.load);
  return load === undefined ? undefined : { version: start.version, load: load.grams, tempo: start.tempo };
}

export function walkStrand(strand: StrandJson): Walk {
  const option = startOf(strand);
  if (option === undefined || strand.start === null) throw new Error('nothing is known: there is no walk');
  let state: State = {
    option,
    earned: strand.start.earned,
    gateUsed: false,
    trial: null,
    trialWeek: null,
    greatest: strand.greatest,
    lastWork: { option, reps: null, sets: null },
  };
  /** The walk beside this one with every step barred, once a gate has been printed. */
  let barred: State | undefined;
  let otherwiseStuck: number | undefined;
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
    if (other === undefined) {
      otherwiseStuck ??= occurrence.week;
      continue;
    }
    barred = other.state;
    const { option: at, reps, reserve, sets } = other.step;
    steps.push({ ...done.step, otherwise: { option: at, reps, reserve, sets } });
  }
  return otherwiseStuck === undefined ? { kind: 'walked', steps } : { kind: 'impossible', week: otherwiseStuck };
}

interface Done {
  readonly step: Step;
  readonly state: State;
}

function walkOne(strand: StrandJson, before: State, occurrence: OccurrenceJson, barred: boolean): Done | undefined {
  return occurrence.easy ? easyWeek(strand, before, occurrence) : workWeek(strand, before, occurrence, barred);
}

function workWeek(strand: StrandJson, before: State, occurrence: OccurrenceJson, barred: boolean): Done | undefined {
  const stay: Move = { option: before.option, rule: 'stay' };
  const move = barred ? stay : nextStep(strand, before, occurrence);
  const inRange = repsInRange(strand, move.option, before, occurrence, move.tried === true);
  const fell = inRange === undefined ? rule7(strand, move.option, occurrence) : undefined;
  const set = inRange?.set ?? fell?.set;
  if (set === undefined) return undefined;

  const changed = !sameOption(set.option, before.option);
  const counts = set.reps === strand.top && set.reserve >= occurrence.asked - strand.rules.tolerance;
  const earned = earnedAfter(before.earned, changed, counts);
  const state: State = {
    option: set.option,
    earned,
    gateUsed: before.gateUsed || move.gated === true,
    trial: changed ? null : (move.trial ?? before.trial),
    trialWeek: move.trial === undefined ? before.trialWeek : occurrence.week,
    greatest: Math.max(before.greatest ?? 0, set.reps * Number(resisted(strand, set.option) ?? 0n)),
    lastWork: { option: set.option, reps: set.reps, sets: occurrence.sets },
  };
  const step: Step = {
    week: occurrence.week,
    easy: false,
    ...set,
    sets: occurrence.sets,
    rule: fell?.rule ?? move.rule,
    ...(move.trial === undefined ? {} : { trial: move.trial }),
    ...(move.gated ? { gate: { needs: neededFor(strand, before, move.option) } } : {}),
    relaxed: fell !== undefined || inRange?.lastResort === true,
    earned,
  };
  return { step, state };
}

function earnedAfter(before: 0 | 1 | 2, changed: boolean, counts: boolean): 0 | 1 | 2 {
  const from = changed ? 0 : before;
  if (!counts) return from;
  return from === 0 ? 1 : 2;
}

function neededFor(strand: StrandJson, before: State, to: Option): { readonly option: Option; readonly reps: number } {
  const { trial, option } = before;
  if (trial !== null && sameOption(trial.option, to)) return { option: to, reps: trial.reps };
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
  const start = startOf(strand);

  if (held !== undefined && next !== undefined && !loadsSayNothing(strand, option.version)) {
    const up: Option = { version: option.version, load: next.grams, tempo: 0 };
    const predicted = repsToFailure(strand, up, week) ?? Number.NEGATIVE_INFINITY;
    if (option.version === start?.version && option.load < start.load) {
      const reserve = Math.max(floor, asked - strand.rules.tolerance);
      if (predicted >= bottom + reserve) return { option: up, rule: 'back-up' };
    }
    const isSmall = (external(next) - external(held)) * 1000 <= strand.rules.smallStep * external(held);
    const often = isWeak(strand) ? 2 : 1;
    if (isSmall && earned >= often && predicted >= bottom + floor) return { option: up, rule: 'small-step' };
    if (!isSmall) {
      const move = gateOrTrial(strand, state, occurrence, up, 'big-step', 'trial');
      if (move !== undefined) return move;
    }
  }
  if (state.trialWeek === week) return { option, rule: 'stay' };

  const slower = (): Move | undefined => {
    const to: Option = { ...option, tempo: option.tempo + 1 };
    const predicted = repsToFailure(strand, to, week);
    if (earned < 2 || predicted === undefined || predicted < bottom + floor) return undefined;
    return { option: to, rule: 'slower' };
  };
  const harder = (): Move | undefined => {
    if (strand.way === 'strength' && option.tempo < strand.tempi.length - 1) return undefined;
    const to = harderOption(strand, option, occurrence);
    return to === undefined ? undefined : gateOrTrial(strand, state, occurrence, to, 'harder-version', 'harder-trial');
  };
  const move = strand.way === 'bodyweight' ? (harder() ?? slower()) : (slower() ?? harder());
  return move ?? { option, rule: 'stay' };
}

/** On a weak estimate a trial asks so many reps at most. */
const WEAK_TRIAL = 3;

function gateOrTrial(
  strand: StrandJson,
  state: State,
  occurrence: OccurrenceJson,
  to: Option,
  rise: Rule,
  attempt: Rule,
): Move | undefined {
  const predicted = repsToFailure(strand, to, occurrence.week);
  if (predicted === undefined || state.gateUsed) return undefined;
  const trialOpen = state.trial !== null && sameOption(state.trial.option, to);
  const tried = isTried(strand, to);
  if (state.earned < 2 && !trialOpen && !tried) return undefined;
  const leavesFloor = predicted >= 10 * strand.bottom + occurrence.floor;
  if ((tried || !isWeak(strand)) && leavesFloor && strand.gates !== false)
    return tried ? { option: to, rule: rise, tried } : { option: to, rule: rise, gated: true };
  if (occurrence.sets < 2 || !strand.trials || state.trialWeek === occurrence.week) return undefined;
  if (predicted < occurrence.floor + strand.rules.trialMargin) return undefined;
  if (repsInRange(strand, state.option, state, occurrence) === undefined) return undefined;
  const most = isWeak(strand) ? Math.min(strand.top, WEAK_TRIAL) : strand.top;
  const reps = Math.min(most, Math.floor((predicted - occurrence.floor) / 10));
  const trial = { option: to, reps, reserve: predicted - 10 * reps };
  return { option: state.option, rule: attempt, trial };
}

/** Reading 6. */
function harderOption(strand: StrandJson, option: Option, occurrence: OccurrenceJson): Option | undefined {
  const held = findLoad(strand, option);
  const version = option.version + 1;
  if (held === undefined) return undefined;
  const at = (load: { readonly grams: number }): Option => ({ version, load: load.grams, tempo: 0 });
  const loads = loadsOf(strand, version);
  if (loadsSayNothing(strand, version)) return loads.filter((load) => external(load) === external(held)).map(at)[0];
  const enough = 10 * strand.bottom + occurrence.floor;
  const lighter = loads.filter((load) => external(load) < external(held)).map(at);
  const likely = lighter.filter((to) => (repsToFailure(strand, to, occurrence.week) ?? 0) >= enough);
  return likely.at(-1) ?? loads.map(at)[0];
}

/** The range, cut at both ends to the most that a flag allows. */
function rangeOf(strand: StrandJson, occurrence: OccurrenceJson): { readonly bottom: number; readonly top: number } {
  const most = Math.max(1, occurrence.held?.maxReps ?? strand.top);
  return { bottom: Math.min(strand.bottom, most), top: Math.min(strand.top, most) };
}

/** Rule 6. */
function repsInRange(
  strand: StrandJson,
  option: Option,
  state: State,
  occurrence: OccurrenceJson,
  fewest = false,
): { readonly set: Set; readonly lastResort: boolean } | undefined {
  const rtf = repsToFailure(strand, option, occurrence.week);
  const r = resisted(strand, option);
  if (rtf === undefined || r === undefined) return undefined;
  const { bottom, top: most } = rangeOf(strand, occurrence);
  const top = fewest ? bottom : most;
  const leavesFloor = (reps: number) => rtf - 10 * reps >= occurrence.floor;
  const inVolume = (reps: number) => {
    if (state.greatest === null) return true;
    const most = Math.max(Math.floor((strand.rules.volume * state.greatest) / 1000), state.greatest + Number(r));
    return reps * Number(r) <= most;
  };
  const found = (reps: number): Set => ({ option, reps, reserve: rtf - 10 * reps });
  for (let reps = top; reps >= bottom; reps -= 1) {
    const asAsked = rtf - 10 * reps >= occurrence.asked - strand.rules.tolerance;
    if (leavesFloor(reps) && asAsked && inVolume(reps)) return { set: found(reps), lastResort: false };
  }
  for (let reps = bottom; reps <= top; reps += 1) {
    if (leavesFloor(reps)) return { set: found(reps), lastResort: true };
  }
  return undefined;
}

interface Fall {
  readonly set: Set;
  readonly rule: 'fewer-reps' | 'normal-tempo' | 'lower-load' | 'easier-version';
}

function rule7(strand: StrandJson, option: Option, occurrence: OccurrenceJson): Fall | undefined {
  const held = findLoad(strand, option);
  if (held === undefined) return undefined;
  const { bottom, top } = rangeOf(strand, occurrence);
  const sets = (to: Option, from: number, until: number): Set[] => {
    const rtf = repsToFailure(strand, to, occurrence.week);
    const all: Set[] = [];
    if (rtf === undefined) return all;
    for (let reps = Math.max(1, from); reps <= until; reps += 1) {
      if (rtf - 10 * reps >= occurrence.floor) all.push({ option: to, reps, reserve: rtf - 10 * reps });
    }
    return all;
  };
  const fewer = sets(option, bottom - 2, bottom - 1);
  const eased = option.tempo === 0 ? [] : sets({ ...option, tempo: 0 }, bottom, top);
  const lower =
    eased.length > 0 || loadsSayNothing(strand, option.version)
      ? []
      : loadsOf(strand, option.version)
          .filter((load) => external(load) < external(held))
          .flatMap((load) => sets({ ...option, load: load.grams }, bottom, top));
  const best = nearest(strand, [...fewer, ...eased, ...lower], occurrence.asked);
  if (best !== undefined) {
    if (best.option.load !== option.load) return { set: best, rule: 'lower-load' };
    return { set: best, rule: best.option.tempo === option.tempo ? 'fewer-reps' : 'normal-tempo' };
  }
  for (let version = option.version - 1; version >= 0; version -= 1) {
    const loads = loadsOf(strand, version);
    const notAbove = loads.filter((load) => external(load) <= external(held));
    const same = loads.filter((load) => external(load) === external(held));
    const taken = loadsSayNothing(strand, version) ? same : notAbove.length > 0 ? notAbove : loads.slice(0, 1);
    const easier = taken.flatMap((load) => sets({ version, load: load.grams, tempo: 0 }, bottom, top));
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
function easyWeek(strand: StrandJson, before: State, occurrence: OccurrenceJson): Done | undefined {
  const { option, reps: lastReps, sets: lastSets } = before.lastWork;
  const rtf = repsToFailure(strand, option, occurrence.week);
  if (rtf === undefined) return undefined;
  const { bottom, top } = rangeOf(strand, occurrence);
  const couldNotFall = lastSets !== null && occurrence.sets >= lastSets;
  const eased = Math.max(1, (lastReps ?? strand.top) - (couldNotFall ? 1 : 0));
  const cap = occurrence.held?.maxReps === undefined || occurrence.held.maxReps === null ? eased : Math.min(eased, top);
  const least = Math.max(1, bottom - 2);
  const leavesFloor = (reps: number) => rtf - 10 * reps >= occurrence.floor;
  const asAsked = (reps: number) => rtf - 10 * reps >= occurrence.asked - strand.rules.tolerance;
  let reps = cap;
  while (reps >= least && !(leavesFloor(reps) && asAsked(reps))) reps -= 1;
  const last = Math.min(cap, least);
  const isAsAsked = reps >= least;
  const taken = isAsAsked ? reps : leavesFloor(last) ? last : undefined;
  const fell = taken === undefined ? rule7(strand, option, occurrence) : undefined;
  const set = taken === undefined ? fell?.set : { option, reps: taken, reserve: rtf - 10 * taken };
  if (set === undefined) return undefined;
  const step: Step = {
    week: occurrence.week,
    easy: true,
    ...set,
    sets: occurrence.sets,
    rule: fell?.rule ?? 'easy-week',
    relaxed: !isAsAsked,
    earned: before.earned,
  };
  return { step, state: before };
}

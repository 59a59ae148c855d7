/**
 * Was a better one passed over? At each step of a finished walk every option there is (version × load × tempo × reps)
 * is listed, each is asked which rules would let the walk go there, and what was chosen must be what comes first.
 * Nothing is walked here: the state is read off the steps themselves, so any walk can be judged, whoever made it.
 * The readings numbered in `walk.ts` hold here too.
 */
import { external, findLoad, isTried, isWeak, loadsOf, loadsSayNothing, repsToFailure, resisted } from './capacity.js';
import { type OccurrenceJson, type Option, type StrandJson, sameOption } from './strand-json.js';
import { startOf } from './walk.js';

/** One step of a walk, as far as it is judged. */
export interface Seen {
  readonly week: number;
  readonly easy: boolean;
  readonly option: Option;
  readonly reps: number;
  readonly sets: number;
  readonly reserve: number;
  readonly trial?: { readonly option: Option; readonly reps: number };
  readonly gated: boolean;
}

interface Standing {
  readonly option: Option;
  readonly earned: number;
  /** What the open trial tries. */
  readonly trialOf: Option | null;
  readonly gateUsed: boolean;
  readonly trialWeek: number;
  readonly greatest: number | null;
  readonly lastReps: number;
  readonly lastSets: number;
}

interface Ask {
  readonly strand: StrandJson;
  readonly now: Standing;
  readonly occurrence: OccurrenceJson;
}

type StepRule = (ask: Ask, to: Option) => boolean;

const NOWHERE = Number.NEGATIVE_INFINITY;
const predicted = ({ strand, occurrence }: Ask, to: Option): number =>
  repsToFailure(strand, to, occurrence.week) ?? NOWHERE;
const massOf = (strand: StrandJson, option: Option): number => {
  const load = findLoad(strand, option);
  return load === undefined ? 0 : external(load);
};

/** Every version × load × tempo of the strand. */
function listOptions(strand: StrandJson): Option[] {
  return strand.versions.flatMap((_, version) =>
    loadsOf(strand, version).flatMap((load) => strand.tempi.map((_, tempo) => ({ version, load: load.grams, tempo }))),
  );
}

function isNextLoad({ strand, now }: Ask, to: Option): boolean {
  if (to.version !== now.option.version || to.tempo !== 0) return false;
  if (loadsSayNothing(strand, to.version)) return false;
  const held = massOf(strand, now.option);
  const heavier = loadsOf(strand, to.version)
    .map(external)
    .filter((mass) => mass > held);
  return massOf(strand, to) > held && massOf(strand, to) === Math.min(...heavier);
}

function isHarderVersion(ask: Ask, to: Option): boolean {
  const { strand, now } = ask;
  if (to.version !== now.option.version + 1 || to.tempo !== 0) return false;
  if (strand.way === 'strength' && now.option.tempo !== strand.tempi.length - 1) return false;
  const held = massOf(strand, now.option);
  if (loadsSayNothing(strand, to.version)) return massOf(strand, to) === held;
  const there = listOptions(strand).filter((one) => one.version === to.version && one.tempo === 0);
  const lighter = there.filter((one) => massOf(strand, one) < held && leavesBottom(ask, one, ask.occurrence.floor));
  const masses = (all: readonly Option[]) => all.map((one) => massOf(strand, one));
  return massOf(strand, to) === (lighter.length > 0 ? Math.max(...masses(lighter)) : Math.min(...masses(there)));
}

const isSmall = ({ strand, now }: Ask, to: Option): boolean =>
  massOf(strand, to) * 1000 <= massOf(strand, now.option) * (1000 + strand.rules.smallStep);
const leavesBottom = (ask: Ask, to: Option, reserve: number): boolean =>
  predicted(ask, to) >= 10 * ask.strand.bottom + reserve;
const mayRise = (ask: Ask, to: Option): boolean =>
  !ask.now.gateUsed &&
  ask.strand.gates !== false &&
  (!isWeak(ask.strand) || isTried(ask.strand, to)) &&
  leavesBottom(ask, to, ask.occurrence.floor);
const mayTry = (ask: Ask, to: Option): boolean =>
  !ask.now.gateUsed &&
  ask.occurrence.sets >= 2 &&
  ask.strand.trials &&
  ask.now.trialWeek !== ask.occurrence.week &&
  repsOf(ask, ask.now.option, ask.strand.bottom, ask.strand.top).length > 0 &&
  predicted(ask, to) >= ask.occurrence.floor + ask.strand.rules.trialMargin;
const twice = (ask: Ask): boolean => ask.now.earned === 2;
const isEarned = (ask: Ask, to: Option): boolean =>
  twice(ask) || isTried(ask.strand, to) || (ask.now.trialOf !== null && sameOption(ask.now.trialOf, to));
const mayStepBig = (ask: Ask, to: Option): boolean => isNextLoad(ask, to) && !isSmall(ask, to) && isEarned(ask, to);
/** Nothing slower or harder in a second session after the week's trial. */
const waits = (ask: Ask): boolean => ask.now.trialWeek === ask.occurrence.week;

const backUp: StepRule = (ask, to) =>
  isNextLoad(ask, to) &&
  to.version === startOf(ask.strand)?.version &&
  ask.now.option.load < (startOf(ask.strand)?.load ?? 0) &&
  leavesBottom(ask, to, ask.occurrence.asked - ask.strand.rules.tolerance) &&
  leavesBottom(ask, to, ask.occurrence.floor);
const smallStep: StepRule = (ask, to) =>
  isNextLoad(ask, to) &&
  isSmall(ask, to) &&
  ask.now.earned >= (isWeak(ask.strand) ? 2 : 1) &&
  leavesBottom(ask, to, ask.occurrence.floor);
const bigRise: StepRule = (ask, to) => mayStepBig(ask, to) && mayRise(ask, to);
const bigTrial: StepRule = (ask, to) => mayStepBig(ask, to) && mayTry(ask, to);
const slower: StepRule = (ask, to) => {
  const { option } = ask.now;
  const isIt = to.version === option.version && to.load === option.load && to.tempo === option.tempo + 1;
  return isIt && twice(ask) && !waits(ask) && repsOf(ask, to, ask.strand.bottom, ask.strand.top).length > 0;
};
const harderRise: StepRule = (ask, to) =>
  isHarderVersion(ask, to) && isEarned(ask, to) && !waits(ask) && mayRise(ask, to);
const harderTrial: StepRule = (ask, to) =>
  isHarderVersion(ask, to) && isEarned(ask, to) && !waits(ask) && mayTry(ask, to);
const stay: StepRule = (ask, to) => sameOption(ask.now.option, to);

interface Named {
  readonly name: string;
  readonly rule: StepRule;
  readonly is: 'rise' | 'gate' | 'trial' | 'stay';
}
const LOADS: readonly Named[] = [
  { name: 'back up', rule: backUp, is: 'rise' },
  { name: 'small step', rule: smallStep, is: 'rise' },
  { name: 'big step', rule: bigRise, is: 'gate' },
  { name: 'trial', rule: bigTrial, is: 'trial' },
];
const SLOWER: readonly Named[] = [{ name: 'slower', rule: slower, is: 'rise' }];
const HARDER: readonly Named[] = [
  { name: 'harder version', rule: harderRise, is: 'gate' },
  { name: 'trial of a harder version', rule: harderTrial, is: 'trial' },
];
const STAY: Named = { name: 'stay', rule: stay, is: 'stay' };

function inOrder({ strand, occurrence }: Ask): readonly Named[] {
  if (occurrence.held !== undefined) return [STAY];
  return strand.way === 'bodyweight' ? [...LOADS, ...HARDER, ...SLOWER, STAY] : [...LOADS, ...SLOWER, ...HARDER, STAY];
}

/** The range, cut at both ends to what a flag allows. */
function rangeOf({ strand, occurrence }: Ask): readonly [number, number] {
  const most = occurrence.held?.maxReps ?? strand.top;
  return [Math.min(strand.bottom, most), Math.min(strand.top, most)];
}

/** Reps from so many to so many that leave the floor. */
function repsOf(ask: Ask, to: Option, from: number, until: number): number[] {
  const all: number[] = [];
  for (let reps = 1; reps <= 100; reps += 1) {
    const inside = reps >= from && reps <= until;
    if (inside && predicted(ask, to) - 10 * reps >= ask.occurrence.floor) all.push(reps);
  }
  return all;
}

interface Choice {
  readonly option: Option;
  readonly reps: number;
}

/** Everything rule 7 may take, with the version it belongs to; the easier a version the later. */
function listFalls(ask: Ask, from: Option): readonly Choice[] {
  const { strand } = ask;
  const held = massOf(strand, from);
  const [bottom, top] = rangeOf(ask);
  const all = listOptions(strand).flatMap((option): Choice[] => {
    const mass = massOf(strand, option);
    const apart = loadsSayNothing(strand, option.version);
    const isHeld = sameOption(option, from);
    const isLower = option.version === from.version && option.tempo === from.tempo && mass < held && !apart;
    const lightest = Math.min(...loadsOf(strand, option.version).map(external));
    const notAbove = mass <= held || (lightest > held && mass === lightest);
    const isEased = option.version === from.version && mass === held && from.tempo > 0 && option.tempo === 0;
    const isEasier = option.version < from.version && option.tempo === 0 && (apart ? mass === held : notAbove);
    if (isHeld) return repsOf(ask, option, bottom - 2, bottom - 1).map((reps) => ({ option, reps }));
    if (isLower || isEased || isEasier) return repsOf(ask, option, bottom, top).map((reps) => ({ option, reps }));
    return [];
  });
  const hardest = Math.max(...all.map((choice) => choice.option.version));
  const there = all.filter((choice) => choice.option.version === hardest);
  const eased = there.some(({ option }) => option.version === from.version && option.tempo !== from.tempo);
  // Tempo falls before load.
  return eased ? there.filter(({ option }) => massOf(strand, option) === held) : there;
}

/** Whether the first is better than the second by rule 7. */
function isNearer(ask: Ask, one: Choice, other: Choice): boolean {
  const half = (c: Choice) =>
    Math.floor((2 * Math.abs(predicted(ask, c.option) - 10 * c.reps - ask.occurrence.asked) + 5) / 10);
  if (half(one) !== half(other)) return half(one) < half(other);
  const [a, b] = [massOf(ask.strand, one.option), massOf(ask.strand, other.option)];
  return a !== b ? a > b : one.reps > other.reps;
}

function workFindings(ask: Ask, seen: Seen): string[] {
  const { strand, now, occurrence } = ask;
  const open = inOrder(ask).flatMap((named) =>
    listOptions(strand)
      .filter((option) => named.rule(ask, option))
      .map((option) => ({ named, option })),
  );
  const first = open[0];
  if (first === undefined) return ['no rule applies, not even to stay'];
  const found: string[] = [];
  const { is, name } = first.named;
  const shouldTry = is === 'trial';
  if (shouldTry !== (seen.trial !== undefined))
    found.push(`first that applies is ${name}: trial expected ${shouldTry}`);
  // Nothing is left to be earned of what its trials opened.
  const opened = is === 'gate' && isTried(strand, first.option);
  const gate = is === 'gate' && !opened;
  if (gate !== seen.gated) found.push(`first that applies is ${name}: gate expected ${gate}`);
  if (seen.trial !== undefined) {
    const most = repsOf(ask, seen.trial.option, 1, isWeak(strand) ? Math.min(strand.top, 3) : strand.top).at(-1);
    if (!sameOption(seen.trial.option, first.option)) found.push('the trial is not at the next load or version');
    if (seen.trial.reps !== most) found.push(`trial of ${seen.trial.reps}: ${most} leave the floor`);
  }
  const target = is === 'trial' || is === 'stay' ? now.option : first.option;
  const [bottom, top] = rangeOf(ask);
  const inRange = repsOf(ask, target, bottom, top);
  if (inRange.length === 0) return [...found, ...fallFindings(ask, target, seen)];
  if (!sameOption(seen.option, target)) {
    const there = JSON.stringify(target);
    return [...found, `${name} to ${there} applies and was passed over for ${JSON.stringify(seen.option)}`];
  }
  const r = Number(resisted(strand, target) ?? 0n);
  const greatest = now.greatest;
  const permitted = inRange.filter(
    (reps) =>
      predicted(ask, target) - 10 * reps >= occurrence.asked - strand.rules.tolerance &&
      (greatest === null || reps * r <= Math.max(Math.floor((strand.rules.volume * greatest) / 1000), greatest + r)),
  );
  const best = opened ? inRange[0] : (permitted.at(-1) ?? inRange[0]);
  if (seen.reps !== best) found.push(`${seen.reps} reps; permitted are ${permitted.join(', ')}, so ${best}`);
  return found;
}

function fallFindings(ask: Ask, from: Option, seen: Seen): string[] {
  const falls = listFalls(ask, from);
  const chosen = falls.find((fall) => sameOption(fall.option, seen.option) && fall.reps === seen.reps);
  if (chosen === undefined) return [`${JSON.stringify(seen.option)} × ${seen.reps} is not among what rule 7 may take`];
  return falls
    .filter((other) => isNearer(ask, other, chosen))
    .map((other) => `rule 7 passed over ${JSON.stringify(other.option)} × ${other.reps}`);
}

function easyFindings(ask: Ask, seen: Seen): string[] {
  const { strand, now, occurrence } = ask;
  const found: string[] = [];
  if (seen.trial !== undefined || seen.gated) found.push('a trial or a gate in an easy week');
  const [bottom] = rangeOf(ask);
  const most = occurrence.held?.maxReps ?? 1000;
  const cap = Math.min(most, Math.max(1, now.lastReps - (occurrence.sets >= now.lastSets ? 1 : 0)));
  const least = Math.max(1, bottom - 2);
  const asAsked = repsOf(ask, now.option, least, cap).filter(
    (reps) => predicted(ask, now.option) - 10 * reps >= occurrence.asked - strand.rules.tolerance,
  );
  const last = repsOf(ask, now.option, 1, least).filter((reps) => reps === Math.min(cap, least));
  const best = asAsked.at(-1) ?? last[0];
  if (best === undefined) return [...found, ...fallFindings(ask, now.option, seen)];
  if (!sameOption(seen.option, now.option)) found.push('an easy week left the last work option');
  if (seen.reps !== best) found.push(`${seen.reps} reps in an easy week instead of ${best}`);
  return found;
}

/** What stands after a step, read off it. */
function after(ask: Ask, seen: Seen): Standing {
  const { strand, now, occurrence } = ask;
  const r = Number(resisted(strand, seen.option) ?? 0n);
  if (occurrence.easy) return now;
  const moved = !sameOption(seen.option, now.option);
  const from = moved ? 0 : now.earned;
  const atTop = seen.reps === strand.top && seen.reserve >= occurrence.asked - strand.rules.tolerance;
  return {
    option: seen.option,
    earned: atTop ? Math.min(2, from + 1) : from,
    trialOf: moved ? null : (seen.trial?.option ?? now.trialOf),
    gateUsed: now.gateUsed || seen.gated,
    trialWeek: seen.trial === undefined ? now.trialWeek : occurrence.week,
    greatest: Math.max(now.greatest ?? 0, seen.reps * r),
    lastReps: seen.reps,
    lastSets: occurrence.sets,
  };
}

/** Everything in a finished walk that is not permitted, or passed a better one over; empty where it is as it must be. */
export function findPassedOver(strand: StrandJson, walk: readonly Seen[]): string[] {
  const start = startOf(strand);
  if (start === undefined || strand.start === null) return ['nothing is known, yet there is a walk'];
  if (walk.length !== strand.occurrences.length) return [`${walk.length} steps for ${strand.occurrences.length}`];
  const found: string[] = [];
  let now: Standing = {
    option: start,
    earned: strand.start.earned,
    trialOf: null,
    gateUsed: false,
    trialWeek: 0,
    greatest: strand.greatest,
    lastReps: strand.top,
    lastSets: 1000,
  };
  strand.occurrences.forEach((occurrence, index) => {
    const seen = walk[index];
    if (seen === undefined) return;
    const ask: Ask = { strand, now, occurrence };
    const say = (text: string) => found.push(`occurrence ${index + 1}, week ${occurrence.week}: ${text}`);
    if (findLoad(strand, seen.option) === undefined) say('the load cannot be made, or the version is not allowed');
    if (predicted(ask, seen.option) - 10 * seen.reps !== seen.reserve) say(`reserve ${seen.reserve} is not predicted`);
    if (seen.reserve < occurrence.floor) say('below the floor');
    if (seen.reps > (occurrence.held?.maxReps ?? 1000)) say('more reps than before the flag');
    if (seen.sets !== occurrence.sets) say('not the sets of the week');
    for (const text of occurrence.easy ? easyFindings(ask, seen) : workFindings(ask, seen)) say(text);
    now = after(ask, seen);
  });
  return found;
}

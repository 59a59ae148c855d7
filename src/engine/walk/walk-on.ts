/** Walks from one occurrence to the end of the block, and keeps what findings and gates need of the way. */
import type { Reason } from '../../model/reason.js';
import { invariant } from '../../model/result.js';
import type { Occurrence } from '../../model/strand.js';
import { DONE_TRIAL } from '../rules/done-trial.js';
import { floorLimit } from '../rules/walk-floor.js';
import type { StepRule, WalkStep } from '../walk-step.js';
import { easyReps, type Reps, workReps } from './reps.js';
import {
  type Candidate,
  type Ground,
  type Place,
  predictedAt,
  resistedAt,
  type Situation,
  samePlace,
  type WeekOfWalk,
} from './situation.js';
import type { SortedRules } from './sorted-rules.js';
import { BARRED, type Taken, takeStep } from './take-step.js';
import type { Standing, Trail } from './trail.js';
import { optionOf, repsReason } from './why.js';

export type Walked = ({ readonly kind: 'walked' } & Trail) | Impossible;

export interface Impossible {
  readonly kind: 'impossible';
  readonly week: number;
  readonly reason: Reason;
}

export function beginWalk(ground: Ground): Standing {
  const { input, began } = ground;
  return {
    ground,
    place: began,
    earned: input.start?.earned ?? 0,
    earnedIn: [],
    earnedAsked: null,
    gate: 'none',
    tried: null,
    greatest: input.greatest,
    lastWork: null,
  };
}

export interface Manner {
  /** No step at all is taken any more. */
  readonly barred: boolean;
  /** With reasons, and what was considered; else its steps say only what is done. */
  readonly told: boolean;
}

export function walkOn(begun: Standing, from: number, rules: SortedRules, { barred, told }: Manner): Walked {
  const { ground } = begun;
  const { occurrences } = ground.input;
  const steps: WalkStep[] = [];
  const situations: Situation[] = [];
  let gated: Trail['gated'] = null;
  let standing = begun;
  for (let index = from; index < occurrences.length; index += 1) {
    const occurrence = occurrences[index];
    const week = occurrence === undefined ? undefined : ground.weeks.get(occurrence.week);
    invariant(occurrence !== undefined && week !== undefined, 'every week of a strand is a week of its block');
    const at = situationIn(standing, occurrence, week);
    situations.push(at);
    if (occurrence.easy && ground.habits.easyWeek) {
      const reps = easyReps(at, rules);
      if (reps === null) return impossible(at);
      steps.push(easyStep(at, reps, told));
      continue;
    }
    const taken = barred ? BARRED : takeStep(at, rules, told);
    const goes = taken.step !== null && taken.step.outcome !== 'trial' && taken.next !== null;
    const place = goes && taken.next !== null ? placeOf(taken.next) : at.place;
    const reps = workReps(at, place, rules, taken.byTrials ? DONE_TRIAL : null);
    if (reps === null) return impossible(at);
    if (taken.step?.outcome === 'gate') gated = { index, before: standing };
    standing = standingAfter(at, taken, reps, rules);
    steps.push(workStep(at, taken, reps, standing, index, told));
  }
  return { kind: 'walked', steps, situations, gated };
}

/** Written out, since this is done for every occurrence of every strand. */
function situationIn(standing: Standing, occurrence: Occurrence, week: WeekOfWalk): Situation {
  const { ground, place, earned, earnedIn, earnedAsked, gate, tried, greatest, lastWork } = standing;
  return { ground, occurrence, week, place, earned, earnedIn, earnedAsked, gate, tried, greatest, lastWork };
}

function placeOf({ version, load, tempo }: Candidate): Place {
  return { version, load, tempo };
}

function impossible(at: Situation): Impossible {
  const { version, load, tempo } = at.place;
  const reps = at.ground.input.bottom;
  const reserve = predictedAt(at, version, load, tempo) - 10 * reps;
  const reason = repsReason(at, floorLimit.row, at.place, reps, reserve);
  return { kind: 'impossible', week: at.occurrence.week, reason: { ...reason, audience: 'coach' } };
}

function standingAfter(at: Situation, taken: Taken, done: Reps, rules: SortedRules): Standing {
  const changed = !samePlace(done.place, at.place);
  const afresh = changed && at.ground.habits.earnedReset;
  const earns = earnsAt(at, done, rules);
  const before = afresh ? 0 : at.earned;
  const earnedIn = afresh ? [] : at.earnedIn;
  const closes = changed && at.gate === 'open' && at.ground.habits.trialCloses;
  const volume = done.reps * resistedAt(at.ground, done.place);
  return {
    ground: at.ground,
    place: done.place,
    earned: earns ? (before === 0 ? 1 : 2) : before,
    earnedIn: earns ? [...earnedIn.slice(-1), at.occurrence.week] : earnedIn,
    earnedAsked: earns ? at.occurrence.asked : afresh ? null : at.earnedAsked,
    gate:
      taken.step?.outcome === 'gate' ? 'used' : taken.step?.outcome === 'trial' ? 'open' : closes ? 'none' : at.gate,
    tried: triedAfter(at, taken, closes),
    greatest: Math.max(at.greatest ?? 0, volume),
    lastWork: { place: done.place, reps: done.reps, sets: at.occurrence.sets },
  };
}

function earnsAt(at: Situation, done: Reps, rules: SortedRules): boolean {
  for (const earning of rules.earnings) if (!earning.holds(at, done.reps, done.reserve)) return false;
  return true;
}

function triedAfter(at: Situation, taken: Taken, closes: boolean): Situation['tried'] {
  if (taken.step?.outcome !== 'trial' || taken.next === null) return closes ? null : at.tried;
  return { place: placeOf(taken.next), reps: trialReps(at, taken.next), week: at.occurrence.week };
}

/** As many as leave the floor at the next load, up to the top of the range; on a weak estimate a few at most. */
function trialReps({ ground, occurrence }: Situation, next: Candidate): number {
  const most = ground.weak ? Math.min(ground.input.top, ground.values.weakTrial) : ground.input.top;
  return Math.max(1, Math.min(most, Math.floor((next.predicted - occurrence.floor) / 10)));
}

type Written<Record> = { -readonly [Key in keyof Record]: Record[Key] };

function workStep(at: Situation, taken: Taken, done: Reps, after: Standing, index: number, told: boolean): WalkStep {
  const { occurrence, ground } = at;
  const stayed: StepRule = index === 0 ? 'start' : 'stay';
  const { step: way, next } = taken;
  const written: Written<WalkStep> = {
    week: occurrence.week,
    easy: false,
    option: optionOf(ground, done.place),
    reps: done.reps,
    sets: occurrence.sets,
    reserve: done.reserve,
    rule: done.fell ?? (way === null || way.outcome === 'trial' ? stayed : way.named),
    relaxed: done.relaxed,
    considered: taken.considered,
    earned: after.earned,
    reasons: told ? [...taken.reasons, whyDone(at, done)] : [],
  };
  if (next !== null && way?.outcome === 'trial') written.trial = trialOf(at, next);
  if (next !== null && way?.outcome === 'gate') written.gate = gateOf(at, next);
  return written;
}

function trialOf(at: Situation, next: Candidate): NonNullable<WalkStep['trial']> {
  const reps = trialReps(at, next);
  return { option: optionOf(at.ground, next), reps, reserve: next.predicted - 10 * reps };
}

/** A gate opened by a trial needs the trial; else what earned it. */
function gateOf(at: Situation, next: Candidate): NonNullable<WalkStep['gate']> {
  const { tried, ground, occurrence } = at;
  if (at.gate === 'open' && tried !== null && samePlace(tried.place, next)) {
    const needs = {
      option: optionOf(ground, tried.place),
      reps: tried.reps,
      reserve: occurrence.floor,
      weeks: [tried.week],
    };
    return { needs };
  }
  const reserve = at.earnedAsked ?? occurrence.asked;
  const weeks = [...new Set(at.earnedIn)];
  return { needs: { option: optionOf(ground, at.place), reps: ground.input.top, reserve, weeks } };
}

const whyDone = (at: Situation, done: Reps): Reason =>
  repsReason(at, done.because, done.place, done.reps, done.reserve);

function easyStep(at: Situation, done: Reps, told: boolean): WalkStep {
  return {
    week: at.occurrence.week,
    easy: true,
    option: optionOf(at.ground, done.place),
    reps: done.reps,
    sets: at.occurrence.sets,
    reserve: done.reserve,
    rule: done.fell ?? 'easy-week',
    relaxed: done.relaxed,
    considered: [],
    earned: at.earned,
    reasons: told ? [whyDone(at, done)] : [],
  };
}

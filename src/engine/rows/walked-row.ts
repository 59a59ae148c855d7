/** One row with everything decided about it: its strand walked, or its feeler set and what each answer leads to. */
import type { ExerciseId } from '../../model/identity.js';
import { ofClient, type ProblemTable } from '../../model/problem.js';
import type { Result } from '../../model/result.js';
import type { StrandInput } from '../../model/strand.js';
import type { BlockContext } from '../block-context.js';
import { capacityOf, isCounted, repsToFailure, resistedLoad } from '../capacity.js';
import { type Floor, floorsOfRow } from '../effort/plan-effort.js';
import { planStrand } from '../plan-strand.js';
import { FEELER_RISE } from '../rules/feeler-rise.js';
import { FLOOR_SIGNAL } from '../rules/floor-signal.js';
import { PERCENT_OF_MAXIMUM } from '../rules/percent-of-maximum.js';
import { type PlannedSession, sessionsOf } from '../sessions/plan-sets.js';
import type { Judged } from '../versions/judge-version.js';
import type { Ground } from '../walk/situation.js';
import type { WalkFinding, WalkStep } from '../walk-step.js';
import type { Beginning } from './beginning.js';
import { buildStrand } from './build-strand.js';
import { caresAtStart, caresPlanned } from './cares-met.js';
import { easierInReps, easierMissing, noEasier } from './find-easier.js';
import type { Versions, WalkFitted } from './fit-rows.js';
import { type Feeler, planFeeler } from './plan-feeler.js';
import { type Share, underPercent } from './under-percent.js';

export interface WalkedRow {
  readonly fitted: WalkFitted;
  readonly beginning: Beginning;
  readonly strand: StrandInput;
  /** The versions it goes through that meet a caution: then no gain is counted on, and there are no trials. */
  readonly cares: readonly Judged[];
  readonly floors: readonly Floor[];
  /** The sessions it stands in, one for each occurrence of the strand. */
  readonly sessions: readonly PlannedSession[];
  readonly plan:
    | { readonly kind: 'walked'; readonly steps: readonly WalkStep[]; readonly ground: Ground }
    | { readonly kind: 'feeler'; readonly feeler: Feeler };
  readonly findings: readonly WalkFinding[];
}

/**
 * A row whose plan falls to an easier version that meets a caution is planned anew, without gain and trials.
 * Reports `nothing-leaves-the-floor` and `no-easier-version`; `null` then, and where the row was cut for time.
 */
export function walkRow(
  context: BlockContext,
  fitted: WalkFitted,
  beginning: Beginning,
  all: readonly PlannedSession[],
  floors: readonly Floor[],
  testWeeks: readonly number[],
  versions: Versions,
): Result<WalkedRow | null> {
  const cares = caresAtStart(fitted);
  const first = walkWith(context, fitted, beginning, all, floors, cares, testWeeks, versions);
  if (first.value === null || cares.length > 0 || fitted.chain.judged.every(({ care }) => care.length === 0)) {
    return first;
  }
  const met = caresPlanned(fitted, exercisesOf(first.value));
  return met.length === 0 ? first : walkWith(context, fitted, beginning, all, floors, met, testWeeks, versions);
}

/** Every exercise its sets are planned with, those done otherwise and those a feeler set leads to included. */
function exercisesOf({ strand, plan }: WalkedRow): ReadonlySet<ExerciseId> {
  if (plan.kind === 'feeler') return new Set(plan.feeler.choices.flat().map(({ exercise }) => exercise));
  const options = plan.steps.flatMap(({ option, trial, otherwise }) => [option, trial?.option, otherwise?.option]);
  const indices = new Set(options.map((option) => option?.version));
  return new Set(strand.versions.filter((_, index) => indices.has(index)).map(({ exercise }) => exercise));
}

function walkWith(
  context: BlockContext,
  fitted: WalkFitted,
  beginning: Beginning,
  all: readonly PlannedSession[],
  general: readonly Floor[],
  cares: readonly Judged[],
  testWeeks: readonly number[],
  versions: Versions,
): Result<WalkedRow | null> {
  const cautioned = cares.length > 0;
  const floors = floorsOfRow(context, general, cautioned, fitted.dose);
  const sessions = sessionsOf(all, fitted);
  if (sessions.length === 0) return { value: null, problems: [] };
  const uncapped = buildStrand(context, { fitted, beginning, sessions, floors, cautioned, testWeeks });
  const share = shareOf(context, fitted);
  const strand = share === null ? uncapped : underPercent(uncapped, share);
  const head = { severity: 'error', scope: ofClient(context.client.id), place: fitted.row.place } as const;
  const beyond = share === null ? null : beyondShare(strand, fitted, share);
  if (beyond !== null) return { value: null, problems: [{ ...head, code: 'percent-not-kept', data: beyond }] };
  const common = { fitted, beginning, strand, cares, floors, sessions };
  const missing = easierMissing(context, fitted, versions);
  const result = planStrand(strand);
  if (result.kind === 'impossible') {
    const floor = strand.occurrences.find(({ week }) => week === result.week)?.floor ?? 0;
    const data = { session: strand.session, row: strand.row, week: result.week, floor };
    return { value: null, problems: [...missing, { ...head, code: 'nothing-leaves-the-floor', data }] };
  }
  if (missing.length > 0) return { value: null, problems: missing };
  if (result.kind === 'walked') {
    return {
      value: { ...common, plan: result, findings: findingsWithin(beginning, share, result.findings) },
      problems: [],
    };
  }
  if (isTooHeavy(strand, beginning, fitted.chain.base)) {
    const { week = 1, floor = 0 } = strand.occurrences[0] ?? {};
    const data = { session: strand.session, row: strand.row, week, floor };
    return { value: null, problems: [{ ...head, code: 'nothing-leaves-the-floor', data }] };
  }
  const easier = easierInReps(context, fitted, versions);
  if (easier === null) return { value: null, problems: [noEasier(context, fitted, fitted.chain.base, [])] };
  const part = fitted.dose.kind === 'every' ? context.rules.valueOf(FLOOR_SIGNAL) : 1000;
  const fewest = Math.ceil((strand.bottom * part) / 1000);
  const feeler = planFeeler(strand, fitted.chain.base, context.rules.valueOf(FEELER_RISE), easier, fewest, share);
  return { value: { ...common, plan: { kind: 'feeler', feeler }, findings: [] }, problems: [] };
}

const shareOf = ({ rules }: BlockContext, { percent }: WalkFitted): Share | null =>
  percent === null ? null : { percent, maximum: rules.valueOf(PERCENT_OF_MAXIMUM) };

/** A part of a maximum says nothing where no load is counted, and cannot be kept where the lightest is above it. */
function beyondShare(
  { row, versions, bodyMass, capacity }: StrandInput,
  { chain }: WalkFitted,
  { percent }: Share,
): ProblemTable['percent-not-kept'] | null {
  const judged = chain.judged[chain.base];
  const version = versions[chain.base];
  const whole = chain.versions[chain.base];
  if (judged === undefined || version === undefined || whole === undefined) return null;
  const data = { row, exercise: judged.exercise.id, percent };
  if (!isCounted(whole, bodyMass)) return { ...data, why: 'not counted' };
  return capacity !== null && version.loads.length === 0 ? { ...data, why: 'too heavy' } : null;
}

/** Where the row itself keeps the load down, a heavier bell in the house would change nothing. */
function findingsWithin(
  { role }: Beginning,
  share: Share | null,
  findings: readonly WalkFinding[],
): readonly WalkFinding[] {
  const kept = share !== null || role?.role === 'lighter';
  return kept ? findings.filter(({ rule }) => rule !== 'kit-too-light' && rule !== 'to-earn-a-try') : findings;
}

/**
 * A feeler set finds what is not known. Where a test says that the lightest load in the house leaves too little even
 * at the bottom of the range, there is nothing to find.
 */
function isTooHeavy(
  { versions, bodyMass, bottom, occurrences }: StrandInput,
  { tested }: Beginning,
  base: number,
): boolean {
  const version = versions[base];
  const lightest = version?.loads[0];
  if (tested === null || version === undefined || lightest === undefined || !isCounted(version, bodyMass)) return false;
  const k = capacityOf('epley', tested.capacity, true);
  const toFailure = repsToFailure('epley', k, tested.capacity.reps, resistedLoad(version, lightest, bodyMass));
  return toFailure < 10 * bottom + (occurrences[0]?.floor ?? 0);
}

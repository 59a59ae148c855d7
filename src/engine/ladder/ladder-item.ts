/** One row of a ladder in one session as the plan shows it. */
import type { Dose } from '../../model/dose.js';
import type { Side } from '../../model/identity.js';
import type { AllowedOption, Item } from '../../model/plan.js';
import type { Reason } from '../../model/reason.js';
import { invariant } from '../../model/result.js';
import type { BlockContext } from '../block-context.js';
import { restOnReturn } from '../breaks/returns.js';
import { readCapacity } from '../capacity/read-capacity.js';
import { cautionsOf, doneOnly, returnsOf } from '../items/care-reasons.js';
import { reasonsOfHands } from '../items/explain-load.js';
import { versionReason } from '../items/explain-row.js';
import type { ItemsOfRow } from '../items/plan-item.js';
import { type SetPlace, sidesInOrder } from '../items/plan-item-sets.js';
import { recalledReasons } from '../items/recalled-reasons.js';
import type { Versions } from '../rows/fit-rows.js';
import { recallOf } from '../rows/from-marks.js';
import { DEAD_STOP_REPS } from '../rules/dead-stop-reps.js';
import { ladderNewStage } from '../rules/ladder-new-stage.js';
import { ladderTop } from '../rules/ladder-top.js';
import { MOBILITY_FIXED } from '../rules/mobility-fixed.js';
import { SWING_CAP } from '../rules/swing-cap.js';
import { versionOf } from '../versions/chain-versions.js';
import type { Judged } from '../versions/judge-version.js';
import { ladderEasier } from './ladder-easier.js';
import type { LadderRow } from './ladder-row.js';
import { ladderSets, rungAt } from './ladder-sets.js';
import type { LadderStep } from './ladder-step.js';
import { talkOf } from './ladder-talk.js';
import { rungReason } from './ladder-why.js';
import { mostOfSwing } from './rungs-of-swing.js';

/** The item of the row's `index`th occurrence. */
export function itemsOfLadder(context: BlockContext, row: LadderRow, versions: Versions): ItemsOfRow {
  const { fitted, ladder, result, sessions } = row;
  const choice = [...versionReason(fitted), ...cautionsOf(fitted, row.cares)];
  const sides = new Map(
    fitted.chain.judged.map((judged) => {
      return [judged, sidesInOrder(judged.exercise.facts.sides, weakerSide(context, judged))];
    }),
  );
  return (index) => {
    const step = result.steps[index];
    const session = sessions[index];
    invariant(step !== undefined && session !== undefined, 'an item stands in a session');
    const rung = rungAt(ladder, step.rung);
    const judged = judgedAt(row, rung.exercise);
    const { facts } = judged.exercise;
    const place: SetPlace = {
      block: context.client.blocksBefore + 1,
      occurrence: session.queued.occurrence,
      row: fitted.row.id,
      sides: sides.get(judged) ?? ['both'],
    };
    const sets = ladderSets(place, ladder, step, facts.sides);
    const sure = rungAt(ladder, step.otherwise?.rung ?? step.rung);
    const { talk, reasons } = talkOf(fitted.row, facts.way, context.standing.talk);
    return {
      id: `${ladder.id}/${step.week}`,
      row: fitted.row.id,
      exercise: judged.exercise.id,
      ...doneOnly(judged),
      way: facts.way,
      sides: facts.sides,
      tempo: 'normal',
      restSeconds: restOnReturn(context, session.queued.date, facts.way, fitted.dose, fitted.row.restSeconds),
      asked: { ...askedBy(fitted.dose), reserve: null, sets: sets.length / place.sides.length },
      capacity: null,
      allowed: step.considered.map((one) => optionOf(row, one)),
      relaxed: [],
      sets,
      easier: ladderEasier(context, versions, ladder, { judged: judgedAt(row, sure.exercise), rung: sure, sets }),
      harder: versions.besideOf(judged).harder,
      reasons: [
        ...withCautions(row, step),
        ...reasonsOfDose(context, row, step),
        ...reasonsOfHands(sets),
        ...reasons,
        ...choice,
        ...returnsOf(context, fitted, session.queued.date),
        ...recalledReasons(context, fitted, rung.exercise, { index, day: session.queued.date }),
      ],
      ...(talk === null ? {} : { talk }),
      rung: { number: step.rung + 1, of: ladder.rungs.length },
    };
  };
}

function judgedAt({ fitted }: LadderRow, id: string): Judged {
  const judged = fitted.chain.judged.find(({ exercise }) => exercise.id === id);
  invariant(judged !== undefined, 'a ladder stays among the versions of its row');
  return judged;
}

function weakerSide(context: BlockContext, judged: Judged): Side | 'both' {
  if (judged.exercise.facts.sides !== 'each') return 'both';
  const version = versionOf(judged);
  const { side } = recallOf(context, judged);
  return side ?? readCapacity(context, judged, version)?.capacity.side ?? 'both';
}

function optionOf({ ladder }: LadderRow, { rung: at, refusedBy }: LadderStep['considered'][number]): AllowedOption {
  const { exercise, load } = rungAt(ladder, at);
  const grams = load === null || 'band' in load ? 0 : load.grams;
  const open = { exercise, tempo: 'normal', grams, predicted: 0, rung: at + 1 } as const;
  return refusedBy === undefined ? open : { ...open, refusedBy };
}

/** The range of the programme's dose, in what it counts; a round counts as one. */
function askedBy(dose: Dose): Pick<Item['asked'], 'min' | 'max' | 'unit'> {
  switch (dose.kind) {
    case 'sets':
      return { ...dose.reps, unit: 'reps' };
    case 'timed':
      return { ...dose.seconds, unit: 'seconds' };
    case 'distance':
      return { ...dose.metres, unit: 'metres' };
    case 'every':
      return { min: dose.reps, max: dose.reps, unit: 'reps' };
    case 'main-next':
      return { min: dose.main, max: dose.main, unit: 'reps' };
    case 'steps': {
      const sum = dose.reps.reduce((total, reps) => total + reps, 0);
      return { min: sum, max: sum, unit: 'reps' };
    }
    case 'rounds':
      return { min: 1, max: 1, unit: 'reps' };
  }
}

/** Where a caution keeps it from a new stage, which. */
function withCautions({ cares }: LadderRow, { reasons }: LadderStep): readonly Reason[] {
  const met = new Set(cares.flatMap(({ care }) => care.map(({ caution }) => caution.what)));
  const cautions = [...met].map((what) => ({ name: 'caution', value: what, unit: '' }));
  return reasons.map((reason) =>
    reason.rule === ladderNewStage.row.id ? { ...reason, inputs: [...reason.inputs, ...cautions] } : reason,
  );
}

/** Why this load to begin with, and why no more of it. */
function reasonsOfDose(context: BlockContext, row: LadderRow, step: LadderStep): readonly Reason[] {
  const { ladder, began, fitted } = row;
  const rung = rungAt(ladder, step.rung);
  const { facts } = judgedAt(row, rung.exercise).exercise;
  const most = mostOfSwing({ facts, inForce: context.rules.valueOf });
  const capped = facts.way === 'swing' && mostAsked(fitted.dose) > most;
  return [
    ...(began.rule === null ? [] : [rungReason(began.rule, 'coach', ladder, ladder.start)]),
    ...(rung.deadStop ? [rungReason(DEAD_STOP_REPS, 'client', ladder, step.rung)] : []),
    ...(capped
      ? [rungReason(SWING_CAP, 'client', ladder, step.rung, [{ name: 'most', value: most, unit: 'reps' }])]
      : []),
    ...(isLast(row, step) ? [rungReason(ladderTop.row, 'coach', ladder, step.rung)] : []),
    ...(ladder.way === 'mobility' ? [rungReason(MOBILITY_FIXED, 'client', ladder, step.rung)] : []),
  ];
}

/** Work on the last rung of all: nothing above it was asked. */
const isLast = ({ ladder }: LadderRow, { easy, rung }: LadderStep): boolean =>
  !easy && ladder.way !== 'mobility' && rung === ladder.rungs.length - 1;

/** Most reps of a set as the programme has it; 0 of a dose that does not count reps. */
function mostAsked(dose: Dose): number {
  switch (dose.kind) {
    case 'sets':
      return dose.reps.max;
    case 'every':
      return dose.reps;
    case 'main-next':
      return Math.max(dose.main, dose.next);
    case 'steps':
      return Math.max(...dose.reps);
    default:
      return 0;
  }
}

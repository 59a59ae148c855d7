/**
 * Whether one exercise may be planned for this client: cautions, kit, room and sign-off, its own and those of a
 * combination's parts. Which of several allowed exercises is chosen stands elsewhere.
 */
import type { Day } from '../../model/day.js';
import type { Exercise } from '../../model/exercise.js';
import type { MakeableLoad } from '../../model/kit.js';
import type { BandLoad } from '../../model/ladder.js';
import type { Refusal } from '../../model/problems-plan.js';
import type { Grams, PerMille } from '../../model/quantity.js';
import type { BlockContext } from '../block-context.js';
import { isAtMost } from '../kit/at-most.js';
import { listBands } from '../kit/list-bands.js';
import { type LoadLimits, listLoads } from '../kit/list-loads.js';
import { PLATES_A_SIDE } from '../rules/plates-a-side.js';
import { SAME_BELL } from '../rules/same-bell.js';
import { UNEQUAL_AT_MOST } from '../rules/unequal-at-most.js';
import { UNEQUAL_NEAR } from '../rules/unequal-near.js';
import type { EasierWay } from './linked-versions.js';
import { holdsInBlock, keepsHandsEmpty, type Meeting, meetCautions } from './meet-caution.js';
import { readSignOff, type SignOffRead } from './read-sign-off.js';
import { type Refuse, roomRefusals } from './room-refusals.js';

export interface Judged {
  readonly exercise: Exercise;
  /** In every session of the block, whether it was done before or not. */
  readonly allowed: boolean;
  /** Every ground for refusing it, in the order caution, kit, room, sign-off; then those of a combination's parts. */
  readonly refusals: readonly Refusal[];
  /** What it can be done with, lightest first; the body alone is one load of 0 g. Without bands. */
  readonly loads: readonly MakeableLoad[];
  /** The bands it can be done with, the easiest to stretch first. Without any load or band it is refused. */
  readonly bands: readonly BandLoad[];
  /** The heaviest load the coach has signed off; `null` where nothing is said. */
  readonly signedOffTo: Grams | null;
  /** Cautions met and kept within: no gain is counted on. */
  readonly care: readonly Meeting[];
  /** Cautions met for which it is refused. */
  readonly refusedBy: readonly Meeting[];
  /**
   * Refused for nothing but a sign-off that lapses inside the block unless it is done before: the last day on which it
   * may first be done.
   */
  readonly lapses: Day | null;
  /** Where it is done in an easier way of its own. */
  readonly way: EasierWay | null;
  /** The kit makes more loads than the planner lists. */
  readonly tooMany: boolean;
}

export type Judge = (exercise: Exercise) => Judged;

/** Judges each exercise once. */
export function judgeFor(context: BlockContext): Judge {
  const known = new Map<string, Judged>();
  return (exercise) => {
    const before = known.get(exercise.id);
    if (before !== undefined) return before;
    const judged = judgeVersion(exercise, context);
    known.set(exercise.id, judged);
    return judged;
  };
}

function judgeVersion(exercise: Exercise, context: BlockContext): Judged {
  const { client } = context;
  const parts = partsOf(exercise, context);
  const own = groundsOf(exercise, context);
  const grounds = [own, ...parts.map((part) => groundsOf(part, context))];
  const refuse: Refuse = (cause, detail) => ({ exercise: exercise.id, cause, detail });
  const { facts } = exercise;
  const kit = grounds.every(({ signOff }) => signOff.bars)
    ? client.kit
    : client.kit.filter(({ kind }) => kind !== 'bar');
  const { loads: made, tooMany } = listLoads(kit, facts.kit, facts.holds, client.unit, limitsOf(context));
  const bands = listBands(kit, facts.kit, facts.holds);
  const held = keepsHandsEmpty(exercise, cautionsIn(context)) ? [] : made;
  const loads = facts.way === 'bodyweight' ? [BODY_ALONE] : mayBeBare(exercise) ? [BODY_ALONE, ...held] : made;
  const near = context.rules.valueOf(SAME_BELL);
  const within = loads.filter((load) => grounds.every(({ signOff }) => isPassed(load, signOff, near)));
  const kitRefusals: Refusal[] = [];
  if (loads.length + bands.length === 0) kitRefusals.push(refuse('load', loadWords(exercise)));
  const unpassed = grounds.flatMap(({ signOff, refuse: refuseThis }): readonly Refusal[] => {
    const open = loads.some((load) => isPassed(load, signOff, near));
    if (loads.length === 0 || open || signOff.refused !== undefined) return [];
    return [refuseThis('sign-off-load', signOff.label)];
  });
  const together = loads.length > 0 && within.length === 0 && bands.length === 0 ? [refuse('sign-off-load', '')] : [];
  const refusals = dropRepeats([
    ...own.before,
    ...kitRefusals,
    ...own.after,
    ...grounds.slice(1).flatMap(({ before, after }) => [...before, ...after]),
    ...unpassed,
    ...(grounds.some(({ signOff }) => signOff.refused !== undefined) || unpassed.length > 0 ? [] : together),
    ...missingParts(exercise, context).map((part) => refuse('part', part)),
  ]);
  const passed = grounds.flatMap(({ signOff }) => signOff.upTo ?? []);
  const lapses = grounds.flatMap(({ signOff }) => signOff.lapses ?? []);
  const able = within.length + bands.length > 0;
  const lapsesOnly = able && lapses.length > 0 && refusals.every(({ cause }) => cause === 'sign-off-lapsed');
  const met = grounds.flatMap((ground) => ground.met);
  return {
    exercise,
    allowed: refusals.length === 0,
    refusals,
    loads: within,
    bands,
    signedOffTo: passed.length === 0 ? null : Math.max(Math.min(...passed), ...within.map((load) => load.grams)),
    care: met.filter((meeting) => meeting.outcome === 'no gain'),
    refusedBy: met.filter((meeting) => meeting.outcome === 'refused'),
    lapses: lapsesOnly ? earliest(lapses) : null,
    way: null,
    tooMany,
  };
}

const earliest = (days: readonly Day[]): Day | null => [...days].sort((a, b) => a - b)[0] ?? null;

/** The parts of a combination, and theirs, each once; the combination itself is not among them. */
function partsOf(exercise: Exercise, context: BlockContext): readonly Exercise[] {
  const parts: Exercise[] = [];
  const add = (of: Exercise): void => {
    for (const id of of.facts.parts) {
      const part = context.exercises.get(id);
      if (part === undefined || part === exercise || parts.includes(part)) continue;
      parts.push(part);
      add(part);
    }
  };
  add(exercise);
  return parts;
}

const missingParts = (exercise: Exercise, context: BlockContext): readonly string[] =>
  exercise.facts.parts.filter((id) => context.exercises.get(id) === undefined);

interface Grounds {
  /** Before the loads and after them, in the order they are told. */
  readonly before: readonly Refusal[];
  readonly after: readonly Refusal[];
  readonly met: readonly Meeting[];
  readonly signOff: SignOffRead;
  readonly refuse: Refuse;
}

/** What stands against one exercise besides its loads. */
function groundsOf(exercise: Exercise, context: BlockContext): Grounds {
  const { client, standing } = context;
  const refuse: Refuse = (cause, detail) => ({ exercise: exercise.id, cause, detail });
  const met = meetCautions(exercise, cautionsIn(context));
  const before: Refusal[] = [];
  if (standing.moderate && isFast(exercise)) before.push(refuse('moderate', 'speed'));
  for (const { caution, outcome } of met) {
    if (outcome === 'refused') before.push(refuse(caution.degree === 'avoid' ? 'avoid' : 'take-care', caution.what));
  }
  for (const thing of exercise.facts.kit.things) {
    if (!client.kit.some((item) => item.kind === thing)) before.push(refuse('thing', thing));
  }
  const left = context.recalls.get(exercise.id)?.leave ?? null;
  if (left !== null) before.push(refuse('pain', left.where));
  const signOff = readSignOff(exercise, context);
  const { refused } = signOff;
  const signed = refused === undefined ? [] : [refuse(refused.cause, refused.detail)];
  return { before, after: [...roomRefusals(exercise, context, refuse), ...signed], met, signOff, refuse };
}

const cautionsIn = ({ standing, firstDay, lastDay }: BlockContext) =>
  standing.cautions.filter((caution) => holdsInBlock(caution, firstDay, lastDay));

const limitsOf = ({ rules }: BlockContext): LoadLimits => ({
  platesASide: rules.valueOf(PLATES_A_SIDE),
  unlike: rules.valueOf(UNEQUAL_AT_MOST),
  near: rules.valueOf(UNEQUAL_NEAR),
});

/** No part of a moderate plan: swing work, and whatever asks much speed. */
const isFast = ({ facts }: Exercise): boolean =>
  facts.way === 'swing' || facts.asks.some((ask) => ask.of === 'speed' && ask.degree === 'much');

/** Neither hand may hold more than was passed, even where two unequal bells are less between them. */
function isPassed(load: MakeableLoad, { upTo, label }: SignOffRead, near: PerMille): boolean {
  if (upTo === null) return true;
  // Whole bells only: of plates the figures add up in either unit.
  const otherUnit = load.pieces.length < 3 && load.label.endsWith(' lb') !== label.endsWith(' lb');
  const most = otherUnit ? upTo + Math.floor((upTo * near) / 1000) : upTo;
  return isAtMost(load, most) && (load.mode !== 'per-hand' || load.pieces.every(({ grams }) => grams <= most));
}

/** May be done with nothing in the hands, besides any load. */
const mayBeBare = ({ facts }: Exercise): boolean => facts.kit.unloaded || facts.kit.load.length === 0;

const BODY_ALONE: MakeableLoad = { grams: 0, mode: 'total', pieces: [], label: '' };

/** `2 × bell or bar`: what the exercise is loaded with, in the order it prefers. */
function loadWords(exercise: Exercise): string {
  const { load } = exercise.facts.kit;
  return load.map((way) => ('count' in way && way.count === 2 ? `2 × ${way.kind}` : way.kind)).join(' or ');
}

function dropRepeats(refusals: readonly Refusal[]): readonly Refusal[] {
  return refusals.filter((refusal, i) => {
    const { exercise, cause, detail } = refusal;
    const same = (other: Refusal) => other.exercise === exercise && other.cause === cause && other.detail === detail;
    return refusals.findIndex(same) === i;
  });
}

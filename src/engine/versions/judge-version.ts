/**
 * Whether one exercise may be planned for this client: cautions, kit, room and sign-off. Which of several allowed
 * exercises is chosen stands elsewhere.
 */
import { isoOfDay } from '../../model/day.js';
import type { Exercise, Way } from '../../model/exercise.js';
import type { MakeableLoad } from '../../model/kit.js';
import type { Refusal } from '../../model/problems-plan.js';
import type { Grams } from '../../model/quantity.js';
import { type BlockContext, names } from '../block-context.js';
import { isAtMost } from '../kit/at-most.js';
import { listLoads } from '../kit/list-loads.js';
import { CEILING_ARMS } from '../rules/ceiling-arms.js';
import { CEILING_LOAD } from '../rules/ceiling-load.js';
import { SIGN_OFF_LAPSES } from '../rules/sign-off-lapses.js';
import { holdsInBlock, type Meeting, meetCautions } from './meet-caution.js';

export interface Judged {
  readonly exercise: Exercise;
  readonly allowed: boolean;
  /** Every ground for refusing it, in the order caution, kit, room, sign-off. */
  readonly refusals: readonly Refusal[];
  /** What it can be done with, lightest first; the body alone is one load of 0 g. Empty only where refused. */
  readonly loads: readonly MakeableLoad[];
  /** The heaviest load the coach has signed off; `null` where nothing is said. */
  readonly signedOffTo: Grams | null;
  /** Cautions met and kept within: no gain is counted on. */
  readonly care: readonly Meeting[];
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

const WAYS_PLANNED: readonly Way[] = ['strength', 'bodyweight'];

function judgeVersion(exercise: Exercise, context: BlockContext): Judged {
  const { client, firstDay, lastDay, standing } = context;
  const met = meetCautions(
    exercise,
    standing.cautions.filter((caution) => holdsInBlock(caution, firstDay, lastDay)),
  );
  const refuse = (cause: Refusal['cause'], detail: string): Refusal => ({ exercise: exercise.id, cause, detail });
  const refusals: Refusal[] = [];
  const { facts } = exercise;
  if (!WAYS_PLANNED.includes(facts.way)) refusals.push(refuse('way', facts.way));
  if (facts.holds === 'assisted' || facts.holds === 'band') refusals.push(refuse('holds', facts.holds));
  for (const { caution, outcome } of met) {
    if (outcome === 'refused') refusals.push(refuse(caution.degree === 'avoid' ? 'avoid' : 'take-care', caution.what));
  }
  for (const thing of facts.kit.things) {
    if (!client.kit.some((item) => item.kind === thing)) refusals.push(refuse('thing', thing));
  }
  const signOff = readSignOff(exercise, context);
  const kit = signOff.bars ? client.kit : client.kit.filter((item) => item.kind !== 'bar');
  const { loads: made, tooMany } = listLoads(kit, facts.kit, facts.holds, client.unit);
  const loads = facts.way === 'bodyweight' ? [BODY_ALONE] : mayBeBare(exercise) ? [BODY_ALONE, ...made] : made;
  if (loads.length === 0) refusals.push(refuse('load', loadWords(exercise)));
  refusals.push(...roomRefusals(exercise, context, refuse));
  if (signOff.refused !== undefined) refusals.push(refuse(signOff.refused.cause, signOff.refused.detail));
  const within = loads.filter((load) => signOff.upTo === null || isSignedOff(load, signOff.upTo));
  if (loads.length > 0 && within.length === 0 && signOff.refused === undefined) {
    refusals.push(refuse('sign-off-load', signOff.label));
  }
  return {
    exercise,
    allowed: refusals.length === 0,
    refusals: dropRepeats(refusals),
    loads: within,
    signedOffTo: signOff.upTo === null ? null : Math.max(signOff.upTo, ...within.map((load) => load.grams)),
    care: met.filter((meeting) => meeting.outcome === 'no gain'),
    tooMany,
  };
}

/** Neither hand may hold more than was passed, even where two unequal bells are less between them. */
const isSignedOff = (load: MakeableLoad, upTo: Grams): boolean =>
  isAtMost(load, upTo) && (load.mode !== 'per-hand' || load.pieces.every(({ grams }) => grams <= upTo));

/** May be done with nothing in the hands, besides any load. */
const mayBeBare = ({ facts }: Exercise): boolean => facts.kit.unloaded || facts.kit.load.length === 0;

const BODY_ALONE: MakeableLoad = { grams: 0, mode: 'total', pieces: [], label: '' };

/** `2 × bell or bar`: what the exercise is loaded with, in the order it prefers. */
function loadWords(exercise: Exercise): string {
  const { load } = exercise.facts.kit;
  return load.map((way) => ('count' in way && way.count === 2 ? `2 × ${way.kind}` : way.kind)).join(' or ');
}

type Refuse = (cause: Refusal['cause'], detail: string) => Refusal;

function roomRefusals(exercise: Exercise, context: BlockContext, refuse: Refuse): readonly Refusal[] {
  const { ceiling, floorMillimetres: floor } = exercise.facts.room;
  const room = context.client.room;
  const refusals: Refusal[] = [];
  if (ceiling !== 'any') {
    const needed = context.rules.valueOf(ceiling === 'load overhead' ? CEILING_LOAD : CEILING_ARMS);
    if (room.ceilingMillimetres === undefined) refusals.push(refuse('ceiling-unknown', String(needed)));
    else if (room.ceilingMillimetres < needed) refusals.push(refuse('ceiling-low', String(needed)));
  }
  if (floor !== undefined) {
    const detail = `${floor.long} × ${floor.wide}`;
    const clear = room.floorMillimetres;
    if (clear === undefined) refusals.push(refuse('floor-unknown', detail));
    else if (!fits(floor, clear)) refusals.push(refuse('floor-small', detail));
  }
  return refusals;
}

interface Floor {
  readonly long: number;
  readonly wide: number;
}

const fits = (needed: Floor, clear: Floor): boolean =>
  Math.max(needed.long, needed.wide) <= Math.max(clear.long, clear.wide) &&
  Math.min(needed.long, needed.wide) <= Math.min(clear.long, clear.wide);

interface SignOffRead {
  /** The heaviest load seen and passed, in grams as the exercise counts them; `null` where nothing is said. */
  readonly upTo: Grams | null;
  /** The same as the coach wrote it. */
  readonly label: string;
  /** A bar may be used. */
  readonly bars: boolean;
  readonly refused?: { readonly cause: 'sign-off-missing' | 'sign-off-lapsed'; readonly detail: string };
}

/**
 * The latest sign-off decides. It lapses when the movement was neither signed off nor tested for the days of
 * `sign-off-lapses` before the block begins; in the block it is used. Loads above the one signed off fall away, also
 * where the exercise could go home without a sign-off: the coach has said how far. A sign-off without a load passes
 * the body alone where a sign-off is needed.
 */
function readSignOff(exercise: Exercise, context: BlockContext): SignOffRead {
  const { client, today, firstDay } = context;
  const latest = client.signOffs
    .filter((signOff) => signOff.date <= today && names(context, signOff.exercise, exercise))
    .sort((a, b) => b.date - a.date || (a.upTo?.grams ?? 0) - (b.upTo?.grams ?? 0))[0];
  const needed = needsSignOff(exercise);
  if (latest === undefined) {
    const open = { upTo: null, label: '', bars: needed };
    return needed ? { ...open, refused: { cause: 'sign-off-missing', detail: '' } } : open;
  }
  const tests = client.tests.filter((test) => test.date <= today && names(context, test.exercise, exercise));
  const used = Math.max(latest.date, ...tests.map((test) => test.date));
  const lapsed = firstDay - used > context.rules.valueOf(SIGN_OFF_LAPSES);
  const upTo = latest.upTo?.grams ?? (needed ? 0 : null);
  const label = latest.upTo === undefined ? '' : `${latest.upTo.figure} ${latest.upTo.unit}`;
  const read = { upTo, label, bars: !lapsed };
  if (!needed || !lapsed) return read;
  return { ...read, refused: { cause: 'sign-off-lapsed', detail: isoOfDay(latest.date) } };
}

/**
 * Where the author asks for it, and always for fast, loaded-twist and loaded overhead work and for what only a bar
 * can load (common practice, no source): also when reached as an easier or a harder version. A bar needs one even
 * where another load would not.
 */
function needsSignOff(exercise: Exercise): boolean {
  const { signOff, asks, kit, room } = exercise.facts;
  if (signOff || room.ceiling === 'load overhead') return true;
  if (asks.some((ask) => ask.of === 'speed' || ask.of === 'loaded twist')) return true;
  if (kit.load.length === 0) return false;
  return asks.some((ask) => ask.of === 'overhead') || kit.load.every((way) => way.kind === 'bar');
}

function dropRepeats(refusals: readonly Refusal[]): readonly Refusal[] {
  return refusals.filter(
    (refusal, i) =>
      refusals.findIndex((other) => other.cause === refusal.cause && other.detail === refusal.detail) === i,
  );
}

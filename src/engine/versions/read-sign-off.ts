/** What the coach has seen and passed of one exercise, how far, and until when it holds. */
import { addDays, type Day, isoOfDay } from '../../model/day.js';
import type { Exercise } from '../../model/exercise.js';
import type { Grams } from '../../model/quantity.js';
import { type BlockContext, names } from '../block-context.js';
import { SIGN_OFF_LAPSES } from '../rules/sign-off-lapses.js';

export interface SignOffRead {
  /** The heaviest load seen and passed, in grams as the exercise counts them; `null` where nothing is said. */
  readonly upTo: Grams | null;
  /** The same as the coach wrote it. */
  readonly label: string;
  /** A bar may be used. */
  readonly bars: boolean;
  readonly refused?: { readonly cause: 'sign-off-missing' | 'sign-off-lapsed'; readonly detail: string };
  /** It lapses inside the block unless the exercise is done before: the last day on which it may first be done. */
  readonly lapses: Day | null;
}

/**
 * The latest sign-off decides. It lapses when the movement was not used for the days of `sign-off-lapses`: neither
 * signed off, nor tested, nor planned in a row of the programme that names it, in a session before. That is asked for
 * every session of the block. Loads above the one signed off fall away, also where the exercise could go home without
 * a sign-off: the coach has said how far. A sign-off without a load passes the body alone, or any band, where a
 * sign-off is needed.
 */
export function readSignOff(exercise: Exercise, context: BlockContext): SignOffRead {
  const { client, today, firstDay } = context;
  const latest = client.signOffs
    .filter((signOff) => signOff.date <= today && names(context, signOff.exercise, exercise))
    .sort((a, b) => b.date - a.date || (a.upTo?.grams ?? 0) - (b.upTo?.grams ?? 0))[0];
  const needed = needsSignOff(exercise);
  if (latest === undefined) {
    const open = { upTo: null, label: '', bars: needed, lapses: null };
    return needed ? { ...open, refused: { cause: 'sign-off-missing', detail: '' } } : open;
  }
  const tests = client.tests.filter((test) => test.date <= today && names(context, test.exercise, exercise));
  const used = Math.max(latest.date, ...tests.map((test) => test.date));
  const lapsed = firstDay - used > context.rules.valueOf(SIGN_OFF_LAPSES);
  const lapses = lapsed ? null : lapsesInBlock(exercise, latest.date, used, context);
  const upTo = latest.upTo?.grams ?? (needed ? 0 : null);
  const label = latest.upTo === undefined ? '' : `${latest.upTo.figure} ${latest.upTo.unit}`;
  const read = { upTo, label, bars: !lapsed && (needed || lapses === null), lapses: needed ? lapses : null };
  if (!needed || (!lapsed && lapses === null)) return read;
  return { ...read, refused: { cause: 'sign-off-lapsed', detail: isoOfDay(latest.date) } };
}

/** The last day of use before it lapses, plus the days it holds; `null` where it holds for every session. */
function lapsesInBlock(exercise: Exercise, seen: Day, used: number, context: BlockContext): Day | null {
  const holds = context.rules.valueOf(SIGN_OFF_LAPSES);
  let last = addDays(seen, used - seen);
  for (const { day, session } of context.days) {
    if (day - last > holds) return addDays(last, holds);
    if (isPlannedIn(exercise, session, context)) last = day;
  }
  return null;
}

function isPlannedIn(exercise: Exercise, session: string, context: BlockContext): boolean {
  const template = context.programme.sessions.find(({ id }) => id === session);
  return (template?.blocks ?? []).some(({ rows }) =>
    rows.some(({ target }) => target.kind === 'exercise' && names(context, target.id, exercise)),
  );
}

/**
 * Where the author asks for it, and always for fast, loaded-twist and loaded overhead work and for what only a bar
 * can load (common practice, no source): also when reached as an easier or a harder version, in a warm-up, or as the
 * part of a combination. A bar needs one even where another load would not.
 */
export function needsSignOff(exercise: Exercise): boolean {
  const { signOff, asks, kit, room, way } = exercise.facts;
  if (signOff || way === 'swing' || room.ceiling === 'load overhead') return true;
  if (asks.some((ask) => ask.of === 'speed' || ask.of === 'loaded twist')) return true;
  if (kit.load.length === 0) return false;
  return asks.some((ask) => ask.of === 'overhead') || kit.load.every((need) => need.kind === 'bar');
}

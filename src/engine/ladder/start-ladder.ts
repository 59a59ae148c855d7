/** With which load a ladder begins, and how that is known. Which dose it begins with stands with the ways of working. */
import type { Test } from '../../model/client.js';
import type { Day } from '../../model/day.js';
import type { Exercise } from '../../model/exercise.js';
import type { RungLoad } from '../../model/ladder.js';
import type { Grams } from '../../model/quantity.js';
import type { Rule } from '../../model/reason.js';
import { type BlockContext, names } from '../block-context.js';
import { trustAfterBreak, trustIn, WHOLE } from '../breaks/trust.js';
import type { LastRung } from '../history/recall.js';
import { heaviestUpTo } from '../kit/at-most.js';
import type { LadderFitted } from '../rows/fit-rows.js';
import { recallOf, rowKey, soreDown } from '../rows/from-marks.js';
import { roleBell } from '../rows/role-bell.js';
import { LADDER_START_LIGHTEST } from '../rules/ladder-start-lightest.js';
import { LADDER_START_MAIN_BELL } from '../rules/ladder-start-main-bell.js';
import { LADDER_START_ROLE } from '../rules/ladder-start-role.js';
import { LADDER_START_SIGNED_OFF } from '../rules/ladder-start-signed-off.js';
import { LADDER_START_TESTED } from '../rules/ladder-start-tested.js';
import { RETURN_LIGHTER } from '../rules/return-lighter.js';
import type { Judged } from '../versions/judge-version.js';

export interface LadderStart {
  /** Index among the loads. */
  readonly load: number;
  /** How it is known; `null` where there is nothing in hand to choose. */
  readonly rule: Rule | null;
  /** Never tested, and either a first block or no main bell stated for the pattern: new to the client. */
  readonly fresh: boolean;
  /** Loads above it are not asked for. */
  readonly stays: boolean;
  /** The rung marked last, where it goes on from there. */
  readonly last: LastRung | null;
}

/** The easiest first: of bands that help, the hardest to stretch. `null` is the body alone. */
export function loadsOf({ loads, bands, exercise }: Judged): readonly (RungLoad | null)[] {
  if (bands.length > 0) return exercise.facts.holds === 'assisted' ? [...bands].reverse() : bands;
  return loads.map((load) => (load.grams === 0 ? null : load));
}

/**
 * With the rung marked last; else by the row's role for the bell; else the latest test of the exercise, of one-sided work the lighter side's, and after
 * a long break one load lighter; else the main bell of the pattern; else, of fast lifts, the heaviest load passed; else
 * the lightest. Never above what a test or a main bell says, unless even the lightest load is.
 */
export function startLadder(context: BlockContext, fitted: LadderFitted, judged: Judged): LadderStart {
  const { exercise } = judged;
  const loads = loadsOf(judged);
  const stated = context.client.mainBells.some(({ pattern }) => pattern === exercise.facts.pattern);
  const tested = trustedTest(context, exercise);
  const back = tested === null ? trustAfterBreak(context) : WHOLE;
  const recall = recallOf(context, judged);
  const marked = lastRung(context, fitted);
  const seen = Math.max(recall.lighter, soreDown(recall, marked?.day ?? tested?.date ?? null));
  const last = marked === null ? null : { ...marked, lighter: Math.max(marked.lighter, seen) };
  const untested = tested === null && (context.client.blocksBefore === 0 || !stated || back.kind === 'nothing');
  const fresh = last === null ? untested : last.rung.deadStop;
  const down = Math.max(
    recall.lighter,
    soreDown(recall, null),
    back.kind === 'whole' ? 0 : context.rules.valueOf(RETURN_LIGHTER),
  );
  const found = (load: number, rule: Rule | null, stays = false): LadderStart => ({ load, rule, fresh, stays, last });
  if (loads.every((load) => load === null)) return found(0, null);
  const role = fitted.row.bell ?? (fitted.dose.kind === 'main-next' ? 'main' : null);
  const named = role === null ? null : roleBell(context, exercise, judged.loads, role);
  if (named !== null) {
    return found(Math.max(0, indexOf(loads, named.load) - down), LADDER_START_ROLE, role === 'lighter');
  }
  if (last !== null) {
    const at = loadMarked(judged, loads, last);
    if (at >= 0) return found(Math.max(0, at - last.lighter), null);
  }
  if (tested !== null) {
    const heaviest = judged.bands.length > 0 ? null : heaviestUpTo(judged.loads, tested.grams);
    const index = heaviest === null ? -1 : judged.loads.indexOf(heaviest);
    if (index >= 0) return found(Math.max(0, index - Math.max(tested.lighter, seen)), LADDER_START_TESTED);
    return found(0, LADDER_START_LIGHTEST);
  }
  if (stated) {
    const main = roleBell(context, exercise, judged.loads, 'main');
    if (main === null) return found(0, LADDER_START_LIGHTEST);
    return found(Math.max(0, indexOf(loads, main.load) - down), LADDER_START_MAIN_BELL);
  }
  if (exercise.facts.way === 'swing' && judged.signedOffTo !== null) {
    return found(Math.max(0, loads.length - 1 - down), LADDER_START_SIGNED_OFF);
  }
  return found(0, LADDER_START_LIGHTEST);
}

const indexOf = (loads: readonly (RungLoad | null)[], grams: Grams): number =>
  Math.max(
    0,
    loads.findIndex((load) => load !== null && 'grams' in load && load.grams === grams),
  );

/** Of its chain the version marked last, unless a break has taken from it what it said; after one, a load lighter. */
export function lastRung(
  context: BlockContext,
  fitted: Pick<LadderFitted, 'session' | 'row' | 'chain'>,
): LastRung | null {
  const key = rowKey(fitted);
  const ends = fitted.chain.judged.flatMap((judged) => recallOf(context, judged).rungIn.get(key) ?? []);
  const [last] = ends.sort((a, b) => b.day - a.day);
  if (last === undefined) return null;
  const trust = trustIn(context, last.day);
  if (trust.kind === 'nothing') return null;
  if (trust.kind === 'whole') return last;
  return { ...last, earned: 0, lighter: Math.max(last.lighter, context.rules.valueOf(RETURN_LIGHTER)) };
}

/** The load of that rung or the heaviest below it; of a harder version the heaviest of this one, from which it follows. */
function loadMarked({ exercise, loads: own }: Judged, loads: readonly (RungLoad | null)[], { rung }: LastRung): number {
  if (rung.exercise !== exercise.id) return loads.length - 1;
  const { load } = rung;
  if (load === null || 'band' in load) return loads.findIndex((one) => one?.label === load?.label);
  const heaviest = heaviestUpTo(own, load.grams);
  return heaviest === null ? -1 : own.indexOf(heaviest);
}

interface TrustedTest {
  readonly date: Day;
  readonly grams: Grams;
  /** Loads to go down from it, after a break. */
  readonly lighter: number;
}

/** `null` without a test, or where a break has taken from it what it said. */
function trustedTest(context: BlockContext, exercise: Exercise): TrustedTest | null {
  const test = latestTest(context, exercise);
  if (test === null) return null;
  const trust = trustIn(context, test.date);
  if (trust.kind === 'nothing') return null;
  const lighter = trust.kind === 'lighter' ? context.rules.valueOf(RETURN_LIGHTER) : 0;
  return { date: test.date, grams: test.load?.grams ?? 0, lighter };
}

/** Up to the day of planning, the latest, of one day the lighter; of one-sided work the lighter side's latest. */
export function latestTest(context: BlockContext, exercise: Exercise): Test | null {
  const tests = context.client.tests
    .filter((test) => test.date <= context.today && names(context, test.exercise, exercise))
    .sort((a, b) => b.date - a.date || gramsOf(a) - gramsOf(b));
  if (exercise.facts.sides !== 'each') return tests[0] ?? null;
  const sides = ['left', 'right'].flatMap(
    (side) => tests.find((test) => test.side === side || test.side === 'both') ?? [],
  );
  return [...sides].sort((a, b) => gramsOf(a) - gramsOf(b))[0] ?? null;
}

const gramsOf = ({ load }: Test): Grams => load?.grams ?? 0;

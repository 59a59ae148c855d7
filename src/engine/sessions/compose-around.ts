/** What comes before and after the work of a session: the coach's own block, or one composed of easy exercises. */

import type { Quality } from '../../model/exercise.js';
import { type RowId, rowId, type Side } from '../../model/identity.js';
import type { MakeableLoad } from '../../model/kit.js';
import type { Problem } from '../../model/problem.js';
import type { Block, SessionTemplate } from '../../model/programme.js';
import type { Seconds } from '../../model/quantity.js';
import type { Reason } from '../../model/reason.js';
import type { Result } from '../../model/result.js';
import type { BlockContext } from '../block-context.js';
import { isOlder } from '../effort/plan-effort.js';
import { drillsOfSide, type SideDrill } from '../history/seen/drills-of-side.js';
import { type FittedRow, fitRow, type Versions } from '../rows/fit-rows.js';
import { sumOfSteps } from '../rows/planned-by.js';
import { BETWEEN_EXERCISES } from '../rules/between-exercises.js';
import { COOL_DOWN_OLDER } from '../rules/cool-down-older.js';
import { DOWN_OR_UP } from '../rules/down-or-up.js';
import { EASY_SET } from '../rules/easy-set.js';
import { WARM_UP } from '../rules/warm-up.js';
import { WARM_UP_MOST } from '../rules/warm-up-most.js';
import { WARM_UP_OLDER } from '../rules/warm-up-older.js';
import { WARM_UP_OLDER_MOST } from '../rules/warm-up-older-most.js';
import { WARM_UP_ROUNDS } from '../rules/warm-up-rounds.js';
import { WARM_UP_STANDING } from '../rules/warm-up-standing.js';
import type { Judged } from '../versions/judge-version.js';
import { holdsInBlock } from '../versions/meet-caution.js';
import {
  chooseCoolDown,
  chooseWarmUp,
  type DrillKind,
  type EasierDrill,
  easierDrills,
  floorLast,
  goesDown,
  listDrills,
  openDrills,
  patternOf,
  rowOfDrill,
} from './choose-drills.js';
import { minutesOf, secondsOfRows } from './count-seconds.js';
import { asksFloor } from './order-rows.js';
import { tenthsOfRep, timeRow } from './seconds-of-set.js';

/** What one set of a drill is. */
export type DrillDose =
  | { readonly kind: 'reps'; readonly reps: number; readonly steps?: readonly number[] }
  | { readonly kind: 'seconds'; readonly seconds: Seconds }
  | { readonly kind: 'metres'; readonly metres: number }
  | { readonly kind: 'round' };

/** One exercise of a warm-up or cool-down. */
export interface Drill {
  readonly row: RowId;
  readonly judged: Judged;
  /** `null` for the body alone. */
  readonly load: MakeableLoad | null;
  readonly dose: DrillDose;
  readonly sets: number;
  readonly restSeconds: Seconds;
  /** One time through all its sets, with the way to the next. */
  readonly seconds: Seconds;
  readonly easier: readonly EasierDrill[];
  /** Done in one time through, where that is not each of its sides once; and why. */
  readonly sides?: readonly Side[];
  readonly reasons?: readonly Reason[];
}

export interface Around {
  readonly kind: DrillKind;
  readonly name: string;
  /** All of it; what the drills leave of it is easy walking. */
  readonly minutes: number;
  /** Times through all its drills. */
  readonly rounds: number;
  readonly drills: readonly Drill[];
  /** The coach's own. */
  readonly own: boolean;
  /** Why it is longer than others': `age`, or whose the caution on holding the breath is. Empty where it is not. */
  readonly because: readonly string[];
}

interface AroundSession {
  readonly warmUp: Around;
  /** Without drills and minutes where there is none. */
  readonly coolDown: Around;
}

export type AroundOf = (session: SessionTemplate, rows: readonly FittedRow[]) => AroundSession;

/** Longer from the age of `older-from`, or with a caution on holding the breath, as blood pressure asks. */
function groundsFor(context: BlockContext): readonly string[] {
  const { standing, firstDay, lastDay } = context;
  const breath = standing.cautions.filter(
    (caution) => caution.what === 'breath hold' && holdsInBlock(caution, firstDay, lastDay),
  );
  return [...(isOlder(context) ? ['age'] : []), ...new Set(breath.map(({ by }) => by))];
}

const DOWN: readonly Quality[] = ['floor', 'lying on the back', 'head down'];

function warmsUpStanding(context: BlockContext): boolean {
  const { client, standing, rules, firstDay, lastDay } = context;
  if (rules.valueOf(WARM_UP_STANDING) === 0) return false;
  const fell = (client.health.falls ?? 0) > 0;
  const down = standing.cautions.some(
    (caution) => DOWN.some((of) => of === caution.what) && holdsInBlock(caution, firstDay, lastDay),
  );
  return isOlder(context) || fell || down;
}

/** For each session and the rows done in it. Reports what stands against a row of the coach's own blocks. */
export function planAround(
  context: BlockContext,
  templates: readonly SessionTemplate[],
  versions: Versions,
): Result<AroundOf> {
  const problems: Problem[] = [];
  const own = new Map<string, Around>();
  for (const session of templates) {
    for (const kind of ['warm-up', 'cool-down'] as const) {
      const blocks = session.blocks.filter((block) => block.kind === kind);
      if (blocks.length === 0) continue;
      const read = readOwn(context, session, blocks, kind, versions);
      problems.push(...read.problems);
      own.set(`${session.id}/${kind}`, read.value);
    }
  }
  const known = new Map<string, AroundSession>();
  const composing = { context, versions, because: groundsFor(context), drills: listDrills(context, versions) };
  const of: AroundOf = (session, rows) => {
    const key = [session.id, ...rows.map(({ row }) => row.id)].join(' ');
    const before = known.get(key);
    if (before !== undefined) return before;
    const made = {
      warmUp: own.get(`${session.id}/warm-up`) ?? composeWarmUp(composing, session, rows),
      coolDown: own.get(`${session.id}/cool-down`) ?? composeCoolDown(composing, session, rows),
    };
    known.set(key, made);
    return made;
  };
  return { value: of, problems };
}

/** As written, at the bottom of each range and with the lightest load there is; minutes counted at its longest. */
function readOwn(
  context: BlockContext,
  session: SessionTemplate,
  blocks: readonly Block[],
  kind: DrillKind,
  versions: Versions,
): Result<Around> {
  const read = blocks.flatMap((block) =>
    block.rows.map((row) =>
      fitRow(context, { session, block, blockIndex: session.blocks.indexOf(block), row }, versions),
    ),
  );
  const fitted = read.flatMap(({ value }) => (value === null ? [] : [value]));
  const timed = fitted.map((row) => {
    const times = timeRow(row, context);
    return { fitted: row, times, sets: row.sets, feeler: false, warmUp: false, trial: false, test: 0 };
  });
  const drills = timed.flatMap((row): readonly Drill[] => {
    const judged = row.fitted.chain.judged[row.fitted.chain.base];
    if (judged === undefined) return [];
    const [load = null] = row.fitted.chain.versions[row.fitted.chain.base]?.loads ?? [];
    return [
      {
        row: row.fitted.row.id,
        judged,
        load: load !== null && load.pieces.length === 0 ? null : load,
        dose: asWritten(row.fitted),
        sets: row.sets,
        restSeconds: row.fitted.row.restSeconds,
        seconds: secondsOfRows([row], context.rules),
        easier: easierDrills(judged, versions),
      },
    ];
  });
  const minutes = minutesOf(secondsOfRows(timed, context.rules), context.rules);
  const name = blocks[0]?.name ?? '';
  return {
    value: { kind, name, minutes, rounds: 1, drills, own: true, because: [] },
    problems: read.flatMap(({ problems }) => problems),
  };
}

function asWritten({ dose }: FittedRow): DrillDose {
  switch (dose.kind) {
    case 'sets':
      return { kind: 'reps', reps: dose.reps.min };
    case 'timed':
      return { kind: 'seconds', seconds: dose.seconds.min };
    case 'distance':
      return { kind: 'metres', metres: dose.metres.min };
    case 'every':
      return { kind: 'reps', reps: dose.reps };
    case 'main-next':
      return { kind: 'reps', reps: dose.main + dose.next };
    case 'steps':
      return { kind: 'reps', reps: sumOfSteps(dose.reps), steps: dose.reps };
    case 'rounds':
      return { kind: 'round' };
  }
}

/** What is composed with: `drills` are all that are open to this client. */
interface Composing {
  readonly context: BlockContext;
  readonly versions: Versions;
  readonly because: readonly string[];
  readonly drills: readonly Judged[];
}

function composeWarmUp(composing: Composing, session: SessionTemplate, rows: readonly FittedRow[]): Around {
  const { context, versions, because, drills } = composing;
  const { rules } = context;
  const minutes = rules.valueOf(because.length > 0 ? WARM_UP_OLDER : WARM_UP);
  const most = rules.valueOf(because.length > 0 ? WARM_UP_OLDER_MOST : WARM_UP_MOST);
  const standing = warmsUpStanding(context);
  const chosen = chooseWarmUp(drills, session, rows, versions, standing);
  const open = openDrills(drills, 'warm-up', session, rows).filter(({ exercise }) => !standing || !goesDown(exercise));
  const sided = drillsOfSide(context, rows, [...open.filter((one) => !chosen.includes(one)), ...chosen], patternOf);
  const fitting = makeDrills(context, 'warm-up', chosen, Math.max(minutes, most), versions);
  return fill(context, 'warm-up', withSided(context, fitting, minutes, sided, versions), minutes, because);
}

function composeCoolDown(composing: Composing, session: SessionTemplate, rows: readonly FittedRow[]): Around {
  const { context, versions, because, drills } = composing;
  if (because.length === 0) {
    return { kind: 'cool-down', name: '', minutes: 0, rounds: 1, drills: [], own: false, because };
  }
  const minutes = context.rules.valueOf(COOL_DOWN_OLDER);
  const fitting = makeDrills(context, 'cool-down', chooseCoolDown(drills, session, rows), minutes, versions);
  return fill(context, 'cool-down', fitting, minutes, because);
}

/** As many as fit in the minutes, in the order chosen, then those for one side; those on the floor last. */
function makeDrills(
  context: BlockContext,
  kind: DrillKind,
  chosen: readonly Judged[],
  minutes: number,
  versions: Versions,
): readonly Drill[] {
  const kept: Drill[] = [];
  for (const judged of chosen) {
    const drill = drillOf(context, kind, judged, versions);
    if (onceThrough(context, [...kept, drill]) <= 60 * minutes) kept.push(drill);
  }
  return floorLast(kept, ({ judged }) => judged.exercise);
}

/** With the drills for one side that fit in the time the warm-up has anyway: no session grows longer for them. */
function withSided(
  context: BlockContext,
  drills: readonly Drill[],
  minutes: number,
  sided: readonly SideDrill[],
  versions: Versions,
): readonly Drill[] {
  const most = Math.max(60 * minutes, onceThrough(context, drills));
  let all = drills;
  for (const one of sided) {
    const at = all.findIndex(({ judged }) => judged === one.judged);
    const drill = drillOf(context, 'warm-up', one.judged, versions, one, at >= 0);
    const added = at < 0 ? floorLast([...all, drill], ({ judged }) => judged.exercise) : all.with(at, drill);
    if (onceThrough(context, added) <= most) all = added;
  }
  return all;
}

/** One for a side is done on that side alone, or begun on it where both sides are warmed up with it anyway. */
function drillOf(
  context: BlockContext,
  kind: DrillKind,
  judged: Judged,
  versions: Versions,
  sided?: SideDrill,
  both = false,
): Drill {
  const { facts } = judged.exercise;
  const seconds = context.rules.valueOf(EASY_SET);
  const counted = facts.way !== 'hold' && facts.way !== 'conditioning';
  const tenths = tenthsOfRep(judged.exercise, ['normal'], context);
  const reps = Math.max(1, Math.floor((10 * seconds) / tenths));
  const set = counted ? Math.ceil((reps * tenths) / 10) : seconds;
  const other: Side = sided?.side === 'left' ? 'right' : 'left';
  const sides: readonly Side[] | undefined =
    sided === undefined ? undefined : both ? [sided.side, other] : [sided.side];
  const times = sides?.length ?? (facts.sides === 'each' ? 2 : 1);
  return {
    row: rowId(rowOfDrill(kind, judged.exercise)),
    judged,
    load: null,
    dose: counted ? { kind: 'reps', reps } : { kind: 'seconds', seconds },
    sets: 1,
    restSeconds: 0,
    seconds: times * set + context.rules.valueOf(BETWEEN_EXERCISES),
    easier: easierDrills(judged, versions),
    ...(sides === undefined || sided === undefined ? {} : { sides, reasons: sided.reasons }),
  };
}

/** All drills once, down to the floor once where one of them wants it. */
function onceThrough({ rules }: BlockContext, drills: readonly Drill[]): Seconds {
  const floor = drills.some(({ judged }) => asksFloor(judged.exercise)) ? 2 * rules.valueOf(DOWN_OR_UP) : 0;
  return drills.reduce((sum, { seconds }) => sum + seconds, floor);
}

/** As often through as fits in the minutes, up to `warm-up-rounds`; longer where even one time through is. */
function fill(
  context: BlockContext,
  kind: DrillKind,
  drills: readonly Drill[],
  minutes: number,
  because: readonly string[],
): Around {
  const { rules } = context;
  const once = onceThrough(context, drills);
  const fit = once === 0 ? 1 : Math.floor((60 * minutes) / once);
  const rounds = Math.max(1, Math.min(fit, rules.valueOf(WARM_UP_ROUNDS)));
  return { kind, name: '', minutes: Math.max(minutes, minutesOf(once, rules)), rounds, drills, own: false, because };
}

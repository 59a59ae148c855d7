/**
 * The published measures of older clients, as items of a group of their own. The time is the whole of a measure: with a
 * reserve to stop at it would be another, which nothing published could be held against.
 */
import { rowId, setKey } from '../../model/identity.js';
import type { Group, Item, PlanSet } from '../../model/plan.js';
import type { Tenths } from '../../model/quantity.js';
import type { BlockContext } from '../block-context.js';
import { floorIn, floorsOf } from '../effort/plan-effort.js';
import { reasonOf } from '../reason-of.js';
import type { Versions } from '../rows/fit-rows.js';
import { CHAIR_STAND_SECONDS } from '../rules/chair-stand-seconds.js';
import { ONE_LEG_SECONDS } from '../rules/one-leg-seconds.js';
import { versionOf } from '../versions/chain-versions.js';
import type { Judged } from '../versions/judge-version.js';
import { planEasier } from './plan-easier.js';
import { sidesInOrder } from './plan-item-sets.js';
import { secondsOfMeasure, type Tests } from './test-sets.js';

/** Between two measures, and before the work after them. */
const REST_SECONDS = 60;

/**
 * The group of one session; `null` where no measure is due in it. A measure without an easier version this client may
 * do is left out: nobody is sent home with a test and no way out of it.
 */
export function planMeasures(
  context: BlockContext,
  { measures, sessions }: Tests,
  occurrence: number,
  versions: Versions,
): Group | null {
  const day = context.days.find((each) => each.occurrence === occurrence);
  if (day === undefined || !sessions.includes(occurrence)) return null;
  const floor = floorIn(day.week, floorsOf(context))?.reserve ?? 0;
  const items = measures.flatMap((measure): readonly Item[] => {
    const item = measureItem(context, versions.judge(measure), { ...day, floor }, versions);
    return item.easier.length === 0 ? [] : [item];
  });
  return items.length === 0 ? null : { kind: 'test', name: '', rounds: 1, items };
}

interface Due {
  readonly session: string;
  readonly week: number;
  readonly occurrence: number;
  readonly floor: Tenths;
}

function measureItem(context: BlockContext, judged: Judged, due: Due, { besideOf }: Versions): Item {
  const { exercise } = judged;
  const { facts, id } = exercise;
  const row = rowId(`test-${id}`);
  const seconds = secondsOfMeasure(context, facts.measure);
  const counted = facts.measure === 'chair stand';
  const block = context.client.blocksBefore + 1;
  const sets = sidesInOrder(facts.sides, 'both').map((side): PlanSet => {
    const key = setKey({ block, occurrence: due.occurrence, row, side, kind: 'test', ordinal: 1 });
    const one = side === 'both' ? {} : { side };
    return { key, kind: 'test', round: 1, seconds, ...one };
  });
  const bodyMass = context.client.bodyMass?.mass.grams ?? null;
  const planned = {
    judged,
    version: versionOf(judged),
    k: 0,
    equation: 'epley',
    tested: 0,
    bodyMass,
    slow: 1000,
    load: null,
    reps: 1,
    reserve: null,
    bottom: 1,
    asked: due.floor,
    floor: due.floor,
    sets,
  } as const;
  const rule = counted ? CHAIR_STAND_SECONDS : ONE_LEG_SECONDS;
  return {
    id: `${due.session}/${row}/${due.week}`,
    row,
    exercise: id,
    way: facts.way,
    sides: facts.sides,
    tempo: 'normal',
    restSeconds: REST_SECONDS,
    asked: { min: seconds, max: seconds, unit: 'seconds', reserve: null, sets: 1 },
    capacity: null,
    allowed: [],
    relaxed: [],
    sets,
    easier: planEasier(planned, besideOf(judged)).map((item) => ({ ...item, sets: timed(item.sets, seconds) })),
    harder: [],
    reasons: [reasonOf(rule, 'client', [], 'measured'), reasonOf(rule, 'coach', [], 'measured')],
  };
}

/** An easier version of a measure is done for as long, and is not counted. */
const timed = (sets: readonly PlanSet[], seconds: number): readonly PlanSet[] =>
  sets.map(({ reps: _, reserve: __, ...set }) => ({ ...set, seconds }));

/**
 * What is in hand over the rounds of a circuit: at most so many pieces of kit, and no plates changed. Where the loads
 * the rows begin with need no more, the rows are held to them.
 */
import type { MakeableLoad } from '../../model/kit.js';
import type { BandLoad } from '../../model/ladder.js';
import type { BlockContext } from '../block-context.js';
import { readCapacity } from '../capacity/read-capacity.js';
import { capacityOf, isCounted, repsToFailure, resistedLoad } from '../capacity.js';
import { floorsOf, floorsOfRow } from '../effort/plan-effort.js';
import { isAtMost } from '../kit/at-most.js';
import { caresAtStart } from '../rows/cares-met.js';
import type { FittedRow } from '../rows/fit-rows.js';
import { CIRCUIT_BELLS } from '../rules/circuit-bells.js';
import { CIRCUIT_RESERVE } from '../rules/circuit-reserve.js';

type Load = Pick<MakeableLoad | BandLoad, 'pieces'>;

interface HeldCircuit {
  readonly rows: readonly FittedRow[];
  /** Rows that lost loads by it. */
  readonly held: readonly FittedRow[];
}

/**
 * As they are, where no loads of theirs need more; else held to the loads they begin with, where those need no more and
 * leave every floor of the block; else `null`. A trial needs a load of its own: where there is no room for one, none is
 * offered.
 */
export function holdCircuit(context: BlockContext, rows: readonly FittedRow[]): HeldCircuit | null {
  const most = context.rules.valueOf(CIRCUIT_BELLS);
  const hands = rows.map((row) => handsOf(context, row));
  const all = hands.reduce((sum, count) => sum + count, 0);
  if (all <= most && !sharesPlates(context, rows)) {
    const calm = rows.map((row, index) => {
      const room = all + (hands[index] ?? 0) <= most && !loadsOf(row).some((load) => isPlated(context, load));
      return room ? row : withoutTrials(row);
    });
    return { rows: calm, held: [] };
  }
  return holdToStart(context, rows, most);
}

const withoutTrials = (row: FittedRow): FittedRow =>
  row.row.trials ? { ...row, row: { ...row.row, trials: false } } : row;

const loadsOf = ({ chain }: FittedRow): readonly Load[] => [
  ...chain.versions.flatMap(({ loads }) => loads),
  ...chain.judged.flatMap(({ bands }) => bands),
];

/** The pieces one holds, without the plates on them. */
const inHand = ({ client }: BlockContext, { pieces }: Load): readonly string[] =>
  pieces
    .map(({ id }): string => id)
    .filter((id) => !client.kit.some((item) => item.id === id && item.kind === 'plate'));

/** Handles and bars: what plates go on, also where none are on it. */
const plateHolders = (context: BlockContext, load: Load): readonly string[] =>
  inHand(context, load).filter((id) =>
    context.client.kit.some((item) => item.id === id && (item.kind === 'handle' || item.kind === 'bar')),
  );

const isPlated = (context: BlockContext, load: Load): boolean => plateHolders(context, load).length > 0;

function handsOf(context: BlockContext, row: FittedRow): number {
  const most = Math.max(0, ...loadsOf(row).map((load) => inHand(context, load).length));
  return row.dose.kind === 'main-next' ? 2 * most : most;
}

/** Two rows use one handle or bar, and might want other plates on it. */
function sharesPlates(context: BlockContext, rows: readonly FittedRow[]): boolean {
  const users = rows.map((row) => loadsOf(row).filter((load) => isPlated(context, load)));
  return users.some((loads, index) => users.slice(index + 1).some((others) => wantsOthers(context, loads, others)));
}

/** Some load wants other plates than one of `others` on the same handle or bar. */
const wantsOthers = (context: BlockContext, loads: readonly Load[], others: readonly Load[]): boolean =>
  loads.some((load) =>
    others.some((other) => {
      const holders = plateHolders(context, other);
      return !isSame(load, other) && plateHolders(context, load).some((id) => holders.includes(id));
    }),
  );

function holdToStart(context: BlockContext, rows: readonly FittedRow[], most: number): HeldCircuit | null {
  // After a break loads are cut, and the cut ones may not be among those begun with.
  if (context.client.breaks.length > 0) return null;
  const starts: MakeableLoad[] = [];
  for (const row of rows) {
    if (loadsOf(row).every(({ pieces }) => pieces.length === 0)) continue;
    const start = row.dose.kind === 'main-next' ? null : startOf(context, row);
    if (start === null) return null;
    starts.push(start);
  }
  const pieces = new Set(starts.flatMap((load) => inHand(context, load)));
  const plated = starts.filter((load) => isPlated(context, load));
  const replated = wantsOthers(context, plated, plated);
  if (pieces.size > most || replated) return null;
  const stays = (load: Load): boolean =>
    inHand(context, load).every((id) => pieces.has(id)) &&
    (!isPlated(context, load) || plated.some((start) => isSame(start, load)));
  const held = rows.map((row) => (loadsOf(row).every(stays) ? row : holdTo(row, stays))).map(withoutTrials);
  return { rows: held, held: held.filter((row, index) => loadsOf(row).length < loadsOf(rows[index] ?? row).length) };
}

const isSame = (a: Load, b: Load): boolean =>
  a.pieces.map(({ id }) => id).join(' ') === b.pieces.map(({ id }) => id).join(' ');

/**
 * The heaviest load up to the one tested, or up to the main bell of the pattern; `null` where neither is known, or
 * where it would not leave the highest floor of the block at the bottom of the range.
 */
function startOf(context: BlockContext, fitted: FittedRow): MakeableLoad | null {
  const { chain, planned, dose, row } = fitted;
  // A part of a maximum may want something lighter than what was tested.
  if (fitted.planned === 'walk' && fitted.percent !== null) return null;
  const judged = chain.judged[chain.base];
  const version = chain.versions[chain.base];
  if (judged === undefined || version === undefined) return null;
  const main = context.client.mainBells.find(({ pattern }) => pattern === judged.exercise.facts.pattern);
  const tested = readCapacity(context, judged, version);
  const role = row.bell === undefined || row.bell === 'main';
  if (!role || (tested === null && planned === 'walk')) return null;
  const grams = row.bell === 'main' && main !== undefined ? main.mass.grams : (tested?.grams ?? main?.mass.grams);
  const load = grams === undefined ? undefined : version.loads.filter((one) => isAtMost(one, grams)).at(-1);
  if (load === undefined || planned === 'ladder' || tested === null) return load ?? null;
  const bodyMass = context.client.bodyMass?.mass.grams ?? null;
  if (!isCounted(version, bodyMass)) return load;
  const k = capacityOf('epley', tested.capacity, true);
  const floors = floorsOfRow(context, floorsOf(context), caresAtStart(fitted).length > 0, dose);
  const floor = Math.max(...floors.map(({ reserve }) => reserve)) + context.rules.valueOf(CIRCUIT_RESERVE);
  const bottom = dose.kind === 'sets' ? dose.reps.min : dose.kind === 'every' ? dose.reps : null;
  if (bottom === null) return null;
  const toFailure = repsToFailure('epley', k, tested.capacity.reps, resistedLoad(version, load, bodyMass));
  return toFailure >= 10 * bottom + floor ? load : null;
}

/** The versions around the one it begins with that still have a load, each with those loads alone. */
function holdTo(row: FittedRow, stays: (load: Load) => boolean): FittedRow {
  const { chain } = row;
  const kept = chain.versions.map(({ loads }, index) => {
    return loads.some(stays) || (chain.judged[index]?.bands ?? []).some(stays);
  });
  const first = kept.slice(0, chain.base).lastIndexOf(false) + 1;
  const gap = kept.slice(chain.base).indexOf(false);
  const end = gap === -1 ? kept.length : chain.base + gap;
  return {
    ...row,
    chain: {
      base: chain.base - first,
      versions: chain.versions.slice(first, end).map((one) => ({ ...one, loads: one.loads.filter(stays) })),
      judged: chain.judged
        .slice(first, end)
        .map((one) => ({ ...one, loads: one.loads.filter(stays), bands: one.bands.filter(stays) })),
    },
  };
}

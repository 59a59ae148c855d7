/** What of a client's own kit an exercise can be done with: as it was planned, and whatever else lies in the house. */
import type { KitItemId, SessionId } from '../model/identity.js';
import type { MakeableLoad } from '../model/kit.js';
import type { RungLoad } from '../model/ladder.js';
import type { Item, Plan, PlanLoad } from '../model/plan.js';

/**
 * Lightest first, bands the easiest to stretch first; `undefined` where nothing is held. Bells heavier than may be planned
 * are among them: whoever took the wrong one must be able to say so.
 */
export function loadsOf({ inputs }: Plan, session: SessionId, item: Item): readonly PlanLoad[] | undefined {
  const own = `${session}/${item.row}`;
  const { strands, ladders } = inputs;
  const exercises = new Set([item.exercise, ...item.sets.flatMap(({ exercise }) => exercise ?? [])]);
  const inStrands = strands.flatMap(({ id, versions }) => versions.map((one) => ({ id, ...one })));
  const inLadders = ladders.flatMap(({ id, rungs }) => rungs.map((one) => ({ id, ...one })));
  const walked = inStrands.filter(({ exercise }) => exercises.has(exercise));
  const climbed = inLadders.filter(({ exercise }) => exercises.has(exercise));
  const of = <T extends { readonly id: string }>(all: readonly T[]): readonly T[] =>
    all.some(({ id }) => id === own) ? all.filter(({ id }) => id === own) : all;
  const known = [
    ...of(walked).flatMap(({ loads }) => loads.map(heldOf)),
    ...of(climbed).flatMap(({ load, nextUp }) => [load, nextUp].flatMap((one) => (one === null ? [] : heldOf(one)))),
    ...item.sets.flatMap(({ load, then: next }) => [load, next?.load].flatMap((one) => one ?? [])),
  ].filter((load) => load.band !== undefined || load.grams > 0);
  const all = inOrder([...known, ...known.flatMap((load) => likeIt(load, inputs.kit))]);
  return all.length === 0 ? undefined : all;
}

function heldOf(load: MakeableLoad | RungLoad): PlanLoad {
  const pieces = load.pieces.map(({ id, grams }) => ({ id, grams }));
  if ('band' in load) return { band: load.band, step: load.step, mode: load.mode, pieces, label: load.label };
  return { kg: load.grams / 1000, grams: load.grams, mode: load.mode, pieces, label: load.label };
}

type Kit = Plan['inputs']['kit'];

/** Where one bell or dumbbell is held, or a pair of equal ones: every other of the same kind, held in the same way. */
function likeIt({ mode, pieces, grams }: PlanLoad, kit: Kit): readonly PlanLoad[] {
  const kinds = new Set(pieces.map(({ id }) => kit.find((one) => one.id === id)?.kind));
  const [kind] = kinds;
  const whole = mode === 'per-hand' ? pieces[0]?.grams : pieces.reduce((sum, piece) => sum + piece.grams, 0);
  if (kinds.size !== 1 || (kind !== 'bell' && kind !== 'dumbbell') || whole !== grams) return [];
  if (pieces.length > 2 || (pieces.length === 2 && mode !== 'per-hand')) return [];
  const same = new Map<number, { readonly label: string; readonly ids: readonly KitItemId[] }>();
  for (const one of kit) {
    if (one.kind !== kind || one.grams === null) continue;
    same.set(one.grams, { label: one.label, ids: [...(same.get(one.grams)?.ids ?? []), one.id] });
  }
  return [...same].flatMap(([mass, { label, ids }]): readonly PlanLoad[] => {
    const taken = ids.slice(0, pieces.length);
    if (taken.length < pieces.length) return [];
    return [{ kg: mass / 1000, grams: mass, mode, pieces: taken.map((id) => ({ id, grams: mass })), label }];
  });
}

/** Each once, as it was met first. */
function inOrder(loads: readonly PlanLoad[]): readonly PlanLoad[] {
  const byName = new Map<string, PlanLoad>();
  for (const load of loads) {
    const name = `${load.mode} ${load.band === undefined ? load.grams : `band ${load.step}`}`;
    if (!byName.has(name)) byName.set(name, load);
  }
  return [...byName.values()].sort((a, b) => (a.grams ?? 0) - (b.grams ?? 0) || (a.step ?? 0) - (b.step ?? 0));
}

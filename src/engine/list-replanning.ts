/** What a phone without the library needs to plan the rest of a block again; nothing where the coach has not let it. */
import type { Exercise } from '../model/exercise.js';
import { compareIds } from '../model/identity.js';
import type { ReplannedExercise, ReplanningInput } from '../model/plan-inputs.js';
import type { BlockContext } from './block-context.js';
import type { LadderRow } from './ladder/ladder-row.js';
import type { WalkedRow } from './rows/walked-row.js';

export function listReplanning(
  context: BlockContext,
  rows: readonly WalkedRow[],
  ladders: readonly LadderRow[],
): ReplanningInput | null {
  if (context.client.replanning === 'fixed') return null;
  const chains = [...rows, ...ladders].flatMap(({ fitted }) => [
    fitted.target,
    ...fitted.chain.judged.map(({ exercise }) => exercise),
  ]);
  return {
    exercises: [...withEasier(context, chains)].sort((a, b) => compareIds(a.id, b.id)).map(readByMarks),
    rows: rows.map(({ fitted, beginning, strand, cares }) => ({
      id: strand.id,
      target: fitted.target.id,
      base: fitted.chain.base,
      dose: fitted.dose,
      effort: fitted.effort,
      percent: fitted.percent,
      inCircuit: fitted.inCircuit,
      byRole: beginning.role !== null,
      trials: fitted.row.trials,
      cautioned: cares.length > 0,
    })),
    steady: context.standing.steady,
  };
}

/** Someone may have done any of the easier ones in its place, and theirs. */
function withEasier({ exercises }: BlockContext, chains: readonly Exercise[]): ReadonlySet<Exercise> {
  const found = new Set<Exercise>(chains);
  for (const { words } of found) {
    for (const { to } of words.easier) {
      const easier = to.kind === 'exercise' ? exercises.get(to.id) : undefined;
      if (easier !== undefined) found.add(easier);
    }
  }
  return found;
}

function readByMarks({ id, facts }: Exercise): ReplannedExercise {
  const { pattern, way, sides, holds, signOff, onTheFloor, measure, kit, room, bodyShare, asks } = facts;
  return {
    exercise: id,
    pattern,
    way,
    sides,
    holds,
    load: kit.load,
    unloaded: kit.unloaded,
    ceiling: room.ceiling,
    share: bodyShare?.share ?? null,
    asks,
    signOff,
    onTheFloor,
    ...(measure === undefined ? {} : { measure }),
  };
}

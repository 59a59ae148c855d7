/** One exercise of a warm-up or cool-down as the plan shows it. */

import { setKey } from '../../model/identity.js';
import type { EasierItem, Item, PlanSet } from '../../model/plan.js';
import type { Reason } from '../../model/reason.js';
import type { BlockContext } from '../block-context.js';
import { sidesInOrder } from '../items/plan-item-sets.js';
import { planLoad } from '../items/plan-load.js';
import { reasonOf } from '../reason-of.js';
import { COOL_DOWN_OLDER } from '../rules/cool-down-older.js';
import { WARM_UP } from '../rules/warm-up.js';
import { WARM_UP_OLDER } from '../rules/warm-up-older.js';
import type { Around, Drill, DrillDose } from './compose-around.js';
import type { QueuedSession } from './queue-sessions.js';

export function planDrill(context: BlockContext, queued: QueuedSession, around: Around, drill: Drill): Item {
  const { row, judged, load, dose, restSeconds } = drill;
  const { facts, id } = judged.exercise;
  const sets = setsOf(context, queued, around, drill);
  const bare = load === null ? sets : sets.map(({ load: _, ...set }) => set);
  return {
    id: `${queued.template.id}/${row}/${queued.week}`,
    row,
    exercise: id,
    way: facts.way,
    sides: facts.sides,
    tempo: 'normal',
    restSeconds,
    asked: { ...askedOf(dose), reserve: null, sets: around.rounds * drill.sets },
    capacity: null,
    allowed: [],
    relaxed: [],
    sets,
    easier: drill.easier.map((easier): EasierItem => ({ ...easier, sets: bare })),
    harder: [],
    reasons: [...(drill.reasons ?? []), ...whyOf(around)],
  };
}

function setsOf(context: BlockContext, queued: QueuedSession, around: Around, drill: Drill): readonly PlanSet[] {
  const { row, judged, load, dose } = drill;
  const kind = around.kind;
  const block = context.client.blocksBefore + 1;
  const much = amountOf(dose);
  const held = load === null ? {} : { load: planLoad(load) };
  const sets: PlanSet[] = [];
  for (let round = 1; round <= around.rounds * drill.sets; round += 1) {
    for (const side of drill.sides ?? sidesInOrder(judged.exercise.facts.sides, 'both')) {
      const key = setKey({ block, occurrence: queued.occurrence, row, side, kind, ordinal: round });
      sets.push(
        side === 'both' ? { key, kind, round, ...much, ...held } : { key, kind, round, ...much, side, ...held },
      );
    }
  }
  return sets;
}

function amountOf(dose: DrillDose): Partial<PlanSet> {
  switch (dose.kind) {
    case 'reps':
      return { reps: dose.reps, ...(dose.steps === undefined ? {} : { steps: dose.steps }) };
    case 'seconds':
      return { seconds: dose.seconds };
    case 'metres':
      return { metres: dose.metres };
    case 'round':
      return {};
  }
}

function askedOf(dose: DrillDose): Pick<Item['asked'], 'min' | 'max' | 'unit'> {
  switch (dose.kind) {
    case 'reps':
      return { min: dose.reps, max: dose.reps, unit: 'reps' };
    case 'seconds':
      return { min: dose.seconds, max: dose.seconds, unit: 'seconds' };
    case 'metres':
      return { min: dose.metres, max: dose.metres, unit: 'metres' };
    case 'round':
      return { min: 1, max: 1, unit: 'reps' };
  }
}

/** With the ground that holds where it is longer than others'. */
function whyOf({ kind, own, minutes, because }: Around): readonly Reason[] {
  if (own) return [];
  const longer = because.length > 0 ? WARM_UP_OLDER : WARM_UP;
  const rule = kind === 'warm-up' ? longer : COOL_DOWN_OLDER;
  const inputs = [
    { name: 'minutes', value: minutes, unit: 'minutes' },
    ...because.map((ground) => ({ name: 'because', value: ground, unit: '' })),
  ];
  return [reasonOf(rule, 'coach', inputs, 'measured')];
}

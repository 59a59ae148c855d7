/** Why a row is as it is, besides what the walk says of its loads and reps. */
import type { Reason, ReasonInput } from '../../model/reason.js';
import type { BlockContext } from '../block-context.js';
import { floorIn, gainOf } from '../effort/plan-effort.js';
import { reasonOf } from '../reason-of.js';
import type { WalkedRow } from '../rows/walked-row.js';
import { FEELER_RISE } from '../rules/feeler-rise.js';
import { NEW_MOVEMENT_LIGHTER } from '../rules/new-movement-lighter.js';
import { VERSION_CHOSEN } from '../rules/version-chosen.js';
import { WEAKER_SIDE } from '../rules/weaker-side.js';

export function reasonsOfRow(context: BlockContext, walked: WalkedRow, index: number): readonly Reason[] {
  return [
    ...versionReason(walked),
    ...floorReason(context, walked, index),
    ...cautionReason(context, walked),
    ...beginningReason(context, walked),
  ];
}

/** Another exercise than the programme names. */
function versionReason({ fitted }: WalkedRow): readonly Reason[] {
  const { choice, target } = fitted;
  if (choice.chosen === null || choice.chosen.exercise === target) return [];
  const inputs: ReasonInput[] = [
    { name: 'programme', value: target.id, unit: '' },
    { name: 'exercise', value: choice.chosen.exercise.id, unit: '' },
    { name: 'steps', value: choice.steps, unit: '' },
    ...choice.causes.map((cause) => ({ name: 'cause', value: cause, unit: '' })),
    ...choice.refused
      .filter((refusal) => refusal.exercise === target.id)
      .map(({ cause, detail }) => ({ name: `refused: ${cause}`, value: detail, unit: '' })),
  ];
  return [
    reasonOf(VERSION_CHOSEN, 'client', inputs, 'measured'),
    reasonOf(VERSION_CHOSEN, 'coach', inputs, 'measured'),
  ];
}

/** A floor above what the programme asks. */
function floorReason(
  { programme }: BlockContext,
  { strand, floors, fitted }: WalkedRow,
  index: number,
): readonly Reason[] {
  const occurrence = strand.occurrences[index];
  const curve = occurrence === undefined ? undefined : programme.curve[occurrence.week - 1];
  const floor = occurrence === undefined ? null : floorIn(occurrence.week, floors);
  const written = fitted.effort ?? curve?.reserve ?? 0;
  if (floor === null || written >= floor.reserve) return [];
  return [
    reasonOf(floor.rule, 'coach', [
      { name: 'programme', value: written, unit: 'tenths' },
      { name: 'floor', value: floor.reserve, unit: 'tenths' },
    ]),
  ];
}

function cautionReason(context: BlockContext, { cares, fitted, strand }: WalkedRow): readonly Reason[] {
  if (cares.length === 0) return [];
  const { rule } = gainOf(context, true);
  const met = new Set(cares.flatMap((judged) => judged.care.map(({ caution }) => caution.what)));
  const begun = fitted.chain.judged[fitted.chain.base];
  return [
    reasonOf(rule, 'coach', [
      { name: 'gain', value: strand.gain, unit: 'per-ten-thousand' },
      ...[...met].map((what) => ({ name: 'caution', value: what, unit: '' })),
      ...cares
        .filter((judged) => judged !== begun)
        .map(({ exercise }) => ({ name: 'met by', value: exercise.id, unit: '' })),
    ]),
  ];
}

function beginningReason({ rules }: BlockContext, { beginning, plan, fitted }: WalkedRow): readonly Reason[] {
  if (plan.kind === 'feeler') {
    const inputs = [{ name: 'loads up', value: rules.valueOf(FEELER_RISE), unit: '' }];
    return [reasonOf(FEELER_RISE, 'client', inputs), reasonOf(FEELER_RISE, 'coach', inputs)];
  }
  const { tested, how, source } = beginning;
  if (how === 'relative' && source !== null) {
    const inputs = [
      { name: 'exercise', value: fitted.chain.judged[fitted.chain.base]?.exercise.id ?? '', unit: '' },
      { name: 'relative', value: source.exercise.id, unit: '' },
      { name: 'loads lighter', value: rules.valueOf(NEW_MOVEMENT_LIGHTER), unit: '' },
    ];
    return [reasonOf(NEW_MOVEMENT_LIGHTER, 'client', inputs), reasonOf(NEW_MOVEMENT_LIGHTER, 'coach', inputs)];
  }
  if (tested === null || tested.gap === null || tested.gap === 0) return [];
  const inputs = [
    { name: 'weaker', value: tested.capacity.side, unit: '' },
    { name: 'gap', value: tested.gap, unit: 'per-mille' },
  ];
  return [
    reasonOf(WEAKER_SIDE, 'client', inputs.slice(0, 1), 'measured'),
    reasonOf(WEAKER_SIDE, 'coach', inputs, 'measured'),
  ];
}

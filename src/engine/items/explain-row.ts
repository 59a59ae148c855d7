/** Why a row is as it is, besides what the walk says of its loads and reps. */
import { isoOfDay } from '../../model/day.js';
import type { Reason, ReasonInput, Rule } from '../../model/reason.js';
import type { BlockContext } from '../block-context.js';
import { floorIn, gainOf } from '../effort/plan-effort.js';
import { reasonOf } from '../reason-of.js';
import type { FittedRow } from '../rows/fit-rows.js';
import { heldOtherwise } from '../rows/from-parts.js';
import { isHurried } from '../rows/planned-by.js';
import { tellRefit } from '../rows/tell-refit.js';
import type { WalkedRow } from '../rows/walked-row.js';
import { BEGIN_TESTED } from '../rules/begin-tested.js';
import { CIRCUIT_RESERVE } from '../rules/circuit-reserve.js';
import { CLOCK_ONE_TEMPO } from '../rules/clock-one-tempo.js';
import { FEELER_RISE } from '../rules/feeler-rise.js';
import { GAIN_RETURN } from '../rules/gain-return.js';
import { GAIN_STEADY } from '../rules/gain-steady.js';
import { LIGHTER_BELL } from '../rules/lighter-bell.js';
import { MAIN_BELL } from '../rules/main-bell.js';
import { NEW_MOVEMENT_LIGHTER } from '../rules/new-movement-lighter.js';
import { NEXT_UP_BELL } from '../rules/next-up-bell.js';
import { PERCENT_OF_MAXIMUM } from '../rules/percent-of-maximum.js';
import { PREGNANCY_TEST } from '../rules/pregnancy-test.js';
import { RETURN_LIGHTER } from '../rules/return-lighter.js';
import { RPE_TO_RESERVE } from '../rules/rpe-to-reserve.js';
import { SEEN_BALANCE } from '../rules/seen-balance.js';
import { SEEN_GRIP } from '../rules/seen-grip.js';
import { VERSION_CHOSEN } from '../rules/version-chosen.js';
import { WEAKER_SIDE } from '../rules/weaker-side.js';
import { WEAKEST_PART } from '../rules/weakest-part.js';
import { cautionsOf, returnsOf } from './care-reasons.js';
import { recalledReasons } from './recalled-reasons.js';

/** For each occurrence of a row. What holds for all of them is said once. */
export function reasonsOfRow(context: BlockContext, walked: WalkedRow): (index: number) => readonly Reason[] {
  const { fitted, cares, sessions } = walked;
  const choice = [...versionReason(fitted), ...cautionsOf(fitted, cares)];
  const held = [
    ...cautionReason(context, walked),
    ...gainReason(context, walked),
    ...trustReason(walked),
    ...beginningReason(context, walked),
    ...roleReason(walked),
  ];
  return (index) => [
    ...choice,
    ...returnsOf(context, fitted, sessions[index]?.queued.date),
    ...floorReason(context, walked, index),
    ...held,
    ...doseReason(walked, index),
    ...recalledReasons(context, fitted, startOf(walked), { index, day: sessions[index]?.queued.date }),
  ];
}

const startOf = ({ beginning, fitted, strand }: WalkedRow) =>
  strand.versions[beginning.start?.version ?? fitted.chain.base]?.exercise ?? fitted.target.id;

/** No gain is counted on in the whole block: why. */
function gainReason(context: BlockContext, { cares, strand }: WalkedRow): readonly Reason[] {
  const { rule } = gainOf(context, cares.length > 0);
  if (cares.length > 0 || (rule !== GAIN_RETURN && rule !== GAIN_STEADY)) return [];
  return [reasonOf(rule, 'coach', [{ name: 'gain', value: strand.gain, unit: 'per-ten-thousand' }])];
}

/**
 * What a test from before a break still says: that it begins lighter only where there was a lighter load to begin with. Where a
 * feeler set finds the load after all, the client is told of that alone.
 */
function trustReason({ beginning: { trust, tested, lighter, start, since } }: WalkedRow): readonly Reason[] {
  if (trust.kind === 'whole') return [];
  const { test } = tested ?? {};
  // Where the row was done last before what says how much can be lifted, it is that which lies before the break.
  const before = test !== undefined && since !== undefined && since < test.date ? since : null;
  const on = before ?? (test?.marked === true ? test.date : null);
  const marked = on === null ? [] : [{ name: 'marked', value: isoOfDay(on), unit: '' }];
  const fewer = lighter > 0 ? [{ name: 'loads lighter', value: lighter, unit: 'loads' }] : [];
  const inputs = [{ name: 'days', value: trust.days, unit: 'days' }, ...marked, ...fewer];
  const told = reasonOf(trust.rule, 'coach', inputs, 'measured');
  if (trust.kind === 'lighter' && start === null) return [told];
  const isAway = trust.kind === 'lighter' && trust.rule !== PREGNANCY_TEST;
  const client = isAway && lighter > 0 ? RETURN_LIGHTER : trust.rule;
  return [reasonOf(client, 'client', inputs, 'measured'), told];
}

const TOLD_TO_BOTH: ReadonlySet<Rule> = new Set([BEGIN_TESTED, SEEN_BALANCE, SEEN_GRIP]);

/** Another exercise than the programme names, and what of the row was not written for it. */
export function versionReason(fitted: Pick<FittedRow, 'choice' | 'refitted' | 'sets' | 'target'>): readonly Reason[] {
  const refit = tellRefit(fitted).flatMap(([rule, inputs]) => [
    ...(TOLD_TO_BOTH.has(rule) ? [reasonOf(rule, 'client', inputs, 'measured')] : []),
    reasonOf(rule, 'coach', inputs, 'measured'),
  ]);
  return [...chosenReason(fitted), ...refit];
}

function chosenReason({ choice, target }: Pick<FittedRow, 'choice' | 'target'>): readonly Reason[] {
  const chosen = choice.untested ?? choice.seen?.own ?? choice.chosen;
  if (chosen === null || chosen.exercise === target) return [];
  const inputs: ReasonInput[] = [
    { name: 'programme', value: target.id, unit: '' },
    { name: 'exercise', value: chosen.exercise.id, unit: '' },
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

function beginningReason(context: BlockContext, { beginning, plan, fitted }: WalkedRow): readonly Reason[] {
  const { rules } = context;
  if (plan.kind === 'feeler') {
    const own = fitted.chain.judged[fitted.chain.base]?.exercise;
    const otherwise = own === undefined ? [] : heldOtherwise(context, own);
    const loads = beginning.versions[fitted.chain.base]?.loads ?? [];
    const bare = loads.every(({ grams }) => grams === 0);
    const inputs = bare
      ? [{ name: 'finds', value: 'reps', unit: '' }]
      : [{ name: 'loads up', value: rules.valueOf(FEELER_RISE), unit: '' }];
    const unheard = otherwise.map(({ id }) => ({ name: 'part', value: id, unit: '' }));
    return [reasonOf(FEELER_RISE, 'client', inputs), reasonOf(FEELER_RISE, 'coach', [...inputs, ...unheard])];
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
  if (how === 'parts' && source !== null) {
    const inputs = [
      { name: 'exercise', value: fitted.chain.judged[fitted.chain.base]?.exercise.id ?? '', unit: '' },
      { name: 'part', value: source.exercise.id, unit: '' },
      { name: 'loads lighter', value: rules.valueOf(NEW_MOVEMENT_LIGHTER), unit: '' },
    ];
    return [reasonOf(WEAKEST_PART, 'client', inputs, 'weak'), reasonOf(WEAKEST_PART, 'coach', inputs, 'weak')];
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

const ROLES = { main: MAIN_BELL, lighter: LIGHTER_BELL, 'next up': NEXT_UP_BELL } as const;

/** The bell the row asks for by its role, and the main one it is told by. */
function roleReason({ beginning: { role } }: WalkedRow): readonly Reason[] {
  if (role === null) return [];
  const inputs = [
    { name: 'load', value: role.load, unit: 'g' },
    { name: 'main', value: role.main, unit: 'g' },
  ];
  return [reasonOf(ROLES[role.role], 'client', inputs), reasonOf(ROLES[role.role], 'coach', inputs)];
}

/** What the row's own dose and effort bring with them. */
function doseReason({ fitted, strand }: WalkedRow, index: number): readonly Reason[] {
  const { dose, percent, row, inCircuit, effort } = fitted;
  const reasons: Reason[] = [];
  if (percent !== null) {
    const inputs = [{ name: 'percent', value: percent, unit: '%' }];
    reasons.push(reasonOf(PERCENT_OF_MAXIMUM, 'client', inputs), reasonOf(PERCENT_OF_MAXIMUM, 'coach', inputs));
  }
  if (row.effort?.kind === 'rpe' && effort !== null) {
    const inputs = [{ name: 'reserve', value: effort, unit: 'tenths' }];
    reasons.push(reasonOf(RPE_TO_RESERVE, 'coach', inputs, 'measured'));
  }
  if (strand.tempi.length < row.tempi.length) reasons.push(reasonOf(CLOCK_ONE_TEMPO, 'coach', [], 'measured'));
  if (isHurried({ inCircuit, dose })) {
    const inputs = [{ name: 'asked', value: strand.occurrences[index]?.asked ?? 0, unit: 'tenths' }];
    reasons.push(reasonOf(CIRCUIT_RESERVE, 'coach', inputs, 'measured'));
  }
  return reasons;
}

/** How many reps to leave in reserve: what the programme asks, never below the floors; and the gain counted on. */
import { agesInYear } from '../../model/day.js';
import type { Dose, Effort } from '../../model/dose.js';
import type { CurveWeek } from '../../model/programme.js';
import type { PerTenThousand, Tenths } from '../../model/quantity.js';
import type { Rule } from '../../model/reason.js';
import type { BlockContext } from '../block-context.js';
import { hasGentleWeeks, weeksOfFloor } from '../breaks/returns.js';
import { BREAK_FLOOR } from '../rules/break-floor.js';
import { CIRCUIT_RESERVE } from '../rules/circuit-reserve.js';
import { FIRST_WEEKS } from '../rules/first-weeks.js';
import { FLOOR_ALONE } from '../rules/floor-alone.js';
import { FLOOR_CAUTIONED } from '../rules/floor-cautioned.js';
import { FLOOR_FIRST_WEEKS } from '../rules/floor-first-weeks.js';
import { FLOOR_NOVICE } from '../rules/floor-novice.js';
import { FLOOR_OLDER } from '../rules/floor-older.js';
import { FLOOR_SIGNAL } from '../rules/floor-signal.js';
import { GAIN_CAUTIONED } from '../rules/gain-cautioned.js';
import { GAIN_NOVICE } from '../rules/gain-novice.js';
import { GAIN_RETURN } from '../rules/gain-return.js';
import { GAIN_STEADY } from '../rules/gain-steady.js';
import { GAIN_TRAINED } from '../rules/gain-trained.js';
import { OLDER_FROM } from '../rules/older-from.js';
import { RPE_TO_RESERVE } from '../rules/rpe-to-reserve.js';
import { yearOf } from '../screening/screen-client.js';

export interface Floor {
  readonly rule: Rule;
  readonly reserve: Tenths;
  readonly weeks: readonly number[];
}

/** By the oldest age the birth year allows on the last day of the block. */
export function isOlder({ client, lastDay, rules }: BlockContext): boolean {
  return agesInYear(client.birthYear, yearOf(lastDay)).oldest >= rules.valueOf(OLDER_FROM);
}

/** Every floor that holds for this client, each with its weeks; the highest of a week decides, of equal ones the first. */
export function floorsOf(context: BlockContext): readonly Floor[] {
  const { client, programme, rules, standing } = context;
  const weeks = programme.curve.map((_, index) => index + 1);
  const floor = (rule: Rule, during: readonly number[] = weeks): Floor => {
    return { rule, reserve: rules.valueOf(rule), weeks: during };
  };
  const first = weeks.filter((week) => week <= rules.valueOf(FIRST_WEEKS));
  const back = weeksOfFloor(context);
  return [
    floor(FLOOR_ALONE),
    ...(client.experience === 'novice' ? [floor(FLOOR_NOVICE)] : []),
    ...(isOlder(context) ? [floor(FLOOR_OLDER)] : []),
    ...(client.blocksBefore === 0 ? [floor(FLOOR_FIRST_WEEKS, first)] : []),
    ...(back.length > 0 ? [floor(BREAK_FLOOR, back)] : []),
    ...(standing.floor === null ? [] : [{ ...standing.floor, weeks }]),
    ...standing.begins.map(({ rule, weeks: so }) =>
      floor(
        rule,
        weeks.filter((week) => week <= so),
      ),
    ),
  ];
}

/** With the floors of the row itself, in every week: of one that meets a caution, and of one done at a signal. */
export function floorsOfRow(
  context: BlockContext,
  floors: readonly Floor[],
  cautioned: boolean,
  dose: Dose,
): readonly Floor[] {
  const { rules } = context;
  if (!cautioned && dose.kind !== 'every') return floors;
  const weeks = context.programme.curve.map((_, index) => index + 1);
  const part = rules.valueOf(FLOOR_SIGNAL);
  const left = (reps: number): Tenths => Math.ceil((10 * reps * (1000 - part)) / part);
  return [
    ...floors,
    ...(cautioned ? [{ rule: FLOOR_CAUTIONED, reserve: rules.valueOf(FLOOR_CAUTIONED), weeks }] : []),
    ...(dose.kind === 'every' ? [{ rule: FLOOR_SIGNAL, reserve: left(dose.reps), weeks }] : []),
  ];
}

export function floorIn(week: number, floors: readonly Floor[]): Floor | null {
  return floors.reduce<Floor | null>((highest, floor) => {
    if (!floor.weeks.includes(week)) return highest;
    return highest === null || floor.reserve > highest.reserve ? floor : highest;
  }, null);
}

/**
 * Reserve in tenths for an effort as written: RPE 7 to 10 leaves 10 − RPE reps (Zourdos et al. 2016, J Strength
 * Cond Res 30(1):267-275). `null` where it cannot be read as reserve: RPE outside 7 to 10, or a part of a maximum.
 */
export function reserveOf(effort: Effort): Tenths | null {
  switch (effort.kind) {
    case 'reserve':
      return effort.tenths;
    case 'rpe':
      return effort.tenths >= 70 && effort.tenths <= 100 ? RPE_TO_RESERVE.value - effort.tenths : null;
    case 'percent':
    case 'talk':
      return null;
  }
}

/**
 * `max(programme, floor)`, and one rep more in a circuit. A row's own effort takes the place of the curve's in a work
 * week; in an easy week the easier of the two counts.
 */
export function askedReserve(
  context: BlockContext,
  curve: CurveWeek,
  own: Tenths | null,
  floor: Tenths,
  inCircuit: boolean,
): Tenths {
  const programme = own === null ? curve.reserve : curve.easy ? Math.max(own, curve.reserve) : own;
  return Math.max(programme, floor) + (inCircuit ? context.rules.valueOf(CIRCUIT_RESERVE) : 0);
}

/**
 * Gain a work week in ten-thousandths, and the rule it comes from: none in a row that meets a caution, while health asks
 * for steady work, or in a block with gentle weeks after a break.
 */
export function gainOf(
  context: BlockContext,
  cautioned: boolean,
): { readonly rule: Rule; readonly gain: PerTenThousand } {
  const rule = gainRule(context, cautioned);
  return { rule, gain: context.rules.valueOf(rule) };
}

function gainRule(context: BlockContext, cautioned: boolean): Rule {
  const { client, standing } = context;
  if (cautioned) return GAIN_CAUTIONED;
  if (standing.steady || standing.moderate) return GAIN_STEADY;
  if (hasGentleWeeks(context)) return GAIN_RETURN;
  return client.experience === 'novice' ? GAIN_NOVICE : GAIN_TRAINED;
}

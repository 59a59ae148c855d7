/** Earned twice, and no heavier load in the house: the one bell that would help most is the heaviest that opens a rise. */
import { GRAMS_IN_A_POUND } from '../../model/quantity.js';
import type { ReasonInput } from '../../model/reason.js';
import { bodyPart, heaviestFor } from '../capacity.js';
import { stuckIn, weeksOf } from '../walk/findings.js';
import { externalAt, type Situation } from '../walk/situation.js';
import type { Telling } from '../walk/walk-rule.js';
import { gramsAt, reasonAt } from '../walk/why.js';
import { practiceRow } from './walk-row.js';

/** Bells are commonly made in steps of this many grams, up to the heaviest: common practice, no source. */
const COMMON_STEP = 4000;
const COMMON_MOST = 48_000;
/** Where no common one helps, in whole steps of this many grams; to who holds pounds, of so many pounds. */
const BELL_STEP = 2000;
const BELL_STEP_IN_POUNDS = 5;

export const kitTooLight: Telling = {
  kind: 'telling',
  row: practiceRow('kit-too-light', COMMON_STEP, 'g'),
  tell: (trail) => {
    const stuck = stuckIn(trail).filter(({ at }) => isHeaviest(at));
    const last = stuck[stuck.length - 1];
    if (last === undefined) return null;
    const bell = bellThatHelps(last.at);
    if (bell <= gramsAt(last.at.ground, last.at.place)) return null;
    const reason = reasonAt(last.at, kitTooLight.row, last.at.place, 'coach', [
      { name: 'bell', value: bell, unit: 'g' },
      { name: 'bottom', value: last.at.ground.input.bottom, unit: 'reps' },
      { name: 'floor', value: last.at.occurrence.floor, unit: 'tenths' },
      ...signedOffTo(last.at),
    ]);
    return { rule: kitTooLight.row.id, weeks: weeksOf(stuck), reason };
  },
};

/** A heavier one may be in the house and only wait to be signed off. */
function signedOffTo(at: Situation): readonly ReasonInput[] {
  const grams = at.ground.input.versions[at.place.version]?.signedOffTo ?? null;
  return grams === null ? [] : [{ name: 'signed off to', value: grams, unit: 'g' }];
}

/** Held in the hands, and nothing heavier to hold. */
function isHeaviest(at: Situation): boolean {
  const footing = at.ground.footings[at.place.version];
  return (
    footing?.counted === true && at.place.load === footing.external.length - 1 && externalAt(at.ground, at.place) > 0
  );
}

/** The load held is printed in pounds: so is the one that would help. */
function isInPounds({ ground, place }: Situation): boolean {
  return ground.input.versions[place.version]?.loads[place.load]?.label.endsWith(' lb') ?? false;
}

/** Grams of one item, the heaviest common one, else the heaviest whole step, at which the bottom of the range is predicted with the floor left. */
function bellThatHelps(at: Situation): number {
  const { ground, place, occurrence } = at;
  const { input, equation, tested } = ground;
  const needed = 10 * input.bottom + occurrence.floor;
  const resisted = heaviestFor(equation, at.week.capacities[place.version] ?? 0, tested, needed);
  const external = resisted - bodyPart(input.versions[place.version]?.share ?? null, input.bodyMass);
  const hands = externalAt(ground, place) / gramsAt(ground, place);
  const upTo = (step: number): number => Math.round(Math.floor(external / hands / step) * step);
  if (isInPounds(at)) return upTo(BELL_STEP_IN_POUNDS * GRAMS_IN_A_POUND);
  const common = Math.min(upTo(COMMON_STEP), COMMON_MOST);
  return common > gramsAt(ground, place) ? common : upTo(BELL_STEP);
}

/** Cautions that follow by a rule from a fact of health, beside those the coach wrote. */
import type { Birth, Caution, Health } from '../../model/client.js';
import type { Rule } from '../../model/reason.js';
import { BIRTH_BELLY } from '../rules/birth-belly.js';
import { BIRTH_BREATH } from '../rules/birth-breath.js';
import { BIRTH_IMPACT } from '../rules/birth-impact.js';
import { BIRTH_WINDOW } from '../rules/birth-window.js';
import { BONE_BEND } from '../rules/bone-bend.js';
import { BONE_FAST } from '../rules/bone-fast.js';
import { BONE_LIFT } from '../rules/bone-lift.js';
import { BONE_TWIST } from '../rules/bone-twist.js';
import { FALLS_SUPPORT } from '../rules/falls-support.js';
import { FRACTURE_BEND } from '../rules/fracture-bend.js';
import { FRACTURE_FAST } from '../rules/fracture-fast.js';
import { FRACTURE_FLOOR } from '../rules/fracture-floor.js';
import { FRACTURE_LIFT } from '../rules/fracture-lift.js';
import { FRACTURE_TWIST } from '../rules/fracture-twist.js';
import { LOWERS_BLOOD_PRESSURE } from '../rules/lowers-blood-pressure.js';
import { PREGNANCY_BACK } from '../rules/pregnancy-back.js';
import { PREGNANCY_BELLY } from '../rules/pregnancy-belly.js';
import { PREGNANCY_BREATH } from '../rules/pregnancy-breath.js';
import { PREGNANCY_FALLS } from '../rules/pregnancy-falls.js';
import { PRESSURE_BREATH } from '../rules/pressure-breath.js';
import { THINS_THE_BLOOD } from '../rules/thins-the-blood.js';
import { isWithin } from './read-birth.js';
import { weekReached } from './read-pregnancy.js';
import { readPressure } from './read-pressure.js';
import type { Screened } from './screened.js';

export interface Derived {
  readonly rule: Rule;
  /** The fact it follows from, as the client's file calls it. */
  readonly fact: string;
  readonly what: Caution['what'];
  readonly degree: Caution['degree'];
}

/** In the order medicines, pressure, pregnancy, birth, bones, falls; each rule's together. */
export function deriveCautions(screened: Screened): readonly Derived[] {
  const { health } = screened.client;
  const fell = (health.falls ?? 0) >= screened.rules.valueOf(FALLS_SUPPORT);
  return [
    ...from('medicines', ofMedicines(health)),
    ...from('blood pressure', readPressure(screened).matters ? [avoid(PRESSURE_BREATH, 'breath hold')] : []),
    ...from('pregnancy', ofPregnancy(screened)),
    ...from('birth', health.birth === undefined ? [] : ofBirth(health.birth, screened)),
    ...ofBones(health),
    ...from('falls', fell ? [care(FALLS_SUPPORT, 'balance')] : []),
  ];
}

type Followed = Omit<Derived, 'fact'>;
type Follow = (rule: Rule, what: Caution['what']) => Followed;
const avoid: Follow = (rule, what) => ({ rule, what, degree: 'avoid' });
const care: Follow = (rule, what) => ({ rule, what, degree: 'take care' });
const from = (fact: string, cautions: readonly Followed[]): readonly Derived[] =>
  cautions.map((one) => ({ fact, ...one }));

function ofMedicines({ medicines = [] }: Health): readonly Followed[] {
  return [
    ...(medicines.includes('lowers blood pressure') ? [care(LOWERS_BLOOD_PRESSURE, 'head down')] : []),
    ...(medicines.includes('thins the blood')
      ? [avoid(THINS_THE_BLOOD, 'impact'), care(THINS_THE_BLOOD, 'balance')]
      : []),
  ];
}

function ofPregnancy(screened: Screened): readonly Followed[] {
  const { client, rules } = screened;
  const { pregnancy } = client.health;
  if (pregnancy === undefined) return [];
  const week = weekReached(pregnancy, screened);
  return [
    avoid(PREGNANCY_BREATH, 'breath hold'),
    avoid(PREGNANCY_FALLS, 'impact'),
    care(PREGNANCY_FALLS, 'balance'),
    ...(week >= rules.valueOf(PREGNANCY_BACK) ? [avoid(PREGNANCY_BACK, 'lying on the back')] : []),
    ...(week >= rules.valueOf(PREGNANCY_BELLY)
      ? [care(PREGNANCY_BELLY, 'belly'), care(PREGNANCY_BELLY, 'pelvic floor')]
      : []),
  ];
}

function ofBirth(birth: Birth, screened: Screened): readonly Followed[] {
  const lately = isWithin(BIRTH_WINDOW, birth, screened);
  const impact = lately ? avoid : care;
  const belly = lately && birth.by === 'caesarean' ? avoid : care;
  return [
    ...(isWithin(BIRTH_IMPACT, birth, screened) ? [impact(BIRTH_IMPACT, 'impact')] : []),
    ...(isWithin(BIRTH_BREATH, birth, screened)
      ? [avoid(BIRTH_BREATH, 'breath hold'), care(BIRTH_BREATH, 'pelvic floor')]
      : []),
    ...(isWithin(BIRTH_BELLY, birth, screened) ? [belly(BIRTH_BELLY, 'belly')] : []),
  ];
}

/** A vertebral fracture asks all that low bone density does, and more. */
function ofBones({ conditions = [] }: Health): readonly Derived[] {
  if (conditions.includes('vertebral fracture')) {
    return from('vertebral fracture', [
      avoid(FRACTURE_BEND, 'loaded bend'),
      avoid(FRACTURE_BEND, 'deep bend'),
      avoid(FRACTURE_TWIST, 'loaded twist'),
      avoid(FRACTURE_TWIST, 'deep twist'),
      avoid(FRACTURE_LIFT, 'lifting from the floor'),
      care(FRACTURE_FLOOR, 'floor'),
      avoid(FRACTURE_FAST, 'impact'),
      avoid(FRACTURE_FAST, 'speed'),
    ]);
  }
  if (!conditions.includes('low bone density')) return [];
  return from('low bone density', [
    care(BONE_BEND, 'loaded bend'),
    care(BONE_BEND, 'deep bend'),
    care(BONE_TWIST, 'loaded twist'),
    care(BONE_TWIST, 'deep twist'),
    care(BONE_LIFT, 'lifting from the floor'),
    care(BONE_FAST, 'speed'),
  ]);
}

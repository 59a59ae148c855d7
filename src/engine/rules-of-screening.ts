/** The rules of screening and health, in order of id. */
import type { Rule } from '../model/reason.js';
import { ADULT_FROM } from './rules/adult-from.js';
import { BIRTH_BELLY } from './rules/birth-belly.js';
import { BIRTH_BREATH } from './rules/birth-breath.js';
import { BIRTH_CHECK } from './rules/birth-check.js';
import { BIRTH_IMPACT } from './rules/birth-impact.js';
import { BIRTH_SIGNS } from './rules/birth-signs.js';
import { BIRTH_WINDOW } from './rules/birth-window.js';
import { BONE_BEND } from './rules/bone-bend.js';
import { BONE_FAST } from './rules/bone-fast.js';
import { BONE_LIFT } from './rules/bone-lift.js';
import { BONE_TWIST } from './rules/bone-twist.js';
import { CLEARANCE_HOLDS } from './rules/clearance-holds.js';
import { CLEARANCE_WARNED } from './rules/clearance-warned.js';
import { DIABETES_IS_DISEASE } from './rules/diabetes-is-disease.js';
import { FALLS_REFER } from './rules/falls-refer.js';
import { FALLS_SUPPORT } from './rules/falls-support.js';
import { FLOOR_BEGINS } from './rules/floor-begins.js';
import { FLOOR_LIGHT } from './rules/floor-light.js';
import { FLOOR_MODERATE } from './rules/floor-moderate.js';
import { FRACTURE_BEND } from './rules/fracture-bend.js';
import { FRACTURE_FAST } from './rules/fracture-fast.js';
import { FRACTURE_FLOOR } from './rules/fracture-floor.js';
import { FRACTURE_LIFT } from './rules/fracture-lift.js';
import { FRACTURE_MODERATE } from './rules/fracture-moderate.js';
import { FRACTURE_TWIST } from './rules/fracture-twist.js';
import { LOWERS_BLOOD_PRESSURE } from './rules/lowers-blood-pressure.js';
import { LOWERS_BLOOD_SUGAR } from './rules/lowers-blood-sugar.js';
import { NOT_ASKED } from './rules/not-asked.js';
import { OLDER_FROM } from './rules/older-from.js';
import { OTHER_MEDICINE } from './rules/other-medicine.js';
import { PLACENTA_FROM } from './rules/placenta-from.js';
import { PREGNANCY_ASKS_DIASTOLIC } from './rules/pregnancy-asks-diastolic.js';
import { PREGNANCY_ASKS_KNOWN } from './rules/pregnancy-asks-known.js';
import { PREGNANCY_ASKS_SYSTOLIC } from './rules/pregnancy-asks-systolic.js';
import { PREGNANCY_BACK } from './rules/pregnancy-back.js';
import { PREGNANCY_BELLY } from './rules/pregnancy-belly.js';
import { PREGNANCY_BREATH } from './rules/pregnancy-breath.js';
import { PREGNANCY_FALLS } from './rules/pregnancy-falls.js';
import { PREGNANCY_LAST } from './rules/pregnancy-last.js';
import { PREGNANCY_LENGTH } from './rules/pregnancy-length.js';
import { PREGNANCY_MODERATE } from './rules/pregnancy-moderate.js';
import { PREGNANCY_SIGNS } from './rules/pregnancy-signs.js';
import { PRESSURE_ASK_DIASTOLIC } from './rules/pressure-ask-diastolic.js';
import { PRESSURE_ASK_SYSTOLIC } from './rules/pressure-ask-systolic.js';
import { PRESSURE_AT_HOME } from './rules/pressure-at-home.js';
import { PRESSURE_BREATH } from './rules/pressure-breath.js';
import { PRESSURE_HOLDS } from './rules/pressure-holds.js';
import { PRESSURE_STOP_DIASTOLIC } from './rules/pressure-stop-diastolic.js';
import { PRESSURE_STOP_SYSTOLIC } from './rules/pressure-stop-systolic.js';
import { SCREENING_HOLDS } from './rules/screening-holds.js';
import { SLOWS_THE_HEART } from './rules/slows-the-heart.js';
import { TALK_MODERATE } from './rules/talk-moderate.js';
import { THINS_THE_BLOOD } from './rules/thins-the-blood.js';
import { TWINS_FROM } from './rules/twins-from.js';

export const RULES_OF_SCREENING: readonly Rule[] = [
  ADULT_FROM,
  BIRTH_BELLY,
  BIRTH_BREATH,
  BIRTH_CHECK,
  BIRTH_IMPACT,
  BIRTH_SIGNS,
  BIRTH_WINDOW,
  BONE_BEND,
  BONE_FAST,
  BONE_LIFT,
  BONE_TWIST,
  CLEARANCE_HOLDS,
  CLEARANCE_WARNED,
  DIABETES_IS_DISEASE,
  FALLS_REFER,
  FALLS_SUPPORT,
  FLOOR_BEGINS,
  FLOOR_LIGHT,
  FLOOR_MODERATE,
  FRACTURE_BEND,
  FRACTURE_FAST,
  FRACTURE_FLOOR,
  FRACTURE_LIFT,
  FRACTURE_MODERATE,
  FRACTURE_TWIST,
  LOWERS_BLOOD_PRESSURE,
  LOWERS_BLOOD_SUGAR,
  NOT_ASKED,
  OLDER_FROM,
  OTHER_MEDICINE,
  PLACENTA_FROM,
  PREGNANCY_ASKS_DIASTOLIC,
  PREGNANCY_ASKS_KNOWN,
  PREGNANCY_ASKS_SYSTOLIC,
  PREGNANCY_BACK,
  PREGNANCY_BELLY,
  PREGNANCY_BREATH,
  PREGNANCY_FALLS,
  PREGNANCY_LAST,
  PREGNANCY_LENGTH,
  PREGNANCY_MODERATE,
  PREGNANCY_SIGNS,
  PRESSURE_ASK_DIASTOLIC,
  PRESSURE_ASK_SYSTOLIC,
  PRESSURE_AT_HOME,
  PRESSURE_BREATH,
  PRESSURE_HOLDS,
  PRESSURE_STOP_DIASTOLIC,
  PRESSURE_STOP_SYSTOLIC,
  SCREENING_HOLDS,
  SLOWS_THE_HEART,
  TALK_MODERATE,
  THINS_THE_BLOOD,
  TWINS_FROM,
];

/**
 * What the coach and the client are told of screening and the facts of health: findings that stop nothing. Of the
 * cautions that follow from a fact the client reads the words of their rules beside the exercises, not here.
 */
import { addDays, isoOfDay } from '../../model/day.js';
import type { SessionId } from '../../model/identity.js';
import type { Finding } from '../../model/plan.js';
import type { Audience, ReasonInput, Rule } from '../../model/reason.js';
import type { BlockContext } from '../block-context.js';
import { isOlder } from '../effort/plan-effort.js';
import { reasonOf } from '../reason-of.js';
import { BIRTH_SIGNS } from '../rules/birth-signs.js';
import { BIRTH_WINDOW } from '../rules/birth-window.js';
import { CLEARANCE_WARNED } from '../rules/clearance-warned.js';
import { DIABETES_IS_DISEASE } from '../rules/diabetes-is-disease.js';
import { FALLS_REFER } from '../rules/falls-refer.js';
import { FRACTURE_MODERATE } from '../rules/fracture-moderate.js';
import { LOWERS_BLOOD_SUGAR } from '../rules/lowers-blood-sugar.js';
import { NOT_ASKED } from '../rules/not-asked.js';
import { OTHER_MEDICINE } from '../rules/other-medicine.js';
import { PREGNANCY_LAST } from '../rules/pregnancy-last.js';
import { PREGNANCY_MODERATE } from '../rules/pregnancy-moderate.js';
import { PREGNANCY_SIGNS } from '../rules/pregnancy-signs.js';
import { PRESSURE_AT_HOME } from '../rules/pressure-at-home.js';
import { PRESSURE_HOLDS } from '../rules/pressure-holds.js';
import { PRESSURE_STOP_DIASTOLIC } from '../rules/pressure-stop-diastolic.js';
import { PRESSURE_STOP_SYSTOLIC } from '../rules/pressure-stop-systolic.js';
import { SLOWS_THE_HEART } from '../rules/slows-the-heart.js';
import { TALK_MODERATE } from '../rules/talk-moderate.js';
import { diseaseOnFile } from './on-file.js';
import { isWithin } from './read-birth.js';

import { readPressure } from './read-pressure.js';

interface Told {
  readonly rule: Rule;
  readonly to: readonly Audience[];
  readonly inputs?: readonly ReasonInput[];
  readonly session?: SessionId;
  readonly weeks?: readonly number[];
}

const word = (name: string, value: string): ReasonInput => ({ name, value, unit: '' });
const BOTH: readonly Audience[] = ['coach', 'client'];
const COACH: readonly Audience[] = ['coach'];
const CLIENT: readonly Audience[] = ['client'];

/** Where the block stops, then medicines, pressure, pregnancy, birth and the rest; the coach before the client. */
export function tellStanding(context: BlockContext): readonly Finding[] {
  const told: readonly Told[] = [
    ...ofLastDay(context),
    ...ofEffort(context),
    ...ofMedicines(context),
    ...ofPressure(context),
    ...ofPregnancyAndBirth(context),
    ...ofTheRest(context),
    ...ofCautions(context),
  ];
  return told.flatMap(({ rule, to, inputs = [], session, weeks = [] }) =>
    to.map((audience): Finding => {
      const reason = reasonOf(rule, audience, inputs, 'measured');
      return { rule: rule.id, audience, ...(session === undefined ? {} : { session }), weeks, reason };
    }),
  );
}

/** The client is told in each session from `clearance-warned` before the last day on. The coach has a warning besides. */
function ofLastDay({ standing, rules, days }: BlockContext): readonly Told[] {
  const { lastDay } = standing;
  if (lastDay === null) return [];
  const inputs = [word('last day', isoOfDay(lastDay.day))];
  if (lastDay.because === 'due date') return [{ rule: PREGNANCY_LAST, to: BOTH, inputs }];
  const from = addDays(lastDay.day, -rules.valueOf(CLEARANCE_WARNED));
  const last = days.filter(({ day }) => day >= from && day <= lastDay.day);
  return [...new Set(last.map(({ session }) => session))].map((session) => {
    const weeks = last.filter((one) => one.session === session).map(({ week }) => week);
    return { rule: CLEARANCE_WARNED, to: CLIENT, inputs, session, weeks: [...new Set(weeks)] };
  });
}

function ofEffort({ standing }: BlockContext): readonly Told[] {
  return [
    ...(standing.talk === 'sentences' ? [{ rule: TALK_MODERATE, to: CLIENT }] : []),
    ...standing.begins.map(({ rule, reserve, weeks }): Told => {
      const inputs = [{ name: 'value', value: reserve, unit: 'tenths' }];
      return { rule, to: COACH, inputs, weeks: Array.from({ length: weeks }, (_, index) => index + 1) };
    }),
  ];
}

function ofMedicines(context: BlockContext): readonly Told[] {
  const { medicines, conditions, falls } = context.client.health;
  const not = [
    ...(medicines === undefined ? ['medicines'] : []),
    ...(conditions === undefined ? ['conditions'] : []),
    ...(falls === undefined && isOlder(context) ? ['falls'] : []),
  ];
  const takes = (what: string): boolean => (medicines ?? []).some((one) => one === what);
  return [
    ...(not.length > 0 ? [{ rule: NOT_ASKED, to: COACH, inputs: [word('not asked', not.join(', '))] }] : []),
    ...(takes('slows the heart') ? [{ rule: SLOWS_THE_HEART, to: BOTH }] : []),
    ...(takes('lowers blood sugar') ? [{ rule: LOWERS_BLOOD_SUGAR, to: BOTH }] : []),
    ...(takes('other') ? [{ rule: OTHER_MEDICINE, to: COACH }] : []),
  ];
}

/** Figures only to a client who owns a cuff, and to whom pressure matters. */
function ofPressure(context: BlockContext): readonly Told[] {
  const { client, rules, firstDay } = context;
  const reading = client.health.bloodPressure;
  const { matters, old, unmeasured } = readPressure(context);
  const days = reading === undefined ? [] : [{ name: 'days', value: firstDay - reading.date, unit: 'days' }];
  const limits = [word('limit', `${rules.valueOf(PRESSURE_STOP_SYSTOLIC)}/${rules.valueOf(PRESSURE_STOP_DIASTOLIC)}`)];
  return [
    ...(old || unmeasured ? [{ rule: PRESSURE_HOLDS, to: COACH, inputs: days }] : []),
    ...(reading?.cuff && matters ? [{ rule: PRESSURE_AT_HOME, to: BOTH, inputs: limits }] : []),
  ];
}

function ofPregnancyAndBirth(context: BlockContext): readonly Told[] {
  const { pregnancy, birth } = context.client.health;
  return [
    ...(pregnancy === undefined
      ? []
      : [
          { rule: PREGNANCY_MODERATE, to: COACH },
          { rule: PREGNANCY_SIGNS, to: BOTH },
        ]),
    ...(birth !== undefined && isWithin(BIRTH_WINDOW, birth, context) ? [{ rule: BIRTH_WINDOW, to: COACH }] : []),
    ...(birth !== undefined && isWithin(BIRTH_SIGNS, birth, context) ? [{ rule: BIRTH_SIGNS, to: BOTH }] : []),
  ];
}

function ofTheRest({ client, rules }: BlockContext): readonly Told[] {
  const { falls, conditions } = client.health;
  const answered = client.screening?.knownDisease === 'yes';
  return [
    ...(diseaseOnFile(client.health) && !answered ? [{ rule: DIABETES_IS_DISEASE, to: COACH }] : []),
    ...((conditions ?? []).includes('vertebral fracture') ? [{ rule: FRACTURE_MODERATE, to: COACH }] : []),
    ...((falls ?? 0) >= rules.valueOf(FALLS_REFER) ? [{ rule: FALLS_REFER, to: COACH }] : []),
  ];
}

/** Every rule from which a caution follows, once. */
function ofCautions({ standing }: BlockContext): readonly Told[] {
  return [...new Set(standing.derived.map(({ rule }) => rule))].map((rule) => {
    const of = standing.derived.filter((one) => one.rule === rule);
    const inputs = of.map(({ what, degree }) => word('caution', `${degree}: ${what}`));
    return { rule, to: COACH, inputs };
  });
}

/**
 * The rules of screening and health: their names, and what English tells the coach of each.
 */
import { listed } from '../listed.js';
import { clause, type Figure, held, type Saying } from '../rule-words.js';

export const SCREENING_RULES = [
  'adult-from',
  'birth-belly',
  'birth-breath',
  'birth-check',
  'birth-impact',
  'birth-signs',
  'birth-window',
  'bone-bend',
  'bone-fast',
  'bone-lift',
  'bone-twist',
  'clearance-holds',
  'clearance-warned',
  'diabetes-is-disease',
  'falls-refer',
  'falls-support',
  'floor-begins',
  'floor-light',
  'floor-moderate',
  'fracture-bend',
  'fracture-fast',
  'fracture-floor',
  'fracture-lift',
  'fracture-moderate',
  'fracture-twist',
  'lowers-blood-pressure',
  'lowers-blood-sugar',
  'not-asked',
  'older-from',
  'other-medicine',
  'placenta-from',
  'pregnancy-asks-diastolic',
  'pregnancy-asks-known',
  'pregnancy-asks-systolic',
  'pregnancy-back',
  'pregnancy-belly',
  'pregnancy-breath',
  'pregnancy-falls',
  'pregnancy-last',
  'pregnancy-length',
  'pregnancy-moderate',
  'pregnancy-signs',
  'pressure-ask-diastolic',
  'pressure-ask-systolic',
  'pressure-at-home',
  'pressure-breath',
  'pressure-holds',
  'pressure-stop-diastolic',
  'pressure-stop-systolic',
  'screening-holds',
  'slows-the-heart',
  'talk-moderate',
  'thins-the-blood',
  'twins-from',
] as const;
export type ScreeningRuleName = (typeof SCREENING_RULES)[number];

/** `(avoid: impact, take care: balance)`: the cautions that follow, where the reason carries them. */
const cautions = (f: Figure): string => clause(f('caution'), (list) => ` (${byDegree(list.split(', '))})`);

/** `take care: a, take care: b` → `take care: a, b`. */
function byDegree(list: readonly string[]): string {
  const degrees = [...new Set(list.map((each) => each.split(': ')[0]))];
  return degrees.map((of) => `${of}: ${list.flatMap((one) => one.split(`${of}: `)[1] ?? []).join(', ')}`).join('; ');
}

/** What is planned while a fact was not asked. */
const UNTIL_ASKED: readonly (readonly [string, string])[] = [
  ['medicines', 'breath and words set the effort'],
  ['conditions', 'nothing is changed for bones, blood pressure or diabetes'],
  ['falls', 'balance is planned as if there had been no fall'],
];
const untilAsked = (facts: readonly string[]): string =>
  listed(UNTIL_ASKED.flatMap(([fact, until]) => (facts.includes(fact) ? [until] : [])));

const ASK = 'ask their doctor, midwife or physiotherapist where you are not sure';

export const englishScreening: Readonly<Record<ScreeningRuleName, Saying>> = {
  'adult-from': (f) => `Nobody under ${held(f, '18')} is planned for.`,
  'birth-belly': (f) => `After a birth, mind the belly${cautions(f)}: no doming, no strain.`,
  'birth-breath': (f) => `After a birth, nothing is held against the pelvic floor${cautions(f)}.`,
  'birth-check': 'After a birth, nothing goes out before a midwife, doctor or physiotherapist has looked.',
  'birth-impact': (f) => `After a birth, impact comes back late${cautions(f)}.`,
  'birth-signs': 'After a birth, bleeding that comes back or grows is a sign to stop; the booklet says so.',
  'birth-window':
    'In the first 12 weeks after a birth the plan is light at first, then moderate, as it feels; no gain is counted on.',
  'bone-bend': (f) => `With low bone density, mind bending under load or to the end of the range${cautions(f)}.`,
  'bone-fast': (f) => `With low bone density, mind speed${cautions(f)}.`,
  'bone-lift': (f) => `With low bone density, mind lifting from the floor and putting down on it${cautions(f)}.`,
  'bone-twist': (f) => `With low bone density, mind twisting under load${cautions(f)}.`,
  'clearance-holds': (f) =>
    `A clearance that is needed holds for ${held(f, '365 days')} at most, and never beyond the day it names.`,
  'clearance-warned': (f) =>
    `The client is told that sessions stop${clause(f('last day'), (day) => ` on ${day}`)}, a fortnight before.`,
  'diabetes-is-disease': 'Diabetes is on file, or a medicine that lowers blood sugar: it counts as known disease.',
  'falls-refer': (f) =>
    `From ${held(f, '2 falls')} in a year: have it looked into by a doctor or physiotherapist. No measure of standing is sent home: take it beside them.`,
  'falls-support': (f) => `After a fall, balance is trained with support within reach${cautions(f)}.`,
  'floor-begins': (f) => `Without regular exercise so far, the first weeks leave at least ${held(f, '4')} good reps.`,
  'floor-light': (f) => `So soon after a birth, the first weeks leave at least ${held(f, '5')} good reps.`,
  'floor-moderate': (f) => `A moderate plan leaves at least ${held(f, '4')} good reps.`,
  'fracture-bend': (f) => `After a vertebral fracture, no bending under load or to the end of the range${cautions(f)}.`,
  'fracture-fast': (f) => `After a vertebral fracture, nothing fast and no impact${cautions(f)}.`,
  'fracture-floor': (f) =>
    `After a vertebral fracture, getting down to the floor and up again is minded${cautions(f)}.`,
  'fracture-lift': (f) =>
    `After a vertebral fracture, nothing is lifted from the floor or put down on it${cautions(f)}.`,
  'fracture-moderate': `After a vertebral fracture, form comes before effort: a moderate plan; ${ASK}.`,
  'fracture-twist': (f) => `After a vertebral fracture, no twisting under load${cautions(f)}.`,
  'lowers-blood-pressure': (f) =>
    `A medicine lowers blood pressure: come up slowly, and cool down for longer${cautions(f)}.`,
  'lowers-blood-sugar':
    'A medicine lowers blood sugar: the clinic says when to train around meals and doses, and what to carry.',
  'not-asked': (f) =>
    `Not asked yet${clause(f('not asked'), (facts) => `: ${facts}. Until you have, ${untilAsked(facts.split(', '))}`) || '. What was not asked is told'}.`,
  'older-from': (f) => `From ${held(f, '65')} a client counts as older.`,
  'other-medicine': 'There is another medicine: ask the pharmacist or doctor what it changes in training.',
  'placenta-from': (f) =>
    `With placenta praevia, ask first; nothing is planned that reaches week ${held(f, '26')} of the pregnancy.`,
  'pregnancy-asks-diastolic': (f) =>
    `In pregnancy, a lower figure of ${held(f, '90 mmHg')} or more at rest: ask first.`,
  'pregnancy-asks-known': 'In pregnancy, blood pressure or diabetes on file, or a medicine for it: ask first.',
  'pregnancy-asks-systolic': (f) =>
    `In pregnancy, an upper figure of ${held(f, '140 mmHg')} or more at rest: ask first.`,
  'pregnancy-back': (f) => `From week 14 of a pregnancy, nothing flat on the back${cautions(f)}.`,
  'pregnancy-belly': (f) => `From week 14 of a pregnancy, mind the belly and the pelvic floor${cautions(f)}.`,
  'pregnancy-breath': (f) => `In pregnancy the breath is never held${cautions(f)}.`,
  'pregnancy-falls': (f) => `In pregnancy, nothing that may end in a fall or a knock${cautions(f)}.`,
  'pregnancy-last': (f) =>
    `No session is planned after the day the child is due${clause(f('last day'), (day) => `, ${day}`)}.`,
  'pregnancy-length': (f) => `Weeks of pregnancy are counted from ${held(f, '280 days')} before the day due.`,
  'pregnancy-moderate': `In pregnancy the plan is moderate, and no gain is counted on; ${ASK}.`,
  'pregnancy-signs': 'In pregnancy there are more signs to stop at; the booklet says them.',
  'pressure-ask-diastolic': (f) => `Above a lower figure of ${held(f, '100 mmHg')} at rest: ask first.`,
  'pressure-ask-systolic': (f) => `Above an upper figure of ${held(f, '160 mmHg')} at rest: ask first.`,
  'pressure-at-home': 'There is a cuff at home: the booklet says from which figures not to train.',
  'pressure-breath': (f) =>
    `Blood pressure matters here: the breath is never held${cautions(f)}, and warm-up and cool-down are longer.`,
  'pressure-holds': (f) =>
    f('days') === ''
      ? 'No blood pressure is on file, and it matters here: measure it.'
      : `The blood pressure on file will be ${f('days')} old when the block begins: measure it again.`,
  'pressure-stop-diastolic': (f) => `Above a lower figure of ${held(f, '110 mmHg')} at rest nothing goes out.`,
  'pressure-stop-systolic': (f) => `Above an upper figure of ${held(f, '180 mmHg')} at rest nothing goes out.`,
  'screening-holds': (f) => `Screening answers older than ${held(f, '365 days')} are asked again.`,
  'slows-the-heart': 'A medicine slows the heart: breath and words set the effort, and no pulse is ever asked for.',
  'talk-moderate': 'A moderate plan always leaves breath for whole sentences.',
  'thins-the-blood': (f) => `A medicine thins the blood: no knocks and no falls${cautions(f)}.`,
  'twins-from': (f) => `With twins, ask first where the block reaches week ${held(f, '28')}.`,
};

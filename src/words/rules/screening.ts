/**
 * The rules of screening and health: their names, and what English says of each. Where a caution follows from a rule,
 * its sentence for the client stands beside the exercises that ask for it, and says what to do, never why.
 */
import { listed } from '../listed.js';
import { both, clause, type Figure, held, only, type RuleWords } from '../rule-words.js';

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

/** What the client reads of these belongs with the signs to stop at. */
export const SIGNS_TO_STOP: ReadonlySet<string> = new Set<ScreeningRuleName>([
  'birth-signs',
  'lowers-blood-sugar',
  'pregnancy-signs',
  'pressure-at-home',
]);

export const englishScreening: Readonly<Record<ScreeningRuleName, RuleWords>> = {
  'adult-from': only((f) => `Nobody under ${held(f, '18')} is planned for.`),
  'birth-belly': both(
    (f) => `After a birth, mind the belly${cautions(f)}: no doming, no strain.`,
    'If your belly domes or pulls, make it easier.',
  ),
  'birth-breath': both(
    (f) => `After a birth, nothing is held against the pelvic floor${cautions(f)}.`,
    'Breathe out as you lift. If you feel heaviness below, or leak, make it easier.',
  ),
  'birth-check': only('After a birth, nothing goes out before a midwife, doctor or physiotherapist has looked.'),
  'birth-impact': both(
    (f) => `After a birth, impact comes back late${cautions(f)}.`,
    'Keep one foot on the floor: no jumping or landing.',
  ),
  'birth-signs': both(
    'After a birth, bleeding that comes back or grows is a sign to stop; the booklet says so.',
    'Stop, and ask your midwife or doctor, at any of these: bleeding that comes back or grows; a scar that hurts or weeps; heaviness below; a fever.',
  ),
  'birth-window': only(
    'In the first 12 weeks after a birth the plan is light at first, then moderate, as it feels; no gain is counted on.',
  ),
  'bone-bend': both(
    (f) => `With low bone density, mind bending under load or to the end of the range${cautions(f)}.`,
    'Bend from the hips and keep your back long.',
  ),
  'bone-fast': both((f) => `With low bone density, mind speed${cautions(f)}.`, 'Move slowly and under control.'),
  'bone-lift': both(
    (f) => `With low bone density, mind lifting from the floor and putting down on it${cautions(f)}.`,
    'Lift from a chair or a box, and put it down there.',
  ),
  'bone-twist': both(
    (f) => `With low bone density, mind twisting under load${cautions(f)}.`,
    'Turn with your feet, not in your back.',
  ),
  'clearance-holds': only(
    (f) => `A clearance that is needed holds for ${held(f, '365 days')} at most, and never beyond the day it names.`,
  ),
  'clearance-warned': both(
    (f) => `The client is told that sessions stop${clause(f('last day'), (day) => ` on ${day}`)}, a fortnight before.`,
    (f) =>
      `The last day to train from this booklet is ${f('last day') || 'near'}. See your doctor before then; your coach makes the next one.`,
  ),
  'diabetes-is-disease': only(
    'Diabetes is on file, or a medicine that lowers blood sugar: it counts as known disease.',
  ),
  'falls-refer': only(
    (f) =>
      `From ${held(f, '2 falls')} in a year: have it looked into by a doctor or physiotherapist. No measure of standing is sent home: take it beside them.`,
  ),
  'falls-support': both(
    (f) => `After a fall, balance is trained with support within reach${cautions(f)}.`,
    'Keep a wall or a heavy chair within reach of your hand.',
  ),
  'floor-begins': both(
    (f) => `Without regular exercise so far, the first weeks leave at least ${held(f, '4')} good reps.`,
    'These weeks are light on purpose.',
  ),
  'floor-light': both(
    (f) => `So soon after a birth, the first weeks leave at least ${held(f, '5')} good reps.`,
    'These weeks are light on purpose.',
  ),
  'floor-moderate': both(
    (f) => `A moderate plan leaves at least ${held(f, '4')} good reps.`,
    'This stays well within what you can do, on purpose.',
  ),
  'fracture-bend': both(
    (f) => `After a vertebral fracture, no bending under load or to the end of the range${cautions(f)}.`,
    'Bend from the hips and keep your back long.',
  ),
  'fracture-fast': both(
    (f) => `After a vertebral fracture, nothing fast and no impact${cautions(f)}.`,
    'Move slowly, and keep one foot on the floor.',
  ),
  'fracture-floor': both(
    (f) => `After a vertebral fracture, getting down to the floor and up again is minded${cautions(f)}.`,
    'Take your time getting down and up, with a chair to help.',
  ),
  'fracture-lift': both(
    (f) => `After a vertebral fracture, nothing is lifted from the floor or put down on it${cautions(f)}.`,
    'Lift from a chair or a box, and put down there. Nothing heavy goes on the floor.',
  ),
  'fracture-moderate': only(`After a vertebral fracture, form comes before effort: a moderate plan; ${ASK}.`),
  'fracture-twist': both(
    (f) => `After a vertebral fracture, no twisting under load${cautions(f)}.`,
    'Turn with your feet, not in your back.',
  ),
  'lowers-blood-pressure': both(
    (f) => `A medicine lowers blood pressure: come up slowly, and cool down for longer${cautions(f)}.`,
    'Come up slowly, and sit down if you feel light-headed.',
  ),
  'lowers-blood-sugar': both(
    'A medicine lowers blood sugar: the clinic says when to train around meals and doses, and what to carry.',
    'Keep something sweet within reach, as your clinic advised. If you feel shaky, sweaty or muddled, stop and take it.',
  ),
  'not-asked': only(
    (f) =>
      `Not asked yet${clause(f('not asked'), (facts) => `: ${facts}. Until you have, ${untilAsked(facts.split(', '))}`) || '. What was not asked is told'}.`,
  ),
  'older-from': only((f) => `From ${held(f, '65')} a client counts as older.`),
  'other-medicine': only('There is another medicine: ask the pharmacist or doctor what it changes in training.'),
  'placenta-from': only(
    (f) => `With placenta praevia, ask first; nothing is planned that reaches week ${held(f, '26')} of the pregnancy.`,
  ),
  'pregnancy-asks-diastolic': only(
    (f) => `In pregnancy, a lower figure of ${held(f, '90 mmHg')} or more at rest: ask first.`,
  ),
  'pregnancy-asks-known': only('In pregnancy, blood pressure or diabetes on file, or a medicine for it: ask first.'),
  'pregnancy-asks-systolic': only(
    (f) => `In pregnancy, an upper figure of ${held(f, '140 mmHg')} or more at rest: ask first.`,
  ),
  'pregnancy-back': both(
    (f) => `From week 14 of a pregnancy, nothing flat on the back${cautions(f)}.`,
    'Do not lie flat on your back; prop yourself up, or turn onto your side.',
  ),
  'pregnancy-belly': both(
    (f) => `From week 14 of a pregnancy, mind the belly and the pelvic floor${cautions(f)}.`,
    'If your belly domes, or you feel heaviness below, make it easier.',
  ),
  'pregnancy-breath': both((f) => `In pregnancy the breath is never held${cautions(f)}.`, 'Breathe out as you lift.'),
  'pregnancy-falls': both(
    (f) => `In pregnancy, nothing that may end in a fall or a knock${cautions(f)}.`,
    'Keep one foot on the floor, and something steady within reach.',
  ),
  'pregnancy-last': both(
    (f) => `No session is planned after the day the child is due${clause(f('last day'), (day) => `, ${day}`)}.`,
    (f) => `This booklet ends on ${f('last day') || 'the day your child is due'}. Your midwife says how you go on.`,
  ),
  'pregnancy-length': only((f) => `Weeks of pregnancy are counted from ${held(f, '280 days')} before the day due.`),
  'pregnancy-moderate': only(`In pregnancy the plan is moderate, and no gain is counted on; ${ASK}.`),
  'pregnancy-signs': both(
    'In pregnancy there are more signs to stop at; the booklet says them.',
    'Stop, and ring your midwife or doctor, at any of these: bleeding; losing fluid; regular or painful tightenings; pain in your belly; a headache; dizziness; hard breathing before you begin, or that rest does not settle; weakness that upsets your balance. Pain in your chest or a sore, swollen calf is an emergency.',
  ),
  'pressure-ask-diastolic': only((f) => `Above a lower figure of ${held(f, '100 mmHg')} at rest: ask first.`),
  'pressure-ask-systolic': only((f) => `Above an upper figure of ${held(f, '160 mmHg')} at rest: ask first.`),
  'pressure-at-home': both(
    'There is a cuff at home: the booklet says from which figures not to train.',
    (f) =>
      `Measure at rest before you train. Above ${f('limit') || '180/110'}, either figure, do not train; ring your doctor.`,
  ),
  'pressure-breath': both(
    (f) => `Blood pressure matters here: the breath is never held${cautions(f)}, and warm-up and cool-down are longer.`,
    'Breathe out as you lift, and never hold your breath.',
  ),
  'pressure-holds': only((f) =>
    f('days') === ''
      ? 'No blood pressure is on file, and it matters here: measure it.'
      : `The blood pressure on file will be ${f('days')} old when the block begins: measure it again.`,
  ),
  'pressure-stop-diastolic': only((f) => `Above a lower figure of ${held(f, '110 mmHg')} at rest nothing goes out.`),
  'pressure-stop-systolic': only((f) => `Above an upper figure of ${held(f, '180 mmHg')} at rest nothing goes out.`),
  'screening-holds': only((f) => `Screening answers older than ${held(f, '365 days')} are asked again.`),
  'slows-the-heart': both(
    'A medicine slows the heart: breath and words set the effort, and no pulse is ever asked for.',
    'Go by your breath and your words, never by your pulse.',
  ),
  'talk-moderate': both(
    'A moderate plan always leaves breath for whole sentences.',
    'Work so that you could always speak in whole sentences.',
  ),
  'thins-the-blood': both(
    (f) => `A medicine thins the blood: no knocks and no falls${cautions(f)}.`,
    'Keep clear of knocks and falls. After a blow to the head, get help at once; feeling well proves nothing.',
  ),
  'twins-from': only((f) => `With twins, ask first where the block reaches week ${held(f, '28')}.`),
};

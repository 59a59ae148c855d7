/** English for breaks, tests, marks, pain, what was seen, and health, as a client reads it: what to do, never what is wrong. */
import type { CareRuleTold } from './client-reason-words.js';
import { clause, type Figure, held, type Saying } from './rule-words.js';

const ILL =
  'You have been ill, so this is gentle. Still feverish, or anything wrong in the chest? See your doctor before you train.';

const WHY_GENTLE: Readonly<Record<string, string>> = {
  away: 'You have been away, so this is gentle on purpose.',
  ill: ILL,
  hurt: 'You have been hurt, so this starts gently. If the pain comes back, stop, and ask your doctor or physiotherapist.',
};

/** `one load`; empty where it begins as heavy as before. */
const lighter = (f: Figure): string => f('loads lighter').replace(/^1(?=\s)/, 'one');

/** Without a lighter load to begin with. */
const fromThere = (f: Figure): string =>
  `You have been away a while: it starts from ${f('marked') === '' ? 'your last test' : 'what you marked last'}, no further yet.`;

/** The body alone has no load. */
const withLoad = (f: Figure): string => (f('load') === '' ? 'of it' : `with the ${f('load')}`);
const often = (f: Figure): string => (f('weeks') === '2' ? 'twice' : `${f('weeks')} times`);

/** `left` or `right` as a language has it. */
const thatSide = (f: Figure): string => f('side') || 'shorter';

export const englishReasonsCare: Readonly<Record<CareRuleTold, Saying>> = {
  'birth-test': 'Your first set finds the load anew. Begin light.',
  'break-floor': 'The first weeks back are gentle, on purpose.',
  'break-held': (f) => WHY_GENTLE[f('cause')] ?? 'Nothing is made harder yet.',
  'break-held-ill': ILL,
  'chair-stand-seconds': 'A test of the strength in your legs. It comes at the start and at the end, to compare.',
  'one-leg-seconds':
    'A test of your balance. It comes at the start and at the end, to compare. Stay within reach of something steady.',
  'pregnancy-test': (f) =>
    `${f('marked') === '' ? 'Tested' : 'Marked'} before your pregnancy: it starts ${clause(lighter(f), (loads) => `${loads} lighter`) || 'from there, no further yet'}.`,
  'return-lighter': (f) => `You have been away a while, so it starts ${lighter(f) || 'one load'} lighter.`,
  'strength-kept': fromThere,
  'strength-kept-older': fromThere,
  'strength-unknown': 'After so long, your first set finds the load anew.',
  'test-reserve': (f) =>
    `A test, to see where you stand. As many good reps as you can, and stop with ${f('reserve') || held(f, '1')} left.`,
  'done-earned': 'You reached the top of the range last time.',
  'done-easier': 'You chose the easier one, so this begins easier.',
  'done-median': (f) => `Set by your marks${clause(f('marked'), (day) => ` of ${day}`)}.`,
  'done-missed': 'The last one was heavy, so this begins a little easier.',
  'done-over-target': 'You had more left than asked, twice.',
  'done-trial': (f) =>
    f('tried') === ''
      ? 'For the first time with it, the fewest reps.'
      : `You did ${f('tried')} ${withLoad(f)} ${often(f)}. It is yours to work with.`,
  'done-unsaid': (f) => `Set by your marks${clause(f('marked'), (day) => ` of ${day}`)}. Say how many you had left.`,
  'pain-back': 'You are back at this after a while, so it starts lighter. Stop if it hurts.',
  'pain-easier': 'It hurt last time, so this is easier for now.',
  'pain-gentle': 'It hurt a little last time, so nothing gets harder yet.',
  'pain-leave': 'What hurt waits for now. Tell your doctor or physiotherapist if it lasts.',
  'pain-next-morning': 'It was worse the next morning, so more care is taken.',
  'seen-balance': (f) => (f('programme') === '' ? '' : 'A steadier version for now. You have time to own it.'),
  'seen-breath': 'Breathe out as you make the effort. Stop while you could still talk.',
  'seen-grip': (f) =>
    f('programme') === ''
      ? 'A little lighter, so that your grip lasts.'
      : 'A version that asks less of your grip, for now.',
  'seen-heavy': 'Your coach lets this begin a little lighter.',
  'seen-hurrying': 'Slower down than up.',
  'seen-light': 'This looked easy for you. The next step is open sooner.',
  'seen-missed-reps': 'This begins a little lighter, and you stop one rep sooner.',
  'seen-new': 'This one is new to you. Take your time to learn it.',
  'seen-shorter-side': (f) =>
    f('drill for') === ''
      ? `Your ${thatSide(f)} side first; then the other does the same.`
      : `For your ${thatSide(f)} side: slow, and only as far as it is easy.`,
  'birth-belly': 'If your belly domes or pulls, make it easier.',
  'birth-breath': 'Breathe out as you lift. If you feel heaviness below, or leak, make it easier.',
  'birth-impact': 'Keep one foot on the floor: no jumping or landing.',
  'birth-signs':
    'Stop, and ask your midwife or doctor, at any of these: bleeding that comes back or grows; a scar that hurts or weeps; heaviness below; a fever.',
  'bone-bend': 'Bend from the hips and keep your back long.',
  'bone-fast': 'Move slowly and under control.',
  'bone-lift': 'Lift from a chair or a box, and put it down there.',
  'bone-twist': 'Turn with your feet, not in your back.',
  'clearance-warned': (f) =>
    `The last day to train from this booklet is ${f('last day') || 'near'}. See your doctor before then; your coach makes the next one.`,
  'falls-support': 'Keep a wall or a heavy chair within reach of your hand.',
  'floor-begins': 'These weeks are light on purpose.',
  'floor-light': 'These weeks are light on purpose.',
  'floor-moderate': 'This stays well within what you can do, on purpose.',
  'fracture-bend': 'Bend from the hips and keep your back long.',
  'fracture-fast': 'Move slowly, and keep one foot on the floor.',
  'fracture-floor': 'Take your time getting down and up, with a chair to help.',
  'fracture-lift': 'Lift from a chair or a box, and put down there. Nothing heavy goes on the floor.',
  'fracture-twist': 'Turn with your feet, not in your back.',
  'lowers-blood-pressure': 'Come up slowly, and sit down if you feel light-headed.',
  'lowers-blood-sugar':
    'Keep something sweet within reach, as your clinic advised. If you feel shaky, sweaty or muddled, stop and take it.',
  'pregnancy-back': 'Do not lie flat on your back; prop yourself up, or turn onto your side.',
  'pregnancy-belly': 'If your belly domes, or you feel heaviness below, make it easier.',
  'pregnancy-breath': 'Breathe out as you lift.',
  'pregnancy-falls': 'Keep one foot on the floor, and something steady within reach.',
  'pregnancy-last': (f) =>
    `This booklet ends on ${f('last day') || 'the day your child is due'}. Your midwife says how you go on.`,
  'pregnancy-signs':
    'Stop, and ring your midwife or doctor, at any of these: bleeding; losing fluid; regular or painful tightenings; pain in your belly; a headache; dizziness; hard breathing before you begin, or that rest does not settle; weakness that upsets your balance. A sore, swollen calf: ring them the same day. Pain in your chest, or hard breathing too, is an emergency.',
  'pressure-at-home': (f) =>
    `Measure at rest before you train. Above ${f('limit') || '180/110'}, either figure, do not train; ring your doctor.`,
  'pressure-breath': 'Breathe out as you lift, and never hold your breath.',
  'slows-the-heart': 'Go by your breath and your words, never by your pulse.',
  'talk-moderate': 'Work so that you could always speak in whole sentences.',
  'thins-the-blood':
    'Keep clear of knocks and falls. After a blow to the head, get help at once; feeling well proves nothing.',
};

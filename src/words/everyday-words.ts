/**
 * Everyday words for what the trade has a name for: with them somebody finds an exercise who does not know the name.
 * Common use, no source; a body part's plain name is that of any dictionary.
 */
import type { BodyPart, Pattern, Quality } from '../model/exercise.js';
import type { KitKind } from '../model/kit.js';

export interface EverydayWords {
  /** What the body does. */
  readonly patterns: Readonly<Record<Pattern, string>>;
  readonly kit: Readonly<Partial<Record<KitKind, string>>>;
  readonly nothingNeeded: string;
  /** Words of a question that say nothing of what is looked for. */
  readonly fillers: string;
  /** Endings without which a word is looked for as well. */
  readonly endings: readonly string[];
  readonly asks: Readonly<Record<BodyPart | Quality, string>>;
  /** A muscle's own name, in small letters, and where it is. */
  readonly muscles: ReadonlyMap<string, string>;
}

const PARTS: Readonly<Record<BodyPart, string>> = {
  neck: 'neck',
  shoulder: 'shoulders',
  elbow: 'elbows arm',
  wrist: 'wrists',
  hand: 'hands fingers thumb',
  'upper back': 'upper back shoulder blades',
  'lower back': 'lower back small of the back spine',
  hip: 'hips groin',
  knee: 'knees',
  ankle: 'ankles',
  foot: 'feet toes heel',
  'pelvic floor': 'pelvic floor bladder',
  belly: 'belly tummy stomach abdomen',
};

const QUALITIES: Readonly<Record<Quality, string>> = {
  balance: 'balance steady wobble',
  grip: 'grip grasp holding on',
  impact: 'impact jump jumping hopping landing',
  speed: 'speed fast quick',
  floor: 'floor ground lying kneeling',
  overhead: 'overhead above the head reaching up',
  'breath hold': 'breath holding',
  'head down': 'head down upside down',
  'lying on the back': 'lying on the back face up',
  'spinal load': 'spine',
  'loaded bend': 'bending forward',
  'loaded twist': 'twisting turning',
  'deep bend': 'bending deep',
  'deep twist': 'twisting turning',
  reach: 'reach reaching stretch',
  'lifting from the floor': 'lifting picking up from the floor',
};

const MUSCLES: readonly (readonly [where: string, muscles: string])[] = [
  ['thigh front of the thigh leg legs', 'quadriceps, quadriceps femoris, rectus femoris'],
  ['behind the thigh hamstring leg legs', 'hamstrings, biceps femoris'],
  ['calf calves lower leg', 'triceps surae, gastrocnemius, soleus, calves'],
  ['shin lower leg', 'tibialis anterior'],
  ['outside of the lower leg ankle', 'peroneals, fibularis'],
  ['buttock buttocks bottom bum seat backside', 'gluteus maximus, gluteals'],
  ['side of the hip buttock', 'gluteus medius, gluteus minimus, abductors'],
  ['inside of the thigh inner thigh groin', 'adductors, adductor magnus'],
  ['front of the hip', 'hip flexors, iliopsoas'],
  ['back upper back lats', 'latissimus dorsi'],
  ['back upper back neck shoulder blades', 'trapezius, rhomboids, levator scapulae'],
  ['back spine lower back', 'erector spinae, quadratus lumborum'],
  ['belly tummy stomach middle waist', 'rectus abdominis, transversus abdominis'],
  ['side waist middle belly', 'obliques, external oblique, internal oblique'],
  ['chest breast', 'pectoralis major, pectoralis minor'],
  ['ribs side of the chest', 'serratus anterior'],
  ['shoulder shoulders', 'deltoid, anterior deltoid, middle deltoid, posterior deltoid, rotator cuff, infraspinatus'],
  ['upper arm arms', 'biceps brachii, brachialis'],
  ['upper arm arms behind the arm', 'triceps brachii'],
  ['forearm forearms grip', 'forearm flexors, forearm extensors, brachioradialis'],
  ['pelvic floor bladder', 'pelvic floor'],
];

const englishEveryday: EverydayWords = {
  patterns: {
    squat: 'sit down sitting stand up standing up chair toilet knees bend crouch',
    hinge: 'bend bow pick up lift from the floor',
    lunge: 'step split kneel one leg',
    push: 'press shove push away',
    pull: 'row tug draw towards',
    carry: 'walk with shopping bags hold',
    rotate: 'turn twist',
    brace: 'hold still core trunk middle',
    travel: 'walk step crawl move about',
    mobility: 'loosen loose stiff stretch warm up',
  },
  kit: {
    bell: 'kettlebell weight iron',
    dumbbell: 'weight hand weight',
    bar: 'barbell weights plates',
    band: 'elastic rubber loop',
    bench: 'bench bed sofa',
    step: 'stair stairs step kerb',
    chair: 'seat stool',
    wall: 'wall door',
    mat: 'rug carpet towel',
    box: 'box stool crate',
  },
  nothingNeeded: 'nothing no kit without weights body alone bodyweight empty-handed',
  fillers:
    'a an and are at can do does exercise exercises for from have how i in is it me my of on or some something the to what with',
  endings: ['ing', 'es', 's', 'ed'],
  asks: { ...PARTS, ...QUALITIES },
  muscles: new Map(
    MUSCLES.flatMap(([where, muscles]) => muscles.split(', ').map((muscle) => [muscle, where] as const)),
  ),
};

/** English until another language has them. */
export const everydayWordsOf = (_language: string): EverydayWords => englishEveryday;

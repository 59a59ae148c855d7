/**
 * Which major group a muscle belongs to, by its anatomical name in English, and which names mean the same muscle.
 * The regions are those of Terminologia Anatomica (1998), chapter A04, except where hip and leg, shoulder and arm part
 * within one region. A name that is not here is told to the coach, never dropped.
 */
import { MUSCLE_GROUPS, type MuscleGroup } from '../../model/weekly-sets.js';

/** Each muscle with its parts and other names, `muscle: part, part`. */
const MUSCLES: Readonly<Record<MuscleGroup, readonly string[]>> = {
  legs: [
    'quadriceps femoris: quadriceps, rectus femoris, vastus lateralis, vastus medialis, vastus intermedius',
    'hamstrings: biceps femoris, semitendinosus, semimembranosus',
    'triceps surae: gastrocnemius, soleus, calves',
    'tibialis anterior',
    'fibularis: peroneals, fibularis longus, fibularis brevis',
  ],
  hips: [
    'gluteus maximus: gluteals',
    'gluteus medius: gluteus minimus, abductors, tensor fasciae latae',
    'adductors: adductor magnus, adductor longus, adductor brevis, gracilis, pectineus',
    'iliopsoas: hip flexors, psoas major, iliacus',
    'deep rotators of the hip: piriformis',
  ],
  back: [
    'latissimus dorsi',
    'trapezius: upper trapezius, middle trapezius, lower trapezius',
    'rhomboids: rhomboid major, rhomboid minor',
    'levator scapulae',
    'erector spinae: spinal extensors, back extensors, longissimus, iliocostalis, spinalis, multifidus',
  ],
  abdomen: [
    'rectus abdominis',
    'transversus abdominis',
    'obliques: external oblique, internal oblique',
    'quadratus lumborum',
    'pelvic floor: levator ani',
  ],
  chest: ['pectoralis major', 'pectoralis minor', 'serratus anterior'],
  shoulders: [
    'deltoid: anterior deltoid, middle deltoid, lateral deltoid, posterior deltoid',
    'rotator cuff: supraspinatus, infraspinatus, teres minor, subscapularis',
    'teres major',
  ],
  arms: [
    'biceps brachii',
    'brachialis',
    'brachioradialis',
    'coracobrachialis',
    'triceps brachii',
    'forearm flexors: finger flexors',
    'forearm extensors',
  ],
};

export interface Muscle {
  readonly name: string;
  readonly group: MuscleGroup;
}

/** The muscles that hold the back straight, as the table names them. */
export const BACK_EXTENSORS = 'erector spinae';

const KNOWN: ReadonlyMap<string, Muscle> = new Map(
  MUSCLE_GROUPS.flatMap((group) =>
    MUSCLES[group].flatMap((entry) => {
      const [name = '', parts = ''] = entry.split(': ');
      const muscle: Muscle = { name, group };
      return [name, ...parts.split(', ')].filter((each) => each !== '').map((each) => [each, muscle] as const);
    }),
  ),
);

/** Every muscle once, in the table's order. */
export const EVERY_MUSCLE: readonly Muscle[] = [...new Set(KNOWN.values())];

/** `undefined` for a name that stands in no major group here. */
export const muscleOf = (written: string): Muscle | undefined => KNOWN.get(written.trim().toLowerCase());

/**
 * The muscles each exercise of the demo names, held to what the anatomy books say those muscles do.
 *
 * - What a muscle does: Gray's Anatomy, 20th American edition (Lewis, 1918; public domain), Myology, the paragraphs
 *   headed *Actions*. From memory; the line on the quadriceps was seen in a reproduction. The two that edition does not
 *   tell apart (what holds a shoulder blade, what keeps a wall of the belly in) are as in the 41st (Standring, 2016),
 *   from memory.
 * - Which actions a movement pattern is made of, and which it needs: common practice, no source.
 */
import { beforeAll, describe, expect, it, test } from 'vitest';
import { EVERY_MUSCLE, muscleOf } from '../../src/engine/audit/muscle-groups.js';
import { type Exercise, PATTERNS, type Pattern } from '../../src/model/exercise.js';
import { type ReadDemo, readDemo } from '../studio/demo-library.js';

type Action =
  | 'extends the knee'
  | 'bends the knee'
  | 'extends the hip'
  | 'flexes the hip'
  | 'draws the thigh out'
  | 'draws the thigh in'
  | 'turns the thigh out'
  | 'points the foot'
  | 'lifts the foot'
  | 'turns the sole out'
  | 'extends the spine'
  | 'flexes the spine'
  | 'bends the trunk sideways'
  | 'turns the trunk'
  | 'draws the belly in'
  | 'carries the pelvic organs'
  | 'draws the shoulder blade back'
  | 'raises the shoulder blade'
  | 'draws the shoulder blade forward'
  | 'turns the shoulder blade up'
  | 'brings the arm forward'
  | 'lifts the arm sideways'
  | 'draws the arm back or down'
  | 'turns the arm'
  | 'bends the elbow'
  | 'straightens the elbow'
  | 'closes the hand'
  | 'bends the hand back';

/** By the names the weekly sets know, and by a part where the parts of one muscle work against each other. */
const ACTIONS: Readonly<Record<string, readonly Action[]>> = {
  // The muscles of the thigh; of the leg; of the iliac and gluteal regions.
  'quadriceps femoris': ['extends the knee', 'flexes the hip'],
  hamstrings: ['extends the hip', 'bends the knee'],
  adductors: ['draws the thigh in'],
  'triceps surae': ['points the foot'],
  'tibialis anterior': ['lifts the foot'],
  fibularis: ['turns the sole out', 'points the foot'],
  'gluteus maximus': ['extends the hip', 'turns the thigh out'],
  'gluteus medius': ['draws the thigh out'],
  iliopsoas: ['flexes the hip'],
  'deep rotators of the hip': ['turns the thigh out'],
  // The deep muscles of the back; the muscles of the abdomen; of the pelvis.
  'erector spinae': ['extends the spine', 'bends the trunk sideways'],
  'rectus abdominis': ['flexes the spine'],
  'transversus abdominis': ['draws the belly in'],
  obliques: ['turns the trunk', 'flexes the spine', 'bends the trunk sideways', 'draws the belly in'],
  'quadratus lumborum': ['bends the trunk sideways'],
  'pelvic floor': ['carries the pelvic organs'],
  // The muscles connecting the arm to the spine, and to the walls of the chest.
  'latissimus dorsi': ['draws the arm back or down'],
  trapezius: ['draws the shoulder blade back', 'raises the shoulder blade', 'turns the shoulder blade up'],
  rhomboids: ['draws the shoulder blade back'],
  'levator scapulae': ['raises the shoulder blade'],
  'pectoralis major': ['brings the arm forward', 'turns the arm'],
  'pectoralis minor': ['draws the shoulder blade forward'],
  'serratus anterior': ['draws the shoulder blade forward', 'turns the shoulder blade up'],
  // The muscles of the shoulder; of the arm; of the forearm.
  deltoid: ['lifts the arm sideways', 'brings the arm forward'],
  'anterior deltoid': ['brings the arm forward'],
  'middle deltoid': ['lifts the arm sideways'],
  'lateral deltoid': ['lifts the arm sideways'],
  'posterior deltoid': ['draws the arm back or down'],
  'rotator cuff': ['turns the arm'],
  'teres major': ['draws the arm back or down'],
  'biceps brachii': ['bends the elbow'],
  brachialis: ['bends the elbow'],
  brachioradialis: ['bends the elbow'],
  coracobrachialis: ['brings the arm forward'],
  'triceps brachii': ['straightens the elbow'],
  'forearm flexors': ['closes the hand'],
  'forearm extensors': ['bends the hand back'],
};

interface Movement {
  /** One main muscle at least does one of these; empty where the pattern has no one mover. */
  readonly needs: readonly Action[];
  /** What a main muscle may do besides. */
  readonly may: readonly Action[];
  /** Muscles that neither move it nor hold it: not even as assisting. */
  readonly never: readonly string[];
}

const TRUNK: readonly Action[] = [
  'extends the spine',
  'flexes the spine',
  'bends the trunk sideways',
  'turns the trunk',
  'draws the belly in',
];

const MOVEMENTS: Readonly<Record<Exclude<Pattern, 'mobility'>, Movement>> = {
  squat: {
    needs: ['extends the knee'],
    may: ['extends the hip', 'draws the thigh in'],
    never: ['iliopsoas', 'tibialis anterior', 'pectoralis major', 'latissimus dorsi', 'triceps brachii'],
  },
  lunge: {
    needs: ['extends the knee'],
    may: ['extends the hip', 'draws the thigh in', 'draws the thigh out'],
    never: ['iliopsoas', 'tibialis anterior', 'pectoralis major', 'latissimus dorsi', 'triceps brachii'],
  },
  hinge: {
    needs: ['extends the hip'],
    may: ['bends the knee', 'extends the spine'],
    never: ['iliopsoas', 'tibialis anterior', 'pectoralis major', 'triceps brachii'],
  },
  push: {
    needs: ['straightens the elbow', 'brings the arm forward', 'turns the shoulder blade up'],
    may: ['lifts the arm sideways', 'draws the shoulder blade forward'],
    never: ['biceps brachii', 'brachialis', 'latissimus dorsi', 'rhomboids', 'posterior deltoid', 'iliopsoas'],
  },
  pull: {
    needs: ['draws the arm back or down', 'draws the shoulder blade back'],
    may: ['bends the elbow', 'turns the arm'],
    never: ['triceps brachii', 'pectoralis major', 'serratus anterior', 'anterior deltoid', 'quadriceps femoris'],
  },
  carry: {
    needs: ['closes the hand', 'raises the shoulder blade', 'extends the spine', 'bends the trunk sideways'],
    may: ['lifts the arm sideways', 'turns the shoulder blade up', 'bends the elbow'],
    never: ['pectoralis major', 'latissimus dorsi', 'iliopsoas'],
  },
  rotate: {
    needs: ['turns the trunk', 'lifts the arm sideways'],
    may: [...TRUNK, 'turns the shoulder blade up', 'extends the hip'],
    never: ['biceps brachii', 'latissimus dorsi', 'triceps surae'],
  },
  brace: {
    needs: [...TRUNK, 'carries the pelvic organs'],
    may: ['draws the thigh out', 'extends the hip', 'bends the knee', 'draws the shoulder blade back'],
    never: ['biceps brachii', 'triceps surae', 'pectoralis major'],
  },
  travel: {
    needs: [],
    may: [
      'flexes the hip',
      'extends the hip',
      'draws the thigh out',
      'extends the knee',
      'points the foot',
      'turns the sole out',
    ],
    never: ['biceps brachii', 'latissimus dorsi', 'pectoralis major'],
  },
};

/** What one exercise asks besides its pattern: open to its main muscles too. */
const ALSO: Readonly<Record<string, readonly Action[]>> = {
  // Lifted from the floor before it is pressed.
  'clean-and-press': ['extends the hip'],
  // Weight on the hands, and the belly held off the floor.
  'bear-crawl': ['flexes the spine', 'brings the arm forward'],
};

const asWritten = (muscle: string): string => {
  const name = muscle.trim().toLowerCase();
  return Object.hasOwn(ACTIONS, name) ? name : (muscleOf(name)?.name ?? name);
};
const actionsOf = (muscle: string): readonly Action[] => ACTIONS[asWritten(muscle)] ?? [];

/** What anatomy says against the muscles named. A stretch names what it lengthens, so nothing is asked of mobility. */
function objections({ id, facts }: Pick<Exercise, 'id' | 'facts'>): readonly string[] {
  const { pattern, muscles, way } = facts;
  if (pattern === 'mobility') return [];
  const movement = MOVEMENTS[pattern];
  const open = [...movement.needs, ...movement.may, ...(ALSO[id] ?? [])];
  const does = (muscle: string, among: readonly Action[]): boolean =>
    actionsOf(muscle).some((action) => among.includes(action));
  const { main, assisting } = muscles;
  const moved = movement.needs.length === 0 || way === 'mobility' || main.some((each) => does(each, movement.needs));
  return [
    ...main.filter((each) => !does(each, open)).map((each) => `${id}: ${each} does nothing of a ${pattern}`),
    ...[...main, ...assisting]
      .filter((each) => movement.never.includes(asWritten(each)))
      .map((each) => `${id}: ${each} has no part in a ${pattern}`),
    ...(moved ? [] : [`${id}: nothing named ${movement.needs.join(' or ')}`]),
    ...assisting.filter((each) => main.includes(each)).map((each) => `${id}: ${each} is named twice`),
  ];
}

let demo: ReadDemo;
beforeAll(async () => {
  demo = await readDemo();
});
const byId = (id: string): Exercise => {
  const found = demo.library.exercises.find((exercise) => exercise.id === id);
  if (found === undefined) throw new Error(`no exercise ${id}`);
  return found;
};

describe('what a muscle does', () => {
  it('is said of every muscle the weekly sets count', () => {
    expect(EVERY_MUSCLE.filter(({ name }) => actionsOf(name).length === 0)).toEqual([]);
  });

  it('is said of nothing else, and no pattern bars a muscle by a name that is not in the table', () => {
    expect(Object.keys(ACTIONS).filter((name) => muscleOf(name) === undefined)).toEqual([]);
    const barred = Object.values(MOVEMENTS).flatMap(({ never }) => never);
    expect(barred.filter((name) => !Object.hasOwn(ACTIONS, name))).toEqual([]);
  });
});

describe('the demo’s exercises', () => {
  test.each(PATTERNS.filter((pattern) => pattern !== 'mobility'))(
    '%s: every muscle named has a part in it',
    (pattern) => {
      const own = demo.library.exercises.filter(({ facts }) => facts.pattern === pattern);
      expect(own.length).toBeGreaterThan(1);
      expect(own.flatMap(objections)).toEqual([]);
    },
  );

  it('what asks more than its pattern is in the library still', () => {
    for (const id of Object.keys(ALSO)) byId(id);
  });
});

describe('the check itself', () => {
  const withMuscles = (id: string, main: readonly string[], assisting: readonly string[] = []) => {
    const exercise = byId(id);
    return objections({ id: exercise.id, facts: { ...exercise.facts, muscles: { main, assisting } } });
  };

  test.each([
    ['goblet-squat', ['latissimus dorsi'], []],
    ['goblet-squat', ['gluteus maximus'], []],
    ['bell-deadlift', ['quadriceps'], []],
    ['push-up', ['pectoralis major'], ['biceps brachii']],
    ['overhead-press', ['posterior deltoid'], []],
    ['one-arm-row', ['latissimus dorsi'], ['triceps brachii']],
    ['carry-at-the-chest', ['rectus abdominis'], []],
    ['plank', ['triceps surae'], []],
    ['march-on-the-spot', ['deltoid'], []],
    ['side-plank', ['obliques'], ['obliques']],
  ] as const)('%s with %j and %j is refused', (id, main, assisting) => {
    expect(withMuscles(id, main, assisting)).not.toEqual([]);
  });
});

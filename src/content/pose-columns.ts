/** What may be written under each column of a table of poses. The guide's table of the same tells it to the coach. */
import {
  BAND_ENDS,
  type BallJoint,
  type BandEnd,
  type Contact,
  FREE_LOADS,
  GAZES,
  HAND_PLACES,
  type HandPlace,
  type HeadAngles,
  type Held,
  LIMB_SUPPORTS,
  LYING,
  type OnSides,
  type Pose,
  type PoseKit,
  SURFACES,
  TRUNK_SUPPORTS,
  type TrunkAngles,
  VIEWS,
  type View,
} from '../model/pose.js';
import { anyOf, namedIn, putOn, readClauses, type Words } from './pose-cells.js';
import type { Reader } from './read-value.js';

const SIDE = '(?:(?<side>left|right) )?';
const N = '(?<n>\\d{1,3})(?: ?°| degrees)?';
const CM = '(?<cm>\\d{1,3})(?: ?cm)?';
const form = (pattern: string): RegExp => new RegExp(pattern);

const sign = (words: Words, group: string, negative: string): number =>
  (words.of(group) === negative ? -1 : 1) * words.number('n');

const nothing = <Value>(value: Value): OnSides<Value> => ({ left: value, right: value });

const readView: Reader<View> = readClauses<View>(
  'View',
  'side',
  VIEWS.map((view) => ({ form: form(view), make: () => view })),
);

interface Bearing {
  readonly contacts: readonly Contact[];
  readonly moving: boolean;
}

const LIMBS = anyOf([...LIMB_SUPPORTS, 'feet', ...LIMB_SUPPORTS.map((part) => `${part}s`)]);
const ON = `(?: (?:on|against) (?:the |an? )?(?<on>${anyOf(SURFACES)}))?`;

const surfaceOf = (words: Words): Contact['on'] => namedIn(SURFACES, words.of('on')) ?? 'floor';

const readOn = readClauses<Bearing>('On', { contacts: [], moving: false }, [
  { form: /moving/, make: (state) => ({ ...state, moving: true }) },
  {
    form: form(`(?<part>${anyOf(TRUNK_SUPPORTS)})${ON}`),
    make: (state, words) => {
      const part = namedIn(TRUNK_SUPPORTS, words.of('part'));
      return part ? { ...state, contacts: [...state.contacts, { part, on: surfaceOf(words) }] } : state;
    },
  },
  {
    form: form(`${SIDE}(?<part>${LIMBS})${ON}`),
    make: (state, words) => {
      const part = namedIn(LIMB_SUPPORTS, words.of('part'));
      const more = part ? words.sides.map((side) => ({ part, side, on: surfaceOf(words) })) : [];
      return { ...state, contacts: [...state.contacts, ...more] };
    },
  },
]);

const readFeet = readClauses<Pose['feet']>('Feet', nothing({}), [
  { form: form(`apart ${CM}`), make: (feet, words) => ({ ...feet, apart: words.number('cm') }) },
  {
    form: form(`(?<side>left|right) (?<way>ahead|back) ${CM}`),
    make: (feet, words) => ({
      ...feet,
      ...putOn(feet, words.sides, (was) => ({
        ...was,
        ahead: (words.of('way') === 'back' ? -1 : 1) * words.number('cm'),
      })),
    }),
  },
  {
    form: form(`(?<side>left|right) out ${CM}`),
    make: (feet, words) => ({ ...feet, ...putOn(feet, words.sides, (was) => ({ ...was, out: words.number('cm') })) }),
  },
]);

const readTrunk = readClauses<TrunkAngles>('Trunk', {}, [
  { form: /upright/, make: (trunk) => ({ ...trunk, lean: 0 }) },
  {
    form: form(`lean (?<way>back )?${N}`),
    make: (trunk, words) => ({ ...trunk, lean: sign(words, 'way', 'back ') }),
  },
  {
    form: form(`(?<lying>${anyOf(LYING)})`),
    make: (trunk, words) => {
      const lying = namedIn(LYING, words.of('lying'));
      return lying ? { ...trunk, lying } : trunk;
    },
  },
  {
    form: form(`(?<way>bend|arch) ${N}`),
    make: (trunk, words) => ({ ...trunk, bend: sign(words, 'way', 'arch') }),
  },
  {
    form: form(`side bend (?<way>left|right) ${N}`),
    make: (trunk, words) => ({ ...trunk, sideBend: sign(words, 'way', 'left') }),
  },
  {
    form: form(`turn (?<way>left|right) ${N}`),
    make: (trunk, words) => ({ ...trunk, turn: sign(words, 'way', 'right') }),
  },
  {
    form: form(`facing (?<way>left|right) ${N}`),
    make: (trunk, words) => ({ ...trunk, facing: sign(words, 'way', 'right') }),
  },
  {
    form: form(`tip (?<way>left|right) ${N}`),
    make: (trunk, words) => ({ ...trunk, tip: sign(words, 'way', 'left') }),
  },
]);

const readHead = readClauses<HeadAngles>('Head', {}, [
  {
    form: form(`look (?<gaze>${anyOf(GAZES)})`),
    make: (head, words) => {
      const gaze = namedIn(GAZES, words.of('gaze'));
      return gaze ? { ...head, gaze } : head;
    },
  },
  { form: form(`(?<way>nod|lift) ${N}`), make: (head, words) => ({ ...head, nod: sign(words, 'way', 'lift') }) },
  {
    form: form(`turn (?<way>left|right) ${N}`),
    make: (head, words) => ({ ...head, turn: sign(words, 'way', 'right') }),
  },
]);

const ballJoint = (column: 'Hips' | 'Shoulders'): Reader<OnSides<BallJoint>> =>
  readClauses<OnSides<BallJoint>>(column, nothing({}), [
    {
      form: form(`${SIDE}(?<way>back )?${N}`),
      make: (on, words) => putOn(on, words.sides, (was) => ({ ...was, flex: sign(words, 'way', 'back ') })),
    },
    {
      form: form(`${SIDE}(?<way>out|across) ${N}`),
      make: (on, words) => putOn(on, words.sides, (was) => ({ ...was, out: sign(words, 'way', 'across') })),
    },
    {
      form: form(`${SIDE}turned (?<way>out|in) ${N}`),
      make: (on, words) => putOn(on, words.sides, (was) => ({ ...was, turn: sign(words, 'way', 'in') })),
    },
  ]);

const hinge = (column: 'Knees' | 'Elbows'): Reader<OnSides<number | undefined>> =>
  readClauses<OnSides<number | undefined>>(column, nothing(undefined), [
    { form: form(`${SIDE}straight`), make: (on, words) => putOn(on, words.sides, () => 0) },
    { form: form(`${SIDE}${N}`), make: (on, words) => putOn(on, words.sides, () => words.number('n')) },
  ]);

const readAnkles = readClauses<OnSides<number | undefined>>('Ankles', nothing(undefined), [
  {
    form: form(`${SIDE}(?<way>point )?${N}`),
    make: (on, words) => putOn(on, words.sides, () => sign(words, 'way', 'point ')),
  },
]);

const HANDS = anyOf([...HAND_PLACES, ...HAND_PLACES.map((place) => `${place}s`)]);

const readHands = readClauses<OnSides<HandPlace | undefined>>('Hands', nothing(undefined), [
  {
    form: /both (?:at|by|behind) (?:the )?(?<spot>left ear|right ear|neck)/,
    make: (_, words) => nothing(namedIn(HAND_PLACES, words.of('spot'))),
  },
  {
    form: form(`${SIDE}(?:(?:on|at|to|by|behind) )?(?:the )?(?<place>${HANDS})`),
    make: (on, words) => putOn(on, words.sides, () => namedIn(HAND_PLACES, words.of('place')) ?? undefined),
  },
]);

const heldIn = (words: Words): Held => {
  const where = words.of('where');
  if (/floor/.test(where)) return 'floor';
  if (/each/.test(where)) return 'each';
  return /left/.test(where) ? 'left' : /right/.test(where) ? 'right' : 'both';
};

const IN_HAND = '(?:in )?(?:the )?(?:both hands|each hand|left hand|right hand)|on the floor|on floor';
const AHEAD = `(?: (?<way>ahead|behind) ${CM})?`;
const HIGH = '(?:,? ?(?<high>\\d{1,3})(?: ?cm)? high)?';
const ENDS = `(${anyOf(BAND_ENDS)})`;
const STANDING = ['wall', 'chair', 'bench', 'box', 'step', 'blocks', 'mat'] as const;

const isEnd = (word: string): word is BandEnd => BAND_ENDS.some((end) => end === word);

const placed = (words: Words): { readonly ahead?: number; readonly high?: number } => ({
  ...(words.of('way') === '' ? {} : { ahead: (words.of('way') === 'behind' ? -1 : 1) * words.number('cm') }),
  ...(words.of('high') === '' ? {} : { high: words.number('high') }),
});

const more = (kit: readonly PoseKit[], item: PoseKit): readonly PoseKit[] => [...kit, item];

const readKit = readClauses<readonly PoseKit[]>(
  'Kit',
  [],
  [
    { form: /none/, make: () => [] },
    {
      form: form(`(?<kind>${anyOf(FREE_LOADS)}) (?<over>upside down )?(?<where>${IN_HAND})${AHEAD}`),
      make: (kit, words) => {
        const kind = namedIn(FREE_LOADS, words.of('kind'));
        const { ahead } = placed(words);
        const upturned = words.of('over') === '' ? {} : { upturned: true as const };
        return kind
          ? more(kit, { kind, held: heldIn(words), ...(ahead === undefined ? {} : { ahead }), ...upturned })
          : kit;
      },
    },
    {
      form: form(`bar (?<where>in (?:both|the) hands|across the back|on the floor)`),
      make: (kit, words) => {
        const where = words.of('where');
        return more(kit, { kind: 'bar', held: /back/.test(where) ? 'back' : /floor/.test(where) ? 'floor' : 'both' });
      },
    },
    {
      form: form(`band from ${ENDS.replace('(', '(?<one>')} to ${ENDS.replace('(', '(?<other>')}`),
      make: (kit, words) => {
        const [one, other] = [words.of('one'), words.of('other')];
        return isEnd(one) && isEnd(other) ? more(kit, { kind: 'band', ends: [one, other] }) : kit;
      },
    },
    {
      form: form(`(?<kind>${anyOf(STANDING)})(?<turned> turned)?${HIGH}${AHEAD}`),
      make: (kit, words) => {
        const kind = STANDING.find((one) => one === words.of('kind'));
        return kind
          ? more(kit, { kind, ...placed(words), ...(words.of('turned') === '' ? {} : { turned: true as const }) })
          : kit;
      },
    },
  ],
);

/** One reader for each column but the first. */
export const POSE_READERS = {
  View: readView,
  On: readOn,
  Feet: readFeet,
  Trunk: readTrunk,
  Head: readHead,
  Hips: ballJoint('Hips'),
  Knees: hinge('Knees'),
  Ankles: readAnkles,
  Shoulders: ballJoint('Shoulders'),
  Elbows: hinge('Elbows'),
  Hands: readHands,
  Kit: readKit,
} as const;

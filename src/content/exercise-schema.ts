/** The front matter of an exercise. The body is read in `read-exercise.ts`. */
import { z } from 'zod';
import { EXERCISE_ADVICE } from '../model/advice.js';
import {
  type Ask,
  BODY_PARTS,
  type Facts,
  MEASURES,
  PATTERNS,
  PLANES,
  QUALITIES,
  SIDES,
  WAYS,
} from '../model/exercise.js';
import { exerciseId } from '../model/identity.js';
import type { LoadMode } from '../model/kit.js';
import type { Standing } from '../model/reason.js';
import { adviceOff } from './advice-off.js';
import { readFloor, readTempo, readWhole } from './read-amounts.js';
import { readId } from './read-id.js';
import { readLoadNeed, readThing, THINGS } from './read-kit.js';
import { asTyped, good, type Reader, readPart, refuse, splitPart } from './read-value.js';
import { readName, readOneOf, readYesNo } from './read-words.js';
import { leaf, listLeaf } from './schema-parts.js';

const HOLDS = ['per hand', 'total', 'added', 'assisted', 'band'] as const;
const MODES: Readonly<Record<(typeof HOLDS)[number], LoadMode>> = {
  'per hand': 'per-hand',
  total: 'total',
  added: 'added',
  assisted: 'assisted',
  band: 'band',
};
const CEILINGS = ['any', 'arms overhead', 'load overhead'] as const;
const STANDINGS = ['published', 'derived', 'adapted', 'practice'] as const satisfies readonly Standing[];

type AskOf = Omit<Ask, 'of'>;

const ASK_SIDES: ReadonlyMap<string, Ask['side']> = new Map([
  ['working', 'working'],
  ['working side', 'working'],
  ['other', 'other'],
  ['other side', 'other'],
  ['both', 'both'],
  ['both sides', 'both'],
]);

/** `some`, `much, bottom`, `some, working, top`: how much, on which side, in which phases. */
const readAsk: Reader<AskOf> = (text) => {
  const [first, ...rest] = splitPart({ text: asTyped(text).toLowerCase(), start: 0 }, /,/g);
  if (!first || rest.some((part) => part.text === '')) {
    return refuse({ code: 'ask-unreadable', data: { text: text.trim() } }, text);
  }
  const degree = readPart(first, readOneOf(['some', 'much']));
  if (!degree.ok) return degree;
  const sides = rest.flatMap(({ text: word }) => ASK_SIDES.get(word) ?? []);
  const phases = rest.flatMap(({ text: word }) => (ASK_SIDES.has(word) ? [] : [word]));
  return good({ degree: degree.value, side: sides[0] ?? 'both', phases });
};

const SHARE_BOUNDS = { least: 0, most: 1.2 } as const;

const SHARE = /^\s*(\d{1,2}(?:[.,]\d{1,4})?)\s*(?:\(\s*([a-z]+)\s*(?:[;:,]\s*([\s\S]*?))?\s*\))?\s*$/di;

export type Share = NonNullable<Facts['bodyShare']>;

/** `0.878 (derived; Winter …)`: a share as a decimal, how it stands, and where it comes from. Thousandths, rounded once. */
export function readShare(bounds: { readonly least: number; readonly most: number }, what: string): Reader<Share> {
  return (text) => {
    const match = SHARE.exec(asTyped(text));
    if (!match) return refuse({ code: 'share-unreadable', data: { text: text.trim() } }, text);
    const figure = Number((match[1] ?? '').replace(',', '.'));
    if (figure < bounds.least || figure > bounds.most) {
      const data = { what, figure: match[1] ?? '', least: String(bounds.least), most: String(bounds.most) };
      return refuse({ code: 'out-of-range', data }, text);
    }
    if (match[2] === undefined) return refuse({ code: 'source-missing', data: { standing: '' } }, text);
    const standing = readPart({ text: match[2], start: match.indices?.[2]?.[0] ?? 0 }, readOneOf(STANDINGS));
    if (!standing.ok) return standing;
    // From the author's own text: the one form of dashes and quotes is for reading only.
    const source = text
      .slice(...(match.indices?.[3] ?? [0, 0]))
      .replace(/\s+/g, ' ')
      .trim();
    if (source === '' && standing.value !== 'practice') {
      return refuse({ code: 'source-missing', data: { standing: standing.value } }, text);
    }
    return good({ share: Math.round(figure * 1000), standing: standing.value, source });
  };
}

const optionalAsk = (of: string) =>
  leaf(readAsk, {
    description: `What it asks of: ${of}. How much (some or much); the side (working or other) and phases where it matters.`,
    examples: ['some, bottom', 'much, working, top'],
  }).optional();

const ASKED = [...BODY_PARTS, ...QUALITIES] as const;

export const exerciseSchema = z.strictObject({
  name: leaf(readName, { description: 'The name people say.', examples: ['Goblet squat'] }),
  'former ids': listLeaf(readId, {
    description: 'File names this exercise had before, without .md.',
    examples: ['bell-squat'],
  }).optional(),
  pattern: leaf(readOneOf(PATTERNS), { description: 'The movement pattern.', examples: ['squat'], enum: PATTERNS }),
  plane: leaf(readOneOf(PLANES), {
    description: 'The direction, where it matters.',
    examples: ['horizontal'],
    enum: PLANES,
  }).optional(),
  way: leaf(readOneOf(WAYS), {
    description: 'How a set is counted and progresses.',
    examples: ['strength'],
    enum: WAYS,
  }),
  sides: leaf(readOneOf(SIDES), {
    description: 'Both sides together; each, one finished and then the other; or alternate within the set.',
    examples: ['both'],
    enum: SIDES,
  }),
  load: leaf(readLoadNeed, {
    description: 'What it is loaded with; several ways with *or*, in the order preferred.',
    examples: ['bell or dumbbell', 'two bells', 'bell or nothing', 'none'],
  }),
  holds: leaf(readOneOf(HOLDS), {
    description:
      'How the load is counted: what one hand holds, both together, added to the body, taken off it, or a band.',
    examples: ['total'],
    enum: HOLDS,
  }).optional(),
  'body share': leaf(readShare(SHARE_BOUNDS, 'A share of body mass'), {
    description: 'The part of the body mass the movement lifts, how that is known, and from where.',
    examples: ['0.64 (published; author, year, journal, page)'],
  }).optional(),
  needs: listLeaf(readThing, {
    description: 'Things it needs besides the load.',
    examples: ['chair, wall', 'none'],
    enum: [...THINGS, 'none'],
  }).optional(),
  ceiling: leaf(readOneOf(CEILINGS), {
    description: 'Room overhead.',
    examples: ['load overhead'],
    enum: CEILINGS,
  }).optional(),
  'floor space': leaf(readFloor, { description: 'Clear floor it needs.', examples: ['2 × 1 m'] }).optional(),
  asks: z
    .strictObject(Object.fromEntries(ASKED.map((of) => [of, optionalAsk(of)])))
    .meta({ description: 'What it asks of joints and of the body, matched against cautions.' })
    .optional(),
  'sign-off': leaf(readYesNo, {
    description: 'May go home only after you have seen and passed it.',
    examples: ['no'],
    enum: ['yes', 'no'],
  }),
  muscles: z
    .strictObject({
      main: listLeaf(readName, { description: 'Muscles that do the work.', examples: ['quadriceps, gluteus maximus'] }),
      assisting: listLeaf(readName, { description: 'Muscles that help.', examples: ['adductors'] }).optional(),
    })
    .meta({
      description: 'Muscles, by their anatomical names.',
      examples: ['{ main: [quadriceps], assisting: [adductors] }'],
    }),
  tempo: leaf(readTempo, {
    description: 'Seconds lowering, at the bottom, lifting, at the top; X is as fast as you can. Or in words.',
    examples: ['2-0-1-0', 'slow lowering'],
  }),
  parts: listLeaf(readId, {
    description: 'Of a combination: the file names of its parts, in the order done.',
    examples: ['dead-clean, press'],
  }).optional(),
  'parts done': leaf(readOneOf(['as one', 'in turn'] as const), {
    description: 'Of a combination: all parts as one rep, or each part’s reps in turn without putting the load down.',
    examples: ['as one'],
    enum: ['as one', 'in turn'],
  }).optional(),
  rehearses: listLeaf(readOneOf(PATTERNS), {
    description: 'Movement patterns it readies the body for: it may stand in a warm-up.',
    examples: ['squat, hinge'],
    enum: [...PATTERNS, 'none'],
  }).optional(),
  'cool-down': leaf(readYesNo, {
    description: 'Whether it may stand in a cool-down.',
    examples: ['no'],
    enum: ['yes', 'no'],
  }).optional(),
  'most reps': leaf(readWhole('Most reps', { least: 1, most: 50 }), {
    description: 'Of fast lifts: the most reps of one set before they lose their quality.',
    examples: ['10'],
  }).optional(),
  measure: leaf(readOneOf(MEASURES), {
    description: 'A published measure for older clients that this exercise is.',
    examples: ['chair stand'],
    enum: MEASURES,
  }).optional(),
  'from the floor': leaf(readYesNo, {
    description: 'Taken from the floor and put back, or done on it: the going down and up is counted in the minutes.',
    examples: ['yes'],
    enum: ['yes', 'no'],
  }),
  'advice off': adviceOff(EXERCISE_ADVICE),
});

type ExerciseFront = z.output<typeof exerciseSchema>;

/** The facts of an exercise; `holds` of an exercise without a load counts nothing and reads *total*. */
export function factsOf(front: ExerciseFront): Facts {
  const asks = ASKED.flatMap((of): Ask[] => {
    const ask = front.asks?.[of];
    return ask ? [{ of, ...ask }] : [];
  });
  const share = front['body share'];
  const floor = front['floor space'];
  return {
    pattern: front.pattern,
    ...(front.plane ? { plane: front.plane } : {}),
    way: front.way,
    sides: front.sides,
    kit: { ...front.load, things: front.needs ?? [] },
    room: { ceiling: front.ceiling ?? 'any', ...(floor ? { floorMillimetres: floor } : {}) },
    holds: MODES[front.holds ?? 'total'],
    ...(share ? { bodyShare: share } : {}),
    asks,
    signOff: front['sign-off'],
    muscles: { main: front.muscles.main, assisting: front.muscles.assisting ?? [] },
    tempo: front.tempo,
    parts: (front.parts ?? []).map(exerciseId),
    partsDone: front['parts done'] ?? 'as one',
    rehearses: front.rehearses ?? [],
    cools: front['cool-down'] ?? false,
    ...(front['most reps'] === undefined ? {} : { mostReps: front['most reps'] }),
    ...(front.measure === undefined ? {} : { measure: front.measure }),
    onTheFloor: front['from the floor'],
  };
}

export const formerIdsOf = (front: ExerciseFront) => (front['former ids'] ?? []).map(exerciseId);

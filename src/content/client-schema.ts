/** The front matter of a client. The body is read in `read-client.ts`. */
import { z } from 'zod';
import { CLIENT_ADVICE } from '../model/advice.js';
import { type Answer, FILMED_FROM } from '../model/client.js';
import type { Day } from '../model/day.js';
import { BODY_PARTS, QUALITIES } from '../model/exercise.js';
import type { KitItem } from '../model/kit.js';
import type { Mass } from '../model/quantity.js';
import { adviceOff } from './advice-off.js';
import { healthKeys } from './health-schema.js';
import { type MassContext, readFloor, readLength, readMass, readWhole } from './read-amounts.js';
import { readId } from './read-id.js';
import { LOAD_KEYS, type LoadKey, listKit, readBands, readOwned, readThing, THINGS } from './read-kit.js';
import { asTyped, good, type Reader, readPart, splitPart } from './read-value.js';
import { readDate, readLanguage, readName, readOneOf, readText, readWeekday, readYesNo } from './read-words.js';
import { entriesLeaf, leaf, listLeaf } from './schema-parts.js';

const YES_NO = ['yes', 'no'] as const;
const ANSWERS = ['yes', 'no', 'unknown'] as const satisfies readonly Answer[];

/** Facts a coach may have on file and no rule reads yet: better refused by name than taken for read. */
export const NOT_READ_YET = [
  'weeks since birth',
  'heart rate',
  'injuries',
  'operations',
  'goal',
  'partner schedule',
  'away',
  'cycle',
  'hearing',
  'sight',
  'one-handed',
] as const;

const date = (description: string) => leaf(readDate, { description, examples: ['2027-01-04'] });
const by = leaf(readName, { description: 'Who said so.', examples: ['your name'] });
const answer = (description: string) => leaf(readOneOf(ANSWERS), { description, examples: ['no'], enum: ANSWERS });

export interface BodyMass {
  readonly mass: Mass;
  readonly date?: Day;
}

/** `70 kg`, or `70 kg, 2026-11-02` with the day it was weighed. */
const readBodyMass =
  (context: MassContext): Reader<BodyMass> =>
  (text) => {
    const [mass, when] = splitPart({ text: asTyped(text), start: 0 }, /,\s+|\s+on\s+/g);
    const read = readPart(mass ?? { text, start: 0 }, readMass(context, 'A body mass', 'body mass'));
    if (!read.ok || !when) return read.ok ? good({ mass: read.value }) : read;
    const weighed = readPart(when, readDate);
    return weighed.ok ? good({ mass: read.value, date: weighed.value }) : weighed;
  };

const cautionSchema = z.strictObject({
  what: leaf(readOneOf([...BODY_PARTS, ...QUALITIES]), {
    description: 'What the caution is about: a part of the body, or a demand such as overhead or impact.',
    examples: ['knee'],
    enum: [...BODY_PARTS, ...QUALITIES],
  }),
  degree: leaf(readOneOf(['avoid', 'take care'] as const), {
    description: 'Avoid, or take care with.',
    examples: ['take care'],
    enum: ['avoid', 'take care'],
  }),
  side: leaf(readOneOf(['left', 'right', 'both'] as const), {
    description: 'Which side; both where it is not said.',
    examples: ['left'],
    enum: ['left', 'right', 'both'],
  }).optional(),
  phases: listLeaf(readName, {
    description: 'The phases of the movement it concerns; all where none is named.',
    examples: ['bottom'],
  }).optional(),
  from: date('The first day it holds.'),
  until: date('The last day it holds.').optional(),
  review: date('The day you look at it again; it holds on until you do.').optional(),
  by,
  say: leaf(readText(), {
    description: 'What the client reads instead of the diagnosis.',
    examples: ['keep the last hand’s breadth of depth for later'],
  }).optional(),
});

export const makeClientSchema = (context: MassContext) => {
  const loads = (key: LoadKey) =>
    entriesLeaf(readOwned(key, context), {
      description: `Masses of the ${key}, with ×2 for two alike; at most ${LOAD_KEYS[key].most} alike.`,
      examples: [key === 'plates' ? '1.25 ×4, 2.5 ×4, 5 ×2' : '8, 12 ×2, 16'],
    }).optional();
  return z.strictObject({
    name: leaf(readName, { description: 'The name the client goes by.', examples: ['the client’s name'] }),
    starts: date('The first training day of the block.'),
    programme: leaf(readId, { description: 'The programme’s file name, without .md.', examples: ['two-days'] }),
    days: listLeaf(readWeekday, { description: 'Training days.', examples: ['mon, thu'] }),
    minutes: leaf(readWhole('Minutes', { least: 10, most: 180 }), {
      description: 'Minutes there are for a session.',
      examples: ['40'],
    }),
    'birth year': leaf(readWhole('A birth year', { least: 1900, most: 2100 }), {
      description: 'Year of birth.',
      examples: ['1988'],
    }),
    experience: leaf(readOneOf(['novice', 'trained'] as const), {
      description: 'Novice, or trained.',
      examples: ['novice'],
      enum: ['novice', 'trained'],
    }),
    'blocks before': leaf(readWhole('Blocks before', { least: 0, most: 500 }), {
      description: 'How many blocks went before this one.',
      examples: ['0'],
    }),
    'body mass': leaf(readBodyMass(context), {
      description: 'Never printed. With the day it was weighed, if you know it.',
      examples: ['70 kg', '154 lb, 2026-11-02'],
    }).optional(),
    units: leaf(readOneOf(['kg', 'lb'] as const), {
      description: 'The unit of figures without one; the studio’s where it is not said.',
      examples: ['kg'],
      enum: ['kg', 'lb'],
    }).optional(),
    language: leaf(readLanguage, {
      description: 'The language of the booklet (BCP 47).',
      examples: ['en-GB'],
    }).optional(),
    'large print': leaf(readYesNo, { description: 'Large print on paper.', examples: ['no'], enum: YES_NO }).optional(),
    replanning: leaf(readOneOf(['fixed', 'within bounds'] as const), {
      description: 'Whether the phone may plan again from what was done.',
      examples: ['fixed'],
      enum: ['fixed', 'within bounds'],
    }).optional(),
    partner: leaf(readId, {
      description: 'The folder name of the client they train with.',
      examples: ['first-last'],
    }).optional(),
    film: z
      .strictObject({
        exercise: leaf(readId, {
          description: 'The exercise to film one set of: its file name, without .md.',
          examples: ['goblet-squat'],
        }),
        from: leaf(readOneOf(FILMED_FROM), {
          description: 'Where the phone stands.',
          examples: ['side'],
          enum: FILMED_FROM,
        }),
      })
      .meta({ description: 'A short film of one set that the client is asked for.' })
      .optional(),
    screening: z
      .strictObject({
        date: date('The day the questions were asked.'),
        'regular exercise': answer(
          'Planned exercise, 30 minutes at moderate effort on three days a week, for three months.',
        ),
        'known disease': answer('Known disease of the heart, the metabolism or the kidneys.'),
        symptoms: answer('Symptoms that suggest such a disease.'),
      })
      .meta({ description: 'Answers to the questions asked before exercise.' })
      .optional(),
    clearance: z
      .strictObject({
        by,
        date: date('The day it was given.'),
        until: date('The last day it holds.').optional(),
        for: leaf(readOneOf(['moderate', 'vigorous'] as const), {
          description: 'The effort it was given for.',
          examples: ['moderate'],
          enum: ['moderate', 'vigorous'],
        }),
      })
      .meta({ description: 'What a doctor, midwife or physiotherapist has cleared.' })
      .optional(),
    ...healthKeys(context),
    cautions: z.array(cautionSchema).meta({ description: 'What to avoid or take care with.' }).optional(),
    kit: z
      .strictObject({
        bells: loads('bells'),
        dumbbells: loads('dumbbells'),
        handles: loads('handles'),
        bars: loads('bars'),
        plates: loads('plates'),
        bands: entriesLeaf(readBands, {
          description: 'Bands by name, from the easiest to the hardest.',
          examples: ['light, medium ×2, strong'],
        }).optional(),
        things: listLeaf(readThing, {
          description: 'What else there is.',
          examples: ['chair, wall, mat'],
          enum: [...THINGS, 'none'],
        }).optional(),
      })
      .meta({ description: 'What the client has at home.' }),
    room: z
      .strictObject({
        ceiling: leaf(readLength, { description: 'Height of the ceiling.', examples: ['2.4 m'] }).optional(),
        floor: leaf(readFloor, { description: 'Clear floor.', examples: ['2 × 2.5 m'] }).optional(),
      })
      .meta({ description: 'The room at home.' })
      .optional(),
    'advice off': adviceOff(CLIENT_ADVICE),
    ...Object.fromEntries(NOT_READ_YET.map((fact) => [fact, notReadYet])),
  });
};

const notReadYet = z
  .unknown()
  .meta({ description: 'No rule reads this yet: anything but *no* or *none* withholds the client.' })
  .optional();

export type ClientFront = z.output<ReturnType<typeof makeClientSchema>>;

export function kitOf({ kit }: ClientFront): readonly KitItem[] {
  const { bands, things, ...loads } = kit;
  const owned = Object.fromEntries(Object.entries(loads).filter(([, list]) => list !== undefined));
  return listKit({ loads: owned, bands: bands ?? [], things: things ?? [] });
}

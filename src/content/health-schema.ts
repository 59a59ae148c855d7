/** Facts of health, breaks and main bells in a client's front matter: their schema, and what the planner reads of them. */
import { z } from 'zod';
import {
  type BloodPressure,
  type Break,
  CONDITIONS,
  type Health,
  type MainBell,
  MEDICINES,
  PREGNANCY_ABSOLUTE,
  PREGNANCY_RELATIVE,
} from '../model/client.js';
import { PATTERNS, type Pattern } from '../model/exercise.js';
import type { Mass } from '../model/quantity.js';
import { type OpenFile, placeOf, placeOfName } from './open-file.js';
import { type MassContext, readMass, readWhole, within } from './read-amounts.js';
import { asTyped, good, mapRead, type Reader, readPart, refuse, trimPart } from './read-value.js';
import { readDate, readListOf, readOneOf, readYesNo } from './read-words.js';
import { entriesLeaf, leaf, listLeaf } from './schema-parts.js';

const date = (description: string) => leaf(readDate, { description, examples: ['2026-11-02'] });

const choice = <const Known extends string>(known: readonly Known[], description: string, example: string) =>
  leaf(readOneOf(known), { description, examples: [example], enum: known });

/** A key may also say that there is nothing: `pregnancy: no`. */
const COMPOUND = ['pregnancy', 'birth', 'blood pressure', 'breaks'] as const;
export const mayBeNone: ReadonlySet<string> = new Set(COMPOUND);

/** Systolic 60–260, diastolic 30–160 mmHg: outside it is a slip of the pen. */
const readPressure: Reader<Pick<BloodPressure, 'systolic' | 'diastolic'>> = (text) => {
  const match = /^\s*(\d{2,3})\s*\/\s*(\d{2,3})(?:\s*mm\s?hg)?\s*$/i.exec(asTyped(text));
  if (!match) return refuse({ code: 'pressure-unreadable', data: { text: text.trim() } }, text);
  const [, over = '', under = ''] = match;
  const systolic = within('The first figure of a blood pressure', Number(over), over, { least: 60, most: 260 }, text);
  const diastolic = within(
    'The second figure of a blood pressure',
    Number(under),
    under,
    { least: 30, most: 160 },
    text,
  );
  if (!systolic.ok) return systolic;
  if (!diastolic.ok) return diastolic;
  if (diastolic.value >= systolic.value)
    return refuse({ code: 'pressure-unreadable', data: { text: text.trim() } }, text);
  return good({ systolic: systolic.value, diastolic: diastolic.value });
};

type Bell = Pick<MainBell, 'pattern' | 'mass'>;

/** `squat 16 kg`: a pattern and its bell. */
const readMainBell =
  (context: MassContext): Reader<Bell> =>
  (text) => {
    const match = /^\s*([a-z]+)\s*:?\s+(\S.*)$/i.exec(text);
    if (!match) return refuse({ code: 'main-bell-unreadable', data: { text: text.trim() } }, text);
    const [, word = '', rest = ''] = match;
    const pattern = readPart({ text: word, start: text.indexOf(word) }, readOneOf<Pattern>(PATTERNS));
    if (!pattern.ok) return pattern;
    const mass = readPart(trimPart({ text: rest, start: text.length - rest.length }), readMass(context));
    return mapRead(mass, (of: Mass): Bell => ({ pattern: pattern.value, mass: of }));
  };

export const healthKeys = (context: MassContext) => ({
  medicines: listLeaf(readOneOf(MEDICINES), {
    description: 'What the medicines do that matters when training, never their names; none where there are none.',
    examples: ['none', 'slows the heart'],
    enum: [...MEDICINES, 'none'],
  }).optional(),
  conditions: listLeaf(readOneOf(CONDITIONS), {
    description: 'Conditions that change what is planned.',
    examples: ['none', 'low bone density'],
    enum: [...CONDITIONS, 'none'],
  }).optional(),
  falls: leaf(readWhole('Falls', { least: 0, most: 99 }), {
    description: 'Falls in the last twelve months.',
    examples: ['0'],
  }).optional(),
  'blood pressure': z
    .strictObject({
      reading: leaf(readPressure, { description: 'At rest, in mmHg.', examples: ['128/82'] }),
      date: date('The day it was measured.'),
      'cuff at home': leaf(readYesNo, {
        description: 'Whether the client has a cuff: only then are figures of pressure printed.',
        examples: ['no'],
        enum: ['yes', 'no'],
      }).optional(),
    })
    .meta({ description: 'Blood pressure at rest, where it is known.' })
    .optional(),
  pregnancy: z
    .strictObject({
      due: date('The day the child is due.'),
      with: listLeaf(readOneOf([...PREGNANCY_ABSOLUTE, ...PREGNANCY_RELATIVE]), {
        description: 'What a midwife or doctor has found that speaks against exercise; none where there is nothing.',
        examples: ['none'],
        enum: [...PREGNANCY_ABSOLUTE, ...PREGNANCY_RELATIVE, 'none'],
      }),
    })
    .meta({ description: 'A pregnancy.' })
    .optional(),
  birth: z
    .strictObject({
      date: date('The day of the birth.'),
      by: choice(['vaginal', 'caesarean'] as const, 'How.', 'vaginal'),
      checked: date('The day a midwife, doctor or physiotherapist looked and allowed exercise.').optional(),
    })
    .meta({ description: 'A birth not long ago.' })
    .optional(),
  breaks: z
    .array(
      z.strictObject({
        from: date('The first day without training.'),
        until: date('The last day without training.'),
        cause: choice(['ill', 'away', 'hurt'] as const, 'Why.', 'away'),
      }),
    )
    .meta({ description: 'Times without training, before the block or inside it.' })
    .optional(),
  'main bells': entriesLeaf(readListOf(readMainBell(context)), {
    description: 'The bell the client works with in a movement pattern.',
    examples: ['squat 16 kg, hinge 20 kg'],
  }).optional(),
});

const schema = (context: MassContext) => z.strictObject(healthKeys(context));
type HealthFront = z.output<ReturnType<typeof schema>>;

export function healthOf(file: OpenFile, front: HealthFront): Health {
  const { medicines, conditions, falls, pregnancy, birth } = front;
  const pressure = front['blood pressure'];
  return {
    ...(medicines === undefined ? {} : { medicines }),
    ...(conditions === undefined ? {} : { conditions }),
    ...(falls === undefined ? {} : { falls }),
    ...(pressure === undefined
      ? {}
      : {
          bloodPressure: {
            ...pressure.reading,
            date: pressure.date,
            cuff: pressure['cuff at home'] ?? false,
            place: placeOfName(file, 'blood pressure'),
          },
        }),
    ...(pregnancy === undefined
      ? {}
      : { pregnancy: { due: pregnancy.due, conditions: pregnancy.with, place: placeOfName(file, 'pregnancy') } }),
    ...(birth === undefined
      ? {}
      : {
          birth: {
            date: birth.date,
            by: birth.by,
            ...(birth.checked === undefined ? {} : { checked: birth.checked }),
            place: placeOfName(file, 'birth'),
          },
        }),
  };
}

export const breaksOf = (file: OpenFile, { breaks }: HealthFront): readonly Break[] =>
  (breaks ?? []).map((one, index) => ({ ...one, place: placeOf(file, 'breaks', index, 'from') }));

export const mainBellsOf = (file: OpenFile, front: HealthFront): readonly MainBell[] =>
  (front['main bells'] ?? []).map((bell) => ({ ...bell, place: placeOf(file, 'main bells') }));

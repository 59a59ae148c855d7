/** The front matter of a programme. The body is read in `read-programme.ts`. */
import { z } from 'zod';
import { PROGRAMME_ADVICE } from '../model/advice.js';
import type { CurveWeek } from '../model/programme.js';
import { adviceOff } from './advice-off.js';
import { readDecimal, readWhole } from './read-amounts.js';
import { mapRead, type Reader } from './read-value.js';
import { readName, readText, readYesNo } from './read-words.js';
import { leaf, listLeaf } from './schema-parts.js';

/** Weeks of a block: at least two, so that there is something to build on; six, side by side, fill the booklet's opening. */
export const WEEKS = { least: 2, most: 6 } as const;

const readReserve: Reader<number> = (text) =>
  mapRead(readDecimal('Reps in reserve', { least: 0, most: 10 })(text), (reps) => Math.round(reps * 10));
const readShareOfSets: Reader<number> = (text) =>
  mapRead(
    readDecimal('A share of the sets in per cent', { least: 10, most: 200 })(text.replace(/\s*%\s*$/, '')),
    (percent) => Math.round(percent * 10),
  );

const sessionOrder = listLeaf(readName, {
  description: 'The order of sessions for a client with so many days a week.',
  examples: ['A, B, C'],
}).optional();

export const programmeSchema = z.strictObject({
  name: leaf(readName, { description: 'The name of the programme.', examples: ['Two steady days'] }),
  for: leaf(readText(), {
    description: 'Who it is for, in a few words.',
    examples: ['someone new to bells, two days a week'],
  }),
  public: leaf(readYesNo, {
    description: 'Whether it may stand in the public library.',
    examples: ['yes'],
    enum: ['yes', 'no'],
  }),
  curve: z
    .strictObject({
      reserve: listLeaf(readReserve, {
        description: 'How many good reps to leave, week by week; as many figures as the block has weeks, two to six.',
        examples: ['3, 3, 2, 2, 2, 4'],
      }),
      sets: listLeaf(readShareOfSets, {
        description: 'The share of the sets, week by week, in per cent.',
        examples: ['100, 100, 100, 100, 100, 67'],
      }).optional(),
      easy: listLeaf(readWhole('A week', { least: 1, most: WEEKS.most }), {
        description: 'The easier weeks, by number.',
        examples: ['6', 'none'],
      }).optional(),
    })
    .meta({ description: 'Effort week by week.', examples: ['reserve: 3, 3, 2, 2, 2, 4'] }),
  rotation: z
    .strictObject({
      '1': sessionOrder,
      '2': sessionOrder,
      '3': sessionOrder,
      '4': sessionOrder,
      '5': sessionOrder,
      '6': sessionOrder,
      '7': sessionOrder,
    })
    .meta({
      description: 'For clients with other than as many days as there are sessions: days a week, and the order.',
    })
    .optional(),
  'never cut': listLeaf(readName, {
    description: 'Rows that stay however short the time is.',
    examples: ['goblet-squat, one-arm-row'],
  }).optional(),
  tests: listLeaf(readName, {
    description: 'Rows tested in the first and again in the last session they stand in.',
    examples: ['goblet-squat'],
  }).optional(),
  'cut first': listLeaf(readName, {
    description: 'Rows that go when time is short, the first to go first.',
    examples: ['dead-bug, push-up'],
  }).optional(),
  'advice off': adviceOff(PROGRAMME_ADVICE),
});

export type ProgrammeFront = z.output<typeof programmeSchema>;

export function curveOf({ curve }: ProgrammeFront): readonly CurveWeek[] {
  return curve.reserve.map((reserve, index) => ({
    reserve,
    share: curve.sets?.[index] ?? 1000,
    easy: (curve.easy ?? []).includes(index + 1),
  }));
}

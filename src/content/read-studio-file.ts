/** The studio's own page, and the coach's own values for the engine's rules. */
import { z } from 'zod';
import { ADVICE } from '../model/advice.js';
import { plainText } from '../model/prose.js';
import type { RuleOverride, Studio } from '../model/studio.js';
import { adviceOff } from './advice-off.js';
import { nearestOf } from './nearest.js';
import { type OpenFile, readKeys } from './open-file.js';
import { readDecimal } from './read-amounts.js';
import { readAddress, readLanguage, readName, readOneOf, readPhoneNumber, readText } from './read-words.js';
import { leaf } from './schema-parts.js';
import { linesOf, readSections, tableOf } from './sections.js';
import { readCell, rowsOf } from './table-rows.js';

export const studioSchema = z.strictObject({
  name: leaf(readName, { description: 'The studio’s name.', examples: ['Slate Yard'] }),
  place: leaf(readName, { description: 'Where it is.', examples: ['Harrowby'] }),
  coach: leaf(readName, { description: 'Your name, as clients know you.', examples: ['your name'] }),
  language: leaf(readLanguage, { description: 'The language of the library (BCP 47).', examples: ['en-GB'] }),
  units: leaf(readOneOf(['kg', 'lb'] as const), {
    description: 'The unit of figures that have none.',
    examples: ['kg'],
    enum: ['kg', 'lb'],
  }),
  paper: leaf(readOneOf(['A4', 'Letter'] as const), {
    description: 'The paper in your printer.',
    examples: ['A4'],
    enum: ['A4', 'Letter'],
  }),
  'emergency number': leaf(readPhoneNumber, { description: 'The number to ring in an emergency.', examples: ['999'] }),
  address: leaf(readAddress, {
    description: 'Where the library is hosted, once it is.',
    examples: ['https://slate-yard.example/'],
  }).optional(),
  'advice off': adviceOff(ADVICE),
});

/** Stands in for a studio that could not be read, so that the rest is still read for its mistakes; nothing is published with it. */
export const NO_STUDIO: Studio = {
  name: '',
  place: '',
  coach: '',
  language: 'en-GB',
  unit: 'kg',
  paper: 'a4',
  emergencyNumber: '',
  source: { file: 'studio.md', line: 1, column: 1, length: 1 },
};

export function readStudioFile(file: OpenFile): Studio | undefined {
  const description = linesOf(file, 'the description', readSections(file, []).intro);
  const front = readKeys(file, studioSchema);
  return (
    front && {
      name: front.name,
      place: front.place,
      coach: front.coach,
      language: front.language,
      unit: front.units,
      paper: front.paper === 'A4' ? 'a4' : 'letter',
      emergencyNumber: front['emergency number'],
      ...(front.address === undefined ? {} : { address: front.address }),
      ...(description.length > 0 ? { description } : {}),
      source: file.place,
    }
  );
}

const COLUMNS = ['Rule', 'Value', 'Reason'] as const;

/** `known` are the rules the engine has; `undefined` where that is checked elsewhere. */
export function readRules(file: OpenFile, known: readonly string[] | undefined): readonly RuleOverride[] {
  if (file.keys) readKeys(file, z.strictObject({}));
  const blocks = file.body.blocks.filter(({ kind }) => kind === 'table');
  const table = tableOf(file, { name: 'rules', place: file.place, blocks });
  if (!table) return [];
  const seen = new Set<string>();
  return rowsOf<(typeof COLUMNS)[number]>(file, table, { known: COLUMNS, needed: ['Rule', 'Value'] }).flatMap((row) => {
    const cell = row.cell('Rule');
    const rule = cell ? plainText(cell.line).trim() : '';
    const value = readCell(file, row.cell('Value'), readDecimal('A value', { least: -999_999, most: 999_999 }));
    const reason = readCell(file, row.cell('Reason'), readText());
    if (!cell) return [];
    if (known && !known.includes(rule)) {
      file.report.add({ code: 'unknown-rule', data: { id: rule, nearest: nearestOf(rule, known) } }, cell.place);
    }
    if (seen.has(rule)) file.report.add({ code: 'entry-twice', data: { entry: rule } }, cell.place);
    seen.add(rule);
    if (!row.cell('Reason')) {
      file.report.add({ code: 'rule-without-reason', data: { rule } }, row.placeOf('Reason'));
    }
    return value === undefined || reason === undefined ? [] : [{ rule, value, reason, place: row.place }];
  });
}

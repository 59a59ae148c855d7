/** Values for the front matter in a form that the reader reads back to the letter. */
import { parseText } from '../../prose/source-text.js';
import { parseFrontMatter, plainOf } from '../yaml-tree.js';

export type Quoting = 'plain' | 'single' | 'double';
/** Within brackets more characters have a meaning of their own. */
export type Within = 'lines' | 'brackets';

/** A value that stands in one line: no line end, no control character, not empty. */
export const isOneLine = (text: string): boolean => text.trim() !== '' && !/[\p{Cc}\u2028\u2029\ufeff]/u.test(text);

/** The text in the quoting preferred, or else in the first that holds it. */
export function writeValue(text: string, within: Within, prefer: Quoting = 'plain'): string {
  const orders: readonly Quoting[] = [prefer, 'plain', 'double', 'single'];
  const forms = orders.map((quoting) => quoted(text, quoting));
  return forms.find((form) => readsAs(form, text, within)) ?? quoted(text, 'double');
}

function quoted(text: string, quoting: Quoting): string {
  if (quoting === 'single') return `'${text.replaceAll("'", "''")}'`;
  return quoting === 'double' ? `"${text.replace(/["\\]/g, '\\$&')}"` : text;
}

/** Held against the reader itself. */
function readsAs(form: string, text: string, within: Within): boolean {
  const page = within === 'lines' ? `k: ${form}\n` : `k: {k: ${form}, z: 1}\n`;
  const source = parseText('', page);
  const tree = parseFrontMatter(source, 0, page.length, () => undefined);
  const value = tree?.entries[0]?.value;
  if (tree?.entries.length !== 1 || !value) return false;
  if (within === 'lines') return value.kind === 'text' && value.text === text;
  return JSON.stringify(plainOf(value)) === JSON.stringify({ k: text, z: '1' });
}

/** `{what: knee, degree: avoid}` */
export const writeEntry = (entry: Readonly<Record<string, string>>): string =>
  `{${Object.entries(entry)
    .map(([key, value]) => `${key}: ${writeValue(value, 'brackets')}`)
    .join(', ')}}`;

/** `what: knee` and so on, a line each. */
export const entryLines = (entry: Readonly<Record<string, string>>): readonly string[] =>
  Object.entries(entry).map(([key, value]) => `${key}: ${writeValue(value, 'lines')}`);

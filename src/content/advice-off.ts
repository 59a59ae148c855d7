/** Advice a coach would rather not hear: `advice off:` on a page for that page, in `studio.md` for all of them. */

import { type Advice, isAdvice } from '../model/advice.js';
import type { Problem } from '../model/problem.js';
import type { OpenFile } from './open-file.js';
import { readOneOf } from './read-words.js';
import { listLeaf } from './schema-parts.js';
import { nodeAt } from './yaml-tree.js';

const KEY = 'advice off';

/** The key as a schema reads it; a name that no advice of this page has is refused. */
export const adviceOff = <const Known extends Advice>(known: readonly Known[]) =>
  listLeaf(readOneOf(known), {
    description: 'Advice to leave unsaid, by name.',
    examples: [known[0] ?? ''],
    enum: known,
  }).optional();

/** Names as written. What is wrong with them is told where the schema reads them. */
function offIn({ keys }: OpenFile): readonly string[] {
  const node = keys && nodeAt(keys, [KEY]);
  const lines = node?.kind === 'list' ? node.items : node === undefined ? [] : [node];
  return lines
    .flatMap((line) => (line.kind === 'text' ? line.text.toLowerCase().split(/[,;]/) : []))
    .map((name) => name.trim());
}

/** Everything but the advice that is turned off. */
export function withoutOff(problems: readonly Problem[], files: readonly OpenFile[]): readonly Problem[] {
  const off = new Map(files.map((file) => [file.path, offIn(file)]));
  const everywhere = off.get('studio.md') ?? [];
  return problems.filter(({ code, place }) => {
    if (!isAdvice(code)) return true;
    return !everywhere.includes(code) && !(off.get(place?.file ?? '') ?? []).includes(code);
  });
}

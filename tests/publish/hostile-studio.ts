/** A small studio with a text of somebody else's wherever a page lets a text stand. */
import { type FolderFile, readFolder } from '../../src/content/read-folder.js';
import { RULE_IDS } from '../../src/engine/rulebook.js';
import type { Problem } from '../../src/model/problem.js';
import type { Result } from '../../src/model/result.js';
import type { Content } from '../../src/model/studio.js';
import { smallStudio } from '../app/run-chalkleaf.js';

export interface Field {
  readonly path: string;
  readonly line: number;
  /** In UTF-16 units of the line. */
  readonly from: number;
  readonly to: number;
}

export type Pages = ReadonlyMap<string, string>;

const NOTES = '\n## Work on this\n\nBreathe before each set.\n\n## Notes\n\nCame back rested.\n';
const OBSERVED =
  '\n## Observations\n\n| Date | Exercise | Side | Seen |\n| --- | --- | --- | --- |\n| 2026-11-16 | [Goblet squat](../../exercises/goblet-squat.md) | | hurrying |\n';

/** More kinds of text than the smallest studio has. */
export function hostPages(): Pages {
  const pages = new Map(smallStudio());
  const add = (path: string, work: (text: string) => string): void => {
    pages.set(path, work(pages.get(path) ?? ''));
  };
  add('studio.md', (text) => `${text}\nA room with a door to the yard.\n`);
  add('clients/ash-venn/client.md', (text) => `${text}${OBSERVED}${NOTES}`);
  add('programmes/first-six-weeks.md', (text) => text.replace('## A: Legs', 'Six weeks from nothing.\n\n## A: Legs'));
  return pages;
}

const VALUE = [
  /^(?<before>[a-z][a-z -]*: +)(?<value>\S.*)$/,
  /^(?<before> *- )(?<value>\S.*)$/,
  /^(?<before>#+ )(?<value>\S.*)$/,
];

/** Values of keys, items of lists, headings, cells and paragraphs. */
export function fieldsOf(pages: Pages): readonly Field[] {
  return [...pages].flatMap(([path, text]) =>
    text.split('\n').flatMap((line, index): Field[] => {
      const at = (from: number, to: number): Field => ({ path, line: index, from, to });
      if (line === '' || line === '---' || /^\|[ -|]*$/.test(line)) return [];
      if (line.startsWith('|')) {
        const cells = [...line.matchAll(/\|([^|]+)(?=\|)/g)];
        return cells.map(({ index: start, 1: cell = '' }) => at(start + 2, start + 1 + cell.trimEnd().length));
      }
      for (const pattern of VALUE) {
        const found = pattern.exec(line)?.groups;
        if (found?.before !== undefined) return [at(found.before.length, line.length)];
      }
      return [at(0, line.length)];
    }),
  );
}

/** `instead`: the text alone, else after what stands there. */
export function put(pages: Pages, { path, line, from, to }: Field, hostile: string, instead: boolean): Pages {
  const lines = (pages.get(path) ?? '').split('\n');
  const old = lines[line] ?? '';
  const value = instead ? hostile : `${old.slice(from, to)} ${hostile}`;
  lines[line] = old.slice(0, from) + value + old.slice(to);
  return new Map([...pages, [path, lines.join('\n')]]);
}

export function readPages(pages: Pages): Result<Content> {
  const files = [...pages].map(([path, text]): FolderFile => ({ path, bytes: new TextEncoder().encode(text) }));
  return readFolder(files, { rules: RULE_IDS });
}

export const isWrong = ({ severity }: Problem): boolean => severity === 'error';

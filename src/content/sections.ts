/** A body in sections under headings of known names, and what each section may hold. */
import type { Place } from '../model/place.js';
import { type Line, plainText } from '../model/prose.js';
import type { Block, Sentence } from '../prose/blocks.js';
import { nearestOf } from './nearest.js';
import { lineOf, type OpenFile } from './open-file.js';
import { asTyped } from './read-value.js';

export interface Section {
  readonly name: string;
  readonly place: Place;
  readonly blocks: readonly Block[];
}

export interface Sections<Name extends string> {
  /** What stands before the first heading. */
  readonly intro: readonly Block[];
  get(name: Name): Section | undefined;
  /** Whether a heading nobody knows is likely to mean this section: then it is not missing, only misspelt. */
  misspelt(name: Name): boolean;
}

export const sameName = (text: string): string =>
  asTyped(text)
    .replace(/[\s-]+/g, ' ')
    .trim()
    .toLowerCase();

/** Complains of headings that are unknown or come twice. */
export function readSections<Name extends string>(file: OpenFile, known: readonly Name[]): Sections<Name> {
  const intro: Block[] = [];
  const found = new Map<string, Section & { blocks: Block[] }>();
  const misspelt = new Set<string>();
  let current: Block[] | undefined = intro;
  for (const block of file.body.blocks) {
    if (block.kind !== 'heading') {
      current?.push(block);
      continue;
    }
    const heading = plainText(block.words.line);
    const name = known.find((one) => sameName(one) === sameName(heading));
    current = undefined;
    if (name === undefined) {
      const nearest = nearestOf(heading, known) || sameBeginning(heading, known);
      misspelt.add(nearest);
      file.report.add({ code: 'unknown-heading', data: { heading, nearest } }, block.words.place);
    } else if (found.has(name)) file.report.add({ code: 'heading-twice', data: { heading: name } }, block.words.place);
    else {
      current = [];
      found.set(name, { name, place: block.words.place, blocks: current });
    }
  }
  return { intro, get: (name) => found.get(name), misspelt: (name) => misspelt.has(name) };
}

/** `Stop when` begins like `Stop if` and like nothing else. */
function sameBeginning(heading: string, known: readonly string[]): string {
  const first = (text: string): string => sameName(text).split(' ')[0] ?? '';
  const alike = known.filter((name) => first(name) === first(heading));
  return alike.length === 1 ? (alike[0] ?? '') : '';
}

/** The items of a section that holds a list; nothing where the section is absent. */
export function itemsOf(file: OpenFile, section: Section | undefined): readonly Sentence[] {
  if (!section) return [];
  return section.blocks.flatMap((block) => {
    if (block.kind === 'list') return block.items.filter((item) => item.line.length > 0);
    file.report.add({ code: 'wrong-content', data: { section: section.name, wanted: 'list' } }, block.place);
    return [];
  });
}

/** Paragraphs and list items, each a line. */
export function linesOf(file: OpenFile, name: string, blocks: readonly Block[]): readonly Line[] {
  return blocks.flatMap((block) => {
    if (block.kind === 'paragraph') return [lineOf(file, block.words)];
    if (block.kind === 'list') return block.items.map((item) => lineOf(file, item));
    file.report.add({ code: 'wrong-content', data: { section: name, wanted: 'text' } }, block.place);
    return [];
  });
}

/** The one table of a section; `undefined` where there is none. */
export function tableOf(file: OpenFile, section: Section | undefined): Extract<Block, { kind: 'table' }> | undefined {
  if (!section) return undefined;
  let table: Extract<Block, { kind: 'table' }> | undefined;
  for (const block of section.blocks) {
    if (block.kind === 'table' && !table) table = block;
    else file.report.add({ code: 'wrong-content', data: { section: section.name, wanted: 'table' } }, block.place);
  }
  return table;
}

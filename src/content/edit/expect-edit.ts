/**
 * What a page says once an edit is made, worked out from what it said, without a look at how either is written: what
 * is written in place is held against this.
 */
import type { Edit, EntryFacts } from '../../model/edit.js';
import { cellsUnder, newHeads, sentenceOf } from './edit-body.js';
import { entriesIn, trimmed } from './edit-client.js';
import { type PageFacts, type PlainBlock, type PlainPart, partAt } from './page-facts.js';

type Keys = Readonly<Record<string, unknown>>;

/** Where an entry or a row of the page as it was handed in stands after the edits before; -1 where it is gone. */
export interface Originals {
  entryAt(list: string, index: number): number;
  rowAt(section: string, line: number): number;
}

/** `undefined` where the edit has no meaning for such a page. */
export function expectEdit(facts: PageFacts, edit: Edit, originals: Originals): PageFacts | undefined {
  switch (edit.kind) {
    case 'set':
      return inFront(facts, setIn(facts.front, edit.path, edit.value.trim()));
    case 'set-in-entry': {
      const [list, original] = edit.path;
      const index = originals.entryAt(list, original);
      const entries = listOf(facts.front[list]);
      const now = entries[index];
      if (index === -1 || !isKeys(now)) return undefined;
      const entry = { ...now, [edit.key]: edit.value.trim() };
      return inFront(facts, { ...facts.front, [list]: entries.with(index, entry) });
    }
    case 'add-to-list': {
      const [list] = edit.path;
      const entry = trimmed(edit.entry);
      const entries = listOf(facts.front[list]);
      if (entries.some((one) => same(one, entry))) return facts;
      return inFront(facts, { ...facts.front, [list]: [...entries, entry] });
    }
    case 'remove-entry': {
      const [list, original] = edit.path;
      const index = originals.entryAt(list, original);
      const entries = listOf(facts.front[list]);
      if (index === -1) return edit.says ? facts : undefined;
      if (edit.says && !says(entries[index], edit.says)) return facts;
      const rest = entries.toSpliced(index, 1);
      const { [list]: _, ...others } = facts.front;
      return inFront(facts, rest.length === 0 ? others : { ...facts.front, [list]: rest });
    }
    case 'add-row':
      return addRowTo(facts, edit);
    case 'remove-row': {
      const row = originals.rowAt(edit.section, edit.line);
      if (row === -1) return edit.says ? facts : undefined;
      return inTable(facts, edit.section, (heads, rows) => {
        const there = Object.entries(edit.says ?? {}).every(([name, text]) => {
          const at = heads.findIndex((head) => head.trim().toLowerCase() === name.trim().toLowerCase());
          return spaced(rows[row]?.[at] ?? '') === spaced(text);
        });
        return there ? rows.toSpliced(row, 1) : rows;
      });
    }
    case 'replace-section-line':
      return replaceIn(facts, edit.section, edit.text);
  }
}

const inFront = (facts: PageFacts, front: Keys | undefined): PageFacts | undefined => front && { ...facts, front };
const isKeys = (value: unknown): value is Keys => typeof value === 'object' && value !== null && !Array.isArray(value);
const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
const spaced = (text: string): string => text.replace(/\s+/g, ' ').trim();

function same(one: unknown, entry: EntryFacts): boolean {
  return isKeys(one) && Object.keys(one).length === Object.keys(entry).length && says(one, entry);
}

const says = (one: unknown, entry: EntryFacts): boolean =>
  isKeys(one) && Object.entries(entry).every(([key, value]) => one[key] === value);

function setIn(keys: Keys, path: readonly string[], value: string): Keys | undefined {
  const [key, ...rest] = path;
  if (key === undefined) return undefined;
  const now = keys[key];
  if (rest.length === 0) return { ...keys, [key]: Array.isArray(now) ? entriesIn(value) : value };
  if (now !== undefined && !isKeys(now)) return undefined;
  const below = setIn(isKeys(now) ? now : {}, rest, value);
  return below && { ...keys, [key]: below };
}

type Rows = readonly (readonly string[])[];

/** The first table of the section, with other rows. */
function inTable(
  facts: PageFacts,
  section: string,
  change: (heads: readonly string[], rows: Rows) => Rows,
): PageFacts | undefined {
  const at = partAt(facts, section);
  const part = facts.parts[at];
  const table = part?.blocks.findIndex(({ kind }) => kind === 'table') ?? -1;
  const block = part?.blocks[table];
  if (!part || block?.kind !== 'table') return undefined;
  const after: PlainBlock = { ...block, rows: change(block.heads, block.rows) };
  return { ...facts, parts: facts.parts.with(at, { ...part, blocks: part.blocks.with(table, after) }) };
}

function addRowTo(facts: PageFacts, edit: Extract<Edit, { kind: 'add-row' }>): PageFacts | undefined {
  const { section, cells } = edit;
  const added = inTable(facts, section, (heads, rows) => {
    const row = cellsUnder(heads, cells);
    if ('missing' in row) return rows;
    const there = rows.some((one) => row.every((text, column) => spaced(one[column] ?? '') === text));
    return there ? rows : [...rows, row];
  });
  if (added) return added;
  const heads = newHeads(section, cells);
  const row = cellsUnder(heads, cells);
  return 'missing' in row ? undefined : beginIn(facts, section, { kind: 'table', heads, rows: [row] });
}

/** First in its section, or alone in one of its own, which stands last here: where it stands is not held against this. */
function beginIn(facts: PageFacts, section: string, block: PlainBlock): PageFacts {
  const at = partAt(facts, section);
  const part = facts.parts[at];
  if (!part) return { ...facts, parts: [...facts.parts, { heading: section, blocks: [block] }] };
  return { ...facts, parts: facts.parts.with(at, { ...part, blocks: [block, ...part.blocks] }) };
}

function replaceIn(facts: PageFacts, section: string, text: string): PageFacts | undefined {
  const line = sentenceOf(text)?.words.line;
  if (!line) return undefined;
  const at = partAt(facts, section);
  const part: PlainPart | undefined = facts.parts[at];
  const first = part?.blocks.findIndex(({ kind }) => kind !== 'table') ?? -1;
  const block = part?.blocks[first];
  if (!part || !block || block.kind === 'table') return beginIn(facts, section, { kind: 'words', line });
  const after: PlainBlock =
    block.kind === 'words' ? { kind: 'words', line } : { ...block, items: block.items.with(0, line) };
  return { ...facts, parts: facts.parts.with(at, { ...part, blocks: part.blocks.with(first, after) }) };
}

/** Sections that are new, moved to the end in the order of their names: where they stand is not held against this. */
export function newLast(facts: PageFacts, before: PageFacts): PageFacts {
  const old = new Set(before.parts.map(({ heading }) => heading));
  const isNew = (part: PlainPart): boolean => !old.has(part.heading);
  const fresh = facts.parts.filter(isNew).sort((a, b) => (a.heading < b.heading ? -1 : 1));
  return { ...facts, parts: [...facts.parts.filter((part) => !isNew(part)), ...fresh] };
}

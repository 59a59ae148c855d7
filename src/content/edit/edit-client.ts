/** A client's page with facts set, added or taken out in place: every other byte stays as the coach wrote it. */
import type { Edit, EditFault, WhyNoEdit } from '../../model/edit.js';
import { splitPart } from '../read-value.js';
import { addRow, removeRow, replaceLine } from './edit-body.js';
import { type Change, setValue } from './edit-front.js';
import { addEntry, removeEntry, setText, textsAt } from './edit-list.js';
import { type FrontTree, openFront } from './front-tree.js';
import { partsOf } from './page-parts.js';
import { openPage, type PageText, type Splice, spliced } from './page-text.js';
import { isOneLine } from './write-value.js';

/** The edits in their order, all of them or none. `source` is the whole page as it stands in the file. */
export function editClient(
  source: string,
  edits: readonly Edit[],
): { readonly text: string } | { readonly problem: EditFault } {
  let text = source;
  const moved = startMoves();
  for (const [index, edit] of edits.entries()) {
    const after = editOne(text, moved.now(edit), moved);
    if (typeof after !== 'string') return { problem: { edit: index, ...after } };
    text = after;
  }
  return { text };
}

type Fault = Pick<EditFault, 'why' | 'name'>;
type Step = readonly Splice[] | Fault;

function editOne(source: string, edit: Edit | Fault, moved: Moves): string | Fault {
  if ('why' in edit) return edit;
  if (!textsOf(edit).every(isOneLine)) return { why: 'not-one-line', name: nameOf(edit) };
  const page = openPage(source);
  const front = openFront(page.source);
  if (!front) return { why: 'page-unreadable', name: '' };
  if (edit.kind === 'set' && textsAt(front, edit.path)) return setTexts(page, edit.path, entriesIn(edit.value));
  const step = stepOf(page, front, edit);
  if ('why' in step) return step;
  moved.note(page, edit, step);
  return spliced(page, step);
}

function stepOf(page: PageText, front: FrontTree, edit: Edit): Step {
  const inFront = (change: Change): Step => placed(front, change, nameOf(edit));
  switch (edit.kind) {
    case 'set':
      return inFront(setValue(front, edit.path, edit.value.trim()));
    case 'set-in-entry':
      return inFront(setValue(front, [...edit.path, edit.key], edit.value.trim()));
    case 'add-to-list':
      return inFront(addEntry(front, edit.path[0], trimmed(edit.entry)));
    case 'remove-entry':
      return inFront(removeEntry(front, edit.path[0], edit.path[1], edit.says));
    case 'add-row':
      return addRow(page.source, partsOf(page.source), edit.section, edit.cells);
    case 'remove-row':
      return removeRow(page.source, partsOf(page.source), edit.section, edit.line, edit.says);
    case 'replace-section-line':
      return replaceLine(page.source, partsOf(page.source), edit.section, edit.text);
  }
}

/** From the front matter's text to the page's. */
function placed({ base }: FrontTree, change: Change, name: string): Step {
  if (typeof change === 'string') return { why: change, name };
  return change.map(({ start, end, text }) => ({ start: start + base, end: end + base, text }));
}

export const trimmed = (entry: Readonly<Record<string, string>>): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(entry).map(([key, value]) => [key, value.trim()]));

/** Entries of one line, as where a list is read. */
export const entriesIn = (value: string): readonly string[] =>
  splitPart({ text: value, start: 0 }, /;|,(?=\s)/g).map(({ text }) => text);

/** A list of texts is changed entry by entry: those alike at its beginning and its end are not touched. */
function setTexts(before: PageText, path: readonly string[], wanted: readonly string[]): string | Fault {
  let page = before;
  const make = (index: number, value: string | undefined): Fault | undefined => {
    const front = openFront(page.source);
    const step = front && placed(front, setText(front, path, index, value), path.join(' '));
    if (!step || 'why' in step) return step ?? { why: 'page-unreadable', name: '' };
    page = openPage(spliced(page, step));
    return undefined;
  };
  const front = openFront(page.source);
  const old = (front && textsAt(front, path)) ?? [];
  let first = 0;
  while (first < old.length && first < wanted.length && old[first] === wanted[first]) first += 1;
  let last = 0;
  const spare = Math.min(old.length, wanted.length) - first;
  while (last < spare && old.at(-1 - last) === wanted.at(-1 - last)) last += 1;
  // Entries are added at the end alone.
  if (wanted.length > old.length) last = 0;
  const [oldEnd, newEnd] = [old.length - last, wanted.length - last];
  for (let index = first; index < newEnd; index += 1) {
    const fault = make(index, wanted[index]);
    if (fault) return fault;
  }
  for (let index = oldEnd - 1; index >= newEnd; index -= 1) {
    const fault = make(index, undefined);
    if (fault) return fault;
  }
  return page.raw;
}

/** Everything an edit would write. */
function textsOf(edit: Edit): readonly string[] {
  switch (edit.kind) {
    case 'set':
      return [...edit.path, edit.value];
    case 'set-in-entry':
      return [edit.key, edit.value];
    case 'add-to-list':
      return Object.keys(edit.entry).length === 0 ? [''] : [...Object.keys(edit.entry), ...Object.values(edit.entry)];
    case 'add-row': {
      const texts = Object.values(edit.cells).filter((text) => text.trim() !== '');
      return texts.length === 0 ? [''] : texts;
    }
    case 'replace-section-line':
      return [edit.text];
    case 'remove-entry':
    case 'remove-row':
      return [];
  }
}

/** What an edit is about, in a word. */
export const nameOf = (edit: Edit): string => ('section' in edit ? edit.section : edit.path.join(' '));

interface Moves {
  /** The edit with its index or line as they are now. */
  now(edit: Edit): Edit | Fault;
  /** Remembers what an edit moved. */
  note(page: PageText, edit: Edit, splices: readonly Splice[]): void;
}

/** Edits speak of the page as it was handed in; each that is made moves what stands below it. */
function startMoves(): Moves {
  const gone = new Map<string, number[]>();
  const lines: { readonly from: number; readonly by: number }[] = [];
  const fault = (why: WhyNoEdit, edit: Edit): Fault => ({ why, name: nameOf(edit) });
  return {
    now(edit) {
      if (edit.kind === 'remove-row') {
        let { line } = edit;
        for (const { from, by } of lines) {
          if (line >= from && line < from - by) return edit.says ? edit : fault('no-such-row', edit);
          if (line >= from) line += by;
        }
        return { ...edit, line };
      }
      if (edit.kind !== 'set-in-entry' && edit.kind !== 'remove-entry') return edit;
      const [list, index] = edit.path;
      const before = gone.get(list) ?? [];
      if (before.includes(index)) return fault('no-such-entry', edit);
      return { ...edit, path: [list, index - before.filter((one) => one < index).length] };
    },
    note({ source }, edit, splices) {
      if (edit.kind === 'remove-entry' && splices.length > 0) {
        const [list, index] = edit.path;
        const before = [...(gone.get(list) ?? [])].sort((a, b) => a - b);
        gone.set(list, [...before, before.reduce((at, one) => (one <= at ? at + 1 : at), index)]);
      }
      for (const { start, end, text } of [...splices].sort((a, b) => b.start - a.start)) {
        const by = count(text) - count(source.text.slice(start, end));
        const from = source.lineStarts.findLastIndex((lineStart) => lineStart <= start);
        const whole = source.lineStarts[from] === start;
        if (by !== 0) lines.push({ from: whole ? from + 1 : from + 2, by });
      }
    },
  };
}

const count = (text: string): number => text.split('\n').length - 1;

/**
 * A change to a client's page that may be made in place: one fact set, added or taken out, every other byte left as the
 * coach wrote it. Indices and lines are those of the page as it was handed in, however many edits go before.
 */

/** What an entry of a list says: keys and values as the coach would write them. */
export type EntryFacts = Readonly<Record<string, string>>;

/** Cells by the heading of their column, as the coach would write them; a heading left out is an empty cell. */
export type RowCells = Readonly<Record<string, string>>;

/** An entry of a list of the front matter: the list's key, and the entry's 0-based index. */
export type EntryPath = readonly [list: string, index: number];

export type TableSection = 'Signed off' | 'Tests' | 'Observations';

export type Edit =
  /** A value of the front matter, set or added. Where a list stands, its entries are the parts between commas. */
  | { readonly kind: 'set'; readonly path: readonly string[]; readonly value: string }
  /** An entry after the last of `cautions` or `breaks`; the list is begun where there is none. */
  | { readonly kind: 'add-to-list'; readonly path: readonly [list: string]; readonly entry: EntryFacts }
  | { readonly kind: 'set-in-entry'; readonly path: EntryPath; readonly key: string; readonly value: string }
  /** With `says`, only an entry that says so is taken out, and where none says so there is nothing to do. */
  | { readonly kind: 'remove-entry'; readonly path: EntryPath; readonly says?: EntryFacts }
  /** A row under the last of the section's table; section and table are begun where there are none. */
  | { readonly kind: 'add-row'; readonly section: TableSection; readonly cells: RowCells }
  /** `line` counts from 1, as places do. With `says`, as for an entry. */
  | {
      readonly kind: 'remove-row';
      readonly section: TableSection;
      readonly line: number;
      readonly says?: RowCells;
    }
  /** The first line of the section, in Markdown; it is begun where there is none. */
  | { readonly kind: 'replace-section-line'; readonly section: 'Work on this'; readonly text: string };

/** Why an edit is not made. */
export type WhyNoEdit =
  /** The facts at the top of the page cannot be read, or the page is not text. */
  | 'page-unreadable'
  /** A value of several lines, of nothing, or with characters nobody types. */
  | 'not-one-line'
  /** Text stands where a list or keys belong, or the other way round. */
  | 'other-shape'
  | 'no-such-entry'
  | 'no-such-row'
  /** The entry or row meant says something else. */
  | 'says-otherwise'
  /** The table has no such column, and none is added. */
  | 'no-column'
  /** YAML in a form that cannot be changed without changing how the rest is written. */
  | 'form'
  /** Read again, the page would not say just this and the rest as before. */
  | 'not-exact'
  /** The page would then be wrong; `name` is the code of what is. */
  | 'would-be-wrong';

export interface EditFault {
  /** Which of the edits, from 0. */
  readonly edit: number;
  readonly why: WhyNoEdit;
  /** The key, section, column or code that it is about; may be empty. */
  readonly name: string;
}

/**
 * What is remarked on a row of a session, in either of two ways: on lines of its own, or one remark after the other where
 * room is short.
 */
import type { ChoiceRow } from '../model/booklet.js';
import type { ChoiceLine } from './choice-table.js';
import { columnOf, hangingItem, rule, type Slug, withNext } from './lay-out-blocks.js';
import { choiceItems, choiceSlugs, tableItems, tableSlugs } from './lay-out-choices.js';
import { layOutLines, type StyledRun } from './lay-out-lines.js';
import { type PackedItem, packed } from './lay-out-packed.js';
import { weekRuns } from './lay-out-week-runs.js';
import { type Tag, tag } from './page.js';
import type { Setting } from './setting.js';
import { BASELINE, mm } from './sheet.js';
import { sayWeeks, type WeekNote } from './week-notes.js';

export type Remark =
  /** Run on in one paragraph. */
  | { readonly kind: 'said'; readonly runs: (of: Tag) => readonly StyledRun[] }
  /** What must not be overlooked, led by its weeks. */
  | { readonly kind: 'led'; readonly notes: readonly WeekNote[] }
  /** A question, and a line for the answer. */
  | { readonly kind: 'asked'; readonly text: string }
  /** What follows from an answer, the same in all the weeks there are, or week by week. */
  | { readonly kind: 'choice'; readonly rows: readonly ChoiceRow[] }
  | { readonly kind: 'table'; readonly lines: readonly ChoiceLine[] };

export const ended = (text: string): string => (/[.!?:;…]$/.test(text) ? text : `${text}.`);

const LEAD_GAP = 8;

/** Weeks in a hanging column, the sentence beside them. */
function conditionSlugs(notes: readonly WeekNote[], td: Tag, setting: Setting): readonly Slug[] {
  const lead = (note: WeekNote): string => (note.always ? '' : sayWeeks(note.weeks));
  const widest = Math.max(0, ...notes.map((note) => setting.measure.width('label-strong', lead(note))));
  const hang = widest === 0 ? 0 : widest + LEAD_GAP;
  return notes.flatMap((note) => {
    const of = tag('P', td);
    return withNext(
      hangingItem(
        [{ style: 'label-strong', text: lead(note), tag: of }],
        [{ style: 'label', text: ended(note.text), tag: of }],
        hang,
        setting.measure,
        columnOf('table', setting.measure.sheet),
      ),
    );
  });
}

const SHORT_LINE = mm(20);

const questionRun = (text: string, td: Tag): StyledRun => ({ style: 'label', text, tag: tag('P', td) });

/** What was left is written down here, behind its question. */
function noteSlugs(text: string, td: Tag, setting: Setting): readonly Slug[] {
  const lines = layOutLines([questionRun(text, td)], setting.measure.sheet.tableWidth - SHORT_LINE, setting.measure);
  return lines.map((line, i) => ({
    lines: 1,
    area: 'table',
    boxes: i < lines.length - 1 ? line.boxes : [...line.boxes, rule(line.width + 4, BASELINE + 2, SHORT_LINE - 4)],
    withNext: true,
  }));
}

function paragraphSlugs(runs: readonly StyledRun[], { measure }: Setting): readonly Slug[] {
  const lines = layOutLines(runs, measure.sheet.tableWidth, measure);
  return withNext(lines.map((line): Slug => ({ ...line, area: 'table', withNext: true })));
}

function slugsOf(remark: Remark, td: Tag, setting: Setting): readonly Slug[] {
  switch (remark.kind) {
    case 'said':
      return paragraphSlugs(remark.runs(tag('P', td)), setting);
    case 'led':
      return conditionSlugs(remark.notes, td, setting);
    case 'asked':
      return noteSlugs(remark.text, td, setting);
    case 'choice':
      return choiceSlugs(remark.rows, td, setting);
    case 'table':
      return tableSlugs(remark.lines, td, setting);
  }
}

function itemsOf(remark: Remark, td: Tag, setting: Setting): readonly PackedItem[] {
  switch (remark.kind) {
    case 'said':
      return [{ runs: remark.runs(tag('P', td)) }];
    case 'led':
      return remark.notes.map((note) => ({ runs: weekRuns([{ ...note, text: ended(note.text) }], tag('P', td)) }));
    case 'asked':
      return [{ runs: [questionRun(remark.text, td)], toWrite: SHORT_LINE }];
    case 'choice':
      return choiceItems(remark.rows, td);
    case 'table':
      return tableItems(remark.lines, td, setting);
  }
}

/** `close`: as many on a line as it holds. */
export const layOutRemarks = (
  remarks: readonly Remark[],
  td: Tag,
  close: boolean,
  setting: Setting,
): readonly Slug[] =>
  close
    ? withNext(
        packed(
          remarks.flatMap((one) => itemsOf(one, td, setting)),
          setting.measure,
        ),
      )
    : remarks.flatMap((one) => slugsOf(one, td, setting));

/** What a feeler set leads to: for each thing it may have felt like, what is then used in which week. */
import type { ChoiceRow } from '../model/booklet.js';
import type { ChoiceLine } from './choice-table.js';
import { columnOf, hangingItem, type Slug, withNext } from './lay-out-blocks.js';
import { drawable, layOutLines, type StyledRun } from './lay-out-lines.js';
import type { PackedItem } from './lay-out-packed.js';
import { weekRuns } from './lay-out-week-runs.js';
import { type Box, moved, type Tag, tag } from './page.js';
import type { Setting } from './setting.js';
import { LINE } from './sheet.js';
import { weekNotes } from './week-notes.js';

const NO_BREAK = '\u00a0';
const LEAD_GAP = 8;
const CHOICE_GAP = 6;
const MOST_ACROSS = 6;

/** As many side by side as stand on one line each, in rows of one length. */
function choicesAcross(rows: readonly ChoiceRow[], { measure }: Setting): number {
  const widest = Math.max(
    1,
    ...rows.flatMap(({ felt, use }) => [measure.width('label', felt), measure.width('figure', drawable(use))]),
  );
  const most = Math.max(1, Math.min(MOST_ACROSS, Math.floor(measure.sheet.tableWidth / (widest + CHOICE_GAP))));
  return Math.max(1, Math.ceil(rows.length / Math.ceil(Math.max(1, rows.length) / most)));
}

/** What a feeler set felt like, side by side, and what to use then below it. */
export function choiceSlugs(rows: readonly ChoiceRow[], td: Tag, setting: Setting): readonly Slug[] {
  const list = tag('L', td);
  const across = choicesAcross(rows, setting);
  const width = setting.measure.sheet.tableWidth / across;
  const slugs: Slug[] = [];
  for (let from = 0; from < rows.length; from += across) {
    const boxes: Box[] = [];
    let lines = 0;
    rows.slice(from, from + across).forEach(({ felt, use }, i) => {
      const item = tag('LI', list);
      const set = (style: StyledRun['style'], text: string, of: Tag) =>
        layOutLines([{ style, text, tag: of }], width - CHOICE_GAP, setting.measure);
      const laid = [...set('label', felt, tag('Lbl', item)), ...set('figure', use, tag('LBody', item))];
      boxes.push(...laid.flatMap((line, n) => line.boxes.map((box) => moved(box, i * width, n * LINE))));
      lines = Math.max(lines, laid.length);
    });
    slugs.push({ lines, area: 'table', boxes, withNext: true });
  }
  return slugs;
}

interface Answer {
  readonly felt: StyledRun;
  readonly use: readonly StyledRun[];
}

/** For each thing it may have felt like, what each week uses then. */
function answersOf(lines: readonly ChoiceLine[], td: Tag, setting: Setting): readonly Answer[] {
  const list = tag('L', td);
  return lines.map(({ min, max, uses }) => {
    const item = tag('LI', list);
    const lead = tag('Lbl', item);
    const body = tag('LBody', item);
    const notes = weekNotes(uses);
    const led = notes.every(({ always }) => always) ? '' : `${setting.labels.week}${NO_BREAK}`;
    return {
      felt: { style: 'label-strong', text: setting.sayLeft(min, max), tag: lead },
      use: [{ style: 'label', text: led, tag: body }, ...weekRuns(notes, body)],
    };
  });
}

/** A line for each. */
export function tableSlugs(lines: readonly ChoiceLine[], td: Tag, setting: Setting): readonly Slug[] {
  const { measure } = setting;
  const answers = answersOf(lines, td, setting);
  const hang = Math.max(...answers.map(({ felt }) => measure.width('label-strong', felt.text))) + LEAD_GAP;
  return answers.flatMap(({ felt, use }) =>
    withNext(hangingItem([felt], use, hang, measure, columnOf('table', measure.sheet))),
  );
}

/** Each to stand among others on a line. */
const packedAnswers = (answers: readonly Answer[]): readonly PackedItem[] =>
  answers.map(({ felt, use }) => ({ runs: [{ ...felt, text: `${felt.text}${NO_BREAK} ` }, ...use] }));

export const tableItems = (lines: readonly ChoiceLine[], td: Tag, setting: Setting): readonly PackedItem[] =>
  packedAnswers(answersOf(lines, td, setting));

export function choiceItems(rows: readonly ChoiceRow[], td: Tag): readonly PackedItem[] {
  const list = tag('L', td);
  const answers = rows.map(({ felt, use }): Answer => {
    const item = tag('LI', list);
    const lead = tag('Lbl', item);
    return {
      felt: { style: 'label-strong', text: felt, tag: lead },
      use: [{ style: 'label', text: use, tag: tag('LBody', item) }],
    };
  });
  return packedAnswers(answers);
}

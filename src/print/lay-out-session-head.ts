/** What stands over the weeks of a session: its title, how long and how safe, the warm-up, and the heads of the weeks. */
import type { SessionPart } from '../model/booklet.js';
import { blankSlug, columnOf, lowered, paragraph, type Slug, title, together, withNext } from './lay-out-blocks.js';
import { layOutDrills } from './lay-out-drills.js';
import { layOutLines, readOn, type StyledRun, styledLine } from './lay-out-lines.js';
import type { WeekColumns } from './lay-out-session-row.js';
import { weekRuns } from './lay-out-week-runs.js';
import { type Box, emptyCell, moved, type Tag, tag } from './page.js';
import type { Setting } from './setting.js';
import { LINE } from './sheet.js';
import { weekNotes } from './week-notes.js';

/**
 * White around the coach's line: half a line above and below it, or a whole one; `least` leaves none over the weeks, and
 * `none` none at all.
 */
export type HeadAir = 'none' | 'least' | 'half' | 'whole';

/** Title; how long and how safe; the coach's line; warm-up. An empty line parts them from the weeks. */
export function introduction(
  part: SessionPart,
  setting: Setting,
  target: string,
  air: HeadAir,
  drills = layOutDrills,
): readonly Slug[] {
  const { measure } = setting;
  const column = columnOf('table', measure.sheet);
  const line = tag('P');
  const intro: readonly StyledRun[] = [
    { style: 'label-strong', text: `${part.minutes} `, tag: line },
    { style: 'label', text: part.safety, tag: line },
  ];
  const coach = part.workOnThis ? paragraph(styledLine(part.workOnThis, 'text', tag('P')), measure, column) : [];
  const warmUp = drills(setting.labels['warm-up'], part.warmUp, setting);
  const notes = weekParagraph('', part.notes, part.weeks.length, setting);
  const short = weekParagraph(setting.labels['bad-day'], part.short, part.weeks.length, setting);
  const blank = blankSlug(1, 'table');
  const isClose = air === 'none' || air === 'least';
  const coached = air === 'whole' ? [blank, ...coach] : air === 'none' ? coach : coach.map(lowered);
  // A line half-way down has an empty one after it.
  const isLowered = coach.length > 0 && (air === 'half' || air === 'least');
  return withNext([
    ...title(part.title, measure, { tag: tag('H2'), area: 'table', target, level: 1 }),
    ...paragraph(intro, measure, column),
    ...notes,
    ...short,
    ...(coach.length === 0 ? [] : coached),
    ...(warmUp.length === 0 || air === 'none' ? warmUp : [blank, ...warmUp]),
    ...(isLowered && warmUp.length === 0 ? [blank] : []),
    ...(isClose ? [] : [blank]),
  ]);
}

/** Sentences of single weeks, equal ones once, run on behind the word that says what they are. */
function weekParagraph(label: string, texts: SessionPart['short'], weeks: number, setting: Setting): readonly Slug[] {
  const notes = weekNotes(texts).map((note) => ({ ...note, always: note.weeks.length === weeks }));
  if (notes.length === 0) return [];
  const of = tag('P');
  const lead: readonly StyledRun[] = label === '' ? [] : [{ style: 'label-strong', text: `${label}: `, tag: of }];
  const week: readonly StyledRun[] = notes.every(({ always }) => always)
    ? []
    : [{ style: 'label', text: `${setting.labels.week} `, tag: of }];
  return together(
    paragraph([...lead, ...week, ...weekRuns(notes, of)], setting.measure, columnOf('table', setting.measure.sheet)),
  );
}

/** Week, date and, in an easier week, its name. Set again at the head of the second page, where it is not read again. */
export function weekHeads(columns: WeekColumns, setting: Setting, table?: Tag): Slug {
  const tr = table ? tag('TR', table) : undefined;
  const corner: readonly Box[] = tr
    ? [emptyCell(tag('TH', tr, { scope: 'Column', spoken: setting.labels.exercise }))]
    : [];
  const laid = columns.weeks.map((head) => {
    const of = tr ? { tag: tag('TH', tr, { scope: 'Column' }) } : {};
    const set = (runs: readonly StyledRun[]) => readOn(layOutLines(runs, columns.width - 2, setting.measure));
    return [
      ...set([
        { style: 'label', text: `${setting.labels.week} `, ...of },
        { style: 'figure', text: `${head.week}`, ...of },
      ]),
      ...set([{ style: 'label', text: head.dateText, ...of }]),
      ...(head.easy ? set([{ style: 'note-italic', text: setting.labels['easy-week'], ...of }]) : []),
    ];
  });
  const boxes: readonly Box[] = laid.flatMap((lines, i) =>
    lines.flatMap((line, n) => line.boxes.map((box) => moved(box, i * columns.width, n * LINE))),
  );
  return {
    lines: Math.max(2, ...laid.map((lines) => lines.length)),
    area: 'table',
    boxes: [...corner, ...boxes],
    withNext: true,
  };
}

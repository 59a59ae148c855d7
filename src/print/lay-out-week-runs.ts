/** Sentences or figures led by the numbers of the weeks they hold for, run on in one line. */
import type { StyledRun } from './lay-out-lines.js';
import type { Tag } from './page.js';
import { sayWeeks, type WeekNote } from './week-notes.js';

const NO_BREAK = '\u00a0';

export function weekRuns(notes: readonly WeekNote[], paragraph: Tag): readonly StyledRun[] {
  return notes.flatMap((note, i): readonly StyledRun[] => [
    ...(i > 0 ? [{ style: 'label' as const, text: `${NO_BREAK.repeat(2)} `, tag: paragraph }] : []),
    ...(note.always ? [] : [{ style: 'label-strong' as const, text: sayWeeks(note.weeks), tag: paragraph }]),
    ...(note.always ? [] : [{ style: 'label' as const, text: NO_BREAK.repeat(2), tag: paragraph }]),
    { style: 'label', text: note.text, tag: paragraph },
  ]);
}

/** The easier versions of an exercise: when to take one, what is planned for it each week, and where its page is. */
import type { EasierText, ExercisePart, SessionPart } from '../model/booklet.js';
import type { ExerciseId } from '../model/identity.js';
import { type Line, plainLine, plainText } from '../model/prose.js';
import { sentence } from '../words/rule-words.js';
import { columnOf, HANG, type Slug, slugsOf, together } from './lay-out-blocks.js';
import { layOutLines, layOutParagraph, readOn, type StyledRun, styledLine, taggedRuns } from './lay-out-lines.js';
import { weekRuns } from './lay-out-week-runs.js';
import { type Tag, tag } from './page.js';
import { pageLink } from './page-link.js';
import type { Setting } from './setting.js';
import { weekNotes } from './week-notes.js';

interface Planned {
  readonly session: SessionPart;
  readonly easier: EasierText;
}

interface EasierItem {
  readonly name: string;
  readonly exercise: ExerciseId | undefined;
  readonly when: Line;
  readonly planned: readonly Planned[];
}

const NO_BREAK = '\u00a0';

/** The page of a version that has one of its own. */
const pageIn = (planned: readonly Planned[]): ExerciseId | undefined =>
  planned.find(({ easier }) => easier.exercise !== undefined)?.easier.exercise;

/** Every easier version, those of the exercise's own page first; those that only a session names come last. */
function itemsOf(part: ExercisePart, setting: Setting): readonly EasierItem[] {
  const planned = setting.sessions.flatMap((session) =>
    session.rows
      .filter((row) => row.exercise === part.id)
      .flatMap((row) => row.easier.map((easier): Planned => ({ session, easier }))),
  );
  const written = part.sections.filter(({ name }) => name === 'easier').flatMap(({ lines }) => lines);
  const names = new Set(written.map(({ lead }) => plainText(lead)));
  const of = (name: string): readonly Planned[] => planned.filter(({ easier }) => easier.name === name);
  const others = [...new Set(planned.map(({ easier }) => easier.name))].filter((name) => !names.has(name));
  return [
    ...written.map(({ lead, text, exercise }) => ({
      name: plainText(lead),
      exercise: exercise ?? pageIn(of(plainText(lead))),
      when: text,
      planned: of(plainText(lead)),
    })),
    ...others.map((name) => ({
      name,
      exercise: pageIn(of(name)),
      when: plainLine(sentence(of(name)[0]?.easier.when ?? '')),
      planned: of(name),
    })),
  ];
}

/** A dose as short as `12 kg × 8` does not part at a line's end. */
const unparted = (dose: string): string => (dose.length <= SHORT ? dose.replaceAll(' ', NO_BREAK) : dose);
const SHORT = 18;

/** What every week of a session says, if they all say one thing: sessions of other weeks may then say it together. */
function alwaysSaid(doses: EasierText['doses']): string | undefined {
  const [only, ...others] = new Set(doses.map(({ text }) => text));
  return others.length === 0 ? only : undefined;
}

/** `Week 1–3 12 kg × 8, 4 12 kg × 9`: a line for each session, or one where all plan the same. */
function doseLines(planned: readonly Planned[], body: Tag, setting: Setting): readonly (readonly StyledRun[])[] {
  const dosed = planned.filter(({ easier }) => easier.doses.some(({ text }) => text !== ''));
  const same = new Set(dosed.map(({ easier }) => alwaysSaid(easier.doses) ?? JSON.stringify(easier.doses))).size <= 1;
  return (same ? dosed.slice(0, 1) : dosed).map(({ session, easier }): readonly StyledRun[] => {
    const notes = weekNotes(easier.doses).map((note) => ({ ...note, text: unparted(note.text) }));
    const led = notes.every((note) => note.always) ? '' : `${setting.labels.week}${NO_BREAK}`;
    const title = same ? '' : `${session.title}: `;
    return [{ style: 'label', text: `${title}${led}`, tag: body }, ...weekRuns(notes, body)];
  });
}

function itemSlugs(item: EasierItem, list: Tag, dash: boolean, tight: boolean, setting: Setting): readonly Slug[] {
  const { measure } = setting;
  const column = columnOf('text', measure.sheet, dash ? HANG : 0);
  const li = tag('LI', list);
  const label = tag('Lbl', li);
  const body = tag('LBody', li);
  const when = styledLine(item.when, 'text', body);
  const stopped = /[.!?]$/.test(item.name) || plainText(item.when) === '' ? '' : '.';
  const head: readonly StyledRun[] = [
    ...(item.name === ''
      ? []
      : taggedRuns([{ style: 'text-strong', text: `${item.name}${stopped} `, ...setting.ownName }], body)),
    ...when,
    ...pageLink(item.exercise, body, setting),
  ];
  const doses = doseLines(item.planned, body, setting);
  const gap: StyledRun = { style: 'label', text: `${NO_BREAK}${NO_BREAK} `, tag: body };
  const lines =
    tight && doses.length === 1 ? [[...head, ...doses.flatMap((line) => [gap, ...line])]] : [head, ...doses];
  const slugs = lines.flatMap((runs) =>
    slugsOf(readOn(layOutParagraph(runs, column.width, measure)), 'text', column.x),
  );
  const dashes = dash ? layOutLines([{ style: 'text', text: '–', tag: label }], column.width, measure) : [];
  return together(
    slugs.map((slug, i) =>
      i === 0 ? { ...slug, boxes: [...dashes.flatMap((line) => line.boxes), ...slug.boxes] } : slug,
    ),
  );
}

/** Whether an easier version is named. */
export const isEased = (part: ExercisePart, setting: Setting): boolean => itemsOf(part, setting).length > 0;

/** Empty where no easier version is named. `tight`: the figures run on, instead of standing on a line of their own. */
export function layOutEasier(part: ExercisePart, tight: boolean, setting: Setting): readonly Slug[] {
  const items = itemsOf(part, setting);
  const list = tag('L');
  return items.flatMap((item) => itemSlugs(item, list, items.length > 1, tight, setting));
}

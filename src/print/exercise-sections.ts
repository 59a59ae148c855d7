/** What is written of an exercise, section by section, each with its title in the margin: whichever page it comes to stand on. */
import type { ExercisePart } from '../model/booklet.js';
import { plainText } from '../model/prose.js';
import { blankSlug, linesOf, paragraph, type Slug } from './lay-out-blocks.js';
import { isEased, layOutEasier } from './lay-out-easier.js';
import { layOutLines, type StyledRun, styledLine } from './lay-out-lines.js';
import { columned, runIn } from './lay-out-list.js';
import { layOutStopFrame } from './lay-out-stop-frame.js';
import { weekRuns } from './lay-out-week-runs.js';
import { moved, tag } from './page.js';
import { pageLink } from './page-link.js';
import type { Setting } from './setting.js';
import { LINE } from './sheet.js';
import { sayWeeks, type WeekNote, weekNotes } from './week-notes.js';

type Section = ExercisePart['sections'][number];

/** A section with its title in the margin beside its first lines, never parted from them. */
export function marginSection(heading: string, body: readonly Slug[], setting: Setting): readonly Slug[] {
  const { measure } = setting;
  const { marginWidth } = measure.sheet;
  const head = layOutLines([{ style: 'label-strong', text: heading, tag: tag('H3') }], marginWidth, measure);
  const room = linesOf(body);
  const padded = room < head.length ? [...body, blankSlug(head.length - room)] : body;
  const boxes = head.flatMap((line, n) => line.boxes.map((box) => moved(box, 0, n * LINE)));
  return padded.map((slug, i) => ({
    ...slug,
    ...(i === 0 ? { beside: { boxes } } : {}),
    withNext: slug.withNext || i < head.length - 1,
  }));
}

/** Why the figures are what they are: all that is said of the same weeks together, and the same thing only once. */
function whyNotes(part: ExercisePart, setting: Setting): readonly WeekNote[] {
  const notes = new Map<string, { weeks: readonly number[]; texts: Set<string> }>();
  for (const row of setting.sessions.flatMap((session) => session.rows)) {
    const said = row.cells
      .filter((cell) => cell.exercise === part.id)
      .flatMap((cell) => cell.why.map((text) => ({ week: cell.week, text })));
    for (const { weeks, text } of weekNotes(said)) {
      const held = notes.get(sayWeeks(weeks)) ?? { weeks, texts: new Set() };
      held.texts.add(text);
      notes.set(sayWeeks(weeks), held);
    }
  }
  return [...notes.values()].map(({ weeks, texts }) => ({ weeks, text: [...texts].join(' '), always: false }));
}

function whySlugs(notes: readonly WeekNote[], setting: Setting): readonly Slug[] {
  const of = tag('P');
  const label: StyledRun = { style: 'label', text: `${setting.labels.week} `, tag: of };
  return paragraph([label, ...weekRuns(notes, of)], setting.measure);
}

const CUE_LEAD = 0.3;
const FAULT_LEAD = 0.4;

/** What a combination is made of: each part with its page, then how they follow one another. */
function partsSlugs({ lines }: Section, setting: Setting): readonly Slug[] {
  const list = tag('L');
  return lines.flatMap(({ lead, text, exercise }) => {
    const of = lead.length === 0 ? tag('P') : tag('LBody', tag('LI', list));
    const named = plainText(lead);
    const runs: readonly StyledRun[] = [
      ...(named === '' ? [] : [{ style: 'text-strong' as const, text: named, tag: of }]),
      ...pageLink(exercise, of, setting),
      ...styledLine(text, 'text', of),
    ];
    return paragraph(runs, setting.measure);
  });
}

function sectionSlugs(section: Section, setting: Setting): readonly Slug[] {
  switch (section.name) {
    case 'cues':
      return columned(section.lines, CUE_LEAD, 'text-strong', setting.measure);
    case 'faults':
      return columned(section.lines, FAULT_LEAD, 'text-italic', setting.measure);
    case 'parts':
      return partsSlugs(section, setting);
    case 'set-up':
    case 'pick up':
    case 'put down':
    case 'breath':
    case 'easier':
    case 'harder':
    case 'film':
    case 'partner':
      return runIn(section.lines, setting.measure);
  }
}

export type Kind = Section['name'] | 'why' | 'stop';
export interface Laid {
  readonly kind: Kind;
  readonly slugs: readonly Slug[];
}

/** What is not about doing the exercise itself; easier versions and stop signs come before it. */
const AFTERWARDS: readonly Kind[] = ['harder', 'film', 'partner'];
export const isNeeded = (kind: Kind): boolean => kind !== 'why' && !AFTERWARDS.includes(kind);

/** One section in each way it may be set: each is set when it is first asked for, and then kept. */
export interface SectionWays {
  readonly kind: Kind;
  /** Tight or not, in a column narrower by so much. */
  readonly slugs: (tight: boolean, narrower: number) => readonly Slug[];
}

export function narrowed(setting: Setting, by: number): Setting {
  if (by === 0) return setting;
  const { measure } = setting;
  const { sheet } = measure;
  return { ...setting, measure: { ...measure, sheet: { ...sheet, textWidth: sheet.textWidth - by } } };
}

type SetSection = (tight: boolean, setting: Setting) => readonly Slug[];

/** Easier versions alone are set tight; of the rest either is the same. */
const isTight = (kind: Kind, tight: boolean): boolean => tight && kind === 'easier';

function waysOf(kind: Kind, setting: Setting, set: SetSection, draft: SectionWays | undefined): SectionWays {
  const known = new Map<string, readonly Slug[]>();
  return {
    kind,
    slugs: (tight, narrower) => {
      const key = `${isTight(kind, tight)} ${narrower}`;
      const kept = known.get(key);
      if (kept) return kept;
      const before = draft?.slugs(tight, narrower);
      const slugs = before && !refers(before) ? before : set(tight, narrowed(setting, narrower));
      known.set(key, slugs);
      return slugs;
    },
  };
}

/** Whether a page is named in it. */
const refers = (slugs: readonly Slug[]): boolean =>
  slugs.some(({ boxes }) => boxes.some((box) => box.kind === 'text' && box.to !== undefined));

/** `draft`: the same before the pages were known. What names none of them is taken over from it. */
export function exerciseSections(
  part: ExercisePart,
  setting: Setting,
  draft?: readonly SectionWays[],
): readonly SectionWays[] {
  const written = part.sections
    .filter(({ lines, name }) => lines.length > 0 && name !== 'easier')
    .map((section): readonly [Kind, SetSection] => [
      section.name,
      (_, within) => marginSection(section.title, sectionSlugs(section, within), within),
    ]);
  const easierTitle = part.sections.find(({ name }) => name === 'easier')?.title ?? setting.labels.easier;
  const why = whyNotes(part, setting);
  const all: readonly (readonly [Kind, SetSection])[] = [
    ...written.filter(([kind]) => !AFTERWARDS.includes(kind)),
    ['easier', (tight, within) => marginSection(easierTitle, layOutEasier(part, tight, within), within)],
    ['stop', (_, within) => layOutStopFrame(part.stopTitle, part.stop, [], within)],
    ...written.filter(([kind]) => AFTERWARDS.includes(kind)),
    ['why', (_, within) => marginSection(setting.labels.why, whySlugs(why, within), within)],
  ];
  const said = (kind: Kind): boolean =>
    kind === 'easier'
      ? isEased(part, setting)
      : kind === 'stop'
        ? part.stop.length > 0
        : kind !== 'why' || why.length > 0;
  return all
    .filter(([kind]) => said(kind))
    .map(([kind, set]) =>
      waysOf(
        kind,
        setting,
        set,
        draft?.find((one) => one.kind === kind),
      ),
    );
}

/** What is written of an exercise, section by section, each with its title in the margin: whichever page it comes to stand on. */
import type { ExercisePart } from '../model/booklet.js';
import { plainText } from '../model/prose.js';
import { blankSlug, linesOf, paragraph, type Slug } from './lay-out-blocks.js';
import { isEased, layOutEasier } from './lay-out-easier.js';
import { layOutLines, type StyledRun, styledLine } from './lay-out-lines.js';
import { columned, ledItems, runIn, runOn } from './lay-out-list.js';
import { layOutStopFrame } from './lay-out-stop-frame.js';
import { moved, tag } from './page.js';
import { pageLink } from './page-link.js';
import type { Setting } from './setting.js';
import { LINE } from './sheet.js';

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

/** Led by the session and the weeks it holds for; what holds throughout is led by nothing. */
function whySlugs(why: NonNullable<ExercisePart['why']>, { measure }: Setting): readonly Slug[] {
  const of = tag('P');
  const runs = why.flatMap(({ lead, text }, i): readonly StyledRun[] => [
    ...(i > 0 ? [{ style: 'label' as const, text: `${NO_BREAK}${NO_BREAK} `, tag: of }] : []),
    ...(lead === '' ? [] : [{ style: 'label-strong' as const, text: `${lead}${NO_BREAK} `, tag: of }]),
    { style: 'label', text, tag: of },
  ]);
  return paragraph(runs, measure);
}

const NO_BREAK = '\u00a0';
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

function sectionSlugs(section: Section, room: Room, setting: Setting): readonly Slug[] {
  switch (section.name) {
    case 'cues':
      return columned(section.lines, CUE_LEAD, 'text-strong', setting.measure);
    case 'faults':
      return room === 'closest'
        ? ledItems(section.lines, 'text-italic', setting.measure)
        : columned(section.lines, FAULT_LEAD, 'text-italic', setting.measure);
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
      return room === 'closest' ? runOn(section.lines, setting.measure) : runIn(section.lines, setting.measure);
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

/**
 * How roomy a section is set: `tight`, the figures of easier versions run on behind their words; `closest`, what is listed
 * line by line runs on as well, and what is said to a fault behind what is seen of it.
 */
export type Room = 'loose' | 'tight' | 'closest';

/** One section in each way it may be set: each is set when it is first asked for, and then kept. */
export interface SectionWays {
  readonly kind: Kind;
  /** In a column narrower by so much. */
  readonly slugs: (room: Room, narrower: number) => readonly Slug[];
}

export function narrowed(setting: Setting, by: number): Setting {
  if (by === 0) return setting;
  const { measure } = setting;
  const { sheet } = measure;
  return { ...setting, measure: { ...measure, sheet: { ...sheet, textWidth: sheet.textWidth - by } } };
}

type SetSection = (room: Room, setting: Setting) => readonly Slug[];

/** The roomiest that is set alike. */
function roomOf(kind: Kind, room: Room): Room {
  if (kind === 'easier') return room === 'loose' ? 'loose' : 'tight';
  return room === 'closest' ? 'closest' : 'loose';
}

function waysOf(kind: Kind, setting: Setting, set: SetSection, draft: SectionWays | undefined): SectionWays {
  const known = new Map<string, readonly Slug[]>();
  return {
    kind,
    slugs: (asked, narrower) => {
      const room = roomOf(kind, asked);
      const key = `${room} ${narrower}`;
      const kept = known.get(key);
      if (kept) return kept;
      const before = draft?.slugs(room, narrower);
      const slugs = before && !refers(before) ? before : set(room, narrowed(setting, narrower));
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
      (room, within) => marginSection(section.title, sectionSlugs(section, room, within), within),
    ]);
  const easierTitle = part.sections.find(({ name }) => name === 'easier')?.title ?? setting.labels.easier;
  const { why = [] } = part;
  const all: readonly (readonly [Kind, SetSection])[] = [
    ...written.filter(([kind]) => !AFTERWARDS.includes(kind)),
    ['easier', (room, within) => marginSection(easierTitle, layOutEasier(part, room !== 'loose', within), within)],
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

/** An exercise on its page: titles of its sections in the margin, what to do beside them, stop signs last and framed. */
import type { EasierText, ExercisePart, SessionPart } from '../model/booklet.js';
import { type Line, plainLine, plainText } from '../model/prose.js';
import { type Block, blankSlug, block, linesOf, paragraph, type Slug, title } from './lay-out-blocks.js';
import { layOutLines, styledLine } from './lay-out-lines.js';
import { columned, type LedLine, runIn } from './lay-out-list.js';
import type { Chapter } from './lay-out-pages.js';
import { layOutStopFrame } from './lay-out-stop-frame.js';
import { moved, tag } from './page.js';
import { exerciseTarget, type Setting } from './setting.js';
import { LINE, LINES_ON_PAGE, MARGIN_WIDTH } from './sheet.js';
import { sayWeeks, weekNotes } from './week-notes.js';

type Section = ExercisePart['sections'][number];

/** A section with its title in the margin beside its first lines, never parted from them. */
function marginSection(heading: string, body: readonly Slug[], setting: Setting): readonly Slug[] {
  const head = layOutLines([{ style: 'label-strong', text: heading, tag: tag('H3') }], MARGIN_WIDTH, setting.measure);
  const room = linesOf(body);
  const padded = room < head.length ? [...body, blankSlug(head.length - room)] : body;
  const boxes = head.flatMap((line, n) => line.boxes.map((box) => moved(box, 0, n * LINE)));
  return padded.map((slug, i) => ({
    ...slug,
    ...(i === 0 ? { beside: { boxes } } : {}),
    withNext: slug.withNext || i < head.length - 1,
  }));
}

interface EasierDoses {
  readonly session: SessionPart;
  readonly easier: EasierText;
}

function easierOf(part: ExercisePart, setting: Setting): readonly EasierDoses[] {
  return setting.sessions.flatMap((session) =>
    session.rows
      .filter((row) => row.exercise === part.id)
      .flatMap((row) => row.easier.filter((one) => one.doses.length > 0).map((easier) => ({ session, easier }))),
  );
}

/** `1–3 12 kg × 8; 4 12 kg × 9`: the easier version's figures, with the session where there is more than one. */
function sayDoses(of: readonly EasierDoses[], label: string): string {
  const many = new Set(of.map(({ session }) => session.id)).size > 1;
  const said = of.map(({ session, easier }) => {
    const doses = weekNotes(easier.doses)
      .map((note) => (note.always ? note.text : `${label} ${sayWeeks(note.weeks)}: ${note.text}`))
      .join('; ');
    return many ? `${session.title}: ${doses}.` : `${doses}.`;
  });
  return [...new Set(said)].join(' ');
}

/** The section's lines, each followed by what is planned for it; versions that only a session names come last. */
function easierLines(section: Section | undefined, part: ExercisePart, setting: Setting): readonly LedLine[] {
  const planned = easierOf(part, setting);
  const written = section?.lines ?? [];
  const names = new Set(written.map(({ lead }) => plainText(lead)));
  const dosed = written.map((line) => {
    const own = planned.filter(({ easier }) => easier.name === plainText(line.lead));
    return own.length === 0 ? line : { ...line, text: followed(line.text, sayDoses(own, setting.labels.week)) };
  });
  const unwritten = [...new Set(planned.map(({ easier }) => easier.name))].filter((name) => !names.has(name));
  return [
    ...dosed,
    ...unwritten.map((name) => {
      const own = planned.filter(({ easier }) => easier.name === name);
      const when = plainLine(own[0]?.easier.when ?? '');
      return { lead: plainLine(name), text: followed(when, sayDoses(own, setting.labels.week)) };
    }),
  ];
}

/** A sentence after a line that may be empty, or may not have ended. */
function followed(line: Line, sentence: string): Line {
  const text = plainText(line);
  const between = text === '' ? '' : /[.!?]$/.test(text) ? ' ' : '. ';
  return [...line, { text: `${between}${sentence}` }];
}

function whyLines(part: ExercisePart, setting: Setting): readonly LedLine[] {
  return setting.sessions.flatMap((session) =>
    session.rows.flatMap((row) => {
      const said = row.cells
        .filter((cell) => cell.exercise === part.id)
        .flatMap((cell) => cell.why.map((text) => ({ week: cell.week, text })));
      return weekNotes(said).map((note) => ({
        lead: plainLine(`${setting.labels.week} ${sayWeeks(note.weeks)}`),
        text: plainLine(note.text),
      }));
    }),
  );
}

const CUE_LEAD = 0.3;
const FAULT_LEAD = 0.4;

function sectionSlugs(section: Section, setting: Setting): readonly Slug[] {
  switch (section.name) {
    case 'cues':
      return columned(section.lines, CUE_LEAD, 'text-strong', setting.measure);
    case 'faults':
      return columned(section.lines, FAULT_LEAD, 'text-italic', setting.measure);
    case 'set-up':
    case 'pick up':
    case 'put down':
    case 'breath':
    case 'easier':
    case 'harder':
    case 'partner':
      return runIn(section.lines, setting.measure);
  }
}

type Kind = Section['name'] | 'why' | 'stop';
interface Laid {
  readonly kind: Kind;
  readonly slugs: readonly Slug[];
}

/** What is not about doing the exercise itself; the easier version comes before it. */
const AFTERWARDS: readonly Kind[] = ['harder', 'partner'];

function laidSections(part: ExercisePart, setting: Setting): readonly Laid[] {
  const { measure } = setting;
  const written = part.sections.filter((section) => section.lines.length > 0 && section.name !== 'easier');
  const laid = written.map(
    (section): Laid => ({
      kind: section.name,
      slugs: marginSection(section.title, sectionSlugs(section, setting), setting),
    }),
  );
  const easier = part.sections.find((section) => section.name === 'easier');
  const lines = easierLines(easier, part, setting);
  const easierLaid: readonly Laid[] =
    lines.length === 0
      ? []
      : [
          {
            kind: 'easier',
            slugs: marginSection(easier?.title ?? setting.labels.easier, runIn(lines, measure), setting),
          },
        ];
  const why = whyLines(part, setting);
  const whyLaid: readonly Laid[] =
    why.length === 0
      ? []
      : [
          {
            kind: 'why',
            slugs: marginSection(setting.labels.why, columned(why, CUE_LEAD, 'text-strong', measure), setting),
          },
        ];
  const stop: readonly Laid[] =
    part.stop.length === 0 ? [] : [{ kind: 'stop', slugs: layOutStopFrame(part.stopTitle, part.stop, [], setting) }];
  return [
    ...laid.filter(({ kind }) => !AFTERWARDS.includes(kind)),
    ...easierLaid,
    ...laid.filter(({ kind }) => AFTERWARDS.includes(kind)),
    ...whyLaid,
    ...stop,
  ];
}

/** Where an empty line is most welcome, if the page has not room for one before every section. */
const AIR: readonly Kind[] = [
  'stop',
  'cues',
  'faults',
  'easier',
  'set-up',
  'breath',
  'partner',
  'why',
  'pick up',
  'harder',
  'put down',
];

function airBefore(sections: readonly Laid[], room: number): ReadonlySet<Kind> {
  const kinds = AIR.filter((kind) => sections.some((section) => section.kind === kind));
  return new Set(kinds.slice(0, Math.max(0, room)));
}

export function layOutExercise(part: ExercisePart, setting: Setting): Chapter {
  const { measure } = setting;
  const heading = title(part.title, measure, { tag: tag('H2'), target: exerciseTarget(part.id), level: 1 });
  const description = part.description.flatMap((line) => paragraph(styledLine(line, 'text', tag('P')), measure));
  const sections = laidSections(part, setting);
  const used = linesOf([...heading, ...description, ...sections.flatMap(({ slugs }) => slugs)]);
  const air = used > LINES_ON_PAGE ? new Set(AIR) : airBefore(sections, LINES_ON_PAGE - used);
  const blocks: readonly Block[] = [
    block([...heading, ...description]),
    ...sections.map(({ kind, slugs }) => block(slugs, { whole: true, before: air.has(kind) ? 1 : 0 })),
  ];
  return { start: 'page', running: part.title, blocks };
}

/** The words of a booklet for a typesetter that reads markup of its own: as plain as it can be said, with the same tables and drawings. */
import type { Booklet, Part, SessionRow } from '../../src/model/booklet.js';
import { type Line, plainText } from '../../src/model/prose.js';

/** A text as the typesetter’s own string: nothing in it is markup. */
const said = (text: string): string => `#${JSON.stringify(text)};`;
const line = (of: Line): string => said(plainText(of));
const items = (lines: readonly string[]): string => lines.map((one) => `- ${one}\n`).join('');
const heading = (level: number, text: string): string => `\n${'='.repeat(level)} ${said(text)}\n`;
const cell = (text: string): string => `[${said(text)}]`;

function table(columns: number, head: readonly string[], rows: readonly (readonly string[])[]): string {
  const of = (cells: readonly string[]): string => cells.map(cell).join(', ');
  const body = rows.map((cells) => `  ${of(cells)},\n`).join('');
  return `\n#table(columns: (1fr,) * ${columns}, table.header(${of(head)}),\n${body})\n`;
}

const framed = (title: string, lines: readonly Line[]): string =>
  `\n#block(stroke: 2pt, inset: 6pt, width: 100%)[${said(title)}\n${items(lines.map(line))}]\n`;

const chosen = ({ intro, rows }: NonNullable<SessionRow['cells'][number]['choose']>): string =>
  `${said(intro)}${table(
    2,
    ['', ''],
    rows.map(({ felt, use }) => [felt, use]),
  )}`;

/** A row with a column a week: figures, tally and a line to write on. */
function weeks(row: SessionRow): string {
  const { cells } = row;
  const feet = cells.map(({ tally }) => tally.map(({ strokes }) => "' ".repeat(strokes)).join(' '));
  return [
    heading(3, row.name),
    said(`${row.rest} ${row.group} ${row.sides}`),
    table(
      cells.length,
      cells.map(({ week }) => String(week)),
      [cells.map(({ stack }) => stack.join('\n')), feet, cells.map(() => '____')],
    ),
    ...cells.flatMap(({ gate }) => (gate === undefined ? [] : [said(`${gate.needs} ${gate.otherwise}`)])),
    // As on paper, a table that holds for several weeks is said once.
    ...new Set(cells.flatMap(({ choose }) => (choose === undefined ? [] : [chosen(choose)]))),
    items(cells.flatMap(({ why }) => why).map(said)),
  ].join('\n');
}

/** `drawn`: the name of the picture of an exercise and what it shows, or nothing. */
type Drawn = (exercise: string) => { readonly file: string; readonly alt: string } | undefined;

function partOf(part: Part, drawn: Drawn): string {
  switch (part.kind) {
    case 'cover':
      return (
        heading(1, part.client) +
        [part.title, part.programme, part.dates, part.studio, part.notMedical].map(said).join('\n\n')
      );
    case 'how-to':
      return (
        heading(1, part.title) + part.paragraphs.map(line).join('\n\n') + items(part.key.map(({ text }) => said(text)))
      );
    case 'safety':
      return [
        heading(1, part.title),
        framed(part.emergencyTitle, part.emergency),
        said(part.call),
        heading(2, part.painTitle),
        table(
          2,
          ['', ''],
          part.pain.map(({ degree, text }) => [degree, text]),
        ),
        part.paragraphs.map(line).join('\n\n'),
      ].join('\n');
    case 'calendar':
      return (
        heading(1, part.title) +
        part.weeks
          .map(
            ({ label, sessions }) =>
              heading(2, label) + items(sessions.map(({ name, dateText }) => said(`${dateText} ${name}`))),
          )
          .join('')
      );
    case 'session':
      return [
        heading(2, part.title),
        said(`${part.minutes} ${part.safety}`),
        items([...part.warmUp, ...part.coolDown].map(({ name, text }) => said(`${name} ${text}`))),
        ...part.rows.map(weeks),
      ].join('\n');
    case 'exercise': {
      const picture = drawn(part.id);
      return [
        heading(2, part.title),
        part.description.map(line).join('\n\n'),
        picture === undefined
          ? ''
          : `#image(${JSON.stringify(picture.file)}, alt: ${JSON.stringify(picture.alt)}, width: 60%)`,
        ...part.sections.map(
          ({ title, lines }) =>
            heading(3, title) + items(lines.map(({ lead, text }) => `*${line(lead)}* ${line(text)}`)),
        ),
        framed(part.stopTitle, part.stop),
        items((part.why ?? []).map(({ lead, text }) => said(`${lead} ${text}`))),
      ].join('\n');
    }
    case 'partner':
      return [
        heading(1, part.title),
        part.paragraphs.map(line).join('\n\n'),
        ...part.watched.map(
          ({ name, count, watch, stop }) =>
            heading(2, name) + items([...count.map(said), ...watch.map(line), ...stop.map(line)]),
        ),
      ].join('\n');
    case 'record':
      return (
        heading(1, part.title) + part.paragraphs.map(line).join('\n\n') + '\n#line(length: 100%)\n'.repeat(part.lines)
      );
  }
}

export const typstSource = ({ parts, title, language }: Booklet, drawn: Drawn): string =>
  [
    `#set document(title: ${JSON.stringify(title)})`,
    `#set page(paper: "a5", margin: 16mm, numbering: "1")`,
    `#set text(lang: ${JSON.stringify(language.split('-')[0])}, font: "Literata", size: 10.5pt)`,
    '#show heading: set text(font: "Alegreya Sans", weight: 700)',
    '#set table(stroke: 0.5pt)',
    ...parts.map(
      (part, i) =>
        `${i === 0 ? '' : part.kind === 'exercise' || part.kind === 'session' ? '\n#pagebreak(weak: true)\n' : ''}${partOf(part, drawn)}`,
    ),
  ].join('\n');

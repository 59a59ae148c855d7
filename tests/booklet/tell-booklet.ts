/** A booklet as plain text a coach could read, for goldens and for reading every word of it. */
import type { Booklet, Cell, Drill, Part, SessionPart } from '../../src/model/booklet.js';
import { type Line, plainText } from '../../src/model/prose.js';

const tellLine = ({ lead, text }: { readonly lead: Line; readonly text: Line }): string =>
  [plainText(lead), plainText(text)].filter((said) => said !== '').join(': ');

const lines = (all: readonly Line[], lead = '  '): readonly string[] => all.map((line) => `${lead}${plainText(line)}`);

export function tellBooklet(booklet: Booklet): string {
  const head = `${booklet.title} (${booklet.language}, ${booklet.direction}, ${booklet.paper}, by ${booklet.author}, ${booklet.date})`;
  const told = [head, ...booklet.parts.flatMap((part) => ['', ...tellPart(part)])].map((line) => line.trimEnd());
  return `${told.join('\n').replaceAll('\u00a0', ' ')}\n`;
}

function tellPart(part: Part): readonly string[] {
  switch (part.kind) {
    case 'cover':
      return [
        `COVER ${part.client}: ${part.title}`,
        `  ${part.programme}, ${part.dates}, ${part.edition}`,
        `  ${part.studio}, ${part.coach}`,
        `  ${part.weeks.map(({ week, dateText, easy }) => `${week} ${dateText}${easy ? ' easier' : ''}`).join(' | ')}`,
        `  ${part.notMedical}`,
      ];
    case 'how-to':
      return [`HOW TO ${part.title}`, ...lines(part.paragraphs), `  ${part.key.map(({ text }) => text).join(' ')}`];
    case 'safety':
      return [
        `SAFETY ${part.title}`,
        `  ${part.emergencyTitle}`,
        ...lines(part.emergency, '  - '),
        `  ${part.call}`,
        `  ${part.painTitle}`,
        ...part.pain.map(({ degree, text }) => `  - ${degree}: ${text}`),
        ...lines(part.paragraphs),
      ];
    case 'calendar':
      return [
        `CALENDAR ${part.title}`,
        ...lines(part.notes),
        ...part.weeks.map(
          ({ label, easy, empty, sessions }) =>
            `  ${label}${easy ? ', easier' : ''}: ${empty}${sessions.map((one) => `${one.occurrence}. ${one.name}, ${one.dateText}${one.test === undefined ? '' : `, ${one.test}`}`).join('; ')}`,
        ),
      ];
    case 'session':
      return tellSession(part);
    case 'exercise':
      return [
        `EXERCISE ${part.title}`,
        ...lines(part.description),
        ...part.sections.map(({ title, lines: of }) => `  ${title}: ${of.map(tellLine).join(' / ')}`),
        `  ${part.stopTitle}: ${part.stop.map(plainText).join(' / ')}`,
        ...(part.why ?? []).map(({ lead, text }) => `  Why: ${[lead, text].filter((said) => said !== '').join(': ')}`),
      ];
    case 'partner':
      return [
        `PARTNER ${part.title}`,
        ...lines(part.paragraphs),
        ...part.sessions.map(({ title, exercises }) => `  ${title}: ${exercises.join(', ')}`),
        ...part.watched.flatMap(({ name, count, watch, faults, stop }) => [
          `  ${name}: ${[...count, ...watch.map(plainText)].join(' / ')}`,
          ...faults.map(({ see, say }) => `    ${plainText(see)}: ${plainText(say)}`),
          ...stop.map((line) => `    ${part.stopTitle}: ${plainText(line)}`),
        ]),
      ];
    case 'record':
      return [`RECORD ${part.title}, ${part.lines} lines`, ...lines(part.paragraphs)];
  }
}

const tellDrill = ({ name, exercise, text }: Drill): string =>
  name === '' ? text : `${name}: ${text}${exercise === undefined ? '' : ` (page of ${exercise})`}`;

function tellSession(part: SessionPart): readonly string[] {
  return [
    `SESSION ${part.title}. ${part.minutes}`,
    `  ${part.safety}`,
    ...(part.workOnThis ? [`  Work on this: ${plainText(part.workOnThis)}`] : []),
    ...part.notes.map(({ week, text }) => `  Note, week ${week}: ${text}`),
    ...part.short.map(({ week, text }) => `  On a bad day, week ${week}: ${text}`),
    ...part.warmUp.map((drill) => `  Before: ${tellDrill(drill)}`),
    ...part.coolDown.map((drill) => `  After: ${tellDrill(drill)}`),
    ...part.rows.flatMap((row) => [
      `  ${[row.name, row.rest, row.group, row.sides].filter((said) => said !== '').join(' / ')}`,
      ...lines(row.cues, '    - '),
      ...lines(row.stop, '    Stop: '),
      ...row.easier.map(
        ({ name, when, doses }) =>
          `    Easier: ${name} ${when}${doses.length === 0 ? '' : ` (${doses.map(({ text }) => text).join(' | ')})`}`,
      ),
      ...row.cells.flatMap(tellCell),
    ]),
  ];
}

function tellCell(cell: Cell): readonly string[] {
  const tally = cell.tally.map(({ label, strokes }) => `${label}${"'".repeat(strokes)}`).join(' ');
  const head = [cell.version, cell.stack.join(' '), tally, cell.effort, cell.tempo, ...cell.how].filter(
    (said) => said !== '',
  );
  return [
    `    ${cell.week}: ${head.join(' / ')}`,
    ...(cell.trial === undefined ? [] : [`       ${cell.trial}`]),
    ...(cell.gate === undefined ? [] : [`       ${cell.gate.needs} ${cell.gate.otherwise}`]),
    ...(cell.choose === undefined
      ? []
      : [
          `       ${cell.choose.intro}`,
          ...(cell.choose.note === undefined ? [] : [`       ${cell.choose.note} ____`]),
          ...cell.choose.rows.map(({ felt, use }) => `       ${felt}: ${use}`),
        ]),
    ...(cell.test === undefined
      ? []
      : [
          `       ${[cell.test.says, cell.test.stack.join(' ')].filter((said) => said !== '').join(' Beside the work: ')}`,
          ...cell.test.notes.map((note) => `       ${note} ____`),
        ]),
    ...(cell.why.length === 0 ? [] : [`       Why: ${cell.why.join(' ')}`]),
  ];
}

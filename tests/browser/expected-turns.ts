/** What a booklet should read like, taken from the model alone and not by way of the layouts. */
import type { Booklet, Cell, SessionPart, SessionRow, WeekHead } from '../../src/model/booklet.js';
import { type Line, plainText } from '../../src/model/prose.js';
import type { ReadTurn } from './read-booklet-back.js';

const lines = (of: readonly Line[]): readonly string[] => of.map(plainText);

/** The version's own cues and stop signs where this week's exercise is another one with a page. */
function told(booklet: Booklet, row: SessionRow, cell: Cell): { cues: readonly string[]; stop: readonly string[] } {
  const own = booklet.parts.find((part) => part.kind === 'exercise' && part.id === cell.exercise);
  if (cell.exercise === row.exercise || own?.kind !== 'exercise')
    return { cues: lines(row.cues), stop: lines(row.stop) };
  const cues = own.sections.find(({ name }) => name === 'cues')?.lines.slice(0, 3) ?? [];
  return { cues: cues.map(({ text }) => plainText(text)), stop: lines(own.stop) };
}

/** Equal sets together, in the order done: their figure once, with their number and the side that begins. */
function expectedSets(booklet: Booklet, cell: Cell) {
  const { labels } = booklet;
  const alike = [...new Set(cell.sets.map(({ kind, text }) => `${kind} ${text}`))];
  return alike.map((like) => {
    const sets = cell.sets.filter(({ kind, text }) => `${kind} ${text}` === like);
    const { kind, side, text, spoken } = sets[0] ?? { kind: '', text: '', spoken: '', side: undefined };
    const countOf = (one: typeof side): number => sets.filter((set) => set.side === one).length;
    const counted = (count: number): string => `${count}\u00a0${count === 1 ? 'set' : 'sets'}`;
    const other = side === 'left' ? 'right' : 'left';
    const count = counted(countOf(side));
    const above: Readonly<Record<string, string>> = {
      'warm-up': labels['warm-up'],
      feeler: 'Feeler set',
      trial: cell.trial ?? '',
      work: cell.gate ? 'Only if earned' : '',
    };
    return {
      figure: text,
      counted:
        side === undefined
          ? count
          : countOf(side) === countOf(other)
            ? `${count} each side, ${labels[side].toLowerCase()} first`
            : ([side, other] as const)
                .filter((one) => countOf(one) > 0)
                .map((one) => `${labels[one]}: ${counted(countOf(one))}`)
                .join(', '),
      heard: spoken,
      above: above[kind] ?? '',
    };
  });
}

function expectedTurn(
  booklet: Booklet,
  session: SessionPart,
  head: WeekHead,
  row: SessionRow,
  cell: Cell,
  place: string,
) {
  const { cues, stop } = told(booklet, row, cell);
  return {
    where: `${session.title}, week ${head.week} ${place}`,
    name: cell.version === '' ? row.name : cell.version,
    sets: expectedSets(booklet, cell),
    cues,
    stop,
    easier: row.easier.map(({ name, when, doses }) => {
      const dose = doses.find(({ week }) => week === head.week)?.text ?? '';
      return `${name}${when === '' ? '' : `, ${when}`}${dose === '' ? '' : `: ${dose}`}`;
    }),
  };
}

/** In order of week, date and session. */
function expectedCells(booklet: Booklet) {
  const days = booklet.parts
    .flatMap((part) => (part.kind === 'session' ? part.weeks.map((head) => ({ session: part, head })) : []))
    .sort((a, b) => (a.head.date < b.head.date ? -1 : a.head.date > b.head.date ? 1 : 0));
  return days.flatMap(({ session, head }) => {
    const rows = session.rows.flatMap((row) => {
      const cell = row.cells.find(({ week }) => week === head.week);
      return cell ? [{ row, cell }] : [];
    });
    return rows.map(({ row, cell }, i) => ({ session, head, row, cell, place: `${i + 1} of ${rows.length}` }));
  });
}

export const expectedTurns = (booklet: Booklet) =>
  expectedCells(booklet).map(({ session, head, row, cell, place }) =>
    expectedTurn(booklet, session, head, row, cell, `${booklet.labels.exercise} ${place}`),
  );

/** In the same order: what each is called, and how many sets of work its line of the week must come to, both sides together. */
export const expectedLines = (booklet: Booklet) =>
  expectedCells(booklet).map(({ row, cell }) => ({
    name: cell.version === '' ? row.name : cell.version,
    sets: cell.sets.filter(({ kind }) => kind === 'work').length,
  }));

const IN_SETS = /, (\d+)\u00a0sets?( each side)?/g;

/** The same from what was read; `called`: what it is to be called. */
export const readLine = (said: string, called: string) => ({
  name: said.startsWith(called) ? called : said,
  sets: [...said.matchAll(IN_SETS)].reduce(
    (sum, [, sets, both]) => sum + Number(sets) * (both === undefined ? 1 : 2),
    0,
  ),
});

/** What stands at the opening of a session on one day, and at its end: notes, the short version, drills and their doses. */
export const saidAround = (session: SessionPart, week: number): readonly string[] => [
  ...[...session.notes, ...session.short].filter((one) => one.week === week).map(({ text }) => text),
  ...[...session.warmUp, ...session.coolDown].flatMap(({ name, text }) => [name, text]),
];

/** The same shape from what was read. */
export const readShape = ({ where, name, sets, cues, stop, easier }: ReadTurn) => ({
  where,
  name,
  sets,
  cues,
  stop,
  easier,
});

/** Sentences that must stand somewhere in a turn. */
export const saidIn = (cell: Cell, row: SessionRow): readonly string[] =>
  [
    cell.effort,
    cell.trial ?? '',
    cell.gate?.needs ?? '',
    cell.gate?.otherwise ?? '',
    cell.choose?.intro ?? '',
    cell.choose?.note ?? '',
    cell.test?.says ?? '',
    ...(cell.test?.notes ?? []),
    ...cell.how,
    ...(cell.choose?.rows.flatMap(({ felt, use }) => [felt, use]) ?? []),
    ...cell.why,
    ...cell.sets.map(({ load }) => load?.pieces ?? ''),
    // Sets of one side name the side that begins themselves, and are held to it there.
    cell.sets.some(({ side }) => side !== undefined) ? '' : row.sides,
    row.group,
    row.rest,
    cell.tempo,
  ].filter((text) => text !== '');

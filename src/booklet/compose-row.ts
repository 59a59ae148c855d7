/** One line of a session over its weeks: name, rest, sides, cues, stop signs, easier ways and a cell for each week. */
import type { Cell, SessionRow } from '../model/booklet.js';
import type { Exercise } from '../model/exercise.js';
import { type Line, plainLine } from '../model/prose.js';
import { composeCell, whyOf } from './compose-cell.js';
import { composeEasier } from './compose-easier.js';
import { mindedIn } from './minded.js';
import { bookletLine, bookletLines } from './own-words.js';
import { nameOf, type Standing, type Subject } from './subject.js';

/** How many lines are in sight during a set. */
const CUES_IN_SIGHT = 3;

/** `all` are this row's, in order of week; at least one. */
export function composeRow(subject: Subject, all: readonly Standing[], group: string): SessionRow | undefined {
  const standings = oneAWeek(all);
  const usual = usualOf(standings);
  const first = standings.find(({ item }) => item.exercise === usual);
  if (usual === undefined || first === undefined) return undefined;
  const { words } = subject.speech;
  const exercise = subject.exercises.get(usual);
  return {
    row: first.item.row,
    exercise: first.item.exercise,
    name: headingOf(subject, usual, standings),
    rest: isTimed(first) ? '' : words.sets.rest(first.item.restSeconds),
    group,
    sides: sidesOf(subject, first),
    cells: composeCells(subject, standings, usual),
    cues: exercise === undefined ? [] : cuesOf(subject, exercise),
    stop: bookletLines(subject, exercise?.words.stopIf ?? []),
    easier: composeEasier(subject, standings),
  };
}

/** A clock says when to rest. */
const isTimed = ({ group }: Standing): boolean => group.everySeconds !== undefined || group.workSeconds !== undefined;

/** A row that is tested and trained on one day is one line: the test, then the work. */
function oneAWeek(standings: readonly Standing[]): readonly Standing[] {
  const days = new Map<Standing['column'], Standing>();
  for (const standing of standings) {
    const before = days.get(standing.column);
    days.set(standing.column, before === undefined ? standing : together(before, standing));
  }
  return [...days.values()];
}

/** What holds of the work holds of the line. */
function together(first: Standing, second: Standing): Standing {
  const work = first.group.kind === 'test' ? second : first;
  return {
    ...work,
    item: {
      ...work.item,
      sets: [...first.item.sets, ...second.item.sets],
      reasons: [...first.item.reasons, ...second.item.reasons],
    },
  };
}

/** The exercise's name; with the one way of it this client may do, where that holds throughout. */
function headingOf(subject: Subject, usual: string, standings: readonly Standing[]): string {
  const name = nameOf(subject, usual);
  const ways = new Set(standings.map(({ item }) => item.done?.say));
  const [way] = ways;
  return ways.size === 1 && way !== undefined ? subject.speech.words.sets.namedWay(name, way) : name;
}

/** The version of most weeks; of as many, the earlier. */
function usualOf(standings: readonly Standing[]): string | undefined {
  const counts = new Map<string, number>();
  for (const { item } of standings) counts.set(item.exercise, (counts.get(item.exercise) ?? 0) + 1);
  return [...counts].sort(([, a], [, b]) => b - a)[0]?.[0];
}

/** The week of the row's feeler set, wherever the session stood that day: it may come twice in a week. */
function feltIn({ plan }: Subject, [first]: readonly Standing[]): number | undefined {
  const week = plan.weeks.find(({ sessions }) =>
    sessions.some(
      ({ id, groups }) =>
        id === first?.column.session.id &&
        groups.some(({ items }) =>
          items.some(({ row, sets }) => row === first.item.row && sets.some(({ kind }) => kind === 'feeler')),
        ),
    ),
  );
  return week?.number;
}

function composeCells(subject: Subject, standings: readonly Standing[], usual: string): readonly Cell[] {
  const cells: Cell[] = [];
  let gateWeek: number | undefined;
  const feelerWeek = feltIn(subject, standings);
  let saidBefore: readonly string[] = [];
  for (const standing of standings) {
    if (standing.item.sets.some(({ gate }) => gate !== undefined)) gateWeek = standing.column.week.number;
    cells.push(
      composeCell(subject, standing, {
        usual,
        saidBefore,
        ...(gateWeek === undefined ? {} : { gateWeek }),
        ...(feelerWeek === undefined ? {} : { feelerWeek }),
      }),
    );
    // A test stands alone, weeks from the last: why it is done is said anew.
    saidBefore = standing.group.kind === 'test' ? [] : whyOf(subject, standing);
  }
  return cells;
}

function sidesOf({ speech }: Subject, { item }: Standing): string {
  const { sets } = speech.words;
  if (item.sides === 'alternate') return sets.inTurn;
  const side = item.sets.find((set) => set.side !== undefined)?.side;
  return side === undefined ? '' : side === 'left' ? sets.leftFirst : sets.rightFirst;
}

/** What the client minds here comes first, in the coach's words; then the cues in the order they are said. */
function cuesOf(subject: Subject, exercise: Exercise): readonly Line[] {
  const minded = mindedIn(subject, exercise).map(plainLine);
  const cues = exercise.words.cues.map(({ line }) => bookletLine(subject, line));
  return [...minded, ...cues].slice(0, CUES_IN_SIGHT);
}

/** The booklet from a plan with one row of every shape: each is said as a client would want it, and nothing twice. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import type { Booklet, Cell, Part } from '../../src/model/booklet.js';
import type { Group, Plan } from '../../src/model/plan.js';
import { plainText } from '../../src/model/prose.js';
import { everyShapeLibrary } from '../fixtures/every-shape-library.js';
import { everyShapePlan } from '../fixtures/every-shape-plan.js';
import { client } from '../fixtures/library.js';
import { bannedIn, longestSentence } from '../words/ban-list.js';
import { tellBooklet } from './tell-booklet.js';

const plan = everyShapePlan(3);
const made = (of: Plan): Booklet => composeBooklet({ library: everyShapeLibrary, client, plan: of });
const booklet = made(plan);

function partsOf<Kind extends Part['kind']>(kind: Kind): readonly Extract<Part, { kind: Kind }>[] {
  return booklet.parts.filter((part): part is Extract<Part, { kind: Kind }> => part.kind === kind);
}
const sessions = partsOf('session');
const rows = sessions.flatMap((session) => session.rows);
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
function cellOf(row: string, week: number): Cell {
  const cell = rows.find((one) => one.row === row)?.cells.find((one) => one.week === week);
  if (cell === undefined) throw new Error(`${row} has no week ${week}`);
  return cell;
}
const stackOf = (row: string, week: number): string => plain(cellOf(row, week).stack.join(' / '));
const setsIn = (kinds: (kind: Group['kind']) => boolean) =>
  plan.weeks.flatMap((week) =>
    week.sessions.flatMap(({ groups }) =>
      groups.filter(({ kind }) => kinds(kind)).flatMap(({ items }) => items.flatMap(({ sets }) => sets)),
    ),
  );
const isAround = (kind: Group['kind']): boolean => kind === 'warm-up' || kind === 'cool-down';

test('its sessions, calendar and combination read as the golden does', () => {
  const parts = booklet.parts.filter(
    (part) =>
      part.kind === 'calendar' ||
      part.kind === 'session' ||
      (part.kind === 'exercise' && part.id === 'clean-and-press'),
  );
  // Cues and stop signs are the same for every exercise here, and read elsewhere.
  const told = tellBooklet({ ...booklet, parts })
    .split('\n')
    .filter((line) => !/^ {4}(- |Stop: |Easier: )/.test(line))
    .join('\n');
  const file = join(import.meta.dirname, 'every-shape.golden.txt');
  if (process.env.UPDATE) writeFileSync(file, told);
  expect(told.split('\n').length).toBeLessThan(200);
  expect(told).toBe(readFileSync(file, 'utf8'));
});

describe('each set', () => {
  test('of the work stands in the booklet exactly once; those around it stand in their lists', () => {
    const drawn = rows.flatMap(({ cells }) => cells.flatMap(({ sets }) => sets.map(({ key }) => key)));
    const planned = setsIn((kind) => !isAround(kind)).map(({ key }) => key);
    expect([...drawn].sort()).toEqual([...planned].sort());
    expect(new Set(drawn).size).toBe(drawn.length);
    expect(setsIn(isAround).length).toBeGreaterThan(10);
    const listed = sessions.flatMap(({ warmUp, coolDown }) =>
      [...warmUp, ...coolDown].flatMap((one) => one.exercise ?? []),
    );
    expect(listed).toEqual(['march', 'wall-hinge', 'hip-opener', 'hip-opener']);
  });

  test('is said by what counts it: reps, time, distance, steps, a band, an added load, a round', () => {
    expect(stackOf('side-plank', 1)).toBe('25 s');
    expect(stackOf('main-next', 1)).toBe('16 kg / ×15 / then 20 kg / ×5');
    expect(stackOf('press-steps', 1)).toBe('12 kg / ×1-2-3');
    expect(stackOf('timed-squat', 1)).toBe('12 kg / 30 s');
    expect(stackOf('band-row', 1)).toBe('light band / ×12');
    expect(stackOf('step-up', 1)).toBe('+ 8 kg / ×8');
    expect(stackOf('flow', 1)).toBe('1 round');
    expect(plain(cellOf('press-steps', 1).sets[0]?.spoken ?? '')).toBe('12 kilograms, 1, 2 then 3 reps');
    expect(plain(cellOf('step-up', 1).sets[0]?.spoken ?? '')).toBe('plus 8 kilograms, 8 reps');
  });

  test('of one side alone says the side, and how many there are', () => {
    expect(stackOf('carry', 1)).toBe('12 kg / 20 m / Right / 16 kg / 20 m');
    expect(cellOf('carry', 1).how.map(plain)).toEqual(['Right: 1 of 2 sets with 16 kg, 20 m.']);
    expect(plain(cellOf('carry', 1).spoken)).toBe('12 kg, 20 m, right 16 kg, 20 m, 2 sets');
  });

  test('without a reserve asks for none, and a gate without one asks for good ones', () => {
    expect(cellOf('swing', 1).effort).toBe('');
    expect(plain(cellOf('swing', 2).gate?.needs ?? '')).toBe(
      'First do every set of 16 kg × 10 in week 1. All of them good.',
    );
  });

  test('whose measure is breath says how much can still be said', () => {
    expect(cellOf('march', 1).effort).toBe('You can still talk in whole sentences.');
    expect(cellOf('march', 2).effort).toBe('You can still say a few words at a time.');
  });
});

describe('tests', () => {
  test('say where they stop, with a line for each number', () => {
    const push = cellOf('push-up', 1).test;
    expect(push?.says).toBe('Test: stop with 2 good ones left.');
    expect(push?.notes.map(plain)).toEqual(['Good ones, week 1:']);
    expect(cellOf('push-up', 2).test).toBeUndefined();
    expect(cellOf('row-test', 1).test?.notes.map(plain)).toEqual([
      'Good ones, week 1, left:',
      'Good ones, week 1, right:',
    ]);
    expect(plain(cellOf('chair-stand', 1).test?.says ?? '')).toBe(
      'Test: as many full ones as fit in 30 seconds. Stop at once at any of its stop signs.',
    );
  });

  test('a row tested and trained on one day is one line, with the work in its column', () => {
    expect(cellOf('push-up', 1).sets.map(({ kind }) => kind)).toEqual(['test', 'work', 'work']);
    expect(stackOf('push-up', 1)).toBe('8 reps');
    expect(cellOf('push-up', 1).tally).toEqual([{ label: '', strokes: 3 }]);
    expect(stackOf('row-test', 1)).toBe('Test / 12 kg');
    expect(cellOf('row-test', 1).test?.stack).toEqual([]);
  });

  test('are marked in their column beside the work, and in the calendar', () => {
    expect(cellOf('push-up', 1).test?.stack).toEqual(['Test']);
    const weeks = partsOf('calendar')[0]?.weeks ?? [];
    expect(weeks.map(({ sessions }) => sessions.map(({ test: mark }) => mark ?? ''))).toEqual([
      ['Test', 'Test'],
      ['', ''],
      [],
    ]);
  });
});

describe('around the work', () => {
  test('a clock says when to start and to rest, in place of a rest of its own', () => {
    const minutes = rows.find(({ row }) => row === 'minutes');
    expect(minutes?.group).toBe('Start a set every minute. What is left of the minute is rest.');
    expect(minutes?.rest).toBe('');
    expect(plain(rows.find(({ row }) => row === 'band-row')?.group ?? '')).toContain(
      '40 seconds of work, 20 seconds to change over.',
    );
  });

  test('what is to be done stands beside the figures, what is to be minded first of the cues, neither among the reasons', () => {
    const cell = cellOf('press-steps', 1);
    expect(cell.how[0]).toBe('Only like this: Half-kneeling.');
    expect(cell.why).toEqual([]);
    expect(rows.find(({ row }) => row === 'press-steps')?.name).toBe('Clean and press: half-kneeling');
    expect(plainText(rows.find(({ row }) => row === 'press-steps')?.cues[0] ?? [])).toBe('Keep your ribs down.');
  });

  test('the short version names its sets and says that it counts; a session without one has none', () => {
    expect(sessions[0]?.short.map(({ week }) => week)).toEqual([1, 2]);
    expect(plain(sessions[0]?.short[0]?.text ?? '')).toBe(
      'A short warm-up, then 2 sets of the two-hand swing and 1 set of the side plank on each side. About 10 minutes. That counts.',
    );
    const without: Plan = {
      ...plan,
      weeks: plan.weeks.map((week) => ({
        ...week,
        sessions: week.sessions.map((session) => ({ ...session, short: { minutes: 0, sets: [] } })),
      })),
    };
    expect(made(without).parts.flatMap((part) => (part.kind === 'session' ? part.short : []))).toEqual([]);
    expect(tellBooklet(made(without))).not.toContain('bad day');
  });

  test('the last day sessions are planned for is said in the calendar and before anything else', () => {
    const said = 'Ask before you train on after 24 January 2027.';
    expect(plain(plainText(partsOf('calendar')[0]?.notes[0] ?? []))).toContain(said);
    expect(
      partsOf('safety')[0]
        ?.paragraphs.map((line) => plain(plainText(line)))
        .join(' '),
    ).toContain(said);
    expect(partsOf('calendar')[0]?.weeks.map(({ empty }) => empty)).toEqual(['', '', 'No sessions.']);
  });

  test('a combination leads to its parts, and each has a page; what only warms up comes last', () => {
    const pages = partsOf('exercise');
    const made = pages.find(({ id }) => id === 'clean-and-press')?.sections.find(({ name }) => name === 'parts');
    expect(made?.lines.flatMap(({ exercise }) => exercise ?? [])).toEqual(['clean', 'overhead-press']);
    const ids = pages.map(({ id }) => id);
    expect(ids).toContain('clean');
    expect(ids).toContain('overhead-press');
    expect(ids.at(-1)).toBe('wall-hinge');
  });
});

describe('fit for a client', () => {
  test('no coach’s shorthand', () => {
    expect(tellBooklet(booklet).split('\n').flatMap(bannedIn)).toEqual([]);
  });

  test('on the screen of a set no sentence has more than twelve words', () => {
    const said = rows.flatMap(({ cells }) =>
      cells.flatMap(({ effort, how, test: one, gate }) => [
        effort,
        ...how,
        one?.says ?? '',
        ...(one?.notes ?? []),
        gate?.needs ?? '',
      ]),
    );
    expect(said.filter((text) => text !== '').length).toBeGreaterThan(20);
    for (const text of said) expect(longestSentence(text), text).toBeLessThanOrEqual(12);
  });
});

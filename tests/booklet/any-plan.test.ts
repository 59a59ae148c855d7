/** Whatever can be planned can be said: made-up studios with every way of working, from plan to tree and to paper. */
import { beforeAll, describe, expect, test } from 'vitest';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import { planBlock } from '../../src/engine/plan-block.js';
import type { Booklet, Cell } from '../../src/model/booklet.js';
import type { Plan } from '../../src/model/plan.js';
import { layOutBooklet } from '../../src/print/lay-out-booklet.js';
import { loadFaces, measureWith } from '../../src/print/load-faces.js';
import type { Measure } from '../../src/print/measure.js';
import { LINE } from '../../src/print/sheet.js';
import { generateStudio } from '../engine/generate-studio.js';
import { offTheGrid, offThePage, offTheTextBlock, overlaps } from '../print/grid-faults.js';
import { bannedIn, longestSentence } from '../words/ban-list.js';
import { tellBooklet } from './tell-booklet.js';

interface Made {
  readonly seed: number;
  readonly plan: Plan;
  readonly booklet: Booklet;
}

/** Those of the first seeds whose client can be planned for. */
const made = Array.from({ length: 60 }, (_, i) => i + 1).flatMap((seed): readonly Made[] => {
  const { library, client, today } = generateStudio(seed, 'everything');
  const { value: plan } = planBlock({ library, client, today, edition: 0 });
  return plan === null ? [] : [{ seed, plan, booklet: composeBooklet({ library, client, plan }) }];
});

const cellsOf = (booklet: Booklet): readonly Cell[] =>
  booklet.parts.flatMap((part) => (part.kind === 'session' ? part.rows.flatMap((row) => row.cells) : []));
const groupsOf = (plan: Plan) => plan.weeks.flatMap((week) => week.sessions.flatMap(({ groups }) => groups));

test('there is enough to look at, of many shapes', () => {
  expect(made.length).toBeGreaterThan(10);
  const sets = made.flatMap(({ plan }) => groupsOf(plan).flatMap(({ items }) => items.flatMap((item) => item.sets)));
  for (const shape of ['seconds', 'metres', 'steps', 'gate', 'choose'] as const)
    expect(
      sets.some((set) => set[shape] !== undefined),
      shape,
    ).toBe(true);
  expect(sets.some(({ load }) => load?.band !== undefined)).toBe(true);
});

describe.each(made)('made up from $seed', ({ plan, booklet }) => {
  test('every set of the work stands in it exactly once, and says how much', () => {
    const drawn = cellsOf(booklet).flatMap(({ sets }) => sets);
    const planned = groupsOf(plan)
      .filter(({ kind }) => kind !== 'warm-up' && kind !== 'cool-down')
      .flatMap(({ items }) => items.flatMap(({ sets }) => sets.map(({ key }) => key)));
    expect(drawn.map(({ key }) => key).sort()).toEqual([...planned].sort());
    expect(drawn.filter(({ text, spoken }) => text === '' || spoken === '')).toEqual([]);
    expect(cellsOf(booklet).filter(({ stack }) => stack.length === 0 || stack.includes(''))).toEqual([]);
  });

  test('no coach’s shorthand; nothing left unsaid; on the screen of a set twelve words a sentence', () => {
    const told = tellBooklet(booklet);
    expect(told.split('\n').flatMap(bannedIn)).toEqual([]);
    expect(told).not.toMatch(/undefined|NaN|\[object| {2}:|: \.|#/);
    // Exercises are called `Exercise pull-1` here, which no coach would do.
    for (const { effort, how, test: tested, gate, trial } of cellsOf(booklet))
      for (const text of [effort, ...how, tested?.says ?? '', trial ?? '', gate?.needs ?? ''])
        expect(longestSentence(text.replace(/exercise /gi, '')), text).toBeLessThanOrEqual(12);
  });
});

describe('on paper', () => {
  let measure: Measure;
  beforeAll(async () => {
    measure = measureWith(await loadFaces());
  });

  test.each(made.slice(0, 8))('nothing leaves the page or covers anything else: $seed', ({ plan, booklet }) => {
    const { value, problems } = layOutBooklet(booklet, measure, plan.client);
    expect(value.length > 0 || problems.length > 0).toBe(true);
    expect(
      value.flatMap((page) => [
        ...offThePage(page),
        ...offTheTextBlock(page),
        ...offTheGrid(page, LINE / 2),
        ...overlaps(page),
      ]),
    ).toEqual([]);
  });
});

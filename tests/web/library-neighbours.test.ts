/** Which exercises the library calls harder, where no page says so itself. */
import { expect, test } from 'vitest';
import { neighboursIn } from '../../layouts/library/neighbours.js';
import type { Cause, Exercise, Version } from '../../src/model/exercise.js';
import { exerciseId } from '../../src/model/identity.js';
import { plainLine } from '../../src/model/prose.js';
import { libraryPages } from '../../src/web/library/render-library.js';
import { fixtureLibrary } from './library-fixture.js';

const [like = expect.fail('no exercise')] = fixtureLibrary.exercises;
const to = (id: string, ...causes: readonly Cause[]): Version => ({
  to: { kind: 'exercise', id: exerciseId(id) },
  say: plainLine(id),
  causes,
  place: like.place,
});
const made = (
  id: string,
  facts: Partial<Exercise['facts']> = {},
  words: Partial<Exercise['words']> = {},
): Exercise => ({
  ...like,
  id: exerciseId(id),
  name: id,
  facts: { ...like.facts, ...facts },
  words: { ...like.words, easier: [], harder: [], ...words },
});
const hinge = made('wall-hinge', { pattern: 'hinge' }, { harder: [to('told')] });
const harderOf = (...others: readonly Exercise[]): readonly string[] =>
  neighboursIn([hinge, ...others])(hinge).harder.map(({ id }) => id);
const leads = (id: string, causes: readonly Cause[], facts: Partial<Exercise['facts']> = {}): Exercise =>
  made(id, { pattern: 'hinge', ...facts }, { easier: [to('wall-hinge', ...causes)] });

test.each<readonly [Cause]>([['load'], ['range'], ['balance'], ['speed']])('left for %s, it is harder', (cause) => {
  expect(harderOf(leads('deadlift', [cause]))).toEqual(['deadlift']);
  expect(harderOf(leads('deadlift', ['lower back', cause]))).toEqual(['deadlift']);
});

test.each<readonly [Cause]>([['lower back'], ['floor'], ['kit'], ['grip']])(
  'left for %s, it is only other',
  (cause) => {
    expect(harderOf(leads('bridge', [cause]))).toEqual([]);
  },
);

test('another movement is no harder version, whatever it leads here for', () => {
  expect(harderOf(leads('clean', ['load'], { pattern: 'pull' }))).toEqual([]);
});

test('what an author says is harder stays, and comes first', () => {
  expect(harderOf(leads('deadlift', ['load']), made('told', { pattern: 'pull' }))).toEqual(['told', 'deadlift']);
});

test('a harder version that a coach must have seen says so, on its page and in the index', () => {
  const library = { ...fixtureLibrary, exercises: [hinge, leads('swing', ['speed'], { signOff: true })] };
  const pages = libraryPages({ library, rulebook: [] });
  const texts = pages.filter(({ path }) => /wall-hinge|^index/.test(path)).map(({ render }) => render());
  expect(texts.length).toBe(2);
  for (const text of texts) expect(text).toMatch(/swing<\/a>, once your coach has seen you do it/);
});

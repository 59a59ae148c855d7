/** Which exercises the library calls harder, where no page says so itself. */
import { expect, test } from 'vitest';
import { neighboursIn } from '../../layouts/library/neighbours.js';
import type { Cause, Exercise, Version } from '../../src/model/exercise.js';
import { exerciseId } from '../../src/model/identity.js';
import { plainLine } from '../../src/model/prose.js';
import { libraryPages } from '../../src/web/library/render-library.js';
import { fixturePublic } from './library-fixture.js';

const [like = expect.fail('no exercise')] = fixturePublic.exercises;
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
  neighboursIn([hinge, ...others])(hinge).harder.map(({ exercise }) => exercise.id);
const leads = (id: string, causes: readonly Cause[], facts: Partial<Exercise['facts']> = {}): Exercise =>
  made(id, { pattern: 'hinge', ...facts }, { easier: [to('wall-hinge', ...causes)] });

test.each<readonly [Cause]>([['load'], ['range'], ['speed']])('left for %s, it is harder', (cause) => {
  expect(harderOf(leads('deadlift', [cause]))).toEqual(['deadlift']);
  expect(harderOf(leads('deadlift', ['lower back', cause]))).toEqual(['deadlift']);
});

test.each<readonly [Cause]>([['lower back'], ['floor'], ['kit'], ['grip']])(
  'left for %s, it is only other',
  (cause) => {
    expect(harderOf(leads('bridge', [cause]))).toEqual([]);
  },
);

const wobbly: Partial<Exercise['facts']> = { asks: [{ of: 'balance', degree: 'some', side: 'both', phases: [] }] };

test('for balance only where it does ask for balance: from lying down, a steadier stand is only other', () => {
  expect(harderOf(leads('kickstand', ['balance', 'knee'], wobbly))).toEqual(['kickstand']);
  expect(harderOf(leads('side-plank', ['balance', 'knee']))).toEqual([]);
});

test('where the kit is missing too it is only other', () => {
  expect(harderOf(leads('deadlift', ['load', 'kit']))).toEqual([]);
});

test('what a nearer harder version leads to is left to its page, but never what an author says is harder', () => {
  const bar = made('bar', { pattern: 'hinge' }, { easier: [to('two', 'load'), to('wall-hinge', 'range')] });
  const two = leads('two', ['load']);
  expect(harderOf(two, bar)).toEqual(['two']);
  expect(harderOf(made('told', {}, { harder: [to('far', 'load')] }), leads('far', ['load']))).toEqual(['told']);
  const own = made('wall-hinge', { pattern: 'hinge' }, { harder: [to('two', 'load'), to('bar', 'load')] });
  const harder = neighboursIn([own, made('two', {}, { harder: [to('bar', 'load')] }), made('bar')])(own).harder;
  expect(harder.map(({ exercise }) => exercise.id)).toEqual(['two', 'bar']);
});

test('two that lead to each other both stay', () => {
  const round = (id: string, other: string) =>
    made(id, { pattern: 'hinge' }, { easier: [to('wall-hinge', 'load')], harder: [to(other, 'load')] });
  expect(harderOf(round('one', 'two'), round('two', 'one'))).toEqual(['one', 'two']);
});

test('each says what it is for, the way there and the way back', async () => {
  const up = leads('deadlift', ['load', 'lower back', 'range']);
  const easier = made('easy', {}, { harder: [to('wall-hinge', 'balance')] });
  const { harder } = neighboursIn([hinge, up])(hinge);
  expect(harder.map(({ causes }) => causes)).toEqual([['load', 'range']]);
  expect(neighboursIn([hinge, up])(up).easier.map(({ causes }) => causes)).toEqual([['load', 'lower back', 'range']]);
  expect(neighboursIn([hinge, easier])(hinge).easier.map(({ causes }) => causes)).toEqual([['balance']]);
  const pages = await libraryPages({ library: { ...fixturePublic, exercises: [hinge, up, easier] }, rulebook: [] });
  const text = (id: string): string => pages.find(({ path }) => path === `exercises/${id}.html`)?.render() ?? '';
  expect(text('deadlift')).toContain('>when it is too much, it goes too far or your lower back is sore</span>');
  expect(text('wall-hinge')).toContain('>for more load and more depth or reach</span>');
  expect(text('wall-hinge')).toContain('>when you wobble</span>');
});

test('another movement is no harder version, whatever it leads here for', () => {
  expect(harderOf(leads('clean', ['load'], { pattern: 'pull' }))).toEqual([]);
});

test('what an author says is harder stays, and comes first', () => {
  expect(harderOf(leads('deadlift', ['load']), made('told', { pattern: 'pull' }))).toEqual(['told', 'deadlift']);
});

test('a harder version that a coach must have seen says so, on its page and in the list', async () => {
  const library = { ...fixturePublic, exercises: [hinge, leads('swing', ['speed'], { signOff: true })] };
  const pages = await libraryPages({ library, rulebook: [] });
  const texts = pages.filter(({ path }) => /wall-hinge|^easier-and-harder/.test(path)).map(({ render }) => render());
  expect(texts.length).toBe(2);
  for (const text of texts) expect(text).toMatch(/swing<\/a>, once your coach has seen you do it/);
});

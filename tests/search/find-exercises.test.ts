/** The library's search over the demo's exercises: what is found, how forgivingly, and why; and how large its index is. */
import { gzipSync } from 'node:zlib';
import { beforeAll, describe, expect, test } from 'vitest';
import { publicPartOf } from '../../src/model/public-library.js';
import { findExercises, type Index, openIndex } from '../../src/search/find-exercises.js';
import { foldTerm, termsOf } from '../../src/search/terms.js';
import { writeIndex } from '../../src/search/write-index.js';
import { searchIndexOf } from '../../src/web/library/library-assets.js';
import { searchableOf } from '../../src/web/library/searchable.js';
import { everydayWordsOf } from '../../src/words/everyday-words.js';
import { sayLibraryWords } from '../../src/words/library-words.js';
import { saySearchWords } from '../../src/words/search-words.js';
import { speechOf } from '../../src/words/speech.js';
import { readDemo } from '../studio/demo-library.js';
import { manyExercises } from './many-exercises.js';

const within = { words: sayLibraryWords('en'), speech: speechOf('en'), everyday: everydayWordsOf('en') };
const library = publicPartOf((await readDemo()).library);
const words = saySearchWords('en');
let index: Index;
beforeAll(() => {
  index = openIndex(writeIndex(searchableOf(library.exercises, within)));
});
const found = (typed: string) => findExercises(index, typed);
const names = (typed: string, most = 5): readonly string[] =>
  found(typed)
    .slice(0, most)
    .map(({ name }) => name);
const why = (typed: string, name: string): string =>
  words.why(found(typed).find((one) => one.name === name)?.why ?? []);

describe('finds', () => {
  test('every exercise first by its own whole name', () => {
    const first = library.exercises.map(({ name }) => [name, names(name, 1)[0]]);
    expect(first.filter(([name, one]) => name !== one)).toEqual([]);
  });

  test('from two letters on, as one types', () => {
    expect(names('gob', 2)).toEqual(['Goblet hold', 'Goblet squat']);
    for (const typed of ['ha', 'hal', 'halo']) expect(names(typed, 1)).toEqual(['Halo']);
  });

  test('everything of a movement, and what can be done with a thing', () => {
    const all = (typed: string): readonly string[] =>
      found(typed)
        .map(({ id }) => id)
        .sort();
    const hinges = library.exercises.filter(({ facts }) => facts.pattern === 'hinge').map(({ id }) => id);
    expect(all('hinge')).toEqual(expect.arrayContaining([...hinges]));
    const bands = library.exercises.filter(({ facts }) => facts.kit.load.some(({ kind }) => kind === 'band'));
    expect(all('band')).toEqual(expect.arrayContaining(bands.map(({ id }) => id)));
  });

  test('by two words what holds both', () => {
    const both = found('chair squat');
    expect(both.length).toBeGreaterThan(0);
    expect(names('chair squat', 1)).toEqual(['Chair squat']);
    expect(both.every(({ why: reasons }) => reasons.length === 2)).toBe(true);
  });

  test('whatever words of a question stand around', () => {
    expect(found('something for my shoulders')).toEqual(found('shoulders'));
    expect(names('how do I do the halo', 1)).toEqual(['Halo']);
    expect(found('the').length).toBeGreaterThan(0);
  });

  test('a word by what is left without its ending', () => {
    expect(found('walking').map(({ name }) => name)).toContain('Heel-to-toe walk');
    expect(names('planks', 1)).toEqual(['Plank']);
  });

  test('by two words of which nothing holds both what holds one', () => {
    expect(names('halo xylophone', 1)).toEqual(['Halo']);
  });

  test('nothing for nothing, for signs, and for what is nowhere near', () => {
    for (const typed of ['', '  ', '—?!', 'xqzvwk']) expect(found(typed)).toEqual([]);
  });
});

describe('forgives', () => {
  test.each([
    ['goblit squt', 'Goblet squat'],
    ['dedlift', 'Deadlift, one bell'],
    ['shouldr', 'Halo'],
    ['PLANK', 'Plank'],
    ['púsh-up', 'Push-up'],
    ['push up', 'Push-up'],
  ])('%s', (typed, name) => {
    expect(names(typed)).toContain(name);
  });

  test('no letter of a short word, where everything would be near', () => {
    expect(found('hao').map(({ name }) => name)).not.toContain('Halo');
  });
});

describe('says why', () => {
  test('it was found: in its name, by a heading, by an everyday word, as it was read', () => {
    expect(why('halo', 'Halo')).toBe('‘halo’: in its name.');
    expect(why('rotate', 'Halo')).toBe('‘rotate’: its movement, rotate.');
    expect(why('stool', 'Box squat')).toBe('‘stool’: what you need, chair.');
    expect(why('tummy', 'Dead bug')).toMatch(/^‘tummy’: what it works, \w+ abdominis\.$/);
    expect(why('kettlebel', 'Goblet squat')).toBe('‘kettlebell’: what you need, bell.');
    expect(why('quadricep', 'Goblet squat')).toBe('‘quadriceps’: what it works, quadriceps.');
    expect(why('goblit', 'Goblet squat')).toBe('‘goblit’ read as ‘goblet’: in its name.');
  });

  test('of every exercise found, for each typed word that was found', () => {
    for (const typed of ['bell', 'knee', 'sit', 'floor press', 'walk', 'tigh']) {
      for (const one of found(typed)) {
        expect(one.why.length).toBeGreaterThan(0);
        expect(words.why(one.why)).toMatch(/^‘.+’.*: .+\.$/);
      }
    }
  });
});

test('words are known without capitals, accents or a possessive’s end', () => {
  expect(termsOf('Farmer’s Übung: heel-to-toe, 30 s')).toEqual(['farmer', 'ubung', 'heel', 'to', 'toe', '30', 's']);
  expect(foldTerm('Łukasz’s')).toBe('łukasz');
  expect(termsOf('… — !')).toEqual([]);
});

test('the same exercises give the same index', () => {
  expect(searchIndexOf(library)).toBe(searchIndexOf({ ...library, exercises: [...library.exercises] }));
});

// Budget 14 of the project's own: the index of 2,000 exercises, gzip.
test('the index of 2,000 exercises is at most 150 KB', () => {
  const text = searchIndexOf({ ...library, exercises: manyExercises(library.exercises, 2000) });
  expect(gzipSync(text).length).toBeLessThan(150_000);
});

/** Marks of the tally, held to the table of marks: u = 40, strokes 0.32 u apart, feet 0.15 u, strokes 0.12 u thick. */
import fc from 'fast-check';
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { drawMark, leanOf, U } from '../../layouts/book/tally.js';
import { WeekTally } from '../../layouts/training/week-tally.js';
import { rowId, setKey } from '../../src/model/identity.js';
import type { TallyState } from '../../src/model/training.js';
import { phoneSpeechOf } from '../fixtures/phone-speech.js';

const start = (d: string): readonly [number, number] => {
  const [, x = '', y = ''] = /^M(-?[\d.]+) (-?[\d.]+)/.exec(d) ?? [];
  return [Number(x), Number(y)];
};

test('a stroke leans by at most 3 degrees, and by its key alone', () => {
  fc.assert(
    fc.property(fc.string(), (key) => {
      const lean = leanOf(key);
      return lean >= -3 && lean <= 3 && leanOf(key) === lean;
    }),
  );
  const keys = Array.from({ length: 60 }, (_, i) => leanOf(`1/${i}/goblet-squat/both/work/1`));
  expect(new Set(keys).size).toBeGreaterThan(40);
  expect(Math.min(...keys)).toBeLessThan(-1.5);
  expect(Math.max(...keys)).toBeGreaterThan(1.5);
});

test('feet stand on the line, 0.32 u apart, five to a line', () => {
  const at = (index: number): readonly [number, number] => start(drawMark('to do', index, 'key').d);
  expect(at(1)[0] - at(0)[0]).toBeCloseTo(0.32 * U, 1);
  expect(at(3)[0] - at(0)[0]).toBeCloseTo(3 * 0.32 * U, 1);
  expect([at(0)[1], at(3)[1]]).toEqual([U, U]);
  expect(at(5)[0]).toBe(at(0)[0]);
  expect(at(5)[1]).toBeGreaterThan(U);
});

test('a foot is 0.15 u high; a done stroke far higher; the fifth crosses or is dotted', () => {
  const rise = (d: string): number => Number(/(?:l-?[\d.]+ |v)(-[\d.]+)/.exec(d)?.[1]);
  expect(rise(drawMark('to do', 0, 'key').d)).toBeCloseTo(-0.15 * U, 1);
  expect(rise(drawMark('done', 0, 'key').d)).toBeLessThan(-0.8 * U);
  expect(drawMark('to do', 0, 'key').d).toBe(drawMark('to do', 0, 'another').d);
  expect(drawMark('to do', 4, 'key').of).toBe('slant');
  expect(drawMark('done', 4, 'key').of).toBe('full');
});

test('easier and extra carry their letter beneath; left out carries a dash', () => {
  expect(drawMark('easier', 0, 'key').letter?.text).toBe('e');
  expect(drawMark('extra', 0, 'key').letter?.text).toBe('+');
  expect(drawMark('left out', 0, 'key').d).toContain('h8');
});

test('at each place of a row the five states are drawn in five ways', () => {
  const states = ['to do', 'done', 'easier', 'left out', 'extra'] as const;
  for (let index = 0; index < 10; index += 1) {
    const drawn = states.map((state) => JSON.stringify(drawMark(state, index, 'key')));
    expect(new Set(drawn).size, `place ${index}`).toBe(states.length);
  }
  expect(drawMark('easier', 4, 'key').letter?.text).toBe('e');
  expect(drawMark('extra', 4, 'key').letter?.text).toBe('+');
  expect(drawMark('left out', 4, 'key').dash).toContain('h8');
});

const said = (language: string, states: readonly TallyState[], side?: 'left' | 'right'): string | undefined => {
  const marks = states.map((state, i) => ({
    key: setKey({ block: 1, occurrence: 1, row: rowId('row'), side: side ?? 'both', kind: 'work', ordinal: i + 1 }),
    state,
  }));
  const { words } = phoneSpeechOf(language);
  const drawn = renderToString(h(WeekTally, { tally: [side === undefined ? { marks } : { side, marks }], words }));
  return /^<svg role="img" aria-label="([^"]*)"/.exec(drawn)?.[1]?.replaceAll('\u00a0', ' ');
};

test('a tally of the week is said by how many sets there are of each state, in the order of what was done', () => {
  const all: readonly TallyState[] = ['to do', 'done', 'extra', 'left out', 'easier', 'done'];
  expect(said('en-GB', all)).toBe('2 sets done; 1 done, easier; 1 extra; 1 left out; 1 to do');
  expect(said('nb', all)).toBe('2 sett gjort; 1 gjort, lettere; 1 ekstra; 1 utelatt; 1 å gjøre');
  expect(said('en-GB', ['to do'], 'left')).toBe('Left: 1 set to do');
  expect(said('nb', ['left out', 'left out'], 'right')).toBe('Høyre: 2 sett utelatt');
});

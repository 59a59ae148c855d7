/** Steps that lead back to where they began: each told is one, none is overlooked, and long chains take no long time. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { circlesIn, type Step } from '../../src/content/circles.js';

const steps = (text: string): readonly Step[] =>
  text
    .split(' ')
    .filter((one) => one !== '')
    .map(([from = '', to = '']) => ({ from, to }));
const told = (text: string): readonly string[] => circlesIn(steps(text)).map(({ ids }) => ids.join(''));

describe('told', () => {
  test.each([
    ['a chain', 'ab bc cd', []],
    ['two ways to one end', 'ab ac bd cd', []],
    ['there and back', 'ab ba', ['ab']],
    ['to itself', 'aa', ['a']],
    ['behind a chain', 'ab bc cd dc', ['cd']],
    ['the shortest way round', 'ab bc ca ba', ['ab', 'bca']],
    ['two, joined by a chain', 'ab ba bc cd de ed', ['ab', 'de']],
    ['said twice', 'ab ba ab ba', ['ab']],
  ])('%s', (_, text, circles) => expect(told(text)).toEqual(circles));
});

const AN_ID = fc.constantFrom(...'abcdefg');

test('whatever the steps: what is told goes round by steps that are there, and something is told where any goes round', () => {
  fc.assert(
    fc.property(fc.array(fc.record({ from: AN_ID, to: AN_ID }), { maxLength: 16 }), (given) => {
      const there = new Set(given.map(({ from, to }) => from + to));
      const circles = circlesIn(given);
      for (const { step, ids } of circles) {
        expect(new Set(ids).size).toBe(ids.length);
        expect(ids[0]).toBe(step.from);
        for (const [at, id] of ids.entries()) expect(there).toContain(id + (ids[at + 1] ?? step.from));
      }
      // What can be reached, by adding steps to it until it grows no more.
      const reached = new Map<string, Set<string>>();
      for (const { from, to } of given) reached.set(from, (reached.get(from) ?? new Set()).add(to));
      for (let grown = true; grown; ) {
        grown = false;
        for (const all of reached.values()) {
          const before = all.size;
          for (const one of [...all]) for (const next of reached.get(one) ?? []) all.add(next);
          grown ||= all.size > before;
        }
      }

      expect(circles.length > 0).toBe([...reached].some(([from, all]) => all.has(from)));
    }),
  );
});

describe('of a thirty thousand links, in no long time', () => {
  const MANY = 30_000;
  const chain = Array.from({ length: MANY }, (_, at): Step => ({ from: `e${at}`, to: `e${at + 1}` }));

  test('a chain', () => expect(circlesIn(chain)).toEqual([]));

  test('the other way about', () => expect(circlesIn([...chain].reverse())).toEqual([]));

  test('closed to one circle, which is told once', () => {
    const [circle, ...others] = circlesIn([...chain, { from: `e${MANY}`, to: 'e0' }]);
    expect(circle?.ids.length).toBe(MANY + 1);
    expect(others).toEqual([]);
  });

  test('all to one', () => {
    expect(circlesIn(chain.map(({ from }) => ({ from, to: 'end' })))).toEqual([]);
    expect(circlesIn(chain.map(({ from }) => ({ from: 'start', to: from })))).toEqual([]);
  });
});

/** The account of every real-life case, read aloud: whole sentences with their figures, whatever the client brings. */
import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import { listMaxima } from '../../src/engine/repetition-maximum.js';
import { sayWhyTree } from '../../src/words/say-why.js';
import { tellWhy } from '../../src/words/tell-why.js';
import { calledById } from '../../src/words/why-account.js';
import type { WhyItem, WhyTree } from '../../src/words/why-tree.js';
import { readCaseFile } from '../cases/read-case.js';
import { readLibrary } from '../cases/read-library.js';

const exercises = readLibrary();
const names = readdirSync(new URL('../cases/', import.meta.url))
  .flatMap((file) => (file.endsWith('.case.txt') ? [file.replace('.case.txt', '')] : []))
  .sort();

const trees: readonly (readonly [string, WhyTree])[] = names.flatMap((name) => {
  const { library, client, today } = readCaseFile(name, exercises);
  const { value } = planBlock({ library, client, today, edition: 0 });
  const tree = value === null ? null : tellWhy(value, {}, { ...calledById(value), maxima: listMaxima });
  return tree === null ? [] : [[name, tree] as const];
});
const itemsOf = (tree: WhyTree): readonly WhyItem[] =>
  tree.weeks.flatMap(({ sessions }) => sessions.flatMap(({ items }) => items));

describe('read aloud', () => {
  test('most cases are planned, and every way of working is among them', () => {
    expect(trees.length).toBeGreaterThan(names.length / 2);
    const ways = new Set(trees.flatMap(([, tree]) => itemsOf(tree).map(({ way }) => way)));
    for (const way of ['strength', 'bodyweight', 'swing', 'hold', 'carry', 'mobility', 'conditioning', 'combination']) {
      expect(ways).toContain(way);
    }
    const groups = new Set(trees.flatMap(([, tree]) => itemsOf(tree).map(({ group }) => group)));
    for (const group of ['warm-up', 'straight', 'test', 'cool-down']) expect(groups).toContain(group);
  });

  test.each(trees)('%s', (_, tree) => {
    const told = sayWhyTree(tree).split('\n');
    for (const line of told) expect(line).not.toMatch(/undefined|NaN|\[object|\(\)|\(,|\S {2,}\S| [.,;:](?!\d)|\.\.$/);
    const spoken = told.flatMap((line) => (/^ {4}\S/.test(line) ? [line.trim()] : []));
    for (const line of spoken) expect(line).toMatch(/^[A-Z0-9‘].*[.?!]$/);
    for (const item of itemsOf(tree)) {
      expect(item.dose.join(), item.id).not.toBe('');
      for (const next of item.next)
        expect([item.id, next.option === '', next.says === '']).toEqual([item.id, false, false]);
      for (const { says, source } of item.reasons) expect([says === '', source === '']).toEqual([false, false]);
    }
    for (const { reason } of tree.findings) expect(reason.says).toMatch(/\.$/);
  });
});

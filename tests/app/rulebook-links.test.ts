/** Built whole: every reason on the desk leads to a rule that stands in the rulebook, and `why` as data holds together. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { WhyTree } from '../../src/words/why-tree.js';
import { chalkleaf, smallStudio, workFolder, writeFiles } from './run-chalkleaf.js';

const RULES = `| Rule | Value | Reason |
| --- | --- | --- |
| floor-alone | 30 | nobody here has trained alone before |
`;
const work = workFolder();
const run = (command: string, ...more: readonly string[]) => {
  const folders = ['content', 'out', 'state'].flatMap((name) => [
    `--${name}`,
    join(work.path, name === 'out' ? 'output' : name),
  ]);
  return chalkleaf([command, ...more, ...folders, '--today', '2026-11-24']);
};

beforeAll(() => {
  writeFiles(join(work.path, 'content'), [...smallStudio(), ['rules.md', RULES]]);
});
afterAll(() => work.away());

describe('a studio built', () => {
  test('every rule a client’s page leads to is in the rulebook, in the other half of the output', () => {
    const ran = run('build');
    expect([ran.code, ran.err]).toEqual([0, '']);
    const folder = join(work.path, 'output/private/desk/clients');
    const pages = readdirSync(folder);
    expect(pages).toEqual(['ash-venn.html']);
    let links = 0;
    for (const page of pages) {
      const html = readFileSync(join(folder, page), 'utf8');
      for (const [, href = ''] of html.matchAll(/<a class="ruled" href="([^"]+)"/g)) {
        const [path = '', rule = ''] = href.split('#');
        // As a browser goes: from where the page's address says it is, links in the folder not followed.
        const target = resolve(folder, path);
        expect(target).toBe(join(work.path, 'output/public/rulebook/index.html'));
        expect(existsSync(target)).toBe(true);
        expect(readFileSync(target, 'utf8'), rule).toContain(`id="${rule}"`);
        links += 1;
      }
    }
    expect(links).toBeGreaterThan(10);
  });

  test('the rulebook and the desk show the coach’s own value with its reason', () => {
    const read = (path: string): string =>
      readFileSync(join(work.path, 'output', path), 'utf8').replaceAll('\u00a0', ' ');
    expect(read('public/rulebook/index.html')).toContain('3 reps: nobody here has trained alone before');
    expect(read('public/index.html')).toContain('href="rulebook/index.html"');
    expect(read('private/desk/clients/ash-venn.html')).toContain('Working sets a week, by muscle');
  });

  test('why as data: one client’s tree, narrowed to what is asked', () => {
    const ran = run('why', 'ash-venn', '--json', '--week', '2', '--exercise', 'goblet-squat');
    expect(ran.code).toBe(0);
    const { command, why, exit }: { command: string; why: readonly WhyTree[]; exit: number } = JSON.parse(ran.out);
    expect([command, exit, why.length]).toEqual(['why', 0, 1]);
    const [tree] = why;
    expect(tree?.weeks.map(({ week }) => week)).toEqual([2]);
    const items = tree?.weeks.flatMap(({ sessions }) => sessions.flatMap((session) => session.items)) ?? [];
    expect(items.length).toBeGreaterThan(0);
    for (const item of items) {
      expect(item.exercise).toBe('goblet-squat');
      expect(item.reasons.every(({ says, source }) => says !== '' && source !== '')).toBe(true);
    }
    expect(run('why', 'ash-venn', '--json', '--week', '7').code).toBe(1);
  });
});

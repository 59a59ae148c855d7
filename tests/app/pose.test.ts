/** `chalkleaf pose`, as a coach runs it beside the pages. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { chalkleaf, smallStudio, workFolder, writeFiles } from './run-chalkleaf.js';

const TABLE = `
## Poses

| Position | On | Feet | Trunk | Knees | Hands | Kit |
| --- | --- | --- | --- | --- | --- | --- |
| start | feet | apart 36 | upright | | chest | bell in both hands |
| bottom | | | lean 34 | 120 | | |
`;

const work = workFolder();
const content = join(work.path, 'content');
const out = join(work.path, 'sheets');
const pose = (...args: string[]) => chalkleaf(['pose', ...args, '--content', content, '--out', out]);

beforeAll(() => {
  const pages = new Map(smallStudio());
  const page = 'exercises/goblet-squat.md';
  pages.set(page, `${pages.get(page) ?? ''}${TABLE}`);
  writeFiles(content, pages);
});
afterAll(() => work.away());

describe('chalkleaf pose', () => {
  test('draws one exercise: its positions, the angles of its joints, and nothing beside it', () => {
    const ran = pose('goblet-squat');
    expect(ran.code).toBe(0);
    expect(ran.out).toContain('Drawn: 1 exercise.');
    expect(readdirSync(out)).toEqual(['goblet-squat.html']);
    const html = readFileSync(join(out, 'goblet-squat.html'), 'utf8');
    expect(html.match(/<svg/g)?.length).toBeGreaterThanOrEqual(2);
    expect(html).toContain('bottom');
    expect(html).toMatch(/120/);
    expect(html).not.toMatch(/(src|href)="https?:/);
  });

  test('draws all that have a table, with one page to look at them together', () => {
    const ran = pose('--all');
    expect(ran.code).toBe(0);
    expect(ran.out).toContain('Drawn: 1 exercise.');
    expect(existsSync(join(out, 'index.html'))).toBe(true);
  });

  test('an exercise that is not there, and one without a table, are told and nothing is drawn', () => {
    const unknown = pose('goblet-squad');
    expect(unknown.code).toBe(1);
    expect(unknown.out).toContain('no-such-exercise');
    expect(unknown.out).toContain('goblet-squat');
    const bare = pose('chair-squat');
    expect(bare.code).toBe(1);
    expect(bare.out).toContain('no-poses');
    expect(bare.out).toContain('Nothing was drawn.');
  });

  test('writes nowhere among the coach’s own pages', () => {
    const ran = chalkleaf(['pose', 'goblet-squat', '--content', content, '--out', join(content, 'sheets')]);
    expect(ran.code).not.toBe(0);
    expect(ran.out).toContain('output-in-content');
    expect(existsSync(join(content, 'sheets'))).toBe(false);
  });
});

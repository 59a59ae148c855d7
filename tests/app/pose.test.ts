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

  test('measures each position: ranges, where the weight is, what bears it, and how far what bears is off', () => {
    expect(pose('goblet-squat').code).toBe(0);
    const html = readFileSync(join(out, 'goblet-squat.html'), 'utf8');
    const positions = html.split('<section>').slice(1);
    expect(positions).toHaveLength(2);
    for (const position of positions) {
      // The range of a knee, by the table's larger value.
      expect(position).toMatch(/knee bent<\/th>(<td[^>]*>[^<]*<\/td>){2}<td>0° to 140°<\/td>/);
      expect(position).toMatch(/chest turned to the left<\/dt><dd>.*?most people −45° to 45°/);
      expect(position).toMatch(/<circle class="weight" cx="-?\d+" cy="-?\d+"/);
      expect(position).toMatch(/<line class="plumb" x1="(-?\d+)" y1="-?\d+" x2="\1"/);
      expect(position).toMatch(/<polygon class="support" points="(-?\d+,-?\d+ ?){3,}"/);
      expect(position.match(/<circle class="bears"/g)).toHaveLength(2);
      expect(position).toMatch(/left foot on floor \([01] mm off\), right foot on floor \([01] mm off\)/);
      expect(position).toMatch(/over what bears it/);
    }
  });

  test('draws leaves to flick beside it where they are asked for', () => {
    const ran = pose('goblet-squat', '--flick');
    expect(ran.code).toBe(0);
    expect(readdirSync(out)).toContain('flick-goblet-squat.pdf');
    const bytes = readFileSync(join(out, 'flick-goblet-squat.pdf'));
    expect(bytes.subarray(0, 5).toString('latin1')).toBe('%PDF-');
    expect(bytes.length).toBeGreaterThan(5000);
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

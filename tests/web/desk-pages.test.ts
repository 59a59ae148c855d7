/** The coach's desk as text. */
import { describe, expect, test } from 'vitest';
import { clientId } from '../../src/model/identity.js';
import type { Problem } from '../../src/model/problem.js';
import { deskPages } from '../../src/web/desk/render-desk.js';
import { fixtureLibrary } from './library-fixture.js';
import { fixturePlan } from './plan-fixture.js';

const problems: readonly Problem[] = [
  {
    code: 'unknown-key',
    severity: 'error',
    scope: { kind: 'client', client: clientId('idris-vale') },
    place: { file: 'clients/idris-vale/client.md', line: 4, column: 1, length: 3 },
    data: { key: 'kyt', nearest: 'kit' },
  },
  { code: 'unknown-key', severity: 'warning', scope: { kind: 'folder' }, data: { key: 'nmae', nearest: 'name' } },
];
const sayProblem = (problem: Problem): { message: string; hint: string } => ({
  message: `<said> ${problem.code === 'unknown-key' ? problem.data.key : problem.code}.`,
  hint: 'Write it right.',
});
const pages = new Map(
  deskPages({ library: fixtureLibrary, clients: [], plans: [fixturePlan], problems, sayProblem }).map(
    ({ path, render }) => [path, render()],
  ),
);
const page = (path: string): string => pages.get(path) ?? '';

describe('the desk', () => {
  test('lists every client, withheld ones with the reason', () => {
    const index = page('index.html');
    expect([...pages.keys()]).toEqual(['index.html', 'clients/idris-vale.html', 'clients/rowan-ashby.html']);
    expect(index).toMatch(/idris-vale<\/a>.*Withheld<\/strong><ul><li>&lt;said> kyt\./);
    expect(index).toMatch(/rowan-ashby<\/a><\/th><td>Two steady days<\/td><td><\/td><td>Ready/);
    expect(index).toContain('nmae');
    expect(index).not.toMatch(/nmae.*kyt/);
  });

  test('shows the plan at a glance, week by week', () => {
    const html = page('clients/rowan-ashby.html');
    expect(html).toContain('<th scope="col">Week 1</th><th scope="col">Week 2, easier</th>');
    expect(html).toMatch(/16\u00a0kg ×\u00a08, 2\u00a0sets/);
    expect(html).toMatch(/trial 20\u00a0kg ×\u00a04, 1\u00a0set/);
  });

  test('a step that must be earned never stands without what must be done first, and what to do otherwise', () => {
    const html = page('clients/rowan-ashby.html');
    const cells = [...html.matchAll(/<td>.*?<\/td>/g)].map(([cell]) => cell).filter((cell) => cell.includes('trial'));
    expect(cells).toHaveLength(2);
    for (const cell of cells) {
      expect(cell).toMatch(/<strong>Only if earned:<\/strong><span class="figures">16\u00a0kg ×\u00a08, 2\u00a0sets/);
      expect(cell).toMatch(/or [^<]*12\u00a0kg ×\u00a08, 3\u00a0sets/);
      expect(cell).toMatch(/First do every set of [^<]*12\u00a0kg ×\u00a09 in week\u00a01/);
      // What is tried beforehand is tried either way.
      expect(cell.indexOf('trial')).toBeLessThan(cell.indexOf('Only if earned'));
    }
  });

  test('tells what holds in several weeks once, with the weeks', () => {
    const html = page('clients/rowan-ashby.html');
    expect(html.match(/<details>/g)).toHaveLength(1);
    expect(html).toMatch(
      /<summary><h4 id="why-a-goblet-squat">Goblet squat<\/h4><\/summary><p class="lead">Weeks\u00a01 and 2: /,
    );
  });

  test('says plainly where nothing is wrong', () => {
    expect(page('clients/rowan-ashby.html')).toContain('<p>Nothing wrong was found for this client.</p>');
    const calm = deskPages({ library: fixtureLibrary, clients: [], plans: [fixturePlan], problems: [], sayProblem });
    expect(calm[0]?.render()).toContain('<p>Nothing is wrong in the folder.</p>');
  });

  test('gives every reason with its rule, and why not the next one up', () => {
    const html = page('clients/rowan-ashby.html');
    expect(html.match(/\[walk\.asked; /g)?.length).toBeGreaterThanOrEqual(2);
    expect(html).toContain('[walk.floor]');
    expect(html).toContain('Open: it may come next.');
  });

  test('says where a problem stands and what to write instead', () => {
    const html = page('clients/idris-vale.html');
    expect(html).toContain('clients/idris-vale/client.md:4:1 [unknown-key]');
    expect(html).toContain('Write it right.');
  });

  test('is not to be listed', () => {
    for (const html of pages.values()) expect(html).toContain('noindex, nofollow');
  });
});

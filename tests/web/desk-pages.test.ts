/** The coach's desk as text. */
import { describe, expect, test } from 'vitest';
import { clientId, rowId, ruleId, sessionId } from '../../src/model/identity.js';
import type { Finding } from '../../src/model/plan.js';
import type { Problem } from '../../src/model/problem.js';
import type { Reason } from '../../src/model/reason.js';
import { MUSCLE_GROUPS, type WeeklySets } from '../../src/model/weekly-sets.js';
import { deskPages } from '../../src/web/desk/render-desk.js';
import { RULEBOOK } from '../../src/web/library/render-library.js';
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
    expect(html.match(/<details><summary><h4/g)).toHaveLength(1);
    expect(html).toMatch(
      /<summary><h4 id="why-a-goblet-squat">Goblet squat<\/h4><\/summary><p class="lead">Weeks\u00a01 and 2: /,
    );
  });

  test('what is found: what the coach decides first, the rest folded away, each matter once', () => {
    const found = (rule: string, row: string, inputs: Reason['inputs']): Finding => ({
      rule,
      audience: 'coach',
      session: sessionId('a'),
      row: rowId(row),
      weeks: [1, 2],
      reason: {
        ...{ rule: ruleId(rule), says: '', inputs, source: 'common practice, no source' },
        ...{ confidence: 'measured', audience: 'coach' },
      },
    });
    const bar: Reason['inputs'] = [{ name: 'unlock: load', value: 'bar', unit: '' }];
    const of = (exercise: string): Reason['inputs'] => [{ name: 'exercise', value: exercise, unit: '' }, ...bar];
    const findings = [
      found('would-unlock', 'goblet-squat', of('front-squat')),
      found('would-unlock', 'goblet-squat', of('back-squat')),
      found('ladder-top', 'goblet-squat', []),
      found('ladder-start-lightest', 'goblet-squat', [{ name: 'load', value: 'light band', unit: '' }]),
    ];
    const plan = { ...fixturePlan, findings };
    const desk = deskPages({ library: fixtureLibrary, clients: [], plans: [plan], problems: [], sayProblem });
    const html = desk.find(({ path }) => path === 'clients/rowan-ashby.html')?.render() ?? '';
    const told = html.slice(html.indexOf('<h2>Worth knowing</h2>'), html.indexOf('<h2>Every reason</h2>'));
    const order = [
      '<h3>To decide</h3>',
      'Nothing is known yet of the goblet squat (a)',
      '<h3>Worth a look</h3>',
      'Goblet squat (a): nothing further to go to',
      '<details><summary>As the programme and the rules have it (1)</summary>',
      'Cut for time, as the programme lets it be: goblet squat',
      '<details><summary>What would open more exercises</summary>',
      'Open with a bar at home: front squat, back squat.',
    ].map((text) => [text, told.indexOf(text)] as const);
    expect(order.filter(([, at]) => at < 0)).toEqual([]);
    expect(order).toEqual([...order].sort(([, a], [, b]) => a - b));
    expect(told.match(/a bar at home/g)).toHaveLength(1);
  });

  test('says plainly where nothing is wrong', () => {
    expect(page('clients/rowan-ashby.html')).toContain('<p>Nothing wrong was found for this client.</p>');
    const calm = deskPages({ library: fixtureLibrary, clients: [], plans: [fixturePlan], problems: [], sayProblem });
    expect(calm[0]?.render()).toContain('<p>Nothing is wrong in the folder.</p>');
  });

  test('gives every reason with its rule, and why not the next one up', () => {
    const html = page('clients/rowan-ashby.html');
    expect(html.match(/\[walk\.asked; /g)?.length).toBeGreaterThanOrEqual(2);
    expect(html).toContain('<span class="ruled">Walk.floor</span>');
    expect(html).toContain('It is taken this week, if it is earned.');
  });

  test('says where a problem stands and what to write instead', () => {
    const html = page('clients/idris-vale.html');
    expect(html).toContain('clients/idris-vale/client.md:4:1 [unknown-key]');
    expect(html).toContain('Write it right.');
  });

  test('a sentence comes first, its figures folded away behind it', () => {
    const html = page('clients/rowan-ashby.html');
    const reasons = [...html.matchAll(/<li>(?:(?!<\/li>).)*\[walk\.asked; (?:(?!<\/li>).)*<\/li>/g)].map(
      ([item]) => item,
    );
    expect(reasons.length).toBeGreaterThanOrEqual(2);
    for (const reason of reasons) {
      const [sentence = '', folded = ''] = reason.split('<details class="inputs">');
      expect(sentence).not.toContain('body mass');
      expect(folded).toContain('<summary>Figures and source</summary>');
      expect(folded).toContain('body mass');
    }
  });

  test('a rule leads to its place in the rulebook, from a client’s page to the library', () => {
    const desk = deskPages({
      library: fixtureLibrary,
      clients: [],
      plans: [fixturePlan],
      problems,
      sayProblem,
      rulebook: `../../public/${RULEBOOK}`,
    });
    const html = desk.find(({ path }) => path === 'clients/rowan-ashby.html')?.render() ?? '';
    const links = [...html.matchAll(/<a class="ruled" href="([^"]+)">/g)].map(([, href = '']) => href);
    expect(links.length).toBeGreaterThan(2);
    for (const href of links) {
      const { pathname, hash } = new URL(href, 'file:///output/private/desk/clients/rowan-ashby.html');
      expect(pathname).toBe('/output/public/rulebook/index.html');
      expect(['#walk.asked', '#walk.floor']).toContain(hash);
    }
  });

  test('shows working sets by muscle, group over part, and by movement', () => {
    const sets: WeeklySets = {
      weeks: [1, 2],
      groups: MUSCLE_GROUPS.map((group) => ({ group, weeks: group === 'legs' ? [35, 20] : [0, 0] })),
      muscles: [{ muscle: 'quadriceps femoris', group: 'legs', weeks: [35, 20] }],
      patterns: [{ pattern: 'squat', weeks: [40, 20] }],
    };
    const desk = deskPages({
      library: fixtureLibrary,
      clients: [],
      plans: [fixturePlan],
      problems,
      sayProblem,
      sets: new Map([['rowan-ashby', sets]]),
    });
    const html = desk.find(({ path }) => path === 'clients/rowan-ashby.html')?.render() ?? '';
    expect(html).toContain(
      '<tr><th scope="row">Legs</th><td>3.5</td><td>2</td></tr><tr class="part"><th scope="row">Quadriceps femoris</th><td>3.5</td><td>2</td></tr>',
    );
    expect(html).toContain('<tr><th scope="row">Squat</th><td>4</td><td>2</td></tr>');
    expect(page('clients/rowan-ashby.html')).not.toContain('by muscle');
  });

  test('is not to be listed', () => {
    for (const html of pages.values()) expect(html).toContain('noindex, nofollow');
  });
});

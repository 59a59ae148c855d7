/** The public library as text. */

import { describe, expect, test } from 'vitest';
import { rulesOf } from '../../layouts/library/rules-of-exercise.js';
import { listRulebook } from '../../src/engine/rulebook.js';
import { type Ask, type Exercise, type Facts, WAYS } from '../../src/model/exercise.js';
import { exerciseId } from '../../src/model/identity.js';
import { libraryPages } from '../../src/web/library/render-library.js';
import { englishAsked } from '../../src/words/english-asks.js';
import { drawnOf } from '../fixtures/drawn.js';
import { fixturePublic } from './library-fixture.js';

const pages = new Map(
  (await libraryPages({ library: fixturePublic, rulebook: listRulebook([]) })).map(({ path, render }) => [
    path,
    render(),
  ]),
);
function exerciseOf(facts: Partial<Facts>): Exercise {
  const [first] = fixturePublic.exercises;
  if (first === undefined) throw new Error('no exercise');
  return { ...first, facts: { ...first.facts, ...facts } };
}
const page = (path: string): string => pages.get(path) ?? '';

describe('the library', () => {
  test('has its lists, every exercise, and public programmes only', () => {
    expect([...pages.keys()]).toEqual([
      'index.html',
      'by-kit.html',
      'by-what-it-asks.html',
      'easier-and-harder.html',
      'exercises/box-squat.html',
      'exercises/goblet-squat.html',
      'exercises/hostile.html',
      'programmes/two-days.html',
      'rulebook/index.html',
    ]);
    expect([...pages.values()].join('')).not.toContain('Kept for one client');
  });

  test('says on every page that it does not know the reader', () => {
    for (const html of pages.values()) expect(html).toContain('This does not know you. Ask first.');
  });

  test('finds an exercise by movement, kit, what it asks, and what it is easier than', () => {
    expect(page('index.html')).toContain('<h3>Squat</h3>');
    for (const head of ['One bell', 'Box']) expect(page('by-kit.html')).toContain(`<h2>${head}</h2>`);
    expect(page('by-what-it-asks.html')).toContain('<h2>Knee</h2>');
    expect(page('easier-and-harder.html')).toContain(
      '<td><ul class="links"><li><a href="exercises/box-squat.html">Box squat</a></li></ul></td>',
    );
  });

  test('derives the other direction of a link, and drops one that leads nowhere', () => {
    const box = page('exercises/box-squat.html');
    expect(box).toMatch(/<h3>Harder<\/h3><ul class="links"><li><a href="goblet-squat\.html">/);
    expect(page('exercises/goblet-squat.html')).not.toContain('nowhere');
  });

  test('carries no load and no amount of weight', () => {
    for (const [path, html] of pages) {
      // A rule's own figure is nobody's load.
      if (path !== 'rulebook/index.html') expect(html.replaceAll(/<[^>]*>/g, ' ')).not.toMatch(/\d\s*(kg|lb)\b/);
    }
  });

  test('sets an outline of a programme with sets and reps', () => {
    const outline = page('programmes/two-days.html');
    expect(outline).toContain('3\u00a0×\u00a06–10');
    expect(outline).toContain('A pull, as your coach chooses');
  });

  test('what to say of a fault stands in quotation marks, once', () => {
    const said = (id: string): string => page(`exercises/${id}.html`);
    expect(said('goblet-squat')).toContain('<td>‘Keep the whole foot printed on the floor.’</td>');
    expect(said('hostile')).toContain('<td>‘Stand tall.’</td>');
  });

  test('when to stop stands in a frame of its own among what is done, and what a partner does below', () => {
    const html = page('exercises/goblet-squat.html');
    const stop = '<section class="stop"><h2>Stop if</h2><ul><li>A sharp pain in the knee.</li></ul></section>';
    expect(html).toContain(`${stop}</div></div>`);
    expect(html).toContain('<h2>Partner</h2><ul><li>Watch from the side.</li></ul>');
  });

  test('says what an exercise asks as a sentence', () => {
    expect(page('exercises/goblet-squat.html')).toContain('<dd>Some of the knees at the bottom.</dd>');
    expect(page('exercises/box-squat.html')).toContain('<dd>Nothing in particular.</dd>');
    const ask = (of: Ask['of'], more: Partial<Ask> = {}): Ask => ({
      of,
      degree: 'some',
      side: 'both',
      phases: [],
      ...more,
    });
    expect(
      englishAsked([
        ask('hip', { phases: ['bottom'] }),
        ask('grip'),
        ask('knee', { phases: ['bottom'] }),
        ask('wrist', { degree: 'much' }),
        ask('shoulder', { side: 'working', phases: ['set', 'down'] }),
        ask('spinal load'),
      ]),
    ).toBe(
      'Some of the hips and knees at the bottom; some grip and load on the spine; much of the wrists; ' +
        'some of the shoulder on the working side while you set up and on the way down.',
    );
  });

  test('leads to the rules that decide what a plan says of an exercise, to each that is there', () => {
    const html = page('exercises/goblet-squat.html');
    expect(html).toContain('<a href="../rulebook/index.html#main-bell">The main bell</a>');
    expect(html).toContain('<a href="../rulebook/index.html#pain-alarm">');
    expect(page('exercises/hostile.html')).toContain('<a href="../rulebook/index.html#sign-off-lapses">');
    const rulebook = page('rulebook/index.html');
    for (const way of WAYS) {
      const ceiling = 'load overhead';
      const of = exerciseOf({ way, sides: 'each', signOff: true, room: { ceiling }, measure: 'chair stand' });
      for (const id of rulesOf(of)) expect([id, rulebook.includes(`id="${id}"`)]).toEqual([id, true]);
    }
  });

  test('of twice as many exercises each is looked at as often as before', async () => {
    const looksIn = async (many: number): Promise<number> => {
      let looks = 0;
      const { words, ...rest } = exerciseOf({});
      const exercises = Array.from(
        { length: many },
        (_, at): Exercise => ({
          ...rest,
          id: exerciseId(`squat-${at}`),
          get words() {
            looks += 1;
            return words;
          },
        }),
      );
      const made = await libraryPages({ library: { ...fixturePublic, exercises }, rulebook: [] });
      for (const { render } of made) render();
      return looks;
    };
    const looks = await looksIn(20);
    expect(looks).toBeGreaterThan(20);
    expect(await looksIn(40)).toBeLessThan(2.2 * looks);
  });

  test('a drawing stands on the page and on the line of those it leads to; without one nothing does', async () => {
    const drawings = new Map([[exerciseId('goblet-squat'), drawnOf(['Sits "down"', 'stands & waits'])]]);
    const previews = new Map([[exerciseId('goblet-squat'), { path: 'previews/goblet-squat-0.png' }]]);
    const studio = { ...fixturePublic.studio, address: 'https://slate-yard.example/library' };
    const drawn = await libraryPages({ library: { ...fixturePublic, studio }, rulebook: [], drawings, previews });
    const of = (id: string): string => drawn.find(({ path }) => path === `exercises/${id}.html`)?.render() ?? '';
    const label =
      'role="img" aria-label="Seen from the side. Sits &quot;down&quot;: standing. Stands &amp; waits: standing."';
    expect(of('goblet-squat')).toMatch(/<div class="drawing whole"><svg class="figure" viewBox="[-\d ]+"/);
    expect(of('goblet-squat')).toContain(label);
    expect(of('box-squat')).toMatch(
      /<div class="drawing small"><svg class="figure" viewBox="[-\d ]+" aria-hidden="true"/,
    );
    expect(of('box-squat')).not.toContain('drawing whole');
    expect(of('goblet-squat')).toContain(
      '<meta property="og:image" content="https://slate-yard.example/library/previews/goblet-squat-0.png"/>' +
        '<meta property="og:image:width" content="1200"/><meta property="og:image:height" content="630"/>' +
        '<meta property="og:image:alt" content="Seen from the side. Sits &quot;down&quot;: standing. Stands &amp; waits: standing."/>',
    );
    expect(of('goblet-squat')).toContain('"image":"https://slate-yard.example/library/previews/goblet-squat-0.png"');
    expect(of('box-squat')).not.toContain('og:image');
    expect(page('exercises/goblet-squat.html')).not.toMatch(/class="drawing|og:image/);
  });

  test('hostile words stay words', () => {
    for (const path of ['exercises/hostile.html', 'index.html']) {
      // What crawlers are told is data, and nothing in it can end its element.
      const html = page(path).replace(/<script type="application\/ld\+json">[^<]*<\/script>/, '');
      expect(html).not.toMatch(/<script(?! src="search\.js" defer)/);
      expect(html).not.toMatch(/href="javascript:/i);
      expect(html.replaceAll(/"[^"]*"/g, '""')).not.toMatch(/ style=| on[a-z]+=/);
    }
  });

  test('may be listed, runs nothing but the search, and asks nothing of another host', () => {
    for (const [path, html] of pages) {
      expect(html).not.toContain('noindex');
      expect(html).toContain("default-src 'none'");
      expect(html).not.toContain("'unsafe");
      const runs = [...html.matchAll(/<script src="([^"]*)"/g)].map((match) => match[1]);
      expect([path, runs]).toEqual([path, path === 'index.html' ? ['search.js'] : []]);
      expect(html.replace('"@context":"https://schema.org"', '')).not.toMatch(/https?:\/\//);
    }
  });
});

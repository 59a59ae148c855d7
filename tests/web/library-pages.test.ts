/** The public library as text. */
import { describe, expect, test } from 'vitest';
import { listRulebook } from '../../src/engine/rulebook.js';
import type { Ask } from '../../src/model/exercise.js';
import { libraryPages } from '../../src/web/library/render-library.js';
import { englishAsked } from '../../src/words/english-asks.js';
import { fixtureLibrary } from './library-fixture.js';

const pages = new Map(
  libraryPages({ library: fixtureLibrary, rulebook: listRulebook([]) }).map(({ path, render }) => [path, render()]),
);
const page = (path: string): string => pages.get(path) ?? '';

describe('the library', () => {
  test('has an index, every exercise, and public programmes only', () => {
    expect([...pages.keys()]).toEqual([
      'index.html',
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
    const index = page('index.html');
    for (const head of ['Squat', 'One bell', 'Knee', 'Box']) expect(index).toContain(`<h3>${head}</h3>`);
    expect(index).toContain(
      '<td><ul class="links"><li><a href="exercises/box-squat.html">Box squat</a></li></ul></td>',
    );
  });

  test('derives the other direction of a link, and drops one that leads nowhere', () => {
    const box = page('exercises/box-squat.html');
    expect(box).toMatch(/<h2>Harder<\/h2><ul class="links"><li><a href="goblet-squat\.html">/);
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

  test('hostile words stay words', () => {
    const html = page('exercises/hostile.html');
    expect(html).not.toContain('<script');
    expect(html).not.toMatch(/href="javascript:/i);
    expect(html).not.toMatch(/ style=| on[a-z]+="/);
  });

  test('may be listed, runs nothing, and asks nothing of another host', () => {
    for (const html of pages.values()) {
      expect(html).not.toContain('noindex');
      expect(html).toContain("default-src 'none'");
      expect(html).not.toContain('script-src');
      expect(html).not.toMatch(/https?:\/\//);
    }
  });
});

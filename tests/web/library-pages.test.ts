/** The public library as text. */
import { describe, expect, test } from 'vitest';
import { libraryPages } from '../../src/web/library/render-library.js';
import { fixtureLibrary } from './library-fixture.js';

const pages = new Map(libraryPages(fixtureLibrary).map(({ path, render }) => [path, render()]));
const page = (path: string): string => pages.get(path) ?? '';

describe('the library', () => {
  test('has an index, every exercise, and public programmes only', () => {
    expect([...pages.keys()]).toEqual([
      'index.html',
      'exercises/box-squat.html',
      'exercises/goblet-squat.html',
      'exercises/hostile.html',
      'programmes/two-days.html',
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
    for (const html of pages.values()) expect(html.replaceAll(/<[^>]*>/g, ' ')).not.toMatch(/\d\s*(kg|lb)\b/);
  });

  test('sets an outline of a programme with sets and reps', () => {
    const outline = page('programmes/two-days.html');
    expect(outline).toContain('3\u00a0×\u00a06–10');
    expect(outline).toContain('A pull, as your coach chooses');
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

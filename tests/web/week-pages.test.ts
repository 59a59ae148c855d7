/** Weeks at a glance and the exercises of their days, as they stand in the page before any script. */
import { gzipSync } from 'node:zlib';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { BookBody } from '../../layouts/book/book.js';
import { bookOf } from '../../layouts/book/leaves.js';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import type { Booklet, Cell, SessionPart } from '../../src/model/booklet.js';
import { sessionId } from '../../src/model/identity.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { renderPayload } from '../../src/web/render-booklet.js';
import { speechOf } from '../../src/words/speech.js';
import { everyShapeBooklet } from '../browser/every-shape-booklet.js';
import { fixtureBooklet } from '../fixtures/booklet.js';
import { cell, load } from '../fixtures/booklet-pieces.js';
import { planDemo } from '../studio/demo-plans.js';

const drawn = (booklet: Booklet): string =>
  renderToString(BookBody({ book: bookOf(booklet, speechOf(booklet.language).words) })).replaceAll('\u00a0', ' ');
const leavesOf = (html: string, kind: string): readonly string[] =>
  [...html.matchAll(new RegExp(`<article class="leaf ${kind}"[\\s\\S]*?</article>`, 'g'))].map(([leaf]) => leaf);
const figuresIn = (html: string): readonly string[] =>
  leavesOf(html, 'week').flatMap((leaf) => [...leaf.matchAll(/<b>([^<]*)<\/b><\/a>/g)].map(([, said = '']) => said));

/** A booklet of one row with this cell, in its first week. */
function withCell(own: Cell): Booklet {
  const parts = fixtureBooklet.parts.map((part) =>
    part.kind === 'session' ? { ...part, rows: part.rows.slice(0, 1).map((row) => ({ ...row, cells: [own] })) } : part,
  );
  return { ...fixtureBooklet, parts };
}
const work = { week: 1, occurrence: 1, row: 'goblet-squat', amount: '8', load: load('16') };
const lineOf = (own: Cell): string => figuresIn(drawn(withCell(own)))[0] ?? '';

describe('the line of an exercise', () => {
  test('says how many sets, of both sides once where they are alike', () => {
    expect(lineOf(cell({ ...work, sets: 1 }))).toBe('16 kg × 8, 1 set');
    expect(lineOf(cell({ ...work, sets: 3 }))).toBe('16 kg × 8, 3 sets');
    expect(lineOf(cell({ ...work, sets: 3, sides: ['right', 'left'] }))).toBe('16 kg × 8, 3 sets each side');
  });

  test('says them side by side where one does otherwise, and of a set that is tried first the work alone', () => {
    const carry = figuresIn(drawn(everyShapeBooklet)).find((said) => said.includes('Left'));
    expect(carry).toBe('Left: 12 kg, 20 m, 2 sets; Right: 12 kg, 20 m, 1 set; Right: 16 kg, 20 m, 1 set');
    const trial = { text: 'Try', load: load('20'), amount: '4' };
    expect(lineOf(cell({ ...work, sets: 3, trial }))).toBe('try 20 kg × 4, then 16 kg × 8, 2 sets');
  });

  test('does not part a range of figures', () => {
    const html = leavesOf(drawn(withCell(cell({ ...work, sets: 2, amount: '4–10' }))), 'week')[0] ?? '';
    expect(html).toContain('<span class="range">4–10</span>');
  });

  test('keeps room for every line of its tally but the first, and for the name of each side', () => {
    const roomOf = (own: Cell): string | undefined =>
      /<li( class="[^"]*")?><a href="#w1-/.exec(leavesOf(drawn(withCell(own)), 'week')[0] ?? '')?.[1]?.slice(8, -1);
    expect(roomOf(cell({ ...work, sets: 5 }))).toBeUndefined();
    expect(roomOf(cell({ ...work, sets: 6 }))).toBe('lines-2');
    expect(roomOf(cell({ ...work, sets: 3, sides: ['left', 'right'] }))).toBe('lines-2 sided');
    expect(roomOf(cell({ ...work, sets: 11 }))).toBe('lines-3');
    expect(roomOf(cell({ ...work, sets: 20, sides: ['left', 'right'] }))).toBe('lines-4 sided');
  });
});

test('no leaf of a week, of a session or of an exercise on its day says before any script that its sets are to be done', () => {
  for (const booklet of [fixtureBooklet, everyShapeBooklet]) {
    const html = drawn(booklet);
    for (const kind of ['week', 'session', 'turn', 'cool-down']) {
      const leaves = leavesOf(html, kind);
      if (kind !== 'cool-down') expect(leaves.length).toBeGreaterThan(1);
      expect(leaves.filter((leaf) => leaf.includes('<svg'))).toEqual([]);
    }
  }
});

describe('the order in the page', () => {
  const sessions = fixtureBooklet.parts.filter((part): part is SessionPart => part.kind === 'session');
  const orderOf = (ids: readonly string[]): readonly string[] => {
    const [pattern] = sessions;
    if (pattern === undefined) return [];
    const own = ids.map((id): SessionPart => ({ ...pattern, id: sessionId(id) }));
    const others = fixtureBooklet.parts.filter(({ kind }) => kind !== 'session');
    const at = fixtureBooklet.parts.findIndex(({ kind }) => kind === 'session');
    const booklet = { ...fixtureBooklet, parts: [...others.slice(0, at), ...own, ...others.slice(at)] };
    const book = bookOf(booklet, speechOf('en-GB').words);
    expect(new Set(book.inPage)).toEqual(new Set(book.leaves));
    return [...new Set(book.inPage.flatMap((leaf) => (leaf.kind === 'turn' ? [leaf.day.session.id] : [])))];
  };

  test('of three sessions and more the exercises of the first stand right before the pages of exercises', () => {
    expect(orderOf(['a'])).toEqual(['a']);
    expect(orderOf(['a', 'b'])).toEqual(['a', 'b']);
    expect(orderOf(['a', 'b', 'c'])).toEqual(['b', 'c', 'a']);
    expect(orderOf(['a', 'b', 'c', 'd'])).toEqual(['b', 'c', 'd', 'a']);
  });
});

test('words and plan of the demo’s booklets weigh 25 KB at most as they are sent; three do not, and get no heavier', async () => {
  const KB = 1024;
  const HEAVIER: Readonly<Record<string, number>> = { 'aldous-brack': 28, 'edda-marlow': 27.7, 'torben-slade': 36 };
  const demo = await planDemo();
  expect(demo.plans.size).toBeGreaterThan(12);
  const over = demo.clients.flatMap((client): readonly string[] => {
    const plan = demo.plans.get(client.id);
    if (plan === undefined) return [];
    const { html } = renderPayload(composeBooklet({ library: demo.library, client, plan }), clientPlanOf(plan));
    const weighs = gzipSync(html, { level: 9 }).length / KB;
    return weighs > (HEAVIER[client.id] ?? 25) ? [`${client.id}: ${weighs.toFixed(2)}`] : [];
  });
  expect(over).toEqual([]);
});

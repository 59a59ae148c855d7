/** What drawings weigh, compressed as a host sends them: each alone with its movement, and one more in a booklet. */
import { gzipSync } from 'node:zlib';
import { h } from 'preact';
import { render } from 'preact-render-to-string';
import { beforeAll, describe, expect, test } from 'vitest';
import { FigureRow } from '../../layouts/figure.js';
import { movementOf } from '../../layouts/movement.js';
import { renderPayload } from '../../src/web/render-booklet.js';
import { type Issued, issuedFor } from '../browser/train-page.js';

const weighs = (text: string): number => gzipSync(text, { level: 9 }).length;

/** Bytes: of one alone; of one more in a booklet, on average; of all in a booklet. */
const ALONE = 6 * 1024;
const ONE_MORE = 1.5 * 1024;
const TOGETHER = 25 * 1024;

let issued: Issued;
beforeAll(async () => {
  issued = await issuedFor('rowan-ashby');
}, 300_000);

test('each drawing alone, with what moves it', () => {
  expect(issued.drawings.size).toBeGreaterThan(20);
  const sizes = [...issued.drawings].map(([id, { drawing }]) => {
    const markup = render(h(FigureRow, { drawing, id: `drawn-${id}`, alt: '' }));
    return [id, weighs(markup + JSON.stringify(movementOf(drawing)))] as const;
  });
  expect(sizes.filter(([, size]) => size > ALONE)).toEqual([]);
  // What is weighed is a drawing.
  expect(Math.min(...sizes.map(([, size]) => size))).toBeGreaterThan(500);
});

describe('the drawings of a booklet', () => {
  test('weigh little each, and together leave room for the words', () => {
    const { booklet, sent, drawings } = issued;
    const drawn = booklet.parts.filter((part) => part.kind === 'exercise' && drawings.has(part.id)).length;
    expect(drawn).toBeGreaterThan(15);
    const more = weighs(renderPayload(booklet, sent, drawings).html) - weighs(renderPayload(booklet, sent).html);
    expect(more / drawn).toBeLessThanOrEqual(ONE_MORE);
    expect(more).toBeLessThanOrEqual(TOGETHER);
    expect(more / drawn).toBeGreaterThan(200);
  });
});

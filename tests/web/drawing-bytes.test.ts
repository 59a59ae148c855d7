/** What drawings weigh, compressed as a host sends them: one more in a booklet, and all of them. */
import { gzipSync } from 'node:zlib';
import { beforeAll, describe, expect, test } from 'vitest';
import { renderPayload } from '../../src/web/render-booklet.js';
import { type Issued, issuedFor } from '../browser/train-page.js';

const weighs = (text: string): number => gzipSync(text, { level: 9 }).length;

/** Bytes: of one more in a booklet, on average; of all in a booklet. */
const ONE_MORE = 1.5 * 1024;
const TOGETHER = 25 * 1024;

let issued: Issued;
beforeAll(async () => {
  issued = await issuedFor('rowan-ashby');
}, 300_000);

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

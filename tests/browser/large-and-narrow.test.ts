/**
 * The training screens for who sees them otherwise: text at 200 % (WCAG 2.2, 1.4.4), from so near that 320 × 256 CSS pixels are left
 * (1.4.10, reflow at 400 %), with wider spacing (1.4.12), and with the phone laid on its side (1.3.4). On each nothing is wider than
 * the screen, no words are cut off, and the main button can be reached.
 */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import { bookletId } from '../../src/model/identity.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { renderBookletFile } from '../../src/web/render-booklet.js';
import { englishPhone as WORDS } from '../../src/words/english-phone.js';
import { everyShapeBooklet, everyShapeDrawings, everyShapeSent } from './every-shape-booklet.js';
import { phoneInHand } from './phone-in-hand.js';
import { BOOKLET, kindOf, nextTap, says, tap, toTraining } from './train-page.js';

const SPACED =
  '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-block-end: 2em !important }';

const WAYS = [
  ['text at 200 %', 360, 640, ':root { font-size: 200% }'],
  ['text at 200 % on a small phone', 320, 568, ':root { font-size: 200% }'],
  ['from very near', 320, 256, ''],
  ['wider spacing', 360, 640, SPACED],
  ['on its side', 640, 360, ''],
] as const;

const phone = phoneInHand('large');

beforeAll(async () => {
  const parts = await prepareShell(webSources());
  const sent = { ...everyShapeSent, bookletId: bookletId(BOOKLET) };
  await writeFile(
    join(phone.folder, 'shapes.html'),
    renderBookletFile(everyShapeBooklet, sent, parts, everyShapeDrawings),
  );
});

async function open(): Promise<Page> {
  const context = await phone.hold();
  const page = await context.newPage();
  await page.clock.install({ time: new Date('2027-01-04T18:00:00') });
  await page.goto(phone.addressOf('shapes.html'));
  await page.evaluate(() => {
    document.adoptedStyleSheets = [new CSSStyleSheet()];
  });
  await toTraining(page);
  return page;
}

/**
 * What of the screen that stands is lost: what is wider than it, words in a box that hides what does not fit in it, words that
 * run out of the button they stand in or are broken in two there, and a main button that no scrolling brings to the finger.
 */
const lost = (page: Page, css: string): Promise<readonly string[]> =>
  page.evaluate(async (style) => {
    document.adoptedStyleSheets[0]?.replaceSync(style);
    // The bar's height is told to the sheet once it has been laid out: who watches it later is told after.
    const laidOut = document.querySelector('#training .bar') ?? document.body;
    await new Promise<void>((done) => new ResizeObserver(() => done()).observe(laidOut));
    const all = [...document.querySelectorAll<HTMLElement>('#training *:not(.heard, .heard *, svg, svg *)')];
    const shown = all.filter((one) => one.getClientRects().length > 0);
    const named = (one: Element): string => `${one.tagName} ${one.className} ${one.textContent}`;
    const bar = document.querySelector('#training .bar');
    const fixed = bar !== null && getComputedStyle(bar).position === 'fixed';
    const height = bar?.getBoundingClientRect().height ?? 0;
    const found = [
      ...(document.documentElement.scrollWidth > innerWidth ? [`${document.documentElement.scrollWidth} px wide`] : []),
      ...(fixed && height > 0.4 * innerHeight ? [`a fixed bar of ${height} of ${innerHeight} px`] : []),
      ...shown
        .filter((one) => {
          const { left, right } = one.getBoundingClientRect();
          return left < -1 || right > innerWidth + 1;
        })
        .map((one) => `beside the screen: ${named(one)}`),
      ...shown
        .filter((one) => {
          const { overflowX, overflowY, display } = getComputedStyle(one);
          if (display === 'inline') return false;
          const hides = overflowX !== 'visible' || overflowY !== 'visible' || one.classList.contains('tap');
          return hides && (one.scrollWidth > one.clientWidth + 1 || one.scrollHeight > one.clientHeight + 1);
        })
        .map((one) => `cut off: ${named(one)}`),
    ];
    const texts = shown.flatMap((one) =>
      one.classList.contains('tap') ? [...one.childNodes].filter((node): node is Text => node instanceof Text) : [],
    );
    for (const text of texts) {
      // A word with a hyphen in it may end a line there.
      for (const { 0: word, index } of text.data.matchAll(/[^\s-]+/g)) {
        const range = document.createRange();
        range.setStart(text, index);
        range.setEnd(text, index + word.length);
        if (range.getClientRects().length > 1) found.push(`broken in two: ${word} of ${text.data}`);
      }
    }
    const main = document.querySelector('#training-main');
    main?.scrollIntoView({ block: 'nearest' });
    const { left, right, top, bottom } = main?.getBoundingClientRect() ?? new DOMRect();
    if (main && document.elementFromPoint((left + right) / 2, (top + bottom) / 2)?.closest('#training-main') !== main)
      found.push('the main button cannot be reached');
    if (main && bottom > innerHeight + 1) found.push(`the main button ends at ${bottom} of ${innerHeight} px`);
    document.adoptedStyleSheets[0]?.replaceSync('');
    return found;
  }, css);

interface Looking {
  readonly at: () => Promise<void>;
  readonly met: ReadonlySet<string>;
  readonly found: Readonly<Record<string, readonly string[]>>;
}

/** Looks at the screen that stands in every way, once for each heading of its kind. */
function looking(page: Page): Looking {
  const met = new Set<string>();
  const found: Record<string, readonly string[]> = {};
  const at = async (): Promise<void> => {
    const title = `${await kindOf(page)}: ${await page.locator('#training h2').textContent()}`;
    if (met.has(title)) return;
    met.add(title);
    for (const [way, width, height, css] of WAYS) {
      await page.setViewportSize({ width, height });
      const wrong = await lost(page, css);
      if (wrong.length > 0) found[`${title}, ${way}`] = wrong;
    }
    await page.setViewportSize({ width: 360, height: 640 });
  };
  return { at, met, found };
}

test('every shape of an exercise, at work and at rest, from the first screen to the last', async () => {
  const page = await open();
  const { at, met, found } = looking(page);
  for (let taps = 0; taps < 160 && (await kindOf(page)) !== 'finished'; taps += 1) {
    await at();
    await tap(page, nextTap(await kindOf(page)));
  }
  await at();
  await tap(page, says(WORDS.send));
  await at();
  expect(met.size).toBeGreaterThan(15);
  expect(found).toEqual({});
});

test('what stands beside the way: this phone, easier today, something hurts, another way', async () => {
  const page = await open();
  const { at, met, found } = looking(page);
  const tapAndLook = async (...buttons: readonly string[]): Promise<void> => {
    for (const button of buttons) {
      await tap(page, says(button));
      await at();
    }
  };
  await tapAndLook(WORDS.thisPhone, WORDS.back);
  for (let taps = 0; taps < 20 && (await kindOf(page)) !== 'set resting'; taps += 1)
    await tap(page, nextTap(await kindOf(page)));
  await tapAndLook(WORDS.easierToday, WORDS.back, WORDS.somethingHurts);
  await tapAndLook(WORDS.signs.fainting, WORDS.slip, WORDS.noneOfThese, WORDS.parts.knee, WORDS.side.left);
  await tapAndLook('1', WORDS.take.gently);
  await tap(page, '#training .pair button >> nth=0');
  await at();
  await tapAndLook(WORDS.keepThis);
  for (let taps = 0; taps < 60 && (await page.locator('#training h2').textContent()) !== WORDS.howManyMore; taps += 1)
    await tap(page, nextTap(await kindOf(page)));
  // Of an exercise that is over, and of so much that others wait with it.
  await tapAndLook(WORDS.somethingHurts, WORDS.noneOfThese, WORDS.parts.neck, '9');
  expect(met.size).toBeGreaterThan(9);
  expect(found).toEqual({});
});

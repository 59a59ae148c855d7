/**
 * A session on a phone, tapped through: what is read aloud, where a thumb must reach, what stands in the bar, and that
 * every mark is kept once. On every screen the rules of axe-core.
 */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import { logOf } from '../../src/content/read-log.js';
import { plainText } from '../../src/model/prose.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { renderBookletFile } from '../../src/web/render-booklet.js';
import { englishPhone as WORDS } from '../../src/words/english-phone.js';
import { withItems } from '../session/with-items.js';
import { contrastOf } from './contrast.js';
import { holdPhone } from './phone.js';
import { phoneInHand } from './phone-in-hand.js';
import { faultsOf, rivalsOf } from './screen-rules.js';
import {
  BOOKLET,
  eventsIn,
  type Issued,
  issuedFor,
  keysOf,
  kindOf,
  nextTap,
  says,
  tap,
  toTraining,
} from './train-page.js';

const START = new Date('2027-01-04T18:00:00');
const phone = phoneInHand('training');
let issued: Issued;

beforeAll(async () => {
  issued = await issuedFor('rowan-ashby');
  const parts = await prepareShell(webSources());
  await writeFile(
    join(phone.folder, 'booklet.html'),
    renderBookletFile(issued.booklet, issued.sent, parts, issued.drawings),
  );
});

interface Opened {
  readonly width?: number;
  readonly height?: number;
  readonly scheme?: 'light' | 'dark';
}

async function open({ width = 360, height = 640, scheme = 'light' }: Opened = {}): Promise<Page> {
  const page = await openOn(await phone.hold({ width, scheme }));
  await page.setViewportSize({ width, height });
  return page;
}

async function openOn(context: BrowserContext, name = 'booklet.html'): Promise<Page> {
  const page = await context.newPage();
  await page.clock.install({ time: START });
  await page.goto(phone.addressOf(name));
  await toTraining(page);
  return page;
}

async function untilSet(page: Page): Promise<void> {
  for (let taps = 0; taps < 12 && !(await kindOf(page)).startsWith('set'); taps += 1) {
    await tap(page, nextTap(await kindOf(page)));
  }
  // What leads to the work is passed, so that the work itself is looked at.
  while ((await page.locator('.set-line').first().textContent())?.includes('warm up')) {
    await tap(page, '#training-main');
    if ((await kindOf(page)).includes('resting')) await tap(page, '#training-main');
  }
  expect(await kindOf(page)).toBe('set');
}

describe('one set', () => {
  test('is read aloud in order: heading, all of it in one breath, image, cues, buttons', async () => {
    const page = await open();
    await untilSet(page);
    // As a screen reader has it: what the eye has beside it is not in it a second time.
    const tree = (await page.locator('#training').ariaSnapshot()).replaceAll('\u00a0', ' ');
    const [section, heading, breath, image, list, ...rest] = tree.split('\n').map((line) => line.trim());
    expect(section).toBe('- region "Training":');
    expect(heading).toBe('- heading "Goblet squat" [level=2]');
    expect(breath).toMatch(
      /^- paragraph: Exercise 1 of \d\. \d+ kilograms, \d+ reps\. Set 1 of \d\. Leave \d( or \d)? in reserve\.$/,
    );
    expect(image).toMatch(/^- '?img "Seen from the side\. Start: standing, .+ a bell in both hands .+"'?$/);
    expect(list).toBe('- list:');
    const cues = issued.booklet.parts.flatMap((part) =>
      part.kind === 'session' ? part.rows.filter(({ exercise }) => exercise === 'goblet-squat') : [],
    )[0]?.cues;
    expect(cues).toHaveLength(3);
    expect(rest.slice(0, 3)).toEqual(cues?.map((line) => `- listitem: ${plainText(line)}`));
    expect(rest.slice(3, 6)).toEqual(
      ['Easier today', 'Something hurts', 'Set 1 done'].map((said) => `- button "${said}"`),
    );
  });

  test('where no easier way is left, none is offered, at work and in the rest after it', async () => {
    const stiff = withItems(issued.sent, (item) => ({ ...item, easier: [] }));
    const html = renderBookletFile(issued.booklet, stiff, await prepareShell(webSources()), issued.drawings);
    await writeFile(join(phone.folder, 'stiff.html'), html);
    const page = await openOn(await phone.hold(), 'stiff.html');
    await untilSet(page);
    for (const kind of ['set', 'set resting']) {
      expect(await kindOf(page)).toBe(kind);
      expect(await page.locator(says(WORDS.easierToday)).count()).toBe(0);
      expect(await page.locator(says(WORDS.somethingHurts)).count()).toBe(1);
      await tap(page, '#training-main');
    }
  });

  test('below the fold: what stops it, and what may go wrong, as the whole page of the exercise has it', async () => {
    const page = await open();
    await untilSet(page);
    const part = issued.booklet.parts.find((one) => one.kind === 'exercise' && one.id === 'goblet-squat');
    const faults = part?.kind === 'exercise' ? part.sections.find(({ name }) => name === 'faults') : undefined;
    expect(faults?.lines.length).toBeGreaterThan(1);
    const rows = await page
      .locator('#training .below .faults tbody tr')
      .evaluateAll((all) => all.map((row) => [...row.children].map((cell) => cell.textContent?.trim())));
    expect(rows).toEqual(faults?.lines.map(({ lead, text }) => [plainText(lead), plainText(text)]));
    expect(await page.locator('#training .below .faults h3').textContent()).toBe(faults?.title);
    // None of it stands above the fold.
    const bar = (await page.locator('#training .bar').boundingBox()) ?? expect.fail();
    const table = (await page.locator('#training .below .faults').boundingBox()) ?? expect.fail();
    expect(table.y).toBeGreaterThan(bar.y);
    expect(await page.locator('#training .below .stop').count()).toBe(1);
  });

  test.each([
    [360, 592],
    [320, 568],
  ] as const)('at %i × %i, while one rests, something hurts can be said without scrolling', async (width, height) => {
    const page = await open({ width, height });
    await untilSet(page);
    await tap(page, '#training-main');
    expect(await kindOf(page)).toContain('resting');
    const hurts = page.locator('#training button:text-is("Something hurts")');
    const [button, bar] = await Promise.all([hurts.boundingBox(), page.locator('#training .bar').boundingBox()]);
    if (!button || !bar) expect.fail('both are there');
    expect(button.y + button.height).toBeLessThanOrEqual(bar.y);
    // Of the signs none is the last thing to be seen: what answers *none of them* shows its head.
    await tap(page, '#training button:text-is("Something hurts")');
    const none = (await page.locator('#training-main').boundingBox()) ?? expect.fail();
    expect(none.y).toBeLessThan(height - 8);
  });

  test('marked by one tap: the focus stays, two polite sentences are said, and the clock is silent', async () => {
    const page = await open();
    await untilSet(page);
    await page.evaluate(() => {
      const said: string[] = [];
      Object.assign(window, { said });
      const line = document.getElementById('training-says');
      if (line)
        new MutationObserver(() => said.push(line.textContent ?? '')).observe(line, {
          childList: true,
          characterData: true,
          subtree: true,
        });
    });
    await page.locator('#training-main').focus();
    await tap(page, '#training-main');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('training-main');
    expect(await page.locator('#training-main').textContent()).toBe('Start set 2');
    for (let seconds = 0; seconds < 130; seconds += 5) await page.clock.runFor(5000);
    const said = await page.evaluate(() =>
      (window as unknown as { said: string[] }).said.filter((text) => text !== ''),
    );
    expect(said).toHaveLength(2);
    expect(said[0]).toMatch(/^Set 1 marked\. Rest, \d+ seconds\.$/);
    expect(said[1]).toBe('Rest over. Set 2 when you are ready.');
    expect(await page.locator('.clock').getAttribute('class')).toContain('over');
    expect(await page.locator('.clock').evaluate((clock) => clock.closest('[aria-hidden="true"]') !== null)).toBe(true);
  });

  test('the rest is the clock’s: right after five minutes unseen, and after a reload', async () => {
    const page = await open();
    await untilSet(page);
    await tap(page, '#training-main');
    const over = await page.locator('.clock').getAttribute('data-over');
    await page.clock.runFor(10_000);
    await page.reload();
    await page.waitForSelector('#training .clock');
    expect(await page.locator('.clock').getAttribute('data-over')).toBe(over);
    const left = Number(over) - (await page.evaluate(() => Date.now()));
    await page.clock.runFor(300);
    const shown = (await page.locator('.clock').textContent()) ?? '';
    const [minutes = 0, seconds = 0] = shown.split(':').map(Number);
    expect(Math.abs(60 * minutes + seconds - left / 1000)).toBeLessThanOrEqual(2);
    await page.clock.fastForward(300_000);
    await page.clock.runFor(300);
    expect(await page.locator('.clock').textContent()).toBe('0:00');
  });

  test('two taps within six tenths of a second are one stroke; a finger that slides off leaves none', async () => {
    const page = await open();
    await untilSet(page);
    const before = (await eventsIn(page)).length;
    const box = (await page.locator('#training-main').boundingBox()) ?? expect.fail();
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.touchscreen.tap(x, y);
    await page.clock.runFor(100);
    await page.touchscreen.tap(x + 6, y + 4);
    await page.clock.runFor(700);
    await page.locator('.training-sheet.resting').waitFor();
    expect((await eventsIn(page)).length).toBe(before + 1);
    // However late the page came to them.
    await page.clock.runFor(700);
    // On to the next set, then a finger down on the button that comes up far from it.
    await page.touchscreen.tap(x, y);
    await page.clock.runFor(700);
    await page.locator('.training-sheet:not(.resting)').waitFor();
    await page.clock.runFor(700);
    const session = await page.context().newCDPSession(page);
    const at = (type: 'touchStart' | 'touchMove' | 'touchEnd', px: number, py: number) =>
      session.send('Input.dispatchTouchEvent', { type, touchPoints: type === 'touchEnd' ? [] : [{ x: px, y: py }] });
    await at('touchStart', x, y);
    await at('touchMove', x, y - 60);
    await at('touchMove', x, y - 160);
    await at('touchEnd', x, y - 160);
    expect((await eventsIn(page)).length).toBe(before + 1);
    // A wobble of twelve pixels is still a tap.
    await at('touchStart', x - 6, y);
    await at('touchMove', x + 6, y + 3);
    await at('touchEnd', x + 6, y + 3);
    await page.clock.runFor(700);
    await expect.poll(async () => (await eventsIn(page)).length).toBe(before + 2);
  });
});

/** Pixels from edge to edge. */
const LEAST_APART = 12;
const apart = (one: Target, other: Target): number =>
  Math.round(
    10 * Math.max(other.left - one.right, one.left - other.right, other.top - one.bottom, one.top - other.bottom),
  ) / 10;

interface Target {
  readonly name: string;
  readonly inBar: boolean;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Whatever of the screen can be tapped within `selectors`, as it stands. */
const targetsIn = (page: Page, ...selectors: readonly string[]): Promise<readonly Target[]> =>
  page.evaluate(
    (within) =>
      [...document.querySelectorAll('#training button, #training a, #training summary')]
        .filter((one) => one.closest(within) !== null && one.getClientRects().length > 0)
        .map((one) => {
          const { left, right, top, bottom } = one.getBoundingClientRect();
          return { name: one.textContent ?? '', inBar: one.closest('.bar') !== null, left, right, top, bottom };
        }),
    selectors.join(),
  );

/** What the bar lies over moves beneath it. */
const tooClose = (targets: readonly Target[]): readonly string[] =>
  targets.flatMap((one, i) =>
    targets
      .slice(i + 1)
      .filter((other) => other.inBar === one.inBar && apart(one, other) < LEAST_APART)
      .map((other) => `${one.name} and ${other.name}: ${apart(one, other)}`),
  );

/** What is tapped during a set, by what it says and how far down it begins. */
const HAND = ['.bar', '.training-page > .answers'] as const;

describe('a whole session', () => {
  test.each([
    [360, 592, 'light'],
    [320, 568, 'dark'],
  ] as const)(
    'at %i × %i, %s: within reach of a thumb, every mark once, every screen in order',
    async (width, height, scheme) => {
      const page = await open({ width, height, scheme });
      const seen = new Set<string>();
      const high: string[] = [];
      const close: string[] = [];
      const saysSo = new Set<string>();
      for (let taps = 0; taps < 250; taps += 1) {
        const kind = await kindOf(page);
        const name = `${kind} ${await page.locator('#training h2').textContent()}`;
        if (!seen.has(name)) {
          seen.add(name);
          expect({ name, faults: await faultsOf(page), rivals: await rivalsOf(page) }).toEqual({
            name,
            faults: [],
            rivals: [],
          });
        }
        if (kind === 'finished') break;
        const selector = nextTap(kind);
        const box = (await page.locator(selector).first().boundingBox()) ?? expect.fail(name);
        if (box.y < 0.4 * height) high.push(`${name}: ${Math.round(box.y)}`);
        if (/^(set|question|around)/.test(kind)) {
          const targets = await targetsIn(page, ...HAND);
          for (const { name: says, top } of targets)
            if (top < 0.4 * height) high.push(`${name}, ${says}: ${Math.round(top)}`);
          if (!kind.startsWith('set')) close.push(...tooClose(targets).map((one) => `${name}, ${one}`));
          if (targets.some(({ name: says, bottom }) => says === WORDS.somethingHurts && bottom <= height))
            saysSo.add(kind.startsWith('set') ? 'set' : `${await page.locator('#training h2').textContent()}`);
        }
        await tap(page, selector);
      }
      expect(await kindOf(page)).toBe('finished');
      // Nothing is tapped above two fifths of the screen; during a set there is nothing there to be tapped.
      expect(high).toEqual([]);
      expect(close).toEqual([]);
      // Without scrolling, at any time.
      expect([...saysSo]).toEqual([WORDS.howIsToday, WORDS.around['warm-up'], 'set', WORDS.howManyMore, WORDS.howHard]);
      const events = await eventsIn(page);
      const keys = events.flatMap(({ kind, key }) => (kind === 'set' && key !== undefined ? [key] : []));
      expect([...keys].sort()).toEqual([...keysOf(issued.sent, 1)].sort());
      expect(logOf({ schema: 1, bookletId: BOOKLET, device: 'phone-1', events })).not.toHaveProperty('why');
      expect(events.map(({ kind }) => kind).filter((kind) => kind !== 'set' && kind !== 'reserve')).toEqual([
        'opened',
        'closed',
      ]);
    },
  );

  test('sounds and vibration change nothing of what is kept', async () => {
    const kept: unknown[] = [];
    for (const loud of [false, true]) {
      const page = await open();
      if (loud) {
        await tap(page, '.answers .tap >> nth=0');
        for (const name of [1, 2]) await tap(page, `.switch >> nth=${name}`);
        await tap(page, '#training-main');
      }
      await untilSet(page);
      for (let taps = 0; taps < 6; taps += 1) await tap(page, nextTap(await kindOf(page)));
      const events = await eventsIn(page);
      kept.push(events.map((event) => ({ ...event, id: '', at: '' })));
    }
    expect(kept[1]).toEqual(kept[0]);
  });
});

describe('for everybody', () => {
  // One session goes on through these: how the screen is held is all that differs.
  let held: BrowserContext;
  let page: Page;
  beforeAll(async () => {
    held = await holdPhone(phone.browser);
    page = await openOn(held);
  });
  afterAll(() => held?.close());

  async function atWork(width: number, height: number): Promise<void> {
    await page.setViewportSize({ width, height });
    await page.evaluate(() => {
      document.adoptedStyleSheets = [];
    });
    // Whatever was marked is rubbed out, so that each finds the same set.
    if ((await kindOf(page)).includes('resting')) await tap(page, '#training button:text-matches("^Rub out")');
    if ((await kindOf(page)).includes('resting')) await tap(page, '#training-main');
    await untilSet(page);
    await page.waitForFunction((size) => matchMedia(size).matches, `(width: ${width}px) and (height: ${height}px)`);
    await page.evaluate(() => scrollTo(0, 0));
    await laidOut();
  }

  /** Its faces are there, and what the page measures of itself was measured as it stands: this asks in the same frame, and last. */
  const laidOut = (): Promise<void> =>
    page.evaluate(async () => {
      await document.fonts.ready;
      await new Promise<void>((done) => {
        const asked = new ResizeObserver(() => {
          asked.disconnect();
          done();
        });
        asked.observe(document.documentElement);
      });
    });

  test.each([
    ['text at twice its size on 320 px', 320, 568, 'html { font-size: 200% !important }'],
    ['four times as near', 320, 256, ''],
    ['on its side', 640, 320, ''],
    [
      'more space between letters, words and lines',
      320,
      568,
      '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-block-end: 2em !important }',
    ],
  ] as const)(
    '%s: nothing is wider than the screen, and the main button can be reached',
    async (_, width, height, style) => {
      await atWork(width, height);
      if (style !== '') {
        await page.evaluate((rules) => {
          const sheet = new CSSStyleSheet();
          sheet.replaceSync(rules);
          document.adoptedStyleSheets = [sheet];
        }, style);
        await laidOut();
      }
      expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
      await page.locator('#training-main').scrollIntoViewIfNeeded();
      const box = (await page.locator('#training-main').boundingBox()) ?? expect.fail();
      expect(box.y + box.height).toBeLessThanOrEqual(height + 1);
      await tap(page, '#training-main');
      expect(await kindOf(page)).toContain('resting');
    },
  );

  test.each([
    [360, 592],
    [320, 568],
    [640, 320],
    [640, 360],
  ] as const)('at %i × %i the whole drawing stands above the bar, large enough to be read', async (width, height) => {
    await atWork(width, height);
    const [drawing, bar] = await Promise.all(
      ['#training .movement svg', '#training .bar'].map((one) => page.locator(one).first().boundingBox()),
    );
    if (!drawing || !bar) expect.fail('both are there');
    expect(drawing.height).toBeGreaterThanOrEqual(96);
    expect(drawing.y + drawing.height).toBeLessThanOrEqual(bar.y);
  });

  test.each([
    [360, 592],
    [320, 568],
  ] as const)(
    'at %i × %i what can be tapped stands at least 12 px apart, at work and at rest',
    async (width, height) => {
      await atWork(width, height);
      for (const kind of ['set', 'set resting']) {
        expect(await kindOf(page)).toBe(kind);
        const targets = await targetsIn(page, '.training-sheet');
        expect(targets.length).toBeGreaterThan(8);
        expect(tooClose(targets)).toEqual([]);
        if (kind === 'set') await tap(page, '#training-main');
      }
    },
  );

  test('what has the focus is never beneath the bar, there and back by key through a set and its rest', async () => {
    const page = await open({ width: 360, height: 592 });
    await untilSet(page);
    const covered: string[] = [];
    const held = (): Promise<{ readonly says: string; readonly seen: boolean } | null> =>
      page.evaluate(() => {
        const one = document.activeElement;
        if (one === null || one.closest('#training .training-sheet') === null) return null;
        const { left, top, bottom } = one.getBoundingClientRect();
        const whole = [top + 1, bottom - 1].every((y) => {
          const there = document.elementFromPoint(left + 8, y);
          return there !== null && (one.contains(there) || there.contains(one));
        });
        return { says: one.textContent ?? '', seen: whole };
      });
    for (const kind of ['set', 'set resting']) {
      expect(await kindOf(page)).toBe(kind);
      for (const key of ['Tab', 'Shift+Tab']) {
        const met = new Set<string>();
        for (let presses = 0; presses < 25; presses += 1) {
          await page.keyboard.press(key);
          const one = await held();
          if (one === null) continue;
          met.add(one.says);
          if (!one.seen) covered.push(`${kind}, ${key}: ${one.says}`);
        }
        expect(met.size).toBeGreaterThan(8);
      }
      await page.locator('#training-main').focus();
      await tap(page, '#training-main');
    }
    expect(covered).toEqual([]);
  });

  test('for the left hand the tally and the pair of buttons change sides', async () => {
    const page = await open();
    await tap(page, '.answers .tap >> nth=0');
    await tap(page, '.switch >> nth=0');
    await tap(page, '#training-main');
    await untilSet(page);
    const x = async (selector: string): Promise<number> =>
      (await page.locator(selector).first().boundingBox())?.x ?? Number.NaN;
    expect(await x('#training .margin')).toBeLessThan(await x('#training .load'));
    expect(await x('.pair .tap >> nth=1')).toBeLessThan(await x('.pair .tap >> nth=0'));
  });

  test('forced colours: buttons keep their outline, and strokes the colour of text', async () => {
    const page = await open();
    await page.emulateMedia({ forcedColors: 'active' });
    await untilSet(page);
    const looks = await page.evaluate(() => {
      const button = getComputedStyle(document.getElementById('training-main') ?? document.body);
      const stroke = document.querySelector('#training svg path');
      return {
        outline: button.borderTopStyle,
        stroke: stroke ? getComputedStyle(stroke).stroke : '',
        behind: getComputedStyle(document.documentElement).backgroundColor,
      };
    });
    expect(looks.outline).toBe('solid');
    expect(contrastOf(looks.stroke, looks.behind)).toBeGreaterThan(7);
  });
});

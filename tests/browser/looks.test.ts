/**
 * How pages look and feel on a phone: contrast as computed, sizes, targets, nothing wider than the screen, and the
 * rules of axe-core on every kind of page. Sizes and colours are those the booklet's design fixes.
 */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import { countSets } from '../../src/engine/audit/count-sets.js';
import { exercisesById } from '../../src/engine/block-context.js';
import { listRulebook } from '../../src/engine/rulebook.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { renderDesk } from '../../src/web/desk/render-desk.js';
import { RULEBOOK, renderLibrary } from '../../src/web/library/render-library.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { renderBookletFile } from '../../src/web/render-booklet.js';
import { fixtureBooklet, longNamesBooklet } from '../fixtures/booklet.js';
import { fixtureLibrary, fixturePublic } from '../web/library-fixture.js';
import { fixturePlan } from '../web/plan-fixture.js';
import { axeFaults } from './axe.js';
import { contrastOf } from './contrast.js';
import { everyShapeBooklet, everyShapeSent } from './every-shape-booklet.js';
import type { Held } from './phone.js';
import { phoneInHand } from './phone-in-hand.js';

/** A dozen leaves under the rules of axe take half a minute, and a busy machine three times that. */
const SLOW = { timeout: 240_000 };
const phone = phoneInHand('looks');

const { addressOf } = phone;
const LEAVES = [
  ...['cover', 'how-to', 'safety', 'calendar', 'week-5', 'w4-a', 'w4-a--one-arm-row', 'w5-a--goblet-squat'],
  ...['w2-b--bell-deadlift', 'w2-a-cool-down', 'exercise-goblet-squat', 'record'],
];
const EVERY_SHAPE = [
  ...['calendar', 'week-1', 'w1-a', 'w1-a--push-up', 'w1-a--main-next', 'w1-a--minutes', 'w1-a--press-steps'],
  ...['w2-a--swing', 'w1-b--carry', 'w1-b--row-test', 'w1-b--band-row', 'w1-b--march', 'w1-a-cool-down'],
  'exercise-clean-and-press',
];
/** Leaves of every kind, by file. */
const FILES = [
  ['ordinary.html', LEAVES],
  ['every-shape.html', EVERY_SHAPE],
] as const;
const STUDIO_PAGES = [
  ...['library/index.html', 'library/exercises/goblet-squat.html', 'library/programmes/two-days.html'],
  'library/rulebook/index.html',
  ...['desk/index.html', 'desk/clients/rowan-ashby.html'],
];

beforeAll(async () => {
  const sources = webSources();
  const parts = await prepareShell(sources);
  const plan = clientPlanOf(fixturePlan);
  await writeFile(join(phone.folder, 'ordinary.html'), renderBookletFile(fixtureBooklet, plan, parts));
  await writeFile(join(phone.folder, 'every-shape.html'), renderBookletFile(everyShapeBooklet, everyShapeSent, parts));
  await writeFile(join(phone.folder, 'awkward.html'), renderBookletFile(longNamesBooklet, plan, parts));
  const web = { fonts: parts.fonts, sources };
  await renderLibrary({
    library: fixturePublic,
    rulebook: listRulebook([]),
    out: join(phone.folder, 'library'),
    ...web,
  });
  const sayProblem = () => ({ message: 'Something is wrong.', hint: 'Write it right.' });
  const desk = {
    library: fixtureLibrary,
    clients: [],
    plans: [fixturePlan],
    sets: new Map([[fixturePlan.client, countSets(fixturePlan, exercisesById(fixtureLibrary.exercises))]]),
    problems: [],
    rulebook: `../library/${RULEBOOK}`,
    sayProblem,
  };
  await renderDesk({ ...desk, out: join(phone.folder, 'desk'), ...web });
});

async function open(path: string, held: Held = {}): Promise<Page> {
  const context = await phone.hold(held);
  const page = await context.newPage();
  await page.goto(addressOf(path));
  return page;
}

async function turnTo(page: Page, leaf: string): Promise<void> {
  await page.evaluate((id) => {
    location.hash = id;
  }, leaf);
  await page.waitForFunction((id) => document.getElementById(id)?.hasAttribute('hidden') === false, leaf);
}

/** Colours of every element that shows text of its own, with what lies behind it. */
const shownColours = (page: Page): Promise<readonly { text: string; colour: string; behind: string }[]> =>
  page.evaluate(() => {
    const behind = (of: Element | null): string => {
      const colour = of ? getComputedStyle(of).backgroundColor : 'rgb(255, 255, 255)';
      return of && /, 0\)$/.test(colour) ? behind(of.parentElement) : colour;
    };
    return [...document.querySelectorAll('body *')]
      .filter(
        (one) =>
          one.checkVisibility() && [...one.childNodes].some((node) => node.nodeType === 3 && node.nodeValue?.trim()),
      )
      .map((one) => ({
        text: one.textContent.trim().slice(0, 30),
        colour: getComputedStyle(one).color,
        behind: behind(one),
      }));
  });

const SCHEMES = {
  light: { page: '#fbf7ee', strip: '#f1eadb', text: '#1d1b18', soft: '#4b463e', rule: '#7b7468', chalk: '#164d75' },
  dark: { page: '#17211d', strip: '#212d28', text: '#f3f0e7', soft: '#c3c7be', rule: '#8a948d', chalk: '#a8d0ea' },
} as const;

describe.each(['light', 'dark'] as const)('colours, %s', (scheme) => {
  test.each(FILES)(
    'are those of the book, text at least 7 to 1 (AAA) on what lies behind it: %s',
    async (file, leaves) => {
      const page = await open(file, { scheme });
      const named = await page.evaluate(() => {
        const style = getComputedStyle(document.documentElement);
        const names = ['page', 'strip', 'text', 'soft', 'rule', 'chalk'];
        return Object.fromEntries(names.map((name) => [name, style.getPropertyValue(`--${name}`).trim()]));
      });
      expect(named).toEqual(SCHEMES[scheme]);
      for (const leaf of leaves) {
        await turnTo(page, leaf);
        const shown = await shownColours(page);
        expect(shown.length).toBeGreaterThan(3);
        expect(shown.filter(({ colour, behind }) => !(contrastOf(colour, behind) >= 7))).toEqual([]);
      }
    },
  );

  test.each(FILES)('axe finds nothing on any kind of leaf of %s', SLOW, async (file, leaves) => {
    const page = await open(file, { scheme });
    for (const leaf of leaves) {
      await turnTo(page, leaf);
      // In the dark the colours alone are others.
      const sought = scheme === 'dark' ? { rules: ['color-contrast'] } : {};
      expect([leaf, await axeFaults(page, sought)]).toEqual([leaf, []]);
    }
  });
});

describe('axe finds nothing', () => {
  // The library's are looked at where it is made from the demo.
  test.each(STUDIO_PAGES.filter((path) => path.startsWith('desk/')))('on %s', async (path) => {
    const page = await open(path);
    expect(await axeFaults(page)).toEqual([]);
  });

  test('on the whole booklet with every leaf open, as it stands without script', async () => {
    const page = await open('ordinary.html');
    await page.evaluate(() => {
      for (const leaf of document.querySelectorAll<HTMLElement>('.leaf')) {
        leaf.removeAttribute('hidden');
        // Laid out as if each had come near the screen: colours cannot be judged where nothing is painted yet.
        leaf.style.contentVisibility = 'visible';
      }
    });
    expect(await axeFaults(page)).toEqual([]);
  });
});

describe('nothing is wider than the screen', () => {
  const tooWide = (page: Page): Promise<readonly string[]> =>
    page.evaluate(() => {
      const wide = document.documentElement.clientWidth;
      const over = [...document.querySelectorAll('body *')].filter(
        (one) =>
          one.checkVisibility() && !one.closest('.wide, .heard, svg') && one.getBoundingClientRect().right > wide + 0.5,
      );
      const page = document.documentElement.scrollWidth > wide ? [`page ${document.documentElement.scrollWidth}`] : [];
      return [...page, ...over.map((one) => `${one.className} ${one.textContent.trim().slice(0, 40)}`)];
    });
  const largeText = (page: Page): Promise<void> =>
    page.evaluate(() => {
      document.documentElement.style.fontSize = '200%';
    });

  test.each(['ordinary.html', 'awkward.html', 'every-shape.html'])(
    'at 320 px, and with text twice as large: %s',
    async (path) => {
      const page = await open(path, { width: 320 });
      for (const large of [false, true]) {
        if (large) await largeText(page);
        const leaves = await page.evaluate(() => [...document.querySelectorAll('.leaf')].map(({ id }) => id));
        const some = leaves.filter((id) => !/^w[1246]-/.test(id));
        expect(some.length).toBeGreaterThan(15);
        for (const leaf of some) {
          await turnTo(page, leaf);
          await page.evaluate(() => {
            for (const one of document.querySelectorAll('details')) one.open = true;
          });
          expect([leaf, large, await tooWide(page)]).toEqual([leaf, large, []]);
        }
      }
    },
  );

  test.each(STUDIO_PAGES)('at 320 px, and with text twice as large: %s', async (path) => {
    const page = await open(path, { width: 320 });
    expect(await tooWide(page)).toEqual([]);
    await largeText(page);
    expect(await tooWide(page)).toEqual([]);
  });
});

describe('on a phone of 360 by 640', () => {
  test.each(FILES)('what can be tapped is at least 52 px high, and apart: %s', async (file, leaves) => {
    const page = await open(file);
    for (const leaf of leaves) {
      await turnTo(page, leaf);
      const small = await page.evaluate(() =>
        [...document.querySelectorAll('a, summary, button')]
          .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 52)
          .map((one) => one.outerHTML.slice(0, 80)),
      );
      expect([leaf, small]).toEqual([leaf, []]);
    }
  });

  test('during a set nothing can be tapped in the top 40 %; heading, load, sets and first cue need no scrolling', async () => {
    const page = await open('ordinary.html');
    await turnTo(page, 'w1-a--goblet-squat');
    const at = await page.evaluate(() => {
      const leaf = document.getElementById('w1-a--goblet-squat');
      const top = (selector: string) => leaf?.querySelector(selector)?.getBoundingClientRect().top ?? Number.NaN;
      const bottom = (selector: string) => leaf?.querySelector(selector)?.getBoundingClientRect().bottom ?? Number.NaN;
      return {
        manner: top('.manner'),
        tap: top('a, summary'),
        cues: bottom('.cues'),
        load: bottom('.load'),
        sets: bottom('.sets'),
      };
    });
    expect(at.tap).toBeGreaterThan(640 * 0.4);
    expect(at.load).toBeLessThan(at.sets);
    expect(at.sets).toBeLessThanOrEqual(at.manner);
    expect(at.cues).toBeLessThan(640);
  });

  test('sizes: load 60 px, text 18 on 27, exercise 26, smallest 17; u is 40', async () => {
    const page = await open('ordinary.html');
    await turnTo(page, 'w1-a--goblet-squat');
    const sizes = await page.evaluate(() => {
      const leaf = document.getElementById('w1-a--goblet-squat');
      const of = (selector: string) => {
        const style = getComputedStyle(leaf?.querySelector(selector) ?? document.body);
        return [Number.parseFloat(style.fontSize), Number.parseFloat(style.lineHeight)];
      };
      const all = [...(leaf?.querySelectorAll('*:not(svg *)') ?? [])].map((one) =>
        Number.parseFloat(getComputedStyle(one).fontSize),
      );
      return { load: of('.load'), cue: of('.cues li'), head: of('h2'), least: Math.min(...all) };
    });
    expect(sizes.load[0]).toBeGreaterThanOrEqual(59);
    expect(sizes.cue).toEqual([18, 27]);
    expect(sizes.head[0]).toBe(26);
    expect(sizes.least).toBe(17);
  });

  test('figures are lining and of one width in every face', async () => {
    const page = await open('ordinary.html');
    const widths = await page.evaluate(async () => {
      const faces = ['400 40px Literata', '600 40px Literata', '700 40px "Alegreya Sans"'];
      await Promise.all(faces.map((face) => document.fonts.load(face)));
      const probe = document.createElement('span');
      document.body.append(probe);
      return faces.map((face) => {
        probe.style.font = face;
        probe.style.fontVariantNumeric = 'lining-nums tabular-nums';
        return [...'0123456789'].map((digit) => {
          probe.textContent = digit.repeat(20);
          return Math.round(probe.getBoundingClientRect().width * 10);
        });
      });
    });
    for (const face of widths) {
      expect(face[0]).toBeGreaterThan(1000);
      expect(new Set(face).size).toBe(1);
    }
  });

  test('where colours are forced the tally is still drawn and the main button still bounded', async () => {
    const page = await open('ordinary.html');
    await page.emulateMedia({ forcedColors: 'active' });
    await turnTo(page, 'week-1');
    await page.locator('#week-1 .turns svg').first().waitFor();
    const drawn = await page.evaluate(() => {
      const leaf = document.getElementById('week-1');
      const mark = leaf?.querySelector('svg path');
      const main = leaf?.querySelector('.main');
      return {
        stroke: mark ? getComputedStyle(mark).stroke : '',
        page: getComputedStyle(document.documentElement).backgroundColor,
        border: main ? getComputedStyle(main).borderTopWidth : '',
      };
    });
    expect(drawn.stroke).not.toBe(drawn.page);
    expect(drawn.stroke).toMatch(/^rgb/);
    expect(drawn.border).toBe('2px');
  });

  test('a key press shows where the focus is', async () => {
    const page = await open('ordinary.html');
    await turnTo(page, 'w1-a--goblet-squat');
    await page.keyboard.press('Tab');
    const ring = await page.evaluate(() => {
      const style = getComputedStyle(document.activeElement ?? document.body);
      return [style.outlineStyle, Number.parseFloat(style.outlineWidth)];
    });
    expect(ring).toEqual(['solid', 3]);
  });
});

/** What the tests of a file hold: one browser, a folder of pages for it, and one phone at a time. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, BrowserContext } from 'playwright-core';
import { afterAll, afterEach, beforeAll } from 'vitest';
import { invariant } from '../../src/model/result.js';
import { type Held, holdPhone, openBrowser } from './phone.js';

export interface InHand {
  readonly browser: Browser;
  /** Empty at first. */
  readonly folder: string;
  /** Puts down the one before it. */
  readonly hold: (how?: Held) => Promise<BrowserContext>;
  /** Of a file in the folder, as it is opened from a disk. */
  readonly addressOf: (name: string) => string;
}

/** To be called before the file's own hooks, which find browser and folder there. */
export function phoneInHand(name: string): InHand {
  let browser: Browser | undefined;
  let folder = '';
  let held: BrowserContext | undefined;
  const opened = (): Browser => {
    invariant(browser !== undefined, 'the browser is opened before the first test');
    return browser;
  };
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), `${name}-`));
    browser = await openBrowser();
  });
  const putDown = async (): Promise<void> => {
    await held?.close();
    held = undefined;
  };
  afterEach(putDown);
  afterAll(async () => {
    await browser?.close();
    await rm(folder, { recursive: true, force: true });
  });
  return {
    get browser() {
      return opened();
    },
    get folder() {
      return folder;
    },
    hold: async (how) => {
      await putDown();
      held = await holdPhone(opened(), how);
      return held;
    },
    addressOf: (file) => pathToFileURL(join(folder, file)).href,
  };
}

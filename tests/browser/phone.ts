/** A browser held like a phone: 360 × 640 CSS pixels, two device pixels to one, with touch. */
import { existsSync, readlinkSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';

export const browserArguments = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** The browser with its windows: for what is kept in a profile, which is found by its process. */
export const WHOLE_BROWSER = process.env.CHROMIUM ?? '/usr/bin/chromium';

/** The same browser without windows, where it is there: they are drawn anew for each phone, and nobody looks at them. */
const LEAN = '/usr/bin/chromium-headless-shell';

export const openBrowser = (): Promise<Browser> =>
  chromium.launch({
    executablePath: process.env.CHROMIUM ?? (existsSync(LEAN) ? LEAN : WHOLE_BROWSER),
    args: browserArguments,
  });

/** As a phone whose battery is taken out: the process that has this profile is gone at once, and tidies up nothing. */
export async function killBrowser(profile: string, context: BrowserContext): Promise<void> {
  // Chromium names the process that has a profile by a link in it: host, dash, number.
  const owner = Number(readlinkSync(join(profile, 'SingletonLock')).split('-').at(-1));
  const gone = new Promise<void>((done) => context.once('close', () => done()));
  process.kill(owner, 'SIGKILL');
  await gone;
}

export interface Held {
  readonly scheme?: 'light' | 'dark';
  readonly javaScript?: boolean;
  readonly width?: number;
}

export const holdPhone = (browser: Browser, held: Held = {}): Promise<BrowserContext> =>
  browser.newContext({
    viewport: { width: held.width ?? 360, height: 640 },
    deviceScaleFactor: 2,
    hasTouch: true,
    isMobile: true,
    colorScheme: held.scheme ?? 'light',
    javaScriptEnabled: held.javaScript ?? true,
    reducedMotion: 'reduce',
  });

/** Everything a page complained of or asked for, from now on. */
export interface Heard {
  readonly complaints: string[];
  readonly requests: string[];
}

export function listenTo(page: Page): Heard {
  const heard: Heard = { complaints: [], requests: [] };
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') heard.complaints.push(message.text());
  });
  page.on('pageerror', (error) => heard.complaints.push(error.message));
  page.on('request', (request) => heard.requests.push(request.url()));
  return heard;
}

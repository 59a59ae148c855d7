/** A browser held like a phone: 360 × 640 CSS pixels, two device pixels to one, with touch. */
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

export const openBrowser = (): Promise<Browser> =>
  chromium.launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium', args: browserArguments });

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

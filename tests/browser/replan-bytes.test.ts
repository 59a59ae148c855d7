/**
 * What a phone makes of a plan and its marks, to the byte what Node makes of them: bundled for a browser, run in Chromium
 * over plans and events of simulated people, in other time zones and another language too.
 */
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { isoOfDay } from '../../src/model/day.js';
import type { LogEvent } from '../../src/model/log.js';
import type { Plan } from '../../src/model/plan.js';
import { replan } from '../../src/session/replan.js';
import { stepSession } from '../../src/session/step-session.js';
import { HURT, type Person, STALLS, THRIVES, VANISHES } from '../simulate/people.js';
import { runBlocks } from '../simulate/run-blocks.js';
import { openBrowser } from './phone.js';

const ENTRY = fileURLToPath(new URL('../../src/session/replan.ts', import.meta.url));
const STEP = fileURLToPath(new URL('../../src/session/step-session.ts', import.meta.url));

/** As few bytes as a phone would fetch: both, minified, for a browser that is a few years old. */
async function bundle(): Promise<string> {
  const contents = `import { replan } from ${JSON.stringify(ENTRY)}; import { stepSession } from ${JSON.stringify(STEP)}; globalThis.session = { replan, stepSession };`;
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: fileURLToPath(new URL('.', import.meta.url)), loader: 'ts' },
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    platform: 'browser',
    target: ['es2022'],
    logLevel: 'silent',
  });
  return outputFiles[0]?.text ?? '';
}

interface Stream {
  readonly name: string;
  readonly plan: Plan;
  readonly events: readonly LogEvent[];
  readonly today: string;
}

const free = (person: Person): Person => ({ ...person, client: { ...person.client, replanning: 'within bounds' } });
const streams = [THRIVES, STALLS, HURT, VANISHES].flatMap((person): readonly Stream[] =>
  runBlocks(free(person), 1)
    .weeks.filter(({ number }) => [3, 9].includes(number))
    .map(({ number, plan, marked, today }) => ({
      name: `${person.name}, week ${number}`,
      plan,
      events: marked,
      today: isoOfDay(today),
    })),
);

const moment = ({ today }: Stream): string => `${today}T18:30:00Z`;
const inNode = (stream: Stream): string =>
  JSON.stringify([
    replan(stream.plan, stream.events, stream.today),
    stepSession(stream.plan, stream.events, new Date(moment(stream))),
  ]);

let browser: Browser;
let code: string;
beforeAll(async () => {
  code = await bundle();
  browser = await openBrowser();
});
afterAll(() => browser?.close());

const PLACES = [
  { timezoneId: 'Europe/London', locale: 'en-GB' },
  { timezoneId: 'Pacific/Kiritimati', locale: 'tr-TR' },
];

describe.each(PLACES)('a phone in $timezoneId, set to $locale', (place) => {
  test('says to the byte what Node says', async () => {
    const context = await browser.newContext(place);
    const page = await context.newPage();
    await page.addScriptTag({ content: code });
    for (const stream of streams) {
      const said: unknown = await page.evaluate(`(() => {
        const { plan, events, today } = ${JSON.stringify(stream)};
        const { replan, stepSession } = globalThis.session;
        return JSON.stringify([replan(plan, events, today), stepSession(plan, events, new Date(${JSON.stringify(moment(stream))}))]);
      })()`);
      const expected = inNode(stream);
      expect(expected.length, stream.name).toBeGreaterThan(1000);
      expect(said === expected, stream.name).toBe(true);
    }
    await context.close();
  });
});

test('some of them change what is printed: the comparison is not of nothing', () => {
  const changed = streams.map(({ plan, events, today }) => {
    const again = replan(plan, events, today);
    return again.kind === 'planned' ? again.changed.length : 0;
  });
  expect(changed.filter((count) => count > 0).length).toBeGreaterThan(streams.length / 2);
});

test('asks nothing of the world, and is small enough to be fetched with a booklet', () => {
  for (const word of ['fetch(', 'localStorage', 'Math.random', 'Date.now', 'navigator', 'toLocale', 'Intl.']) {
    expect(code, word).not.toContain(word);
  }
  const small = gzipSync(code, { level: 9 }).length;
  const folder = process.env.CHALKLEAF_ALOUD;
  if (folder) process.stdout.write(`replanning in a browser: ${code.length} bytes, ${small} with gzip\n`);
  expect(small).toBeLessThan(64 * 1024);
});

/**
 * What a phone makes of a plan and its marks, to the byte what Node makes of them: the script a phone fetches, run in
 * Chromium over what travels of plans and over events of simulated people, in other time zones and another language, and
 * without what the oldest browsers served do not have.
 */
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { ClientPlan } from '../../src/model/client-plan.js';
import { isoOfDay } from '../../src/model/day.js';
import type { LogEvent } from '../../src/model/log.js';
import { replanBetween } from '../../src/phone/replan-between.js';
import { finish } from '../../src/session/in-steps.js';
import { stepSession } from '../../src/session/step-session.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { HURT, type Person, STALLS, THRIVES, VANISHES } from '../simulate/people.js';
import { runBlocks } from '../simulate/run-blocks.js';
import { openBrowser } from './phone.js';

const AGAIN = fileURLToPath(new URL('../../src/phone/plan-again.ts', import.meta.url));
const STEP = fileURLToPath(new URL('../../src/session/step-session.ts', import.meta.url));
/** As the shell is built for. */
const TARGETS = ['chrome90', 'safari14', 'firefox90'];

async function bundle(contents: string): Promise<string> {
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: fileURLToPath(new URL('.', import.meta.url)), loader: 'ts' },
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    platform: 'browser',
    target: TARGETS,
    supported: { destructuring: true },
    logLevel: 'silent',
  });
  return outputFiles[0]?.text ?? '';
}

interface Stream {
  readonly name: string;
  readonly plan: ClientPlan;
  readonly events: readonly LogEvent[];
  readonly today: string;
}

const free = (person: Person): Person => ({ ...person, client: { ...person.client, replanning: 'within bounds' } });
const streams = [THRIVES, STALLS, HURT, VANISHES].flatMap((person): readonly Stream[] =>
  runBlocks(free(person), 1)
    .weeks.filter(({ number }) => [3, 9].includes(number))
    .map(({ number, plan, marked, today }) => ({
      name: `${person.name}, week ${number}`,
      plan: clientPlanOf(plan),
      events: marked,
      today: isoOfDay(today),
    })),
);

const moment = ({ today }: Stream): string => `${today}T18:30:00Z`;
const inNode = (stream: Stream): string => {
  const { plan, events, today } = stream;
  const now = Date.parse(moment(stream));
  const again = finish(replanBetween({ plan, events, now, today, language: 'en', called: () => undefined }));
  return JSON.stringify([again, stepSession(plan, events, new Date(now))]);
};

let browser: Browser;
let code: string;
let step: string;
beforeAll(async () => {
  code = await bundle(`import ${JSON.stringify(AGAIN)};`);
  step = await bundle(`import { stepSession } from ${JSON.stringify(STEP)}; globalThis.stepSession = stepSession;`);
  browser = await openBrowser();
});
afterAll(() => browser?.close());

const PLACES = [
  { timezoneId: 'Europe/London', locale: 'en-GB' },
  { timezoneId: 'Pacific/Kiritimati', locale: 'tr-TR' },
];

/** Newer than the oldest browsers served, and used. */
const NEWER = `
  for (const name of ['at', 'findLast', 'findLastIndex', 'toReversed', 'toSorted', 'with']) delete Array.prototype[name];
  delete String.prototype.at;
  delete Object.hasOwn;
  delete Object.groupBy;
`;

describe.each(PLACES)('a phone in $timezoneId, set to $locale', (place) => {
  test.each(['new', 'some years old'])('says to the byte what Node says, in a browser that is %s', async (age) => {
    const context = await browser.newContext(place);
    const page = await context.newPage();
    if (age !== 'new') await page.evaluate(NEWER);
    await page.addScriptTag({ content: code });
    await page.addScriptTag({ content: step });
    for (const stream of streams) {
      const said: unknown = await page.evaluate(`(() => {
        const { plan, events, today } = ${JSON.stringify(stream)};
        const now = Date.parse(${JSON.stringify(moment(stream))});
        const replanBetween = chalkleaf.offered['plan again'];
        const steps = replanBetween({ plan, events, now, today, language: 'en', called: () => undefined });
        let step = steps.next();
        while (!step.done) step = steps.next();
        return JSON.stringify([step.value, stepSession(plan, events, new Date(now))]);
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
    const now = Date.parse(`${today}T18:30:00Z`);
    return finish(replanBetween({ plan, events, now, today, language: 'en', called: () => undefined })).length;
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
  expect(small).toBeLessThan(60 * 1024);
});

/** What every booklet fetches of script and style before a session can be trained, compressed as a host sends it. */
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { beforeAll, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import { BOOKLET_LANGUAGES } from '../../src/model/languages.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { bundleScript, prepareShell } from '../../src/web/prepare-shell.js';
import { renderBookletFile, shellFiles } from '../../src/web/render-booklet.js';
import type { ShellParts } from '../../src/web/shell-parts.js';
import { englishPhone } from '../../src/words/english-phone.js';
import { norwegianPhone } from '../../src/words/norwegian-phone.js';
import { fixtureBooklet } from '../fixtures/booklet.js';
import { fixturePlan } from './plan-fixture.js';

const KB = 1024;
/** The page with its style and first script, and what the training screens need. */
const AT_MOST = 60 * KB;
/** What a host sends before it waits for the other side: ten segments (RFC 6928). */
const FIRST_ANSWER = 14_600;

let parts: ShellParts;
beforeAll(async () => {
  parts = await prepareShell(webSources());
});

test.each(BOOKLET_LANGUAGES)('the shell in %s is light', async (language) => {
  const files = await shellFiles(parts, language);
  const weighs = (name: string): number => {
    const file = files.find(({ path }) => path === name);
    return file === undefined ? Number.NaN : gzipSync(file.bytes).length;
  };
  const [page, training] = [weighs('index.html'), weighs('training.js')];
  expect(page + training).toBeLessThanOrEqual(AT_MOST);
  expect(page).toBeLessThanOrEqual(FIRST_ANSWER);
  expect(training).toBeGreaterThan(KB);
});

test.each([
  ['en-GB', englishPhone, norwegianPhone],
  ['nb', norwegianPhone, englishPhone],
  ['vi', englishPhone, norwegianPhone],
])('the training screens of a booklet in %s speak one language, and carry no other', async (language, own, other) => {
  const file = (await shellFiles(parts, language)).find(({ path }) => path === 'training.js');
  const alone = renderBookletFile({ ...fixtureBooklet, language }, clientPlanOf(fixturePlan), parts);
  for (const script of [new TextDecoder().decode(file?.bytes), alone]) {
    expect(script).toContain(own.lessIsFine);
    expect(script).not.toContain(other.lessIsFine);
  }
});

test('the scripts that come after the page ask to be made ready beside it; one that stands in the page does not', async () => {
  const ready = '//# allFunctionsCalledOnLoad\n';
  const files = await shellFiles(parts, 'en-GB');
  const begins = files
    .filter(({ bytes }) => new TextDecoder().decode(bytes.subarray(0, ready.length)) === ready)
    .map(({ path }) => path);
  expect(begins).toEqual(['plan-again.js', 'training.js']);
  const page = renderBookletFile(fixtureBooklet, clientPlanOf(fixturePlan), parts);
  expect(page).toContain(parts.training.en.text);
  expect(page).not.toContain('allFunctionsCalledOnLoad');
});

test('a process bundles a script once; what could not be bundled is tried again', async () => {
  const { phone } = webSources();
  const [once, again] = [bundleScript('main', phone), bundleScript('main', phone)];
  expect(again).toBe(once);
  expect(await once).toBe(parts.script.text);
  const nowhere = join(phone, 'nowhere');
  const failed = bundleScript('main', nowhere);
  await expect(failed).rejects.toThrow('main.js');
  const tried = bundleScript('main', nowhere);
  expect(tried).not.toBe(failed);
  await expect(tried).rejects.toThrow('main.js');
});

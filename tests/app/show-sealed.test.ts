/** What `npm run demo:sealed` shows: somebody else's view of a sealed booklet, the sheet to hand over, and nothing left behind. */
import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { TOP } from './run-chalkleaf.js';

let showing: ChildProcess;
let told = '';
const said = (pattern: RegExp): string => pattern.exec(told)?.[1] ?? expect.fail(`not in what is said: ${told}`);
const ended = (): Promise<number | null> => new Promise((done) => showing.on('close', done));

beforeAll(async () => {
  const script = `import { showSealed } from './src/app/show-sealed.mjs'; showSealed(process.cwd(), (line) => console.log(line));`;
  showing = spawn(process.execPath, ['--input-type=module', '-e', script], { cwd: TOP });
  await new Promise<void>((done) => {
    showing.stdout?.on('data', (part) => {
      told += String(part);
      if (told.includes('End it')) done();
    });
    showing.on('close', () => done());
  });
});
afterAll(() => {
  showing.kill();
});

test('a stranger’s page, the library, and nothing beside them', async () => {
  const sealed = await fetch(said(/anybody else sees {2}(\S+)/));
  expect(sealed.status).toBe(200);
  expect(await sealed.text()).toContain('<meta name="robots" content="noindex');
  const library = said(/library beside it {3}(\S+)/);
  expect((await fetch(library)).headers.get('content-type')).toBe('text/html; charset=utf-8');
  for (const path of ['none.html', '..%2f..%2fstate%2fstudio.json', '%2e%2e/state/studio.json', '%', 'exercises']) {
    expect([path, (await fetch(library + path)).status]).toEqual([path, 404]);
  }
});

test('the sheet has the link, which is printed nowhere; ended, the studio and its keys are gone', async () => {
  const sheet = fileURLToPath(said(/hand over {6}(\S+)/));
  const link = /http:[^\s"<]+#open=[\w-]{43}/.exec(readFileSync(sheet, 'utf8'))?.[0] ?? expect.fail('no link');
  expect(told).not.toContain(link.slice(link.indexOf('#')));
  const studio = dirname(dirname(dirname(dirname(dirname(sheet)))));
  expect(existsSync(join(studio, 'state', 'studio.json'))).toBe(true);
  const end = ended();
  showing.kill('SIGINT');
  expect(await end).toBe(0);
  expect(existsSync(studio)).toBe(false);
});

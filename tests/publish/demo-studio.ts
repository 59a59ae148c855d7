/** The demo studio with some of its clients alone, in a folder of its own, as a studio that is hosted somewhere. */
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chalkleaf, copyDemo, type Ran } from '../app/run-chalkleaf.js';

/** Before any of the demo's clients begin. */
const DEMO_DAY = '2026-11-24';

export interface DemoStudio {
  readonly content: string;
  readonly output: string;
  readonly state: string;
  /** Runs the program on it, on the demo's day where the command knows days. */
  readonly run: (...args: readonly string[]) => Ran;
}

/** A page that a command is not to trip over: what programmes expect of clients who are not there. */
const EXPECT = /^## Expect\n[\s\S]*?(?=^## |(?![\s\S]))/m;

export function demoStudio(folder: string, clients: readonly string[], address?: string): DemoStudio {
  const content = join(folder, 'content');
  mkdirSync(folder, { recursive: true });
  copyDemo(content);
  for (const client of readdirSync(join(content, 'clients'))) {
    if (!clients.includes(client)) rmSync(join(content, 'clients', client), { recursive: true });
  }
  change(content, 'studio.md', (text) =>
    text
      .replace(/^address:.*\n/m, '')
      .replace(/^coach:/m, address === undefined ? 'coach:' : `address: ${address}\ncoach:`),
  );
  for (const name of readdirSync(join(content, 'programmes'))) {
    change(content, join('programmes', name), (text) => text.replace(EXPECT, ''));
  }
  const run = (command = '', ...args: readonly string[]): Ran =>
    chalkleaf([command, ...args, '--content', content, ...(command === 'publish' ? [] : ['--today', DEMO_DAY])]);
  return { content, output: join(folder, 'output'), state: join(folder, 'state'), run };
}

function change(folder: string, path: string, work: (text: string) => string): void {
  writeFileSync(join(folder, path), work(readFileSync(join(folder, path), 'utf8')));
}

/** Compiles once before the tests, so that those which run the program run what is shipped. */
import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';

export default function compileFirst(): void {
  const top = resolve(import.meta.dirname, '..');
  const done = spawnSync('npx', ['--no-install', 'tsc', '-p', 'tsconfig.json'], { cwd: top, encoding: 'utf8' });
  if (done.status !== 0) throw new Error(`the sources do not compile:\n${done.stdout}${done.stderr}`);
}

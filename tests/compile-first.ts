/**
 * Compiles once before the tests, so that those which run the program run what is shipped.
 * Type errors are for `npm run types` and `npm run verify` to stop at; here they are only said.
 */
import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';

export default function compileFirst(): void {
  const top = resolve(import.meta.dirname, '..');
  const done = spawnSync('npx', ['--no-install', 'tsc', '-p', 'tsconfig.json'], { cwd: top, encoding: 'utf8' });
  const faults = done.stdout.split('\n').filter((line) => line.includes('error TS')).length;
  if (faults > 0) process.stderr.write(`compiled with ${faults} type errors: npm run types shows them\n`);
}

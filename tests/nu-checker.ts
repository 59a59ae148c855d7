/** The Nu Html Checker over a folder of pages. */
import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { expect } from 'vitest';

/** The checker's list of properties is older than SVG 2, which has this one: https://www.w3.org/TR/SVG2/painting.html#PaintOrder */
const UNKNOWN = "error: CSS: “paint-order”: Property “paint-order” doesn't exist.";
/** A machine that is warmed up less is sooner done with some hundred pages, and needs a taller stack for it. */
const SHORT_RUN = ['-XX:TieredStopAtLevel=1', '-Xss16m'];

/** What it says, line by line; it must have run and come to an end. */
export function nuFaults(folder: string): readonly string[] {
  const jar = createRequire(import.meta.url).resolve('vnu-jar/build/dist/vnu.jar');
  const done = spawnSync('java', [...SHORT_RUN, '-jar', jar, '--errors-only', '--skip-non-html', folder], {
    encoding: 'utf8',
    maxBuffer: 1e8,
  });
  expect(done.error).toBeUndefined();
  expect([0, 1]).toContain(done.status);
  return done.stderr.split('\n').filter((line) => line !== '' && !line.endsWith(UNKNOWN));
}

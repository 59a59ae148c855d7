/** Every demo exercise's sheets: valid HTML by the Nu Html Checker, and each drawing well-formed XML. */
import { spawnSync } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DOMParser } from '@xmldom/xmldom';
import { expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import { poseSheet } from '../../src/figures/pose-sheet.js';
import { renderPoses } from '../../src/web/render-poses.js';
import { readDemo } from '../studio/demo-library.js';

test('the sheets of every demo exercise', async () => {
  const { library } = await readDemo();
  const sheets = library.exercises.flatMap((exercise) => poseSheet(exercise) ?? []);
  expect(sheets.length).toBeGreaterThanOrEqual(80);
  const folder = await mkdtemp(join(tmpdir(), 'drawings-'));
  try {
    const pages = await renderPoses(sheets, true, webSources());
    expect(pages).toHaveLength(sheets.length + 1);
    for (const { path, text } of pages) {
      await writeFile(join(folder, path), text);
      const drawings = text.match(/<svg[\s\S]*?<\/svg>/g) ?? [];
      expect(drawings.length).toBeGreaterThan(2);
      for (const drawing of drawings) {
        const faults: string[] = [];
        new DOMParser({ onError: (_, message) => faults.push(message) }).parseFromString(drawing, 'image/svg+xml');
        expect(faults, path).toEqual([]);
      }
    }
    const jar = createRequire(import.meta.url).resolve('vnu-jar/build/dist/vnu.jar');
    const done = spawnSync('java', ['-jar', jar, '--errors-only', folder], { encoding: 'utf8', maxBuffer: 1e8 });
    // The checker's list of properties is older than SVG 2, which has this one: https://www.w3.org/TR/SVG2/painting.html#PaintOrder
    const unknown = "error: CSS: “paint-order”: Property “paint-order” doesn't exist.";
    expect(done.error).toBeUndefined();
    expect(done.stderr.split('\n').filter((line) => line !== '' && !line.endsWith(unknown))).toEqual([]);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}, 300_000);

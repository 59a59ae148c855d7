/** The same plan gives the same words on any machine: whatever zone and language it is set to. */
import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const script = join(import.meta.dirname, '..', '..', 'dist', 'tests', 'booklet', 'print-booklet.js');
const printed = (zone: string, language: string): string =>
  execFileSync(process.execPath, [script], {
    env: { PATH: process.env.PATH, TZ: zone, LANG: language, LC_ALL: language },
    encoding: 'utf8',
  });

test('nothing moves with the zone or the locale', () => {
  const here = printed('UTC', 'C');
  expect(here.length).toBeGreaterThan(10_000);
  expect(printed('Pacific/Kiritimati', 'tr_TR.UTF-8')).toBe(here);
  expect(printed('America/Adak', 'ar_EG.UTF-8')).toBe(here);
});

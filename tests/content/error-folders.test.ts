/**
 * One folder for each mistake, and the exact report it must give. After a change of wording:
 * `UPDATE=1 npx vitest run --config tests/vitest.config.ts tests/content/error-folders.test.ts`, and read the difference.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { CHECKS } from '../../src/content/folder-checks.js';
import type { FolderCheck } from '../../src/content/read-things.js';
import type { Problem } from '../../src/model/problem.js';
import { baseFiles, ERRORS, errorFolders, readWith, reportOf } from './error-folders.js';
import { composeErrorPage } from './error-page.js';

const update = process.env.UPDATE === '1';
const folders = errorFolders();

test('the studio the mistakes are made in is whole', () => {
  expect(readWith(baseFiles()).problems).toEqual([]);
});

describe('each folder gives its report', () => {
  test.each(folders.map((folder) => [folder.name, folder] as const))('%s', (_, folder) => {
    const { problems } = readWith(folder.files);
    expect(problems.map(({ code }) => code)).toContain(folder.code);
    const report = reportOf(folder.files, problems);
    if (update) writeFileSync(join(ERRORS, folder.name, 'expected.txt'), report);
    else expect(report).toBe(folder.expected);
  });
});

/** The codes a coach may meet while a folder is read, as the contract lists them. */
function listedCodes(): string[] {
  const text = readFileSync(resolve(ERRORS, '..', '..', 'src', 'model', 'problems-content.ts'), 'utf8');
  return [...text.matchAll(/^ {2}readonly '([a-z0-9-]+)':/gm)].map((match) => match[1] ?? '');
}

test('every code has a folder', () => {
  const codes = new Set(folders.map(({ code }) => code));
  const wanted = [...listedCodes(), 'not-handled', 'rotation-not-stated'];
  expect(wanted.length).toBeGreaterThan(80);
  expect(wanted.filter((code) => !codes.has(code))).toEqual([]);
  expect([...codes].filter((code) => !wanted.includes(code))).toEqual([]);
});

describe('somebody misses each check that is taken out', () => {
  const made = (check: FolderCheck): readonly (typeof folders)[number][] => {
    const codes: readonly string[] = check.codes;
    return folders.filter(({ code }) => codes.includes(code));
  };

  test.each(CHECKS.map((check) => [check.name, check] as const))('without the check: %s', (_, check) => {
    const checks = CHECKS.filter((other) => other !== check);
    const missed = made(check).filter(
      ({ files, expected }) => reportOf(files, readWith(files, { checks }).problems) !== expected,
    );
    expect(missed.map(({ name }) => name)).not.toEqual([]);
  });

  test.each([...new Set(folders.map(({ code }) => code))])('without the code: %s', (code) => {
    const keep = (problem: Problem): boolean => problem.code !== code;
    const missed = folders.filter((folder) => {
      if (folder.code !== code) return false;
      return reportOf(folder.files, readWith(folder.files, { keep }).problems) !== folder.expected;
    });
    expect(missed.map(({ name }) => name)).toContain(code);
  });

  test('every check says truly which codes it reports', () => {
    for (const { files } of folders) {
      const before = readWith(files, { checks: [] }).problems.map((problem) => JSON.stringify(problem));
      for (const check of CHECKS) {
        const after = readWith(files, { checks: [check] }).problems;
        const added = after.filter((problem) => !before.includes(JSON.stringify(problem)));
        const codes: readonly string[] = check.codes;
        expect(added.filter(({ code }) => !codes.includes(code))).toEqual([]);
      }
    }
  });
});

test('the page of errors is made from these folders', () => {
  const page = resolve(ERRORS, '..', '..', 'content', 'ERRORS.md');
  const now = folders.map((folder) => ({
    ...folder,
    expected: reportOf(folder.files, readWith(folder.files).problems),
  }));
  const composed = composeErrorPage(now, listedCodes());
  if (update) writeFileSync(page, composed);
  else expect(readFileSync(page, 'utf8')).toBe(composed);
});

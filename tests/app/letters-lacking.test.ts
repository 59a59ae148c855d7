/** A letter that no face on paper can set: an error at its line, nothing to print, and a web booklet that stands. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { CLIENT, type EditionStudio, editionStudio, wordsOf } from './edition-studio.js';

vi.setConfig({ testTimeout: 120_000 });

const TODAY = '2026-12-28';
const SQUAT = 'exercises/goblet-squat.md';

interface Found {
  readonly code: string;
  readonly severity: string;
  readonly place?: { readonly file: string; readonly line: number; readonly column: number };
  readonly data: { readonly characters?: readonly string[] };
}
interface Told {
  readonly problems: readonly Found[];
  readonly built: { readonly withheld: readonly string[] };
}

let studio: EditionStudio;
const built = (): { readonly code: number | null; readonly told: Told } => {
  const { code, out } = studio.run(TODAY, 'build', '--json');
  const told: Told = JSON.parse(out);
  return { code, told };
};
const lacking = ({ problems }: Told): readonly Found[] => problems.filter(({ code }) => code === 'not-printable');
const toPrint = (): readonly string[] => readdirSync(studio.out()).filter((name) => name.endsWith('.pdf'));
const lineOf = (path: string, letters: string): number =>
  readFileSync(`${studio.path}/content/${path}`, 'utf8')
    .split('\n')
    .findIndex((line) => line.includes(letters)) + 1;

describe('in the client’s name and in two lines of an exercise', () => {
  beforeAll(() => {
    studio = editionStudio();
    studio.rewrite(CLIENT, 'Ash Venn', '李明 Venn');
    studio.rewrite(SQUAT, 'as if on to a low stool', 'as if on to a ✓low stool');
    studio.rewrite(SQUAT, 'name: Goblet squat', 'name: Goblet squat ☺');
  });
  afterAll(() => studio.away());

  test('is told at each line as an error, and ends the build with 1', () => {
    const { code, told } = built();
    expect(code).toBe(1);
    const found = lacking(told);
    expect(found.map(({ severity }) => severity)).toEqual(found.map(() => 'error'));
    expect(found.map(({ place, data }) => [place?.file, place?.line, data.characters])).toEqual([
      [CLIENT, lineOf(CLIENT, '李明'), ['明', '李']],
      [SQUAT, lineOf(SQUAT, '☺'), ['☺']],
      [SQUAT, lineOf(SQUAT, '✓'), ['✓']],
    ]);
    expect(studio.run(TODAY, 'build').out).toContain(`${SQUAT}:${lineOf(SQUAT, '✓')}:`);
  });

  test('nothing is printed, and the web booklet stands with every letter', () => {
    const { told } = built();
    expect(toPrint()).toEqual([]);
    expect(told.built.withheld).toEqual([]);
    expect(existsSync(studio.out('withheld.txt'))).toBe(false);
    const booklet = wordsOf(studio.out('booklet.html'));
    for (const letters of ['李明 Venn', '✓low stool', 'Goblet squat ☺']) expect(booklet).toContain(letters);
    expect(studio.desk('index.html')).toContain('The typefaces on paper lack');
  });

  test('mended, it is printed', () => {
    studio.rewrite(CLIENT, '李明 Venn', 'Ash Venn');
    studio.rewrite(SQUAT, '✓low stool', 'low stool');
    studio.rewrite(SQUAT, 'Goblet squat ☺', 'Goblet squat');
    const { code, told } = built();
    expect(code).toBe(0);
    expect(lacking(told)).toEqual([]);
    expect(toPrint()).toContain('booklet-a5.pdf');
  });
});

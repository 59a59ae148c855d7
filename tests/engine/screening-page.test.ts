/** The page of screening says of the cautions that follow what the code does, and what the client then reads. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { CONDITIONS, MEDICINES, PREGNANCY_ABSOLUTE, PREGNANCY_RELATIVE } from '../../src/model/client.js';
import { addDays } from '../../src/model/day.js';
import { english } from '../../src/words/english.js';
import { spoken } from '../../src/words/rule-words.js';
import { clientSaying } from '../../src/words/say-to-client.js';
import { speechOf } from '../../src/words/speech.js';
import { PLACE } from './generate-exercises.js';
import { FIRST, LAST, TODAY, withHealth } from './screen-made.js';

const page = readFileSync(new URL('../../src/engine/SCREENING.md', import.meta.url), 'utf8');
const rowsUnder = (heading: string): readonly (readonly string[])[] => {
  const [, after = ''] = page.split(`\n## ${heading}\n`);
  const [section = ''] = after.split('\n## ');
  const cells = section
    .split('\n')
    .filter((line) => line.startsWith('| '))
    .map((line) =>
      line
        .split('|')
        .slice(1, -1)
        .map((cell) => cell.trim()),
    );
  return cells.filter(([first = '']) => !/^-+$/.test(first));
};

const birth = (days: number, by: 'vaginal' | 'caesarean') => ({
  birth: { date: addDays(FIRST, -days), by, checked: TODAY, place: PLACE },
});
const EVERYBODY = [
  ...MEDICINES.map((medicine) => withHealth({ medicines: [medicine] })),
  ...CONDITIONS.map((condition) => withHealth({ conditions: [condition] })),
  withHealth({ falls: 1 }),
  withHealth({ pregnancy: { due: addDays(LAST, 90), conditions: [], place: PLACE } }),
  withHealth(birth(30, 'vaginal')),
  withHealth(birth(30, 'caesarean')),
  withHealth(birth(100, 'vaginal')),
];

it('every caution that follows, with its degrees and its words', () => {
  const found = new Map<string, Map<string, Set<string>>>();
  for (const { rule, what, degree } of EVERYBODY.flatMap(({ standing }) => standing.derived)) {
    const of = found.get(rule.id) ?? new Map<string, Set<string>>();
    of.set(what, (of.get(what) ?? new Set()).add(degree));
    found.set(rule.id, of);
  }
  const said = rowsUnder('Cautions that follow').slice(1);
  expect(said.map(([rule]) => rule)).toEqual([...found.keys()].sort());
  for (const [rule = '', cautions = '', words = ''] of said) {
    expect(words).toBe(clientSaying(rule, speechOf('en-GB'))?.(() => ''));
    const listed = cautions.split('; ').map((caution) => caution.split(': '));
    expect(listed.map(([, what]) => what)).toEqual([...(found.get(rule)?.keys() ?? [])]);
    for (const [degrees = '', what = ''] of listed) {
      const both = [...(found.get(rule)?.get(what) ?? [])];
      expect(['avoid', 'take care'].filter((degree) => degrees.includes(degree))).toEqual(both.sort());
    }
  }
});

it('every contraindication in pregnancy, in the order of the published table', () => {
  const rows = rowsUnder('Pregnancy').filter(([, kind]) => kind === 'absolute' || kind === 'relative');
  expect(rows.map(([row, kind]) => `${kind}: ${row}`)).toEqual([
    ...PREGNANCY_ABSOLUTE.map((row) => `absolute: ${row}`),
    ...PREGNANCY_RELATIVE.map((row) => `relative: ${row}`),
  ]);
});

it('the words it quotes are the client’s own', () => {
  const sentences = Object.values(english.reasons).map((saying) => spoken(saying)(() => ''));
  const quoted = ['Medicines', 'Bones and falls'].flatMap((heading) =>
    rowsUnder(heading)
      .slice(1)
      .flatMap(([, , words = '']) => words.split(/(?<=_) (?=_)/).map((one) => one.replaceAll('_', ''))),
  );
  expect(quoted.filter((one) => one !== '' && !sentences.includes(one))).toEqual([]);
});

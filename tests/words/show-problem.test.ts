/** The report on the terminal: the caret stands under what it is about, whatever stands before it. */
import { describe, expect, test } from 'vitest';
import { clientId } from '../../src/model/identity.js';
import type { Place } from '../../src/model/place.js';
import { FOLDER, ofClient, type Problem } from '../../src/model/problem.js';
import { sayProblemReport } from '../../src/words/show-problem.js';

const at = (column: number, length: number, line = 1): Place => ({ file: 'a.md', line, column, length });
const problem = (place?: Place): Problem => ({
  code: 'key-twice',
  severity: 'error',
  scope: FOLDER,
  data: { key: 'x' },
  ...(place ? { place } : {}),
});
const excerpt = (text: string, place: Place): string[] =>
  sayProblemReport([problem(place)], () => text)
    .split('\n')
    .slice(1, 3)
    .map((line) => line.slice(2));

describe('the caret', () => {
  test.each<[string, string, Place, [string, string]]>([
    ['plain', 'way: fast', at(6, 4), ['way: fast', '     ^^^^']],
    ['a tab before', '\tway: fast', at(7, 4), ['    way: fast', '         ^^^^']],
    ['a tab within the line', 'ab\tc', at(4, 1), ['ab  c', '    ^']],
    ['under a tab', '\tx', at(1, 1), ['    x', '^^^^']],
    ['wide letters', '名前: x', at(5, 1), ['名前: x', '      ^']],
    ['an emoji of several code points', '🏋️‍♀️: x', at(8, 1), ['🏋️‍♀️: x', '    ^']],
    ['a combining mark', 'e\u0301: x', at(5, 1), ['e\u0301: x', '   ^']],
    ['Arabic', 'ليلى: x', at(7, 1), ['ليلى: x', '      ^']],
    ['beyond the end', 'ab', at(3, 1), ['ab', '  ^']],
  ])('%s', (_, text, place, wanted) => {
    expect(excerpt(text, place)).toEqual(wanted);
  });

  test('a long line is cut around it', () => {
    const [line = '', caret = ''] = excerpt(`${'a'.repeat(500)} here ${'b'.repeat(500)}`, at(502, 4));
    expect(line.length).toBeLessThanOrEqual(100);
    expect(line.slice(caret.indexOf('^'), caret.lastIndexOf('^') + 1)).toBe('here');
    expect(line.startsWith('…') && line.endsWith('…')).toBe(true);
  });

  test('what could move the cursor or turn the line is not let through', () => {
    const report = sayProblemReport([problem(at(1, 1))], () => 'a\u001b[31m\u202eb\u0007');
    expect(['\u001b', '\u202e', '\u0007'].filter((mark) => report.includes(mark))).toEqual([]);
  });

  test('a problem names its client, unless it stands in the client’s own folder', () => {
    const report = (file: string) =>
      sayProblemReport([{ ...problem({ ...at(1, 1), file }), scope: ofClient(clientId('ida-fell')) }], () => '');
    expect(report('programmes/one-day.md')).toContain('  key-twice  For ida-fell: The key ');
    expect(report('clients/ida-fell-two/client.md')).toContain('  key-twice  For ida-fell: The key ');
    expect(report('clients/ida-fell/client.md')).toContain('  key-twice  The key ');
  });

  test('carriage returns end lines as the reader counts them', () => {
    expect(excerpt('one\r\ntwo\rthree', at(1, 5, 3))).toEqual(['three', '^^^^^']);
  });
});

test('a problem of no file, of no line, and an empty line, have no excerpt', () => {
  const line = 'error  key-twice  The key ‘x’ comes twice.\n  write instead: one of the two\n';
  expect(sayProblemReport([problem()], () => undefined)).toBe(line);
  expect(sayProblemReport([problem(at(1, 1))], () => undefined)).toBe(`a.md:1:1  ${line}`);
  expect(sayProblemReport([problem(at(1, 1, 2))], () => 'a\n\nb')).toBe(`a.md:2:1  ${line}`);
});

test('problems are parted by a blank line', () => {
  const twice = sayProblemReport([problem(), problem()], () => undefined);
  expect(twice.split('\n\n').length).toBe(2);
});

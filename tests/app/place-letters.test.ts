/** A letter that paper lacks is told at its line: the client's page first, then what is shared. */
import { expect, test } from 'vitest';
import { placeLetters } from '../../src/app/place-letters.js';
import { clientId } from '../../src/model/identity.js';
import { ofClient, ofPaper, type Problem } from '../../src/model/problem.js';

const CLIENT = clientId('ash-venn');
const lacking = (characters: readonly string[], where: string): Problem => ({
  code: 'not-printable',
  severity: 'error',
  scope: ofPaper(CLIENT),
  data: { why: 'letters', characters, where },
});
const SOURCES = new Map([
  ['clients/bo-reed/client.md', '---\nname: Bo ✓ Reed\n---\n'],
  ['clients/ash-venn/client.md', '---\nname: Ash Venn\n---\n\nTake it ✓slowly✓.\n'],
  ['exercises/squat.md', '# Squat\n\n## Cues\n\n- **Down:** é, then 李明 sit\n'],
]);
const allPlaced = (...problems: readonly Problem[]) =>
  placeLetters(problems, CLIENT, { paths: [...SOURCES.keys()], sourceOf: (path) => SOURCES.get(path) });
const placed = (problem: Problem) => allPlaced(problem)[0]?.place;

test('in the client’s own page, never in another’s', () => {
  expect(placed(lacking(['✓'], 'Take it ✓slowly✓.'))).toEqual({
    file: 'clients/ash-venn/client.md',
    line: 5,
    column: 9,
    length: 9,
  });
});

test('in a page of an exercise, whose line was broken over two on paper', () => {
  expect(placed(lacking(['明', '李'], 'then 李明'))).toEqual({
    file: 'exercises/squat.md',
    line: 5,
    column: 21,
    length: 2,
  });
});

test('written otherwise than it is set, at the first of its letters', () => {
  expect(placed(lacking(['李'], 'down李'))).toMatchObject({ file: 'exercises/squat.md', line: 5, column: 21 });
});

test('once for each line, with all that lacks in it', () => {
  const problems = allPlaced(
    lacking(['明'], 'sit 明'),
    lacking(['✓'], '✓slowly✓.'),
    lacking(['李'], 'then 李'),
    lacking(['♥'], 'made with ♥'),
    lacking(['♥'], 'with ♥'),
  );
  expect(problems.map(({ place, data }) => [place?.line, place?.column, data])).toEqual([
    [5, 21, { why: 'letters', characters: ['明', '李'], where: 'then 李' }],
    [5, 9, { why: 'letters', characters: ['✓'], where: '✓slowly✓.' }],
    [undefined, undefined, { why: 'letters', characters: ['♥'], where: 'made with ♥' }],
  ]);
});

test('words of no page, and a booklet from right to left, keep no place', () => {
  expect(placed(lacking(['♥'], 'made with ♥'))).toBeUndefined();
  const turned: Problem = {
    code: 'not-printable',
    severity: 'warning',
    scope: ofClient(CLIENT),
    data: { why: 'direction', characters: [], where: '' },
  };
  expect(placed(turned)).toBeUndefined();
});

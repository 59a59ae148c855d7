/** A letter that paper lacks is told at its line: the client's page first, then what is shared. */
import { expect, test } from 'vitest';
import { placeLetters } from '../../src/app/place-letters.js';
import { clientId } from '../../src/model/identity.js';
import { ofClient, type Problem } from '../../src/model/problem.js';

const CLIENT = clientId('ash-venn');
const lacking = (characters: readonly string[], where: string): Problem => ({
  code: 'not-printable',
  severity: 'warning',
  scope: ofClient(CLIENT),
  data: { why: 'letters', characters, where },
});
const SOURCES = new Map([
  ['clients/bo-reed/client.md', '---\nname: Bo ✓ Reed\n---\n'],
  ['clients/ash-venn/client.md', '---\nname: Ash Venn\n---\n\nTake it ✓slowly✓.\n'],
  ['exercises/squat.md', '# Squat\n\n## Cues\n\n- **Down:** é, then 李明 sit\n'],
]);
const placed = (problem: Problem) =>
  placeLetters([problem], CLIENT, { paths: [...SOURCES.keys()], sourceOf: (path) => SOURCES.get(path) })[0]?.place;

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

test('words of no page, and a booklet from right to left, keep no place', () => {
  expect(placed(lacking(['♥'], 'made with ♥'))).toBeUndefined();
  const turned: Problem = {
    ...lacking([], ''),
    code: 'not-printable',
    data: { why: 'direction', characters: [], where: '' },
  };
  expect(placed(turned)).toBeUndefined();
});

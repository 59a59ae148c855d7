/** The coach's guide: its examples are a whole studio that is read without a word, and it names every key there is. */
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { EXERCISE_SECTIONS } from '../../src/content/read-exercise.js';
import { ROW_COLUMNS } from '../../src/content/read-row.js';
import { readerSchemas } from '../../src/content/reader-schemas.js';
import { errorFolders, readWith } from './error-folders.js';

const guide = readFileSync(resolve(import.meta.dirname, '..', '..', 'content', 'GUIDE.md'), 'utf8');

test('its examples are read without a word', () => {
  const files = [...guide.matchAll(/`content\/([^`\n]+)`\n\n```markdown\n([\s\S]*?)```/g)].map(
    ([, path = '', text = '']) => ({
      path,
      bytes: new TextEncoder().encode(text),
    }),
  );
  expect(files.map(({ path }) => path)).toEqual([
    'studio.md',
    'exercises/goblet-squat.md',
    'exercises/chair-squat.md',
    'programmes/two-days.md',
    'clients/rowan-ashby/client.md',
    'rules.md',
  ]);
  const { value, problems } = readWith(files);
  expect(problems).toEqual([]);
  expect(value.clients[0]?.kit.length).toBe(18);
  expect(value.library.overrides.map(({ rule, value: own }) => [rule, own])).toEqual([['gain-novice', 50]]);
});

test('it names every key, section and column', () => {
  const flowing = guide.replace(/\s+/g, ' ');
  const keys: string[] = [];
  const look = (part: unknown): void => {
    if (typeof part !== 'object' || part === null) return;
    if ('properties' in part && typeof part.properties === 'object' && part.properties)
      keys.push(...Object.keys(part.properties));
    for (const inner of Object.values(part)) look(inner);
  };
  look(readerSchemas());
  const words = [...keys.filter((key) => !/^\d$/.test(key)), ...EXERCISE_SECTIONS, ...ROW_COLUMNS];
  expect(words.length).toBeGreaterThan(80);
  expect(words.filter((word) => !flowing.includes(word))).toEqual([]);
});

test('its example of a message is the message', () => {
  const report = errorFolders().find(({ name }) => name === 'unknown-exercise')?.expected ?? 'none';
  expect(guide).toContain(report);
});

/** Every style that is written is taken in by another, or named where styles are bundled: none is forgotten. */
import { readdirSync, readFileSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { expect, test } from 'vitest';

const TOP = resolve(import.meta.dirname, '..', '..');

const filesIn = (room: string, kinds: RegExp): readonly string[] =>
  readdirSync(join(TOP, room), { recursive: true, encoding: 'utf8' })
    .filter((path) => kinds.test(path))
    .map((path) => join(TOP, room, path));

test('no style is left out', () => {
  const styles = filesIn('layouts', /\.css$/);
  expect(styles.length).toBeGreaterThan(15);
  const texts = [...styles, ...filesIn('src', /\.tsx?$/), ...filesIn('layouts', /\.tsx?$/)].map(
    (path) => [path, readFileSync(path, 'utf8')] as const,
  );
  const forgotten = styles.filter(
    (style) => !texts.some(([path, text]) => path !== style && text.includes(basename(style))),
  );
  expect(forgotten).toEqual([]);
});

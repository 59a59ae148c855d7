/** Since when an exercise says what it says: kept from build to build, and moved only by what it says. */
import { mkdtemp, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { changedSince, keepChanged } from '../../src/app/keep-changed.js';
import { fixtureLibrary } from '../web/library-fixture.js';

const { exercises } = fixtureLibrary;
let state: string;
beforeEach(async () => {
  state = join(await mkdtemp(join(tmpdir(), 'changed-')), 'state');
});
afterEach(() => rm(join(state, '..'), { recursive: true, force: true }));

const build = async (of: typeof exercises, today: string): Promise<Readonly<Record<string, string>>> => {
  const changed = await changedSince(state, of, today);
  expect(await keepChanged(state, changed)).toBeUndefined();
  return Object.fromEntries(changed.since);
};

test('stays until the words or facts change, and is the owner’s alone', async () => {
  expect(await build(exercises, '2026-11-20')).toEqual({
    'box-squat': '2026-11-20',
    'goblet-squat': '2026-11-20',
    hostile: '2026-11-20',
  });
  const moved = exercises.map((of) => ({ ...of, place: { ...of.place, line: 9 } }));
  expect((await build(moved, '2026-11-21'))['goblet-squat']).toBe('2026-11-20');
  const renamed = exercises.map((of) => (of.id === 'box-squat' ? { ...of, name: 'Squat to a box' } : of));
  expect(await build(renamed, '2026-11-22')).toMatchObject({ 'box-squat': '2026-11-22', hostile: '2026-11-20' });
  expect((await stat(join(state, 'library.json'))).mode & 0o777).toBe(0o600);
  expect(await readFile(join(state, 'library.json'), 'utf8')).not.toContain('Squat');
});

test('what was kept and cannot be read counts as never kept', async () => {
  await build(exercises, '2026-11-20');
  await writeFile(join(state, 'library.json'), '{"box-squat": {"digest": 3}, ');
  expect((await build(exercises, '2026-11-23')).hostile).toBe('2026-11-23');
});

test('a state that cannot be written is told', async () => {
  const changed = await changedSince(state, exercises, '2026-11-20');
  await writeFile(state, 'in the way');
  expect(await keepChanged(state, changed)).toMatchObject({ code: 'state-not-writable', data: { folder: state } });
});

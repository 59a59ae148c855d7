/** Ids are one thing's alone: files, former ids, and clients against the words of the library. */
import { placeOfEntry } from './open-file.js';
import type { FolderCheck, ReadThings } from './read-things.js';

/** What some computers take for the same name: case and composition do not count. */
const sameOnDisk = (id: string): string => id.normalize('NFC').toLowerCase();

function checkTaken({ exercises, programmes, clients }: ReadThings): void {
  for (const list of [exercises, programmes, clients]) {
    const seen = new Map<string, string>();
    // In order of path, capitals come first: the file in small letters is the one with the right name.
    for (const { id, file } of [...list].reverse()) {
      const by = seen.get(sameOnDisk(id));
      if (by !== undefined) file.report.add({ code: 'id-taken', data: { id, by } }, file.place);
      else seen.set(sameOnDisk(id), file.path);
    }
  }
}

function checkFormer({ exercises }: ReadThings): void {
  const taken = new Map<string, string>(exercises.map(({ id, file }) => [id, file.path]));
  for (const { exercise, file } of exercises) {
    exercise?.formerIds.forEach((id, index) => {
      const by = taken.get(id);
      if (by === undefined) taken.set(id, file.path);
      else file.report.add({ code: 'id-taken', data: { id, by } }, placeOfEntry(file, ['former ids'], index));
    });
  }
}

const COMMON_WORDS = [
  'exercises',
  'programmes',
  'clients',
  'studio',
  'rules',
  'library',
  'public',
  'private',
  'desk',
  'index',
  'search',
  'assets',
  'booklet',
  'fonts',
  'pictures',
  'previews',
  'rulebook',
  'worker',
  'feed',
  'sitemap',
  'integrity',
];

function checkClientNames({ exercises, programmes, clients }: ReadThings): void {
  const words = new Map<string, string>(COMMON_WORDS.map((word) => [word, 'a folder of the site']));
  for (const { id } of programmes) words.set(id, 'a programme');
  for (const { id, exercise } of exercises) {
    words.set(id, 'an exercise');
    for (const former of exercise?.formerIds ?? []) words.set(former, 'an exercise’s former name');
  }
  for (const { id, file } of clients) {
    const like = words.get(id);
    if (like !== undefined) file.report.add({ code: 'client-named-like-library', data: { id, like } }, file.place);
  }
}

export const idChecks: readonly FolderCheck[] = [
  { name: 'ids taken', codes: ['id-taken'], check: checkTaken },
  { name: 'former ids taken', codes: ['id-taken'], check: checkFormer },
  { name: 'clients named like the library', codes: ['client-named-like-library'], check: checkClientNames },
];

/**
 * The integrity manifest of a folder: a digest for each file, in the form that `sha256sum --check` of GNU coreutils
 * reads, so that whoever has the folder can hold it to the list without this program.
 */
import { compareIds } from '../model/identity.js';

/** The manifest's name, in the folder it speaks of. It does not name itself. */
export const MANIFEST = 'integrity.txt';

export interface Listed {
  /** Below the folder, with `/`. */
  readonly path: string;
  /** SHA-256, in small hexadecimal letters. */
  readonly sha256: string;
}

/** A path that fits on a line of the manifest as it is; others would need the escapes of `sha256sum`. */
export const isPlainPath = (path: string): boolean => path !== '' && !/[\\\n\r\0]/.test(path);

/** One line a file, in order of path. */
export const writeManifest = (files: readonly Listed[]): string =>
  [...files]
    .sort((a, b) => compareIds(a.path, b.path))
    .map(({ path, sha256 }) => `${sha256}  ${path}\n`)
    .join('');

/** `null` where any line is not of the form. */
export function readManifest(text: string): readonly Listed[] | null {
  const lines = text.split('\n');
  if (lines.pop() !== '') return null;
  const listed = lines.map((line) => /^([0-9a-f]{64}) {2}(.+)$/.exec(line));
  const files = listed.flatMap((match) => (match?.[1] && match[2] ? [{ path: match[2], sha256: match[1] }] : []));
  return files.length === lines.length ? files : null;
}

export interface Unlike {
  readonly path: string;
  readonly how: 'changed' | 'missing' | 'not-listed';
}

/** Where a folder is not as its manifest says; `there` is what stands in it, without the manifest. */
export function compareManifest(listed: readonly Listed[], there: readonly Listed[]): readonly Unlike[] {
  const found = new Map(there.map(({ path, sha256 }) => [path, sha256]));
  const wanted = new Set(listed.map(({ path }) => path));
  return [
    ...listed.flatMap(({ path, sha256 }): Unlike[] => {
      const is = found.get(path);
      if (is === sha256) return [];
      return [{ path, how: is === undefined ? 'missing' : 'changed' }];
    }),
    ...there.flatMap(({ path }): Unlike[] => (wanted.has(path) ? [] : [{ path, how: 'not-listed' }])),
  ];
}

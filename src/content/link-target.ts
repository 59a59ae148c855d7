/** What a link in an author's file leads to. */

export type Target =
  /** A file of the folder, by its path below it. */
  | { readonly kind: 'file'; readonly path: string }
  /** An address on the web, of mail or of a telephone. */
  | { readonly kind: 'address' }
  /** A place in the same file. */
  | { readonly kind: 'here' }
  /** Out of the folder, or no address a page may carry. */
  | { readonly kind: 'outside' };

/** `from` is the path of the file in which the link stands. */
export function resolveTarget(from: string, target: string): Target {
  if (/^(https?|mailto|tel):/i.test(target)) return { kind: 'address' };
  if (target.startsWith('#')) return { kind: 'here' };
  if (/^[a-z][a-z0-9+.-]*:/i.test(target) || /^[/\\]/.test(target)) return { kind: 'outside' };
  const steps = from.split('/').slice(0, -1);
  for (const step of decoded(target.replace(/[?#].*$/s, '')).split('/')) {
    if (step === '..') {
      if (steps.length === 0) return { kind: 'outside' };
      steps.pop();
    } else if (step !== '.' && step !== '') steps.push(step);
  }
  return { kind: 'file', path: steps.join('/') };
}

/** Percent-encoding undone where it is whole; else as written. */
function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

/** The id in `exercises/<id>.md`; `undefined` for other paths. */
export const idIn = (folder: string, path: string): string | undefined =>
  path.startsWith(`${folder}/`) && path.endsWith('.md') && !path.slice(folder.length + 1).includes('/')
    ? path.slice(folder.length + 1, -3)
    : undefined;

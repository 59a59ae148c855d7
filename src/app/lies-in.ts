/** Which folder lies in which, with links resolved as far as the path exists; and that keys lie in none that is read or written. */
import { realpath } from 'node:fs/promises';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { FOLDER, type Problem } from '../model/problem.js';
import type { CommonOptions } from './options.js';

/** The path with its links resolved as far as it exists. */
export async function realOf(path: string): Promise<string> {
  const full = resolve(path);
  try {
    return await realpath(full);
  } catch {
    const parent = dirname(full);
    return parent === full ? full : join(await realOf(parent), relative(parent, full));
  }
}

/** Also where both are one. */
export async function liesIn(inner: string, outer: string): Promise<boolean> {
  const [within, around] = [await realOf(inner), await realOf(outer)];
  return within === around || within.startsWith(around.endsWith(sep) ? around : around + sep);
}

type Where = Pick<CommonOptions, 'content' | 'out' | 'state'>;
type Within = 'content' | 'output' | 'state';

/** The first of these folders that it lies in. Reports `folder-misplaced`. */
async function misplaced(
  what: 'state' | 'upload',
  folder: string,
  others: readonly (readonly [within: Within, folder: string])[],
): Promise<Problem | undefined> {
  for (const [within, other] of others) {
    if (await liesIn(folder, other))
      return { code: 'folder-misplaced', severity: 'error', scope: FOLDER, data: { what, folder, within } };
  }
  return undefined;
}

/** Keys among what is read would travel with it; among what is built they would be uploaded, or lost. */
export const stateAstray = ({ content, out, state }: Where): Promise<Problem | undefined> =>
  misplaced('state', state, [
    ['content', content],
    ['output', out],
  ]);

/** What is uploaded lies in nothing that is read or kept, nor among what the next build takes away. */
export const uploadAstray = (to: string, { content, out, state }: Where): Promise<Problem | undefined> =>
  misplaced('upload', to, [
    ['content', content],
    ['state', state],
    ['output', join(out, 'public')],
    ['output', join(out, 'private')],
  ]);

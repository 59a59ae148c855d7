/**
 * The first studio a coach begins with: a few pages of its own, and exercises taken from the demo, so that none is
 * written twice. Whether the studio they make is whole is left to the checks.
 */
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { compareIds } from '../model/identity.js';

/** Squat, hinge, push, pull, carry, brace and a warm-up; each with loads has its way down to one that needs no kit. */
export const STARTER_EXERCISES = [
  'bell-carry-one-side',
  'bell-deadlift',
  'chair-squat',
  'dead-bug',
  'goblet-squat',
  'march-on-the-spot',
  'one-arm-row',
  'prone-row',
  'push-up',
  'reaching-squat',
  'wall-hinge',
  'wall-push-up',
] as const;

export interface StarterFile {
  /** Below the new folder, with `/`. */
  readonly path: string;
  readonly text: string;
}

/** Lines under Easier and Harder that lead to an exercise outside `known` are left out, and a heading left without any. */
export function keepLinksTo(known: readonly string[], text: string): string {
  const lines = text.split('\n').filter((line) => {
    const to = /^- \[[^\]]*\]\(([a-z0-9-]+)\.md\)/.exec(line)?.[1];
    return to === undefined || known.includes(to);
  });
  return lines.join('\n').replace(/^## (Easier|Harder)\n\n+(?=## |$(?![\s\S]))/gm, '');
}

/** In order of path. `folder` is what the coach called the new folder: the first page speaks of it. */
export async function gatherStarter(project: string, folder: string): Promise<readonly StarterFile[]> {
  const own = join(project, 'src', 'app', 'starter');
  const pages = (await readdir(own, { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.isFile() && entry.name.endsWith('.md'))
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(own.length + 1)
        .replaceAll('\\', '/'),
    );
  const written = pages.map(async (path): Promise<StarterFile> => {
    const text = await readFile(join(own, path), 'utf8');
    return path === 'README.md' ? { path, text: text.replaceAll('FOLDER', folder) } : { path: `content/${path}`, text };
  });
  const taken = STARTER_EXERCISES.map(async (id): Promise<StarterFile> => {
    const text = await readFile(join(project, 'content', 'exercises', `${id}.md`), 'utf8');
    return { path: `content/exercises/${id}.md`, text: keepLinksTo(STARTER_EXERCISES, text) };
  });
  return (await Promise.all([...written, ...taken])).sort((a, b) => compareIds(a.path, b.path));
}

/** The demo studio as every part of the bench has it: its content, a client, their plan and booklet, and a build of them. */
import { execFileSync } from 'node:child_process';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { gatherFiles } from '../../src/app/gather-files.js';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import { readFolder } from '../../src/content/read-folder.js';
import { type LinkedLibrary, planBlock } from '../../src/engine/plan-block.js';
import { drawLibrary } from '../../src/figures/draw-library.js';
import type { Booklet } from '../../src/model/booklet.js';
import type { Client } from '../../src/model/client.js';
import { dayOfIso } from '../../src/model/day.js';
import type { Plan } from '../../src/model/plan.js';
import { invariant, type Result } from '../../src/model/result.js';
import type { Content } from '../../src/model/studio.js';
import type { Shown } from '../../src/print/draw-booklet.js';
import { sayPlan } from '../../src/words/say-plan.js';

// Compiled, this file stands in dist/tests/bench.
export const TOP = resolve(import.meta.dirname, '..', '..', '..');
export const MAIN = join(TOP, 'dist', 'src', 'app', 'main.js');
export const DAY = '2026-11-24';
const TODAY = dayOfIso(DAY);
const FIRST = 'rowan-ashby';

export interface Demo {
  readonly content: Content;
  /** The first of the demo's clients. */
  readonly client: Client;
}

export async function readDemo(): Promise<Demo> {
  const gathered = await gatherFiles(join(TOP, 'content'));
  const { value: content } = readFolder(gathered.value);
  const client = content.clients.find(({ id }) => id === FIRST);
  invariant(client !== undefined, 'the demo has its first client');
  return { content, client };
}

export function planned(content: Content, client: Client, linked?: LinkedLibrary): Result<Plan | null> {
  invariant(TODAY !== undefined, 'the day exists');
  const input = { library: content.library, client, today: TODAY, edition: 0 };
  return planBlock(linked === undefined ? input : { ...input, linked });
}

export function planOf({ content, client }: Demo): Plan {
  const { value } = planned(content, client);
  invariant(value !== null, `${client.id} is planned`);
  return value;
}

export const bookletOf = (demo: Demo): Booklet =>
  composeBooklet({ library: demo.content.library, client: demo.client, plan: sayPlan(planOf(demo)) });

export const shownOf = ({ content }: Demo): Shown => ({ drawings: drawLibrary(content.library.exercises) });

/** The client's files as the program builds them, for as long as they are looked at. */
export async function withBuild({ client }: Demo, look: (folder: string) => Promise<void>): Promise<void> {
  const out = join(tmpdir(), `chalkleaf-bench-${process.pid}`);
  try {
    execFileSync(process.execPath, [MAIN, 'build', '--only', client.id, '--today', DAY, '--out', out], {
      cwd: TOP,
      stdio: 'ignore',
    });
    await look(join(out, 'private', 'clients', client.id));
  } finally {
    execFileSync('rm', ['-rf', out]);
  }
}

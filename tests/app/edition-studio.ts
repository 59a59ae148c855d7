/** The smallest studio as its coach works on it: issue, marks that came back, changes to pages, build. */
import { cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from 'vitest';
import type { Edition } from '../../src/model/edition.js';
import type { LogEvent } from '../../src/model/log.js';
import { chalkleaf, type Ran, smallStudio, workFolder, writeFiles } from './run-chalkleaf.js';

export interface EditionStudio {
  readonly path: string;
  readonly run: (today: string, ...args: string[]) => Ran;
  /** A path in the client's content folder. */
  readonly home: (...below: string[]) => string;
  /** A path in the client's output folder. */
  readonly out: (...below: string[]) => string;
  readonly desk: (page: string) => string;
  readonly edition: (n: number) => Edition;
  readonly file: (events: readonly LogEvent[]) => void;
  /** One page below the content folder, with these words in place of those. */
  readonly rewrite: (path: string, from: string | RegExp, to: string) => void;
  readonly away: () => void;
}

export const CLIENT = 'clients/ash-venn/client.md';

/** `like`: a copy of that one as it stands, with what was issued and built in it. */
export function editionStudio(like?: EditionStudio): EditionStudio {
  const work = workFolder();
  const content = (...below: string[]) => join(work.path, 'content', ...below);
  if (like === undefined) writeFiles(content(), smallStudio());
  else cpSync(like.path, work.path, { recursive: true, verbatimSymlinks: true });
  const home = (...below: string[]) => content('clients/ash-venn', ...below);
  const read = (path: string) => readFileSync(path, 'utf8');
  const edition = (n: number): Edition => JSON.parse(read(home('editions', String(n), 'edition.json')));
  return {
    path: work.path,
    run: (today, ...args) =>
      chalkleaf([
        ...args,
        '--today',
        today,
        '--content',
        content(),
        ...(args[0] === 'receive' ? [] : where(work.path)),
      ]),
    home,
    out: (...below) => join(work.path, 'out/private/clients/ash-venn', ...below),
    desk: (page) =>
      read(join(work.path, 'out/private/desk', page))
        .replace(/<[^>]+>/g, ' ')
        .replace(/[\s\u00a0]+/g, ' '),
    edition,
    file: (events) => {
      mkdirSync(home('log'), { recursive: true });
      const log = { schema: 1, bookletId: edition(1).bookletId, device: 'phone', events };
      writeFileSync(home('log', 'phone.json'), `${JSON.stringify(log, null, 1)}\n`);
    },
    rewrite: (path, from, to) => {
      const page = read(content(path));
      expect(page.search(from)).toBeGreaterThan(-1);
      writeFileSync(content(path), page.replace(from, to));
    },
    away: () => work.away(),
  };
}

const where = (work: string): readonly string[] => ['--out', join(work, 'out'), '--state', join(work, 'state')];

/** As read, without its marks: `<p>16 kg</p>` → ` 16 kg `. */
export const wordsOf = (path: string): string =>
  readFileSync(path, 'utf8')
    .replace(/<style>[\s\S]*?<\/style>|<script[\s\S]*?<\/script>/g, '')
    .replace(/<[^>]+>/g, ' ')
    .replace(/[\s\u00a0]+/g, ' ');

/** A studio with one client who has two issued editions, and logs that fit them. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { vi } from 'vitest';
import { runReceive } from '../../src/app/run-receive.js';
import { logOf } from '../../src/content/read-log.js';
import { writeText } from '../../src/marks/write-text.js';
import type { Edition } from '../../src/model/edition.js';
import type { Log } from '../../src/model/log.js';
import { chalkleaf, type Ran, smallStudio, writeFiles } from './run-chalkleaf.js';

export const CLIENT = 'ash-venn';

export interface ReceiveStudio {
  readonly content: string;
  readonly edition: Edition;
  /** As a coach runs it. */
  receive(...args: readonly string[]): Ran;
  /** The same in this process: many times faster. */
  receiveHere(...paths: readonly string[]): Promise<Pick<Ran, 'code' | 'out'>>;
  /** A file beside the studio; its path. */
  put(name: string, text: string | Uint8Array): string;
  /** What is on file of a device. */
  kept(device: string): string;
}

const TODAY = '2027-01-12';

/** Issued on 2026-12-28, the second with a longer rest; received on 2027-01-12. */
export function receiveStudio(folder: string): ReceiveStudio {
  const content = join(folder, 'content');
  writeFiles(content, smallStudio());
  const issue = (): Ran => chalkleaf(['issue', CLIENT, '--content', content, '--today', '2026-12-28']);
  const programme = join(content, 'programmes/first-six-weeks.md');
  for (const rest of ['90 s', '100 s']) {
    writeFileSync(programme, readFileSync(programme, 'utf8').replace('90 s', rest));
    const ran = issue();
    if (ran.code !== 0) throw new Error(ran.out + ran.err);
  }
  const kept = (device: string): string =>
    readFileSync(join(content, 'clients', CLIENT, 'log', `${device}.json`), 'utf8');
  return {
    content,
    edition: JSON.parse(readFileSync(join(content, 'clients', CLIENT, 'editions/1/edition.json'), 'utf8')) as Edition,
    receive: (...args) => chalkleaf(['receive', ...args, '--content', content, '--today', TODAY]),
    receiveHere: (...paths) => receiveHere(paths, content),
    put: (name, text) => {
      writeFiles(folder, [[name, text]]);
      return join(folder, name);
    },
    kept,
  };
}

async function receiveHere(paths: readonly string[], content: string): Promise<Pick<Ran, 'code' | 'out'>> {
  let out = '';
  const write = vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    out += String(text);
    return true;
  });
  try {
    const beside = (name: string): string => join(content, '..', name);
    const options = { content, out: beside('output'), state: beside('state'), today: TODAY, json: false };
    const code = await runReceive(paths, options);
    return { code, out };
  } finally {
    write.mockRestore();
  }
}

export const idOf = (n: number): string => `7c9e6679-7425-40de-944b-${String(n).padStart(12, '0')}`;

/** Marks of the first two sessions, as a phone would make them. */
export function someEvents(count: number, edition = 1): readonly Readonly<Record<string, unknown>>[] {
  const kinds = [
    { kind: 'opened', occurrence: 1, today: 'as usual' },
    ...[1, 2, 3].map((n) => ({
      kind: 'set',
      key: `1/1/goblet-squat/both/work/${n}`,
      exercise: 'goblet-squat',
      tempo: 'normal',
      done: 'done',
      reps: 8,
      asPlanned: false,
    })),
    { kind: 'reserve', occurrence: 1, row: 'goblet-squat', side: 'both', reps: 2 },
    { kind: 'pain', occurrence: 1, row: 'chair-squat', report: { where: 'knee', degree: 2 } },
    { kind: 'closed', occurrence: 1, effort: 6 },
    { kind: 'note', text: 'Fine, “mostly”.' },
    { kind: 'void', event: idOf(3) },
    { kind: 'closed', occurrence: 2, minutes: 30 },
  ];
  return Array.from({ length: count }, (_, n) => ({
    id: idOf(n + 1),
    seq: n + 1,
    edition,
    at: `2027-01-04T18:${String(n).padStart(2, '0')}:00+01:00`,
    ...kinds[n % kinds.length],
  }));
}

export const logFrom = (studio: ReceiveStudio, events: readonly unknown[], device = 'phone-1'): string =>
  JSON.stringify({ schema: 1, bookletId: studio.edition.bookletId, device, events });

export function messageFrom(studio: ReceiveStudio, events: readonly unknown[], device = 'phone-1'): string {
  const log: Log | { readonly why: string } = logOf(JSON.parse(logFrom(studio, events, device)));
  if ('why' in log) throw new Error(log.why);
  return writeText(log);
}

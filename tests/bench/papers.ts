/** Every form on paper of a booklet: how long they take together, how large each is, and what any number of them holds in memory. */
import type { Booklet } from '../../src/model/booklet.js';
import { clientId } from '../../src/model/identity.js';
import { invariant } from '../../src/model/result.js';
import type { Shown } from '../../src/print/draw-booklet.js';
import { drawForms, type PaperFile } from '../../src/print/draw-forms.js';
import { cpuOf, processFigures } from './measure.js';

const CLIENT = clientId('rowan-ashby');
/** As long as a real one with its key. */
const ADDRESS = {
  whole: `https://slate-yard.example/${'7f3a9c2e'.repeat(4)}/#open=${'q1Zb8x0Kf3v'.repeat(4).slice(0, 43)}`,
  open: `https://slate-yard.example/${'7f3a9c2e'.repeat(4)}/`,
};

async function drawn(booklet: Booklet, shown: Shown): Promise<readonly PaperFile[]> {
  const { value } = await drawForms(booklet, CLIENT, ADDRESS, shown);
  invariant(value.length > 0, 'the booklet can be printed');
  return value;
}

/** For a process of its own: each drawn and let go, so many times. */
export async function drawMany(booklet: Booklet, shown: Shown, times: number): Promise<void> {
  for (let i = 0; i < times; i += 1) await drawn(i % 2 === 0 ? booklet : { ...booklet, largePrint: true }, shown);
}

export interface PaperFigures {
  readonly cpuMs: number;
  readonly files: readonly (readonly [name: string, bytes: number])[];
}

export async function measurePapers(booklet: Booklet, shown: Shown): Promise<PaperFigures> {
  const cpuMs = await cpuOf(5, () => drawn(booklet, shown));
  return { cpuMs, files: (await drawn(booklet, shown)).map(({ name, bytes }) => [name, bytes.length]) };
}

/** Peak MiB of a process that draws so many booklets in all their forms. */
export const peakOfMany = (main: string, times: number, cwd: string): number =>
  processFigures(1, [main, 'papers', String(times)], cwd).peakMiB;

/** How long the program takes to begin. */
import { execFileSync } from 'node:child_process';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DAY, type Demo, MAIN, TOP } from './demo.js';
import { processFigures } from './measure.js';
import { ms, row } from './table.js';

const RUNS = 5;

export function startUp({ client }: Demo): void {
  const node = processFigures(RUNS, ['-e', '0'], TOP);
  const figure = (what: string, args: readonly string[]): void => {
    const { cpuMs, peakMiB } = processFigures(RUNS, [MAIN, ...args], TOP);
    row(what, ms(cpuMs), `Node alone ${ms(node.cpuMs)}; + ${ms(cpuMs - node.cpuMs)}; ${peakMiB.toFixed(0)} MiB`);
  };
  figure('start: --help', ['--help']);
  figure('start: check of the demo', ['check', '--today', DAY]);
  const out = join(tmpdir(), `chalkleaf-bench-${process.pid}`);
  figure('build of one client, all outputs', ['build', '--only', client.id, '--today', DAY, '--out', out]);
  execFileSync('rm', ['-rf', out]);
}

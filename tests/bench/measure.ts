/** Timing by medians, and processes timed by their own account of CPU. */
import { spawnSync } from 'node:child_process';

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

/** CPU milliseconds of this process for one call, the median of `times` after as many warm-up calls. */
export async function cpuOf(times: number, call: () => unknown): Promise<number> {
  for (let i = 0; i < times; i += 1) await call();
  const taken: number[] = [];
  for (let i = 0; i < times; i += 1) {
    const before = process.cpuUsage();
    await call();
    const used = process.cpuUsage(before);
    taken.push((used.user + used.system) / 1000);
  }
  return median(taken);
}

/** Two calls in turn, A B A B …, so that a machine whose speed drifts wrongs neither; CPU milliseconds of each. */
export async function cpuOfPair(times: number, a: () => unknown, b: () => unknown): Promise<readonly [number, number]> {
  await a();
  await b();
  const taken: [number[], number[]] = [[], []];
  for (let i = 0; i < times; i += 1) {
    for (const [which, call] of [a, b].entries()) {
      const before = process.cpuUsage();
      await call();
      const used = process.cpuUsage(before);
      taken[which]?.push((used.user + used.system) / 1000);
    }
  }
  return [median(taken[0]), median(taken[1])];
}

const TELL = `data:text/javascript,${encodeURIComponent(
  'import{writeSync}from"node:fs";process.on("exit",()=>{const u=process.resourceUsage();writeSync(3,JSON.stringify([(u.userCPUTime+u.systemCPUTime)/1000,u.maxRSS]))})',
)}`;

export interface ProcessFigures {
  readonly cpuMs: number;
  readonly peakMiB: number;
}

/** A whole Node process: median CPU and peak memory over `times` runs. */
export function processFigures(times: number, args: readonly string[], cwd: string): ProcessFigures {
  const cpu: number[] = [];
  const peak: number[] = [];
  for (let i = 0; i < times; i += 1) {
    const done = spawnSync(process.execPath, ['--import', TELL, ...args], {
      cwd,
      stdio: ['ignore', 'ignore', 'inherit', 'pipe'],
      encoding: 'utf8',
    });
    const told: unknown = JSON.parse(done.output[3] ?? '[]');
    if (Array.isArray(told)) {
      cpu.push(Number(told[0]));
      peak.push(Number(told[1]) / 1024);
    }
  }
  return { cpuMs: median(cpu), peakMiB: median(peak) };
}

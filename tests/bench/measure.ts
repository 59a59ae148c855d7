/** Timing by medians, and processes timed by their own account of CPU. */
import { execFileSync, spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

/** Enough warm-up, and enough measuring, whatever is measured. */
const WARM_MS = 1500;
const LONG_MS = 5000;
const LEAST = 3;

/**
 * CPU milliseconds of this process for one call, the median of `times` after as many warm-up calls; of fewer where a
 * call takes long.
 */
export async function cpuOf(times: number, call: () => unknown): Promise<number> {
  const cpu = (): number => {
    const { user, system } = process.cpuUsage();
    return (user + system) / 1000;
  };
  const begun = cpu();
  for (let i = 0; i < times && (i === 0 || cpu() - begun < WARM_MS); i += 1) await call();
  const taken: number[] = [];
  const from = cpu();
  while (taken.length < Math.min(times, LEAST) || (taken.length < times && cpu() - from < LONG_MS)) {
    const before = cpu();
    await call();
    taken.push(cpu() - before);
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

/** CPU ticks of each running process, by its number, and which it was started by; as `proc_pid_stat(5)` has them. */
function processes(): ReadonlyMap<number, { readonly parent: number; readonly ticks: number }> {
  const found = new Map<number, { parent: number; ticks: number }>();
  for (const name of readdirSync('/proc').filter((one) => /^\d+$/.test(one))) {
    try {
      const stat = readFileSync(`/proc/${name}/stat`, 'utf8');
      // The second field is a name in brackets, which may hold spaces; the third follows the last bracket.
      const fields = stat
        .slice(stat.lastIndexOf(')') + 2)
        .split(' ')
        .map(Number);
      const [parent = 0, user = 0, system = 0, waitedUser = 0, waitedSystem = 0] = [1, 11, 12, 13, 14].map(
        (i) => fields[i],
      );
      found.set(Number(name), { parent, ticks: user + system + waitedUser + waitedSystem });
    } catch {
      // It ended while the list was read.
    }
  }
  return found;
}

/** Of all that this process started, and what that started in turn. */
function ticksOfChildren(): number {
  const all = processes();
  const isOurs = (pid: number): boolean => {
    const parent = all.get(pid)?.parent ?? 0;
    return parent === process.pid || (parent > 1 && isOurs(parent));
  };
  return [...all].reduce((sum, [pid, { ticks }]) => sum + (isOurs(pid) ? ticks : 0), 0);
}

/** CPU milliseconds that running children of this process spend on one call, the median of `times` after a first one. Linux alone. */
export async function cpuOfChildren(times: number, call: () => Promise<unknown>): Promise<number> {
  const perSecond = Number(execFileSync('getconf', ['CLK_TCK'], { encoding: 'utf8' }));
  await call();
  const taken: number[] = [];
  for (let i = 0; i < times; i += 1) {
    const before = ticksOfChildren();
    await call();
    taken.push(((ticksOfChildren() - before) * 1000) / perSecond);
  }
  return median(taken);
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

/**
 * The limit for planning: the walk of one strand of one version in the fewest words. No rules to take out, no reasons,
 * no findings, nothing of what was considered; what to do if the gate does not open it says. It must give the same loads,
 * tempi, reps and trials as the walk does: the bench holds it to that before it times anything.
 */
export interface BareStrand {
  readonly share: number | null;
  readonly bodyMass: number | null;
  readonly loads: readonly number[];
  /** Load in grams; reps and reserve together, in tenths. */
  readonly test: { readonly load: number; readonly resisted: number; readonly reps: number; readonly weak: boolean };
  readonly bottom: number;
  readonly top: number;
  /** In tenths. */
  readonly floor: number;
  readonly gain: number;
  readonly trials: boolean;
  /** Reps asked in reserve, sets, easy: a week each. */
  readonly weeks: readonly (readonly [asked: number, sets: number, easy: boolean])[];
  readonly tempi: readonly number[];
}

/** `[load, tempo, reps, trial reps]`, week by week. */
export type BareStep = readonly [number, number, number, number];

export interface BareWalk {
  readonly steps: readonly BareStep[];
  /** From the week of the gate on, as if it had not opened. */
  readonly otherwise: readonly BareStep[];
}

interface State {
  readonly week: number;
  readonly at: number;
  readonly k: number;
  readonly tempo: number;
  readonly greatest: number;
  readonly lastReps: number;
  readonly lastSets: number;
}

export function bareWalk(strand: BareStrand): BareWalk {
  const { loads, test, bodyMass, share } = strand;
  const counted = (share === null || share === 0 || bodyMass !== null) && (loads[0] ?? 0) + lifted(strand) > 0;
  let at = 0;
  while (at + 1 < loads.length && (loads[at + 1] ?? 0) <= test.load) at += 1;
  const k = (counted ? test.resisted : 1) * (300 + test.reps);
  const begun: State = { week: 0, at, k, tempo: 0, greatest: -1, lastReps: 0, lastSets: 0 };
  const steps: BareStep[] = [];
  const gate = walk(strand, counted, begun, false, steps);
  const otherwise: BareStep[] = [];
  if (gate !== null) walk(strand, counted, gate, true, otherwise);
  return { steps, otherwise };
}

const lifted = ({ share, bodyMass }: BareStrand): number => Math.floor(((share ?? 0) * (bodyMass ?? 0)) / 1000);

/** Adds to `steps`; where a gate opened, the state before it. */
function walk(strand: BareStrand, counted: boolean, begun: State, barred: boolean, steps: BareStep[]): State | null {
  const { loads, bottom, top, tempi, floor } = strand;
  const { weak } = strand.test;
  const body = lifted(strand);
  const resisted = (i: number): number => (counted ? (loads[i] ?? 0) + body : 1);
  let { at, k, tempo, greatest, lastReps, lastSets } = begun;
  const start = at;
  let earned = 0;
  let trialOpen = false;
  let gate: State | null = null;
  const toFailure = (i: number, t: number): number => {
    const r = resisted(i);
    return Math.floor((Math.floor((k - 300 * r) / r) * (tempi[t] ?? 1000)) / 1000);
  };
  for (const [index, [asked, sets, easy]] of strand.weeks.entries()) {
    if (index < begun.week) continue;
    const state = { week: index, at, k, tempo, greatest, lastReps, lastSets };
    const most = (i: number, t: number, free: boolean): number => {
      const rtf = toFailure(i, t);
      const r = resisted(i);
      const volume =
        greatest < 0 || free ? Number.POSITIVE_INFINITY : Math.max(Math.floor(1.1 * greatest), greatest + r);
      for (let n = top; n >= bottom; n -= 1) {
        const left = rtf - 10 * n;
        if (left >= floor && left >= asked - 2 && n * r <= volume) return n;
      }
      return rtf - 10 * bottom >= floor ? bottom : 0;
    };
    let reps = 0;
    let trial = 0;
    if (easy) {
      const cap = sets < lastSets ? lastReps : lastReps - 1;
      const least = Math.max(1, bottom - 2);
      const rtf = toFailure(at, tempo);
      for (reps = cap; reps >= least; reps -= 1) {
        if (rtf - 10 * reps >= Math.max(floor, asked - 2)) break;
      }
      if (reps < least) reps = Math.min(cap, least);
      steps.push([loads[at] ?? 0, tempo, reps, 0]);
      continue;
    }
    const before = [at, tempo];
    if (!barred && at + 1 < loads.length) {
      const now = loads[at] ?? 0;
      const next = toFailure(at + 1, 0);
      const small = ((loads[at + 1] ?? 0) - now) * 100 <= now * 10;
      const enough = next >= 10 * bottom + floor;
      if (at < start && next >= 10 * bottom + asked - 2) at += 1;
      else if (small && earned >= (weak ? 2 : 1) && enough) at += 1;
      else if (!small && gate === null && (earned === 2 || trialOpen)) {
        if (!weak && enough) {
          at += 1;
          gate = state;
          trialOpen = false;
        } else if (strand.trials && sets >= 2 && next - floor >= 30) {
          trialOpen = true;
          trial = Math.min(top, Math.floor((next - floor) / 10));
        }
      }
      if (at !== before[0]) tempo = 0;
    }
    if (!barred && at === before[0] && trial === 0 && earned === 2 && tempo + 1 < tempi.length) {
      if (toFailure(at, tempo + 1) - 10 * bottom >= floor) tempo += 1;
    }
    reps = most(at, tempo, false);
    if (reps === 0) {
      let nearest = Number.POSITIVE_INFINITY;
      const from = at;
      for (let i = from; i >= 0; i -= 1) {
        for (let n = top; n >= (i === from ? Math.max(1, bottom - 2) : bottom); n -= 1) {
          const left = toFailure(i, tempo) - 10 * n;
          const half = Math.floor((2 * Math.abs(left - asked) + 5) / 10);
          if (left >= floor && half < nearest) {
            nearest = half;
            at = i;
            reps = n;
          }
        }
      }
    }
    const atTop = reps === top && toFailure(at, tempo) - 10 * reps >= asked - 2;
    const changed = at !== before[0] || tempo !== before[1];
    if (changed) earned = 0;
    if (atTop) earned = Math.min(2, earned + 1);
    greatest = Math.max(greatest, reps * resisted(at));
    lastReps = reps;
    lastSets = sets;
    steps.push([loads[at] ?? 0, tempo, reps, trial]);
    k = Math.floor((k * (10_000 + strand.gain)) / 10_000);
  }
  return gate;
}

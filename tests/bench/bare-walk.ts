/**
 * The limit for planning: the walk of one strand in the fewest words, with one version, no reasons, no findings and
 * no `otherwise`. Kept so that the engine's time can be given as a ratio. It must give the same options and reps.
 */
export interface BareStrand {
  readonly share: number;
  readonly bodyMass: number | null;
  readonly loads: readonly number[];
  readonly test: { readonly load: number; readonly reps: number; readonly reserve: number };
  readonly bottom: number;
  readonly top: number;
  readonly floor: number;
  readonly gain: number;
  /** Reps asked, sets, easy: a week each. */
  readonly weeks: readonly (readonly [asked: number, sets: number, easy: boolean])[];
  readonly tempi: readonly number[];
}

/** `[load, tempo, reps, trial reps]`, week by week. */
export type BareStep = readonly [number, number, number, number];

export function bareWalk(strand: BareStrand): BareStep[] {
  const { loads, bottom, top, tempi, test } = strand;
  const noMass = strand.share > 0 && strand.bodyMass === null;
  const lifted = noMass ? 0 : Math.floor((strand.share * (strand.bodyMass ?? 0)) / 1000);
  const resisted = (i: number): number => (noMass ? 1 : (loads[i] ?? 0) + lifted);
  const floor = strand.floor * 10;
  let at = 0;
  while (at + 1 < loads.length && (loads[at + 1] ?? 0) <= test.load) at += 1;
  const start = at;
  const weak = test.reps + test.reserve > 12;
  let k = (noMass ? 1 : test.load + lifted) * (300 + 10 * (test.reps + test.reserve));
  let tempo = 0;
  let earned = 0;
  let trialOpen = false;
  let gateUsed = false;
  let greatest = -1;
  let lastReps = 0;
  let lastSets = 0;
  const toFailure = (i: number, t: number): number => {
    const r = resisted(i);
    return Math.floor((Math.floor((k - 300 * r) / r) * (tempi[t] ?? 1000)) / 1000);
  };
  const steps: BareStep[] = [];
  for (const [askedReps, sets, easy] of strand.weeks) {
    const asked = Math.max(askedReps * 10, floor);
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
    if (at + 1 < loads.length) {
      const now = loads[at] ?? 0;
      const next = toFailure(at + 1, 0);
      const small = ((loads[at + 1] ?? 0) - now) * 100 <= now * 10;
      const enough = next >= 10 * bottom + floor;
      if (at < start && next >= 10 * bottom + asked - 2) at += 1;
      else if (small && earned >= (weak ? 2 : 1) && enough) at += 1;
      else if (!small && !gateUsed && (earned === 2 || trialOpen)) {
        if (!weak && enough) {
          at += 1;
          gateUsed = true;
          trialOpen = false;
        } else if (sets >= 2 && next - floor >= 30) {
          trialOpen = true;
          trial = Math.min(top, Math.floor((next - floor) / 10));
        }
      }
      if (at !== before[0]) tempo = 0;
    }
    if (at === before[0] && trial === 0 && earned === 2 && tempo + 1 < tempi.length) {
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
  return steps;
}

/** The walk of a strand, beside a bare one that comes to the same numbers. */
import { planStrand, planSurely } from '../../src/engine/plan-strand.js';
import { invariant } from '../../src/model/result.js';
import type { StrandInput } from '../../src/model/strand.js';
import { type BareStrand, bareWalk } from './bare-walk.js';
import { type Demo, planned } from './demo.js';
import { cpuOfPair } from './measure.js';
import { ms, row } from './table.js';

/** Every strand of the demo that begins from a test, in one version, with nothing held: the bare walk knows no more. */
export async function walking({ content }: Demo): Promise<void> {
  const tested = content.clients.flatMap((client) => {
    const { value } = planned(content, client);
    return (value?.inputs.strands ?? []).filter(({ capacity }) => capacity !== null);
  });
  const pairs = tested.flatMap((strand) => {
    const bare = bareOf(strand);
    return bare === null ? [] : [[strand, bare] as const];
  });
  for (const [strand, bare] of pairs) {
    const { steps, otherwise } = bareWalk(bare);
    const sure = planSurely(strand)?.map(({ option, reps }) => [option.load, option.tempo, reps].join());
    const theirs = [...steps.slice(0, steps.length - otherwise.length), ...otherwise].map((step) =>
      step.slice(0, 3).join(),
    );
    invariant(sure?.join(' ') === theirs.join(' '), `the bare walk of ${strand.id} is the walk's own`);
  }
  const many = 200;
  let reps = 0;
  const timed = (walk: (pair: (typeof pairs)[number]) => number) => () => {
    for (let i = 0; i < many; i += 1) for (const pair of pairs) reps += walk(pair);
  };
  const bare = timed(([, strand]) => bareWalk(strand).steps.at(-1)?.[2] ?? 0);
  const sure = timed(([strand]) => planSurely(strand)?.at(-1)?.reps ?? 0);
  const told = timed(([strand]) => {
    const result = planStrand(strand);
    return result.kind === 'walked' ? (result.steps.at(-1)?.reps ?? 0) : 0;
  });
  const each = many * pairs.length;
  for (const [what, walk] of [
    ['walk of one strand, the numbers', sure],
    ['  with reasons, what was refused, and findings', told],
  ] as const) {
    const [ours, theirs] = await cpuOfPair(9, walk, bare);
    row(what, ms(ours / each), `bare ${ms(theirs / each)}, × ${(ours / theirs).toFixed(1)}; ${pairs.length} strands`);
  }
  invariant(reps > 0, 'the walks were walked');
}

/** `null` where the walk has more to go by than the bare one knows. */
function bareOf(strand: StrandInput): BareStrand | null {
  const [version, another] = strand.versions;
  const { capacity, start, occurrences } = strand;
  if (version === undefined || another !== undefined || capacity === null || start === null) return null;
  if (version.loads.some(({ mode }) => mode === 'per-hand')) return null;
  if (
    occurrences.some(({ held }) => held !== undefined) ||
    strand.gates === false ||
    strand.weeks.length !== occurrences.length ||
    occurrences.some(({ floor }) => floor !== occurrences[0]?.floor)
  )
    return null;
  return {
    share: version.share,
    bodyMass: strand.bodyMass,
    loads: version.loads.map(({ grams }) => grams),
    test: {
      load: start.load,
      resisted: capacity.resisted,
      reps: capacity.reps,
      weak: capacity.weak || capacity.reps > strand.rules.weakAbove,
    },
    bottom: strand.bottom,
    top: strand.top,
    floor: occurrences[0]?.floor ?? 0,
    gain: strand.gain,
    trials: strand.trials,
    weeks: occurrences.map(({ asked, sets, easy }) => [asked, sets, easy]),
    tempi: strand.tempi.map(({ factor }) => factor),
  };
}

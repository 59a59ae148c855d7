/** What each side can lift now, by the sets marked in the block: the same evidence that the next plan rests on. */
import { isoOfDay } from '../../model/day.js';
import type { DoneSession } from '../../model/history.js';
import type { Ability, Estimate, SidesApart } from '../../model/review.js';
import { rowsOf } from '../history/marks/marked-rows.js';
import { type Evidence, evidenceIn } from '../history/marks/marked-tests.js';
import { walkValues } from '../rows/walk-values.js';
import { DONE_MEDIAN } from '../rules/done-median.js';
import { WEAK_RESERVE } from '../rules/weak-reserve.js';
import type { Reviewing } from './reviewing.js';

/** Estimates of one exercise and side, earliest first. */
export interface Known {
  readonly ability: Ability;
  readonly all: readonly Estimate[];
  /** The last of them by which it is judged. */
  readonly last: readonly Estimate[];
  /** The middle one in grams times tenths, and the load it is said at in grams. */
  readonly k: number;
  readonly resisted: number;
}

/** In order of first mark. */
export function knownOf(reviewing: Reviewing, sessions: readonly DoneSession[]): readonly Known[] {
  const bySide = new Map<string, Evidence[]>();
  for (const session of sessions) {
    for (const marked of rowsOf(session)) {
      for (const evidence of evidenceIn(reviewing, marked)) {
        const key = `${evidence.exercise.id}/${evidence.side}`;
        const own = bySide.get(key);
        if (own === undefined) bySide.set(key, [evidence]);
        else own.push(evidence);
      }
    }
  }
  return [...bySide.values()].flatMap((own) => knownBy(reviewing, own) ?? []);
}

function knownBy(reviewing: Reviewing, own: readonly Evidence[]): Known | null {
  const { rules } = reviewing;
  const latest = own.at(-1);
  if (latest === undefined) return null;
  const { resisted } = latest;
  // Where loads are not counted, only what was done with the same one can be compared.
  const alike = resisted > 1 ? own : own.filter(({ set }) => set.load?.label === latest.set.load?.label);
  const all = alike.map((evidence) => estimateOf(reviewing, evidence, resisted));
  const last = all.slice(-Math.max(1, rules.valueOf(DONE_MEDIAN)));
  const kept = alike.slice(-last.length);
  const middleAt = [...kept.keys()].sort((a, b) => (kept[a]?.k ?? 0) - (kept[b]?.k ?? 0))[
    Math.floor((kept.length - 1) / 2)
  ];
  const middle = last[middleAt ?? 0];
  const [first, final] = [all[0], all.at(-1)];
  if (first === undefined || final === undefined || middle === undefined) return null;
  const at = last.map((estimate) => estimate.at);
  return {
    ability: {
      exercise: latest.exercise.id,
      side: latest.side,
      first,
      latest: final,
      middle,
      lowest: Math.min(...at),
      highest: Math.max(...at),
      n: all.length,
    },
    all,
    last,
    k: kept[middleAt ?? 0]?.k ?? 0,
    resisted,
  };
}

function estimateOf({ rules }: Reviewing, evidence: Evidence, resisted: number): Estimate {
  const { set, reps, reserve, by, inCircuit, day, k } = evidence;
  const weak =
    by === 'unsaid' ||
    inCircuit ||
    reserve > rules.valueOf(WEAK_RESERVE) ||
    10 * reps + reserve > walkValues(rules).weakAbove;
  return {
    date: isoOfDay(day),
    load: set.load ?? null,
    tempo: set.tempo,
    reps,
    reserve,
    by,
    weak,
    at: repsAt(k, resisted),
  };
}

/** Reps to failure at normal tempo, never below none. */
const repsAt = (k: number, resisted: number): number => Math.max(0, Math.floor((k - 300 * resisted) / resisted));

/** Only where both sides are known, and not the same. */
export function sidesApart(known: readonly Known[]): readonly SidesApart[] {
  return known.flatMap((left): readonly SidesApart[] => {
    if (left.ability.side !== 'left') return [];
    const { exercise } = left.ability;
    const right = known.find(({ ability }) => ability.exercise === exercise && ability.side === 'right');
    if (right === undefined || left.k === right.k) return [];
    const weaker = left.k < right.k ? left : right;
    // Loads that are not counted are compared only where they are the same.
    if (weaker.resisted === 1 && left.ability.latest.load?.label !== right.ability.latest.load?.label) return [];
    const reps = { left: repsAt(left.k, weaker.resisted), right: repsAt(right.k, weaker.resisted) };
    return [{ exercise, weaker: weaker === left ? 'left' : 'right', load: weaker.ability.latest.load, reps }];
  });
}

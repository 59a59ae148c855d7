/** Everything a decision used, as the plan lists it, so that an outsider can repeat it. */
import { isoOfDay } from '../model/day.js';
import { compareIds } from '../model/identity.js';
import type { PlanInputs } from '../model/plan-inputs.js';
import type { BlockContext } from './block-context.js';
import type { Floor } from './effort/plan-effort.js';
import type { Begun } from './history/within-block/begun-block.js';
import { doneInputs } from './history/within-block/lay-done.js';
import { listRecalls } from './history/within-block/list-recalls.js';
import { labelOf } from './kit/load-label.js';
import type { LadderRow } from './ladder/ladder-row.js';
import { listReplanning } from './list-replanning.js';
import type { WalkedRow } from './rows/walked-row.js';
import type { Queue } from './sessions/queue-sessions.js';

export function listInputs(
  context: BlockContext,
  queue: Queue,
  rows: readonly WalkedRow[],
  ladders: readonly LadderRow[],
  floors: readonly Floor[],
  begun: Begun | null,
): PlanInputs {
  const { client, programme, standing } = context;
  const { screening, clearance } = client;
  const replanning = listReplanning(context, rows, ladders);
  return {
    kit: client.kit.map((item) => {
      if ('mass' in item) return { id: item.id, kind: item.kind, grams: item.mass.grams, label: labelOf(item.mass) };
      return { id: item.id, kind: item.kind, grams: null, label: 'label' in item ? item.label : item.kind };
    }),
    capacities: capacitiesOf(rows),
    floors: floors.map(({ rule, reserve, weeks }) => ({ rule: rule.id, reserve, weeks })),
    cautions: client.cautions.map(({ what, degree, side, phases, from, until, review, by }) => ({
      what,
      degree,
      side,
      phases,
      from: isoOfDay(from),
      ...(until === undefined ? {} : { until: isoOfDay(until) }),
      ...(review === undefined ? {} : { review: isoOfDay(review) }),
      by,
    })),
    flags: [],
    minutesCap: client.minutes,
    days: queue.days,
    bodyMass: client.bodyMass?.mass.grams ?? null,
    experience: client.experience,
    birthYear: client.birthYear,
    blocksBefore: client.blocksBefore,
    curve: programme.curve.map(({ reserve, share, easy }) => ({ reserve, share, easy })),
    shares: sharesOf(rows),
    room: client.room,
    signOffs: client.signOffs.map(({ exercise, upTo, date, by }) => {
      return { exercise, grams: upTo?.grams ?? null, date: isoOfDay(date), by };
    }),
    clearance:
      clearance === undefined
        ? null
        : {
            by: clearance.by,
            date: isoOfDay(clearance.date),
            ...(clearance.until === undefined ? {} : { until: isoOfDay(clearance.until) }),
            for: clearance.for,
          },
    screening:
      screening === undefined
        ? null
        : {
            date: isoOfDay(screening.date),
            regularExercise: screening.regularExercise,
            knownDisease: screening.knownDisease,
            symptoms: screening.symptoms,
          },
    strands: rows.map((row) => row.strand),
    ladders: ladders.map(({ ladder }) => ladder),
    standing: {
      moderate: standing.moderate,
      derived: standing.derived.map(({ rule, what, degree }) => ({ rule: rule.id, what, degree })),
      health: standing.health,
    },
    mainBells: client.mainBells.map(({ pattern, mass }) => ({ pattern, grams: mass.grams })),
    breaks: client.breaks.map(({ from, until, cause }) => ({ from: isoOfDay(from), until: isoOfDay(until), cause })),
    ...(begun === null ? {} : { done: doneInputs(begun) }),
    ...(context.recalls.size === 0 ? {} : { recalls: listRecalls(context.recalls) }),
    ...(replanning === null ? {} : { replanning }),
  };
}

/** Of every exercise whose test was used, once, by id and then weaker side first. */
function capacitiesOf(rows: readonly WalkedRow[]): PlanInputs['capacities'] {
  const used = new Map<string, PlanInputs['capacities']>();
  for (const { beginning } of rows) {
    const { tested, source } = beginning;
    if (tested === null || source === null || used.has(source.exercise.id)) continue;
    used.set(
      source.exercise.id,
      tested.sides.map(({ side, k, weak, test }) => ({
        exercise: source.exercise.id,
        side,
        k,
        test: {
          date: isoOfDay(test.date),
          grams: test.load?.grams ?? 0,
          reps: test.reps,
          reserve: test.reserve,
          ...(test.tempo === undefined ? {} : { tempo: test.tempo }),
          ...(test.marked === undefined ? {} : { marked: test.marked }),
        },
        weak,
      })),
    );
  }
  return [...used.entries()].sort(([a], [b]) => compareIds(a, b)).flatMap(([, list]) => list);
}

function sharesOf(rows: readonly WalkedRow[]): PlanInputs['shares'] {
  const shares = new Map<string, PlanInputs['shares'][number]>();
  for (const { fitted, beginning } of rows) {
    const { source } = beginning;
    for (const { exercise } of source === null ? fitted.chain.judged : [...fitted.chain.judged, source]) {
      const { bodyShare } = exercise.facts;
      if (bodyShare !== undefined) shares.set(exercise.id, { exercise: exercise.id, ...bodyShare });
    }
  }
  return [...shares.values()].sort((a, b) => compareIds(a.exercise, b.exercise));
}

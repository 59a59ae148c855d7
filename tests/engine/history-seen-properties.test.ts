/**
 * Over made-up studios: nothing that was seen makes a plan harder, but what was light, or keeps a client from training;
 * words of one's own change nothing.
 */
import { expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import { type Observation, SEEN } from '../../src/model/client.js';
import { addDays } from '../../src/model/day.js';
import type { Plan, PlanSet } from '../../src/model/plan.js';
import { runs } from '../deep.js';
import { chanceFrom } from './chance.js';
import { PLACE } from './generate-exercises.js';
import { generateStudio } from './generate-studio.js';

const STUDIOS = runs(24, 600);
const CAREFUL = SEEN.filter((phrase) => phrase !== 'light' && phrase !== 'moves well');

const WALKED: ReadonlySet<string> = new Set(['strength', 'bodyweight', 'combination']);

interface Work {
  readonly exercise: string;
  readonly tempo: string;
  readonly set: PlanSet;
}

function workOf(plan: Plan): ReadonlyMap<string, Work> {
  const work = new Map<string, Work>();
  for (const { sessions } of plan.weeks) {
    for (const { groups } of sessions) {
      for (const { exercise, tempo, sets, capacity, way } of groups.flatMap(({ items }) => items)) {
        // After a feeler set nothing is claimed: its reps are those of one answer of several.
        if (capacity === null && WALKED.has(way)) continue;
        for (const set of sets) {
          if (set.kind === 'work') work.set(set.key, { exercise: set.exercise ?? exercise, tempo, set });
        }
      }
    }
  }
  return work;
}

/** Of the sets that both plans have in one exercise at one tempo: a heavier load, or more reps with the same. */
function raised(before: Plan, after: Plan): readonly string[] {
  const was = workOf(before);
  return [...workOf(after)].flatMap(([key, { exercise, tempo, set }]) => {
    const own = was.get(key);
    if (own === undefined || own.exercise !== exercise) return [];
    const [old, now] = [own.set.load?.grams ?? 0, set.load?.grams ?? 0];
    const more = (['reps', 'seconds', 'metres'] as const).some(
      (much) => (set[much] ?? 0) > (own.set[much] ?? set[much] ?? 0),
    );
    if (now > old || (now === old && tempo === own.tempo && more)) {
      return [`${key}: ${own.set.reps} @ ${old} ${own.tempo} → ${set.reps} @ ${now} ${tempo}`];
    }
    return [];
  });
}

test('what was seen', () => {
  let changed = 0;
  for (let seed = 0; seed < STUDIOS; seed += 1) {
    const { library, client, today } = generateStudio(seed, 'everything');
    const rows = library.programmes.flatMap(({ sessions }) =>
      sessions.flatMap(({ blocks }) => blocks.flatMap((b) => b.rows)),
    );
    const named = rows.flatMap(({ target }) => (target.kind === 'exercise' ? [target.id] : []));
    const random = chanceFrom(seed);
    const plan = (observations: readonly Observation[]) =>
      planBlock({ library, client: { ...client, observations }, today, edition: 0 }).value;
    const before = plan([]);
    if (before === null) continue;
    const seen = (text: string, means: Observation['means']): readonly Observation[] =>
      named.map((exercise) => ({
        date: addDays(today, -random.whole(0, 30)),
        exercise,
        side: 'left',
        seen: text,
        means,
        place: PLACE,
      }));
    expect(plan(seen('hurryng', { kind: 'free' }))).toEqual(before);
    for (const phrase of CAREFUL) {
      const after = plan(seen(phrase, { kind: 'phrase', phrase }));
      if (after === null) expect.fail(`${seed} ${phrase}: withheld`);
      if (JSON.stringify(after) !== JSON.stringify(before)) changed += 1;
      expect(raised(before, after), `${seed} ${phrase}`).toEqual([]);
    }
  }
  expect(changed).toBeGreaterThan(2 * STUDIOS);
}, 300_000);

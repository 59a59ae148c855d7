/** The sets of one item in few words, for the coach. */
import type { Plan, PlanSet } from '../model/plan.js';
import { openDose, sayFound } from './say-found.js';
import { sayPlanned } from './say-planned.js';
import type { Speech } from './speech.js';

/** `warm-up 12 kg × 6, 1 set`, `16 kg × 9, 3 sets each side`: equal sets of one kind together, in the order done. */
export function sayDoses(plan: Plan, sets: readonly PlanSet[], speech: Speech): readonly string[] {
  const { doses } = speech.words;
  const alike = new Map<string, PlanSet[]>();
  const choices = sets.flatMap(({ choose }) => choose ?? []);
  for (const set of sets) {
    const open = openDose(set, choices);
    const said = open === undefined ? sayPlanned(set, plan.inputs.kit, speech).text : sayFound(open, speech);
    const what = set.kind === 'work' || set.kind === 'test' ? said : `${set.kind} ${said}`;
    alike.set(what, [...(alike.get(what) ?? []), set]);
  }
  return [...alike].map(([what, of]) => {
    const sides = new Set(of.map(({ side }) => side ?? 'both')).size;
    const counted = doses.withSets(what, of.length / sides);
    return sides > 1 ? doses.eachSide(counted) : counted;
  });
}

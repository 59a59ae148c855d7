/** Everything a client does has its cues, its stop sign, and an easier way with sets of its own. */
import type { PlanItem, PlanJson } from './plan-json.js';

export interface WordsFacts {
  readonly id: string;
  readonly words: { readonly cues: readonly unknown[]; readonly stopIf: readonly unknown[] };
}

export function auditWords(plan: PlanJson, exercises: readonly WordsFacts[]): string[] {
  const library = new Map(exercises.map((one) => [one.id, one.words]));
  const found = new Set<string>();
  for (const group of plan.weeks.flatMap((week) => week.sessions.flatMap((session) => session.groups))) {
    for (const item of group.items) {
      const done = [item.exercise, ...item.sets.flatMap((set) => set.exercise ?? [])];
      const easier = item.easier.flatMap((one) => one.exercise?.split('#')[0] ?? []);
      for (const id of [...done, ...easier]) {
        const words = library.get(id);
        if (words === undefined || words.cues.length === 0) found.add(`${id} has no cues`);
        if (words === undefined || words.stopIf.length === 0) found.add(`${id} has no stop sign`);
      }
      for (const text of easierFindings(item)) found.add(`${item.id}: ${text}`);
    }
  }
  return [...found, ...auditOwnDose(plan)];
}

const UNITS = ['reps', 'seconds', 'metres'] as const;

/** What stands beside the work without a load asks no more of an exercise than its own work that week. */
function auditOwnDose(plan: PlanJson): string[] {
  return plan.weeks.flatMap(({ number, sessions }) => {
    const items = sessions.flatMap(({ groups }) => groups.flatMap((group) => group.items));
    return items.flatMap((item) =>
      item.easier.flatMap(({ exercise, sets }) =>
        UNITS.flatMap((unit) => {
          const own = items
            .filter((other) => other.exercise === exercise)
            .flatMap((other) => other.sets.filter(({ kind }) => kind === 'work').flatMap((set) => set[unit] ?? []));
          const most = Math.min(...own);
          const over = sets.some((set) => set.load === undefined && set.steps === undefined && (set[unit] ?? 0) > most);
          return over ? [`week ${number}: ${item.id}: ${exercise} for more ${unit} than its own ${most}`] : [];
        }),
      ),
    );
  });
}

/** As many sets as there are, both sides alike. */
function easierFindings(item: PlanItem): string[] {
  // A lighter set before the work is not replaced; a warm-up of its own, composed or the coach's, is nothing else.
  const around = item.sets.every(({ kind }) => kind === 'warm-up' || kind === 'cool-down');
  const done = item.sets.filter(({ kind }) => kind !== 'feeler' && (kind !== 'warm-up' || around));
  if (item.easier.length === 0) return ['nothing easier'];
  return item.easier.flatMap(({ say, sets }) => {
    if (sets.length === 0) return [`${say} without sets`];
    const other = sets.length !== done.length && !item.row.startsWith('test-');
    return other ? [`${say} for ${sets.length} sets, of ${done.length}`] : [];
  });
}

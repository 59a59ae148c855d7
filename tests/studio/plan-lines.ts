/**
 * A plan as a coach would jot it down: one line a row, weeks from left to right, `e` for the easier week. Made from
 * the plan alone; what is not in the line (rests, reasons, what would open more) is tested elsewhere.
 */
import type { Item, Plan, PlanLoad, PlanSession } from '../../src/model/plan.js';
import type { TempoStep } from '../../src/model/programme.js';

const TEMPO: Readonly<Record<TempoStep, string>> = {
  normal: '',
  'slow lowering': 'slow ',
  'slow with a pause': 'paused ',
};

/** One week of a row: what is the same as the week before is said once. */
interface Jotting {
  readonly reps: string;
  /** Version, load and tempo: weeks with the same one are gathered. */
  readonly what: string;
  readonly before: string;
  readonly after: string;
}

export function planLines(plan: Plan): readonly string[] {
  const sessions = plan.weeks.flatMap((week) => week.sessions.map((session) => ({ week, session })));
  const ids = [...new Set(sessions.map(({ session }) => session.id))];
  const lines = [`${plan.client}, ${plan.programme}, from ${plan.starts}, today ${plan.today}`];
  for (const id of ids) {
    const own = sessions.filter(({ session }) => session.id === id);
    lines.push('', `${id}  ${own.map(({ session }) => session.minutes).join(', ')} min`);
    const rows = [...new Set(own.flatMap(({ session }) => workOf(session).map((item) => item.row)))];
    for (const row of rows) {
      const weeks = own.flatMap(({ week, session }) =>
        workOf(session)
          .filter((item) => item.row === row)
          .map((item) => ({ item, easy: week.deload })),
      );
      lines.push(`  ${row}  ${setsText(weeks.map(({ item }) => item))}  ${gather(weeks.map(jot(row)))}`);
    }
    for (const { week, session } of own) {
      for (const trim of session.trimmed)
        lines.push(`  cut in week ${week.number}: ${trim.row}, ${trim.what} ${trim.sets}`);
    }
  }
  if (plan.findings.length > 0) lines.push('');
  for (const { rule, session, row, weeks } of plan.findings) {
    if (rule === 'would-unlock') continue;
    lines.push(`${rule}${session === undefined ? '' : `  ${session}/${row ?? ''}`}  ${weeks.join(', ')}`.trimEnd());
  }
  return lines;
}

/** What a warm-up and a cool-down are is the same in every week. */
const workOf = (session: PlanSession): readonly Item[] =>
  session.groups.filter(({ kind }) => kind !== 'warm-up' && kind !== 'cool-down').flatMap((group) => group.items);

export const itemsOf = (session: PlanSession): readonly Item[] => session.groups.flatMap((group) => group.items);

/** `3 sets`, `3, 3, 2 sets` where they differ; each side counts its own. */
function setsText(items: readonly Item[]): string {
  const counts = items.map((item) => {
    const sides = new Set(item.sets.map((set) => set.side)).size || 1;
    return item.sets.filter(({ kind }) => kind === 'work' || kind === 'trial' || kind === 'feeler').length / sides;
  });
  const changes = counts.filter((count, i) => count !== counts[i - 1]);
  return `${changes.join(' then ')} sets`;
}

const jot =
  (row: string) =>
  ({ item, easy }: { readonly item: Item; readonly easy: boolean }): Jotting => {
    const work = item.sets.filter((set) => set.kind === 'work');
    const first = work[0];
    const chosen = item.sets.some((set) => set.choose !== undefined);
    const reps = chosen ? 'by the table' : [...new Set(work.map((set) => set.reps ?? 0))].join('/');
    const trial = item.sets.find((set) => set.kind === 'trial');
    const feeler = item.sets.find((set) => set.kind === 'feeler');
    const gated = work.find((set) => set.gate !== undefined);
    const otherwise = work.find((set) => set.otherwise !== undefined)?.otherwise?.[0];
    const version = item.exercise === row ? '' : ` ${item.exercise}`;
    const finding =
      feeler === undefined
        ? ''
        : `feeler ${feeler.reps}${at(feeler.load)} with ${feeler.choose?.length ?? 0} choices, then `;
    const after = [
      trial === undefined ? '' : ` + trial ${trial.reps}${at(trial.load)}`,
      otherwise === undefined ? '' : ` (otherwise ${TEMPO[otherwise.tempo]}${otherwise.reps}${at(otherwise.load)})`,
    ].join('');
    return {
      reps,
      what: `${at(first?.load)}${version}`,
      before: `${easy ? 'e ' : ''}${gated === undefined ? '' : 'gate '}${finding}${TEMPO[item.tempo]}`,
      after,
    };
  };

const at = (load: PlanLoad | undefined): string => (load === undefined || load.grams === 0 ? '' : ` @ ${load.label}`);

function gather(weeks: readonly Jotting[]): string {
  const groups: string[] = [];
  let plain: string[] = [];
  for (const [i, { reps, what, before, after }] of weeks.entries()) {
    const next = weeks[i + 1];
    if (before === '' && after === '') {
      plain.push(reps);
      if (next !== undefined && next.before === '' && next.after === '' && next.what === what) continue;
      groups.push(`${plain.join(', ')}${what}`);
      plain = [];
    } else groups.push(`${before}${reps}${what}${after}`);
  }
  return groups.join(' · ');
}

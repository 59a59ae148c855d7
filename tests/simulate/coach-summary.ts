/** A run as a coach would read it: week by week, row by row, what was planned, what was done, and what is planned next. */
import type { DoneRow, DoneSet } from '../../src/model/history.js';
import type { Item, PlanSession, PlanSet } from '../../src/model/plan.js';
import type { Run } from './run-blocks.js';
import { sessionsOf } from './simulate.js';

export function tellRun({ person, body, weeks }: Run): string {
  const lines: string[] = [`# ${person.name}`];
  for (const { number, block, plan, edition, done, again, issued, monday, findings } of weeks) {
    const easy = new Set(plan.weeks.filter(({ deload }) => deload).map((week) => week.number));
    lines.push('', `week ${number} from ${monday}, block ${block}, edition ${edition}`);
    if (done.length === 0) lines.push('  nothing was done');
    for (const session of done) {
      const planned = sessionsOf(plan).find(({ occurrence }) => occurrence === session.occurrence);
      lines.push(
        `  ${session.occurrence} ${session.session}, planned week ${session.week}${easy.has(session.week) ? ' (easy)' : ''}`,
      );
      for (const row of session.rows) {
        const item = planned === undefined ? undefined : itemOf(planned, row.row);
        const next = sessionsOf(again).find(
          (one) =>
            one.occurrence > session.occurrence && itemOf(one, row.row) !== undefined && one.id === session.session,
        );
        const later = next === undefined ? undefined : itemOf(next, row.row);
        const first = row.sets.find(({ kind }) => kind === 'work');
        const able =
          first === undefined
            ? ''
            : `, truly ${body.repsToFailure(first.exercise, first.side, first.load, number).toFixed(1)}`;
        lines.push(
          `    ${row.row}: ${item === undefined ? 'not planned' : sayItem(item)} → ${sayDone(row)}${able} → ${later === undefined ? 'none' : sayItem(later)}`,
        );
      }
    }
    if (issued) lines.push('  a new edition: the rest has changed');
    const told = findings.filter(
      ({ rule, audience }) =>
        audience === 'coach' && /^(done|pain|break|missed|walk-nothing|nothing|sessions|queue)/.test(rule),
    );
    for (const { rule, reason } of told) {
      lines.push(`  told: ${rule} ${reason.inputs.map(({ name, value }) => `${name} ${value}`).join(', ')}`);
    }
  }
  return lines.join('\n');
}

export const itemOf = ({ groups }: PlanSession, row: string): Item | undefined =>
  groups.flatMap(({ items }) => items).find((item) => item.row === row);

/** `goblet-squat 3 × 8 @ 16, try 6 @ 20`. */
function sayItem({ row, exercise, sets, tempo }: Item): string {
  const work = sets.filter(({ kind, side }) => kind === 'work' && side !== 'right');
  const [first] = work;
  const trial = sets.find(({ kind }) => kind === 'trial');
  const felt = sets.some(({ kind }) => kind === 'feeler') ? 'feel, ' : '';
  const gate = first?.gate === undefined ? '' : 'gate, ';
  const other = first?.otherwise?.[0];
  return [
    String(exercise) === row ? '' : `${exercise} `,
    felt,
    gate,
    tempo === 'normal' ? '' : `${tempo} `,
    first === undefined ? 'nothing' : `${work.length} × ${saySet(first)}`,
    first?.reserve === undefined ? '' : ` (${first.reserve / 10} left)`,
    trial === undefined ? '' : `, try ${saySet(trial)}`,
    other === undefined ? '' : ` else ${other.reps ?? ''} @ ${other.load?.label ?? 'body'}`,
  ].join('');
}

const amountOf = ({ reps, seconds, metres }: Pick<PlanSet, 'reps' | 'seconds' | 'metres'>): string =>
  reps !== undefined ? `${reps}` : seconds !== undefined ? `${seconds} s` : metres !== undefined ? `${metres} m` : '–';

const saySet = (set: PlanSet): string => `${amountOf(set)}${set.load === undefined ? '' : ` @ ${set.load.label}`}`;

function sayDone({ row, sets, reserve, pain }: DoneRow): string {
  const worked = sets.filter(({ kind }) => kind !== 'warm-up');
  const say = (set: DoneSet) =>
    `${set.kind === 'work' ? '' : `${set.kind} `}${set.done === 'left out' ? 'out' : amountOf(set)}${set.load === undefined ? '' : ` @ ${set.load.label}`}${String(set.exercise) === row ? '' : ` ${set.exercise}`}`;
  const each = worked.map(say);
  const runs: string[] = [];
  for (const one of each) {
    const last = runs.at(-1);
    if (last?.endsWith(one) === true)
      runs[runs.length - 1] = `${Number(/^(\d+) × /.exec(last)?.[1] ?? '1') + 1} × ${one}`;
    else runs.push(one);
  }
  const left = reserve
    .map(({ side, reserve: tenths }) => `${side === 'both' ? '' : `${side} `}${tenths / 10} left`)
    .join(', ');
  const hurt = pain.map(({ where, degree }) => `${where} ${degree}`).join(', ');
  return [runs.join(', ') || 'nothing', left, hurt].filter((one) => one !== '').join('; ');
}

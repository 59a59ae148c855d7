/** One version in the place of several exercises of a session: done once, and the coach decides what becomes of the rest. */
import type { Finding } from '../../model/plan.js';
import type { ReasonInput } from '../../model/reason.js';
import type { BlockContext } from '../block-context.js';
import { reasonOf } from '../reason-of.js';
import { REFUGE_ONCE } from '../rules/refuge-once.js';
import type { FittedRow } from './fit-rows.js';

interface Kept {
  readonly rows: readonly FittedRow[];
  readonly findings: readonly Finding[];
}

/**
 * A row whose version took another exercise's place is left out where the same version is done in `refuge-once` other
 * rows of its session: those that the programme wrote it for, and the first of those it stands in for. Since that
 * version stays in the session, nothing left out is ever its only work.
 */
export function leaveOutRepeats(context: BlockContext, fitted: readonly FittedRow[]): Kept {
  const most = context.rules.valueOf(REFUGE_ONCE);
  const rows: FittedRow[] = [];
  const findings: Finding[] = [];
  for (const row of fitted) {
    const same = fitted.filter((other) => other.session === row.session && doneOf(other) === doneOf(row));
    const first = [...same.filter((other) => !isInstead(other)), ...same.filter(isInstead)];
    const [stays] = first;
    if (!isInstead(row) || stays === undefined || first.indexOf(row) < most) rows.push(row);
    else findings.push(leftOut(context, row, stays));
  }
  return { rows, findings };
}

const doneOf = ({ choice }: FittedRow) => choice.chosen?.exercise ?? null;
const isInstead = (row: FittedRow): boolean => doneOf(row) !== row.target;

function leftOut(
  { programme, days }: BlockContext,
  { session, row, target, choice }: FittedRow,
  stays: FittedRow,
): Finding {
  const word = (name: string, value: string): ReasonInput => ({ name, value, unit: '' });
  const inputs = [
    word('programme', target.id),
    word('exercise', choice.chosen?.exercise.id ?? ''),
    word('stays', stays.target.id),
    ...(programme.neverCut.includes(row.id) ? [word('never cut', 'yes')] : []),
  ];
  const weeks = [...new Set(days.filter((day) => day.session === session.id).map(({ week }) => week))];
  const reason = reasonOf(REFUGE_ONCE, 'coach', inputs, 'measured');
  return { rule: REFUGE_ONCE.id, audience: 'coach', session: session.id, row: row.id, weeks, reason };
}

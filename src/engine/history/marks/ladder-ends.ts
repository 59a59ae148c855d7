/** Where each row on a ladder ended: its rung, what was done at it running, and whether it fell short. */
import type { DoneSet } from '../../../model/history.js';
import type { ExerciseId } from '../../../model/identity.js';
import type { Rung, RungDose } from '../../../model/ladder.js';
import type { ReasonInput, Rule } from '../../../model/reason.js';
import { DONE_EARNED } from '../../rules/done-earned.js';
import { DONE_EASIER } from '../../rules/done-easier.js';
import { DONE_MISSED } from '../../rules/done-missed.js';
import type { LastRung, Remembering } from '../recall.js';
import { type MarkedRow, plannedLoad, workDone } from './marked-rows.js';

export interface LadderEnd {
  readonly key: string;
  readonly exercise: ExerciseId;
  readonly last: LastRung;
  readonly because: { readonly rule: Rule; readonly inputs: readonly ReasonInput[] } | null;
}

interface AtRung {
  readonly marked: MarkedRow;
  readonly sets: readonly DoneSet[];
  readonly rung: Rung;
}

/** `rows` are those of one row, earliest first. `null` where none of it was on a ladder, or its plan is not known. */
export function ladderEnd(remembering: Remembering, rows: readonly MarkedRow[]): LadderEnd | null {
  const worked = rows.flatMap((marked) => (marked.session.easy ? [] : (rungOf(remembering, marked) ?? [])));
  const last = worked.at(-1);
  if (last === undefined) return null;
  const { rules } = remembering;
  const { marked, rung } = last;
  const at = { key: marked.key, exercise: rung.exercise };
  const said = (rule: Rule, ...more: readonly ReasonInput[]) => ({
    rule,
    inputs: [{ name: 'exercise', value: rung.exercise, unit: '' }, ...more],
  });
  const base = { day: marked.day, rung, earned: 0, lighter: 0, lower: 0 } as const;
  if (!asAsked(last) && last.sets.some(({ done }) => done !== 'easier')) {
    const least = leastOf(last.sets, rung.dose);
    const done = least === null ? { lower: 1 } : { rung: { ...rung, dose: least } };
    return { ...at, last: { ...base, ...done }, because: said(DONE_MISSED) };
  }
  const broken = worked.findLastIndex(({ sets }) => sets.some(({ done }) => done !== 'easier'));
  const easier = worked.length - 1 - broken;
  if (easier >= rules.valueOf(DONE_EASIER)) {
    return { ...at, last: { ...base, lighter: 1 }, because: said(DONE_EASIER) };
  }
  if (easier > 0) return { ...at, last: base, because: null };
  let earned = 0;
  for (const one of [...worked].reverse()) {
    if (!asAsked(one) || !sameRung(one.rung, rung) || earned >= rules.valueOf(DONE_EARNED)) break;
    earned += 1;
  }
  const counted = earned >= 2 ? 2 : earned >= 1 ? 1 : 0;
  const because = counted === 0 ? null : said(DONE_EARNED, { name: 'earned', value: counted, unit: '' });
  return { ...at, last: { ...base, earned: counted }, because };
}

/** The rung it was planned at, from the ladder of its block; `null` where nothing of the work was done. */
function rungOf({ history }: Remembering, marked: MarkedRow): AtRung | null {
  const { row, session, key } = marked;
  const sets = workDone(row);
  if (row.rung === undefined || sets.length === 0) return null;
  const { plan } = history.blocks.find(({ block }) => block === session.block) ?? {};
  const ladder = plan?.inputs.ladders.find(({ id }) => id === key);
  const rung = ladder?.rungs[row.rung - 1];
  if (rung === undefined) return null;
  const unsaid = sets.some((set) => set.load === undefined && plannedLoad(set, row) !== undefined);
  // As much as was asked, but nobody knows with what: the one before it stands.
  return unsaid && sets.every((set) => set.done !== 'easier' && reached(set)) ? null : { marked, sets, rung };
}

/** Every set of it done, each as the plan has it or more. */
function asAsked({ marked, sets }: AtRung): boolean {
  const { row } = marked;
  const whole = sets.length >= row.asked.sets * (row.sides === 'each' ? 2 : 1);
  const leftOut = row.sets.some(({ kind, done }) => kind === 'work' && done === 'left out');
  return whole && !leftOut && sets.every((set) => set.done !== 'easier' && reached(set));
}

function reached({ planned, reps, seconds, metres, load }: DoneSet): boolean {
  if (planned === undefined) return true;
  const enough = (done: number | undefined, asked: number | undefined): boolean =>
    asked === undefined || done === undefined || done >= asked;
  const grams = load?.band === undefined ? load?.grams : undefined;
  const heavy = enough(grams, planned.load?.grams);
  return enough(reps, planned.reps) && enough(seconds, planned.seconds) && enough(metres, planned.metres) && heavy;
}

/** The dose of its least set, where a set is one amount; `null` for signals, steps, rounds and two bells in a row. */
function leastOf(sets: readonly DoneSet[], dose: RungDose): RungDose | null {
  const least = (amounts: readonly (number | undefined)[]): number => Math.min(...amounts.map((one) => one ?? 0));
  switch (dose.kind) {
    case 'reps':
      return { kind: 'reps', reps: least(sets.map(({ reps }) => reps)) };
    case 'seconds':
      return { kind: 'seconds', seconds: least(sets.map(({ seconds }) => seconds)) };
    case 'metres':
      return { kind: 'metres', metres: least(sets.map(({ metres }) => metres)) };
    default:
      return null;
  }
}

const sameRung = (a: Rung, b: Rung): boolean =>
  a.exercise === b.exercise && a.load?.label === b.load?.label && JSON.stringify(a.dose) === JSON.stringify(b.dose);

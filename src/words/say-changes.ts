/** What a new edition changes, in the one or two sentences its client is told: what matters most, first. */
import { type Change, isRowChange, type PlanChange, type RowChange, type RowChangeKind } from '../model/change.js';
import type { Plan } from '../model/plan.js';
import type { SaidChange, WhenChanged, WhyChanged } from './change-words.js';
import { breakCause, isMuch, sayWhole } from './say-changes-whole.js';
import { sayDate, sayFullDate } from './say-date.js';
import { sayLoad, sayLoadText } from './say-load.js';
import type { Speech } from './speech.js';

export interface ToldOf {
  readonly changes: readonly Change[];
  /** The new plan. */
  readonly plan: Plan;
  readonly names: {
    /** As it stands inside a sentence. */
    readonly exercise: (id: string) => string;
    readonly programme: (id: string) => string;
  };
  readonly speech: Speech;
}

/** Row changes told at most; the whole of them is on the desk. */
const MOST = 2;

export function sayChanges(told: ToldOf): readonly string[] {
  const { changes, plan, speech } = told;
  const words = speech.words.changes;
  const block = changes.find((change) => change.what === 'block');
  if (block !== undefined) return [words.block(block.goesOn), ...sayFirst(told)];
  if (changes.length === 0) return [words.sameWork];
  const marks = (plan.inputs.done ?? []).length > 0;
  // Nobody trains from a draft.
  return [...sayMost(told), ...(plan.edition === 0 ? [] : [words.useThis(marks)])];
}

/** From less to more telling of what a block begins with. */
const FIRST: readonly RowChangeKind[] = ['load', 'added', 'amount', 'tempo', 'sets', 'removed'];

function sayFirst(told: ToldOf): readonly string[] {
  const words = told.speech.words.changes;
  const programme = told.changes.filter((change) => change.what === 'programme');
  const rows = told.changes
    .filter(isRowChange)
    // Of another programme everything is other.
    .filter(({ what }) => FIRST.includes(what) && (programme.length === 0 || what !== 'removed'));
  const inOrder = [...rows].sort(
    (a, b) => Number(goesFirst(b)) - Number(goesFirst(a)) || FIRST.indexOf(a.what) - FIRST.indexOf(b.what),
  );
  return [...programme.map((change) => sayPlanChange(change, told)), ...apart(inOrder, told, words.begins)];
}

const KINDS: readonly RowChangeKind[] = [
  'removed',
  'version',
  'load',
  'amount',
  'sets',
  'effort',
  'tempo',
  'added',
  'rest',
  'conditions',
];

/** What is done and what is held: more to whoever trains than how much of it. */
const GREATER: readonly RowChangeKind[] = ['removed', 'version', 'load'];
const isGreater = ({ what }: RowChange): boolean => GREATER.includes(what);

/** All that pain does; of what is done to be on the safe side, another exercise or load. */
const goesFirst = (change: RowChange): boolean => change.safety && (isGreater(change) || whyOf(change).kind === 'pain');

/**
 * What must not be missed first, then safety; of the rest what is done and held before how much of it, and less before
 * more; what only warms up or cools down last.
 */
function weightOf(change: Change, told: ToldOf): number {
  if (isMuch(change, told)) return 0;
  if (!isRowChange(change)) return { stops: 0, programme: 2, sessions: 7, dates: 7, block: 0 }[change.what];
  const isAround = change.group === 'warm-up' || change.group === 'cool-down';
  if (goesFirst(change)) return isAround ? 4 : 1;
  const around = isAround ? 10 : 0;
  if (isGreater(change)) return around + (change.way === 'down' ? 3 : 4);
  if (change.safety) return around + 5;
  return around + { down: 6, up: 8, other: 9 }[change.way];
}

const dayOf = (change: Change): string => (isRowChange(change) ? (change.places[0]?.date ?? '') : '');
const kindOf = (change: Change): number => (isRowChange(change) ? KINDS.indexOf(change.what) : -1);

function sayMost(told: ToldOf): readonly string[] {
  const inOrder = [...told.changes].sort(
    (a, b) => weightOf(a, told) - weightOf(b, told) || kindOf(a) - kindOf(b) || (dayOf(a) < dayOf(b) ? -1 : 1),
  );
  return apart(inOrder, told, told.speech.words.changes.row);
}

/** As many as are told: one sentence an exercise, and the same cause said once. */
function apart(changes: readonly Change[], told: ToldOf, say: (change: SaidChange) => string): readonly string[] {
  const lines: string[] = [];
  const seen = new Set<string>();
  // That the block is much shorter or later is told beside the rows, never in place of one.
  const most = MOST + Number(changes.some((change) => isMuch(change, told)));
  for (const change of changes) {
    if (lines.length === most) break;
    if (!isRowChange(change)) {
      lines.push(sayPlanChange(change, told));
      continue;
    }
    const said = saidOf(change, told);
    const cause = JSON.stringify(said.why);
    if (seen.has(said.name)) continue;
    lines.push(say(seen.has(cause) ? { ...said, why: { kind: 'none' } } : said));
    seen.add(said.name).add(cause);
  }
  return lines;
}

function sayPlanChange(change: PlanChange, told: ToldOf): string {
  const { speech, names, plan } = told;
  const words = speech.words.changes;
  switch (change.what) {
    case 'block':
      return words.block(change.goesOn);
    case 'programme':
      return words.programme(names.programme(change.after));
    case 'dates':
      if (isMuch(change, told)) return sayWhole(change, told);
      return words.moved(sayDate(change.moved[0]?.after ?? plan.starts, speech));
    case 'sessions':
      return isMuch(change, told) ? sayWhole(change, told) : words.sessions(change.after);
    case 'stops':
      return change.after === null ? words.sessions(countOf(plan)) : words.stops(sayFullDate(change.after, speech));
  }
}

const countOf = ({ weeks }: Plan): number => weeks.reduce((sum, { sessions }) => sum + sessions.length, 0);

function saidOf(change: RowChange, { names, speech }: ToldOf): SaidChange {
  const { places, what, way } = change;
  const [first] = places;
  const work = first?.after ?? first?.before ?? null;
  const sets = work?.sets ?? [];
  const figures = places.map(({ after }) => figureOf(what, after));
  const counted = sets[0];
  const bySide = Math.max(1, new Set(sets.map(({ side }) => side ?? 'both')).size);
  return {
    what,
    way,
    when: whenOf(change, speech),
    why: whyOf(change),
    name: called(work, names),
    instead: called(first?.before ?? null, names),
    load: loadOf(sets, speech),
    steady: figures.every((figure) => figure === figures[0]),
    counts: counted?.seconds !== undefined ? 'seconds' : counted?.metres !== undefined ? 'metres' : 'reps',
    sets: sets.reduce((sum, { count }) => sum + count, 0) / bySide,
    tempo: speech.words.sets.tempo[work?.tempo ?? 'normal'],
  };
}

type Work = RowChange['places'][number]['after'];

const called = (work: Work, { exercise }: ToldOf['names']): string => (work === null ? '' : exercise(work.exercise));

const figureOf = (what: RowChangeKind, work: Work): string =>
  JSON.stringify(
    what === 'sets'
      ? work?.sets.reduce((sum, { count }) => sum + count, 0)
      : work?.sets.map(({ load, side }) => [load?.label, side]),
  );

function loadOf(sets: NonNullable<Work>['sets'], speech: Speech): string | null {
  const loads = [...new Set(sets.map(({ load }) => sayLoadText(sayLoad(load, [], speech))))];
  return loads.length === 1 ? (loads[0] ?? null) : null;
}

function whenOf({ places, toEnd }: RowChange, speech: Speech): WhenChanged {
  const day = sayDate(places[0]?.date ?? '', speech);
  if (places.length === 1) return { kind: 'on', day };
  if (toEnd) return { kind: 'from', day };
  return { kind: 'between', day, until: sayDate(places.at(-1)?.date ?? '', speech) };
}

const BY_RULE: Readonly<Record<string, Exclude<WhyChanged['kind'], 'pain'>>> = {
  'done-missed': 'heavy',
  'done-easier': 'chose-easier',
  'done-over-target': 'had-more',
  'done-earned': 'earned',
  'done-trial': 'earned',
  'done-gap': 'away',
  'done-median': 'marks',
  'done-unsaid': 'marks',
  'done-side': 'marks',
  'done-greatest': 'marks',
  'return-lighter': 'away',
};

/** Never a diagnosis, and nothing that the coach alone knows. */
function whyOf({ reason, safety }: RowChange): WhyChanged {
  if (reason === undefined) return { kind: 'none' };
  const { rule, inputs } = reason;
  if (rule.startsWith('pain-') || rule === 'seen-pain') {
    const where = inputs.find(({ name }) => name === 'where')?.value;
    return { kind: 'pain', where: typeof where === 'string' ? where : '' };
  }
  if (rule.startsWith('seen-')) return { kind: 'seen' };
  const known = Object.hasOwn(BY_RULE, rule) ? BY_RULE[rule] : breakCause(reason);
  return { kind: known ?? (safety ? 'care' : 'none') };
}

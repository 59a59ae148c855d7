/** Every row of the programme with the version of its exercise that this client begins with. */
import type { Dose } from '../../model/dose.js';
import type { Exercise } from '../../model/exercise.js';
import { compareIds } from '../../model/identity.js';
import { ofClient, type Problem } from '../../model/problem.js';
import type { Refusal } from '../../model/problems-plan.js';
import type { Block, Row, SessionTemplate } from '../../model/programme.js';
import type { Tenths } from '../../model/quantity.js';
import type { Result } from '../../model/result.js';
import { type BlockContext, names } from '../block-context.js';
import { reserveOf } from '../effort/plan-effort.js';
import { MOST_SUMS } from '../kit/plate-sums.js';
import { type Chain, chainVersions } from '../versions/chain-versions.js';
import { type Choice, chooseVersion } from '../versions/choose-version.js';
import type { Judge } from '../versions/judge-version.js';
import type { LinksOf } from '../versions/linked-versions.js';

type SetsDose = Extract<Dose, { readonly kind: 'sets' }>;

export interface FittedRow {
  readonly session: SessionTemplate;
  readonly block: Block;
  /** Place of the block in its session, from 0. */
  readonly blockIndex: number;
  readonly row: Row;
  readonly dose: SetsDose;
  /** The row's own effort as reserve; `null` where the curve decides. */
  readonly effort: Tenths | null;
  /** What the programme names; for a pattern what was chosen to fill it. */
  readonly target: Exercise;
  readonly choice: Choice;
  readonly chain: Chain;
}

export interface Versions {
  readonly judge: Judge;
  readonly linksOf: LinksOf;
}

/** In the programme's order. Rows with a problem are left out of the value. */
export function fitRows(
  context: BlockContext,
  templates: readonly SessionTemplate[],
  versions: Versions,
): Result<readonly FittedRow[]> {
  const fitted: FittedRow[] = [];
  const problems: Problem[] = [];
  for (const session of templates) {
    for (const [blockIndex, block] of session.blocks.entries()) {
      for (const row of block.rows) {
        const result = fitRow(context, { session, block, blockIndex, row }, versions);
        problems.push(...result.problems);
        if (result.value !== null) fitted.push(result.value);
      }
    }
  }
  return { value: fitted, problems };
}

type Placed = Pick<FittedRow, 'session' | 'block' | 'blockIndex' | 'row'>;

/**
 * Reports `not-handled` (doses, efforts and bells by role that are not planned yet), `effort-not-readable`,
 * `exercise-not-found`, `kit-too-varied`, `no-version-allowed` and `pattern-not-filled`.
 */
function fitRow(context: BlockContext, placed: Placed, versions: Versions): Result<FittedRow | null> {
  const { session, row } = placed;
  const { client } = context;
  const head = { severity: 'error', scope: ofClient(client.id), place: row.place } as const;
  const problems: Problem[] = [];
  const unread = (fact: string, why: string) => problems.push({ ...head, code: 'not-handled', data: { fact, why } });
  const { dose } = row;
  if (dose.kind !== 'sets') unread(`${row.id}: ${dose.kind}`, 'only sets of so many reps are planned yet');
  if (row.effort?.kind === 'percent') {
    unread(`${row.id}: ${row.effort.percent} %`, 'effort as a part of one maximum is not planned yet');
  }
  if (row.bell !== undefined && row.bell !== 'main') {
    unread(`${row.id}: ${row.bell}`, 'only the main bell is planned yet');
  }
  const effort = row.effort === undefined ? null : reserveOf(row.effort);
  if (row.effort?.kind === 'rpe' && effort === null) {
    const data = { row: row.id, rpe: row.effort.tenths / 10 };
    problems.push({ ...head, code: 'effort-not-readable', data });
  }
  const found = findTarget(context, placed, versions);
  problems.push(...found.problems);
  if (dose.kind !== 'sets' || problems.length > 0 || found.value === null) return { value: null, problems };
  const { target, choice } = found.value;
  if (choice.chosen === null) {
    const data = { session: session.id, row: row.id, exercise: target.id, refused: choice.refused };
    const unsafe = choice.refused.some(({ cause }) => cause === 'avoid' || cause === 'take-care');
    const problem = { ...head, code: 'no-version-allowed', data } as const;
    return { value: null, problems: [unsafe ? { ...problem, unsafe: true } : problem] };
  }
  if (choice.chosen.tooMany) {
    return { value: null, problems: [{ ...head, code: 'kit-too-varied', data: { most: MOST_SUMS } }] };
  }
  const bodyMass = client.bodyMass?.mass.grams ?? null;
  const chain = chainVersions(choice.chosen, bodyMass, versions.judge, versions.linksOf);
  return { value: { ...placed, dose, effort, target, choice, chain }, problems };
}

interface Target {
  readonly target: Exercise;
  readonly choice: Choice;
}

function findTarget(context: BlockContext, { session, row }: Placed, versions: Versions): Result<Target | null> {
  const head = { severity: 'error', scope: ofClient(context.client.id), place: row.place } as const;
  const { target } = row;
  if (target.kind === 'exercise') {
    const exercise = context.exercises.get(target.id);
    if (exercise === undefined) {
      const data = { exercise: target.id, row: row.id };
      return { value: null, problems: [{ ...head, code: 'exercise-not-found', data }] };
    }
    const choice = chooseVersion(exercise, versions.judge, versions.linksOf);
    return { value: { target: exercise, choice }, problems: [] };
  }
  const taken = new Set(
    session.blocks.flatMap((block) =>
      block.rows.flatMap((other) => (other.target.kind === 'exercise' ? [context.exercises.get(other.target.id)] : [])),
    ),
  );
  const candidates = [...new Set(context.exercises.values())].filter(
    (exercise) =>
      exercise.facts.pattern === target.pattern &&
      (target.plane === undefined || exercise.facts.plane === target.plane) &&
      !taken.has(exercise),
  );
  return fillPattern(
    context,
    candidates,
    { session: session.id, row: row.id, pattern: target.pattern },
    versions,
    head,
  );
}

/** What was tested latest, then by id, among what is allowed. */
function fillPattern(
  context: BlockContext,
  candidates: readonly Exercise[],
  data: { readonly session: string; readonly row: string; readonly pattern: string },
  { judge, linksOf }: Versions,
  head: Pick<Extract<Problem, { readonly code: 'pattern-not-filled' }>, 'severity' | 'scope' | 'place'>,
): Result<Target | null> {
  const lastTested = (exercise: Exercise): number =>
    Math.max(
      -1,
      ...context.client.tests
        .filter((test) => test.date <= context.today && names(context, test.exercise, exercise))
        .map((test) => test.date),
    );
  const open = candidates
    .filter((exercise) => judge(exercise).allowed)
    .sort((a, b) => lastTested(b) - lastTested(a) || compareIds(a.id, b.id));
  const target = open[0];
  if (target === undefined) {
    const refused = candidates.flatMap((exercise): readonly Refusal[] => judge(exercise).refusals);
    return { value: null, problems: [{ ...head, code: 'pattern-not-filled', data: { ...data, refused } }] };
  }
  return { value: { target, choice: chooseVersion(target, judge, linksOf) }, problems: [] };
}

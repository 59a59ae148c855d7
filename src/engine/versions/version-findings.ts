/** What the coach is told of cautions and versions: dates, what was refused, and what would open it. */
import { type Day, isoOfDay } from '../../model/day.js';
import type { ExerciseId } from '../../model/identity.js';
import type { Finding } from '../../model/plan.js';
import type { ReasonInput, Rule } from '../../model/reason.js';
import type { BlockContext } from '../block-context.js';
import { trustIn } from '../breaks/trust.js';
import { readCapacity } from '../capacity/read-capacity.js';
import { reasonOf } from '../reason-of.js';
import type { FittedRow, Versions } from '../rows/fit-rows.js';
import { CAUTION_IN_BLOCK } from '../rules/caution-in-block.js';
import { CAUTION_REVIEW } from '../rules/caution-review.js';
import { WOULD_UNLOCK } from '../rules/would-unlock.js';
import { carries, versionOf } from './chain-versions.js';
import type { Judged } from './judge-version.js';
import { inputOfUnlock, unlocksOf } from './list-unlocks.js';
import { holdsInBlock } from './meet-caution.js';

const words = (name: string, value: string): ReasonInput => ({ name, value, unit: '' });

/**
 * Cautions that begin or end inside the block: they count for all of it. And those to be looked at again, by the block's
 * last day or `caution-review` days after it: the caution holds on, before that date and after it.
 *
 * @param begins the day each week begins on
 */
export function cautionFindings(context: BlockContext, begins: readonly Day[]): readonly Finding[] {
  const { client, firstDay, lastDay, today, rules } = context;
  const weeksOf = (days: readonly Day[]): readonly number[] => {
    const weeks = days.map((day) => begins.filter((first) => first <= day).length).filter((week) => week > 0);
    return [...new Set(weeks)].sort((a, b) => a - b);
  };
  const tell = (rule: Rule, days: readonly Day[], inputs: readonly ReasonInput[]): Finding => {
    const reason = reasonOf(rule, 'coach', inputs, 'measured');
    return { rule: rule.id, audience: 'coach', weeks: weeksOf(days), reason };
  };
  return client.cautions.flatMap((caution): readonly Finding[] => {
    if (!holdsInBlock(caution, firstDay, lastDay)) return [];
    const { what, degree, side, by, from, until, review } = caution;
    const own = [words('caution', what), words('degree', degree), words('side', side), words('by', by)];
    const found: Finding[] = [];
    const dated = [
      { name: 'from', day: from > firstDay ? from : undefined },
      { name: 'until', day: until !== undefined && until < lastDay ? until : undefined },
    ].flatMap(({ name, day }) => (day === undefined ? [] : [{ name, day }]));
    if (dated.length > 0) {
      const days = dated.map(({ day }) => day);
      found.push(tell(CAUTION_IN_BLOCK, days, [...own, ...dated.map(({ name, day }) => words(name, isoOfDay(day)))]));
    }
    if (review !== undefined && review <= lastDay + rules.valueOf(CAUTION_REVIEW)) {
      const since = words('since', isoOfDay(from));
      const date = words(review < today ? 'passed' : 'review', isoOfDay(review));
      found.push(tell(CAUTION_REVIEW, [review], [...own, since, date]));
    }
    return found;
  });
}

/**
 * Every version that was refused where another one was planned, and the harder versions next to the hardest that the
 * row may reach: each once, with all that would open it.
 *
 * @param begun the exercises that rows of the block begin with: what is done already waits for no test
 */
export function unlockFindings(
  context: BlockContext,
  row: FittedRow,
  versions: Versions,
  begun: ReadonlySet<ExerciseId>,
): readonly Finding[] {
  const weeks = [...new Set(context.days.filter(({ session }) => session === row.session.id).map(({ week }) => week))];
  const refused = new Set(row.choice.refused.map(({ exercise }) => exercise));
  const grounds = [...refused].map((exercise) => ({
    exercise,
    unlocks: unlocksOf(
      row.choice.refused.filter((refusal) => refusal.exercise === exercise),
      context,
    ),
  }));
  const harder = harderOutOfReach(context, row, versions, begun).filter(({ exercise }) => !refused.has(exercise));
  return [...grounds, ...harder].flatMap(({ exercise, unlocks }): readonly Finding[] => {
    if (unlocks.length === 0) return [];
    const inputs = [words('exercise', exercise), ...unlocks.map(inputOfUnlock)];
    const reason = reasonOf(WOULD_UNLOCK, 'coach', inputs, 'measured');
    return [{ rule: WOULD_UNLOCK.id, audience: 'coach', session: row.session.id, row: row.row.id, weeks, reason }];
  });
}

function harderOutOfReach(
  context: BlockContext,
  { chain }: FittedRow,
  { judge, linksOf }: Versions,
  begun: ReadonlySet<ExerciseId>,
) {
  const top = chain.judged.at(-1);
  if (top === undefined || top.way !== null) return [];
  const bodyMass = context.client.bodyMass?.mass.grams ?? null;
  return linksOf(top.exercise).harder.map((link) => {
    const { id } = link.to;
    const to: Judged = judge(link.to);
    const cares = to.care.map(({ caution }) => ({ exercise: id, cause: 'take-care', detail: caution.what }) as const);
    const unlocks = unlocksOf([...to.refusals, ...cares], context);
    const known = begun.has(id) || isTested(context, to);
    const untested = unlocks.length === 0 && !known && !carries(top, to, link, bodyMass);
    return { exercise: id, unlocks: untested ? [{ kind: 'test', exercise: id } as const] : unlocks };
  });
}

/** By a test that still says something: a break or a birth may have taken that from it. */
function isTested(context: BlockContext, judged: Judged): boolean {
  const tested = readCapacity(context, judged, versionOf(judged));
  return tested !== null && trustIn(context, tested.test.date).kind !== 'nothing';
}

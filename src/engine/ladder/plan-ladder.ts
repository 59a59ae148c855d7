/**
 * The walk of rungs: one ladder, occurrence by occurrence, one right next step each time. Decides the rung; the rungs
 * themselves, the sets and the minutes are decided before it. What each rule decides stands with the rule.
 */
import type { LadderInput } from '../../model/ladder.js';
import type { Reason } from '../../model/reason.js';
import { ladderCounted } from '../rules/ladder-counted.js';
import { ladderEasy } from '../rules/ladder-easy.js';
import { ladderEasyDown } from '../rules/ladder-easy-down.js';
import { ladderGate } from '../rules/ladder-gate.js';
import { ladderUp } from '../rules/ladder-up.js';
import { rulesOfTheLadder } from '../rules-of-the-ladder.js';
import { type AtRung, isNewStage, type LadderGuard, type RuleOfLadder } from './ladder-rule.js';
import type { LadderResult, LadderStep, RungRule } from './ladder-step.js';
import { rungReason } from './ladder-why.js';

/** `rules` is all of them, or fewer to see what one of them does. */
export function planLadder(input: LadderInput, rules: readonly RuleOfLadder[] = rulesOfTheLadder): LadderResult {
  const main = climb(input, rules, begin(input), 0);
  const { gated } = main;
  const barred = gated === null ? null : climb({ ...input, gates: false }, rules, gated.before, gated.index);
  const steps = main.steps.map((step, index): LadderStep => {
    const other = gated === null ? undefined : barred?.steps[index - gated.index];
    return other === undefined ? step : { ...step, otherwise: { rung: other.rung, sets: other.sets } };
  });
  const findings = rules.flatMap((rule) => (rule.kind === 'telling' ? (rule.tell(input, steps) ?? []) : []));
  return { steps, findings };
}

interface Stand {
  readonly rung: number;
  readonly earned: number;
  /** Weeks of every occurrence that counts at this rung; 0 for one before the block. */
  readonly weeks: readonly number[];
  readonly gateUsed: boolean;
  /** Sets of the last work occurrence. */
  readonly worked: number | null;
}

interface Climb {
  readonly steps: readonly LadderStep[];
  readonly gated: { readonly index: number; readonly before: Stand } | null;
}

const begin = ({ start, earned }: LadderInput): Stand => ({
  rung: start,
  earned,
  weeks: Array.from({ length: earned }, () => 0),
  gateUsed: false,
  worked: null,
});

function climb(input: LadderInput, rules: readonly RuleOfLadder[], begun: Stand, from: number): Climb {
  const has = (rule: RuleOfLadder): boolean => rules.includes(rule);
  const guards = rules.filter((rule) => rule.kind === 'guard');
  const steps: LadderStep[] = [];
  let gated: Climb['gated'] = null;
  let stand = begun;
  for (const [index, occurrence] of [...input.occurrences.entries()].slice(from)) {
    const { week, easy, sets } = occurrence;
    const at: AtRung = { input, occurrence, ...stand };
    if (easy && has(ladderEasy)) {
      steps.push(easyStep(at, stand.worked, has(ladderEasyDown)));
      continue;
    }
    const asked = askAbove(at, guards, has(ladderUp));
    const { next } = asked;
    const opens = next !== null && isNewStage(input, stand.rung, next) && has(ladderGate);
    const rule: RungRule = next === null ? (index === 0 ? 'start' : 'stay') : opens ? 'gate' : 'up';
    const gate = opens ? { gate: { needs: { rung: stand.rung, weeks: weeksOf(stand, input) } } } : {};
    if (opens) gated = gated ?? { index, before: stand };
    stand = standAfter(stand, at, next, opens, has(ladderCounted));
    const risen =
      next === null ? [] : [rungReason((opens ? ladderGate : ladderUp).row, 'client', input, next, earnedInputs(at))];
    const { considered } = asked;
    const reasons = [...risen, ...asked.reasons];
    steps.push({ week, easy: false, rung: stand.rung, sets, rule, ...gate, considered, earned: stand.earned, reasons });
  }
  return { steps, gated };
}

/** Those that earned it, each once; none before the block. */
const weeksOf = ({ weeks }: Stand, { rules }: LadderInput): readonly number[] => [
  ...new Set(weeks.slice(-rules.earned).filter((week) => week > 0)),
];

function standAfter(stand: Stand, at: AtRung, next: number | null, opens: boolean, countsWorkOnly: boolean): Stand {
  const { occurrence, input } = at;
  const counts = occurrence.held === undefined || !countsWorkOnly;
  const afresh = next !== null;
  const earned = (afresh ? 0 : stand.earned) + (counts ? 1 : 0);
  const weeks = [...(afresh ? [] : stand.weeks), ...(counts ? [occurrence.week] : [])];
  return {
    rung: next ?? stand.rung,
    earned: Math.min(earned, input.rules.earned),
    weeks,
    gateUsed: stand.gateUsed || opens,
    worked: occurrence.sets,
  };
}

interface Above {
  readonly next: number | null;
  readonly considered: LadderStep['considered'];
  readonly reasons: readonly Reason[];
}

/** The next rung and, where it is another one, the first of the next stage: the highest that nothing refuses is next. */
function askAbove(at: AtRung, guards: readonly LadderGuard[], climbs: boolean): Above {
  if (!climbs) return { next: null, considered: [], reasons: [] };
  const { input, rung } = at;
  const stage = input.rungs.findIndex((_, index) => index > rung && isNewStage(input, rung, index));
  const above = rung + 1 < input.rungs.length ? [rung + 1] : [];
  const asked = [...above, ...(stage > rung + 1 ? [stage] : [])].map((to) => {
    return { to, guard: guards.find((guard) => !guard.permits(at, to)) };
  });
  const next = asked.findLast(({ guard }) => guard === undefined)?.to ?? null;
  return {
    next,
    considered: asked.map(({ to, guard }) =>
      guard === undefined ? { rung: to } : { rung: to, refusedBy: guard.row.id },
    ),
    reasons: asked.flatMap(({ to, guard }) =>
      guard === undefined ? [] : [rungReason(guard.row, 'coach', input, to, guard.numbers(at, to))],
    ),
  };
}

const earnedInputs = ({ earned, input }: AtRung) => [
  { name: 'earned', value: earned, unit: '' },
  { name: 'needed', value: input.rules.earned, unit: '' },
];

/**
 * The last work rung. Where its sets could not fall, so many rungs lower in its stage. It leaves nothing behind.
 */
function easyStep(at: AtRung, worked: number | null, goesDown: boolean): LadderStep {
  const { input, occurrence, rung } = at;
  const { week, sets } = occurrence;
  const first = input.rungs.findIndex((_, index) => !isNewStage(input, rung, index));
  const fell = worked === null || sets < worked;
  const lower = Math.max(first, rung - (fell || !goesDown ? 0 : input.rules.easyDown));
  const row = lower < rung ? ladderEasyDown.row : ladderEasy.row;
  const reasons = [rungReason(row, 'client', input, lower)];
  const rule = lower < rung ? 'easy-down' : 'easy';
  return { week, easy: true, rung: lower, sets, rule, considered: [], earned: at.earned, reasons };
}

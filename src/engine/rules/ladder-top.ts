/** Earned, and no rung above: the coach is told that nothing further is there. */
import type { LadderTelling } from '../ladder/ladder-rule.js';
import { rungReason } from '../ladder/ladder-why.js';
import { practiceRow } from './walk-row.js';

export const ladderTop: LadderTelling = {
  kind: 'telling',
  row: practiceRow('ladder-top', 0, 'rungs'),
  tell: (input, steps) => {
    const top = input.rungs.length - 1;
    const stayed = steps.filter((step, index) => {
      const before = steps.slice(0, index).findLast(({ easy }) => !easy);
      const earned =
        before?.rung === top ? before.earned : input.start === top && before === undefined ? input.earned : 0;
      return !step.easy && earned >= input.rules.earned;
    });
    if (input.way === 'mobility' || stayed.length === 0) return null;
    const reason = rungReason(ladderTop.row, 'coach', input, top);
    return { rule: ladderTop.row.id, weeks: [...new Set(stayed.map(({ week }) => week))], reason };
  },
};

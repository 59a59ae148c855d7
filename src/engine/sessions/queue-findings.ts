/** What the coach is told of the block's dates: sessions that breaks moved, and those they left no day for. */
import { isoOfDay } from '../../model/day.js';
import type { Finding } from '../../model/plan.js';
import type { ReasonInput, Rule } from '../../model/reason.js';
import type { BlockContext } from '../block-context.js';
import { reasonOf } from '../reason-of.js';
import { QUEUE_SLIDES } from '../rules/queue-slides.js';
import { SESSIONS_LOST } from '../rules/sessions-lost.js';
import type { Queue } from './queue-sessions.js';

export function queueFindings({ rules }: BlockContext, { begins, sessions, moved, lost }: Queue): readonly Finding[] {
  const slid = moved.map(({ pause, weeks }) =>
    told(QUEUE_SLIDES, weeks, [
      { name: 'from', value: isoOfDay(pause.from), unit: '' },
      { name: 'until', value: isoOfDay(pause.until), unit: '' },
    ]),
  );
  if (lost <= rules.valueOf(SESSIONS_LOST)) return slid;
  const last = sessions.at(-1)?.week ?? 1;
  const weeks = begins.map((_, index) => index + 1).filter((week) => week >= last);
  return [...slid, told(SESSIONS_LOST, weeks, [{ name: 'sessions', value: lost, unit: '' }])];
}

function told(rule: Rule, weeks: readonly number[], inputs: readonly ReasonInput[]): Finding {
  return { rule: rule.id, audience: 'coach', weeks, reason: reasonOf(rule, 'coach', inputs, 'measured') };
}

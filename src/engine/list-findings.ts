/** What is worth telling the coach about a block as a whole, besides what each walk finds. */
import { isoOfDay } from '../model/day.js';
import type { Finding } from '../model/plan.js';
import type { ReasonInput, Rule } from '../model/reason.js';
import type { BlockContext } from './block-context.js';
import { reasonOf } from './reason-of.js';
import type { WalkedRow } from './rows/walked-row.js';
import { CAUTION_IN_BLOCK } from './rules/caution-in-block.js';
import { ONE_SIDE_TESTED } from './rules/one-side-tested.js';
import { SIDE_GAP_TOLD } from './rules/side-gap-told.js';
import { SIDE_GAP_WHY } from './rules/side-gap-why.js';
import { START_MOVED } from './rules/start-moved.js';
import { VERSION_CHOSEN } from './rules/version-chosen.js';
import { tellStanding } from './screening/tell-standing.js';
import type { Queue } from './sessions/queue-sessions.js';
import { holdsInBlock } from './versions/meet-caution.js';

/** Of the whole block first, then row by row in the programme's order. */
export function listFindings(context: BlockContext, queue: Queue, rows: readonly WalkedRow[]): readonly Finding[] {
  return [
    ...startMoved(context),
    ...tellStanding(context),
    ...cautionsInBlock(context, queue),
    ...rows.flatMap((row) => ofRow(context, row)),
  ];
}

const words = (name: string, value: string): ReasonInput => ({ name, value, unit: '' });

function startMoved({ client, firstDay, rules }: BlockContext): readonly Finding[] {
  const days = firstDay - client.starts;
  if (days <= rules.valueOf(START_MOVED)) return [];
  const inputs = [
    words('starts', isoOfDay(client.starts)),
    words('first training day', isoOfDay(firstDay)),
    { name: 'days', value: days, unit: 'days' },
  ];
  const reason = reasonOf(START_MOVED, 'coach', inputs, 'measured');
  return [{ rule: START_MOVED.id, audience: 'coach', weeks: [1], reason }];
}

/** Cautions that begin, end or are to be looked at again inside the block: they count for all of it. */
function cautionsInBlock({ client, firstDay, lastDay }: BlockContext, queue: Queue): readonly Finding[] {
  return client.cautions.flatMap((caution): readonly Finding[] => {
    if (!holdsInBlock(caution, firstDay, lastDay)) return [];
    const { what, degree, from, until, review } = caution;
    const dated = [
      { name: 'from', day: from > firstDay ? from : undefined },
      { name: 'until', day: until !== undefined && until < lastDay ? until : undefined },
      { name: 'review', day: review !== undefined && review <= lastDay ? review : undefined },
    ];
    const inside = dated.flatMap(({ name, day }) => (day === undefined ? [] : [{ name, day }]));
    if (inside.length === 0) return [];
    const weeks = inside.map(({ day }) => queue.begins.filter((begins) => begins <= day).length);
    const inputs = [
      words('caution', what),
      words('degree', degree),
      ...inside.map(({ name, day }) => words(name, isoOfDay(day))),
    ];
    const reason = reasonOf(CAUTION_IN_BLOCK, 'coach', inputs, 'measured');
    const named = [...new Set(weeks.filter((week) => week > 0))].sort((a, b) => a - b);
    return [{ rule: CAUTION_IN_BLOCK.id, audience: 'coach', weeks: named, reason }];
  });
}

function ofRow(context: BlockContext, { fitted, beginning, strand, findings }: WalkedRow): readonly Finding[] {
  const weeks = [...new Set(strand.occurrences.map(({ week }) => week))];
  const at = { session: strand.session, row: strand.row } as const;
  const own = (rule: Rule, inputs: readonly ReasonInput[]): Finding => {
    return { rule: rule.id, audience: 'coach', ...at, weeks, reason: reasonOf(rule, 'coach', inputs, 'measured') };
  };
  const found: Finding[] = [];
  const { choice, target } = fitted;
  if (choice.chosen !== null && choice.chosen.exercise !== target) {
    const refused = choice.refused.map(({ exercise, cause, detail }) => words(`${exercise}: ${cause}`, detail));
    const chosen = [words('programme', target.id), words('exercise', choice.chosen.exercise.id)];
    found.push(own(VERSION_CHOSEN, [...chosen, ...refused]));
  }
  const { tested, source } = beginning;
  if (tested !== null && source !== null) {
    const exercise = words('exercise', source.exercise.id);
    const { gap, untested, capacity } = tested;
    if (gap !== null && gap >= context.rules.valueOf(SIDE_GAP_TOLD)) {
      const rule = gap > context.rules.valueOf(SIDE_GAP_WHY) ? SIDE_GAP_WHY : SIDE_GAP_TOLD;
      found.push(own(rule, [exercise, words('weaker', capacity.side), { name: 'gap', value: gap, unit: 'per-mille' }]));
    }
    if (untested !== null) found.push(own(ONE_SIDE_TESTED, [exercise, words('untested', untested)]));
  }
  const ofWalk = findings.map(({ rule, weeks: during, reason }): Finding => {
    return { rule, audience: 'coach', ...at, weeks: during, reason };
  });
  return [...found, ...ofWalk];
}

/** What is worth telling the coach about a block as a whole, besides what each walk finds. */
import { isoOfDay } from '../model/day.js';
import type { Finding } from '../model/plan.js';
import type { ReasonInput, Rule } from '../model/reason.js';
import type { StrandInput } from '../model/strand.js';
import type { BlockContext } from './block-context.js';
import { breakFindings } from './breaks/break-findings.js';
import { testFindings } from './items/test-findings.js';
import type { PlannedRows } from './plan-rows.js';
import { reasonOf } from './reason-of.js';
import type { FittedRow, Versions } from './rows/fit-rows.js';
import { tellRefit } from './rows/tell-refit.js';
import type { WalkedRow } from './rows/walked-row.js';
import { ONE_SIDE_TESTED } from './rules/one-side-tested.js';
import { PARTNER_APART } from './rules/partner-apart.js';
import { SIDE_GAP_TOLD } from './rules/side-gap-told.js';
import { SIDE_GAP_WHY } from './rules/side-gap-why.js';
import { START_MOVED } from './rules/start-moved.js';
import { VERSION_CHOSEN } from './rules/version-chosen.js';
import { tellStanding } from './screening/tell-standing.js';
import type { Queue } from './sessions/queue-sessions.js';
import { cautionFindings, unlockFindings } from './versions/version-findings.js';

/** Of the whole block first, then row by row in the programme's order. */
export function listFindings(
  context: BlockContext,
  queue: Queue,
  fitted: readonly FittedRow[],
  { walked, ladders }: Pick<PlannedRows, 'walked' | 'ladders'>,
  versions: Versions,
): readonly Finding[] {
  const begun = new Set(fitted.flatMap(({ chain }) => chain.judged[chain.base]?.exercise.id ?? []));
  return [
    ...startMoved(context),
    ...plannedApart(context),
    ...tellStanding(context),
    ...breakFindings(context),
    ...cautionFindings(context, queue.begins),
    ...testFindings(context, fitted),
    ...fitted.flatMap((row) => {
      const one = walked.get(row);
      const ladder = ladders.get(row);
      return [
        ...(one === undefined ? [] : ofWalked(context, one)),
        ...(ladder === undefined ? [] : ofRow(row, ladder.ladder, [], ladder.findings)),
        ...unlockFindings(context, row, versions, begun),
      ];
    }),
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

/** Each is planned from their own page alone; the other's name is on no page of theirs, and so in no finding. */
function plannedApart({ client, programme, rules }: BlockContext): readonly Finding[] {
  if (client.partner === undefined || rules.valueOf(PARTNER_APART) === 0) return [];
  const weeks = programme.curve.map((_, index) => index + 1);
  const reason = reasonOf(PARTNER_APART, 'coach', [], 'measured');
  return [{ rule: PARTNER_APART.id, audience: 'coach', weeks, reason }];
}

type Told = readonly [Rule, readonly ReasonInput[]];

/** Another exercise than the programme names, then what the test says, then what the weeks do. */
function ofRow(
  fitted: FittedRow,
  { session, row, occurrences }: Pick<StrandInput, 'session' | 'row'> & { readonly occurrences: readonly Week[] },
  more: readonly Told[],
  findings: readonly Pick<Finding, 'rule' | 'weeks' | 'reason'>[],
): readonly Finding[] {
  const weeks = [...new Set(occurrences.map(({ week }) => week))];
  const at = { session, row } as const;
  const own = (rule: Rule, inputs: readonly ReasonInput[]): Finding => {
    return { rule: rule.id, audience: 'coach', ...at, weeks, reason: reasonOf(rule, 'coach', inputs, 'measured') };
  };
  const found: Finding[] = [];
  const { choice, target } = fitted;
  const chosenFor = choice.untested ?? choice.seen?.own ?? choice.chosen;
  if (chosenFor !== null && chosenFor.exercise !== target) {
    const refused = choice.refused.map(({ exercise, cause, detail }) => words(`${exercise}: ${cause}`, detail));
    const chosen = [words('programme', target.id), words('exercise', chosenFor.exercise.id)];
    found.push(own(VERSION_CHOSEN, [...chosen, ...refused]));
  }
  for (const [rule, inputs] of [...tellRefit(fitted), ...more]) found.push(own(rule, inputs));
  const ofWalk = findings.map(({ rule, weeks: during, reason }): Finding => {
    return { rule, audience: 'coach', ...at, weeks: during, reason };
  });
  return [...found, ...ofWalk];
}

interface Week {
  readonly week: number;
}

function ofWalked({ rules }: BlockContext, { fitted, beginning, strand, findings }: WalkedRow): readonly Finding[] {
  const { tested, source } = beginning;
  const told: Told[] = [];
  if (tested !== null && source !== null) {
    const exercise = words('exercise', source.exercise.id);
    const { gap, untested, capacity } = tested;
    if (gap !== null && gap >= rules.valueOf(SIDE_GAP_TOLD)) {
      const rule = gap > rules.valueOf(SIDE_GAP_WHY) ? SIDE_GAP_WHY : SIDE_GAP_TOLD;
      told.push([rule, [exercise, words('weaker', capacity.side), { name: 'gap', value: gap, unit: 'per-mille' }]]);
    }
    if (untested !== null) told.push([ONE_SIDE_TESTED, [exercise, words('untested', untested)]]);
  }
  return ofRow(fitted, strand, told, findings);
}

/**
 * Plans one block for one client: from content, kit and cautions to two to six weeks of sets. Pure; what each part decides
 * stands with the part. It leaves reading files to `content`, and every word to `words`.
 */
import { type Client, placeOfFact } from '../model/client.js';
import { type Day, isoOfDay } from '../model/day.js';
import type { Exercise } from '../model/exercise.js';
import { type History, NO_HISTORY } from '../model/history.js';
import type { Plan } from '../model/plan.js';
import { ofClient, type Problem } from '../model/problem.js';
import type { Result } from '../model/result.js';
import type { Library, RuleOverride } from '../model/studio.js';
import { auditPlan } from './audit/audit-plan.js';
import { type BlockContext, exercisesById } from './block-context.js';
import { checkFilm } from './check-film.js';
import { floorsOf } from './effort/plan-effort.js';
import { ENGINE_VERSION } from './engine-version.js';
import { remember } from './history/remember.js';
import { type Begun, begunBlock, checkBegun, checkDone, cutIn, workedIn } from './history/within-block/begun-block.js';
import { layDone } from './history/within-block/lay-done.js';
import { withinOwnDose } from './items/within-own-dose.js';
import { listFindings } from './list-findings.js';
import { listInputs } from './list-inputs.js';
import { nameOf, rulesInName } from './plan-id.js';
import { type PlannedRows, planItems, planRows } from './plan-rows.js';
import type { Versions } from './rows/fit-rows.js';
import { layOverrides } from './rulebook.js';
import { screenClient } from './screening/screen-client.js';
import { standingOf } from './screening/standing.js';
import { stopSessions } from './screening/stop-sessions.js';
import { composeWeeks } from './sessions/compose-week.js';
import { queueFindings } from './sessions/queue-findings.js';
import { type Queue, queueSessions } from './sessions/queue-sessions.js';
import { judgeFor } from './versions/judge-version.js';
import { type LinksOf, linkVersions } from './versions/linked-versions.js';
import { besideFor } from './versions/list-beside.js';

export interface BlockInput {
  readonly library: Library;
  readonly client: Client;
  readonly today: Day;
  /** 0 for a draft. */
  readonly edition: number;
  /** The library's exercises by id with their links, read once where several clients are planned. */
  readonly linked?: LinkedLibrary;
  /** What was done before; nothing where absent. */
  readonly history?: History;
  /** The coach's own values; the library's where absent. */
  readonly rulesOverridden?: readonly RuleOverride[];
}

/** What is read of a library once, for any number of clients. */
export interface LinkedLibrary {
  readonly exercises: BlockContext['exercises'];
  readonly linksOf: LinksOf;
}

export function linkLibrary(library: readonly Exercise[]): LinkedLibrary {
  const exercises = exercisesById(library);
  return { exercises, linksOf: linkVersions(exercises) };
}

/**
 * `null` where the client is withheld: then the problems say everything the coach must decide. Reports every code of
 * `PlanProblems`. Nothing given is changed.
 */
export function planBlock(input: BlockInput): Result<Plan | null> {
  const { library } = input;
  const rules = layOverrides(input.rulesOverridden ?? library.overrides);
  const programme = library.programmes.find(({ id }) => id === input.client.programme);
  if (programme === undefined) {
    const { client } = input;
    const data = { programme: client.programme };
    const scope = ofClient(client.id);
    const missing: Problem = {
      code: 'programme-not-found',
      severity: 'error',
      scope,
      place: placeOfFact(client, 'programme'),
      data,
    };
    return { value: null, problems: [...rules.problems, missing] };
  }
  const { exercises, linksOf } = input.linked ?? linkLibrary(library.exercises);
  const history = input.history ?? NO_HISTORY;
  const begun = begunBlock(history, input.client);
  const changed = begun === null ? [] : checkBegun(begun, input.client, programme);
  const remembered = remember({ client: input.client, history, exercises, rules: rules.value, today: input.today });
  if (changed.length > 0) return { value: null, problems: [...rules.problems, ...remembered.problems, ...changed] };
  const { client, recalls } = remembered;
  const asBegun =
    begun === null ? null : { ...begun, cut: cutIn(begun, client), worked: workedIn(begun), today: input.today };
  const whole = queueSessions(programme, client, rules.value, asBegun);
  const firstDay = begun?.first ?? whole.value?.sessions[0]?.date ?? client.starts;
  const lastDay = (whole.value?.sessions.at(-1) ?? whole.value?.done.at(-1))?.date ?? firstDay;
  const screened = { client, rules: rules.value, today: input.today, firstDay, lastDay };
  const standing = standingOf(screened);
  const queue = whole.value === null ? null : stopSessions(whole.value, standing);
  const context: BlockContext = {
    ...screened,
    programme,
    exercises,
    recalls,
    standing,
    days: [...(queue?.done ?? []), ...(queue?.sessions ?? [])]
      .sort((a, b) => a.occurrence - b.occurrence)
      .map(({ template, date, week, occurrence }) => ({ session: template.id, day: date, week, occurrence })),
    next: nextOf(queue, begun === null ? firstDay : input.today),
  };
  const found = begun === null ? [] : checkDone(begun, client, exercises);
  const gate = [...rules.problems, ...remembered.problems, ...found, ...whole.problems, ...screenClient(context)];
  if (queue === null) return { value: null, problems: gate };
  const judge = judgeFor(context);
  const versions: Versions = { judge, linksOf, besideOf: besideFor(context, judge, linksOf) };
  const planned = planRows(context, queue, versions);
  const problems = [...gate, ...planned.problems];
  if (problems.some(({ severity }) => severity === 'error')) return { value: null, problems };
  const plan = writePlan(input, context, queue, planned.value, versions, begun);
  const findings = [...remembered.findings, ...plan.findings];
  return { value: { ...plan, findings }, problems: [...problems, ...checkFilm(client, plan)] };
}

/** The week and the day of the next session; where none comes any more, the block's last week. */
function nextOf(queue: Queue | null, otherwise: Day): BlockContext['next'] {
  const [next] = queue?.sessions ?? [];
  return next === undefined
    ? { day: otherwise, week: Math.max(1, queue?.begins.length ?? 1) }
    : { day: next.date, week: next.week };
}

function writePlan(
  input: BlockInput,
  context: BlockContext,
  queue: Queue,
  planned: PlannedRows,
  versions: Versions,
  begun: Begun | null,
): Plan {
  const { client, programme, today, rules, standing } = context;
  const { sessions, shape, aroundOf, measuresOf, walked, ladders } = planned;
  const body = {
    schema: 1,
    client: client.id,
    programme: programme.id,
    edition: input.edition,
    starts: isoOfDay(client.starts),
    engine: ENGINE_VERSION,
    inputs: listInputs(context, queue, [...walked.values()], [...ladders.values()], floorsOf(context), begun),
  } as const;
  const plan: Plan = {
    ...body,
    planId: nameOf(`${JSON.stringify(body)}\n${rulesInName(rules.rows)}`),
    block: client.blocksBefore + 1,
    rules: rules.rows,
    today: isoOfDay(today),
    weeks: layDone(
      withinOwnDose(
        context,
        composeWeeks(context, queue, {
          sessions,
          itemOf: planItems(context, planned, versions),
          aroundOf,
          measuresOf,
          reasonsOf: shape.reasonsOf,
        }),
      ),
      begun,
    ),
    findings: [
      ...queueFindings(context, queue),
      ...shape.findings,
      ...listFindings(context, queue, shape.rows, planned, versions),
    ],
    ...(standing.lastDay === null
      ? {}
      : { stops: { after: isoOfDay(standing.lastDay.day), because: standing.lastDay.because } }),
  };
  return { ...plan, findings: [...plan.findings, ...auditPlan(plan, context.exercises)] };
}

/**
 * Plans one block for one client: from content, kit and cautions to six weeks of sets. Pure; what each part decides
 * stands with the part. It leaves reading files to `content`, and every word to `words`.
 */
import { type Client, placeOfFact } from '../model/client.js';
import { type Day, isoOfDay } from '../model/day.js';
import type { Plan } from '../model/plan.js';
import { ofClient, type Problem } from '../model/problem.js';
import type { Result } from '../model/result.js';
import type { Library, RuleOverride } from '../model/studio.js';
import { auditPlan } from './audit/audit-plan.js';
import { type BlockContext, exercisesById } from './block-context.js';
import { floorsOf } from './effort/plan-effort.js';
import { ENGINE_VERSION } from './engine-version.js';
import { planItem } from './items/plan-item.js';
import { planMeasures } from './items/plan-measures.js';
import { isTested, testsOf } from './items/test-sets.js';
import { listFindings } from './list-findings.js';
import { listInputs } from './list-inputs.js';
import { nameOf, rulesInName } from './plan-id.js';
import { type Beginning, beginRow } from './rows/begin-row.js';
import { caresAtStart } from './rows/cares-met.js';
import { type FittedRow, fitRows, type LadderFitted, type Versions } from './rows/fit-rows.js';
import { type WalkedRow, walkRow } from './rows/walked-row.js';
import { layOverrides } from './rulebook.js';
import { screenClient } from './screening/screen-client.js';
import { standingOf } from './screening/standing.js';
import { stopSessions } from './screening/stop-sessions.js';
import { type AroundOf, planAround } from './sessions/compose-around.js';
import { composeWeeks, type WeekParts } from './sessions/compose-week.js';
import { type MeasuresOf, type PlannedSession, planSets, type RowNeeds } from './sessions/plan-sets.js';
import { queueFindings } from './sessions/queue-findings.js';
import { type Queue, queueSessions } from './sessions/queue-sessions.js';
import { timeRow } from './sessions/seconds-of-set.js';
import { type Shape, shapeSessions } from './sessions/shape-sessions.js';
import { judgeFor } from './versions/judge-version.js';
import { linkVersions } from './versions/linked-versions.js';

export interface BlockInput {
  readonly library: Library;
  readonly client: Client;
  readonly today: Day;
  /** 0 for a draft. */
  readonly edition: number;
  /** The coach's own values; the library's where absent. */
  readonly rulesOverridden?: readonly RuleOverride[];
}

/**
 * `null` where the client is withheld: then the problems say everything the coach must decide. Reports every code of
 * `PlanProblems`. Nothing given is changed.
 */
export function planBlock(input: BlockInput): Result<Plan | null> {
  const { library, client } = input;
  const rules = layOverrides(input.rulesOverridden ?? library.overrides);
  const programme = library.programmes.find(({ id }) => id === client.programme);
  if (programme === undefined) {
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
  const whole = queueSessions(programme, client, rules.value);
  const firstDay = whole.value?.sessions[0]?.date ?? client.starts;
  const lastDay = whole.value?.sessions.at(-1)?.date ?? firstDay;
  const screened = { client, rules: rules.value, today: input.today, firstDay, lastDay };
  const standing = standingOf(screened);
  const queue = whole.value === null ? null : stopSessions(whole.value, standing);
  const context: BlockContext = {
    ...screened,
    programme,
    exercises: exercisesById(library.exercises),
    standing,
    days: (queue?.sessions ?? []).map(({ template, date, week, occurrence }) => {
      return { session: template.id, day: date, week, occurrence };
    }),
  };
  const gate = [...rules.problems, ...whole.problems, ...screenClient(context)];
  if (queue === null) return { value: null, problems: gate };
  const planned = planRows(context, queue);
  const problems = [...gate, ...planned.problems];
  if (problems.some(({ severity }) => severity === 'error')) return { value: null, problems };
  return { value: writePlan(input, context, queue, planned.value), problems };
}

interface PlannedRows {
  readonly sessions: readonly PlannedSession[];
  readonly shape: Shape;
  readonly aroundOf: AroundOf;
  readonly measuresOf: MeasuresOf;
  readonly rows: readonly WalkedRow[];
  readonly versions: Versions;
}

function planRows(context: BlockContext, queue: Queue): Result<PlannedRows> {
  const versions: Versions = { judge: judgeFor(context), linksOf: linkVersions(context.exercises) };
  const fitted = fitRows(context, queue.templates, versions);
  const shape = shapeSessions(context, fitted.value);
  const tests = testsOf(context, versions.judge);
  const measures = new Map(tests.sessions.map((place) => [place, planMeasures(context, tests, place, versions)]));
  const measuresOf: MeasuresOf = (occurrence) => measures.get(occurrence) ?? null;
  const around = planAround(context, queue.templates, versions);
  const beginnings = new Map<FittedRow, Beginning>();
  for (const row of shape.rows) if (row.planned === 'walk') beginnings.set(row, beginRow(context, row, versions));
  const warmed = warmUpRows(shape.rows);
  const needs = new Map<FittedRow, RowNeeds>(
    shape.rows.map((row) => {
      const feeler = beginnings.get(row)?.how === 'feeler';
      const trials = row.row.trials && caresAtStart(row).length === 0 && !feeler && mayRise(row);
      const times = timeRow(row, context);
      const test = isTested(context, row) ? tests.over * times.rep : 0;
      return [row, { feeler, warmUp: warmed.has(row) && !feeler, trials, times, test }];
    }),
  );
  const sets = planSets(context, queue, shape.rows, needs, around.value, measuresOf);
  const floors = floorsOf(context);
  const problems: Problem[] = [...fitted.problems, ...around.problems, ...sets.problems];
  const rows: WalkedRow[] = [];
  for (const row of shape.rows) {
    const beginning = beginnings.get(row);
    if (row.planned === 'ladder') {
      problems.push(notPlanned(context, row));
      continue;
    }
    if (beginning === undefined) continue;
    const walked = walkRow(context, row, beginning, sets.value, floors, versions);
    problems.push(...walked.problems);
    if (walked.value !== null) rows.push(walked.value);
  }
  return { value: { sessions: sets.value, shape, aroundOf: around.value, measuresOf, rows, versions }, problems };
}

const notPlanned = ({ client }: BlockContext, { row, chain }: LadderFitted): Problem => ({
  code: 'not-handled',
  severity: 'error',
  scope: ofClient(client.id),
  place: row.place,
  data: { fact: row.id, why: `${chain.judged[chain.base]?.exercise.facts.way} is not planned yet` },
});

const mayRise = ({ chain }: FittedRow): boolean =>
  chain.versions.length > 1 || chain.versions.some(({ loads }) => loads.length > 1);

/** The first loaded row of each movement pattern in a session, outside circuits: a lighter set goes before it. */
function warmUpRows(rows: readonly FittedRow[]): ReadonlySet<FittedRow> {
  const seen = new Set<string>();
  return new Set(
    rows.filter((row) => {
      const key = `${row.session.id}/${row.chain.judged[row.chain.base]?.exercise.facts.pattern}`;
      if (row.inCircuit || seen.has(key)) return false;
      if (!row.chain.versions.some(({ loads }) => loads.filter(({ grams }) => grams > 0).length > 1)) return false;
      seen.add(key);
      return true;
    }),
  );
}

function writePlan(input: BlockInput, context: BlockContext, queue: Queue, planned: PlannedRows): Plan {
  const { client, programme, today, rules, standing } = context;
  const { sessions, shape, aroundOf, measuresOf, rows, versions } = planned;
  const itemOf: WeekParts['itemOf'] = (session, { fitted, warmUp }) => {
    const walked = rows.find((row) => row.fitted === fitted);
    return walked === undefined ? null : planItem(context, walked, walked.sessions.indexOf(session), warmUp, versions);
  };
  const body = {
    schema: 1,
    client: client.id,
    programme: programme.id,
    edition: input.edition,
    starts: isoOfDay(client.starts),
    engine: ENGINE_VERSION,
    inputs: listInputs(context, queue, rows, floorsOf(context)),
  } as const;
  const plan: Plan = {
    ...body,
    planId: nameOf(`${JSON.stringify(body)}\n${rulesInName(rules.rows)}`),
    rules: rules.rows,
    today: isoOfDay(today),
    weeks: composeWeeks(context, queue, {
      sessions,
      itemOf,
      aroundOf,
      measuresOf,
      reasonsOf: shape.reasonsOf,
      versions,
    }),
    findings: [
      ...queueFindings(context, queue),
      ...shape.findings,
      ...listFindings(context, queue, shape.rows, rows, versions),
    ],
    ...(standing.lastDay === null
      ? {}
      : { stops: { after: isoOfDay(standing.lastDay.day), because: standing.lastDay.because } }),
  };
  return { ...plan, findings: [...plan.findings, ...auditPlan(plan, context.exercises)] };
}

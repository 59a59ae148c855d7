/** Each ladder walked again by the oracle, and the printed sets held to its rungs: dose, load, gate, what is done otherwise. */
import { walkLadder } from './ladder.js';
import {
  type Placed,
  type PlanItem,
  type PlanJson,
  type PlanLadder,
  type PlanRung,
  type PlanSet,
  workOf,
} from './plan-json.js';

type Amount = Pick<PlanSet, 'reps' | 'seconds' | 'metres'>;

export function auditLadders(plan: PlanJson): string[] {
  const work = workOf(plan);
  return plan.inputs.ladders.flatMap((ladder) => {
    const items = work.filter(({ item, session }) => session.id === ladder.session && item.row === ladder.row);
    const found = [...orderFindings(ladder), ...rungFindings(plan, ladder, items), ...stepFindings(ladder, items)];
    return found.map((text) => `${ladder.id}: ${text}`);
  });
}

/** Easiest first: stages in order, heavier as they go, and more to do from rung to rung of one. */
function orderFindings({ id, session, row, rungs, start }: PlanLadder): string[] {
  const found: string[] = [];
  if (id !== `${session}/${row}`) found.push('is not session/row');
  if (start >= rungs.length) found.push(`starts on rung ${start + 1} of ${rungs.length}`);
  rungs.forEach((rung, index) => {
    const before = rungs[index - 1];
    if (before === undefined) return;
    const name = `rung ${index + 1}`;
    if (rung.stage !== before.stage && rung.stage !== before.stage + 1) found.push(`${name}: stage ${rung.stage}`);
    const same = rung.exercise === before.exercise && loadName(rung) === loadName(before);
    if (same !== (rung.stage === before.stage)) found.push(`${name}: a stage is one exercise and load`);
    if (rung.stage !== before.stage && rung.exercise === before.exercise && isLighter(rung, before))
      found.push(`${name}: lighter than the rung before`);
    if (rung.stage === before.stage && isLess(rung, before)) found.push(`${name}: less than the rung before`);
  });
  return found;
}

const loadName = ({ load }: PlanRung): string => load?.pieces.map((piece) => piece.id).join('+') ?? 'body alone';
const massOf = ({ load }: PlanRung): number =>
  load?.band === undefined ? (load?.pieces.reduce((sum, piece) => sum + piece.grams, 0) ?? 0) : 0;

/** A band that helps is easier the harder it is to stretch. */
function isLighter(rung: PlanRung, before: PlanRung): boolean {
  const [one, other] = [rung.load, before.load];
  if (one?.band !== undefined && other?.band !== undefined) {
    return one.mode === 'assisted' ? one.step > other.step : one.step < other.step;
  }
  return massOf(rung) < massOf(before);
}

function sizeOf(of: PlanRung['dose']): number {
  switch (of.kind) {
    case 'reps':
      return of.reps;
    case 'seconds':
      return of.seconds;
    case 'metres':
      return of.metres;
    case 'every':
      return (of.minutes * of.reps) / of.everySeconds;
    case 'main-next':
      return of.main + of.next;
    case 'steps':
      return of.reps.reduce((sum, reps) => sum + reps, 0);
    case 'round':
      return 1;
  }
}

const isLess = ({ dose }: PlanRung, { dose: before }: PlanRung): boolean =>
  dose.kind === before.kind && sizeOf(dose) < sizeOf(before);

/** Largest step from rung to rung of one stage, by the unit that climbs. */
const STEPS: Readonly<Record<string, string>> = { reps: 'rung-reps', seconds: 'rung-seconds', metres: 'rung-metres' };

/** Small steps inside a stage and between loads, few stages, and never more than the programme asks. */
function rungFindings(plan: PlanJson, { rungs }: PlanLadder, items: readonly Placed[]): string[] {
  const ruled = (id: string): number => plan.rules.find((rule) => rule.id === id)?.value ?? Number.POSITIVE_INFINITY;
  const found: string[] = [];
  const asked = items[0]?.item.asked;
  const stages = new Set(rungs.map((rung) => rung.stage)).size;
  if (stages > 1 + ruled('stages-ahead')) found.push(`${stages} stages`);
  rungs.forEach((rung, index) => {
    const before = rungs[index - 1];
    const name = `rung ${index + 1}`;
    const { dose } = rung;
    if (dose.kind === asked?.unit && sizeOf(dose) > asked.max) found.push(`${name} asks for more than the programme`);
    if (before === undefined) return;
    const step = sizeOf(dose) - sizeOf(before.dose);
    const most = ruled(STEPS[dose.kind] ?? '');
    if (rung.stage === before.stage && !before.deadStop && step > most) found.push(`${name}: ${step} at once`);
    const heavier = massOf(rung) - massOf(before);
    const far = Math.max(
      (ruled('ladder-step-share') * massOf(before)) / 1000,
      handsOf(rung) * ruled('ladder-step-grams'),
    );
    if (rung.exercise === before.exercise && heavier > far) found.push(`${name}: ${heavier} g heavier at once`);
  });
  return found;
}

/** A step of the rack counts for either hand. */
const handsOf = ({ load }: PlanRung): number => (load?.mode === 'per-hand' ? Math.max(1, load.pieces.length) : 1);

function stepFindings(ladder: PlanLadder, items: readonly Placed[]): string[] {
  if (items.length !== ladder.occurrences.length)
    return [`${items.length} items for ${ladder.occurrences.length} occurrences`];
  const found: string[] = [];
  walkLadder(ladder).forEach((step, index) => {
    const placed = items[index];
    const rung = ladder.rungs[step.rung];
    if (placed === undefined || rung === undefined) return;
    const { item, week, deload } = placed;
    const say = (text: string) => found.push(`${item.id}: ${text}`);
    if (step.week !== week || step.easy !== deload) say('stands in another week');
    if (item.rung?.number !== step.rung + 1 || item.rung.of !== ladder.rungs.length)
      say(`rung ${item.rung?.number} of ${item.rung?.of}, walked again ${step.rung + 1} of ${ladder.rungs.length}`);
    if (item.exercise !== rung.exercise) say(`${item.exercise}, walked again ${rung.exercise}`);
    if (item.capacity !== null || item.asked.reserve !== null) say('a reserve is claimed where none is counted');
    for (const set of item.sets.filter(({ kind }) => kind === 'work')) {
      for (const text of setFindings(set, rung)) say(text);
    }
    const rounds =
      item.sides === 'each' ? roundsOf(ladder, step.rung, step.sets, 2) : roundsOf(ladder, step.rung, step.sets, 1);
    if (item.asked.sets !== rounds) say(`${item.asked.sets} sets, walked again ${rounds}`);
    found.push(...gateFindings(ladder, step, item).map((text) => `${item.id}: ${text}`));
  });
  const gates = items.filter(({ item }) => item.sets.some((set) => set.gate !== undefined)).length;
  if (gates > 1) found.push(`${gates} gates`);
  if (gates > 0 && !ladder.gates) found.push('a gate where none may be offered');
  return found;
}

/** Work by the signal has the part of its rung's signals that its sets are of the longest rung's; sides take turns. */
function roundsOf({ rungs }: PlanLadder, at: number, sets: number, sides: number): number {
  const signals = (index: number): number => {
    const dose = rungs[index]?.dose;
    return dose?.kind === 'every' ? Math.max(1, Math.floor((60 * dose.minutes) / dose.everySeconds)) : 0;
  };
  if (signals(at) === 0) return sets;
  const longest = Math.max(...rungs.map((_, index) => signals(index)));
  const all = Math.max(1, Math.floor((signals(at) * sets) / longest));
  return sides === 1 ? all : Math.max(1, Math.floor(all / 2));
}

function amountOf({ dose }: PlanRung): Amount {
  switch (dose.kind) {
    case 'reps':
    case 'every':
      return { reps: dose.reps };
    case 'seconds':
      return { seconds: dose.seconds };
    case 'metres':
      return { metres: dose.metres };
    case 'main-next':
      return { reps: dose.main };
    case 'steps':
      return { reps: dose.reps.reduce((sum, reps) => sum + reps, 0) };
    case 'round':
      return {};
  }
}

const sameAmount = (one: Amount, other: Amount): boolean =>
  one.reps === other.reps && one.seconds === other.seconds && one.metres === other.metres;
const piecesOf = (load: { readonly pieces: readonly { readonly id: string }[] } | null | undefined): string =>
  load?.pieces.map((piece) => piece.id).join('+') ?? '';

function setFindings(set: PlanSet, rung: PlanRung): string[] {
  const found: string[] = [];
  if (!sameAmount(set, amountOf(rung))) found.push(`${set.key} does not do what its rung asks`);
  if (piecesOf(set.load) !== piecesOf(rung.load)) found.push(`${set.key} has not the load of its rung`);
  if ((set.deadStop ?? false) !== rung.deadStop) found.push(`${set.key}: from a stop or not`);
  const next = rung.dose.kind === 'main-next' && rung.nextUp !== null ? rung.dose.next : undefined;
  if (set.then?.reps !== next || piecesOf(set.then?.load) !== (next === undefined ? '' : piecesOf(rung.nextUp)))
    found.push(`${set.key} does not end as its rung does`);
  const steps = rung.dose.kind === 'steps' ? rung.dose.reps : undefined;
  if (JSON.stringify(set.steps) !== JSON.stringify(steps)) found.push(`${set.key}: not the steps of its rung`);
  if (set.reserve !== undefined) found.push(`${set.key} predicts a reserve`);
  return found;
}

function gateFindings(ladder: PlanLadder, step: ReturnType<typeof walkLadder>[number], item: PlanItem): string[] {
  const found: string[] = [];
  const needs = item.sets.flatMap((set) => (set.gate === undefined ? [] : [set.gate.needs]));
  if (needs.length !== (step.needs === undefined ? 0 : 1)) found.push('a gate too many or too few');
  for (const need of needs) {
    const rung = ladder.rungs[step.needs?.rung ?? -1];
    const right =
      rung !== undefined &&
      need.exercise === rung.exercise &&
      sameAmount(need, amountOf(rung)) &&
      piecesOf(need.load) === piecesOf(rung.load) &&
      need.weeks.join() === step.needs?.weeks.join();
    if (!right) found.push('the gate needs something else than the rung before it');
  }
  const others = item.sets.flatMap((set) => set.otherwise ?? []);
  if (others.length !== (step.otherwise === undefined ? 0 : 1)) found.push('an otherwise too many or too few');
  for (const other of others) {
    const rung = ladder.rungs[step.otherwise?.rung ?? -1];
    const sets = roundsOf(ladder, step.otherwise?.rung ?? 0, step.otherwise?.sets ?? 0, item.sides === 'each' ? 2 : 1);
    const right =
      rung !== undefined &&
      other.exercise === rung.exercise &&
      sameAmount(other, amountOf(rung)) &&
      piecesOf(other.load) === piecesOf(rung.load) &&
      other.sets === sets;
    if (!right) found.push('otherwise is not what the ladder without a new stage does');
  }
  return found;
}

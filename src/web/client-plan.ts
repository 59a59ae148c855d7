/**
 * Takes out of a plan what may travel with its booklet: every field is named here, so that one added to the plan stays
 * at home until somebody lets it go.
 */
import type {
  ClientChoice,
  ClientEasier,
  ClientGroup,
  ClientItem,
  ClientPlan,
  ClientSession,
  ClientSet,
} from '../model/client-plan.js';
import type { EditionStanding } from '../model/edition.js';
import type { BookletId, SessionId } from '../model/identity.js';
import type { PublicKey } from '../model/marks-key.js';
import type {
  Choice,
  EasierItem,
  GateNeeds,
  Group,
  Item,
  OtherwiseSet,
  Plan,
  PlanLoad,
  PlanSession,
  PlanSet,
} from '../model/plan.js';
import { awayDaysOf } from '../session/away-days.js';
import { countedIn } from '../session/counted-in.js';
import { painDegreesOf } from '../session/pain-degrees.js';
import { phoneFiguresOf } from '../session/phone-figures.js';
import { replanPartOf } from '../session/replan-part.js';
import { loadsOf } from './client-loads.js';

function loadOf(load: PlanLoad): PlanLoad {
  const { mode, label } = load;
  const pieces = load.pieces.map(({ id, grams }) => ({ id, grams }));
  return load.band === undefined
    ? { kg: load.kg, grams: load.grams, mode, pieces, label }
    : { band: load.band, step: load.step, mode, pieces, label };
}

/** A plain `then` in an object would be taken for a promise's. */
const THEN = 'then';

type Amount = Pick<PlanSet, 'reps' | 'seconds' | 'metres' | 'steps' | 'then' | 'load'>;

function amountOf({ reps, seconds, metres, steps, then: next, load }: Amount): Amount {
  return {
    ...(reps === undefined ? {} : { reps }),
    ...(seconds === undefined ? {} : { seconds }),
    ...(metres === undefined ? {} : { metres }),
    ...(steps === undefined ? {} : { steps }),
    ...(next === undefined ? {} : { [THEN]: { reps: next.reps, load: loadOf(next.load) } }),
    ...(load === undefined ? {} : { load: loadOf(load) }),
  };
}

const needsOf = (needs: GateNeeds): GateNeeds => ({
  exercise: needs.exercise,
  ...amountOf(needs),
  ...(needs.reserve === undefined ? {} : { reserve: needs.reserve }),
  weeks: needs.weeks,
});

const otherwiseOf = (set: OtherwiseSet): OtherwiseSet => ({
  exercise: set.exercise,
  ...amountOf(set),
  tempo: set.tempo,
  sets: set.sets,
});

const choiceOf = ({ left, exercise, reps, load }: Choice): ClientChoice => ({
  left: { min: left.min, max: left.max },
  exercise,
  reps,
  ...(load === undefined ? {} : { load: loadOf(load) }),
});

const setOf = (set: PlanSet): ClientSet => ({
  key: set.key,
  kind: set.kind,
  round: set.round,
  ...amountOf(set),
  ...(set.deadStop === undefined ? {} : { deadStop: set.deadStop }),
  ...(set.side === undefined ? {} : { side: set.side }),
  ...(set.exercise === undefined ? {} : { exercise: set.exercise }),
  ...(set.gate === undefined ? {} : { gate: { needs: needsOf(set.gate.needs) } }),
  ...(set.otherwise === undefined ? {} : { otherwise: set.otherwise.map(otherwiseOf) }),
  ...(set.choose === undefined ? {} : { choose: set.choose.map(choiceOf) }),
  ...(set.optional === undefined ? {} : { optional: set.optional }),
  ...(set.stopAt === undefined ? {} : { stopAt: { reserve: set.stopAt.reserve } }),
});

function easierOf({ exercise, say, sets }: EasierItem): ClientEasier {
  const [set] = sets;
  return {
    ...(exercise === undefined ? {} : { exercise }),
    say,
    ...(set === undefined ? {} : { set: setOf(set) }),
  };
}

function itemOf(plan: Plan, session: SessionId, { kind }: Group, item: Item): ClientItem {
  const loads = loadsOf(plan, session, item);
  const counts = countedIn(item);
  const { min, max, unit, reserve, sets } = item.asked;
  return {
    row: item.row,
    exercise: item.exercise,
    ...(item.done === undefined ? {} : { done: { way: item.done.way, say: item.done.say } }),
    way: item.way,
    sides: item.sides,
    tempo: item.tempo,
    restSeconds: item.restSeconds,
    asked: { min, max, unit, reserve, sets },
    ...(item.talk === undefined ? {} : { talk: item.talk }),
    ...(item.rung === undefined ? {} : { rung: { number: item.rung.number, of: item.rung.of } }),
    sets: item.sets.map(setOf),
    // What warms up and cools down is easy as it is: its easier ways stand on its pages.
    easier: kind === 'warm-up' || kind === 'cool-down' ? [] : item.easier.map(easierOf),
    ...(counts === undefined ? {} : { counts }),
    ...(loads === undefined ? {} : { loads: loads.map(loadOf) }),
  };
}

const groupOf = (plan: Plan, session: SessionId, group: Group): ClientGroup => ({
  kind: group.kind,
  name: group.name,
  rounds: group.rounds,
  ...(group.everySeconds === undefined ? {} : { everySeconds: group.everySeconds }),
  ...(group.workSeconds === undefined ? {} : { workSeconds: group.workSeconds }),
  ...(group.pauseSeconds === undefined ? {} : { pauseSeconds: group.pauseSeconds }),
  ...(group.minutes === undefined ? {} : { minutes: group.minutes }),
  items: group.items.map((item) => itemOf(plan, session, group, item)),
});

const sessionOf = (plan: Plan, session: PlanSession): ClientSession => ({
  id: session.id,
  name: session.name,
  date: session.date,
  occurrence: session.occurrence,
  minutes: session.minutes,
  groups: session.groups.map((group) => groupOf(plan, session.id, group)),
  short: { minutes: session.short.minutes, sets: session.short.sets },
});

/** Of a booklet that was issued. */
export interface IssuedAs {
  readonly bookletId: BookletId;
  readonly standing: EditionStanding;
  readonly marksTo?: PublicKey;
}

/** What of a plan its client may hold; a draft is issued as nothing, and belongs to no booklet. */
export function clientPlanOf(plan: Plan, issued?: IssuedAs): ClientPlan {
  const standing = issued?.standing ?? 'stands';
  const replan = standing === 'stands' ? replanPartOf(plan) : undefined;
  return {
    schema: 1,
    ...(issued === undefined ? {} : { bookletId: issued.bookletId }),
    edition: plan.edition,
    standing,
    block: plan.block,
    starts: plan.starts,
    ...(plan.stops === undefined ? {} : { last: plan.stops.after }),
    pain: painDegreesOf(plan),
    away: awayDaysOf(plan),
    phone: phoneFiguresOf(plan),
    // Nothing of an edition that was withdrawn can be trained from, by a program neither.
    weeks: (standing === 'withdrawn' ? [] : plan.weeks).map((week) => ({
      number: week.number,
      begins: week.begins,
      deload: week.deload,
      sessions: week.sessions.map((session) => sessionOf(plan, session)),
    })),
    ...(issued?.marksTo === undefined ? {} : { marksTo: issued.marksTo }),
    ...(replan === undefined ? {} : { replan }),
  };
}

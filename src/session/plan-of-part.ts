/**
 * A client's plan with the part that travels beside it, read as the plan itself as far as planning again reads it: what
 * stayed at home is empty, and what became a bare figure on the way stands where its source stood.
 */
import { OLDER_FROM } from '../engine/rules/older-from.js';
import type { ClientItem, ClientPlan, ClientSet } from '../model/client-plan.js';
import { clientId, programmeId, ruleId } from '../model/identity.js';
import type { Item, Plan, PlanSet } from '../model/plan.js';
import type { PlanInputs } from '../model/plan-inputs.js';
import type { Rule } from '../model/reason.js';
import type { ReplanPart } from '../model/replan-part.js';

/** `null` where the phone may not plan again. */
export function planOfPart(client: ClientPlan): Plan | null {
  const { replan: part } = client;
  if (part === undefined) return null;
  let at = 0;
  const setOf = (set: ClientSet): PlanSet => {
    const reserve = part.reserves[at] ?? null;
    at += 1;
    const { choose, ...own } = set;
    return {
      ...own,
      ...(reserve === null ? {} : { reserve }),
      // What a line of its table leaves in reserve is read by nobody who plans again.
      ...(choose === undefined ? {} : { choose: choose.map((one) => ({ ...one, reserve: 0 })) }),
    };
  };
  return {
    schema: 1,
    planId: '',
    client: clientId(''),
    programme: programmeId(''),
    edition: client.edition,
    block: client.block,
    starts: client.starts,
    today: part.made,
    engine: '',
    rules: Object.entries(part.rules).map(ruleOf),
    inputs: inputsOf(part, client),
    weeks: client.weeks.map(({ number, begins, deload, sessions }) => ({
      number,
      begins,
      deload,
      sessions: sessions.map(({ groups, ...session }) => ({
        ...session,
        trimmed: [],
        groups: groups.map(({ items, ...group }) => ({ ...group, items: items.map((item) => itemOf(item, setOf)) })),
      })),
    })),
    findings: [],
  };
}

function itemOf(item: ClientItem, setOf: (set: ClientSet) => PlanSet): Item {
  return {
    ...item,
    id: '',
    capacity: null,
    allowed: [],
    relaxed: [],
    sets: item.sets.map(setOf),
    easier: [],
    harder: [],
    reasons: [],
  };
}

const ruleOf = ([id, value]: readonly [string, number]): Rule => ({
  id: ruleId(id),
  value,
  unit: '',
  source: '',
  locator: '',
  standing: 'practice',
  date: '',
});

/** Shares are grams, so that a body of a thousand grams makes the same of them. */
const BODY = 1000;

function inputsOf(part: ReplanPart, { starts }: ClientPlan): PlanInputs {
  const { tests, floors, days, curve, blocksBefore, ladders, breaks, done, exercises, rows, steady, recalls } = part;
  const olderFrom = part.rules[OLDER_FROM.id] ?? OLDER_FROM.value;
  const bodyMass = part.weighed ? BODY : null;
  return {
    kit: [],
    capacities: tests.map(({ exercise, side, weak, ...test }) => ({ exercise, side, k: 0, test, weak })),
    floors: floors.map((floor) => ({ rule: '', ...floor })),
    cautions: [],
    flags: [],
    minutesCap: 0,
    days,
    bodyMass,
    experience: part.novice ? 'novice' : 'trained',
    // Nobody is older in the year they were born.
    birthYear: part.olderIn === null ? Number(starts.slice(0, 4)) : part.olderIn - olderFrom,
    blocksBefore,
    curve,
    shares: [],
    room: {},
    signOffs: [],
    clearance: null,
    screening: { date: part.made, regularExercise: part.begins ? 'no' : 'yes', knownDisease: '', symptoms: '' },
    strands: part.strands.map((strand) => ({ ...strand, bodyMass })),
    ladders,
    standing: { moderate: false, derived: [], health: [] },
    mainBells: [],
    breaks,
    done,
    recalls: recalls.map(({ exercise, earned, tops }) => ({
      exercise,
      earned,
      lighter: 0,
      weak: false,
      rows: tops.map(({ row, tops: all }) => ({ row, date: part.made, earned: 0, tops: all, lighter: 0 })),
    })),
    replanning: { exercises, rows, steady },
  };
}

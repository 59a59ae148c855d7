/**
 * `plan.json` as the audit reads it, declared apart from the engine's own types and from the published schema. Names
 * that the audit does not read may be added freely; those it reads must be there and of the right kind.
 */
import { z } from 'zod';

const whole = z.int();
const positive = whole.min(1);
const side = z.enum(['left', 'right', 'both']);
const date = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);

const piece = z.looseObject({ id: z.string().min(1), grams: whole.min(0) });

/** A load in grams. */
const mass = z.looseObject({
  kg: z.number().min(0),
  grams: whole.min(0),
  band: z.undefined().optional(),
  mode: z.enum(['per-hand', 'total', 'added']),
  pieces: z.array(piece),
  label: z.string(),
});

/** A band by its step, never in grams. */
const band = z.looseObject({
  band: z.string().min(1),
  step: positive,
  kg: z.undefined().optional(),
  grams: z.undefined().optional(),
  mode: z.enum(['assisted', 'band']),
  pieces: z.array(piece),
  label: z.string(),
});

const load = z.union([mass, band]);

/** A name that reads like a promise's, and is only a field. */
const THEN = 'then';

/** How much a set is: nothing at all of it where one round of the exercise is meant. */
const amount = {
  reps: positive.optional(),
  seconds: z.number().positive().optional(),
  metres: z.number().positive().optional(),
};

const otherwise = z.looseObject({
  ...amount,
  exercise: z.string().min(1),
  load: load.optional(),
  tempo: z.string(),
  reserve: whole.optional(),
  sets: positive,
});

const choice = z.looseObject({
  left: z.looseObject({ min: whole.min(0), max: whole.max(99) }),
  exercise: z.string().min(1),
  reps: positive,
  load: load.optional(),
  reserve: whole,
});

const needs = z.looseObject({
  ...amount,
  exercise: z.string().min(1),
  load: load.optional(),
  reserve: whole.optional(),
  weeks: z.array(positive),
});

const set = z.looseObject({
  ...amount,
  key: z.string().min(1),
  kind: z.enum(['warm-up', 'work', 'feeler', 'trial', 'test', 'cool-down']),
  round: positive,
  steps: z.array(positive).optional(),
  [THEN]: z.looseObject({ reps: positive, load }).optional(),
  deadStop: z.boolean().optional(),
  stopAt: z.looseObject({ reserve: whole }).optional(),
  optional: z.boolean().optional(),
  side: z.enum(['left', 'right']).optional(),
  exercise: z.string().min(1).optional(),
  load: load.optional(),
  reserve: whole.optional(),
  gate: z.looseObject({ needs }).optional(),
  otherwise: z.array(otherwise).optional(),
  choose: z.array(choice).optional(),
});

const reason = z.looseObject({ rule: z.string().min(1), source: z.string(), inputs: z.array(z.unknown()) });

const easier = z.looseObject({ exercise: z.string().optional(), say: z.string(), sets: z.array(set) });

const item = z.looseObject({
  id: z.string().min(1),
  row: z.string().min(1),
  exercise: z.string().min(1),
  way: z.string().min(1),
  sides: z.enum(['both', 'each', 'alternate']),
  tempo: z.string(),
  restSeconds: z.number().min(0),
  asked: z.looseObject({
    min: positive,
    max: positive,
    unit: z.enum(['reps', 'seconds', 'metres']),
    reserve: whole.nullable(),
    sets: positive,
  }),
  capacity: z.looseObject({ equation: z.enum(['epley', 'brzycki']), grams: whole, side }).nullable(),
  allowed: z.array(
    z.looseObject({
      exercise: z.string(),
      tempo: z.string(),
      grams: whole.min(0),
      predicted: whole,
      refusedBy: z.string().optional(),
    }),
  ),
  relaxed: z.array(z.string()),
  sets: z.array(set),
  easier: z.array(easier),
  harder: z.array(easier),
  reasons: z.array(reason),
  talk: z.enum(['sentences', 'phrases']).optional(),
  rung: z.looseObject({ number: positive, of: positive }).optional(),
});

const group = z.looseObject({
  kind: z.enum(['warm-up', 'straight', 'circuit', 'cool-down', 'test']),
  rounds: positive,
  everySeconds: positive.optional(),
  minutes: z.number().positive().optional(),
  items: z.array(item),
});

const session = z.looseObject({
  id: z.string().min(1),
  date,
  occurrence: positive,
  minutes: z.number().positive(),
  trimmed: z.array(z.looseObject({ row: z.string(), what: z.enum(['sets', 'row']), sets: whole, reason })),
  groups: z.array(group),
  short: z.looseObject({ minutes: z.number().positive(), sets: z.array(z.string()) }),
});

const rungLoad = z.union([mass.omit({ kg: true }), band]);

const dose = z.discriminatedUnion('kind', [
  z.looseObject({ kind: z.literal('reps'), reps: positive }),
  z.looseObject({ kind: z.literal('seconds'), seconds: positive }),
  z.looseObject({ kind: z.literal('metres'), metres: positive }),
  z.looseObject({ kind: z.literal('every'), reps: positive, everySeconds: positive, minutes: positive }),
  z.looseObject({ kind: z.literal('main-next'), main: positive, next: positive }),
  z.looseObject({ kind: z.literal('steps'), reps: z.array(positive).min(1) }),
  z.looseObject({ kind: z.literal('round') }),
]);

const ladder = z.looseObject({
  id: z.string().min(1),
  session: z.string().min(1),
  row: z.string().min(1),
  way: z.string().min(1),
  rungs: z
    .array(
      z.looseObject({
        exercise: z.string().min(1),
        load: rungLoad.nullable(),
        nextUp: rungLoad.nullable(),
        deadStop: z.boolean(),
        dose,
        stage: whole.min(0),
      }),
    )
    .min(1),
  start: whole.min(0),
  earned: whole.min(0).max(2),
  gates: z.boolean(),
  occurrences: z.array(
    z.looseObject({
      week: positive,
      easy: z.boolean(),
      sets: positive,
      held: z.looseObject({ why: z.string() }).optional(),
    }),
  ),
  rules: z.looseObject({ earned: whole.min(0), weeks: whole.min(0), easyDown: whole.min(0) }),
});

const strand = z.looseObject({
  id: z.string().min(1),
  session: z.string().min(1),
  row: z.string().min(1),
  way: z.enum(['strength', 'bodyweight', 'combination']),
  equation: z.enum(['epley', 'brzycki']),
  bottom: positive,
  top: positive,
  bodyMass: whole.nullable(),
  versions: z
    .array(
      z.looseObject({
        exercise: z.string().min(1),
        mode: z.string(),
        share: whole.nullable(),
        toHarder: whole.nullable(),
        toEasier: whole.nullable(),
        /** None where the coach asked for no more than a part of a maximum, and this version has only more. */
        loads: z.array(mass.omit({ kg: true })),
        signedOffTo: whole.nullable(),
      }),
    )
    .min(1),
  tempi: z.array(z.looseObject({ step: z.string(), factor: positive })).min(1),
  trials: z.boolean(),
  gates: z.boolean().optional(),
  gain: whole.min(0),
  capacity: z.looseObject({ side, resisted: positive, reps: positive, weak: z.boolean() }).nullable(),
  start: z
    .looseObject({
      version: whole.min(0),
      load: whole.min(0),
      tempo: whole.min(0),
      earned: z.union([z.literal(0), z.literal(1), z.literal(2)]),
    })
    .nullable(),
  tried: z.looseObject({ exercise: z.string(), grams: whole.min(0), reps: positive, weeks: positive }).optional(),
  greatest: whole.nullable(),
  weeks: z.array(z.looseObject({ week: positive, easy: z.boolean() })),
  occurrences: z.array(
    z.looseObject({
      week: positive,
      easy: z.boolean(),
      asked: whole,
      floor: whole,
      sets: positive,
      held: z.looseObject({ maxReps: whole.nullable(), why: z.string() }).optional(),
    }),
  ),
  rules: z.looseObject({
    tolerance: whole,
    smallStep: whole,
    trialMargin: whole,
    volume: whole,
    weakAbove: whole,
  }),
});

const inputs = z.looseObject({
  kit: z.array(z.looseObject({ id: z.string(), kind: z.string(), grams: whole.nullable(), label: z.string() })),
  capacities: z.array(
    z.looseObject({
      exercise: z.string(),
      side,
      k: whole.positive(),
      test: z.looseObject({
        date,
        grams: whole.min(0),
        reps: positive,
        reserve: whole.min(0),
        tempo: z.string().optional(),
      }),
      weak: z.boolean(),
    }),
  ),
  floors: z.array(z.looseObject({ rule: z.string(), reserve: whole, weeks: z.array(positive) })),
  cautions: z.array(
    z.looseObject({
      what: z.string(),
      degree: z.string(),
      side,
      phases: z.array(z.string()).optional(),
      from: date,
      until: date.optional(),
      by: z.string(),
    }),
  ),
  flags: z.array(z.string()),
  minutesCap: z.number().positive(),
  days: z.array(whole),
  bodyMass: whole.nullable(),
  curve: z.array(z.looseObject({ reserve: whole, share: whole.min(0), easy: z.boolean() })),
  shares: z.array(z.looseObject({ exercise: z.string(), share: whole, standing: z.string(), source: z.string() })),
  signOffs: z.array(z.looseObject({ exercise: z.string(), grams: whole.nullable(), date, by: z.string() })),
  strands: z.array(strand),
  ladders: z.array(ladder),
  room: z.looseObject({ ceilingMillimetres: positive.optional() }),
  experience: z.string(),
  birthYear: whole,
  blocksBefore: whole.min(0),
  standing: z.looseObject({
    moderate: z.boolean(),
    derived: z.array(z.looseObject({ rule: z.string(), what: z.string(), degree: z.string() })),
    health: z.array(z.looseObject({ fact: z.string(), value: z.string() })),
  }),
  mainBells: z.array(z.looseObject({ pattern: z.string(), grams: whole.positive() })),
  breaks: z.array(z.looseObject({ from: date, until: date, cause: z.string() })),
  done: z
    .array(z.looseObject({ occurrence: positive, day: date, edition: positive }))
    .min(1)
    .optional(),
  recalls: z
    .array(
      z.looseObject({
        exercise: z.string(),
        floor: z.looseObject({ until: date, reserve: whole }).optional(),
      }),
    )
    .optional(),
});

export const planSchema = z.looseObject({
  schema: z.literal(1),
  planId: z.string().min(1),
  client: z.string().min(1),
  programme: z.string().min(1),
  edition: whole.min(0),
  block: positive,
  starts: date,
  today: date,
  engine: z.string().min(1),
  rules: z.array(
    z.looseObject({
      id: z.string().min(1),
      value: z.number(),
      source: z.string(),
      overridden: z.looseObject({ value: z.number() }).optional(),
    }),
  ),
  inputs,
  weeks: z.array(z.looseObject({ number: positive, begins: date, deload: z.boolean(), sessions: z.array(session) })),
  findings: z.array(z.looseObject({ rule: z.string().min(1) })),
  stops: z.looseObject({ after: date, because: z.string() }).optional(),
});

export type PlanJson = z.infer<typeof planSchema>;
export type PlanItem = z.infer<typeof item>;
export type PlanSet = z.infer<typeof set>;
export type PlanLoad = z.infer<typeof load>;
export type PlanMass = z.infer<typeof mass>;
export type PlanStrand = z.infer<typeof strand>;
export type PlanLadder = z.infer<typeof ladder>;
export type PlanRung = PlanLadder['rungs'][number];
export type RungLoadJson = NonNullable<PlanRung['load']>;
export type PlanGroup = z.infer<typeof group>;
export type PlanSession = z.infer<typeof session>;

/** One item of work where it stands. */
export interface Placed {
  readonly item: PlanItem;
  readonly group: PlanGroup;
  readonly session: PlanSession;
  readonly week: number;
  readonly deload: boolean;
}

/** Every item that is work (not warming up, not cooling down), in order of execution. */
export function workOf(plan: PlanJson): readonly Placed[] {
  return plan.weeks.flatMap(({ number, deload, sessions }) =>
    sessions.flatMap((one) =>
      one.groups
        .filter((group) => group.kind === 'straight' || group.kind === 'circuit')
        .flatMap((group) => group.items.map((item) => ({ item, group, session: one, week: number, deload }))),
    ),
  );
}

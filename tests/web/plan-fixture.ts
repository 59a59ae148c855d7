/** A small plan written out by hand. Every private field carries the word SECRET or the number 71234, to be looked for. */
import {
  clientId,
  exerciseId,
  kitItemId,
  programmeId,
  rowId,
  ruleId,
  type SetKind,
  sessionId,
  setKey,
} from '../../src/model/identity.js';
import type { Item, Plan, PlanLoad, PlanSet, Week } from '../../src/model/plan.js';
import type { Audience, Reason } from '../../src/model/reason.js';

export const SECRET = 'SECRET';
export const SECRET_NUMBER = 71_234;

const load = (kg: number): PlanLoad => ({
  kg,
  grams: kg * 1000,
  mode: 'total',
  pieces: [{ id: kitItemId(`bell-${kg}`), grams: kg * 1000 }],
  label: `${kg} kg`,
});

const reason = (audience: Audience): Reason => ({
  rule: ruleId('walk.asked'),
  says: `${SECRET} reason for the ${audience}`,
  inputs: [{ name: `${SECRET} body mass`, value: SECRET_NUMBER, unit: 'g' }],
  source: `${SECRET} source`,
  confidence: 'measured',
  audience,
});

const set = (occurrence: number, kind: SetKind, ordinal: number): PlanSet => ({
  key: setKey({ block: 1, occurrence, row: rowId('goblet-squat'), side: 'both', kind, ordinal }),
  kind,
  round: ordinal,
  reps: kind === 'trial' ? 4 : 8,
  load: load(kind === 'trial' ? 20 : 16),
  reserve: SECRET_NUMBER,
  gate: {
    needs: { exercise: exerciseId('box-squat'), load: load(12), reps: 9, reserve: 20, weeks: [1] },
  },
  otherwise: [
    { exercise: exerciseId('box-squat'), reps: 8, load: load(12), tempo: 'normal', reserve: SECRET_NUMBER, sets: 3 },
  ],
  optional: true,
});

const item = (occurrence: number): Item => ({
  id: `a/goblet-squat/${occurrence}`,
  row: rowId('goblet-squat'),
  exercise: exerciseId('goblet-squat'),
  way: 'strength',
  sides: 'both',
  tempo: 'normal',
  restSeconds: 90,
  asked: { unit: 'reps', min: 6, max: 10, reserve: 30, sets: 3 },
  capacity: { equation: 'epley', grams: SECRET_NUMBER, side: 'both', confidence: 'measured' },
  allowed: [
    { exercise: exerciseId('goblet-squat'), tempo: 'normal', grams: 20_000, predicted: 71, refusedBy: 'walk.floor' },
    { exercise: exerciseId('goblet-squat'), tempo: 'normal', grams: 16_000, predicted: 110 },
  ],
  relaxed: [`${SECRET}-rule`],
  sets: [set(occurrence, 'trial', 1), set(occurrence, 'work', 1), set(occurrence, 'work', 2)],
  easier: [{ exercise: 'box-squat', say: 'Box squat', for: ['knee'], sets: [set(occurrence, 'work', 1)] }],
  harder: [{ say: `${SECRET} harder`, for: [], sets: [] }],
  reasons: [reason('coach'), reason('client')],
});

const week = (number: number): Week => ({
  number,
  begins: number === 1 ? '2027-01-04' : '2027-01-11',
  deload: number === 2,
  sessions: [
    {
      id: sessionId('a'),
      name: 'Squat and press',
      date: number === 1 ? '2027-01-04' : '2027-01-11',
      occurrence: number,
      minutes: 38,
      trimmed: [{ row: rowId('goblet-squat'), what: 'sets', sets: 1, reason: reason('coach') }],
      groups: [{ kind: 'straight', name: 'Main', rounds: 1, items: [item(number)] }],
      short: { minutes: 0, sets: [] },
    },
  ],
});

export const fixturePlan: Plan = {
  schema: 1,
  planId: `${SECRET}-plan`,
  client: clientId('rowan-ashby'),
  programme: programmeId('two-days'),
  edition: 1,
  block: 1,
  starts: '2027-01-04',
  today: '2026-11-24',
  engine: '1',
  rules: [],
  inputs: {
    kit: [
      { id: kitItemId('bell-16'), kind: 'bell', grams: 16_000, label: '16 kg' },
      { id: kitItemId('bell-24'), kind: 'bell', grams: 24_000, label: '24 kg' },
      { id: kitItemId(`${SECRET}-mat`), kind: 'mat', grams: null, label: `${SECRET} mat` },
    ],
    capacities: [],
    floors: [],
    cautions: [
      { what: `${SECRET} knee`, degree: 'avoid', side: 'left', from: '2026-10-12', by: `${SECRET} physiotherapist` },
    ],
    flags: [`${SECRET} flag`],
    minutesCap: 40,
    days: [1],
    bodyMass: SECRET_NUMBER,
    experience: 'novice',
    birthYear: 1988,
    blocksBefore: 0,
    curve: [],
    shares: [],
    room: {},
    signOffs: [],
    clearance: { by: `${SECRET} doctor`, date: '2026-11-02', for: 'moderate' },
    screening: { date: '2026-11-02', regularExercise: 'yes', knownDisease: 'no', symptoms: 'no' },
    strands: [],
    ladders: [],
    standing: { moderate: false, derived: [], health: [] },
    mainBells: [],
    breaks: [],
  },
  weeks: [week(1), week(2)],
  findings: [{ rule: 'kit', audience: 'coach', weeks: [1], reason: reason('coach') }],
};

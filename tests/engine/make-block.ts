/** Small studios written out by hand, for one rule at a time: say only what differs. */
import type { Caution, Client, SignOff, Test } from '../../src/model/client.js';
import { type Day, dayOfIso } from '../../src/model/day.js';
import type { Ask, Cause, Exercise, Facts, Version } from '../../src/model/exercise.js';
import { clientId, exerciseId, programmeId, rowId, sessionId } from '../../src/model/identity.js';
import type { Block, Programme, Row, SessionTemplate } from '../../src/model/programme.js';
import { plainLine } from '../../src/model/prose.js';
import type { Library } from '../../src/model/studio.js';
import { PLACE } from './generate-exercises.js';
import { kitOf, mass } from './generate-studio.js';

export function on(iso: string): Day {
  const found = dayOfIso(iso);
  if (found === undefined) throw new Error(`${iso} is not a day`);
  return found;
}

export const kg = (figure: string) => mass(figure, 'kg');
export const lb = (figure: string) => mass(figure, 'lb');
export const bells = (...figures: readonly string[]) => kitOf(figures.map((figure) => ['bell', kg(figure)] as const));

export const ask = (of: Ask['of'], degree: Ask['degree'] = 'some', ...phases: readonly string[]): Ask => ({
  of,
  degree,
  side: 'both',
  phases,
});

export interface MadeExercise extends Partial<Facts> {
  readonly easier?: readonly Version[];
  readonly harder?: readonly Version[];
  readonly cues?: readonly string[];
}

/** A squat with one bell, unless said otherwise. It always has one easier way. */
export function anExercise(id: string, { easier, harder, cues, ...facts }: MadeExercise = {}): Exercise {
  return {
    id: exerciseId(id),
    formerIds: [],
    name: id,
    facts: {
      pattern: 'squat',
      way: 'strength',
      sides: 'both',
      kit: { load: [{ kind: 'bell', count: 1, unequal: false }], unloaded: false, things: [] },
      room: { ceiling: 'any' },
      holds: 'total',
      bodyShare: { share: 0, standing: 'practice', source: 'made up' },
      asks: [],
      signOff: false,
      muscles: { main: [], assisting: [] },
      tempo: { lower: 2, bottom: 0, lift: 1, top: 0 },
      parts: [],
      partsDone: 'as one',
      rehearses: [],
      cools: false,
      onTheFloor: false,
      ...facts,
    },
    words: {
      description: [],
      setUp: [],
      pickUp: [],
      putDown: [],
      cues: (cues ?? []).map((phase) => ({ phase, line: plainLine(phase) })),
      breath: [],
      faults: [],
      easier: easier ?? [aWay('slower')],
      harder: harder ?? [],
      stopIf: [],
      partner: [],
    },
    poses: [],
    place: PLACE,
  };
}

export const bodyweight: Partial<Facts> = { way: 'bodyweight', kit: { load: [], unloaded: true, things: [] } };

export const aLink = (to: string, causes: readonly Cause[] = [], ratio?: number): Version => ({
  to: { kind: 'exercise', id: exerciseId(to) },
  say: plainLine(to),
  causes,
  ...(ratio === undefined ? {} : { ratio: { share: ratio, standing: 'practice', source: 'made up' } }),
  place: PLACE,
});

export const aWay = (slug: string, causes: readonly Cause[] = []): Version => ({
  to: { kind: 'way', slug },
  say: plainLine(slug),
  causes,
  place: PLACE,
});

export const aRow = (exercise: string, row: Partial<Row> = {}): Row => ({
  id: rowId(exercise),
  target: { kind: 'exercise', id: exerciseId(exercise) },
  dose: { kind: 'sets', sets: 3, reps: { min: 6, max: 10 }, eachSide: false },
  restSeconds: 60,
  tempi: ['normal'],
  trials: true,
  optional: false,
  place: PLACE,
  ...row,
});

export const aBlock = (rows: readonly Row[], block: Partial<Block> = {}): Block => ({
  name: 'Main',
  kind: 'straight',
  rows,
  ...block,
});

export const aSession = (id: string, ...blocks: readonly Block[]): SessionTemplate => ({
  id: sessionId(id),
  name: id,
  notes: [],
  blocks,
  place: PLACE,
});

const week = (reserve: number, share = 1000, easy = false) => ({ reserve, share, easy });

export const aProgramme = (sessions: readonly SessionTemplate[], programme: Partial<Programme> = {}): Programme => ({
  id: programmeId('block'),
  name: 'Block',
  forWhom: '',
  public: false,
  curve: [week(30), week(30), week(20), week(20), week(20), week(40, 670, true)],
  sessions,
  rotations: [],
  neverCut: [],
  tests: [],
  cutFirst: [],
  description: [],
  expectations: [],
  place: PLACE,
  ...programme,
});

/** Trains on Mondays from 4 January 2027, is 38 and trained, and has answered the questions. */
export const aClient = (client: Partial<Client> = {}): Client => ({
  id: clientId('somebody'),
  name: 'Somebody',
  starts: on('2027-01-04'),
  programme: programmeId('block'),
  days: [1],
  minutes: 60,
  birthYear: 1988,
  experience: 'trained',
  screening: {
    date: on('2026-12-01'),
    regularExercise: 'yes',
    knownDisease: 'no',
    symptoms: 'no',
    place: PLACE,
  },
  cautions: [],
  health: {},
  breaks: [],
  mainBells: [],
  unhandled: [],
  kit: bells('8', '12', '16', '20', '24'),
  unit: 'kg',
  room: {},
  language: 'en-GB',
  largePrint: false,
  replanning: 'fixed',
  blocksBefore: 1,
  signOffs: [],
  tests: [],
  observations: [],
  notes: [],
  place: PLACE,
  ...client,
});

export const aTest = (exercise: string, reps: number, test: Partial<Test> = {}): Test => ({
  exercise: exerciseId(exercise),
  side: 'both',
  reps,
  reserve: 20,
  inCircuit: false,
  date: on('2026-12-01'),
  place: PLACE,
  ...test,
});

export const aSignOff = (exercise: string, signOff: Partial<SignOff> = {}): SignOff => ({
  exercise: exerciseId(exercise),
  date: on('2026-12-01'),
  by: 'Coach',
  place: PLACE,
  ...signOff,
});

export const aCaution = (what: Caution['what'], caution: Partial<Caution> = {}): Caution => ({
  what,
  degree: 'avoid',
  side: 'both',
  phases: [],
  from: on('2026-12-01'),
  by: 'Coach',
  place: PLACE,
  ...caution,
});

export const aLibrary = (exercises: readonly Exercise[], programme: Programme): Library => ({
  studio: {
    name: 'Studio',
    place: '',
    coach: 'Coach',
    language: 'en-GB',
    unit: 'kg',
    paper: 'a4',
    emergencyNumber: '999',
    source: PLACE,
  },
  exercises,
  programmes: [programme],
  overrides: [],
});

/** One session with one row of each exercise named. */
export const oneSession = (...exercises: readonly string[]): Programme =>
  aProgramme([aSession('A', aBlock(exercises.map((exercise) => aRow(exercise))))]);

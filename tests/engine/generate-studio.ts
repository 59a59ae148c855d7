/**
 * A made-up studio and one client of it, from a seed: kits in kg and lb, plates and pairs, cautions, tests, sign-offs,
 * rooms, programmes with circuits and rotations; and, where everything is asked for, every way of working, dose and
 * bell by role, bands, warm-ups of the coach's own, tests, facts of health, breaks and clearances. Most of them can be
 * planned; some must be refused.
 */
import type { Caution, Client, SignOff, Test } from '../../src/model/client.js';
import { addDays, type Day, day, type Weekday } from '../../src/model/day.js';
import type { Effort } from '../../src/model/dose.js';
import { BODY_PARTS, type Exercise, QUALITIES } from '../../src/model/exercise.js';
import { clientId, exerciseId, kitItemId, programmeId, rowId, sessionId } from '../../src/model/identity.js';
import type { KitItem, LoadKind, ThingKind } from '../../src/model/kit.js';
import type { Block, Programme, Row, SessionTemplate } from '../../src/model/programme.js';
import { gramsOf, type Mass, type MassUnit } from '../../src/model/quantity.js';
import type { Library } from '../../src/model/studio.js';
import { type Chance, chanceFrom } from './chance.js';
import { generateBell, generateDose, generateEffort } from './generate-doses.js';
import { generateExercises, PLACE } from './generate-exercises.js';
import { generateBreaks, generateClearance, generateHealth, generateMainBells } from './generate-health.js';
import { generateWays } from './generate-ways.js';

export interface MadeUp {
  readonly library: Library;
  readonly client: Client;
  readonly today: Day;
}

/** 4 January 2027, a Monday. */
const START = day(20_822);

/** `walked`: rows of reps to failure alone, and nothing but cautions to heed. */
export type Breadth = 'walked' | 'everything';

export function generateStudio(seed: number, breadth: Breadth = 'walked'): MadeUp {
  const chance = chanceFrom(seed);
  const walked = generateExercises(chance);
  const wide = breadth === 'everything';
  const exercises = wide ? widen(walked, chance) : walked;
  const programme = generateProgramme(chance, exercises, breadth);
  const narrow = generateClient(chance, exercises);
  const client = wide ? withFacts(narrow, chance) : narrow;
  const library: Library = {
    studio: {
      name: 'Made up',
      place: 'Nowhere',
      coach: 'Nobody',
      language: 'en-GB',
      unit: client.unit,
      paper: 'a4',
      emergencyNumber: '999',
      source: PLACE,
    },
    exercises,
    programmes: [programme],
    overrides: [],
  };
  const today = addDays(client.starts, chance.whole(-40, 10));
  return { library, client: seenBy(client, today), today };
}

/** Every way of working, muscles to count, and easy movements that may stand in a warm-up. */
function widen(walked: readonly Exercise[], chance: Chance): readonly Exercise[] {
  const muscles = ['quadriceps', 'gluteus maximus', 'hamstrings', 'pectoralis major', 'rhomboids', 'deltoid'];
  const rehearsed = walked.map((exercise): Exercise => {
    const { facts } = exercise;
    const rehearses = facts.way === 'bodyweight' && chance.happens(40) ? [facts.pattern] : [];
    const main = [chance.oneOf(muscles)];
    return { ...exercise, facts: { ...facts, rehearses, muscles: { main, assisting: chance.some(muscles, 25) } } };
  });
  const all = [...rehearsed, ...generateWays(chance, rehearsed)].sort((a, b) => (a.id < b.id ? -1 : 1));
  const known = new Set(all.map(({ id }) => id));
  return all.map((exercise) => {
    const { words } = exercise;
    const easier = words.easier.filter(({ to }) => to.kind === 'way' || known.has(to.id));
    return { ...exercise, words: { ...words, easier } };
  });
}

function withFacts(client: Client, chance: Chance): Client {
  const { starts } = client;
  const clearance = generateClearance(chance, starts);
  const bells = client.kit.flatMap((item) => (item.kind === 'bell' ? [item.mass] : []));
  const bands = chance.some(['light', 'medium', 'strong'], 60).map((label, index): KitItem => {
    return { id: kitItemId(`band-${index + 1}`), kind: 'band', step: index + 1, label };
  });
  const known = client.screening === undefined || !chance.happens(8) ? {} : { knownDisease: 'yes' as const };
  return {
    ...client,
    ...(client.screening ? { screening: { ...client.screening, ...known } } : {}),
    ...(clearance ? { clearance } : {}),
    health: generateHealth(chance, starts),
    breaks: generateBreaks(chance, starts),
    mainBells: generateMainBells(chance, bells),
    kit: [
      ...client.kit,
      ...bands,
      ...chance.some(['step', 'box'] as const, 50).map((kind) => ({ id: kitItemId(kind), kind })),
    ],
    signOffs: client.signOffs.concat(signOffsOfFastWork(client, chance)),
  };
}

/** Fast work is passed more often than not, or hardly any would be planned. */
const signOffsOfFastWork = (client: Client, chance: Chance): readonly SignOff[] =>
  ['swing-0', 'swing-1', 'swing-2'].flatMap((id) =>
    chance.happens(75)
      ? [
          {
            exercise: exerciseId(id),
            upTo: mass(chance.oneOf(['12', '16', '24']), 'kg'),
            date: addDays(client.starts, -chance.whole(1, 95)),
            by: 'Nobody',
            place: PLACE,
          },
        ]
      : [],
  );

/** Nothing has been seen later than today. */
function seenBy(client: Client, today: Day): Client {
  const seen = <Fact extends { readonly date: Day }>(fact: Fact): Fact => ({
    ...fact,
    date: day(Math.min(fact.date, today)),
  });
  const { screening, clearance, health, signOffs, tests } = client;
  return {
    ...client,
    ...(screening ? { screening: seen(screening) } : {}),
    ...(clearance ? { clearance: seen(clearance) } : {}),
    health: { ...health, ...(health.bloodPressure ? { bloodPressure: seen(health.bloodPressure) } : {}) },
    signOffs: signOffs.map(seen),
    tests: tests.map(seen),
  };
}

export const mass = (figure: string, unit: MassUnit): Mass => ({
  grams: gramsOf(Number(figure), unit),
  unit,
  figure,
});

/** Items numbered by kind, as two equal bells are two items. */
export function kitOf(loads: readonly (readonly [LoadKind, Mass])[], things: readonly ThingKind[] = []): KitItem[] {
  return [
    ...loads.map(([kind, of], index) => ({ id: kitItemId(`${kind}-${index + 1}`), kind, mass: of })),
    ...things.map((kind) => ({ id: kitItemId(kind), kind })),
  ];
}

export function generateKit(chance: Chance, unit: MassUnit): KitItem[] {
  const figures = (from: readonly string[], percent: number) => chance.some(from, percent);
  const twice = (list: readonly string[]) =>
    list.flatMap((figure) => (chance.happens(40) ? [figure, figure] : [figure]));
  const of = (kind: LoadKind, list: readonly string[], in_: MassUnit = unit) =>
    list.map((figure) => [kind, mass(figure, chance.happens(93) ? in_ : in_ === 'kg' ? 'lb' : 'kg')] as const);
  const kg = unit === 'kg';
  const bells = twice(figures(kg ? ['8', '12', '16', '20', '24', '28'] : ['18', '26', '35', '44', '53'], 60));
  const dumbbells = twice(figures(kg ? ['2.5', '5', '7.5', '10'] : ['5', '10', '15', '20'], 30));
  const plates = chance.happens(50)
    ? twice(twice(figures(kg ? ['1.25', '2.5', '5', '10'] : ['2.5', '5', '10'], 70)))
    : [];
  const handles = plates.length > 0 && chance.happens(70) ? twice([kg ? '2' : '5']) : [];
  const bars = plates.length > 0 && chance.happens(40) ? [kg ? '20' : '45'] : [];
  return kitOf(
    [
      ...of('bell', bells),
      ...of('dumbbell', dumbbells),
      ...of('handle', handles),
      ...of('bar', bars),
      ...of('plate', plates),
    ],
    chance.some(['bench', 'chair', 'wall', 'mat'] as const, 80),
  );
}

function generateClient(chance: Chance, exercises: readonly Exercise[]): Client {
  const unit = chance.oneOf<MassUnit>(['kg', 'kg', 'lb']);
  const starts = addDays(START, chance.whole(0, 13));
  const ceiling = chance.happens(85) ? { ceilingMillimetres: chance.whole(2100, 3000) } : {};
  const floor = chance.happens(85) ? { floorMillimetres: { long: 2500, wide: chance.whole(1000, 2500) } } : {};
  return {
    id: clientId('made-up'),
    name: 'Made Up',
    starts,
    programme: programmeId('made-up'),
    days: chance.oneOf<readonly Weekday[]>([[1, 4], [2, 5], [1, 3, 5], [6], [3, 7]]),
    minutes: chance.whole(25, 90),
    birthYear: chance.whole(1940, 2010),
    experience: chance.oneOf(['novice', 'trained'] as const),
    ...(chance.happens(80) ? { bodyMass: { mass: mass(String(chance.whole(50, 110)), 'kg') } } : {}),
    screening: {
      date: addDays(starts, -chance.whole(50, 200)),
      regularExercise: chance.oneOf(['yes', 'no'] as const),
      knownDisease: chance.happens(98) ? 'no' : 'yes',
      symptoms: chance.happens(99) ? 'no' : 'yes',
      place: PLACE,
    },
    cautions: chance.happens(35) ? [cautionOf(chance, starts)] : [],
    health: {},
    breaks: [],
    mainBells: [],
    unhandled: [],
    kit: generateKit(chance, unit),
    unit,
    room: { ...ceiling, ...floor },
    language: 'en-GB',
    largePrint: false,
    replanning: 'fixed',
    blocksBefore: chance.whole(0, 2),
    signOffs: exercises.flatMap((exercise) => (chance.happens(50) ? [signOffOf(exercise, chance, starts, unit)] : [])),
    tests: exercises.flatMap((exercise) => (chance.happens(60) ? testsOf(exercise, chance, starts, unit) : [])),
    observations: [],
    notes: [],
    place: PLACE,
  };
}

function cautionOf(chance: Chance, starts: Day): Caution {
  return {
    what: chance.oneOf([...BODY_PARTS, ...QUALITIES]),
    degree: chance.oneOf(['avoid', 'take care', 'take care'] as const),
    side: chance.oneOf(['left', 'right', 'both'] as const),
    phases: chance.happens(50) ? [] : [chance.oneOf(['bottom', 'top', 'far'])],
    from: addDays(starts, chance.whole(-60, 60)),
    ...(chance.happens(30) ? { until: addDays(starts, chance.whole(-20, 60)) } : {}),
    ...(chance.happens(30) ? { review: addDays(starts, chance.whole(-20, 60)) } : {}),
    by: 'Nobody',
    place: PLACE,
  };
}

function signOffOf(exercise: Exercise, chance: Chance, starts: Day, unit: MassUnit): SignOff {
  const upTo = chance.oneOf(unit === 'kg' ? ['12', '16', '24', '40'] : ['26', '35', '53', '95']);
  return {
    exercise: exercise.id,
    ...(exercise.facts.way === 'strength' && chance.happens(90) ? { upTo: mass(upTo, unit) } : {}),
    date: addDays(starts, -chance.whole(1, 120)),
    by: 'Nobody',
    place: PLACE,
  };
}

function testsOf(exercise: Exercise, chance: Chance, starts: Day, unit: MassUnit): readonly Test[] {
  const sides =
    exercise.facts.sides === 'each'
      ? chance.oneOf([['left', 'right'], ['both'], ['right']] as const)
      : (['both'] as const);
  const figure = chance.oneOf(
    unit === 'kg' ? ['8', '12', '16', '20', '23.5', '40'] : ['18', '26', '35', '44', '60', '95'],
  );
  return sides.map((side) => ({
    exercise: chance.happens(90) ? exercise.id : (exercise.formerIds[0] ?? exercise.id),
    side,
    ...(exercise.facts.way === 'strength' ? { load: mass(figure, unit) } : {}),
    reps: chance.whole(4, 16),
    reserve: 10 * chance.whole(0, 6),
    inCircuit: chance.happens(10),
    date: addDays(starts, -chance.whole(1, 90)),
    place: PLACE,
  }));
}

function generateProgramme(chance: Chance, exercises: readonly Exercise[], breadth: Breadth): Programme {
  const names = ['A', 'B', 'C'].slice(0, chance.whole(1, 3));
  const sessions = names.map((name) => sessionOf(name, chance, exercises, breadth));
  const rows = sessions.flatMap(({ blocks }) => blocks.flatMap((block) => block.rows.map(({ id }) => id)));
  const order = sessions.map(({ id }) => id);
  const asked = [chance.oneOf([30, 40]), 30, 20, 20, chance.oneOf([10, 20])];
  return {
    id: programmeId('made-up'),
    name: 'Made up',
    forWhom: 'nobody',
    public: false,
    curve: [
      ...asked.map((reserve) => ({ reserve, share: chance.oneOf([1000, 1000, 750]), easy: false })),
      { reserve: 40, share: chance.oneOf([500, 670, 1000]), easy: true },
    ],
    sessions,
    rotations: chance.happens(95) ? [1, 2, 3].map((days) => ({ days, order })) : [],
    neverCut: chance.some(rows, 20),
    tests: breadth === 'everything' && chance.happens(30) ? chance.some(rows, 40) : [],
    cutFirst: chance.some(rows, 30),
    description: [],
    expectations: [],
    place: PLACE,
  };
}

function sessionOf(name: string, chance: Chance, exercises: readonly Exercise[], breadth: Breadth): SessionTemplate {
  const count = chance.whole(1, 5);
  const chosen = Array.from({ length: count }, () => chance.oneOf(exercises));
  const rows = [...new Set(chosen)].map((exercise) => {
    const row = rowOf(exercise, chance);
    return breadth === 'everything' ? broadRow(row, exercise, chance) : row;
  });
  const split = chance.whole(0, rows.length);
  const circuit = rows.slice(split);
  const straight: Block = { name: 'Main', kind: 'straight', rows: rows.slice(0, split) };
  const turnAbout: Block = { name: 'Circuit', kind: 'circuit', rounds: chance.whole(1, 4), rows: circuit };
  return {
    id: sessionId(name),
    name: `Session ${name}`,
    notes: [],
    blocks: [
      ...(breadth === 'everything' && chance.happens(10) ? [ownBlock('warm-up', chance, exercises)] : []),
      ...[straight, turnAbout].filter((block) => block.rows.length > 0),
      ...(breadth === 'everything' && chance.happens(6) ? [ownBlock('cool-down', chance, exercises)] : []),
    ],
    place: PLACE,
  };
}

/** The coach's own beginning or end: what needs no load. */
function ownBlock(kind: 'warm-up' | 'cool-down', chance: Chance, exercises: readonly Exercise[]): Block {
  const bare = exercises.filter(({ facts }) => facts.way === 'mobility' || facts.way === 'conditioning');
  const chosen = [...new Set([chance.oneOf(bare), chance.oneOf(bare)])];
  const rows = chosen.map((exercise) => ({
    ...broadRow(rowOf(exercise, chance), exercise, chance),
    id: rowId(`own-${kind}-${exercise.id}`),
    target: { kind: 'exercise', id: exercise.id } as const,
  }));
  return { name: kind, kind, rows };
}

function broadRow(row: Row, exercise: Exercise, chance: Chance): Row {
  const { effort: _narrow, ...kept } = row;
  const effort = generateEffort(exercise, chance);
  const bell = generateBell(exercise, chance);
  const dose = generateDose(exercise, chance);
  return { ...kept, dose, ...(effort ? { effort } : {}), ...(bell ? { bell } : {}) };
}

function rowOf(exercise: Exercise, chance: Chance): Row {
  const bottom = chance.whole(3, 10);
  const effort = chance.oneOf<Effort | undefined>([
    undefined,
    undefined,
    { kind: 'reserve', tenths: 30 },
    { kind: 'rpe', tenths: 80 },
  ]);
  return {
    id: rowId(exercise.id),
    target: chance.happens(95)
      ? { kind: 'exercise', id: exercise.id }
      : { kind: 'pattern', pattern: exercise.facts.pattern },
    dose: {
      kind: 'sets',
      sets: chance.whole(1, 5),
      reps: { min: bottom, max: bottom + chance.whole(0, 6) },
      eachSide: exercise.facts.sides !== 'both',
    },
    ...(effort === undefined ? {} : { effort }),
    restSeconds: chance.oneOf([30, 60, 90, 120]),
    tempi: chance.oneOf([
      ['normal'],
      ['normal', 'slow lowering'],
      ['normal', 'slow lowering', 'slow with a pause'],
    ] as const),
    trials: chance.happens(80),
    optional: chance.happens(15),
    place: PLACE,
  };
}

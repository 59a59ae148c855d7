/**
 * A whole small plan made from the oracle's own walks, for the audit to be tried on: two sessions a week, a row on
 * each side with a trial and a gate, a row with body mass in it, a circuit, and a row of which nothing is known.
 */
import { bell, bells, buildStrand, version } from './build-strand.js';
import { type LadderJson, type RungStep, walkLadder } from './ladder.js';
import type { LoadJson, Option, StrandJson } from './strand-json.js';
import { type Step, walkStrand } from './walk.js';

const RACK = [12, 16, 20, 24, 28, 32];
const CURVE = [3, 3, 2, 2, 2];

const press: StrandJson = buildStrand({
  versions: [version('press', bells(...RACK))],
  tested: [24_000, 9, 3],
  range: [5, 9],
  curve: CURVE,
  gain: 100,
  sets: [4, 2],
  more: { id: 'a/press', row: 'press', capacity: { side: 'left', resisted: 24_000, reps: 120, weak: false } },
});

const squat: StrandJson = buildStrand({
  versions: [version('goblet-squat', bells(12, 16, 20, 24), { share: 878, signedOffTo: 24_000 })],
  bodyMass: 70_000,
  tested: [16_000, 10, 2],
  range: [6, 10],
  curve: CURVE,
  gain: 100,
  sets: [3, 2],
  more: { id: 'a/squat', row: 'squat' },
});

const pushUp: StrandJson = buildStrand({
  versions: [version('push-up', bells(0), { share: 640 })],
  bodyMass: 70_000,
  tested: [0, 10, 3],
  range: [6, 12],
  curve: CURVE.map((reserve) => reserve + 1),
  sets: [2, 1],
  more: { id: 'b/push-up', session: 'b', row: 'push-up', way: 'bodyweight' },
});
const circuit: StrandJson = {
  ...pushUp,
  occurrences: pushUp.occurrences.map((one) => (one.easy ? { ...one, asked: 50 } : one)),
};

const unknown: StrandJson = {
  ...buildStrand({
    versions: [version('row', bells(...RACK))],
    tested: [16_000, 10, 2],
    range: [6, 10],
    curve: CURVE,
    sets: [3, 2],
    more: { id: 'b/row', session: 'b', row: 'row' },
  }),
  capacity: null,
  start: null,
};

const printed = (load: LoadJson | undefined) =>
  load === undefined || load.grams === 0 ? {} : { load: { ...load, kg: load.grams / 1000 } };

function loadAt(strand: StrandJson, option: Option): LoadJson | undefined {
  return strand.versions[option.version]?.loads.find((load) => load.grams === option.load);
}

const DAYS = { a: 0, b: 3 } as const;
const DATES = (week: number, days: number): string =>
  new Date(Date.UTC(2027, 0, 4 + 7 * (week - 1) + days)).toISOString().slice(0, 10);

function setsOf(strand: StrandJson, step: Step, occurrence: number, each: boolean) {
  const counts = new Map<string, number>();
  const sides = each ? ['left', 'right'] : ['both'];
  return Array.from({ length: step.sets }, (_, index) => index).flatMap((index) =>
    sides.map((side) => {
      const kind = index === 0 && step.trial !== undefined ? 'trial' : 'work';
      const ordinal = (counts.get(side + kind) ?? 0) + 1;
      counts.set(side + kind, ordinal);
      const set = kind === 'trial' && step.trial !== undefined ? step.trial : step;
      const gate = step.gate;
      const other = step.otherwise;
      return {
        key: `2/${occurrence}/${strand.row}/${side}/${kind}/${ordinal}`,
        kind,
        round: ordinal,
        reps: set.reps,
        reserve: set.reserve,
        ...(each ? { side } : {}),
        ...printed(loadAt(strand, set.option)),
        ...(gate === undefined
          ? {}
          : {
              gate: {
                needs: {
                  exercise: strand.versions[gate.needs.option.version]?.exercise,
                  reps: gate.needs.reps,
                  reserve: 20,
                  weeks: [step.week - 1],
                  ...printed(loadAt(strand, gate.needs.option)),
                },
              },
            }),
        ...(other === undefined
          ? {}
          : {
              otherwise: [
                {
                  exercise: strand.versions[other.option.version]?.exercise,
                  reps: other.reps,
                  reserve: other.reserve,
                  sets: other.sets,
                  tempo: strand.tempi[other.option.tempo]?.step,
                  ...printed(loadAt(strand, other.option)),
                },
              ],
            }),
      };
    }),
  );
}

const EASIER = [{ exercise: 'something-easier', say: 'Something easier', for: ['load'], sets: [] }];

/** As much as is done whether or not a gate opened. */
function easierOf(strand: StrandJson, step: Step, occurrence: number) {
  const { option, reps, reserve } = step.otherwise ?? step;
  const key = `2/${occurrence}/${strand.row}/both/work/1`;
  const set = { key, kind: 'work', round: 1, reps, reserve, ...printed(loadAt(strand, option)) };
  return EASIER.map((easier) => ({ ...easier, sets: [set] }));
}
const REASONS = [{ rule: 'reps', says: '', inputs: [], source: 'practice', confidence: 'measured', audience: 'coach' }];

function itemOf(strand: StrandJson, step: Step, occurrence: number, each: boolean) {
  return {
    id: `${strand.session}/${strand.row}/${step.week}`,
    row: strand.row,
    exercise: strand.versions[step.option.version]?.exercise,
    way: strand.way,
    sides: each ? 'each' : 'both',
    tempo: strand.tempi[step.option.tempo]?.step,
    restSeconds: 60,
    asked: {
      min: strand.bottom,
      max: strand.top,
      unit: 'reps',
      reserve: strand.occurrences[step.week - 1]?.asked,
      sets: step.sets,
    },
    capacity: {
      equation: 'epley',
      grams: strand.capacity?.resisted,
      side: strand.capacity?.side,
      confidence: 'measured',
    },
    allowed: [],
    relaxed: step.relaxed ? ['reps'] : [],
    sets: setsOf(strand, step, occurrence, each),
    easier: easierOf(strand, step, occurrence),
    harder: [],
    reasons: REASONS,
  };
}

/** The row nothing is known of: a feeler set, then work without a load. */
function unknownItem(strand: StrandJson, week: number, occurrence: number) {
  const one = strand.occurrences[week - 1];
  const key = (kind: string, ordinal: number) => `2/${occurrence}/${strand.row}/both/${kind}/${ordinal}`;
  const choose = [
    { left: { min: 0, max: 4 }, exercise: 'row', reps: 6, reserve: 30, ...printed(bell(12_000)) },
    { left: { min: 5, max: 99 }, exercise: 'row', reps: 8, reserve: 30, ...printed(bell(16_000)) },
  ];
  const feeler = { key: key('feeler', 1), kind: 'feeler', round: 1, reps: 8, ...printed(bell(12_000)), choose };
  const work = Array.from({ length: one?.sets ?? 1 }, (_, index) => ({
    key: key('work', index + 1),
    kind: 'work',
    round: index + 1,
    reps: 6,
  }));
  return {
    id: `b/row/${week}`,
    row: 'row',
    exercise: 'row',
    way: 'strength',
    sides: 'both',
    tempo: 'normal',
    restSeconds: 60,
    asked: { min: 6, max: 10, unit: 'reps', reserve: one?.asked, sets: one?.sets },
    capacity: null,
    allowed: [],
    relaxed: [],
    sets: week === 1 ? [feeler, ...work] : work,
    easier: EASIER,
    harder: [],
    reasons: REASONS,
  };
}

/** Swings with the 16, then the 20: a gate in week 5. */
const rung = (grams: number, reps: number, stage: number) => ({
  exercise: 'swing',
  load: bell(grams),
  nextUp: null,
  deadStop: stage === 0 && reps === 8,
  dose: { kind: 'reps', reps },
  stage,
});
const swings: LadderJson & { readonly rungs: readonly ReturnType<typeof rung>[] } = {
  rungs: [rung(16_000, 8, 0), rung(16_000, 10, 0), rung(20_000, 8, 1), rung(20_000, 10, 1)],
  start: 0,
  earned: 0,
  gates: true,
  occurrences: [1, 2, 3, 4, 5, 6].map((week) => ({ week, easy: week === 6, sets: week === 6 ? 2 : 3 })),
  rules: { earned: 2, weeks: 2, easyDown: 1 },
};

function swingItem({ week, rung: at, sets, needs, otherwise }: RungStep, occurrence: number) {
  const { load, dose, deadStop } = swings.rungs[at] ?? rung(16_000, 8, 0);
  const doneAt = (index: number) => {
    const other = swings.rungs[index];
    return { exercise: 'swing', reps: other?.dose.reps, ...printed(other?.load) };
  };
  const key = (ordinal: number) => `2/${occurrence}/swing/both/work/${ordinal}`;
  const sure = otherwise === undefined ? doneAt(at) : doneAt(otherwise.rung);
  return {
    id: `b/swing/${week}`,
    row: 'swing',
    exercise: 'swing',
    way: 'swing',
    sides: 'both',
    tempo: 'normal',
    restSeconds: 60,
    asked: { min: 8, max: 10, unit: 'reps', reserve: null, sets },
    capacity: null,
    allowed: [],
    relaxed: [],
    sets: Array.from({ length: sets }, (_, index) => ({
      key: key(index + 1),
      kind: 'work',
      round: index + 1,
      reps: dose.reps,
      ...(deadStop ? { deadStop } : {}),
      ...printed(load),
      ...(index > 0 || needs === undefined ? {} : { gate: { needs: { ...doneAt(needs.rung), weeks: needs.weeks } } }),
      ...(index > 0 || otherwise === undefined
        ? {}
        : { otherwise: [{ ...doneAt(otherwise.rung), tempo: 'normal', sets: otherwise.sets }] }),
    })),
    easier: EASIER.map((easier) => ({
      ...easier,
      sets: [{ key: key(1), kind: 'work', round: 1, reps: sure.reps }],
    })),
    harder: [],
    reasons: REASONS,
    rung: { number: at + 1, of: swings.rungs.length },
  };
}

const stepsOf = (strand: StrandJson): readonly Step[] => {
  const walk = walkStrand(strand);
  if (walk.kind === 'impossible') throw new Error(`${strand.id} cannot be walked`);
  return walk.steps;
};

/** Plain JSON, made anew each time, so that a test may spoil it. */
export function makePlan(): unknown {
  const walks = [press, squat, circuit].map(stepsOf);
  const [pressSteps = [], squatSteps = [], circuitSteps = []] = walks;
  const swingSteps = walkLadder(swings);
  const weeks = pressSteps.map((pressStep, index) => {
    const week = index + 1;
    const swung = swingSteps.slice(index, index + 1).map((step) => swingItem(step, 2 * week));
    const [squatStep = pressStep, circuitStep = pressStep] = [squatSteps[index], circuitSteps[index]];
    const a = [itemOf(press, pressStep, 2 * week - 1, true), itemOf(squat, squatStep, 2 * week - 1, false)];
    const session = (id: 'a' | 'b', occurrence: number, groups: readonly unknown[]) => ({
      id,
      name: id,
      date: DATES(week, DAYS[id]),
      occurrence,
      minutes: 30,
      trimmed: [],
      groups: [{ kind: 'warm-up', name: 'Warm-up', rounds: 1, minutes: 5, items: [] }, ...groups],
      short: {
        minutes: 8,
        sets: [id === 'a' ? `2/${occurrence}/press/left/work/1` : `1/${occurrence}/row/both/work/1`],
      },
    });
    return {
      number: week,
      begins: DATES(week, 0),
      deload: pressStep.easy,
      sessions: [
        session('a', 2 * week - 1, [{ kind: 'straight', name: 'Main', rounds: 1, items: a }]),
        session('b', 2 * week, [
          {
            kind: 'circuit',
            name: 'Round',
            rounds: pressStep.easy ? 1 : 2,
            items: [itemOf(circuit, circuitStep, 2 * week, false)],
          },
          { kind: 'straight', name: 'Pull', rounds: 1, items: [unknownItem(unknown, week, 2 * week)] },
          { kind: 'straight', name: 'Swing', rounds: 1, items: swung },
        ]),
      ],
    };
  });
  const test = (exercise: string, side: string, grams: number, reps: number, reserve: number, k: number) => ({
    exercise,
    side,
    k,
    test: { date: '2027-01-02', grams, reps, reserve },
    weak: 10 * reps + reserve > 120,
  });
  const plan = {
    schema: 1,
    planId: 'made-up',
    client: 'nobody',
    programme: 'made-up',
    edition: 0,
    block: 2,
    starts: '2027-01-04',
    today: '2027-01-03',
    engine: '0',
    rules: [{ id: 'reps', value: 2, source: 'practice' }],
    inputs: {
      kit: RACK.map((kg) => ({ id: `bell-${kg * 1000}`, kind: 'bell', grams: kg * 1000, label: `${kg} kg` })),
      capacities: [
        test('press', 'left', 24_000, 9, 30, 24_000 * 420),
        test('press', 'right', 24_000, 10, 30, 24_000 * 430),
        test('goblet-squat', 'both', 16_000, 10, 20, 77_460 * 420),
        test('push-up', 'both', 0, 10, 30, 44_800 * 430),
      ],
      floors: [{ rule: 'floor-alone', reserve: 20, weeks: [1, 2, 3, 4, 5, 6] }],
      cautions: [],
      flags: [],
      minutesCap: 40,
      days: [1, 4],
      bodyMass: 70_000,
      curve: [...CURVE, 4].map((reserve, i) => ({ reserve: 10 * reserve, share: i === 5 ? 500 : 1000, easy: i === 5 })),
      shares: [
        { exercise: 'goblet-squat', share: 878, standing: 'derived', source: 'invented' },
        { exercise: 'push-up', share: 640, standing: 'derived', source: 'invented' },
      ],
      signOffs: [{ exercise: 'goblet-squat', grams: 24_000, date: '2026-12-30', by: 'coach' }],
      strands: [press, squat, circuit, unknown],
      ladders: [{ id: 'b/swing', session: 'b', row: 'swing', way: 'swing', ...swings }],
      room: {},
      experience: 'trained',
      birthYear: 1988,
      blocksBefore: 1,
      standing: { moderate: false, derived: [], health: [] },
      mainBells: [],
      breaks: [],
    },
    weeks,
    findings: [],
  };
  return JSON.parse(JSON.stringify(plan));
}

/** A small library written out by hand, with hostile names and every odd shape a page must bear. */
import type { Exercise, Facts, Version, Words } from '../../src/model/exercise.js';
import { exerciseId, programmeId, rowId, sessionId } from '../../src/model/identity.js';
import type { Place } from '../../src/model/place.js';
import type { Programme } from '../../src/model/programme.js';
import { plainLine } from '../../src/model/prose.js';
import { publicPartOf } from '../../src/model/public-library.js';
import type { Library } from '../../src/model/studio.js';

const place = (file: string): Place => ({ file, line: 1, column: 1, length: 1 });

const facts: Facts = {
  pattern: 'squat',
  way: 'strength',
  sides: 'both',
  kit: { load: [{ kind: 'bell', count: 1, unequal: false }], unloaded: false, things: [] },
  room: { ceiling: 'any' },
  holds: 'total',
  asks: [{ of: 'knee', degree: 'some', side: 'both', phases: ['bottom'] }],
  signOff: false,
  muscles: { main: ['quadriceps'], assisting: [] },
  tempo: { lower: 2, bottom: 0, lift: 1, top: 0 },
  parts: [],
  partsDone: 'as one',
  rehearses: [],
  cools: false,
  onTheFloor: true,
};

const words: Words = {
  description: [plainLine('A squat with one bell held close.')],
  setUp: [plainLine('Feet a little wider than your hips.')],
  pickUp: [plainLine('Sit down to it with a flat back.')],
  putDown: [plainLine('Lower it between your feet.')],
  cues: [
    { phase: 'Down', line: plainLine('Sit between your heels.') },
    { phase: '', line: plainLine('Stand tall.') },
  ],
  breath: [plainLine('In on the way down.')],
  faults: [{ see: plainLine('Heels lift'), say: plainLine('Keep the whole foot printed on the floor.') }],
  easier: [],
  harder: [],
  stopIf: [plainLine('A sharp pain in the knee.')],
  partner: [plainLine('Watch from the side.')],
};

const toExercise = (id: string, say: string): Version => ({
  to: { kind: 'exercise', id: exerciseId(id) },
  say: plainLine(say),
  causes: ['load'],
  place: place('exercises/goblet-squat.md'),
});

export interface ExerciseWith {
  readonly name: string;
  readonly facts?: Partial<Facts>;
  readonly words?: Partial<Words>;
}

const exercise = (id: string, more: ExerciseWith): Exercise => ({
  id: exerciseId(id),
  formerIds: [],
  name: more.name,
  facts: { ...facts, ...more.facts },
  words: { ...words, ...more.words },
  poses: [],
  place: place(`exercises/${id}.md`),
});

export const HOSTILE = `<script>alert(1)</script> & "quotes" 'single' </style> javascript:alert(1)`;

const programme = (id: string, open: boolean): Programme => ({
  id: programmeId(id),
  name: open ? 'Two steady days' : 'Kept for one client',
  forWhom: 'someone new to bells',
  public: open,
  curve: [{ reserve: 30, share: 1000, easy: false }],
  sessions: [
    {
      id: sessionId('a'),
      name: 'Squat and press',
      notes: [],
      blocks: [
        {
          name: 'Main',
          kind: 'straight',
          rows: [
            {
              id: rowId('goblet-squat'),
              target: { kind: 'exercise', id: exerciseId('goblet-squat') },
              dose: { kind: 'sets', sets: 3, reps: { min: 6, max: 10 }, eachSide: false },
              restSeconds: 90,
              tempi: ['normal'],
              trials: true,
              optional: false,
              place: place(`programmes/${id}.md`),
            },
            {
              id: rowId('any-pull'),
              target: { kind: 'pattern', pattern: 'pull' },
              dose: { kind: 'timed', sets: 2, seconds: { min: 30, max: 30 }, eachSide: true },
              restSeconds: 60,
              tempi: ['normal'],
              trials: true,
              optional: false,
              place: place(`programmes/${id}.md`),
            },
          ],
        },
      ],
      place: place(`programmes/${id}.md`),
    },
  ],
  rotations: [],
  neverCut: [],
  tests: [],
  cutFirst: [],
  description: [plainLine('Six weeks on two days.')],
  expectations: [],
  place: place(`programmes/${id}.md`),
});

export const fixtureLibrary: Library = {
  studio: {
    name: 'Slate Yard',
    place: 'Harrowby',
    coach: 'Maren Oakes',
    language: 'en-GB',
    unit: 'kg',
    paper: 'a4',
    emergencyNumber: '999',
    source: place('studio.md'),
  },
  exercises: [
    exercise('box-squat', {
      name: 'Box squat',
      facts: { kit: { load: [], unloaded: true, things: ['box'] }, asks: [] },
    }),
    exercise('goblet-squat', {
      name: 'Goblet squat',
      words: { easier: [toExercise('box-squat', 'Box squat')], harder: [toExercise('nowhere', 'Gone')] },
    }),
    exercise('hostile', {
      name: HOSTILE,
      facts: { pattern: 'pull', signOff: true },
      words: {
        setUp: [[{ text: HOSTILE, link: 'javascript:alert(1)' }]],
        faults: [{ see: plainLine('A stoop'), say: plainLine('“Stand tall.”') }],
        harder: [],
        easier: [
          { ...toExercise('', ''), to: { kind: 'way', slug: 'slower' }, say: plainLine('Slower on the way down') },
        ],
      },
    }),
  ],
  programmes: [programme('two-days', true), programme('for-one', false)],
  overrides: [],
};

/** As the public library takes it. */
export const fixturePublic = publicPartOf(fixtureLibrary);

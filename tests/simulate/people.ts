/** Four invented people who follow a booklet as people do. What each is like stands in README.md, with its sources. */
import type { Client } from '../../src/model/client.js';
import type { BodyPart } from '../../src/model/exercise.js';
import { exerciseId } from '../../src/model/identity.js';
import type { Library } from '../../src/model/studio.js';
import { readCase } from '../cases/read-case.js';
import { readLibrary } from '../cases/read-library.js';
import { PLACE } from '../engine/generate-exercises.js';
import { on } from '../engine/make-block.js';

export interface Person {
  readonly name: string;
  readonly client: Client;
  readonly library: Library;
  /** What is really there for each of the tested, at the first day; 1000 is exactly the test. */
  readonly truth: number;
  /** The left side against the right. */
  readonly leftSide: number;
  /** Thousandths of capacity gained in each week of training. */
  readonly growth: number;
  /** Thousandths of capacity by which days differ, most of the time. */
  readonly daily: number;
  /** Reps by which the reserve said is off, most of the time, and how many too few are said on the whole. */
  readonly misjudges: { readonly by: number; readonly fewer: number };
  /** Of a hundred sessions, how many are done on their day. */
  readonly adherence: number;
  /** Calendar weeks, from 1, in which nothing is done. */
  readonly away: readonly number[];
  readonly hour: number;
  /** Of a hundred times, how often the reserve is said at all. */
  readonly says: number;
  /** Pain said after the first row of a pattern in a week. */
  readonly pains: readonly {
    readonly week: number;
    readonly of: string;
    readonly where: BodyPart;
    readonly degree: number;
  }[];
  /** Calendar week, from 1, on whose last day the coach writes that it is cleared. */
  readonly cleared: number | null;
}

const CASE = `# Somebody
invented

body mass: 74 kg
minutes: 60
kit: bells KIT; chair, wall, mat, step
test: goblet squat 16 kg × 10, 2 left
test: floor press left 12 kg × 8, 2 left
test: floor press right 12 kg × 9, 2 left
test: one-arm row left 16 kg × 8, 2 left
test: one-arm row right 16 kg × 9, 2 left
test: deadlift 24 kg × 10, 3 left
test: push-up × 10, 2 left

session A
goblet squat: 3 × 6–10; rest 90 s; slower allowed
floor press: 3 × 6–10 each side; rest 60 s; slower allowed
one-side carry: 2 × 20–40 m each side; rest 60 s

session B
deadlift: 3 × 6–10; rest 90 s; slower allowed
one-arm row: 3 × 6–10 each side; rest 60 s; slower allowed
plank: 2 × 20–40 s; rest 45 s

session C
push-up: 3 × 6–12; rest 60 s; slower allowed
goblet squat: 3 × 6–10; rest 90 s; slower allowed
one-arm row: 3 × 6–10 each side; rest 60 s; slower allowed

a careful coach would
- plan: made
`;

const FINE = '8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30, 32';
const COARSE = '8, 12, 16, 20, 24, 28';

const exercises = readLibrary();

function person(name: string, own: Partial<Omit<Person, 'name' | 'client' | 'library'>>, bells = FINE): Person {
  const read = readCase(name, CASE.replace('KIT', bells), exercises);
  return {
    name,
    client: { ...read.client, blocksBefore: 1 },
    library: read.library,
    truth: 1030,
    leftSide: 960,
    growth: 8,
    daily: 25,
    misjudges: { by: 1, fewer: 0.5 },
    adherence: 96,
    away: [],
    hour: 18,
    says: 90,
    pains: [],
    cleared: null,
    ...own,
  };
}

/** Sleeps, eats, comes; gains about twice what the plan counts on. */
export const THRIVES = person('thrives', { truth: 1040, growth: 11, adherence: 98 });

/** The same body with bells four kilograms apart. */
export const THRIVES_COARSELY = person('thrives-coarsely', { truth: 1040, growth: 11, adherence: 98 }, COARSE);

/** Tested on the best day of the year, gains nothing, and comes in three of four times. */
export const STALLS = person('stalls', { truth: 930, growth: 0, adherence: 78, says: 80, daily: 35 });

/** A knee that hurts in the squats of the third week and eases; the coach clears it in the sixth. */
export const HURT = person('hurt', {
  growth: 7,
  pains: [
    { week: 3, of: 'squat', where: 'knee', degree: 4 },
    { week: 4, of: 'squat', where: 'knee', degree: 2 },
    { week: 5, of: 'squat', where: 'knee', degree: 1 },
  ],
  cleared: 5,
});

/** Three weeks without a word, from the fourth. What was gained is partly lost. */
export const VANISHES = person('vanishes', { away: [4, 5, 6], adherence: 97 });

export const PEOPLE: readonly Person[] = [THRIVES, THRIVES_COARSELY, STALLS, HURT, VANISHES];

/** As the coach writes it down: the whole of it is cleared. */
export const clearedOn = (client: Client, iso: string): Client => ({
  ...client,
  observations: [
    ...client.observations,
    {
      date: on(iso),
      exercise: exerciseId('goblet-squat'),
      side: 'both',
      seen: 'cleared',
      means: { kind: 'cleared' },
      place: PLACE,
    },
  ],
});

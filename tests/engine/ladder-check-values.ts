/** Ladders worked out by hand, as the engine's page of the ladder has them. */
import type { WrittenLadder } from './ladder-notation.js';

export interface LadderCheck extends WrittenLadder {
  readonly why: string;
  readonly climb: string;
  readonly found?: string;
}

const SWINGS = '16: 8 9 10 | 20: 8 9 10';

export const LADDER_CHECKS: readonly LadderCheck[] = [
  {
    why: 'from the bottom, one session a week',
    rungs: SWINGS,
    weeks: '4 4 4 4 4 e2',
    climb: '8@16 · 8@16 · 9@16 · 9@16 · 10@16 · e 10@16',
  },
  {
    why: 'from the top of a load: a gate, then up again',
    rungs: SWINGS,
    start: 2,
    weeks: '4 4 4 4 4 e2',
    climb: '10@16 · 10@16 · gate 8@20 (10@16: 1, 2) else 10@16 · 8@20 else 10@16 · 9@20 else 10@16 · e 9@20 else 10@16',
  },
  {
    why: 'earned before the block',
    rungs: SWINGS,
    start: 2,
    earned: 2,
    weeks: '4 4 4 4 e2',
    climb:
      'gate 8@20 (10@16: before) else 10@16 · 8@20 else 10@16 · 9@20 else 10@16 · 9@20 else 10@16 · e 9@20 else 10@16',
  },
  {
    why: 'once earned already',
    rungs: '16: 8 9 10',
    earned: 1,
    weeks: '4 4 4 4',
    climb: '8@16 · 9@16 · 9@16 · 10@16',
  },
  {
    why: 'two sessions a week: a new load after different weeks, not only sessions',
    rungs: SWINGS,
    weeks: '4+4 4+4 4+4 4+4',
    climb: '8@16 · 8@16 · 9@16 · 9@16 · 10@16 · 10@16 · 10@16 · gate 8@20 (10@16: 3, 4) else 10@16',
  },
  {
    why: 'three sessions a week and one dose: no new load in the first week',
    rungs: '16: 8 | 20: 8',
    weeks: '3+3+3 3+3+3',
    climb: '8@16 · 8@16 · 8@16 · 8@16 · gate 8@20 (8@16: 1, 2) else 8@16 · 8@20 else 8@16',
  },
  {
    why: 'an easy week whose sets could not fall goes one rung lower, and leaves nothing behind',
    rungs: '-: 20s 25s 30s 35s',
    start: 1,
    weeks: '1 1 e1 1 1 e1',
    climb: '25s · 25s · e 20s · 30s · 30s · e 25s',
  },
  {
    why: 'by the minutes: sets are the signals of the longest rung, and fall as sets do',
    rungs: '16: 6min 8min 10min',
    start: 1,
    weeks: '10 10 10 10 10 e7',
    climb: '8min@16 · 8min@16 · 10min@16 · 10min@16 · 10min@16 · e 10min@16',
    found: 'ladder-top 5',
  },
  {
    why: 'never below its stage',
    rungs: '16: 10 | 20: 10m 20m',
    earned: 2,
    weeks: '2 e2 2',
    climb: 'gate 10m@20 (10@16: before) else 10@16 · e 10m@20 else 10@16 · 10m@20 else 10@16',
  },
  {
    why: 'no sets to compare with: a leading easy week stays on the start',
    rungs: '16: 8 9 10',
    start: 1,
    weeks: 'e2 4 4 4',
    climb: 'e 9@16 · 9@16 · 9@16 · 10@16',
  },
  {
    why: 'held: no rung up, and it counts for nothing',
    rungs: SWINGS,
    weeks: '4 4h 4h 4 4h 4',
    climb: '8@16 · 8@16 · 8@16 · 8@16 · 8@16 · 9@16',
  },
  {
    why: 'no gates: the last rung of the load stays',
    rungs: SWINGS,
    start: 2,
    gates: false,
    weeks: '4 4 4 e2',
    climb: '10@16 · 10@16 · 10@16 · e 10@16',
  },
  {
    why: 'one gate in an edition',
    rungs: '16: 10 | 20: 10 | 24: 10',
    weeks: '3 3 3 3 3 3',
    climb:
      '10@16 · 10@16 · gate 10@20 (10@16: 1, 2) else 10@16 · 10@20 else 10@16 · 10@20 else 10@16 · 10@20 else 10@16',
  },
  {
    why: 'the top, and nothing above it',
    rungs: '-: 20s 30s',
    weeks: '3 3 3 3 3 e2',
    way: 'hold',
    climb: '20s · 20s · 30s · 30s · 30s · e 30s',
    found: 'ladder-top 5',
  },
  {
    why: 'mobility has one rung, on purpose',
    rungs: '-: 8',
    way: 'mobility',
    weeks: '2 2 2 2 2 e2',
    climb: '8 · 8 · 8 · 8 · 8 · e 8',
  },
  {
    why: 'a coach who asks for three, and for easy weeks two lower',
    rungs: '40: 20m 25m 30m 35m',
    start: 1,
    rules: { earned: 3, weeks: 2, easyDown: 2 },
    weeks: '1 1 1 1 1 1 1 e1',
    climb: '25m@40 · 25m@40 · 25m@40 · 30m@40 · 30m@40 · 30m@40 · 35m@40 · e 25m@40',
  },
];

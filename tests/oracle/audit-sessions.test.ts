/** Sessions with the facts of their exercises: each check of minutes, short version, circuits and warm-ups speaks up. */
import { describe, expect, it } from 'vitest';
import { auditSessions } from './audit-sessions.js';
import { bell, exercises, type Fault, groupOf, itemOf, keyOf, planOf, sessionOf } from './plan-of-case.js';

const OF_SESSIONS: readonly Fault[] = [
  [
    'minutes too few',
    /6 minutes for \d+ s of work/,
    'short-version',
    (plan) => {
      sessionOf(plan).minutes = 6;
    },
  ],
  [
    'a set twice in the short version',
    /a set twice in the short version/,
    'short-version',
    (plan) => {
      const { short } = sessionOf(plan);
      short.sets = [...short.sets, ...short.sets.slice(0, 1)];
    },
  ],
  [
    'a short version of something else',
    /not in the session/,
    'short-version',
    (plan) => void sessionOf(plan).short.sets.push('9/9/other/both/work/1'),
  ],
  [
    'a short version that is long',
    /a short version of 12 minutes/,
    'short-version',
    (plan) => {
      sessionOf(plan).short.minutes = 12;
    },
  ],
  [
    'a short version that takes longer',
    /1 minutes for \d+ s of the short version/,
    'short-version',
    (plan) => {
      sessionOf(plan).short.minutes = 1;
    },
  ],
  [
    'a short version of nothing',
    /a short version without any work/,
    'short-version',
    (plan) => {
      sessionOf(plan).short.sets = [];
    },
  ],
  [
    'a test on a bad day',
    /a test on a bad day/,
    'tests-start-and-end',
    (plan) => {
      const test = itemOf(plan, 'straight').sets.find(({ kind }) => kind === 'test');
      sessionOf(plan).short.sets.push(test?.key ?? expect.fail('no test'));
    },
  ],
  [
    'a gate on a bad day',
    /stands behind a gate/,
    'short-version',
    (plan) => {
      const item = itemOf(plan, 'straight');
      const [first] = item.sets;
      if (first !== undefined) first.gate = { needs: { exercise: item.exercise, reps: 5, weeks: [1] } };
      sessionOf(plan).short.sets = [keyOf(item)];
    },
  ],
  [
    'too much in hand in a circuit',
    /3 pieces in hand over a circuit/,
    'circuit-two-hinges',
    (plan) => {
      for (const [index, load] of [bell('bell-1', 8000), bell('bell-2', 12_000), bell('bell-3', 16_000)].entries()) {
        const item = groupOf(plan, 'straight').items[index];
        for (const set of item?.sets ?? []) set.load = load;
      }
      groupOf(plan, 'straight').kind = 'circuit';
    },
  ],
  [
    'plates changed in a circuit',
    /plates of bar-1 are changed/,
    'circuit-replating',
    (plan) => {
      groupOf(plan, 'straight').kind = 'circuit';
    },
  ],
  [
    'hinges side by side',
    /deadlift and the next are hinges/,
    'circuit-two-hinges',
    (plan) => {
      groupOf(plan, 'straight').kind = 'circuit';
      for (const [index, exercise] of ['deadlift', 'hip-bridge'].entries()) {
        const item = groupOf(plan, 'circuit').items[index];
        if (item !== undefined) item.exercise = exercise;
      }
    },
  ],
  [
    'grip after grip',
    /both ask much of the grip/,
    'circuit-two-hinges',
    (plan) => {
      groupOf(plan, 'straight').kind = 'circuit';
      for (const item of groupOf(plan, 'circuit').items) item.exercise = 'two-side-carry';
    },
  ],
  [
    'hardly any warm-up',
    /a warm-up of 2 minutes/,
    'short-version',
    (plan) => {
      groupOf(plan, 'warm-up').minutes = 2;
    },
  ],
  [
    'a warm-up without end',
    /a warm-up of 20 minutes, of 8/,
    'short-version',
    (plan) => {
      groupOf(plan, 'warm-up').minutes = 20;
    },
  ],
  [
    'a loaded warm-up',
    /warms up with something in hand/,
    'short-version',
    (plan) => {
      for (const set of itemOf(plan, 'warm-up').sets) set.load = bell('bell-1', 8000);
    },
  ],
  [
    'swings to warm up',
    /two-hand-swing is no way to warm up/,
    'short-version',
    (plan) => {
      itemOf(plan, 'warm-up').exercise = 'two-hand-swing';
    },
  ],
  [
    'a warm-up again and again',
    /too many times through/,
    'short-version',
    (plan) => {
      for (const set of itemOf(plan, 'warm-up').sets) set.round = 9;
    },
  ],
  [
    'work in a warm-up',
    /work in a warm-up/,
    'short-version',
    (plan) => {
      for (const set of itemOf(plan, 'warm-up').sets) set.kind = 'work';
    },
  ],
  ['no warm-up', /no warm-up first/, 'short-version', (plan) => void sessionOf(plan).groups.shift()],
  [
    'no cool-down at seventy',
    /no cool-down/,
    'floor-trips',
    (plan) => {
      const session = sessionOf(plan);
      session.groups = session.groups.filter(({ kind }) => kind !== 'cool-down');
    },
  ],
];

describe('an audit of sessions', () => {
  it.each([...new Set(OF_SESSIONS.map(([, , of]) => of))])('finds nothing in %s', (name) => {
    expect(auditSessions(planOf(name), exercises)).toEqual([]);
  });

  it.each(OF_SESSIONS)('sees %s', (_name, found, of, spoil) => {
    const plan = planOf(of);
    spoil(plan);
    expect(auditSessions(plan, exercises).join('\n')).toMatch(found);
  });
});

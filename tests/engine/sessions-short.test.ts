/** The short version: a few of a session's own sets, within ten minutes, by the same clock. */
import { describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import type { Client } from '../../src/model/client.js';
import type { Exercise } from '../../src/model/exercise.js';
import { rowId } from '../../src/model/identity.js';
import type { Plan, PlanSession } from '../../src/model/plan.js';
import type { Programme } from '../../src/model/programme.js';
import {
  aBlock,
  aClient,
  aLibrary,
  anExercise,
  aProgramme,
  aRow,
  aSession,
  aTest,
  bells,
  bodyweight,
  kg,
  on,
} from './make-block.js';
import { type Overrides, overrides } from './make-session.js';

const named = ['squat', 'squat-2', 'push', 'pull'] as const;
const lifts: readonly Exercise[] = named.map((id) =>
  anExercise(id, { ...bodyweight, pattern: id === 'squat-2' ? 'squat' : id }),
);
const tests = named.map((id) => aTest(id, 12));
const row = (id: string) => aRow(id, { dose: { kind: 'sets', sets: 3, reps: { min: 10, max: 10 }, eachSide: false } });
const programme = (more: Partial<Programme> = {}, ids: readonly string[] = named) =>
  aProgramme([aSession('A', aBlock(ids.map(row)))], more);

function planOf(
  of: Programme,
  exercises: readonly Exercise[],
  client: Partial<Client> = {},
  values: Overrides = {},
): Plan {
  const { value, problems } = planBlock({
    library: aLibrary(exercises, of),
    client: aClient({ tests, ...client }),
    today: on('2026-12-20'),
    edition: 0,
    rulesOverridden: overrides(values),
  });
  if (value === null) throw new Error(JSON.stringify(problems));
  return value;
}
const sessions = (plan: Plan): readonly PlanSession[] => plan.weeks.flatMap((week) => week.sessions);
/** `row kind round`, a side at its end. */
const said = ({ short }: PlanSession): readonly string[] =>
  short.sets.map((key) => {
    const [, , of, side, kind, ordinal] = key.split('/');
    return `${of} ${kind} ${ordinal}${side === 'both' ? '' : ` ${side}`}`;
  });
/** Without the warm-up. */
const work = (session: PlanSession): readonly string[] => said(session).filter((one) => !one.startsWith('warm-up-'));
const first = (plan: Plan): PlanSession => sessions(plan)[0] ?? expect.fail('no session');
const shortOf = (...of: Parameters<typeof planOf>) => first(planOf(...of));

describe('the short version', () => {
  test('first a set each of the first row of every pattern, then another each, as long as it fits', () => {
    const session = shortOf(programme(), lifts);
    // Three minutes of walking. A set is 30 s, a rest 60 s, to the next 20 s: one set each is 150 s, two each 420 s;
    // a third of the squat makes 690 s in all, too many by 90.
    expect(work(session)).toEqual([
      'squat work 1',
      'squat work 2',
      'push work 1',
      'push work 2',
      'pull work 1',
      'pull work 2',
    ]);
    expect(session.short.minutes).toBe(10);
    expect(first(planOf(programme(), lifts, {}, { 'short-minutes': 8 })).short.minutes).toBeLessThanOrEqual(8);
  });

  test('rows that are never cut come in any case', () => {
    const session = shortOf(programme({ neverCut: [rowId('squat-2'), rowId('pull')] }), lifts);
    expect(new Set(work(session).map((one) => one.split(' ')[0]))).toEqual(new Set(['squat-2', 'push', 'pull']));
  });

  test('the first exercises of the warm-up, once, as many as fit in three minutes', () => {
    const drills = ['squat', 'push', 'pull'].map((pattern) =>
      anExercise(`m-${pattern}`, {
        ...bodyweight,
        way: 'mobility',
        pattern: 'mobility',
        rehearses: lifts.flatMap(({ id, facts }) => (id === pattern ? [facts.pattern] : [])),
      }),
    );
    const all = [...lifts, ...drills];
    const begins = (values: Overrides) =>
      said(shortOf(programme(), all, {}, values)).filter((one) => one.includes('warm-up'));
    // 30 s and 20 s each: three in 180 s, two in 120 s.
    expect(begins({})).toEqual(['squat', 'push', 'pull'].map((pattern) => `warm-up-m-${pattern} warm-up 1`));
    expect(begins({ 'short-warm-up': 2 })).toEqual(
      ['squat', 'push'].map((pattern) => `warm-up-m-${pattern} warm-up 1`),
    );
  });

  test('a lighter or a feeler set comes with the first set of its row', () => {
    const bell = [anExercise('squat'), anExercise('push', { pattern: 'push' })];
    const both = programme({}, ['squat', 'push']);
    const session = shortOf(both, bell, { tests: [aTest('squat', 12, { load: kg('16') })] });
    expect(work(session).slice(0, 2)).toEqual(['squat warm-up 1', 'squat work 1']);
    expect(said(session)).toContain('push feeler 1');
  });

  test('where the first row of a pattern does not fit, the next of it that does', () => {
    const long = lifts.map((lift) =>
      lift.id === 'squat'
        ? anExercise('squat', { ...bodyweight, tempo: { lower: 30, bottom: 0, lift: 30, top: 0 } })
        : lift,
    );
    const kept = new Set(work(shortOf(programme(), long, { minutes: 90 })).map((one) => one.split(' ')[0]));
    expect(kept).toEqual(new Set(['squat-2', 'push', 'pull']));
  });

  test('one side and the other are one set', () => {
    const sided = [anExercise('squat', { ...bodyweight, sides: 'each' })];
    expect(work(shortOf(programme({}, ['squat']), sided)).slice(0, 2)).toEqual([
      'squat work 1 left',
      'squat work 1 right',
    ]);
  });

  test('circuits go round by round', () => {
    const rounds = aProgramme([aSession('A', aBlock(['push', 'pull'].map(row), { kind: 'circuit', rounds: 3 }))]);
    expect(work(shortOf(rounds, lifts)).slice(0, 4)).toEqual([
      'push work 1',
      'pull work 1',
      'push work 2',
      'pull work 2',
    ]);
  });

  test('never a trial, and nothing of a row behind a gate that day', () => {
    const bell = [anExercise('squat'), anExercise('push', { ...bodyweight, pattern: 'push' })];
    const both = aProgramme([
      aSession(
        'A',
        aBlock([
          aRow('squat', { dose: { kind: 'sets', sets: 4, reps: { min: 5, max: 9 }, eachSide: false } }),
          aRow('push'),
        ]),
      ),
    ]);
    const known = [aTest('squat', 9, { load: kg('24'), reserve: 30 }), aTest('push', 12)];
    const plan = planOf(both, bell, { kit: bells('20', '24', '28', '32'), tests: known }, { 'gain-trained': 100 });
    const kinds = sessions(plan).map(({ groups }) =>
      groups.flatMap(({ items }) => items.find((item) => item.row === 'squat')?.sets ?? []),
    );
    expect(kinds.some((sets) => sets.some(({ kind }) => kind === 'trial'))).toBe(true);
    expect(kinds.some((sets) => sets.some(({ gate }) => gate !== undefined))).toBe(true);
    for (const session of sessions(plan)) {
      const own = session.groups.flatMap(({ items }) => items);
      const gated = own.filter(({ sets }) => sets.some(({ gate }) => gate !== undefined)).map((item) => item.row);
      for (const one of said(session)) {
        expect(one).not.toContain('trial');
        expect(gated).not.toContain(one.split(' ')[0]);
      }
    }
  });

  test('never a test', () => {
    const session = shortOf(programme({ tests: [rowId('squat')] }), lifts);
    expect(session.groups.some(({ items }) => items.some(({ sets }) => sets.some(({ kind }) => kind === 'test')))).toBe(
      true,
    );
    expect(said(session).filter((one) => one.includes('test'))).toEqual([]);
  });
});

/** Who is withheld, and what a plan becomes of what screening comes to. The published tables are checked beside it. */
import { describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import type { Answer, Client, Condition } from '../../src/model/client.js';
import type { Plan } from '../../src/model/plan.js';
import { PLACE } from './generate-exercises.js';
import {
  aBlock,
  aClient,
  aLibrary,
  anExercise,
  aProgramme,
  aRow,
  aSession,
  aSignOff,
  ask,
  aTest,
  bells,
  kg,
  on,
  oneSession,
} from './make-block.js';

const library = aLibrary([anExercise('squat')], oneSession('squat'));
const tests = [aTest('squat', 10, { load: kg('16') })];
const today = on('2026-12-20');

/** The codes with which this client is withheld; none where the plan stands. */
function withheld(client: Partial<Client>): readonly string[] {
  const { value, problems } = planBlock({ library, client: aClient({ tests, ...client }), today, edition: 0 });
  const errors = problems.filter(({ severity }) => severity === 'error');
  expect(value === null).toBe(errors.length > 0);
  for (const { scope } of problems) expect(scope).toEqual({ kind: 'client', client: 'somebody' });
  return errors.map(({ code }) => code);
}

const answers = (regularExercise: Answer, knownDisease: Answer, symptoms: Answer): Partial<Client> => ({
  screening: { date: on('2026-12-01'), regularExercise, knownDisease, symptoms, place: PLACE },
});
const clearance = (work: 'moderate' | 'vigorous', until?: string): Partial<Client> => ({
  clearance: { by: 'Dr', date: on('2026-11-01'), for: work, ...(until === undefined ? {} : { until: on(until) }) },
});

describe('who is withheld', () => {
  test('symptoms, disease without regular exercise or clearance; never where a moderate plan is right', () => {
    expect(withheld(answers('yes', 'no', 'yes'))).toEqual(['symptoms']);
    expect(withheld(answers('no', 'yes', 'no'))).toEqual(['clearance-needed']);
    expect(withheld({ ...answers('no', 'yes', 'no'), ...clearance('moderate') })).toEqual([]);
    expect(withheld(answers('yes', 'yes', 'no'))).toEqual([]);
  });

  test('what was seen, asked or passed is dated today at the latest; a caution may lie ahead', () => {
    const ahead = on('2026-12-21');
    const squat = anExercise('squat').id;
    const dated: readonly (readonly [Partial<Client>, boolean])[] = [
      [{ tests: [aTest('squat', 10, { load: kg('16'), date: ahead })] }, false],
      [{ signOffs: [{ exercise: squat, date: ahead, by: 'Nobody', place: PLACE }] }, false],
      [{ bodyMass: { mass: kg('70'), date: ahead } }, false],
      [{ clearance: { by: 'Dr', date: ahead, for: 'vigorous' } }, true],
      [{ health: { bloodPressure: { systolic: 120, diastolic: 80, date: ahead, cuff: false, place: PLACE } } }, false],
    ];
    const found = (client: Partial<Client>) =>
      planBlock({ library, client: aClient({ tests, ...client }), today, edition: 0 }).problems;
    for (const [client, unsafe] of dated) {
      const [problem, ...more] = found(client);
      expect(problem).toMatchObject({ code: 'date-in-future', severity: 'error', data: { date: '2026-12-21' } });
      expect(problem?.unsafe === true).toBe(unsafe);
      expect(more).toEqual([]);
    }
    const caution = { what: 'hip', degree: 'take care', side: 'both', from: ahead, by: 'Nobody' } as const;
    expect(found({ cautions: [{ ...caution, phases: [], place: PLACE }] })).toEqual([]);
  });

  test('a block that is over is warned of once, where its start stands, and planned all the same', () => {
    const starts = { ...PLACE, line: 3 };
    const over = (iso: string) =>
      planBlock({ library, client: aClient({ tests, places: { starts } }), today: on(iso), edition: 0 });
    expect(over('2027-02-14').problems).toEqual([]);
    const { value, problems } = over('2027-02-15');
    expect(value).not.toBeNull();
    expect(problems).toMatchObject([
      { code: 'block-ended', severity: 'warning', data: { ends: '2027-02-14' }, place: starts },
    ]);
  });

  test('unclear, missing or old answers are asked for', () => {
    expect(withheld(answers('unknown', 'no', 'no'))).toEqual(['screening-unclear']);
    expect(withheld(answers('yes', 'unknown', 'no'))).toContain('screening-unclear');
    const { screening: _, ...unasked } = aClient({ tests });
    const { problems } = planBlock({ library, client: unasked, today, edition: 0 });
    expect(problems.map(({ code }) => code)).toEqual(['screening-missing']);
    const asked = (iso: string): Partial<Client> => ({
      screening: { date: on(iso), regularExercise: 'yes', knownDisease: 'no', symptoms: 'no', place: PLACE },
    });
    expect(withheld(asked('2026-01-04'))).toEqual([]);
    expect(withheld(asked('2026-01-03'))).toEqual(['screening-out-of-date']);
    expect(withheld(asked('2026-12-21'))).toEqual(['date-in-future']);
  });
});

describe('age', () => {
  test('the youngest the birth year allows must be 18', () => {
    expect(withheld({ birthYear: 2008 })).toEqual([]);
    expect(withheld({ birthYear: 2009 })).toEqual(['under-age']);
  });
});

describe('what no rule reads yet', () => {
  test.each<[string, Partial<Client>]>([
    ['a fact', { unhandled: [{ fact: 'medicines', place: PLACE }] }],
    ['a language no booklet speaks', { language: 'vi' }],
    ['one that is near to one it speaks', { language: 'nn' }],
  ])('%s', (_, client) => {
    expect(withheld(client)).toEqual(['not-handled']);
  });

  test.each(['en', 'en-GB', 'EN-us', 'nb', 'nb-NO', 'no'])('a booklet speaks %s', (language) => {
    expect(withheld({ language })).toEqual([]);
  });

  test('matters of safety withdraw an earlier booklet', () => {
    const unsafe = (client: Partial<Client>) =>
      planBlock({ library, client: aClient({ tests, ...client }), today, edition: 0 }).problems.map((p) => p.unsafe);
    expect(unsafe(answers('yes', 'no', 'yes'))).toEqual([true]);
    expect(unsafe({ birthYear: 2009 })).toEqual([true]);
    expect(unsafe({ unhandled: [{ fact: 'medicines', place: PLACE }] })).toEqual([undefined]);
  });
});

describe('what a plan becomes of it', () => {
  const plan = (client: Partial<Client>): Plan => {
    const planned = planBlock({ library, client: aClient({ tests, ...client }), today, edition: 0 });
    if (planned.value === null) throw new Error(JSON.stringify(planned.problems));
    return planned.value;
  };
  const dates = ({ weeks }: Plan) => weeks.flatMap(({ sessions }) => sessions.map(({ date }) => date));
  const items = ({ weeks }: Plan) =>
    weeks.flatMap(({ sessions }) => sessions.flatMap(({ groups }) => groups.flatMap((group) => group.items)));

  test('sessions stop where a clearance ends, and the plan says so', () => {
    const { weeks, ...stopped } = plan({ ...answers('yes', 'yes', 'no'), ...clearance('vigorous', '2027-01-18') });
    expect(dates({ weeks, ...stopped })).toEqual(['2027-01-04', '2027-01-11', '2027-01-18']);
    expect(weeks.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5, 6]);
    expect(stopped.stops).toEqual({ after: '2027-01-18', because: 'clearance' });
    expect(stopped.findings.some(({ rule, audience }) => rule === 'clearance-warned' && audience === 'client')).toBe(
      true,
    );
    const whole = plan({ ...answers('yes', 'yes', 'no'), ...clearance('vigorous') });
    expect(dates(whole)).toHaveLength(6);
    expect(whole.stops).toBeUndefined();
  });

  test('a moderate plan leaves 4 reps in every week, and has neither gate nor trial', () => {
    const heavy = {
      library: aLibrary(
        [anExercise('squat')],
        aProgramme([
          aSession(
            'A',
            aBlock([aRow('squat', { dose: { kind: 'sets', sets: 4, reps: { min: 5, max: 9 }, eachSide: false } })]),
          ),
        ]),
      ),
      kit: bells('20', '24', '28', '32'),
      tests: [aTest('squat', 9, { load: kg('24'), reserve: 30 })],
    };
    const of = (client: Partial<Client>): Plan => {
      const { library: shelf, ...facts } = heavy;
      const { value } = planBlock({ library: shelf, client: aClient({ ...facts, ...client }), today, edition: 0 });
      if (value === null) throw new Error('withheld');
      return value;
    };
    const vigorous = of({ ...answers('yes', 'yes', 'no'), ...clearance('vigorous') });
    const moderate = of(answers('yes', 'yes', 'no'));
    const least = (of: Plan) =>
      Math.min(...items(of).flatMap(({ sets }) => sets.flatMap(({ reserve }) => reserve ?? [])));
    expect(least(vigorous)).toBeLessThan(40);
    expect(least(moderate)).toBeGreaterThanOrEqual(40);
    const sets = items(moderate).flatMap((item) => item.sets);
    expect(sets.filter(({ kind, gate }) => kind === 'trial' || gate !== undefined)).toEqual([]);
    const free = items(vigorous).flatMap((item) => item.sets);
    expect(free.some(({ kind, gate }) => kind === 'trial' || gate !== undefined)).toBe(true);
    expect(moderate.inputs.standing.moderate).toBe(true);
    expect(moderate.inputs.floors).toContainEqual({ rule: 'floor-moderate', reserve: 40, weeks: [1, 2, 3, 4, 5, 6] });
  });

  test('a moderate plan has nothing fast', () => {
    const fast = anExercise('squat', { asks: [ask('speed', 'much')] });
    const signed = { tests, signOffs: [aSignOff('squat', { upTo: kg('24') })] };
    const refusedFor = (client: Partial<Client>) =>
      planBlock({
        library: aLibrary([fast], oneSession('squat')),
        client: aClient({ ...signed, ...client }),
        today,
        edition: 0,
      }).problems.flatMap((problem) =>
        problem.code === 'no-version-allowed' ? problem.data.refused.map(({ cause }) => cause) : [],
      );
    expect(refusedFor(answers('yes', 'no', 'no'))).toEqual([]);
    expect(refusedFor(answers('yes', 'yes', 'no'))).toEqual(['moderate']);
  });

  test('without regular exercise the first two weeks leave 4 reps', () => {
    const { floors } = plan(answers('no', 'no', 'no')).inputs;
    expect(floors).toContainEqual({ rule: 'floor-begins', reserve: 40, weeks: [1, 2] });
  });

  test('a caution that follows from a fact of health refuses like the coach’s own, and is listed', () => {
    const deep = aLibrary([anExercise('squat', { asks: [ask('loaded bend', 'some')] })], oneSession('squat'));
    const judged = (conditions: readonly Condition[]) =>
      planBlock({
        library: deep,
        client: aClient({ tests, health: { medicines: [], conditions } }),
        today,
        edition: 0,
      });
    expect(judged(['vertebral fracture']).problems.map(({ code }) => code)).toContain('no-version-allowed');
    const { value } = judged(['low bone density']);
    expect(value?.inputs.standing.derived).toContainEqual({
      rule: 'bone-bend',
      what: 'loaded bend',
      degree: 'take care',
    });
    expect(value?.inputs.standing.health).toContainEqual({ fact: 'conditions', value: 'low bone density' });
  });
});

/**
 * Who is withheld, and why. The six boxes are those of the published pre-participation algorithm (Riebe et al. 2015,
 * Med Sci Sports Exerc 47:2473-2479, figure 2), with a resistance block counted as vigorous.
 */
import { describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import type { Answer, Client } from '../../src/model/client.js';
import { clientId } from '../../src/model/identity.js';
import { PLACE } from './generate-exercises.js';
import { aClient, aLibrary, anExercise, aTest, kg, on, oneSession } from './make-block.js';

const library = aLibrary([anExercise('squat')], oneSession('squat'));
const tests = [aTest('squat', 10, { load: kg('16') })];
const today = on('2026-12-20');

/** The codes with which this client is withheld; none where the plan stands. */
function withheld(client: Partial<Client>): readonly string[] {
  const { value, problems } = planBlock({ library, client: aClient({ tests, ...client }), today, edition: 0 });
  expect(value === null).toBe(problems.length > 0);
  for (const problem of problems) {
    expect(problem.severity).toBe('error');
    expect(problem.scope).toEqual({ kind: 'client', client: 'somebody' });
  }
  return problems.map(({ code }) => code);
}

const answers = (regularExercise: Answer, knownDisease: Answer, symptoms: Answer): Partial<Client> => ({
  screening: { date: on('2026-12-01'), regularExercise, knownDisease, symptoms, place: PLACE },
});
const clearance = (work: 'moderate' | 'vigorous', until?: string): Partial<Client> => ({
  clearance: { by: 'Dr', date: on('2026-11-01'), for: work, ...(until === undefined ? {} : { until: on(until) }) },
});

describe('the six boxes', () => {
  test.each<[Answer, Answer, Answer, readonly string[]]>([
    ['no', 'no', 'no', []],
    ['no', 'yes', 'no', ['clearance-needed']],
    ['no', 'no', 'yes', ['symptoms']],
    ['no', 'yes', 'yes', ['symptoms']],
    ['yes', 'no', 'no', []],
    ['yes', 'yes', 'no', ['moderate-only']],
    ['yes', 'no', 'yes', ['symptoms']],
    ['yes', 'yes', 'yes', ['symptoms']],
  ])('regular %s, disease %s, symptoms %s: %j', (regular, disease, symptoms, codes) => {
    expect(withheld(answers(regular, disease, symptoms))).toEqual(codes);
  });

  test('clearance for vigorous work lets a regular exerciser with disease go on; it does not make a beginner one', () => {
    expect(withheld({ ...answers('yes', 'yes', 'no'), ...clearance('vigorous') })).toEqual([]);
    expect(withheld({ ...answers('no', 'yes', 'no'), ...clearance('vigorous') })).toEqual(['moderate-only']);
    expect(withheld({ ...answers('yes', 'yes', 'no'), ...clearance('moderate') })).toEqual(['moderate-only']);
    expect(withheld({ ...answers('yes', 'no', 'no'), ...clearance('moderate') })).toEqual(['moderate-only']);
  });

  test('no clearance answers symptoms', () => {
    expect(withheld({ ...answers('yes', 'no', 'yes'), ...clearance('vigorous') })).toEqual(['symptoms']);
  });

  test('a clearance must last to the last session, and no longer than a year', () => {
    expect(withheld({ ...answers('yes', 'yes', 'no'), ...clearance('vigorous', '2027-02-08') })).toEqual([]);
    expect(withheld({ ...answers('yes', 'yes', 'no'), ...clearance('vigorous', '2027-02-07') })).toEqual([
      'clearance-lapses',
    ]);
    const old = { clearance: { by: 'Dr', date: on('2026-02-07'), for: 'vigorous' } } as const;
    expect(withheld({ ...answers('yes', 'yes', 'no'), ...old })).toEqual(['clearance-lapses']);
  });

  test('what was seen, asked or passed is dated today at the latest; a caution may lie ahead', () => {
    const ahead = on('2026-12-21');
    const squat = anExercise('squat').id;
    const dated: readonly (readonly [Partial<Client>, boolean])[] = [
      [{ tests: [aTest('squat', 10, { load: kg('16'), date: ahead })] }, false],
      [{ signOffs: [{ exercise: squat, date: ahead, by: 'Nobody', place: PLACE }] }, false],
      [{ bodyMass: { mass: kg('70'), date: ahead } }, false],
      [{ clearance: { by: 'Dr', date: ahead, for: 'vigorous' } }, true],
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
    ['an observation', { observations: [{ date: today, side: 'both', seen: 'hurries', place: PLACE }] }],
    ['a partner', { partner: clientId('another') }],
    ['replanning on the phone', { replanning: 'within bounds' }],
  ])('%s', (_, client) => {
    expect(withheld(client)).toEqual(['not-handled']);
  });

  test('matters of safety withdraw an earlier booklet', () => {
    const unsafe = (client: Partial<Client>) =>
      planBlock({ library, client: aClient({ tests, ...client }), today, edition: 0 }).problems.map((p) => p.unsafe);
    expect(unsafe(answers('yes', 'no', 'yes'))).toEqual([true]);
    expect(unsafe({ birthYear: 2009 })).toEqual([true]);
    expect(unsafe({ partner: clientId('another') })).toEqual([undefined]);
  });
});

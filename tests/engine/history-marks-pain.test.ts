/** Pain as it is said, by its bands; a sign of alarm, which stands outside them. */
import { describe, expect, it, test } from 'vitest';
import { exercisesById } from '../../src/engine/block-context.js';
import { painBand } from '../../src/engine/history/marks/pain.js';
import { NO_RECALL, type Recall, type Remembered } from '../../src/engine/history/recall.js';
import { remember } from '../../src/engine/history/remember.js';
import { planBlock } from '../../src/engine/plan-block.js';
import { layOverrides, listRulebook } from '../../src/engine/rulebook.js';
import type { Client, Observation } from '../../src/model/client.js';
import { addDays, isoOfDay } from '../../src/model/day.js';
import type { History } from '../../src/model/history.js';
import { exerciseId } from '../../src/model/identity.js';
import { ALARM_SIGNS, type PainReport } from '../../src/model/log.js';
import { sayReason } from '../../src/words/say-reason.js';
import { speechOf } from '../../src/words/speech.js';
import { PLACE } from './generate-exercises.js';
import {
  aClient,
  aLibrary,
  aLink,
  anExercise,
  aSignOff,
  ask,
  aTest,
  bodyweight,
  kg,
  on,
  oneSession,
} from './make-block.js';
import { aHistory, alike, aMarkedRow, aSessionDone } from './make-history.js';

const today = on('2026-12-28');
const said = on('2026-12-23');
const chair = anExercise('chair', { ...bodyweight });
const box = anExercise('box', { ...bodyweight, asks: [ask('knee')] });
const squat = anExercise('squat', {
  asks: [ask('knee')],
  easier: [aLink('box', ['load']), aLink('chair', ['knee'])],
});
const bar = anExercise('bar', { asks: [ask('hip')], signOff: true });
const lunge = anExercise('lunge', { asks: [ask('knee')], signOff: true });
const ALL = [squat, chair, box, bar, lunge];
const rules = layOverrides([]).value;

const pain = (degree: number, more: Partial<PainReport> = {}): PainReport => ({ where: 'knee', degree, ...more });
const hurt = (report: PainReport, exercise = 'squat', day = said): History =>
  aHistory(aSessionDone(day, [aMarkedRow(exercise, { sets: alike(3, { kg: 16, reps: 8 }), left: 2, pain: [report] })]));
const cleared = (date: string, exercise?: string): Observation => ({
  date: on(date),
  ...(exercise === undefined ? {} : { exercise: exerciseId(exercise) }),
  side: 'both',
  seen: 'cleared',
  means: { kind: 'cleared' },
  place: PLACE,
});

const recalled = (history: History, client: Partial<Client> = {}): Remembered =>
  remember({ client: aClient(client), history, exercises: exercisesById(ALL), rules, today });
const recallOf = ({ recalls }: Remembered, id = 'squat'): Recall => recalls.get(exerciseId(id)) ?? NO_RECALL;

describe('bands, at every boundary', () => {
  test.each([
    [0, 'gentle', 'easier'],
    [1, 'gentle', 'easier'],
    [2, 'gentle', 'easier'],
    [3, 'easier', 'leave'],
    [4, 'leave', 'leave'],
    [5, 'leave', 'leave'],
    [6, 'leave', 'leave'],
    [7, 'leave', 'leave'],
    [8, 'leave', 'leave'],
    [9, 'leave', 'leave'],
    [10, 'leave', 'leave'],
  ] as const)('%i of 10: %s, and %s where it was worse the next morning', (degree, band, worse) => {
    expect(painBand(pain(degree), rules)).toBe(band);
    expect(painBand(pain(degree, { worseNextMorning: true }), rules)).toBe(worse);
  });

  it('are not for a coach to move', () => {
    const bounds = new Map<string, unknown>(
      listRulebook([]).flatMap(({ entries }) => entries.map((entry) => [`${entry.rule.id}`, entry.bounds] as const)),
    );
    for (const id of ['pain-gentle', 'pain-easier', 'pain-leave', 'pain-next-morning', 'pain-alarm', 'pain-sign-off']) {
      expect([id, bounds.get(id)]).toEqual([id, null]);
    }
    // More careful, and never less.
    expect(bounds.get('pain-back')).toEqual({ least: 1, most: 4 });
  });

  it('are nowhere above the published ones: 2 and 5 of 10 (Thomeé 1997), 5 of 10 (Silbernagel et al. 2007)', () => {
    const most = (band: string) =>
      Math.max(
        ...Array.from({ length: 11 }, (_, degree) => degree).filter((one) => painBand(pain(one), rules) === band),
      );
    expect(most('gentle')).toBeLessThanOrEqual(2);
    expect(most('easier')).toBeLessThanOrEqual(5);
  });
});

describe('pain-gentle and pain-easier: while it holds', () => {
  test.each([
    ['pain-gentle', 2, null],
    ['pain-easier', 3, { day: said, under: 16_000, lighter: 1 }],
  ] as const)('%s: held for 14 days', (rule, degree, sore) => {
    const recall = recallOf(recalled(hurt(pain(degree))));
    expect(recall.hold).toEqual({ until: addDays(said, 14), why: 'pain', maxReps: null });
    expect([recall.sore, recall.lighter]).toEqual([sore, 0]);
    expect(recall.leave).toBeNull();
    expect(recall.reasons.map((reason) => `${reason.rule}`)).toContain(rule);
  });

  test.each([
    [14, true],
    [15, false],
  ])('said %i days ago: %s', (days, holds) => {
    expect(recallOf(recalled(hurt(pain(2), 'squat', addDays(today, -days)))).hold !== null).toBe(holds);
  });

  it('pain-easier takes care with that part for as long, on that side', () => {
    const { client } = recalled(hurt(pain(3, { side: 'left' })));
    expect(client.cautions).toMatchObject([
      { what: 'knee', degree: 'take care', side: 'left', from: said, until: addDays(said, 14) },
    ]);
    expect(recalled(hurt(pain(2))).client.cautions).toEqual([]);
    expect(recalled(hurt(pain(3, { where: 'elsewhere' }))).client.cautions).toEqual([]);
  });

  it('pain-next-morning is told as such', () => {
    const recall = recallOf(recalled(hurt(pain(2, { worseNextMorning: true }))));
    expect(recall.reasons.map((reason) => `${reason.rule}`)).toEqual(
      expect.arrayContaining(['pain-easier', 'pain-next-morning']),
    );
  });

  it('of a whole session is of what asks that part, or of everything', () => {
    const rows = ['squat', 'bar'].map((id) => aMarkedRow(id, { sets: alike(3, { kg: 16, reps: 8 }), left: 2 }));
    const whole = (where: PainReport['where']) => {
      const remembered = recalled(aHistory(aSessionDone(said, rows, { pain: [pain(2, { where })] })));
      return ['squat', 'bar'].filter((id) => recallOf(remembered, id).hold !== null);
    };
    expect(whole('knee')).toEqual(['squat']);
    expect(whole('shoulder')).toEqual(['squat', 'bar']);
    expect(whole('elsewhere')).toEqual(['squat', 'bar']);
  });
});

describe('pain-leave: until the coach has cleared it', () => {
  test.each([
    ['however long ago', '2026-03-01', [], true],
    ['cleared that day', '2026-12-23', [cleared('2026-12-23')], false],
    ['cleared before it', '2026-12-23', [cleared('2026-12-22')], true],
    ['cleared for that exercise', '2026-12-23', [cleared('2026-12-24', 'squat')], false],
    ['cleared for another', '2026-12-23', [cleared('2026-12-24', 'bar')], true],
    ['cleared on a day to come', '2026-12-23', [cleared('2026-12-29')], true],
  ] as const)('%s', (_, day, observations, left) => {
    const remembered = recalled(hurt(pain(4), 'squat', on(day)), { observations });
    expect(recallOf(remembered).leave !== null).toBe(left);
    expect(remembered.findings.map(({ rule }) => rule).includes('pain-leave')).toBe(left);
  });

  const planOf = (
    report: PainReport,
    exercises = ALL,
    programme = oneSession('squat', 'bar'),
    client: Partial<Client> = {},
  ) =>
    planBlock({
      library: aLibrary(exercises, programme),
      client: aClient({
        tests: ['squat', 'bar', 'chair'].map((id) => aTest(id, 12, id === 'chair' ? {} : { load: kg('16') })),
        signOffs: [aSignOff('bar', { upTo: kg('24') })],
        ...client,
      }),
      today,
      edition: 0,
      history: hurt(report),
    });
  const exercisesIn = (result: ReturnType<typeof planOf>) => [
    ...new Set(
      (result.value?.weeks ?? []).flatMap(({ sessions }) =>
        sessions.flatMap(({ groups }) =>
          groups.flatMap(({ kind, items }) => (kind === 'straight' ? items.map(({ exercise }) => `${exercise}`) : [])),
        ),
      ),
    ),
  ];

  it('another version takes its place that asks nothing of that part', () => {
    expect(exercisesIn(planOf(pain(3)))).toContain('squat');
    const left = planOf(pain(4));
    expect(exercisesIn(left)).toEqual(['chair', 'bar']);
    const [first] = left.value?.weeks[0]?.sessions[0]?.groups.find(({ kind }) => kind === 'straight')?.items ?? [];
    const reasons = first?.reasons.map(({ rule }) => `${rule}`) ?? [];
    expect(reasons).toContain('pain-leave');
    // What was lifted in what is left out sets nothing here.
    expect(reasons).not.toContain('done-median');
    expect(left.problems).toEqual([]);
  });

  it('else the row is left out, and nobody is withheld for it', () => {
    const alone = planOf(pain(4), [anExercise('squat', { asks: [ask('knee')] }), bar]);
    expect(alone.problems).toEqual([]);
    expect(exercisesIn(alone)).toEqual(['bar']);
    expect(alone.value?.findings.map(({ rule }) => rule)).toContain('pain-leave');
  });

  it('even where nothing else is left', () => {
    const alone = planOf(pain(4), [anExercise('squat', { asks: [ask('knee')] })], oneSession('squat'));
    expect(alone.problems.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(exercisesIn(alone)).toEqual([]);
  });

  it('opens with the coach’s word', () => {
    const open = planOf(pain(4), ALL, oneSession('squat', 'bar'), { observations: [cleared('2026-12-24')] });
    expect(exercisesIn(open)).toContain('squat');
  });
});

describe('pain-back: lighter and held, once it is cleared', () => {
  const long = on('2026-11-25');
  const backOf = (report: PainReport, observations: readonly Observation[], id = 'squat', since: History[] = []) => {
    const { sessions } = hurt(report, 'squat', long);
    const history = aHistory(...sessions, ...since.flatMap((one) => one.sessions));
    const { sore, hold, reasons } = recallOf(recalled(history, { observations }), id);
    return { sore, until: hold?.until ?? null, rules: [...new Set(reasons.map(({ rule }) => `${rule}`))] };
  };
  const NOTHING = { sore: null, until: null };

  test.each([
    ['3 of 10', pain(3), false],
    ['3 of 10, worse the next morning', pain(3, { worseNextMorning: true }), true],
    ['4 of 10', pain(4), true],
  ])('%s', (_, report, back) => {
    const day = on('2026-12-24');
    const found = backOf(report, [cleared('2026-12-24')]);
    expect(found.rules.includes('pain-back')).toBe(back);
    expect(found).toMatchObject(back ? { sore: { day, under: 16_000, lighter: 1 }, until: on('2027-01-07') } : NOTHING);
  });

  test.each([
    [0, true],
    [14, true],
    [15, false],
  ])('cleared %i days ago, and done since: %s', (days, back) => {
    const day = addDays(today, -days);
    const since = hurt(pain(0), 'squat', today);
    const again = aHistory(
      ...since.sessions.map((session) => ({ ...session, rows: session.rows.map((row) => ({ ...row, pain: [] })) })),
    );
    expect(backOf(pain(4), [cleared(isoOfDay(day))], 'squat', [again])).toMatchObject(
      back ? { sore: { day, under: 16_000 }, until: addDays(day, 14) } : NOTHING,
    );
  });

  it('lighter until it has been done again, however long ago it was cleared, and no longer held', () => {
    const found = backOf(pain(4), [cleared('2026-12-01')]);
    expect(found).toMatchObject({ sore: { day: on('2026-12-01'), under: null, lighter: 1 }, until: null });
    expect(found.rules).toContain('pain-back');
  });

  it('from the first day it was cleared, and not while it hurts again', () => {
    const twice = [cleared('2026-12-20'), cleared('2026-12-24')];
    expect(backOf(pain(4), twice).sore?.day).toBe(on('2026-12-20'));
    const again = backOf(pain(4), twice, 'squat', [hurt(pain(4), 'squat', on('2026-12-26'))]);
    expect(again.rules).not.toContain('pain-back');
  });

  it('what was cleared for one exercise, of that one; an alarm, of everything', () => {
    expect(backOf(pain(4), [cleared('2026-12-24', 'squat')], 'bar')).toMatchObject(NOTHING);
    const alarm = pain(0, { alarm: 'fainting' });
    for (const id of ['squat', 'bar', 'chair']) {
      expect(backOf(alarm, [cleared('2026-12-24')], id)).toMatchObject({
        until: on('2027-01-07'),
        rules: expect.arrayContaining(['pain-back']),
      });
    }
  });

  it('of pain that the coach saw, too', () => {
    const seen: Observation = {
      ...cleared('2026-12-20', 'squat'),
      seen: 'knee pain 4',
      means: { kind: 'pain', where: 'knee', degree: 4 },
    };
    const { sore } = recallOf(recalled(aHistory(), { observations: [seen, cleared('2026-12-24')] }));
    expect(sore).toEqual({ day: on('2026-12-24'), under: null, lighter: 1 });
  });

  it('says so to both', () => {
    const speech = speechOf('en-GB');
    const said = (report: PainReport) =>
      recallOf(recalled(hurt(report, 'squat', long), { observations: [cleared('2026-12-24')] }))
        .reasons.filter(({ rule }) => rule === 'pain-back')
        .map((reason) => sayReason(reason, reason.audience, speech).replaceAll(/\p{Zs}/gu, ' '));
    expect(said(pain(4))).toEqual([
      'You are back at this after a while, so it starts lighter. Stop if it hurts.',
      'Pain of 4 in the knee on 25 November 2026 in the squat was cleared on 24 December 2026: it begins one load lighter than it was done last, as far as there is a lighter one, and nothing is made harder until 7 January 2027.',
    ]);
    expect(said(pain(0, { alarm: 'fainting' }))[1]).toContain(
      'A sign of alarm on 25 November 2026 was cleared on 24 December 2026: it begins one load lighter',
    );
  });
});

describe('pain-sign-off: passed again, or cleared', () => {
  const signedOff = (report: PainReport, exercise: string, date: string, observations: readonly Observation[] = []) =>
    recalled(hurt(report, exercise), { signOffs: [aSignOff(exercise, { date: on(date) })], observations }).client
      .signOffs.length;

  test.each([
    ['3 of 10', pain(3), 'lunge', '2026-12-01', 1],
    ['4 of 10', pain(4), 'lunge', '2026-12-01', 0],
    ['signed off again since', pain(4), 'lunge', '2026-12-24', 1],
    ['an alarm of any degree', pain(0, { alarm: 'fainting' }), 'lunge', '2026-12-01', 0],
    ['where none is needed, how far it was passed still counts', pain(6), 'squat', '2026-12-01', 1],
  ] as const)('%s', (_, report, exercise, date, left) => {
    expect(signedOff(report, exercise, date)).toBe(left);
  });

  it('the coach’s word gives it back', () => {
    expect(signedOff(pain(4), 'lunge', '2026-12-01', [cleared('2026-12-24')])).toBe(1);
  });
});

describe('pain-alarm: one sign, and nothing is planned', () => {
  const problemsOf = (history: History, observations: readonly Observation[] = []) =>
    recalled(history, { observations }).problems;

  test.each(ALARM_SIGNS)('%s, whatever the degree', (alarm) => {
    const found = problemsOf(hurt(pain(0, { alarm })));
    expect(found).toMatchObject([
      { code: 'alarm-reported', severity: 'error', unsafe: true, data: { signs: [alarm], date: '2026-12-23' } },
    ]);
  });

  it('said of a session as a whole, and however long ago', () => {
    const rows = [aMarkedRow('squat', { sets: alike(3, { kg: 16, reps: 8 }), left: 2 })];
    const old = aSessionDone('2026-01-05', rows, { pain: [pain(1, { where: 'elsewhere', alarm: 'fainting' })] });
    expect(problemsOf(aHistory(old))).toHaveLength(1);
  });

  it('until the coach has cleared the client; one exercise cleared is not the client', () => {
    const history = hurt(pain(5, { alarm: 'fainting' }));
    expect(problemsOf(history, [cleared('2026-12-22')])).toHaveLength(1);
    expect(problemsOf(history, [cleared('2026-12-24', 'squat')])).toHaveLength(1);
    expect(problemsOf(history, [cleared('2026-12-24')])).toEqual([]);
  });

  it('withholds the client', () => {
    const { value, problems } = planBlock({
      library: aLibrary(ALL, oneSession('squat')),
      client: aClient({ tests: [aTest('squat', 12, { load: kg('16') })] }),
      today,
      edition: 0,
      history: hurt(pain(0, { alarm: 'swollen painful calf' })),
    });
    expect(value).toBeNull();
    expect(problems.map(({ code }) => code)).toContain('alarm-reported');
    expect(isoOfDay(said)).toBe('2026-12-23');
  });
});

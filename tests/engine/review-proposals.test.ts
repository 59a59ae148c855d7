/** What a review proposes, rule by rule, each at its boundary: on this side nothing, on that side a sentence and an edit. */
import { describe, expect, it, test } from 'vitest';
import type { Client } from '../../src/model/client.js';
import { addDays, isoOfDay } from '../../src/model/day.js';
import type { DoneSession, History } from '../../src/model/history.js';
import { exerciseId, programmeId, type Side, sessionId } from '../../src/model/identity.js';
import type { PainReport } from '../../src/model/log.js';
import { plainLine } from '../../src/model/prose.js';
import { PLACE } from './generate-exercises.js';
import { aCaution, aProgramme, aSession, aSignOff, aTest, kg, on } from './make-block.js';
import { aHistory, alike, aMarkedRow, aSessionDone } from './make-history.js';
import {
  allDone,
  doneUpTo,
  editsOf,
  figuresOf,
  proposalsOf,
  type ReviewMade,
  reviewOf,
  theProgramme,
  withPain,
} from './review-made.js';

const rules = (made: ReviewMade): readonly string[] => reviewOf(made).proposals.map(({ reason }) => reason.rule);
const own = (rule: string, value: number) => [{ rule, value, reason: 'to see', place: PLACE }];
const seen = (date: string, means: Client['observations'][number]['means'], exercise?: string) => ({
  date: on(date),
  side: 'both' as const,
  seen: '',
  means,
  place: PLACE,
  ...(exercise === undefined ? {} : { exercise: exerciseId(exercise) }),
});
const cleared = { kind: 'cleared' } as const;
/** Monday, Wednesday and Friday, all of them done up to today. */
const steady = (today: string, change?: Parameters<typeof allDone>[0]): ReviewMade => ({
  history: allDone((one) => (one.planned > on(today) ? null : (change ?? ((same) => same))(one))),
  today,
});
const knee = (degree: number, more: Partial<PainReport> = {}): PainReport => ({ where: 'knee', degree, ...more });

describe('nothing is proposed', () => {
  it('where everything was done as planned, and nothing hurts', () => {
    expect(reviewOf(steady('2027-01-22'))).toMatchObject({ proposals: [], need: 'as planned' });
  });
});

describe('propose-message', () => {
  const quiet = (today: string, client: Partial<Client> = {}): readonly string[] =>
    figuresOf(reviewOf({ history: doneUpTo(3), today, client }), 'propose-message');

  it('after seven days without a mark, although a session was planned', () => {
    expect(quiet('2027-01-14')).toEqual([]);
    expect(quiet('2027-01-15')).toEqual(['why gap; days 7 days; sessions 2 sessions; marked 2027-01-08']);
  });

  it('not in a break that the coach wrote, nor where nothing was planned', () => {
    const breaks = [{ from: on('2027-01-09'), until: on('2027-01-20'), cause: 'away' as const, place: PLACE }];
    expect(quiet('2027-01-15', { breaks })).toEqual([]);
    expect(rules({ today: '2027-02-20' })).not.toContain('propose-message');
  });

  it('where nothing ever came back, from the first day planned', () => {
    const none = (today: string) => figuresOf(reviewOf({ history: doneUpTo(0), today }), 'propose-message');
    expect(none('2027-01-10')).toEqual([]);
    expect(none('2027-01-11')).toEqual(['why gap; days 7 days; sessions 3 sessions']);
  });

  it('after as many days as the coach sets', () => {
    const made = { history: doneUpTo(3), today: '2027-01-13', overrides: own('propose-message', 5) };
    expect(figuresOf(reviewOf(made), 'propose-message')).toHaveLength(1);
  });

  const sore = (report: PainReport, client: Partial<Client> = {}) =>
    reviewOf({ ...steady('2027-01-11', withPain(['2027-01-08', report])), client });

  it('after pain for which the exercise is left out, and before anything else', () => {
    expect(figuresOf(sore(knee(3)), 'propose-message')).toEqual([]);
    const grave = sore(knee(4, { side: 'left' }));
    expect(figuresOf(grave, 'propose-message')).toEqual([
      'why pain; exercise squat; degree 4; where knee; side left; marked 2027-01-08',
    ]);
    expect(grave.proposals[0]?.reason.rule).toBe('propose-message');
    expect(grave.need).toBe('pain');
    expect(figuresOf(sore(knee(3, { worseNextMorning: true })), 'propose-message')).toHaveLength(1);
  });

  it('until the coach writes that it is cleared', () => {
    const with_ = (date: string, exercise?: string) =>
      figuresOf(sore(knee(5), { observations: [seen(date, cleared, exercise)] }), 'propose-message');
    expect(with_('2027-01-07')).toHaveLength(1);
    expect(with_('2027-01-08')).toEqual([]);
    expect(with_('2027-01-10', 'squat')).toEqual([]);
    expect(with_('2027-01-10', 'press')).toHaveLength(1);
    expect(with_('2027-01-12')).toHaveLength(1);
  });

  it('after a sign of alarm, whatever its degree, above all others', () => {
    const alarm = (client: Partial<Client> = {}) => sore(knee(0, { alarm: 'fainting' }), client);
    expect(figuresOf(alarm(), 'propose-message')).toEqual(['why alarm; sign fainting; marked 2027-01-08']);
    expect(alarm().need).toBe('alarm');
    expect(alarm({ observations: [seen('2027-01-09', cleared, 'squat')] }).need).toBe('alarm');
    expect(alarm({ observations: [seen('2027-01-09', cleared)] }).need).toBe('as planned');
  });
});

describe('propose-sign-off', () => {
  const swinging = (degree: number, signed = '2026-12-01', observations: Client['observations'] = []) => {
    const row = aMarkedRow('swing', { sets: alike(3, { kg: 16, reps: 10 }), pain: [{ where: 'lower back', degree }] });
    const client = { signOffs: [aSignOff('swing', { date: on(signed) })], observations };
    return figuresOf(
      reviewOf({ history: aHistory(aSessionDone('2027-01-08', [row])), client, today: '2027-01-09' }),
      'propose-sign-off',
    );
  };

  it('where pain has taken one back', () => {
    expect(swinging(3)).toEqual([]);
    expect(swinging(4)).toEqual(['exercise swing; degree 4; where lower back; marked 2027-01-08']);
  });

  it('until it was passed again, or cleared', () => {
    expect(swinging(4, '2027-01-09')).toEqual([]);
    expect(swinging(4, '2026-12-01', [seen('2027-01-09', cleared)])).toEqual([]);
  });
});

describe('propose-caution', () => {
  type Said = readonly [day: string, degree: number, side?: Side];
  const of = (said: readonly Said[], client: Partial<Client> = {}, today = '2027-01-22') => {
    const pains = said.map(([day, degree, side]) => [day, knee(degree, side === undefined ? {} : { side })] as const);
    return editsOf(reviewOf({ ...steady(today, withPain(...pains)), client }), 'propose-caution');
  };
  const careful = 'cautions + what knee, degree take care, from 2027-01-22, review 2027-02-05, by from marks';

  test.each<[string, readonly Said[], readonly string[]]>([
    ['once of 3: nothing', [['2027-01-20', 3]], []],
    [
      'twice of 2: nothing',
      [
        ['2027-01-18', 2],
        ['2027-01-20', 2],
      ],
      [],
    ],
    [
      'twice of 3: take care',
      [
        ['2027-01-18', 3],
        ['2027-01-20', 3],
      ],
      [careful],
    ],
    [
      '13 days ago and today: take care',
      [
        ['2027-01-11', 3],
        ['2027-01-22', 3],
      ],
      [careful],
    ],
    [
      '18 days ago and today: nothing',
      [
        ['2027-01-04', 3],
        ['2027-01-22', 3],
      ],
      [],
    ],
    ['once of 4: take care', [['2027-01-11', 4]], [careful]],
    [
      'twice of 4: avoid',
      [
        ['2027-01-18', 4],
        ['2027-01-20', 4],
      ],
      [careful.replace('take care', 'avoid')],
    ],
    ['once of 4, 14 days ago: nothing', [['2027-01-08', 4]], []],
    [
      'twice on one side: that side',
      [
        ['2027-01-18', 3, 'left'],
        ['2027-01-20', 3, 'left'],
      ],
      [careful.replace('from', 'side left, from').replace('side left, from marks', 'from marks')],
    ],
    [
      'once on each side: nothing',
      [
        ['2027-01-18', 3, 'left'],
        ['2027-01-20', 3, 'right'],
      ],
      [],
    ],
    [
      'once on a side, once on none: that side',
      [
        ['2027-01-18', 3, 'left'],
        ['2027-01-20', 3],
      ],
      [careful.replace('from', 'side left, from')],
    ],
  ])('%s', (_, said, edits) => {
    expect(of(said)).toEqual(edits);
  });

  it('counts days, not reports', () => {
    const twice = withPain(['2027-01-20', knee(3)], ['2027-01-20', knee(3), 1]);
    expect(editsOf(reviewOf(steady('2027-01-22', twice)), 'propose-caution')).toEqual([]);
  });

  it('counts exactly fourteen days, today among them', () => {
    const pains = withPain(['2027-01-08', knee(4)]);
    const on_ = (today: string) => editsOf(reviewOf(steady(today, pains)), 'propose-caution');
    expect(on_('2027-01-21')).toHaveLength(1);
    expect(on_('2027-01-22')).toEqual([]);
  });

  const said: readonly Said[] = [
    ['2027-01-18', 4],
    ['2027-01-20', 4],
  ];
  test.each<[string, Parameters<typeof aCaution>[1], readonly string[]]>([
    ['one that strict holds', {}, []],
    ['one on that side is not enough for both', { side: 'left' }, [careful.replace('take care', 'avoid')]],
    [
      'one less strict is made stricter',
      { degree: 'take care' },
      ['cautions 0 degree: avoid', 'cautions 0 review: 2027-02-05'],
    ],
    ['one of a phase alone does not cover it', { phases: ['bottom'] }, [careful.replace('take care', 'avoid')]],
    ['one that has ended does not', { until: on('2027-01-21') }, [careful.replace('take care', 'avoid')]],
    ['one that ends today does', { until: on('2027-01-22') }, []],
    ['one that is still to come does not', { from: on('2027-01-23') }, [careful.replace('take care', 'avoid')]],
  ])('%s', (_, caution, edits) => {
    expect(of(said, { cautions: [aCaution('knee', caution)] })).toEqual(edits);
  });

  it('says nothing of pain elsewhere, nor of what is cleared', () => {
    const elsewhere = withPain(['2027-01-20', { where: 'elsewhere', degree: 5 }]);
    expect(rules(steady('2027-01-22', elsewhere))).not.toContain('propose-caution');
    expect(of(said, { observations: [seen('2027-01-21', cleared, 'squat')] })).toEqual([]);
  });

  it('counts pain that the coach saw', () => {
    const pain = { kind: 'pain', where: 'knee', degree: 4 } as const;
    expect(of([], { observations: [seen('2027-01-20', pain, 'squat')] })).toEqual([careful]);
  });

  it('looks back as many days as the coach sets', () => {
    const made = steady('2027-01-22', withPain(['2027-01-11', knee(4)]));
    expect(rules({ ...made, overrides: own('propose-caution-days', 7) })).not.toContain('propose-caution');
  });
});

describe('propose-look', () => {
  const held = (caution: Parameters<typeof aCaution>[1] = {}) => ({
    cautions: [aCaution('knee', { degree: 'take care', from: on('2027-01-01'), ...caution })],
  });
  const of = (client: Partial<Client>, change?: Parameters<typeof allDone>[0], today = '2027-01-25') =>
    editsOf(reviewOf({ ...steady(today, change), client }), 'propose-look');
  const look = ['cautions 0 review: 2027-01-25'];

  it('where it was trained in every week of 21 days, and nothing was said', () => {
    expect(of(held())).toEqual(look);
    expect(of(held({ from: on('2027-01-04') }))).toEqual(look);
    expect(of(held({ from: on('2027-01-05') }))).toEqual([]);
  });

  it('not where it hurt, however little, or was not trained in one of the weeks', () => {
    expect(of(held(), withPain(['2027-01-06', knee(1)]))).toEqual([]);
    expect(of(held(), withPain(['2027-01-04', knee(1)]))).toEqual(look);
    expect(of(held(), (one) => ([5, 6, 7].includes(one.occurrence) ? null : one))).toEqual([]);
    expect(of({ cautions: [aCaution('neck', { from: on('2027-01-01') })] })).toEqual([]);
  });

  it('heeds the side', () => {
    const right = withPain(['2027-01-06', knee(1, { side: 'right' })]);
    expect(of(held({ side: 'left' }), right)).toEqual(look);
    expect(of(held({ side: 'right' }), right)).toEqual([]);
  });

  it('writes nothing where the day of looking again has come', () => {
    const due = reviewOf({ ...steady('2027-01-25'), client: held({ review: on('2027-01-25') }) });
    expect(proposalsOf(due, 'propose-look')).toMatchObject([{ edits: [] }]);
    expect(of(held({ review: on('2027-01-26') }))).toEqual(look);
  });

  it('does not look at what is over, or is no part of the body', () => {
    expect(of(held({ until: on('2027-01-24') }))).toEqual([]);
    expect(of({ cautions: [aCaution('balance', { from: on('2027-01-01') })] })).toEqual([]);
  });
});

describe('propose-break', () => {
  const silentUntil = (today: string, client: Partial<Client> = {}) =>
    editsOf(reviewOf({ history: doneUpTo(3), today, client }), 'propose-break');

  it('from fourteen days without a mark on', () => {
    expect(silentUntil('2027-01-22')).toEqual([]);
    expect(silentUntil('2027-01-23')).toEqual(['breaks + from 2027-01-09, until 2027-01-22, cause away']);
  });

  it('not over days that the coach has written down', () => {
    const breaks = [{ from: on('2027-01-12'), until: on('2027-01-14'), cause: 'ill' as const, place: PLACE }];
    expect(silentUntil('2027-01-25', { breaks })).toEqual([]);
  });

  it('not where the coach turned it off', () => {
    const made = { history: doneUpTo(3), today: '2027-01-25', overrides: own('propose-break', 0) };
    expect(rules(made)).not.toContain('propose-break');
  });
});

describe('propose-next-block and propose-repeat', () => {
  const of = (made: ReviewMade) => {
    const review = reviewOf(made);
    return ['propose-next-block', 'propose-repeat'].flatMap((rule) =>
      proposalsOf(review, rule).length > 0 ? [rule, ...editsOf(review, rule)] : [],
    );
  };
  const next = ['starts: 2027-02-15', 'blocks before: 2'];

  it('from the first day of the last week on', () => {
    expect(of(steady('2027-02-07'))).toEqual([]);
    expect(of(steady('2027-02-08'))).toEqual(['propose-next-block', ...next]);
    expect(reviewOf(steady('2027-02-08')).need).toBe('block ends');
  });

  it('on the first training day after it, never before today', () => {
    expect(of(steady('2027-02-16'))).toEqual(['propose-next-block', 'starts: 2027-02-17', 'blocks before: 2']);
    expect(of({ ...steady('2027-02-08'), client: { days: [4] } })).toContain('starts: 2027-02-18');
    const breaks = [{ from: on('2027-02-15'), until: on('2027-02-20'), cause: 'away' as const, place: PLACE }];
    expect(of({ ...steady('2027-02-08'), client: { breaks } })).toContain('starts: 2027-02-22');
  });

  it('not where the page has gone on already', () => {
    expect(of({ ...steady('2027-02-08'), client: { blocksBefore: 2 } })).toEqual([]);
    expect(of({ ...steady('2027-02-08'), client: { starts: on('2027-02-15') } })).toEqual([]);
  });

  it('the same once more where fewer than two thirds of what is over were done', () => {
    // Five weeks over: fifteen sessions.
    const few = (done: number) => of({ history: doneUpTo(done), today: '2027-02-08' })[0];
    expect(few(10)).toBe('propose-next-block');
    expect(few(9)).toBe('propose-repeat');
    expect(of({ history: doneUpTo(9), today: '2027-02-08', overrides: own('propose-repeat', 0) })[0]).toBe(
      'propose-next-block',
    );
    expect(of({ history: doneUpTo(9), today: '2027-02-08', overrides: own('review-share', 1) })[0]).toBe(
      'propose-next-block',
    );
  });

  it('leaves a block of which nothing was marked still to come', () => {
    expect(of({ history: doneUpTo(0), today: '2027-02-08' })).toEqual(['propose-repeat', 'starts: 2027-02-15']);
  });

  it('names other programmes that fit the days, and decides none', () => {
    const three = aProgramme(
      ['A', 'B', 'C'].map((id) => aSession(id)),
      { id: programmeId('three'), name: 'Three' },
    );
    const two = aProgramme([aSession('A'), aSession('B')], { id: programmeId('two'), name: 'Two' });
    const rotated = { days: 3, order: [sessionId('A')] };
    const also = { ...two, id: programmeId('also'), name: 'Also', rotations: [rotated] };
    const review = reviewOf({ ...steady('2027-02-08'), programmes: [three, two, also, theProgramme] });
    expect(figuresOf(review, 'propose-next-block')).toEqual([
      'done 15; planned 15; ends 2027-02-14; starts 2027-02-15; other programme Three; other programme Also',
    ]);
  });
});

describe('propose-test and propose-test-weak', () => {
  /** Squats on Mondays, Wednesdays and Fridays, 16 kg, with 2 left unless said otherwise. */
  const squats = (reps: readonly number[], left: number | null = 2): History =>
    aHistory(
      ...reps.map((done, index) =>
        aSessionDone(
          addDays(on('2027-01-04'), 2 * index),
          [
            aMarkedRow('squat', {
              sets: alike(3, { kg: 16, reps: done }),
              ...(left === null ? {} : { left }),
            }),
          ],
          { occurrence: index + 1 },
        ),
      ),
    );
  const unsaid: Parameters<typeof allDone>[0] = (one) => ({
    ...one,
    rows: one.rows.map((row) => ({ ...row, reserve: [] })),
  });
  const of = (history: History, more: Omit<ReviewMade, 'today' | 'history'> = {}) => {
    const review = reviewOf({ today: '2027-01-12', ...more, history });
    return ['propose-test', 'propose-test-weak'].flatMap((rule) =>
      figuresOf(review, rule).map((said) => `${rule}: ${said}`),
    );
  };

  it('where the last three disagree by more than four reps', () => {
    expect(of(squats([8, 12, 9]))).toEqual([]);
    expect(of(squats([8, 13, 9]))).toEqual([
      'propose-test: exercise squat; side both; at 16 kg; lowest 100 tenths; highest 150 tenths; of 3',
    ]);
    expect(of(squats([14, 8, 10, 9]))).toEqual([]);
    expect(of(squats([8, 13, 9]), { overrides: own('propose-test', 50) })).toEqual([]);
  });

  it('where three are known, all are weak, and no test of the coach holds any more', () => {
    const untested = { client: { tests: [] } };
    expect(of(squats([5, 5, 5], 5), untested)).toEqual([]);
    expect(of(squats([5, 5, 5], 6), untested)).toEqual(['propose-test-weak: exercise squat']);
    expect(of(squats([5, 5], 6), untested)).toEqual([]);
    expect(of(squats([5, 5], 6), { ...untested, overrides: own('propose-test-weak', 2) })).toHaveLength(1);
    const tested = (date: string) => ({ client: { tests: [aTest('squat', 10, { load: kg('16'), date: on(date) })] } });
    expect(of(squats([5, 5, 5], 6), tested('2026-12-01'))).toEqual([]);
    expect(of(squats([5, 5, 5], 6), tested('2026-11-30'))).toHaveLength(1);
  });

  it('says so where it is for want of a word', () => {
    expect(of(doneUpTo(3, unsaid), { client: { tests: [aTest('press', 8, { load: kg('12') })] } })).toEqual([
      'propose-test-weak: exercise squat; why unsaid',
    ]);
  });

  it('not where the coach has tested since', () => {
    const tested = (date: string) => ({ client: { tests: [aTest('squat', 10, { load: kg('16'), date: on(date) })] } });
    expect(of(squats([8, 13, 9]), tested('2027-01-03'))).toHaveLength(1);
    expect(of(squats([8, 13, 9]), tested('2027-01-08'))).toEqual([]);
    expect(of(squats([8, 13, 9, 10]), tested('2027-01-06'))).toEqual([]);
  });

  it('not in what hurt lately', () => {
    const sore = squats([8, 13, 9]);
    const sessions = sore.sessions.map((session, index) =>
      index === 0 ? { ...session, rows: session.rows.map((row) => ({ ...row, pain: [knee(1)] })) } : session,
    );
    expect(of({ ...sore, sessions })).toEqual([]);
  });

  it('writes one line for the next session, where none stands', () => {
    expect(editsOf(reviewOf({ history: squats([8, 13, 9]), today: '2027-01-12' }), 'propose-test')).toEqual([
      'Work on this: Again: squat',
    ]);
    const client = { workOnThis: plainLine('Stand tall.') };
    expect(editsOf(reviewOf({ history: squats([8, 13, 9]), today: '2027-01-12', client }), 'propose-test')).toEqual([]);
  });
});

describe('propose-fewer-days', () => {
  /** So many of the three sessions of each week. */
  const weeks = (...done: readonly number[]): History =>
    allDone((one) => (((one.occurrence - 1) % 3) + 1 <= (done[one.week - 1] ?? 0) ? one : null));
  const of = (history: History, today: string, more: Omit<ReviewMade, 'today' | 'history'> = {}) =>
    figuresOf(reviewOf({ history, today, ...more }), 'propose-fewer-days');

  it('after three weeks running with fewer than two thirds done', () => {
    expect(of(weeks(1, 1, 1), '2027-01-25')).toEqual(['weeks 3 weeks; done 3; planned 9; days a week 3']);
    expect(of(weeks(1, 2, 1), '2027-01-25')).toEqual([]);
    expect(of(weeks(1, 1, 1), '2027-01-24')).toEqual([]);
    expect(of(weeks(3, 1, 1, 1), '2027-02-01')).toHaveLength(1);
    expect(of(weeks(1, 1, 1, 3), '2027-02-01')).toEqual([]);
    expect(of(weeks(1, 1), '2027-01-18', { overrides: own('propose-fewer-days', 2) })).toHaveLength(1);
  });

  it('what was let be, with every set of it left out, was neither done nor missed', () => {
    const letBe = (one: DoneSession): DoneSession => ({
      ...one,
      closed: true,
      effort: null,
      minutes: null,
      rows: one.rows.map((row) => ({ ...row, sets: row.sets.map((set) => ({ ...set, done: 'left out' as const })) })),
    });
    const history = allDone((one) => ((one.occurrence - 1) % 3 === 0 ? one : letBe(one)));
    expect(of(history, '2027-01-25')).toEqual([]);
    const { sessions } = reviewOf({ history, today: '2027-01-24' });
    expect(sessions.filter(({ done }) => done !== null).map(({ occurrence }) => occurrence)).toEqual([1, 4, 7]);
  });

  it('not with a week away among them', () => {
    const breaks = [{ from: on('2027-01-13'), until: on('2027-01-13'), cause: 'away' as const, place: PLACE }];
    expect(of(weeks(1, 1, 1), '2027-01-25', { client: { breaks } })).toEqual([]);
    expect(of(weeks(1, 0, 0), '2027-01-25')).toEqual([]);
  });

  it('not of weeks long past', () => {
    expect(of(weeks(1, 1, 1, 1, 1, 1), '2027-02-21')).toHaveLength(1);
    expect(of(weeks(1, 1, 1, 1, 1, 1), '2027-02-22')).toEqual([]);
  });
});

describe('propose-minutes', () => {
  const took = (...minutes: readonly (number | null)[]) =>
    reviewOf({
      ...steady('2027-01-13', (one) => ({ ...one, minutes: minutes[one.occurrence - 1] ?? null, minutesPlanned: 50 })),
    });
  const of = (...minutes: readonly (number | null)[]) => figuresOf(took(...minutes), 'propose-minutes');

  it('after three sessions running more than a tenth longer than planned', () => {
    expect(of(56, 60, 65)).toEqual(['sessions 3 sessions; least 6; most 15; minutes 60 minutes']);
    expect(of(55, 60, 65)).toEqual([]);
    expect(of(65, 65, 50, 65, 65)).toEqual([]);
    expect(of(50, 65, 65, 65)).toHaveLength(1);
    expect(of(65, 65)).toEqual([]);
  });

  it('passes over sessions whose minutes were not said, and writes nothing', () => {
    expect(of(65, null, 65, null, 65)).toHaveLength(1);
    expect(editsOf(took(65, 65, 65), 'propose-minutes')).toEqual([]);
  });

  it('counts as longer what the coach says', () => {
    const history = doneUpTo(3, (one) => ({ ...one, minutes: 60, minutesPlanned: 50 }));
    const at = (value: number) =>
      rules({ history, today: '2027-01-11', overrides: own('propose-minutes-over', value) }).includes(
        'propose-minutes',
      );
    expect([at(199), at(200)]).toEqual([true, false]);
  });
});

describe('propose-main-bell', () => {
  const mainBells = [
    { pattern: 'push' as const, mass: kg('8'), place: PLACE },
    { pattern: 'squat' as const, mass: kg('16'), place: PLACE },
  ];
  const of = (...bellsUsed: readonly (readonly number[])[]) => {
    const sessions = bellsUsed.map((used, index) =>
      aSessionDone(
        addDays(on('2027-01-04'), 2 * index),
        [aMarkedRow('squat', { sets: used.map((weight) => ({ kg: weight, reps: 8 })) })],
        { occurrence: index + 1 },
      ),
    );
    return editsOf(
      reviewOf({ history: aHistory(...sessions), client: { mainBells }, today: '2027-01-20' }),
      'propose-main-bell',
    );
  };
  const now = ['main bells: push 8 kg, squat 20 kg'];

  it('after three sessions running with one other bell as the heaviest', () => {
    expect(of([20], [20])).toEqual([]);
    expect(of([20], [20], [20])).toEqual(now);
    expect(of([16], [20], [16, 20], [20])).toEqual(now);
    expect(of([20], [16], [20])).toEqual([]);
    expect(of([20], [20], [24])).toEqual([]);
    expect(of([16], [16], [16])).toEqual([]);
  });

  it('only a bell that the client owns, and passes over sessions without the pattern', () => {
    expect(of([22], [22], [22])).toEqual([]);
    expect(of([20], [], [20], [20])).toEqual(now);
  });

  it('does not count easy weeks', () => {
    const sessions = [4, 6, 8].map((day, index) =>
      aSessionDone(`2027-01-0${day}`, [aMarkedRow('squat', { sets: [{ kg: 12, reps: 8 }] })], {
        occurrence: index + 1,
        easy: true,
      }),
    );
    const made = { history: aHistory(...sessions), client: { mainBells }, today: '2027-01-09' };
    expect(rules(made)).not.toContain('propose-main-bell');
  });
});

describe('the order', () => {
  it('is that in which to act', () => {
    const review = reviewOf({
      history: doneUpTo(3, withPain(['2027-01-06', knee(0, { alarm: 'fainting' })], ['2027-01-08', knee(4)])),
      today: '2027-02-10',
    });
    expect(review.proposals.map(({ reason }) => reason.rule)).toEqual([
      'propose-message',
      'propose-message',
      'propose-message',
      'propose-break',
      'propose-repeat',
    ]);
    expect(review.proposals.map(({ reason }) => reason.inputs[0]?.value)).toEqual([
      'alarm',
      'pain',
      'gap',
      '2027-01-09',
      3,
    ]);
    expect(isoOfDay(on('2027-02-10'))).toBe(review.today);
  });
});

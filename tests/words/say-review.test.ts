/** The review as a coach reads it: what stands where, in whole sentences, without judging anybody. */
import { describe, expect, it, test } from 'vitest';
import { ruleId } from '../../src/model/identity.js';
import type { Review } from '../../src/model/review.js';
import { REVIEW_RULES } from '../../src/words/rules/review.js';
import { PLAIN_NAMES } from '../../src/words/say-figures.js';
import { sayReason } from '../../src/words/say-reason.js';
import { type ReviewNames, sayProposal, sayReview, sayReviewLine } from '../../src/words/say-review.js';
import { sayReviewEdits } from '../../src/words/say-review-edits.js';
import { speechOf } from '../../src/words/speech.js';
import { wrapLine } from '../../src/words/wrap-lines.js';
import { aHistory, alike, aMarkedRow, aSessionDone } from '../engine/make-history.js';
import { doneUpTo, reviewOf, withPain } from '../engine/review-made.js';

const names: ReviewNames = { ...PLAIN_NAMES, client: 'Ida Thorn', programme: 'Three days' };
const said = (review: Review): string => sayReview(review, names, 'en-GB').join('\n');

/** Words that judge a person, praise or blame. */
const JUDGING =
  /\b(lazy|failed|failure|should have|good job|well done|excuse|only managed|disappoint|compli|adheren|sadly)\b/i;

const sore = reviewOf({
  history: doneUpTo(5, (one) => ({
    ...withPain(
      ['2027-01-08', { where: 'knee', degree: 2, side: 'left' }],
      ['2027-01-13', { where: 'knee', degree: 4, side: 'left', worseNextMorning: true }],
    )(one),
    minutes: one.occurrence === 4 ? null : 45,
    effort: 6,
    minutesPlanned: 50,
  })),
  today: '2027-01-18',
});

describe('what stands where', () => {
  it('what to do comes first, numbered, each with its rule', () => {
    const lines = said(sore).split('\n');
    expect(lines.slice(0, 5).join('\n')).toBe(
      [
        'Ida Thorn: block 2, Three days, week 3 of 6 (4 January to 14 February 2027),',
        '  edition 1',
        '',
        'To do, first things first',
        '  1. Write to them: pain of 4 in 10, the left knee in the squat on 13 January',
      ].join('\n'),
    );
    expect(said(sore)).toMatch(/\[propose-caution, can\s+be\s+written\]/);
  });

  it('sessions by week, with what was not done', () => {
    expect(said(sore)).toContain(
      [
        '  Week 2, Mon 11 Jan to Sun 17 Jan: 2 of 3',
        '    Mon 11 Jan: A, minutes not said, effort 6',
        '    Wed 13 Jan: A, 45 min of 50, effort 6',
        '    Not done: A (Fri 15 Jan)',
        '  Week 3, Mon 18 Jan to Sun 24 Jan: 0 of 3 so far',
      ].join('\n'),
    );
  });

  it('pain by place, and for whom it is if it lasts', () => {
    const text = said(sore).replace(/\n\s+/g, ' ');
    expect(text).toContain(
      'Left knee: 2 on Fri 8 Jan (squat); 4 on Wed 13 Jan (squat, worse next morning). More than the time before; last 5 days ago.',
    );
    expect(text).toContain('What hurts and lasts is for a doctor or physiotherapist.');
  });

  it('load with its convention, and why a week is not known', () => {
    const text = said(sore).replace(/\n\s+/g, ' ');
    expect(text).toContain('Week 1: 810, monotony 0.87, strain 701');
    expect(text).toContain('Week 2: not known: effort or minutes were not said on Mon 11 Jan');
    expect(text).toContain('of the population; with that of a sample it is 0.93 of this');
    expect(text).toContain('Above 2.0 is commonly called monotonous. Nothing is decided by it.');
  });

  it('what is lifted as sets and reps, never as a bare estimate', () => {
    const press = (day: string, occurrence: number, reps: number) =>
      aSessionDone(day, [aMarkedRow('squat', { sets: alike(3, { kg: 16, reps }), left: 2 })], { occurrence });
    const history = aHistory(press('2027-01-04', 1, 8), press('2027-01-06', 2, 9));
    expect(said(reviewOf({ history, today: '2027-01-07' })).replace(/\n\s+/g, ' ')).toContain(
      'Squat: 16 kg for 8 with 2 left (Mon 4 Jan); 10 to 11 in it at 16 kg, by the last 2; 1 more than on Mon 4 Jan',
    );
  });

  test.each([['2027-01-18', 'pain', 'left knee, 4 of 10, Wed 13 Jan']])(
    'one line in the list of all',
    (_, need, about) => {
      expect(sayReviewLine(sore, names, 'en-GB')).toBe(`  Ida Thorn             ${need.padEnd(13)}  ${about}`);
    },
  );

  it('nothing to propose is said so', () => {
    expect(said(reviewOf({ history: doneUpTo(0), today: '2026-12-30' }))).toContain('Nothing is proposed.');
  });
});

describe('sentences of the proposals', () => {
  const figures: Readonly<Record<string, readonly (readonly [string, string | number, string])[]>> = {
    'propose-break': [
      ['from', '2027-01-09', ''],
      ['until', '2027-01-24', ''],
    ],
    'propose-fewer-days': [
      ['weeks', 3, 'weeks'],
      ['done', 3, ''],
      ['planned', 9, ''],
      ['days a week', 3, ''],
    ],
    'propose-look': [
      ['where', 'knee', ''],
      ['side', 'left', ''],
      ['days', 21, 'days'],
      ['from', '2027-01-01', ''],
    ],
    'propose-main-bell': [
      ['pattern', 'squat', ''],
      ['bell', '20 kg', ''],
      ['stated', '16 kg', ''],
      ['sessions', 3, 'sessions'],
    ],
    'propose-minutes': [
      ['sessions', 3, 'sessions'],
      ['least', 6, ''],
      ['most', 15, ''],
      ['minutes', 45, 'minutes'],
    ],
    'propose-next-block': [
      ['done', 15, ''],
      ['planned', 15, ''],
      ['ends', '2027-02-14', ''],
      ['starts', '2027-02-15', ''],
    ],
    'propose-repeat': [
      ['done', 5, ''],
      ['planned', 15, ''],
      ['ended', '2027-02-14', ''],
      ['starts', '2027-02-15', ''],
      ['other programme', 'Two days', ''],
    ],
    'propose-sign-off': [
      ['exercise', 'swing', ''],
      ['degree', 4, ''],
      ['marked', '2027-01-08', ''],
    ],
    'propose-test': [
      ['exercise', 'press', ''],
      ['side', 'left', ''],
      ['at', '12 kg', ''],
      ['lowest', 80, 'tenths'],
      ['highest', 115, 'tenths'],
      ['of', 3, ''],
    ],
    'propose-test-weak': [
      ['exercise', 'press', ''],
      ['exercise', 'squat', ''],
      ['why', 'unsaid', ''],
    ],
    'propose-message': [
      ['why', 'alarm', ''],
      ['sign', 'fainting', ''],
      ['marked', '2027-01-08', ''],
    ],
  };
  const says: Readonly<Record<string, string>> = {
    'propose-break':
      'No mark from 9 January 2027 to 24 January 2027: write it down as a break. It says away; make it ill or hurt if that is what it was.',
    'propose-fewer-days':
      '3 of 9 sessions done in the last 3 weeks, on 3 days a week: ask which days they can keep, or choose a programme with fewer.',
    'propose-look':
      'No pain in the left knee for 21 days while it was trained: look at it again, and end the caution of 1 January 2027 if you and whoever set it agree.',
    'propose-main-bell': 'The squat was done with the 20 kg in the last 3 sessions; the page says 16 kg.',
    'propose-minutes':
      'The last 3 sessions took 6 to 15 minutes longer than planned: ask what takes the time. A row can be cut, or more than 45 minutes agreed on.',
    'propose-next-block':
      'The block ends on 14 February 2027, with 15 of 15 sessions done so far: go on from 15 February 2027.',
    'propose-repeat':
      'The block ended on 14 February 2027, with 5 of 15 sessions done: do the same programme once more, from 15 February 2027. Other programmes that fit these days: Two days.',
    'propose-sign-off':
      'See the swing done again before it goes home: after pain of 4 in 10 on 8 January 2027 its sign-off no longer counts.',
    'propose-test':
      'Test the press again: the last 3 estimates disagree, on the left side, from 8 to 11.5 reps in it at 12 kg.',
    'propose-test-weak':
      'Test these, their marks alone say too little: press, squat. Or ask them to say after the last set how many good ones were left.',
    'propose-message':
      'Ring today: a sign of alarm was marked on 8 January 2027 (fainting). It is for a doctor, or the emergency number, before any training. Nothing is planned until you write that it is cleared.',
  };

  test.each(Object.keys(figures))('%s', (rule) => {
    const inputs = (figures[rule] ?? []).map(([name, value, unit]) => ({ name, value, unit }));
    const reason = {
      rule: ruleId(rule),
      says: '',
      inputs,
      source: '',
      confidence: 'measured',
      audience: 'coach',
    } as const;
    expect(sayProposal({ reason, edits: [] }, names, 'en-GB')).toBe(says[rule]);
  });

  test.each(REVIEW_RULES)('%s: the client is told nothing, and nobody is judged', (rule) => {
    const reason = {
      rule: ruleId(rule),
      says: '',
      inputs: [],
      source: '',
      confidence: 'measured',
      audience: 'coach',
    } as const;
    expect(sayReason(reason, 'client', speechOf('en-GB'))).toBe('');
    expect(sayReason(reason, 'coach', speechOf('en-GB'))).not.toMatch(JUDGING);
  });

  it('what hurts is left to licensed practice wherever it is spoken of', () => {
    const text = sore.proposals
      .filter(({ reason }) => ['propose-message', 'propose-caution'].includes(reason.rule))
      .map((proposal) => sayProposal(proposal, names, 'en-GB'));
    expect(text.length).toBe(2);
    for (const sentence of text) expect(sentence).toMatch(/doctor or physiotherapist/);
    expect(said(sore)).not.toMatch(JUDGING);
  });
});

describe('what is written on a page', () => {
  it('is a line that a client can read', () => {
    expect(sayReviewEdits('en-GB', 'the coach').testAgain(['Goblet squat', 'One-arm row'])).toBe(
      'We test again, once you are warm: goblet squat and one-arm row.',
    );
  });
});

describe('lines of a terminal', () => {
  it('break at spaces alone, further lines hang in', () => {
    const lines = wrapLine('  1. ', `${'word '.repeat(20)}16\u00a0kg`, 2);
    expect(lines).toHaveLength(2);
    expect(lines[1]?.startsWith('       word')).toBe(true);
    expect(lines.every((line) => Array.from(line).length <= 80)).toBe(true);
    expect(wrapLine('  ', 'x'.repeat(100))).toEqual([`  ${'x'.repeat(100)}`]);
    expect(wrapLine('  ', '')).toEqual(['']);
  });
});

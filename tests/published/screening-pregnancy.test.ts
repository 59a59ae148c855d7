/**
 * Contraindications to exercise in pregnancy, row by row: Mottola et al. 2019, Br J Sports Med 52:1339-1346, table 2
 * (confirmed; nine rows absolute, nine relative, as printed). Placenta praevia after 28 weeks there and after 26 weeks
 * in ACOG Committee Opinion 804, 2020 (second-hand, for the list before it): the more careful decides. Weeks by 280
 * days before the day due: from memory (ACOG Committee Opinion 700). The months after a birth: the Canadian guideline
 * of 2025 (Davenport et al., confirmed): within 12 weeks as symptoms allow, light first, bleeding must not grow.
 */
import { describe, expect, it } from 'vitest';
import {
  type Birth,
  type Clearance,
  type Health,
  PREGNANCY_ABSOLUTE,
  PREGNANCY_RELATIVE,
  type PregnancyCondition,
} from '../../src/model/client.js';
import { addDays } from '../../src/model/day.js';
import { clientSaying } from '../../src/words/say-to-client.js';
import { speechOf } from '../../src/words/speech.js';
import { PLACE } from '../engine/generate-exercises.js';
import { on } from '../engine/make-block.js';
import { ASKED, derivedIn, FIRST, LAST, screen, toldTo, withHealth } from '../engine/screen-made.js';

/** Due so that the last training day falls in this week and day of pregnancy. */
const dueAt = (week: number, day = 0) => addDays(LAST, 280 - 7 * week - day);
const pregnant = (conditions: readonly PregnancyCondition[], due = dueAt(30), clearance?: Clearance) =>
  screen({
    health: { ...ASKED, pregnancy: { due, conditions, place: PLACE } },
    ...(clearance === undefined ? {} : { clearance }),
  });

/** The rows as printed, in order, each with how a client's file writes it. */
const ABSOLUTE: readonly (readonly [string, PregnancyCondition])[] = [
  ['ruptured membranes, premature labour', 'ruptured membranes or premature labour'],
  ['unexplained persistent vaginal bleeding', 'unexplained persistent vaginal bleeding'],
  ['placenta praevia after 28 weeks', 'placenta praevia'],
  ['pre-eclampsia', 'pre-eclampsia'],
  ['incompetent cervix', 'incompetent cervix'],
  ['intrauterine growth restriction', 'growth restriction'],
  ['high-order multiple pregnancy (e.g. triplets)', 'high-order multiple'],
  [
    'uncontrolled type 1 diabetes, hypertension or thyroid disease',
    'uncontrolled diabetes or hypertension or thyroid disease',
  ],
  ['other serious cardiovascular, respiratory or systemic disorder', 'other serious disorder'],
];
const RELATIVE: readonly (readonly [string, PregnancyCondition])[] = [
  ['recurrent pregnancy loss', 'recurrent pregnancy loss'],
  ['history of spontaneous preterm birth', 'earlier preterm birth'],
  ['gestational hypertension', 'gestational hypertension'],
  ['symptomatic anaemia', 'symptomatic anaemia'],
  ['malnutrition', 'malnutrition'],
  ['eating disorder', 'eating disorder'],
  ['twin pregnancy after the 28th week', 'twins'],
  ['mild or moderate cardiovascular or respiratory disease', 'mild cardiovascular or respiratory disease'],
  ['other significant medical conditions', 'other significant condition'],
];

describe('the contraindications', () => {
  it('are the rows of the table, in its order', () => {
    expect(ABSOLUTE.map(([, written]) => written)).toEqual([...PREGNANCY_ABSOLUTE]);
    expect(RELATIVE.map(([, written]) => written)).toEqual([...PREGNANCY_RELATIVE]);
  });

  const due = dueAt(30);
  const since: Clearance = { by: 'Midwife', date: addDays(due, -280), for: 'vigorous' };
  const before: Clearance = { ...since, date: addDays(due, -281) };

  it.each(ABSOLUTE)('absolute: %s is refused, whatever clearance there is', (_, condition) => {
    for (const clearance of [undefined, since]) {
      const { withheld, problems } = pregnant([condition], due, clearance);
      expect(withheld).toEqual(['pregnancy-refused']);
      expect(problems.find(({ code }) => code === 'pregnancy-refused')?.unsafe).toBe(true);
    }
  });

  it.each(RELATIVE)('relative: %s asks first, and a clearance counts from the day the pregnancy began', (_, one) => {
    expect(pregnant([one], due).withheld).toEqual(['pregnancy-ask-first']);
    expect(pregnant([one], due, before).withheld).toEqual(['pregnancy-ask-first']);
    const cleared = pregnant([one], due, since);
    expect(cleared.withheld).toEqual([]);
    expect(cleared.standing.moderate).toBe(true);
    expect(cleared.problems.every(({ unsafe }) => unsafe !== true)).toBe(true);
  });

  it('a clearance that ends inside the block stops the sessions there; one that is over asks again', () => {
    const until = addDays(FIRST, 7);
    expect(pregnant(['twins'], due, { ...since, until }).standing.lastDay).toEqual({
      day: until,
      because: 'clearance',
    });
    expect(pregnant(['twins'], due, { ...since, until: addDays(FIRST, -1) }).withheld).toEqual([
      'clearance-lapses',
      'pregnancy-ask-first',
    ]);
  });

  const withOthers = (more: Partial<Health>, clearance?: Clearance) =>
    screen({
      health: { ...ASKED, pregnancy: { due, conditions: [], place: PLACE }, ...more },
      ...(clearance === undefined ? {} : { clearance }),
    });
  const read = (systolic: number, diastolic: number): Partial<Health> => ({
    bloodPressure: { systolic, diastolic, date: addDays(FIRST, -20), cuff: false, place: PLACE },
  });

  // 140/90 is gestational hypertension in ACOG Practice Bulletin 222, 2020: from memory.
  it.each<[string, string, Partial<Health>, string | null]>([
    ['pregnancy-asks-systolic', 'below', read(139, 89), null],
    ['pregnancy-asks-systolic', 'at', read(140, 80), 'high blood pressure'],
    ['pregnancy-asks-diastolic', 'at', read(120, 90), 'high blood pressure'],
    ['pregnancy-asks-known', 'the condition', { conditions: ['blood pressure'] }, 'high blood pressure'],
    ['pregnancy-asks-known', 'the medicine', { medicines: ['lowers blood pressure'] }, 'high blood pressure'],
    ['pregnancy-asks-known', 'diabetes', { conditions: ['diabetes'] }, 'diabetes'],
    ['pregnancy-asks-known', 'a medicine for blood sugar', { medicines: ['lowers blood sugar'] }, 'diabetes'],
  ])('%s: facts on file that contradict `with: none` ask first: %s', (_, __, more, asks) => {
    const asked = withOthers(more).problems.find(({ code }) => code === 'pregnancy-ask-first');
    expect(asked?.data ?? null).toEqual(asks === null ? null : { conditions: [asks], began: expect.any(String) });
    expect(withOthers(more, { ...since, date: addDays(FIRST, -15) }).withheld).not.toContain('pregnancy-ask-first');
  });

  it('a clearance from before a high reading does not answer it', () => {
    expect(withOthers(read(148, 95), since).withheld).toEqual(['pregnancy-ask-first']);
    expect(withOthers(read(148, 95), { ...since, date: addDays(FIRST, -20) }).withheld).toEqual([]);
  });

  it('placenta praevia: refused where week 26 is reached, ask first before', () => {
    expect(pregnant(['placenta praevia'], dueAt(25, 6)).withheld).toEqual(['pregnancy-ask-first']);
    expect(pregnant(['placenta praevia'], dueAt(26, 0)).withheld).toEqual(['pregnancy-refused']);
    expect(pregnant(['placenta praevia'], dueAt(28, 1)).withheld).toEqual(['pregnancy-refused']);
  });

  it('twins: ask first where week 28 is reached', () => {
    expect(pregnant(['twins'], dueAt(27, 6)).withheld).toEqual([]);
    expect(pregnant(['twins'], dueAt(28, 0)).withheld).toEqual(['pregnancy-ask-first']);
  });
});

describe('a pregnancy without any of them', () => {
  it('is planned moderate and steady, with the signs to stop at (guideline: moderate intensity; reasons to stop)', () => {
    const early = pregnant([], dueAt(13, 6));
    expect(early.withheld).toEqual([]);
    expect(early.standing).toMatchObject({ moderate: true, moderateBecause: ['pregnancy'], steady: true });
    expect(early.standing).toMatchObject({ talk: 'sentences', lastDay: null });
    expect(toldTo(early, 'client')).toEqual(['talk-moderate', 'pregnancy-signs']);
    expect(derivedIn(early)).toEqual(['avoid breath hold', 'avoid impact', 'take care balance']);
  });

  it('names every warning sign of ACOG 804 (first seven second-hand, the rest from memory) and of the guideline', () => {
    const says = clientSaying('pregnancy-signs', speechOf('en-GB'))?.(() => '') ?? '';
    const signs = [
      /\bbleeding/,
      /pain in your belly/,
      /painful tightenings/,
      /losing fluid/,
      /breathing before you begin/,
      /dizziness/,
      /headache/,
      /chest/,
      /weakness that upsets your balance/,
      /swollen calf/,
      // Of the guideline besides: breathlessness that does not settle with rest.
      /rest does not settle/,
    ];
    expect(signs.filter((sign) => !sign.test(says))).toEqual([]);
  });

  it('from week 14 nothing on the back, and care with the belly and the pelvic floor (stricter than the guideline; practice)', () => {
    expect(derivedIn(pregnant([], dueAt(14, 0)))).toEqual([
      'avoid breath hold',
      'avoid impact',
      'avoid lying on the back',
      'take care balance',
      'take care belly',
      'take care pelvic floor',
    ]);
  });

  it('no session after the day due, and no block that begins after it', () => {
    expect(pregnant([], LAST).standing.lastDay).toBeNull();
    const inside = addDays(LAST, -1);
    const stopping = pregnant([], inside);
    expect(stopping.standing.lastDay).toEqual({ day: inside, because: 'due date' });
    expect(toldTo(stopping, 'client')).toContain('pregnancy-last');
    expect(pregnant([], FIRST).withheld).toEqual([]);
    expect(pregnant([], addDays(FIRST, -1)).withheld).toEqual(['due-date-passed']);
  });

  it('a day due further away than a pregnancy is long cannot be right', () => {
    const today = on('2026-12-20');
    expect(pregnant([], addDays(today, 280)).withheld).toEqual([]);
    expect(pregnant([], addDays(today, 281)).withheld).toEqual(['due-date-unlikely']);
  });
});

describe('after a birth', () => {
  /** So many days before the first training day. */
  const born = (days: number, birth: Partial<Birth> = {}) => {
    const date = addDays(FIRST, -days);
    return withHealth({
      birth: { date, by: 'vaginal', checked: addDays(date, 1), place: PLACE, ...birth },
    });
  };

  it('within 12 weeks: moderate, steady, light first', () => {
    const lately = born(84);
    expect(lately.withheld).toEqual([]);
    expect(lately.standing).toMatchObject({ moderate: true, moderateBecause: ['birth'], steady: true });
    expect(lately.standing.begins).toMatchObject([{ rule: { id: 'floor-light' }, reserve: 50, weeks: 2 }]);
    expect(toldTo(lately, 'client')).toContain('birth-signs');
    const later = born(85);
    expect(later.standing).toMatchObject({ moderate: false, steady: false, begins: [], talk: null });
    expect(toldTo(later, 'client')).toEqual([]);
  });

  it('the cautions and their spans (practice)', () => {
    const open = ['avoid breath hold', 'take care belly', 'take care impact', 'take care pelvic floor'];
    expect(derivedIn(born(84))).toEqual([
      'avoid breath hold',
      'avoid impact',
      'take care belly',
      'take care pelvic floor',
    ]);
    expect(derivedIn(born(84, { by: 'caesarean' }))).toEqual([
      'avoid belly',
      'avoid breath hold',
      'avoid impact',
      'take care pelvic floor',
    ]);
    expect(derivedIn(born(85, { by: 'caesarean' }))).toEqual(open);
    expect(derivedIn(born(182))).toEqual(open);
    expect(derivedIn(born(183))).toEqual([]);
  });

  it('nothing before a licensed person has looked (practice)', () => {
    const { place } = { place: PLACE };
    const unchecked = (days: number) => withHealth({ birth: { date: addDays(FIRST, -days), by: 'vaginal', place } });
    expect(unchecked(182).withheld).toEqual(['birth-not-checked']);
    expect(unchecked(182).problems.find(({ code }) => code === 'birth-not-checked')?.unsafe).toBe(true);
    expect(unchecked(183).withheld).toEqual([]);
    // A look that is still to come is none.
    expect(born(60, { checked: on('2026-12-20') }).withheld).toEqual([]);
    expect(born(60, { checked: on('2026-12-21') }).withheld).toEqual(['birth-not-checked', 'date-in-future']);
  });
});

/** Every word of the cases' vocabulary: true of one plan, and its wrong twin, which must be found out. */
import { describe, expect, it } from 'vitest';
import { whyNot } from './judge-claim.js';
import { type Planned, planCase } from './plan-of-case.js';
import { readCase, readCaseFile } from './read-case.js';
import { readLibrary } from './read-library.js';

const exercises = readLibrary();
const known = new Map<string, Planned>();
function planned(name: string): Planned {
  const before = known.get(name);
  if (before !== undefined) return before;
  const now = planCase(readCaseFile(name, exercises));
  known.set(name, now);
  return now;
}

/** Case, what holds of it, and the same word said wrongly. */
const TWINS: readonly (readonly [of: string, right: string, wrong: string])[] = [
  ['rpe-row', 'goblet squat, work: at most 10 reps', 'goblet squat, work: at most 8 reps'],
  ['rpe-row', 'goblet squat, work: at least 6 reps', 'goblet squat, work: at least 11 reps'],
  ['rpe-row', 'goblet squat, week 1: exactly 9 reps', 'goblet squat, week 1: exactly 7 reps'],
  ['rpe-row', 'goblet squat, weeks 1–5: at least 2.8 left', 'goblet squat, weeks 1–5: at least 4 left'],
  ['rpe-row', 'goblet squat, work: with 16 kg', 'goblet squat, work: with 12 kg'],
  ['rpe-row', 'goblet squat, work: with at most 16 kg', 'goblet squat, work: with at most 12 kg'],
  ['rpe-row', 'goblet squat, work: with at least 16 kg', 'goblet squat, work: with at least 20 kg'],
  ['rpe-row', 'goblet squat, week 1: 3 sets', 'goblet squat, week 1: 4 sets'],
  ['rpe-row', 'goblet squat, week 6: at most 2 sets', 'goblet squat, week 5: at most 2 sets'],
  ['rpe-row', 'goblet squat: at least 2 sets', 'goblet squat: at least 3 sets'],
  ['rpe-row', 'goblet squat: rest at least 90 s', 'goblet squat: rest at least 91 s'],
  ['rpe-row', 'goblet squat: there', 'bar squat: there'],
  ['rpe-row', 'goblet squat: less in week 6 than in week 5', 'goblet squat: less in week 5 than in week 6'],
  ['rpe-row', 'goblet squat: more in week 5 than in week 1', 'goblet squat: more in week 1 than in week 5'],
  ['rpe-row', 'row goblet squat: done as goblet squat', 'row goblet squat: done as box squat'],
  ['rpe-row', 'goblet squat: last', 'chair squat: last'],
  ['rpe-row', 'plan: made', 'plan: moderate'],
  ['rpe-row', 'plan: sessions of at most 60 minutes', 'plan: sessions of at most 5 minutes'],
  ['rpe-row', 'plan: warm-ups of at least 5 minutes', 'plan: warm-ups of at least 9 minutes'],
  ['rpe-row', 'plan: short versions of at most 10 minutes', 'plan: short versions of at most 2 minutes'],
  ['rpe-row', 'plan: 1 sessions in week 1', 'plan: 2 sessions in week 1'],
  ['rpe-row', 'plan: nothing after 2027-02-08', 'plan: nothing after 2027-02-07'],
  ['rpe-row', 'plan: say "goblet squat" to the client', 'plan: say "bar squat" to the client'],
  ['holds-seconds', 'plank, work: at most 40 s', 'plank, work: at most 20 s'],
  ['holds-seconds', 'plank, work: at least 20 s', 'plank, work: at least 25 s'],
  ['holds-seconds', 'plank, work: without a load', 'goblet squat, work: without a load'],
  ['carry-suitcase', 'one-side carry, work: at most 40 m', 'one-side carry, work: at most 20 m'],
  ['carry-suitcase', 'one-side carry: both sides the same', 'one-side carry: right first'],
  ['carry-uneven-pair', 'uneven carry, work: with 12 + 16 kg', 'uneven carry, work: with 16 + 16 kg'],
  ['bands-row', 'band row, week 1: with light band', 'band row, week 1: with medium band'],
  ['swing-newcomer', 'two-hand swing, week 1: from a dead stop', 'two-hand swing, week 5: from a dead stop'],
  ['swing-newcomer', 'two-hand swing: before goblet squat', 'goblet squat: before two-hand swing'],
  ['swing-main-and-next', 'two-hand swing, work: then at most 7 reps', 'two-hand swing, work: then at most 1 reps'],
  ['swing-main-and-next', 'two-hand swing, week 1: then with 24 kg', 'two-hand swing, week 1: then with 28 kg'],
  ['swing-strong', 'two-hand swing, work: every 60 s', 'two-hand swing, work: every 90 s'],
  ['steps-123', 'goblet squat, work: steps 1-2-3', 'goblet squat, work: steps 3-2-1'],
  ['conditioning-phrases', 'step-ups: talk in phrases', 'step-ups: talk in sentences'],
  ['combo-weakest-part', 'clean and press: left first', 'clean and press: right first'],
  ['mobility-fixed', 'hip opener: no harder than in week 1', 'goblet squat: no harder than in week 1'],
  ['tests-start-and-end', 'goblet squat, test: stops with 2 left', 'goblet squat, test: stops with 1 left'],
  [
    'tests-start-and-end',
    'goblet squat, test: the same in week 1 and week 6',
    'goblet squat: the same in week 1 and week 3',
  ],
  ['floor-trips', 'plan: one trip to the floor', 'plan: three bells in a circuit'],
  ['older-by-birth-year', 'plan: cool-downs of at least 5 minutes', 'plan: cool-downs of at least 6 minutes'],
  ['minutes-too-few', 'plan: cut plank', 'plan: cut goblet squat'],
  ['fewer-days', 'plan: session order A B C A', 'plan: session order A C B'],
  ['clearance-lapses-in-week-four', 'plan: stops after 2027-01-28', 'plan: stops after 2027-01-27'],
  ['symptoms-asked-long-ago', 'plan: withheld for old screening', 'plan: withheld for age'],
  [
    'caution-begins-inside',
    'plan: tell the coach of a caution inside the block',
    'plan: tell the coach of the due date',
  ],
  ['caution-other-phase', 'plan: give a reason to refuse overhead press', 'plan: give a reason to refuse chair squat'],
];

/** Said under *would not* of something that is there: these must be found out as well. */
const THERE: readonly (readonly [of: string, claim: string])[] = [
  ['rpe-row', 'goblet squat, anywhere: with 12 kg'],
  ['rpe-row', 'chair squat, anywhere: there'],
  ['swing-main-and-next', 'two-hand swing, anywhere: then with 24 kg'],
  ['minutes-too-few', 'plan: cut plank'],
];

describe('every word of the vocabulary', () => {
  it.each(TWINS)('%s: %s, and not: %s', (of, right, wrong) => {
    const plan = planned(of);
    expect(whyNot({ would: true, text: right, line: 1 }, plan)).toBeUndefined();
    expect(whyNot({ would: true, text: wrong, line: 1 }, plan)).toContain(wrong);
    expect(whyNot({ would: false, text: right, line: 1 }, plan)).toContain(right);
  });

  it.each(THERE)('%s would not: %s', (of, text) => {
    expect(whyNot({ would: false, text, line: 1 }, planned(of))).toContain(text);
  });

  it('knows a gate and a trial where there is one', () => {
    const facts =
      'kit: bells 16, 20; chair, wall, mat\nmain bell: hinge 16 kg\nsign-off: two-hand swing, up to 20 kg, 2026-12-10';
    const tests = 'test: floor press left 16 kg × 12, 3 left\ntest: floor press right 16 kg × 12, 3 left';
    const rows = 'session A\ntwo-hand swing: 3 × 10; rest 60 s\nfloor press: 3 × 4–8 each side; rest 60 s';
    const text = `# Two steps up\n\n${facts}\n${tests}\n\n${rows}\n\na careful coach would\n- plan: made\n`;
    const plan = planCase(readCase('two-steps', text, exercises));
    const claim = (would: boolean, said: string) => whyNot({ would, text: said, line: 1 }, plan);
    expect(claim(false, 'two-hand swing: with a gate')).toContain('with a gate');
    expect(claim(false, 'two-hand swing, weeks 1–2: with a gate')).toBeUndefined();
    expect(claim(false, 'floor press: a trial')).toContain('a trial');
    expect(claim(false, 'two-hand swing: a trial')).toBeUndefined();
  });

  it('stops at a word it does not know, an exercise that is not there, a matter nobody named', () => {
    const plan = planned('rpe-row');
    for (const text of [
      'goblet squat: rather heavy',
      'goblin squat: there',
      'plan: withheld for bad luck',
      'plan: tell the coach of the weather',
      'plan: long',
    ]) {
      expect(() => whyNot({ would: true, text, line: 1 }, plan), text).toThrow();
    }
  });

  it('stops at a case it cannot read', () => {
    const whole = '# A case\n\nsession A\ngoblet squat: 3 × 6–10\n\na careful coach would\n- plan: made\n';
    expect(() => readCase('one', whole, exercises)).not.toThrow();
    const spoilt: readonly (readonly [string, string])[] = [
      ['# A case', 'A case'],
      ['goblet squat', 'goblin squat'],
      ['3 × 6–10', 'a few'],
      ['- plan: made', 'plan: made'],
      ['session A\n', ''],
      ['- plan: made\n', ''],
    ];
    for (const [right, wrong] of spoilt) {
      expect(() => readCase('one', whole.replace(right, wrong), exercises), wrong).toThrow();
    }
  });
});

/** Every rule the engine has can be said, and nothing is said of a rule it does not have. */
import { describe, expect, test } from 'vitest';
import { RULES_OF_THE_BLOCK } from '../../src/engine/rules-of-the-block.js';
import { rulesOfTheWalk } from '../../src/engine/rules-of-the-walk.js';
import { ruleId } from '../../src/model/identity.js';
import type { Reason } from '../../src/model/reason.js';
import { BLOCK_RULES, TELLINGS, WALK_RULES } from '../../src/words/reason-words.js';
import { PLAIN_NAMES, sayInput } from '../../src/words/say-figures.js';
import { sayReason } from '../../src/words/say-reason.js';
import { clientSaying } from '../../src/words/say-to-client.js';
import { speechOf } from '../../src/words/speech.js';
import { bannedIn, longestSentence } from './ban-list.js';

const speech = speechOf('en-GB');
const known = [...WALK_RULES, ...BLOCK_RULES, ...TELLINGS];
const sorted = (ids: readonly string[]): readonly string[] => [...new Set(ids)].sort();

const reason = (rule: string, inputs: Reason['inputs'] = []): Reason => ({
  rule: ruleId(rule),
  says: '',
  inputs,
  source: '',
  confidence: 'measured',
  audience: 'coach',
});

describe('a sentence for every rule', () => {
  test('the catalogue has the rules of the engine, no more and no fewer', () => {
    const engine = [...rulesOfTheWalk.map(({ row }) => row.id), ...RULES_OF_THE_BLOCK.map(({ id }) => id)];
    expect(sorted(known)).toEqual(sorted(engine));
  });

  test.each(known)('%s: the coach gets one whole sentence, with or without figures', (rule) => {
    const bare = sayReason(reason(rule), 'coach', speech);
    expect(bare).toMatch(/^[A-Z0-9].*\.$/);
    expect(bare).not.toMatch(/undefined|\s{2}|\s[.,:;]|\(\)|of reserve{2}/);
  });

  test.each(known)('%s: what the client reads is short, plain and free of shorthand', (rule) => {
    const says = clientSaying(rule, speech)?.(() => '') ?? '';
    expect(bannedIn(says)).toEqual([]);
    expect(longestSentence(says)).toBeLessThanOrEqual(12);
    if (says !== '') expect(says).toMatch(/^[A-Z].*\.$/);
  });

  test('the client is told why at every step that changes the work', () => {
    const steps = [
      'back-up',
      'small-step',
      'big-step',
      'trial',
      'version-trial',
      'slower',
      'harder-version',
      'easier-version',
      'fewer-reps',
      'normal-tempo',
      'lower-load',
      'easy-week',
    ];
    for (const step of steps) expect(clientSaying(`walk-${step}`, speech)?.(() => '') ?? '', step).not.toBe('');
  });

  test('a rule nobody knows is not made up', () => {
    expect(sayReason(reason('no-such-rule'), 'coach', speech)).toBe('');
    expect(sayReason(reason('constructor'), 'coach', speech)).toBe('');
  });
});

describe('figures', () => {
  test('carry their units', () => {
    const say = (value: number | string, unit: string, name = 'x') =>
      sayInput({ name, value, unit }, PLAIN_NAMES, speech).replaceAll('\u00a0', ' ');
    expect(say(20, 'tenths')).toBe('2');
    expect(say(84, 'tenths')).toBe('8.4');
    expect(say(-3, 'tenths')).toBe('−0.3');
    expect(say(16_000, 'g')).toBe('16 kg');
    expect(say(15_876, 'g')).toBe('15.88 kg');
    expect(say(100, 'per-mille')).toBe('10 %');
    expect(say(50, 'per-ten-thousand')).toBe('0.5 %');
    expect(say(90, 's')).toBe('90 s');
    expect(say(365, 'days')).toBe('365 days');
    expect(say('goblet-squat', '', 'exercise')).toBe('goblet squat');
  });

  test('stand in the sentence that needs them', () => {
    const earned = [
      { name: 'earned', value: 1, unit: '' },
      { name: 'needed', value: 2, unit: '' },
    ];
    expect(sayReason(reason('walk-earned-twice', earned), 'coach', speech)).toContain('earned 1 of 2');
    const bell = [{ name: 'bell', value: 14_000, unit: 'g' }];
    expect(sayReason(reason('kit-too-light', bell), 'coach', speech)).toContain('14\u00a0kg');
  });
});

/** Which language speaks, and which way its lines run. */
import { describe, expect, test } from 'vitest';
import type { Catalogue } from '../../src/words/catalogue.js';
import { english } from '../../src/words/english.js';
import { directionOf } from '../../src/words/language.js';
import { speechOf } from '../../src/words/speech.js';

/** Complete by its type: a catalogue that lacks a sentence does not compile. */
const hebrew: Catalogue = { ...english, language: 'he', labels: { ...english.labels, stop: 'עצור' } };
const american: Catalogue = { ...english, language: 'en-US' };

describe('the catalogue', () => {
  test.each([
    ['en-GB', 'en-GB'],
    ['en-gb', 'en-GB'],
    ['en', 'en-GB'],
    ['en-US', 'en-US'],
    ['en-US-x-twang', 'en-US'],
    ['en-AU', 'en-GB'],
    ['he', 'he'],
    ['he-IL', 'he'],
    ['fr-CA', 'en-GB'],
    ['', 'en-GB'],
  ])('for %s is %s', (tag, expected) => {
    expect(speechOf(tag, [english, american, hebrew]).words.language).toBe(expected);
  });

  test('of another language is used where there is one', () => {
    expect(speechOf('he', [english, hebrew]).words.labels.stop).toBe('עצור');
  });

  test('says every label with something', () => {
    for (const [name, label] of Object.entries(english.labels)) expect(label.trim(), name).not.toBe('');
  });
});

describe('direction', () => {
  test.each([
    ['ar', 'rtl'],
    ['ar-EG', 'rtl'],
    ['ar-Latn', 'ltr'],
    ['fa', 'rtl'],
    ['he-IL', 'rtl'],
    ['ur', 'rtl'],
    ['uz-Arab', 'rtl'],
    ['pa-Arab-PK', 'rtl'],
    ['uz', 'ltr'],
    ['en-GB', 'ltr'],
    ['vi', 'ltr'],
  ] as const)('of %s is %s', (tag, direction) => {
    expect(directionOf(tag)).toBe(direction);
  });
});

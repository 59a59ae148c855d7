import { describe, expect, it } from 'vitest';
import { readSeen, type SeenPart } from '../../src/content/read-seen.js';
import { SEEN } from '../../src/model/client.js';

function told(text: string): readonly string[] {
  const read = readSeen(text);
  if (!read.ok) return read.faults.map(({ finding }) => `! ${finding.code} ${JSON.stringify(finding.data)}`);
  return read.value.map(saidOf);
}

function saidOf({ means, side, unread }: SeenPart): string {
  const at = side === undefined ? '' : ` ${side}`;
  switch (means.kind) {
    case 'phrase':
      return `${means.phrase}${at}`;
    case 'pain':
      return `pain ${means.where} ${means.degree}${at}`;
    case 'cleared':
      return 'cleared';
    case 'free':
      return unread === undefined ? 'note' : `unread: ${unread.nearest}`;
  }
}

describe('what a coach writes of a session', () => {
  it.each(SEEN)('knows %s as it is written in the list', (phrase) => {
    expect(told(phrase)).toEqual([phrase]);
    expect(told(`  ${phrase.toUpperCase()}. `)).toEqual([phrase]);
  });

  it.each([
    ['new', 'new to the movement'],
    ['New to this', 'new to the movement'],
    ['new to the lift', 'new to the movement'],
    ['too light', 'light'],
    ['felt light', 'light'],
    ['much too heavy', 'heavy'],
    ['still heavy', 'heavy'],
    ['missed a rep', 'missed reps'],
    ['missed the last rep', 'missed reps'],
    ['misses reps', 'missed reps'],
    ['hurries', 'hurrying'],
    ['hurries the lowering', 'hurrying'],
    ['a bit rushed', 'hurrying'],
    ['short on the left', 'shorter on one side left'],
    ['shorter on the right side', 'shorter on one side right'],
    ['left side shorter', 'shorter on one side left'],
    ['loses her balance', 'loses balance'],
    ['lost balance', 'loses balance'],
    ['holds his breath', 'holds the breath'],
    ['holding breath', 'holds the breath'],
    ['grip went first', 'grip goes first'],
    ['her grip gives out first', 'grip goes first'],
    ['moves very well', 'moves well'],
  ])('knows %s', (text, phrase) => {
    expect(told(text)).toEqual([phrase]);
  });

  it('makes several observations of one cell', () => {
    expect(told('hurries, holds her breath; too heavy')).toEqual(['hurrying', 'holds the breath', 'heavy']);
    expect(told('heavy and hurrying')).toEqual(['heavy', 'hurrying']);
    expect(told('hurries, "as always, really", light')).toEqual(['hurrying', 'note', 'light']);
    expect(told('hurries; note: slept badly, light, heavy')).toEqual(['hurrying', 'note']);
  });

  it.each([
    ['pain knee 3', 'pain knee 3'],
    ['knee pain, 3/10', 'pain knee 3'],
    ['knee pain: 3 of 10', 'pain knee 3'],
    ['sore left knee 2', 'pain knee 2 left'],
    ['Pain in the lower back 4', 'pain lower back 4'],
    ['knees hurt 4', 'pain knee 4'],
    ['low back pain 4', 'pain lower back 4'],
    ['pain 5', 'pain elsewhere 5'],
    ['pain calf 10', 'pain elsewhere 10'],
    ['pain 0', 'pain elsewhere 0'],
    ['cleared', 'cleared'],
    ['knee cleared', 'cleared'],
  ])('reads %s', (text, means) => {
    expect(told(text)).toEqual([means]);
  });

  it.each([
    ['pain knee', '! observation-pain {"text":"pain knee","where":""}'],
    ['pain knee 3.5', '! observation-pain {"text":"pain knee 3.5","where":""}'],
    ['pain knee 3 or 4', '! observation-pain {"text":"pain knee 3 or 4","where":""}'],
    ['pain kne 3', '! observation-pain {"text":"pain kne 3","where":"knee"}'],
    ['pain back 3', '! observation-pain {"text":"pain back 3","where":"lower back"}'],
    ['pain knee 11', '! out-of-range {"what":"Pain","figure":"11","least":"0","most":"10"}'],
    [',', '! empty-entry {}'],
  ])('refuses %s', (text, fault) => {
    expect(told(text)).toEqual([fault]);
  });

  it('never takes a phrase that is denied, or inside a sentence, for the phrase', () => {
    for (const text of ['not heavy', 'no longer hurrying', 'the light was bad', 'light on her feet', 'no pain']) {
      expect(told(text)[0], text).toMatch(/^unread/);
    }
  });

  it('leaves what is said to be a note alone, and tells of anything else that no rule reads', () => {
    expect(told('"hurryng"')).toEqual(['note']);
    expect(told('“a sore knee, she says”')).toEqual(['note']);
    expect(told('note: hurryng')).toEqual(['note']);
    expect(told('hurryng')).toEqual(['unread: hurrying']);
    expect(told('a long week at work, she says')).toEqual(['unread: ']);
  });
});

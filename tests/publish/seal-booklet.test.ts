/** A client's part by link, by words and by both: who gets in, and what is said to who does not. */
import { beforeAll, describe, expect, test } from 'vitest';
import type { SealedBooklet } from '../../src/model/sealed.js';
import type { Lock } from '../../src/model/state.js';
import {
  closeLock,
  holdKey,
  isKeyOf,
  keyInLink,
  newKey,
  openLock,
  openPart,
  readSealed,
  sealPart,
  writeLink,
} from '../../src/publish/seal-booklet.js';
import { FORM, headerOf } from '../../src/publish/seal-envelope.js';
import { bitsOfWords, chooseWords, WORDS } from '../../src/publish/seal-word-list.js';
import { foldWords } from '../../src/publish/seal-words.js';

const SIX = 'maple kettle orbit paper lemon bridge';
/** Words are stirred less than for clients, so that tests take no minutes. */
const FEW = 1000;
const INSIDE = new TextEncoder().encode('<main class="book">16 kg × 8</main>');

async function sealedBy(lock: Lock): Promise<SealedBooklet> {
  const booklet = await sealPart(INSIDE, 'booklet', lock.key);
  const { by, closed } = lock;
  return { form: FORM, by, booklet, beside: [], ...(closed === undefined ? {} : { lock: closed }) };
}

const [key, link] = [newKey(), newKey()];
let byLink: SealedBooklet;
let byWords: SealedBooklet;
let byBoth: SealedBooklet;
beforeAll(async () => {
  byLink = await sealedBy(await closeLock({ by: 'link', key, link: key }));
  byWords = await sealedBy(await closeLock({ by: 'words', key, words: SIX }, FEW));
  byBoth = await sealedBy(await closeLock({ by: 'both', key, link, words: SIX }, FEW));
});

describe('who has what it takes gets in', () => {
  test.each([
    ['by link', () => byLink, { link: key }],
    ['by words', () => byWords, { words: SIX }],
    ['by words, as they are typed on a phone', () => byWords, { words: ' Maple, kettle  ORBIT\npaper-lemon bridge. ' }],
    ['by both', () => byBoth, { link, words: SIX }],
  ])('%s', async (_, sealed, given) => {
    const found = await openLock(sealed(), given);
    expect(found).toEqual({ key });
    expect(await openPart(sealed().booklet, 'booklet', await holdKey(key))).toEqual({ bytes: INSIDE });
  });
});

describe('who has not, is told so', () => {
  test.each([
    ['nothing, by link', () => byLink, {}, 'wrong link'],
    ['another link', () => byLink, { link: newKey() }, 'wrong link'],
    ['half a link', () => byLink, { link: key.slice(0, 20) }, 'wrong link'],
    ['nothing, by words', () => byWords, {}, 'wrong words'],
    ['one word short', () => byWords, { words: 'maple kettle orbit paper lemon' }, 'wrong words'],
    ['another order', () => byWords, { words: 'kettle maple orbit paper lemon bridge' }, 'wrong words'],
    ['the link alone, by both', () => byBoth, { link }, 'wrong words'],
    ['the words alone, by both', () => byBoth, { words: SIX }, 'wrong link'],
    ['both, and the link another', () => byBoth, { link: newKey(), words: SIX }, 'wrong link'],
    ['both, and the words others', () => byBoth, { link, words: 'none of these' }, 'wrong words'],
    // The key of the files themselves opens by link alone, not where words are asked for.
    ['the files’ own key in place of the link', () => byBoth, { link: key, words: SIX }, 'wrong link'],
  ])('%s', async (_, sealed, given, fault) => {
    expect(await openLock(sealed(), given)).toEqual({ fault });
  });
});

describe('what is not as it was sealed', () => {
  const held = () => holdKey(key);
  const changed = (text: string): string => {
    const at = Math.floor(text.length * 0.6);
    return `${text.slice(0, at)}${text[at] === 'A' ? 'B' : 'A'}${text.slice(at + 1)}`;
  };

  test('a letter changed, the end cut off, nothing at all', async () => {
    for (const text of [changed(byLink.booklet), byLink.booklet.slice(0, -40), '', 'not.an.envelope.at.all']) {
      expect(await openPart(text, 'booklet', await held())).toEqual({ fault: 'damaged' });
    }
  });

  test('a lock changed or cut off is not taken for wrong words where it can be told', async () => {
    expect(await openLock({ ...byBoth, lock: changed(byBoth.lock ?? '') }, { link, words: SIX })).toEqual({
      fault: 'damaged',
    });
    expect(await openLock({ ...byWords, lock: (byWords.lock ?? '').slice(0, 90) }, { words: SIX })).toEqual({
      fault: 'damaged',
    });
  });

  test('a part in another’s place, and a booklet of somebody else', async () => {
    const paper = await sealPart(INSIDE, 'paper', key);
    expect(await openPart(paper, 'booklet', await held())).toEqual({ fault: 'damaged' });
    const other = newKey();
    const foreign = { ...byLink, booklet: await sealPart(INSIDE, 'booklet', other) };
    expect(await openLock(foreign, { link: key })).toEqual({ fault: 'wrong link' });
    expect(await openLock({ ...byWords, booklet: foreign.booklet }, { words: SIX })).toEqual({ fault: 'damaged' });
    expect(isKeyOf(await held(), foreign)).toBe(false);
    expect(isKeyOf(await held(), byLink)).toBe(true);
  });

  test('a form that this page does not know, newer or older', async () => {
    expect(await openLock({ ...byLink, form: FORM + 1 }, { link: key })).toEqual({ fault: 'newer' });
    expect(await openLock({ ...byLink, form: FORM - 1 }, { link: key })).toEqual({ fault: 'older' });
  });

  test('a page that is none of ours', () => {
    for (const text of [
      '',
      '{}',
      'null',
      '[]',
      '{"form":1,"by":"knock","booklet":"x"}',
      '{"form":"1","by":"link","booklet":"x"}',
    ]) {
      expect(readSealed(text)).toBeNull();
    }
    expect(readSealed(JSON.stringify(byBoth))).toEqual(byBoth);
    expect(readSealed(JSON.stringify({ ...byLink, beside: ['paper', 'elsewhere', '../x'] }))?.beside).toEqual([
      'paper',
    ]);
  });
});

describe('what a stranger sees', () => {
  test('two booklets of unlike length look alike, and nothing of what is inside is there', async () => {
    const long = new TextEncoder().encode(`${'Rowan Ashby, goblet squat. '.repeat(20)}`);
    const [one, other] = [await sealPart(INSIDE, 'booklet', key), await sealPart(long, 'booklet', key)];
    expect(one.length).toBe(other.length);
    expect(Object.keys(headerOf(other) ?? {}).sort()).toEqual(['alg', 'chalkleaf', 'enc', 'kid', 'part']);
    expect(Buffer.from(other.split('.')[3] ?? '', 'base64url').toString('latin1')).not.toContain('Rowan');
  });

  test('a phone gives its key to nobody', async () => {
    const { opens } = await holdKey(key);
    expect(opens.extractable).toBe(false);
    await expect(crypto.subtle.exportKey('raw', opens)).rejects.toThrow();
  });
});

describe('a link', () => {
  test('carries what opens behind the sign that no host is sent', () => {
    const whole = writeLink('https://studio.example/a/', key);
    expect(new URL(whole).hash).toBe(`#open=${key}`);
    expect(keyInLink(whole)).toBe(key);
    expect(keyInLink(`Hello! ${whole} – see you`)).toBe(key);
    expect(writeLink('https://studio.example/a/', undefined)).toBe('https://studio.example/a/');
  });

  test('cut off or run on is none', () => {
    expect(keyInLink(`#open=${key.slice(0, 42)}`)).toBeUndefined();
    expect(keyInLink(`#open=${key}x`)).toBeUndefined();
    expect(keyInLink('#week-2')).toBeUndefined();
  });
});

describe('words', () => {
  test('are six, of a list without doubles, and worth more than 64 bits', () => {
    const words = chooseWords().split(' ');
    expect(words).toHaveLength(6);
    for (const word of words) expect(WORDS).toContain(word);
    expect(new Set(WORDS).size).toBe(WORDS.length);
    expect(bitsOfWords()).toBeGreaterThan(64);
    expect(chooseWords(3).split(' ')).toHaveLength(6);
    expect(chooseWords()).not.toBe(chooseWords());
  });

  test('each is as likely as any other', () => {
    const counts = new Map<string, number>();
    const drawn = 60_000;
    for (let n = 0; n < drawn / 6; n += 1) {
      for (const word of chooseWords().split(' ')) counts.set(word, (counts.get(word) ?? 0) + 1);
    }
    // Pearson's chi-squared, as many degrees as words but one: mean and variance are known, five deviations are never.
    const wanted = drawn / WORDS.length;
    const sum = WORDS.reduce((total, word) => total + ((counts.get(word) ?? 0) - wanted) ** 2 / wanted, 0);
    expect(Math.abs(sum - (WORDS.length - 1))).toBeLessThan(5 * Math.sqrt(2 * (WORDS.length - 1)));
  });

  test('no two are alike in their first four letters, so that a slip of the ear is no other word', () => {
    expect(new Set(WORDS.map((word) => word.slice(0, 4))).size).toBe(WORDS.length);
    for (const word of WORDS) expect(foldWords(word)).toBe(word);
  });
});

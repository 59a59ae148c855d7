/** Envelopes against RFC 7520's published examples, and everything that is not to be opened. */
import { base64url, importJWK } from 'jose';
import { describe, expect, test } from 'vitest';
import {
  BY_KEY,
  BY_WORDS,
  FORM,
  headerOf,
  openAnybodys,
  openEnvelope,
  sealEnvelope,
  TO_HOLDER,
  WORDS_COUNT,
} from '../../src/publish/seal-envelope.js';
import { frame, STEP_BYTES, unframe } from '../../src/publish/seal-frame.js';
import { BY_PASSPHRASE, DIRECT, TO_KEY, TRUST } from './rfc-7520.js';

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
const textOf = (opened: Awaited<ReturnType<typeof openAnybodys>>): string =>
  'plain' in opened ? new TextDecoder().decode(opened.plain) : opened.fault;

describe('RFC 7520', () => {
  test('section 5.3: opened by a passphrase', async () => {
    const { compact, passphrase, terms, inside } = BY_PASSPHRASE;
    expect(textOf(await openAnybodys(compact, utf8(passphrase), terms))).toBe(inside);
    expect(textOf(await openAnybodys(compact, utf8(`${passphrase} `), terms))).toBe('not opened');
  });

  test('section 5.5: opened by the holder of a key', async () => {
    const key = await importJWK(TO_KEY.key, TO_HOLDER.alg);
    expect(textOf(await openAnybodys(TO_KEY.compact, key, TO_KEY.terms))).toBe(TRUST);
  });

  test('section 5.6: opened by the key itself', async () => {
    expect(textOf(await openAnybodys(DIRECT.compact, base64url.decode(DIRECT.key), DIRECT.terms))).toBe(TRUST);
  });

  test('none of them is let in where a booklet is opened: their terms are others, and they are no part of one', async () => {
    const key = base64url.decode(DIRECT.key);
    expect(await openAnybodys(DIRECT.compact, key, BY_KEY)).toEqual({ fault: 'foreign' });
    expect(await openAnybodys(BY_PASSPHRASE.compact, utf8(BY_PASSPHRASE.passphrase), BY_WORDS)).toEqual({
      fault: 'foreign',
    });
    expect(await openEnvelope(DIRECT.compact, key, DIRECT.terms, 'booklet')).toEqual({ fault: 'foreign' });
  });
});

describe('an envelope of ours', () => {
  const key = crypto.getRandomValues(new Uint8Array(32));
  const seal = (part = 'booklet') => sealEnvelope(utf8('inside'), { key, terms: BY_KEY, marked: { part } });

  test('opens to what went in, and is another each time', async () => {
    const [one, other] = [await seal(), await seal()];
    expect(one).not.toBe(other);
    expect(textOf(await openEnvelope(one, key, BY_KEY, 'booklet'))).toBe('inside');
  });

  test('says on its outside how it was sealed and of which part it is, and nothing else', async () => {
    expect(headerOf(await seal())).toEqual({ ...BY_KEY, part: 'booklet', chalkleaf: FORM });
    const words = await sealEnvelope(utf8('inside'), { key: utf8('w'), terms: BY_WORDS, marked: { part: 'lock' } });
    const { p2s, ...rest } = headerOf(words) ?? {};
    expect(rest).toEqual({ ...BY_WORDS, part: 'lock', chalkleaf: FORM, p2c: WORDS_COUNT });
    // RFC 7518, section 4.8.1.1: eight octets of salt or more.
    expect(base64url.decode(String(p2s)).length).toBeGreaterThanOrEqual(8);
  });

  test('the count for words is what OWASP asks of HMAC-SHA-512', () => {
    expect(WORDS_COUNT).toBeGreaterThanOrEqual(210_000);
  });

  test('one letter changed anywhere: nothing is opened', async () => {
    const whole = await seal();
    for (let at = 0; at < whole.length; at += 1) {
      if (whole[at] === '.') continue;
      const changed = `${whole.slice(0, at)}${whole[at] === 'A' ? 'Q' : 'A'}${whole.slice(at + 1)}`;
      const opened = await openEnvelope(changed, key, BY_KEY, 'booklet');
      // The last letter of a part may carry bits that mean nothing (RFC 4648, section 3.5).
      if ('plain' in opened) expect(textOf(opened)).toBe('inside');
      else expect(['broken', 'foreign', 'not opened', 'newer', 'older']).toContain(opened.fault);
      if ('plain' in opened) expect(whole[at + 1] === '.' || at === whole.length - 1).toBe(true);
    }
  });

  test('cut off anywhere: nothing is opened', async () => {
    const whole = await seal();
    for (let end = 0; end < whole.length; end += 1) {
      expect(await openEnvelope(whole.slice(0, end), key, BY_KEY, 'booklet')).toHaveProperty('fault');
    }
  });

  test('with another key, as another part, on other terms', async () => {
    const whole = await seal();
    const other = crypto.getRandomValues(new Uint8Array(32));
    expect(await openEnvelope(whole, other, BY_KEY, 'booklet')).toEqual({ fault: 'not opened' });
    expect(await openEnvelope(whole, key, BY_KEY, 'paper')).toEqual({ fault: 'foreign' });
    expect(await openEnvelope(whole, key, BY_WORDS, 'booklet')).toEqual({ fault: 'foreign' });
  });

  test('of another form is told from a broken one', async () => {
    const [header = '', ...rest] = (await seal()).split('.');
    const again = (form: number): string => {
      const said = { ...JSON.parse(new TextDecoder().decode(base64url.decode(header))), chalkleaf: form };
      return [base64url.encode(JSON.stringify(said)), ...rest].join('.');
    };
    expect(await openEnvelope(again(FORM + 1), key, BY_KEY, 'booklet')).toEqual({ fault: 'newer' });
    expect(await openEnvelope(again(FORM - 1), key, BY_KEY, 'booklet')).toEqual({ fault: 'older' });
    // Nobody can pass it off as one that is known: the outside is sealed with the inside.
    expect(await openEnvelope(again(FORM), key, BY_KEY, 'booklet')).toEqual({ plain: utf8('inside') });
  });

  test('one that would keep a phone at work for minutes is not begun on', async () => {
    const header = base64url.encode(
      JSON.stringify({ ...BY_WORDS, part: 'lock', chalkleaf: FORM, p2s: 'c2FsdHNhbHQ', p2c: 2_000_000_000 }),
    );
    const began = Date.now();
    const opened = await openEnvelope(
      `${header}.QUFBQQ.QUFBQUFBQUFBQUFB.QUFBQQ.QUFBQUFBQUFBQUFBQUFBQQ`,
      utf8('w'),
      BY_WORDS,
      'lock',
    );
    expect(opened).toHaveProperty('fault');
    expect(Date.now() - began).toBeLessThan(2000);
  });
});

describe('its length', () => {
  test('goes by steps, whatever is inside, and what went in comes out', () => {
    for (const length of [0, 1, 100, 5000, 70_000]) {
      const bytes = Uint8Array.from({ length }, (_, at) => (at * at) % 251);
      const framed = frame(bytes, STEP_BYTES);
      expect(framed.length % STEP_BYTES).toBe(0);
      expect(unframe(framed)).toEqual(bytes);
    }
    expect(frame(utf8('Ash'), STEP_BYTES).length).toBe(frame(utf8('Bartholomew'), STEP_BYTES).length);
  });

  test('the same is the same, byte for byte', () => {
    expect(frame(utf8('again'), STEP_BYTES)).toEqual(frame(utf8('again'), STEP_BYTES));
  });

  test('what is no frame, or swells beyond all measure, is not unpacked', () => {
    expect(unframe(utf8('nothing of the kind'))).toBeNull();
    expect(unframe(new Uint8Array(STEP_BYTES))).toBeNull();
    expect(unframe(frame(new Uint8Array(4_000_000), STEP_BYTES), 1_000_000)).toBeNull();
  });
});

/**
 * Two programs that others wrote open what is sealed here, and seal what is opened here: `jose` of Debian, in C over
 * OpenSSL, and `python3-jwcrypto`, over Python's cryptography. `jose` takes counts for words up to 32 768, since the mending of
 * CVE-2023-50967, and refuses more: what goes out to clients, at 210 000, is read by jwcrypto alone.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { base64url, importJWK } from 'jose';
import { afterAll, describe, expect, test } from 'vitest';
import { makePair } from '../../src/publish/key-pair.js';
import { closeLock, newKey, openLock, sealPart } from '../../src/publish/seal-booklet.js';
import {
  BY_KEY,
  BY_WORDS,
  openAnybodys,
  sealEnvelope,
  type Terms,
  TO_HOLDER,
  WORDS_COUNT,
} from '../../src/publish/seal-envelope.js';
import { sealMarks } from '../../src/publish/seal-marks.js';
import { bytesOfWords } from '../../src/publish/seal-words.js';

const folder = mkdtempSync(join(tmpdir(), 'chalkleaf-outside-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const WORDS = 'maple kettle orbit paper lemon bridge';
/** The most that `jose` takes. */
const MOST_OF_JOSE = 32_768;

type Jwk = Readonly<Record<string, string>>;

interface Outside {
  readonly name: string;
  readonly open: (envelope: string, key: Jwk) => Buffer | null;
  readonly seal: (plain: string, key: Jwk, terms: Terms, count?: number) => string;
}

function put(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

function run(command: string, args: readonly string[], input = ''): Buffer | null {
  const done = spawnSync(command, args, { input });
  if (done.error) throw done.error;
  return done.status === 0 ? done.stdout : null;
}

const debian: Outside = {
  name: 'jose',
  open: (envelope, key) =>
    run('jose', ['jwe', 'dec', '-i', put('in.jwe', envelope), '-k', put('key.jwk', JSON.stringify(key))]),
  seal: (plain, key, terms, count) => {
    const head = { protected: { ...terms, ...(count === undefined ? {} : { p2c: count }) } };
    const args = [
      '-I',
      put('plain', plain),
      '-k',
      put('key.jwk', JSON.stringify(key)),
      '-i',
      JSON.stringify(head),
      '-c',
    ];
    return String(run('jose', ['jwe', 'enc', ...args]));
  },
};

const OPEN = `
import sys, json
from jwcrypto import jwe, jwk
given = json.load(sys.stdin)
try:
    envelope = jwe.JWE(algs=given['algs'])
    envelope.deserialize(given['envelope'], jwk.JWK(**given['key']))
except Exception:
    sys.exit(1)
sys.stdout.buffer.write(envelope.payload)
`;
const SEAL = `
import sys, json
from jwcrypto import jwe, jwk
given = json.load(sys.stdin)
envelope = jwe.JWE(given['plain'].encode(), json.dumps(given['head']), algs=[given['head']['alg'], given['head']['enc']])
envelope.add_recipient(jwk.JWK(**given['key']))
sys.stdout.write(envelope.serialize(compact=True))
`;

const python: Outside = {
  name: 'jwcrypto',
  open: (envelope, key) => {
    const algs = [BY_KEY.alg, BY_WORDS.alg, TO_HOLDER.alg, BY_KEY.enc];
    return run('/usr/bin/python3', ['-c', OPEN], JSON.stringify({ envelope, key, algs }));
  },
  // It counts as it does by itself: a count that is asked for is not taken.
  seal: (plain, key, terms) =>
    String(run('/usr/bin/python3', ['-c', SEAL], JSON.stringify({ plain, key, head: terms }))),
};

const oct = (bytes: Uint8Array): Jwk => ({ kty: 'oct', k: base64url.encode(bytes) });
const wordsKey = oct(bytesOfWords(WORDS));
const textOf = (opened: Awaited<ReturnType<typeof openAnybodys>>): string =>
  'plain' in opened ? new TextDecoder().decode(opened.plain) : opened.fault;

describe.each([debian, python])('$name', ({ name, open, seal }) => {
  test('opens a part of a booklet, and unpacks it', async () => {
    const key = newKey();
    const envelope = await sealPart(new TextEncoder().encode('<p>16 kg × 8</p>'), 'booklet', key);
    const opened = open(envelope, { kty: 'oct', k: key });
    expect(String(gunzipSync(opened ?? expect.fail('not opened')))).toBe('<p>16 kg × 8</p>');
    expect(open(envelope, { kty: 'oct', k: newKey() })).toBeNull();
  });

  test('opens a lock by words, and finds the key in it', async () => {
    const key = newKey();
    const count = name === 'jose' ? MOST_OF_JOSE : WORDS_COUNT;
    const { closed = '' } = await closeLock({ by: 'words', key, words: WORDS }, count);
    expect(base64url.encode(open(closed, wordsKey) ?? expect.fail('not opened'))).toBe(key);
    expect(open(closed, oct(bytesOfWords(`${WORDS} more`)))).toBeNull();
  });

  test('opens a lock by link and words, one after the other', async () => {
    const [key, link] = [newKey(), newKey()];
    const count = name === 'jose' ? MOST_OF_JOSE : WORDS_COUNT;
    const { closed = '' } = await closeLock({ by: 'both', key, link, words: WORDS }, count);
    const inner = String(open(closed, { kty: 'oct', k: link }));
    expect(base64url.encode(open(inner, wordsKey) ?? expect.fail('not opened'))).toBe(key);
  });

  test('opens marks with the studio’s private key', async () => {
    const pair = await makePair();
    const lines = (await sealMarks('Chalkleaf marks\n', pair)).split('\n').slice(1, -2);
    const opened = open(lines.join(''), { kty: 'EC', ...pair });
    expect(String(gunzipSync(opened ?? expect.fail('not opened')))).toBe('Chalkleaf marks\n');
  });

  test('what it seals with a key, by words and to a holder is opened here', async () => {
    const bytes = crypto.getRandomValues(new Uint8Array(32));
    expect(textOf(await openAnybodys(seal('by key', oct(bytes), BY_KEY).trim(), bytes, BY_KEY))).toBe('by key');
    const byWords = seal('by words', wordsKey, BY_WORDS, MOST_OF_JOSE).trim();
    expect(textOf(await openAnybodys(byWords, bytesOfWords(WORDS), BY_WORDS))).toBe('by words');
    const { crv, x, y, d } = await makePair();
    const toHolder = seal('to holder', { kty: 'EC', crv, x, y }, TO_HOLDER).trim();
    const key = await importJWK({ kty: 'EC', crv, x, y, d }, TO_HOLDER.alg);
    expect(textOf(await openAnybodys(toHolder, key, TO_HOLDER))).toBe('to holder');
  });
});

test('jose refuses the count that clients get, and that is all it refuses', async () => {
  const marked = { part: 'lock' };
  const sealed = (count: number) =>
    sealEnvelope(new Uint8Array([1]), { key: bytesOfWords(WORDS), terms: BY_WORDS, marked, count });
  expect(debian.open(await sealed(WORDS_COUNT), wordsKey)).toBeNull();
  expect(debian.open(await sealed(MOST_OF_JOSE), wordsKey)).not.toBeNull();
});

test('the lock that clients get is opened here', async () => {
  const key = newKey();
  const lock = await closeLock({ by: 'words', key, words: WORDS });
  const sealed = { form: 1, by: lock.by, lock: lock.closed ?? '', beside: [] } as const;
  const booklet = await sealPart(new Uint8Array([1]), 'booklet', key);
  expect(await openLock({ ...sealed, booklet }, { words: `  ${WORDS.toUpperCase()} ` })).toEqual({ key });
});

/** Reads the studio's state: which opaque public folder is whose, and what opens it. Where the files lie is for `app`. */
import { z } from 'zod';
import { clientId, folderId } from '../model/identity.js';
import type { Lock, StudioState } from '../model/state.js';

const FOLDER_NAME = z.string().regex(/^[0-9a-f]{32}$/);
const KEY_TEXT = z.string().regex(/^[\w-]{43}$/);

const STATE = z.strictObject({
  schema: z.literal(1),
  folders: z.array(z.strictObject({ client: z.string(), folder: FOLDER_NAME, since: z.iso.date() })),
  keys: z.array(z.strictObject({ name: z.string().regex(/^[\w-]{1,60}$/), made: z.iso.date() })),
});

const WORDS = z.string().regex(/^[a-z]+( [a-z]+){5,}$/);
const CLOSED = z.string().min(1);
const LOCK = z.discriminatedUnion('by', [
  z.strictObject({ schema: z.literal(1), by: z.literal('link'), key: KEY_TEXT, link: KEY_TEXT }),
  z.strictObject({ schema: z.literal(1), by: z.literal('words'), key: KEY_TEXT, words: WORDS, closed: CLOSED }),
  z.strictObject({
    schema: z.literal(1),
    by: z.literal('both'),
    key: KEY_TEXT,
    link: KEY_TEXT,
    words: WORDS,
    closed: CLOSED,
  }),
]);

const PAIR = z.strictObject({ schema: z.literal(1), crv: z.literal('P-256'), x: KEY_TEXT, y: KEY_TEXT, d: KEY_TEXT });

const SEALED = z.strictObject({
  schema: z.literal(1),
  parts: z.record(z.string(), z.strictObject({ of: z.string(), envelope: z.string() })),
});

interface Unread {
  readonly why: string;
}

function read<T>(text: string, schema: z.ZodType<T>): T | Unread {
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch {
    return { why: 'it is not JSON any more' };
  }
  const value = schema.safeParse(parsed);
  return value.success ? value.data : { why: 'it is damaged' };
}

/** The state, or a few words on what is wrong with the text. */
export function readState(text: string): StudioState | Unread {
  const state = read(text, STATE);
  if ('why' in state) return state;
  return {
    ...state,
    folders: state.folders.map((row) => ({ ...row, client: clientId(row.client), folder: folderId(row.folder) })),
  };
}

/** What opens one folder. What is wrong never says what stands in it. */
export function readLock(text: string): Lock | Unread {
  const lock = read(text, LOCK);
  if ('why' in lock) return lock;
  const { schema: _, ...rest } = lock;
  return rest;
}

/** The studio's pair of keys for marks. */
export function readPair(text: string) {
  const pair = read(text, PAIR);
  if ('why' in pair) return pair;
  const { schema: _, ...rest } = pair;
  return rest;
}

/** What was sealed last, by part, and what it was sealed of. */
export type SealedParts = Readonly<Record<string, { readonly of: string; readonly envelope: string }>>;

/** Nothing where the text is damaged: then it is sealed anew. */
export function readSealedParts(text: string): SealedParts {
  const sealed = read(text, SEALED);
  return 'why' in sealed ? {} : sealed.parts;
}

/**
 * Reads a frozen edition: its head, to number the next one and to see whether anything has changed; or the whole of it.
 * What an edition holds was made by this program and never changes, so that its bytes are trusted by their digests and
 * by nothing else.
 */
import { z } from 'zod';
import type { Booklet } from '../model/booklet.js';
import type { Change } from '../model/change.js';
import type { Edition, FrozenEdition } from '../model/edition.js';
import { type BookletId, bookletId } from '../model/identity.js';
import type { Plan } from '../model/plan.js';

/** The format this version writes and reads. */
const FORMAT = 1;

const HEAD = z.object({
  schema: z.literal(FORMAT),
  bookletId: z.string().regex(/^[0-9a-f]{32}$/, 'bookletId is not 32 hexadecimal figures'),
  n: z.int().min(1),
  wordsHash: z.string(),
  plan: z.looseObject({ today: z.iso.date(), planId: z.string() }),
});

export interface EditionHead {
  readonly bookletId: BookletId;
  readonly n: number;
  readonly wordsHash: string;
  /** As frozen; nothing but these two is known of it here. */
  readonly plan: Readonly<Record<string, unknown>> & { readonly today: string; readonly planId: string };
}

export interface Unread {
  /** The end of a sentence. */
  readonly why: string;
}

/** The head, or a few words on what is wrong with the text. */
export function readEditionHead(text: string): EditionHead | Unread {
  const parsed = parse(text);
  if (parsed === undefined) return { why: 'it is not JSON any more' };
  const format = otherFormat(parsed);
  if (format !== null) return { why: format };
  const head = HEAD.safeParse(parsed);
  if (!head.success) return { why: head.error.issues[0]?.message ?? 'its head is damaged' };
  return { ...head.data, bookletId: bookletId(head.data.bookletId) };
}

const WHOLE = HEAD.extend({
  issued: z.iso.date(),
  from: z.iso.date(),
  block: z.int().min(1),
  supersedes: z.int().min(1).optional(),
  contentHash: z.string(),
  engineVersion: z.string(),
  rulesHash: z.string(),
  plan: z.looseObject({ schema: z.literal(FORMAT), block: z.int().min(1) }),
});

export interface EditionTexts {
  /** `edition.json`. */
  readonly edition: string;
  /** `booklet.json`. */
  readonly words: string;
  /** The number of the folder they stand in. */
  readonly n: number;
  /** SHA-256 in hexadecimal. */
  readonly digest: (text: string) => string;
}

/** What the digest of an edition is taken over: the plan as it stands in the record, the words, and what it changes. */
export const contentOf = (plan: unknown, words: string, changes?: unknown): string =>
  [JSON.stringify(plan), words, ...(changes === undefined ? [] : [JSON.stringify(changes)])].join('\0');

/** Plan and words as they were frozen, or a few words on why they are not. Any texts give an answer. */
export function readFrozenEdition({ edition: text, words, n, digest }: EditionTexts): FrozenEdition | Unread {
  const parsed = parse(text);
  if (parsed === undefined) return { why: 'it is not JSON any more' };
  const format = otherFormat(parsed);
  if (format !== null) return { why: format };
  const older = olderForm(parsed);
  if (older !== null) return { why: older };
  const whole = WHOLE.safeParse(parsed);
  if (!whole.success) {
    const [issue] = whole.error.issues;
    return { why: issue === undefined ? 'it is damaged' : `${issue.path.join('.')}: ${issue.message}` };
  }
  const { plan, ...head } = whole.data;
  if (head.n !== n) return { why: `it says that it is edition ${head.n}` };
  if (digest(words) !== head.wordsHash) return { why: 'its words are not those that were frozen' };
  // The record's own plan, and not the one that was checked: checking may put its keys in another order.
  const frozen = keyIn(parsed, 'plan');
  const changes = keyIn(parsed, 'changes');
  if (digest(contentOf(frozen, words, changes)) !== head.contentHash) {
    return { why: 'its plan is not the one that was frozen' };
  }
  const booklet = parse(words);
  if (booklet === undefined) return { why: 'its words are not JSON' };
  if (head.block !== plan.block) return { why: `it says that it is of block ${head.block}` };
  const { supersedes, ...rest } = head;
  const edition: Edition = {
    ...rest,
    bookletId: bookletId(head.bookletId),
    ...(supersedes === undefined ? {} : { supersedes }),
    // Its digest says that it is what this program wrote.
    plan: frozen as Plan,
    ...(changes === undefined ? {} : { changes: changes as readonly Change[] }),
  };
  return { edition, booklet: booklet as Booklet };
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

const keyIn = (parsed: unknown, key: 'plan' | 'changes'): unknown =>
  typeof parsed === 'object' && parsed !== null ? new Map(Object.entries(parsed)).get(key) : undefined;

const FORMATS = z.looseObject({ schema: z.int(), plan: z.looseObject({ schema: z.int() }).optional() });
const BLOCKS = z.looseObject({ block: z.unknown().optional(), plan: z.looseObject({ block: z.unknown().optional() }) });

/** An edition always says which block it is of, and so does its plan. */
function olderForm(parsed: unknown): string | null {
  const read = BLOCKS.safeParse(parsed);
  if (!read.success || (read.data.block !== undefined && read.data.plan.block !== undefined)) return null;
  return 'it is of an older form, which does not say its block';
}

/** Said before anything else is held against it: what another version wrote is not damaged. */
function otherFormat(parsed: unknown): string | null {
  const read = FORMATS.safeParse(parsed);
  if (!read.success) return null;
  const said = [read.data.schema, read.data.plan?.schema].find((one) => one !== undefined && one !== FORMAT);
  if (said === undefined) return null;
  const which = said < FORMAT ? 'an older' : 'a newer';
  return `${which} version froze it, in format ${said}, and this one reads format ${FORMAT}`;
}

/** Reads what is needed of a frozen edition: to number the next one, and to see whether anything has changed. */
import { z } from 'zod';
import { type BookletId, bookletId } from '../model/identity.js';

const HEAD = z.object({
  schema: z.literal(1),
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

/** The head, or a few words on what is wrong with the text. */
export function readEditionHead(text: string): EditionHead | { readonly why: string } {
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch {
    return { why: 'it is not JSON any more' };
  }
  const head = HEAD.safeParse(parsed);
  if (!head.success) return { why: head.error.issues[0]?.message ?? 'its head is damaged' };
  return { ...head.data, bookletId: bookletId(head.data.bookletId) };
}

/** Reads the head of a frozen edition: enough to number the next one. Drawing issued editions anew is left to later work. */
import { z } from 'zod';
import { type BookletId, bookletId } from '../model/identity.js';

const HEAD = z.object({
  schema: z.literal(1),
  bookletId: z.string().regex(/^[0-9a-f]{32}$/, 'bookletId is not 32 hexadecimal figures'),
  n: z.int().min(1),
});

export interface EditionHead {
  readonly bookletId: BookletId;
  readonly n: number;
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
  return { bookletId: bookletId(head.data.bookletId), n: head.data.n };
}

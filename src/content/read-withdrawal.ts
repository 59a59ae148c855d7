/** Reads `withdrawn.json`, which this program wrote beside an edition. Any text gives an answer. */
import { z } from 'zod';
import type { Withdrawal } from '../model/edition.js';
import type { Unread } from './read-edition.js';

const WITHDRAWAL = z.object({ schema: z.literal(1), date: z.iso.date(), why: z.string() });

export function readWithdrawal(text: string): Withdrawal | Unread {
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch {
    return { why: 'it is not JSON any more' };
  }
  const read = WITHDRAWAL.safeParse(parsed);
  if (read.success) return read.data;
  const [issue] = read.error.issues;
  return { why: issue === undefined ? 'it is damaged' : `${issue.path.join('.')}: ${issue.message}` };
}

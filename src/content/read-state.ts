/** Reads the studio's state: which opaque public folder is whose. Where the file lies is for `app`. */
import { z } from 'zod';
import { clientId, folderId } from '../model/identity.js';
import type { StudioState } from '../model/state.js';

const STATE = z.strictObject({
  schema: z.literal(1),
  folders: z.array(
    z.strictObject({ client: z.string(), folder: z.string().regex(/^[0-9a-f]{32}$/), since: z.iso.date() }),
  ),
  keys: z.array(z.strictObject({ name: z.string(), made: z.iso.date() })),
});

/** The state, or a few words on what is wrong with the text. */
export function readState(text: string): StudioState | { readonly why: string } {
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch {
    return { why: 'it is not JSON any more' };
  }
  const state = STATE.safeParse(parsed);
  if (!state.success) return { why: 'it is damaged' };
  return {
    ...state.data,
    folders: state.data.folders.map((row) => ({
      ...row,
      client: clientId(row.client),
      folder: folderId(row.folder),
    })),
  };
}

/** What must not stand in content or output: keys and the public names of sealed folders. Types only; sealing comes later. */
import type { ClientId, FolderId } from './identity.js';

export interface StudioState {
  readonly schema: 1;
  readonly folders: readonly { readonly client: ClientId; readonly folder: FolderId; readonly since: string }[];
  /** Names of key files below the state folder; never the keys themselves. */
  readonly keys: readonly { readonly name: string; readonly made: string }[];
}

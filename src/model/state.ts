/** What must not stand in content or output: keys and the public names of sealed folders. */
import type { ClientId, FolderId } from './identity.js';

export interface FolderRow {
  readonly client: ClientId;
  readonly folder: FolderId;
  readonly since: string;
}

export interface StudioState {
  readonly schema: 1;
  readonly folders: readonly FolderRow[];
  /** Names of key files below the state folder; never the keys themselves. */
  readonly keys: readonly { readonly name: string; readonly made: string }[];
}

/** What opens a client's folder. */
export type SealedBy = 'link' | 'words' | 'both';

export const SEALED_BY: readonly SealedBy[] = ['link', 'words', 'both'];

/** All that is to be known to open a folder; nothing of it ever stands in one. */
export interface Lock {
  readonly by: SealedBy;
  /** 32 random bytes in base64url: the key of the folder's files. */
  readonly key: string;
  /** What the link carries: the key itself, or 32 other bytes; absent where words alone open. */
  readonly link?: string;
  readonly words?: string;
  /** The lock as it stands in the folder; absent where the link carries the key. */
  readonly closed?: string;
}

/** Codes of problems met while the public folder is held against all that is private. Codes are permanent: never rename, never reuse. */

export interface PublishProblems {
  /** No build stands where it is looked for. */
  readonly 'nothing-to-publish': { readonly folder: string };
  /**
   * Something private stands in a file that anybody may read. `client` is empty where it is
   * nobody's alone, and `text` for keys, which are never said; `others` counts further files with the same.
   */
  readonly 'leak-found': {
    readonly kind: 'name' | 'file-name' | 'e-mail' | 'phone' | 'opaque' | 'note' | 'key' | 'mark';
    readonly text: string;
    readonly client: string;
    readonly path: string;
    readonly inside: string;
    readonly others: number;
  };
  /** A public file of which nothing can be said: a link, no ordinary file, a name no list can carry, or a kind that is not read. */
  readonly 'public-unreadable': { readonly path: string; readonly why: 'link' | 'special' | 'name' | 'kind' };
  /** A folder like those of sealed booklets that is nobody's. */
  readonly 'sealed-folder-unknown': { readonly folder: string };
  /** A sealed folder that is not as its own list says. */
  readonly 'sealed-folder-unlike': {
    readonly folder: string;
    readonly path: string;
    readonly how: 'changed' | 'missing' | 'not-listed';
  };
}

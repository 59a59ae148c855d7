/** Codes of problems found while reading an author's folder. Codes are permanent: never rename, never reuse. */
export interface ContentProblems {
  /** A key the format does not have. */
  readonly 'unknown-key': { readonly key: string; readonly nearest: string };
}

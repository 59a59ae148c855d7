/** Codes of problems met while reading from disk, drawing and writing. Codes are permanent: never rename, never reuse. */
export interface OutputProblems {
  /** The output folder cannot be written. */
  readonly 'output-not-writable': { readonly folder: string; readonly why: string };
}

/** What stands on paper alone. */
export interface PaperWords {
  /** Beside a code to scan. */
  readonly code: string;
  /** Beside one without the key, on a sheet that hangs where everybody sees it. */
  readonly codeWithoutKey: string;
  /** `3 sets`; `3 sets each side`. */
  readonly sets: (count: number, eachSide: boolean) => string;
}

/** What stands on paper alone. */
export interface PaperWords {
  /** Beside a code to scan. */
  readonly code: string;
  /** Beside one without the key, on a sheet that hangs where everybody sees it. */
  readonly codeWithoutKey: string;
  /** Beside the row of strokes on the cover. */
  readonly strokeAWeek: string;
  /** What each mark of the key looks like, for whoever cannot see it. */
  readonly marks: Readonly<Record<'to do' | 'done' | 'easier' | 'left out' | 'extra', string>>;
  /** `3 sets`; `3 sets each side`. */
  readonly sets: (count: number, eachSide: boolean) => string;
}

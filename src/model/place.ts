/** Where in an author's file something stands. Lines and columns count from 1; columns count code points. */
export interface Place {
  /** Path below the content folder, with `/`. */
  readonly file: string;
  readonly line: number;
  readonly column: number;
  /** How many code points the caret line covers; at least 1. */
  readonly length: number;
}

/** Codes of what is wrong inside a coach's own picture. Codes are permanent: never rename, never reuse. */
export interface PictureProblems {
  /** Its bytes cannot be read to the end. */
  readonly 'picture-unreadable': { readonly file: string };
  /** More points than are worked on. Whole millions, rounded up. */
  readonly 'picture-too-large': {
    readonly file: string;
    readonly megapixels: number;
    readonly mostMegapixels: number;
  };
}

/** What an exercise's words ask of a position, where a drawing can be held to it. */
export interface FigureAsk {
  /** The position it speaks of, as the author wrote its phase; the first one where nothing stands here. */
  readonly phase: string | undefined;
  /** The author's line. */
  readonly text: string;
  readonly asks: Asked;
}

export type Asked =
  /** Crease of the hip against the top of the knee. */
  | { readonly what: 'deep'; readonly wanted: 'below' | 'level with' }
  /** `both`: of either; else one that is straight will do. */
  | { readonly what: 'straight'; readonly limb: 'arm' | 'leg'; readonly both: boolean };

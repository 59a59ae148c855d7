/** The place of an exercise's drawing. Nothing stands there where there is none. */

export interface DrawingMarkup {
  /** One `svg` element without scripts, styles or addresses, made by the house itself; its colours are those of the text. */
  readonly svg: string;
  /** What is to be seen, for whoever does not see it. */
  readonly alternative: string;
}

export interface DrawingProps {
  readonly of: DrawingMarkup | undefined;
  /** `whole` for the page and the card, `small` on the line of easier and harder. */
  readonly size: 'whole' | 'small';
}

export function Drawing({ of, size }: DrawingProps) {
  if (of === undefined) return null;
  return (
    <div
      class={`drawing ${size}`}
      role="img"
      aria-label={of.alternative}
      dangerouslySetInnerHTML={{ __html: of.svg }}
    />
  );
}

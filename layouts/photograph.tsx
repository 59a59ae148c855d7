/** A coach's own picture of an exercise, in the widths it was made in. */

/** Where a picture stands for the page that shows it. */
export interface PlacedPhotograph {
  /** What is to be seen. */
  readonly said: string;
  /** For a browser that knows no widths: an address, or the picture itself as data. */
  readonly source: string;
  /** Points of `source`: they give the shape before anything has come. */
  readonly width: number;
  readonly height: number;
  /** Narrowest first; nothing where there is one width alone. */
  readonly widths: readonly { readonly source: string; readonly width: number }[];
}

/** `sizes` says how wide it will stand, in CSS lengths. Without `told` what stands around it tells. */
export function PhotographShown({
  of: { said, source, width, height, widths },
  sizes,
  told = true,
}: {
  readonly of: PlacedPhotograph;
  readonly sizes: string;
  readonly told?: boolean;
}) {
  const set = widths.map((one) => `${one.source} ${one.width}w`).join(', ');
  return (
    <img
      class="photograph"
      src={source}
      srcset={set === '' ? undefined : set}
      sizes={set === '' ? undefined : sizes}
      width={width}
      height={height}
      alt={told ? said : ''}
      loading="lazy"
      decoding="async"
    />
  );
}

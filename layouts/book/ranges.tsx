/** Figures of which a range is never parted after its dash: `4–10` (UAX 14 lets a line end there). */
const RANGE = /(\d+–\d+)/;

export const Ranges = ({ text }: { readonly text: string }) => (
  <>{text.split(RANGE).map((part, i) => (i % 2 === 1 ? <span class="range">{part}</span> : part))}</>
);

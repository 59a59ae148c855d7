/** What a feeler set felt like → what to use then in each week: the lists of several weeks as one. */
import type { ChoiceRow } from '../model/booklet.js';

export interface WeekChoices {
  readonly week: number;
  readonly rows: readonly ChoiceRow[];
}

export interface ChoiceLine {
  /** Good ones left, both included. */
  readonly min: number;
  readonly max: number;
  readonly uses: readonly { readonly week: number; readonly text: string }[];
}

const sameUses = (a: ChoiceLine, b: ChoiceLine): boolean => a.uses.every(({ text }, i) => text === b.uses[i]?.text);

/** From fewest left to most. Null where a list does not say of which numbers it speaks: editions of old have none. */
export function choiceTable(weeks: readonly WeekChoices[]): readonly ChoiceLine[] | null {
  const spans = weeks.flatMap(({ rows }) => rows.map(({ left }) => left));
  const known = spans.filter((span) => span !== undefined);
  if (known.length < spans.length) return null;
  const starts = [...new Set(known.map(({ min }) => min))].sort((a, b) => a - b);
  const end = Math.max(...known.map(({ max }) => max));
  const lines = starts.map((min, i): ChoiceLine => {
    const uses = weeks.flatMap(({ week, rows }) => {
      const row = rows.find(({ left }) => left !== undefined && left.min <= min && min <= left.max);
      return row ? [{ week, text: row.use }] : [];
    });
    return { min, max: (starts[i + 1] ?? end + 1) - 1, uses };
  });
  if (lines.some(({ uses }) => uses.length < weeks.length)) return null;
  const told: ChoiceLine[] = [];
  for (const line of lines) {
    const last = told.at(-1);
    if (last && sameUses(last, line)) told[told.length - 1] = { ...last, max: line.max };
    else told.push(line);
  }
  return told;
}

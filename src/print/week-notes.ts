/** Which weeks a sentence holds for: equal sentences are said once, with the numbers of their weeks before them. */

export interface WeekNote {
  readonly weeks: readonly number[];
  readonly text: string;
  /** Holds for every week there is, so that no number needs to be said. */
  readonly always: boolean;
}

/** Neighbouring weeks with one sentence are one note; in order of first week. Empty sentences are not said. */
export function weekNotes(said: readonly { readonly week: number; readonly text: string }[]): readonly WeekNote[] {
  const texts = new Map<string, number[]>();
  for (const { week, text } of said) {
    if (text !== '') texts.set(text, [...(texts.get(text) ?? []), week]);
  }
  return [...texts].map(([text, weeks]) => ({ text, weeks, always: weeks.length === said.length }));
}

/** `1–3, 5`: runs of three and more are joined by an en dash. */
export function sayWeeks(weeks: readonly number[]): string {
  const runs: { from: number; to: number }[] = [];
  for (const week of weeks) {
    const last = runs.at(-1);
    if (last && week === last.to + 1) last.to = week;
    else runs.push({ from: week, to: week });
  }
  return runs
    .map(({ from, to }) => (from === to ? `${from}` : to === from + 1 ? `${from},\u00a0${to}` : `${from}–${to}`))
    .join(',\u00a0');
}

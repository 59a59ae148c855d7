/** Weeks as they are listed: neighbours are joined. */

/** `[1, 2, 3, 4, 6]` → `1 to 4` and `6`; two neighbours stay apart. `to` is the language's own word between two. */
export function weekRuns(weeks: readonly number[], to: string): readonly string[] {
  const runs: { from: number; to: number }[] = [];
  for (const week of weeks) {
    const run = runs.at(-1);
    if (run && run.to === week - 1) run.to = week;
    else runs.push({ from: week, to: week });
  }
  return runs.flatMap(({ from, to: last }) => {
    if (last === from) return [`${from}`];
    return last === from + 1 ? [`${from}`, `${last}`] : [`${from} ${to} ${last}`];
  });
}

/** Which known word a mistyped one is likely to mean. */

const LONGEST = 60;

/** The known word fewest changes away, at most a third of the longer word's letters; empty if none is. Ties: the first by code point order of `known`. */
export function nearestOf(text: string, known: Iterable<string>): string {
  const word = text.normalize('NFC').toLowerCase();
  if (word.length > LONGEST) return '';
  let nearest = '';
  let fewest = Number.POSITIVE_INFINITY;
  for (const candidate of known) {
    const other = candidate.toLowerCase();
    const most = Math.max(1, Math.floor(Math.max(word.length, other.length) / 3));
    if (Math.abs(word.length - other.length) > most || other.length > LONGEST) continue;
    const changes = changesBetween(word, other);
    if (changes <= most && changes < fewest) {
      fewest = changes;
      nearest = candidate;
    }
  }
  return nearest;
}

/** Letters put in, left out, changed, or two neighbours exchanged. */
function changesBetween(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        least = Math.min(least, (before[j - 2] ?? 0) + 1);
      }
      row.push(least);
    }
    before = last;
    last = row;
  }
  return last[b.length] ?? 0;
}

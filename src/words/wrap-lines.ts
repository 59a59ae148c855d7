/** A sentence in lines of a terminal: broken at ordinary spaces alone, every line after the first set in as far as told. */
const COLUMNS = 80;

/** `first` stands before the first line; the others begin below where its text does, and `hang` further in. */
export function wrapLine(first: string, text: string, hang = 0): readonly string[] {
  const indent = ' '.repeat(lengthOf(first) + hang);
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of text.split(' ').filter((part) => part !== '')) {
    if (!empty && lengthOf(line) + 1 + lengthOf(word) > COLUMNS) {
      lines.push(line);
      line = indent;
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line.trimEnd()];
}

const lengthOf = (text: string): number => Array.from(text).length;

/** To so many columns, cut with an ellipsis where it is longer. */
export function fitTo(text: string, columns: number): string {
  const letters = Array.from(text);
  const cut = letters.length > columns ? `${letters.slice(0, columns - 1).join('')}…` : text;
  return cut + ' '.repeat(Math.max(0, columns - lengthOf(cut)));
}

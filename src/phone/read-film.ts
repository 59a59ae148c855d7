/** What the page of an exercise asks to be filmed: its words stand there already and are said once. */
export interface FilmAsked {
  /** As its page calls it. */
  readonly exercise: string;
  readonly id: string;
  readonly lines: readonly string[];
}

/** `null` where no film is asked for. */
export function readFilm(book: ParentNode): FilmAsked | null {
  const asked = book.querySelector('.film');
  const leaf = asked?.closest('.leaf');
  if (!asked || !leaf) return null;
  return {
    exercise: leaf.querySelector('h2')?.textContent ?? '',
    id: leaf.id.replace(/^exercise-/, ''),
    lines: [...asked.querySelectorAll('li')].map(({ textContent }) => textContent ?? ''),
  };
}

/** Languages a booklet can be made in: the words of each are a catalogue’s, and one listed here without one does not compile. */

export const BOOKLET_LANGUAGES = ['en'] as const;
export type BookletLanguage = (typeof BOOKLET_LANGUAGES)[number];

/** Norwegian without more is nearly always the written form of these (ISO 639-3 has it as the macrolanguage of two). */
const MEANT: Readonly<Record<string, BookletLanguage>> = {};

const isSpoken = (subtag: string): subtag is BookletLanguage => BOOKLET_LANGUAGES.some((known) => known === subtag);

/** The language a booklet for this tag (BCP 47) is made in, by its first subtag; `undefined` where there is none. */
export function bookletLanguage(tag: string): BookletLanguage | undefined {
  const [subtag = ''] = tag.toLowerCase().split('-');
  if (Object.hasOwn(MEANT, subtag)) return MEANT[subtag];
  return isSpoken(subtag) ? subtag : undefined;
}

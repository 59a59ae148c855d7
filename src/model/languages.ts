/** Languages a booklet can be made in: the words of each are a catalogue’s, and one listed here without one does not compile. */

export const BOOKLET_LANGUAGES = ['en', 'nb'] as const;
export type BookletLanguage = (typeof BOOKLET_LANGUAGES)[number];

/** Norwegian without more is nearly always its first written form (ISO 639: `no` is the language, `nb` and `nn` its forms). */
const MEANT: Readonly<Record<string, string>> = { no: 'nb' };

/** The language of a tag (BCP 47) without script or region, in lower case: `en` for `en-GB`. */
export function primaryLanguage(tag: string): string {
  const [subtag = ''] = tag.toLowerCase().split('-');
  return (Object.hasOwn(MEANT, subtag) ? MEANT[subtag] : undefined) ?? subtag;
}

/** The language a booklet for this tag is made in; `undefined` where there is none. */
export function bookletLanguage(tag: string): BookletLanguage | undefined {
  const wanted = primaryLanguage(tag);
  return BOOKLET_LANGUAGES.find((known) => known === wanted);
}

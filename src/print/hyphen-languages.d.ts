/** What is used of `hyphen`: its languages are folders, which a module cannot import by their bare names. */
declare module 'hyphen/en-gb/index.js' {
  const language: HyphenLanguage;
  export default language;
}
declare module 'hyphen/nb/index.js' {
  const language: HyphenLanguage;
  export default language;
}

interface HyphenLanguage {
  readonly hyphenateSync: (
    text: string,
    options: { readonly hyphenChar: string; readonly minWordLength: number },
  ) => string;
}

/** Words in another language than those around them: spoken as they are, and in their own direction. */
import type { ComponentChildren } from 'preact';

/** `lang` is a BCP 47 tag; absent where the language is that of the words around. */
export const OwnWords = ({
  lang,
  children,
}: {
  readonly lang?: string | undefined;
  readonly children: ComponentChildren;
}) => (lang === undefined ? children : <bdi lang={lang}>{children}</bdi>);

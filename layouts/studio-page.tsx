/** The frame of the studio's own pages: a running head, the page, and the foot. */
import type { ComponentChildren } from 'preact';

export interface StudioPageProps {
  readonly title: string;
  /** Where the running head leads, and what it says; empty on the first page. */
  readonly home?: { readonly href: string; readonly text: string };
  /** What the page is printed as, where it is not a page. */
  readonly kind?: 'card';
  readonly foot: ComponentChildren;
  readonly children: ComponentChildren;
}

export function StudioPage({ title, home, kind, foot, children }: StudioPageProps) {
  return (
    <div class={kind === undefined ? 'studio' : `studio ${kind}`}>
      <header>
        {home ? (
          <p class="soft">
            <a href={home.href}>{home.text}</a>
          </p>
        ) : null}
        <h1>{title}</h1>
      </header>
      {children}
      <footer class="soft">{foot}</footer>
    </div>
  );
}

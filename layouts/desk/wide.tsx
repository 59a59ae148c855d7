import type { ComponentChildren } from 'preact';

/** What may be wider than the screen is moved sideways by key as well, and so takes the focus (WCAG 2.2, 2.1.1). */
export function Wide({ children }: { readonly children: ComponentChildren }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls, which not every browser gives a key of itself
    <div class="wide" tabIndex={0}>
      {children}
    </div>
  );
}

/** What the rules of axe-core find on a page. */
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

interface Axe {
  readonly run: (
    within: string | Document,
    how: object,
  ) => Promise<{
    readonly violations: readonly { readonly id: string; readonly nodes: readonly { readonly html: string }[] }[];
  }>;
}

export interface Sought {
  /** By these rules alone; all there are where it is left out. */
  readonly rules?: readonly string[];
  /** A selector; the whole page where it is left out. */
  readonly within?: string;
  /** Contrast of 7 to 1 as well (WCAG 2.2, 1.4.6). */
  readonly strictContrast?: boolean;
}

let source: Promise<string> | undefined;

/**
 * Put in from outside: the page itself runs nothing but its own. Leaves that are turned away are lifted out while it looks:
 * nothing on them is shown, and to go through each takes longer than all else.
 */
export async function axeFaults(page: Page, sought: Sought = {}): Promise<readonly string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) {
    source ??= readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
    await page.evaluate(await source);
  }
  return page.evaluate(async ({ rules, within, strictContrast }) => {
    const { axe } = globalThis as unknown as { readonly axe: Axe };
    const lifted = [...document.querySelectorAll('.leaf[hidden]')].map((leaf) => {
      const place = document.createComment('');
      leaf.replaceWith(place);
      return { leaf, place };
    });
    try {
      const { violations } = await axe.run(within ?? document, {
        resultTypes: ['violations'],
        ...(rules === undefined ? {} : { runOnly: rules }),
        ...(strictContrast === true ? { rules: { 'color-contrast-enhanced': { enabled: true } } } : {}),
      });
      return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`);
    } finally {
      for (const { leaf, place } of lifted) place.replaceWith(leaf);
    }
  }, sought);
}

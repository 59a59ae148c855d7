/**
 * Hands pages to Eleventy as one virtual template, a page for each item, and lets it write them. Eleventy reads no
 * content: the items are values already checked. It is loaded only when there is something to write.
 * It never empties a folder: whoever calls gives a fresh one.
 */
export interface Page {
  /** Below the output folder, with `/`. */
  readonly path: string;
  readonly render: () => string;
}

export interface PageRun {
  /** Any folder without templates of Eleventy's own. */
  readonly input: string;
  readonly out: string;
  readonly pages: readonly Page[];
}

export async function writePages({ input, out, pages }: PageRun): Promise<void> {
  const { default: Eleventy } = await import('@11ty/eleventy');
  const eleventy = new Eleventy(input, out, {
    configPath: false,
    quietMode: true,
    config: (config) => {
      // Its cache of templates lasts as long as the process, and would give a second run the first one's pages.
      config.setUseTemplateCache(false);
      config.setUseGitIgnore(false);
      config.setTemplateFormats(['11ty.js']);
      config.addGlobalData('pages', pages);
      config.addTemplate<{ readonly item: Page }>('pages.11ty.js', {
        data: () => ({
          pagination: { data: 'pages', size: 1, alias: 'item', addAllPagesToCollections: false },
          permalink: ({ item }) => item.path,
        }),
        render: ({ item }) => item.render(),
      });
    },
  });
  eleventy.disableLogger();
  // These two are ignored when they are returned from `config`.
  await eleventy.initializeConfig({ markdownTemplateEngine: false, htmlTemplateEngine: false });
  await eleventy.write();
}

/** The part of Eleventy that is used; the package carries no types. */
declare module '@11ty/eleventy' {
  export interface EleventyConfig {
    addGlobalData(key: string, value: unknown): void;
    addTemplate<Data>(
      name: string,
      template: {
        data: () => {
          readonly pagination: {
            readonly data: string;
            readonly size: number;
            readonly alias: string;
            readonly addAllPagesToCollections: boolean;
          };
          readonly permalink: (data: Data) => string;
        };
        render: (data: Data) => string;
      },
    ): void;
    setTemplateFormats(formats: readonly string[]): void;
    setUseTemplateCache(use: boolean): void;
    setUseGitIgnore(use: boolean): void;
  }
  export default class Eleventy {
    constructor(
      input: string,
      output: string,
      options: { configPath: false; quietMode: true; config: (config: EleventyConfig) => void },
    );
    disableLogger(): void;
    initializeConfig(overrides: { markdownTemplateEngine: false; htmlTemplateEngine: false }): Promise<void>;
    write(): Promise<unknown>;
  }
}

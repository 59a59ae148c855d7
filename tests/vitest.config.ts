import { defineConfig } from 'vitest/config';

/** Puts a module of its own in the place of one that is imported: nothing it loads may serve another file. */
const ALONE = ['tests/engine/no-idle-rule.test.ts'];

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    globalSetup: ['tests/compile-first.ts'],
    maxWorkers: 2,
    testTimeout: 180_000,
    hookTimeout: 300_000,
    projects: [
      {
        extends: true,
        test: {
          name: 'shared',
          include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
          exclude: ALONE,
          // What a file loads serves the next: the faces, the demo studio read and drawn.
          isolate: false,
        },
      },
      { extends: true, test: { name: 'alone', include: ALONE } },
    ],
  },
});

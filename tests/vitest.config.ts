import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    globalSetup: ['tests/compile-first.ts'],
    maxWorkers: 2,
    // What a file loads serves the next: the faces, the demo studio read and drawn. No test changes what it imports.
    isolate: false,
    testTimeout: 180_000,
    hookTimeout: 300_000,
  },
});

import type { Remembered, Remembering } from '../recall.js';

export function rememberMarks({ client }: Remembering): Remembered {
  return { client, recalls: new Map(), findings: [], problems: [] };
}

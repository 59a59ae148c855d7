import type { Remembered, Remembering } from '../recall.js';

export function rememberSeen({ client }: Remembering): Remembered {
  return { client, recalls: new Map(), findings: [], problems: [] };
}

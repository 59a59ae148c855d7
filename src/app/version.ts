/** The program's version, from the one place that has it. */
import { readFileSync } from 'node:fs';

/** Found from this file upwards, since it runs compiled in `dist/` and, in tests, from source. */
function readVersion(): string {
  for (const up of ['../../package.json', '../../../package.json']) {
    try {
      const parsed: unknown = JSON.parse(readFileSync(new URL(up, import.meta.url), 'utf8'));
      if (typeof parsed === 'object' && parsed !== null && 'version' in parsed) return String(parsed.version);
    } catch {
      // Not at this height; look one higher.
    }
  }
  return 'unknown';
}

export const VERSION: string = readVersion();

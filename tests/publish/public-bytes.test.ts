/** The public folder is the same, byte for byte, whether there are clients or not: but for sealed folders. */
import { existsSync, realpathSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { bytesBelow, workFolder } from '../app/run-chalkleaf.js';
import { demoStudio } from './demo-studio.js';

const work = workFolder();

test('the demo studio with two clients and with none', () => {
  try {
    const { content, output, run } = demoStudio(
      join(work.path, 'demo'),
      ['nell-fane', 'imre-fane'],
      'https://example.org/gym/',
    );
    const done = (...args: readonly string[]): void => {
      const ran = run(...args);
      expect(ran.code, `${args.join(' ')}: ${ran.out}${ran.err}`).toBe(0);
    };
    const isSealed = (path: string): boolean => /^[0-9a-f]{32}\//.test(path);
    const built = (): ReturnType<typeof bytesBelow> => bytesBelow(realpathSync(join(output, 'public')));
    done('issue', 'nell-fane');
    done('build', '--only', 'nell-fane');
    const withClients = built();
    expect(withClients.filter(([path]) => isSealed(path)).length).toBeGreaterThan(10);
    rmSync(join(content, 'clients'), { recursive: true });
    done('build');
    const without = built();
    expect(existsSync(join(output, 'private', 'clients'))).toBe(false);
    expect(without.filter(([path]) => isSealed(path))).toEqual([]);
    expect(without.length).toBeGreaterThan(90);
    expect(withClients.filter(([path]) => !isSealed(path))).toEqual(without);
  } finally {
    work.away();
  }
}, 400_000);

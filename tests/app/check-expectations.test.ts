/** A programme's Expect lines: quiet while they hold, and a reason to withhold that client when a number moves. */
import { appendFileSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { chalkleaf, smallStudio, workFolder, writeFiles } from './run-chalkleaf.js';

let work = workFolder();
beforeEach(() => {
  work = workFolder();
  writeFiles(work.path, smallStudio());
});
afterEach(() => work.away());

// By hand: 12 kg × 10 with 3 left at 70 kg: R = 12,000 + ⌊0.878 × 70,000⌋ = 73,460, K = 73,460 × 430, so 13 to failure
// at 12 kg. The first block's first weeks ask for 4 in reserve: 9.
const check = (line: string) => {
  appendFileSync(join(work.path, 'programmes/first-six-weeks.md'), `\n## Expect\n\n- ${line}\n`);
  return chalkleaf(['check', '--content', work.path, '--today', '2026-11-24']);
};

describe('Expect lines', () => {
  test.each(['12 kg × 9', '12 kg x 9', '12 kg × 9, 3 sets'])('hold: %s', (text) => {
    const ran = check(`ash-venn, week 1, A, goblet-squat: ${text}`);
    expect(ran.out).not.toContain('error');
    expect(ran.code).toBe(0);
  });

  test.each(['12 kg × 10', '16 kg × 9', '9 reps'])('do not hold: %s', (text) => {
    const ran = check(`ash-venn, week 1, A, goblet-squat: ${text}`);
    expect(ran.code).toBe(1);
    expect(ran.out).toMatch(/programmes\/first-six-weeks\.md:\d+:3 {2}error {2}expectation-missed/);
    expect(ran.out).toContain('‘12 kg × 9’');
    expect(ran.out).toContain('withheld: ash-venn.');
  });

  test('hold nobody any more whose marks have come back', () => {
    const where = ['--content', work.path, '--state', join(work.path, '..', 'state'), '--today', '2026-11-24'];
    chalkleaf(['issue', 'ash-venn', ...where]);
    const edition = readFileSync(join(work.path, 'clients/ash-venn/editions/1/edition.json'), 'utf8');
    const bookletId = /"bookletId": "([0-9a-f]{32})"/.exec(edition)?.[1];
    const set = {
      ...{
        id: '6f1e2a52-9b5c-4c07-8f57-0a4c2f9d7b11',
        seq: 1,
        edition: 1,
        at: '2026-11-24T18:00:00+00:00',
        kind: 'set',
      },
      ...{ key: '1/1/goblet-squat/both/work/1', exercise: 'goblet-squat', tempo: 'normal', done: 'done', reps: 9 },
      asPlanned: true,
    };
    const log = { schema: 1, bookletId, device: 'phone', events: [set] };
    writeFiles(work.path, new Map([['clients/ash-venn/log/phone.json', JSON.stringify(log)]]));
    const ran = check('ash-venn, week 2, A, goblet-squat: 4 reps');
    expect(ran.out).not.toContain('expectation-missed');
    expect(ran.code).toBe(0);
  });
});

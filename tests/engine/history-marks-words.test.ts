/** What a client and a coach read of marks: never that a mark was a test. */
import { describe, expect, it } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import type { Client } from '../../src/model/client.js';
import type { History } from '../../src/model/history.js';
import { sayReason } from '../../src/words/say-reason.js';
import { speechOf } from '../../src/words/speech.js';
import { PLACE } from './generate-exercises.js';
import { aClient, aLibrary, anExercise, on, oneSession } from './make-block.js';
import { aHistory, alike, aMarkedRow, aSessionDone } from './make-history.js';

const speech = speechOf('en-GB');
const press = anExercise('press', { pattern: 'push' });
const marked = (date: string, reps: number, left: number): History =>
  aHistory(aSessionDone(date, [aMarkedRow('press', { sets: alike(3, { kg: 16, reps }), left })]));

function said(history: History, client: Partial<Client> = {}): Readonly<Record<'client' | 'coach', string>> {
  const { value } = planBlock({
    library: aLibrary([press], oneSession('press')),
    client: aClient(client),
    today: on('2026-12-28'),
    edition: 0,
    history,
  });
  const reasons = (value?.weeks ?? []).flatMap(({ sessions }) =>
    sessions.flatMap(({ groups }) => groups.flatMap(({ items }) => items.flatMap((item) => item.reasons))),
  );
  const to = (audience: 'client' | 'coach') =>
    [...new Set(reasons.filter((one) => one.audience === audience).map((one) => sayReason(one, audience, speech)))]
      .join('\n')
      .replaceAll('\u00a0', ' ');
  return { client: to('client'), coach: to('coach') };
}

describe('marks in words', () => {
  it('to the client their marks, to the coach the set', () => {
    const { client, coach } = said(marked('2026-12-03', 8, 2));
    expect(client).toContain('Set by your marks of 3 December 2026.');
    expect(coach).toContain('Rests on a set marked on 3 December 2026: 16 kg × 8, 2 left.');
    expect(`${client}\n${coach}`).not.toMatch(/\btest/i);
  });

  it('weak evidence is no weak test', () => {
    const { coach } = said(marked('2026-12-03', 10, 6));
    expect(coach).toContain('weak evidence');
    expect(coach).not.toMatch(/\btest/i);
  });

  it('marks from before a break are marks', () => {
    const breaks = [{ from: on('2026-12-01'), until: on('2026-12-27'), cause: 'away' as const, place: PLACE }];
    const { coach } = said(marked('2026-11-28', 8, 2), { breaks });
    expect(coach).toContain('Marked on 28 November 2026, before a break of 27 days: taken as weak');
  });
});

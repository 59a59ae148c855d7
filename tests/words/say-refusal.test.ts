/** What an exercise that hurt was refused for: that it hurt, never a caution that nobody wrote. */
import { expect, test } from 'vitest';
import { exerciseId, rowId, sessionId } from '../../src/model/identity.js';
import type { Refusal, Unlock } from '../../src/model/problems-plan.js';
import { planSayings } from '../../src/words/problems/plan.js';
import { refusedFor } from '../../src/words/why-account.js';
import { reason } from '../fixtures/plan.js';

const hurt: readonly Refusal[] = [
  { exercise: 'hinge', cause: 'avoid', detail: 'lower back' },
  { exercise: 'hinge', cause: 'pain', detail: 'lower back' },
  { exercise: 'swing', cause: 'avoid', detail: 'lower back' },
  { exercise: 'press', cause: 'avoid', detail: 'overhead' },
];
const said = (unlocks: readonly Unlock[]) =>
  planSayings['no-version-allowed']({
    session: sessionId('a'),
    row: rowId('hinge'),
    exercise: exerciseId('hinge'),
    refused: hurt,
    unlocks,
  }).message;

test('in a problem, of the one that hurt and of those looked at in its place', () => {
  expect(said([])).toContain(
    'hinge (it hurt the lower back); swing (it asks for the lower back, which hurt); press (it asks for work overhead, and a caution says avoid).',
  );
});

test('a caution that the coach did write is said beside it', () => {
  const wrote = { degree: 'avoid', side: 'both', by: 'A coach', until: '', review: '' } as const;
  expect(said([{ kind: 'caution', exercise: 'hinge', what: 'lower back', ...wrote }])).toContain(
    'hinge (it asks for the lower back, and a caution says avoid); hinge (it hurt the lower back)',
  );
});

test('in why another version is done', () => {
  const inputs = [
    ['programme', 'hinge'],
    ['refused: avoid', 'lower back'],
    ['refused: pain', 'lower back'],
  ].map(([name = '', value = '']) => ({ name, value, unit: '' }));
  expect(refusedFor(reason('version-chosen', 'coach', inputs))).toEqual(['it hurt the lower back']);
});

/** Which marks are passed on: all of the block each time, and whatever was never passed on before. */
import { describe, expect, test } from 'vitest';
import { readText } from '../../src/marks/read-text.js';
import { bookletId } from '../../src/model/identity.js';
import type { LogEvent } from '../../src/model/log.js';
import { fileNameOf, messageOf } from '../../src/phone/send-marks.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { everyShapePlan } from '../fixtures/every-shape-plan.js';
import { doAsPlanned } from '../session/make-marks.js';

const booklet = bookletId('0123456789abcdef0123456789abcdef');
const whole = everyShapePlan(3);
const plan = clientPlanOf(whole, { bookletId: booklet, standing: 'stands' });
const note = (seq: number, at: string): LogEvent => ({
  id: `7c9e6679-7425-40de-944b-${String(seq).padStart(12, '0')}`,
  seq,
  edition: 1,
  at,
  kind: 'note',
  text: `note ${seq}`,
});
const seqsIn = (text: string): readonly number[] => {
  const logs = readText(text);
  return 'kind' in logs ? expect.fail(logs.kind) : logs.flatMap(({ events }) => events.map(({ seq }) => seq));
};

describe('a message', () => {
  const events = [1, 2].flatMap((occurrence) => doAsPlanned(whole, occurrence, { edition: 1 }));

  test('holds every mark of the block, in order, and reads back to the same', () => {
    const text = messageOf({ plan, device: 'phone-1', events: [...events].reverse(), passedAt: null });
    expect(readText(text)).toEqual([{ schema: 1, bookletId: booklet, device: 'phone-1', events }]);
  });

  test('holds them again after they were passed on: nobody knows whether they came', () => {
    const passedAt = Date.parse('2027-03-01T12:00:00Z');
    const again = messageOf({ plan, device: 'phone-1', events, passedAt });
    expect(seqsIn(again)).toEqual(events.map(({ seq }) => seq));
  });

  test('of a block before, only what was never passed on', () => {
    const before = [note(1, '2026-11-01T10:00:00+00:00'), note(2, '2026-12-20T10:00:00+00:00')];
    const now = note(3, '2027-01-06T10:00:00+00:00');
    const sent = (passedAt: number | null) =>
      seqsIn(messageOf({ plan, device: 'phone-1', events: [...before, now], passedAt }));
    expect(sent(null)).toEqual([1, 2, 3]);
    expect(sent(Date.parse('2026-12-01T00:00:00Z'))).toEqual([2, 3]);
    expect(sent(Date.parse('2027-01-07T00:00:00Z'))).toEqual([3]);
  });

  test('there is none of nothing, and none of a draft', () => {
    expect(messageOf({ plan, device: 'phone-1', events: [], passedAt: null })).toBe('');
    expect(messageOf({ plan: clientPlanOf(whole), device: 'phone-1', events, passedAt: null })).toBe('');
  });

  test('goes by a name that tells nothing of anybody', () => {
    expect(fileNameOf('2027-01-06')).toBe('marks-2027-01-06.txt');
  });
});

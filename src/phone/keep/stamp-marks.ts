/** Gives marks what every event bears: an id, its place in the device's log, the edition, the local moment. */
import { v4 } from 'uuid';
import type { EventHead, LogEvent } from '../../model/log.js';
import type { Mark } from '../../session/training/told.js';

const two = (n: number): string => String(Math.trunc(n)).padStart(2, '0');

/** Local date and time with offset, RFC 3339, in whole seconds, as the device's own clock and zone have it. */
export function localMoment(now: Date): string {
  const date = `${String(now.getFullYear()).padStart(4, '0')}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  const time = `${two(now.getHours())}:${two(now.getMinutes())}:${two(now.getSeconds())}`;
  const east = -now.getTimezoneOffset();
  const size = Math.abs(east);
  return `${date}T${time}${east < 0 ? '-' : '+'}${two(size / 60)}:${two(size % 60)}`;
}

/** A clock put back by more than this was wrong by days: then it counts as it stands. */
const PUT_BACK_MS = 12 * 60 * 60 * 1000;

/**
 * Never before the marks already made, where a clock was put back in between: of two words on one set the later counts.
 * Two of one moment are told apart by their places.
 */
export function stampedAt(now: Date, before: readonly Pick<EventHead, 'at'>[]): Date {
  const latest = before.reduce((most, { at }) => Math.max(most, Date.parse(at) || 0), 0);
  return latest > now.getTime() && latest - now.getTime() < PUT_BACK_MS ? new Date(latest) : now;
}

/** `before` are the marks already in the device's log. */
export function stampMarks(
  marks: readonly Mark[],
  { edition, before, now }: { readonly edition: number; readonly before: readonly EventHead[]; readonly now: Date },
): readonly LogEvent[] {
  const at = localMoment(stampedAt(now, before));
  const last = before.reduce((most, { seq }) => Math.max(most, seq), 0);
  return marks.map((mark, index) => {
    const head: EventHead = { id: v4(), seq: last + index + 1, edition, at };
    return { ...head, ...mark };
  });
}

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

/** `before` is the last place taken in the device's log. */
export function stampMarks(
  marks: readonly Mark[],
  { edition, before, now }: { readonly edition: number; readonly before: number; readonly now: Date },
): readonly LogEvent[] {
  const at = localMoment(now);
  return marks.map((mark, index) => {
    const head: EventHead = { id: v4(), seq: before + index + 1, edition, at };
    return { ...head, ...mark };
  });
}

/**
 * What goes into an envelope: pressed, then made as long as others of its kind, so that its length tells next to
 * nothing. A gzip member (RFC 1952), and noughts after it up to a whole number of steps; whoever unpacks gzip lets them be.
 */
import { gzipSync, Inflate } from 'fflate';

/** Booklets differ by some kilobytes; a few such steps are all that a stranger can tell apart. */
export const STEP_BYTES = 8192;
/** Marks of a day and marks of a month look alike within it; a message is not made long for nothing. */
export const MARKS_STEP_BYTES = 1024;

/** Far beyond any booklet. */
const MOST_BYTES = 64 * 1024 * 1024;
/** What RFC 1952 puts first where nothing is said of name or time. */
const HEAD_BYTES = 10;
const SLICE_BYTES = 65_536;

export function frame(bytes: Uint8Array, step: number): Uint8Array {
  // No time in it, so that the same is the same.
  const pressed = gzipSync(bytes, { level: 9, mtime: 0 });
  const framed = new Uint8Array(Math.ceil(pressed.length / step) * step);
  framed.set(pressed);
  return framed;
}

/** `null` where it is no frame of ours, or holds more than anything of ours. */
export function unframe(framed: Uint8Array, most = MOST_BYTES): Uint8Array | null {
  if (framed.length < HEAD_BYTES || framed[0] !== 0x1f || framed[1] !== 0x8b || framed[3] !== 0) return null;
  const parts: Uint8Array[] = [];
  let length = 0;
  const inflate = new Inflate((part) => {
    parts.push(part);
    length += part.length;
  });
  try {
    for (let at = HEAD_BYTES; at < framed.length; at += SLICE_BYTES) {
      inflate.push(framed.subarray(at, at + SLICE_BYTES), at + SLICE_BYTES >= framed.length);
      if (length > most) return null;
    }
  } catch {
    return null;
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

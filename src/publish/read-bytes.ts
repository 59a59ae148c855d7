/** Bytes that are no text, read as if they were. */
import type { FileText, Inside } from './leak-check.js';

/** In the ways in which programs write text among bytes of something else. */
export function asBytes(bytes: Uint8Array, inside: Inside): readonly FileText[] {
  const read = (coding: string, from: number): FileText => ({
    inside,
    text: new TextDecoder(coding).decode(bytes.subarray(from)),
    byChance: true,
  });
  return [
    read('latin1', 0),
    read('utf-8', 0),
    read('utf-16le', 0),
    read('utf-16le', 1),
    read('utf-16be', 0),
    read('utf-16be', 1),
  ];
}

/** `null` where it cannot be read. */
export function tryTo(read: () => Uint8Array): Uint8Array | null {
  try {
    return read();
  } catch {
    return null;
  }
}

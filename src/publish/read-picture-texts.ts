/**
 * What is written into a picture beside its points: comments and metadata, where a short name stands by nobody's chance.
 * The points themselves are random bytes, in which only what is long enough is looked for.
 */
import { unzlibSync } from 'fflate';
import type { FileText } from './leak-check.js';
import { asBytes, tryTo } from './read-bytes.js';

const SIGNATURE = 8;

const nameAt = (bytes: Uint8Array, at: number): string => new TextDecoder('latin1').decode(bytes.subarray(at, at + 4));
const viewOf = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

const asWritten = (bytes: Uint8Array): readonly FileText[] =>
  asBytes(bytes, 'its metadata').map(({ inside, text }) => ({ inside, text }));

/** All of it by chance, and what was written into it for certain. */
const pictureTexts = (bytes: Uint8Array, written: readonly Uint8Array[]): readonly FileText[] => [
  ...written.flatMap(asWritten),
  ...asBytes(bytes, 'its metadata'),
];

/** Chunks of words, pressed or not (PNG specification, third edition, 11.3.3), and every other chunk but the picture's own. */
export function pngTexts(bytes: Uint8Array): readonly FileText[] | null {
  const written: Uint8Array[] = [];
  const view = viewOf(bytes);
  let at = SIGNATURE;
  while (at + 12 <= bytes.length) {
    const length = view.getUint32(at);
    const type = nameAt(bytes, at + 4);
    const body = bytes.subarray(at + 8, at + 8 + length);
    if (body.length < length) return null;
    at += length + 12;
    if (type === 'IDAT' || type === 'fdAT') continue;
    written.push(body);
    if (type === 'IEND') break;
    const pressed = type === 'zTXt' || type === 'iTXt' || type === 'iCCP' ? pressedPart(body) : null;
    if (pressed !== null) written.push(pressed);
  }
  // Whatever follows the last chunk, or stands in part of one.
  return [...written, bytes.subarray(at)].flatMap(asWritten);
}

/** The pressed text of a chunk begins wherever a stream of zlib can be read. */
function pressedPart(body: Uint8Array): Uint8Array | null {
  for (let at = body.indexOf(0x78); at >= 0; at = body.indexOf(0x78, at + 1)) {
    const read = tryTo(() => unzlibSync(body.subarray(at)));
    if (read !== null) return read;
  }
  return null;
}

const MARKER = 0xff;
const [END, SCAN, COMMENT, APPLICATION] = [0xd9, 0xda, 0xfe, 0xe0];

/** Comments and segments of applications (ITU-T T.81, B.1.1 and B.2.4), before and between the scans; and what follows the end. */
export function jpegTexts(bytes: Uint8Array): readonly FileText[] {
  const written: Uint8Array[] = [];
  const view = viewOf(bytes);
  let at = 2;
  while (at + 4 <= bytes.length) {
    const [before, marker = 0] = bytes.subarray(at, at + 2);
    // Among the points of a scan no marker stands that has a length.
    if (before !== MARKER || marker === 0 || marker === MARKER || (marker >= 0xd0 && marker <= 0xd8)) {
      at += 1;
      continue;
    }
    if (marker === END) break;
    const length = view.getUint16(at + 2);
    const isWritten = marker === COMMENT || (marker >= APPLICATION && marker < APPLICATION + 16);
    if (isWritten) written.push(bytes.subarray(at + 4, at + 2 + length));
    at += marker === SCAN || isWritten || length >= 2 ? 2 + length : 1;
  }
  return pictureTexts(bytes, [...written, bytes.subarray(Math.min(at + 2, bytes.length))]);
}

/** Comments, plain text and data of applications (GIF89a, sections 24 to 26), each block whole and put together. */
export function gifTexts(bytes: Uint8Array): readonly FileText[] {
  const written: Uint8Array[] = [];
  const tableAt = (packed: number): number => ((packed & 0x80) === 0 ? 0 : 3 * 2 ** ((packed & 7) + 1));
  /** Where the parts that begin here end. */
  const partsTo = (from: number, parts: number[] = []): number => {
    let at = from;
    for (let length = bytes[at] ?? 0; length > 0; length = bytes[at] ?? 0) {
      parts.push(...bytes.subarray(at + 1, at + 1 + length));
      at += 1 + length;
    }
    return at + 1;
  };
  let at = 13 + tableAt(bytes[10] ?? 0);
  while (at < bytes.length) {
    const block = bytes[at];
    if (block === 0x21) {
      const parts: number[] = [];
      const end = partsTo(at + 2, parts);
      written.push(bytes.subarray(at + 2, end), Uint8Array.from(parts));
      at = end;
    } else if (block === 0x2c) {
      at = partsTo(at + 11 + tableAt(bytes[at + 9] ?? 0));
    } else {
      break;
    }
  }
  return pictureTexts(bytes, [...written, bytes.subarray(Math.min(at + 1, bytes.length))]);
}

/** Chunks that hold points, alone or in frames (WebP container specification, RFC 9649, section 2). */
const OF_POINTS: ReadonlySet<string> = new Set(['VP8 ', 'VP8L', 'ALPH', 'ANMF']);

/** Every chunk but those, and what follows the last. */
export function riffTexts(bytes: Uint8Array): readonly FileText[] {
  const written: Uint8Array[] = [];
  const view = viewOf(bytes);
  const end = bytes.length < SIGNATURE ? 0 : Math.min(bytes.length, view.getUint32(4, true) + SIGNATURE);
  let at = 12;
  while (at + SIGNATURE <= end) {
    const length = view.getUint32(at + 4, true);
    if (!OF_POINTS.has(nameAt(bytes, at))) written.push(bytes.subarray(at + SIGNATURE, at + SIGNATURE + length));
    at += SIGNATURE + length + (length % 2);
  }
  return pictureTexts(bytes, [...written, bytes.subarray(Math.min(at, bytes.length))]);
}

/** A UUID's 128 bits in 25 small letters and figures: nothing that a message could take for bold, or for a link. */
const DIGITS = 25;

export const writeShortId = (uuid: string): string =>
  BigInt(`0x${uuid.replaceAll('-', '')}`)
    .toString(36)
    .padStart(DIGITS, '0');

/** `null` where it is none. */
export function readShortId(text: string): string | null {
  if (!/^[0-9a-z]{25}$/.test(text)) return null;
  const bits = Array.from(text).reduce((sum, digit) => sum * 36n + BigInt(Number.parseInt(digit, 36)), 0n);
  if (bits >> 128n !== 0n) return null;
  return bits
    .toString(16)
    .padStart(32, '0')
    .replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}

/**
 * CRC-32 as in ISO/IEC 3309 and ITU-T V.42 (reflected polynomial EDB88320): it notices every change of up to 32 bits in
 * a row, and all but one in four thousand million others. It guards against slips, not against deceit.
 */
const TABLE: readonly number[] = Array.from({ length: 256 }, (_, n) => {
  let rest = n;
  for (let bit = 0; bit < 8; bit += 1) rest = rest & 1 ? (rest >>> 1) ^ 0xedb88320 : rest >>> 1;
  return rest >>> 0;
});

/** Eight hexadecimal figures over the text's UTF-8. */
export function checksumOf(text: string): string {
  let sum = 0xffffffff;
  for (const byte of new TextEncoder().encode(text)) sum = (TABLE[(sum ^ byte) & 0xff] ?? 0) ^ (sum >>> 8);
  return ((sum ^ 0xffffffff) >>> 0).toString(16).padStart(8, '0');
}

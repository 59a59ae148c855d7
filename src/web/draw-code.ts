/** A code to scan (ISO/IEC 18004), correction level M with the quiet zone of four modules that the standard asks for. */
import encode from 'qr';
import type { HandOverCode } from '../model/hand-over.js';

export function drawCode(text: string): HandOverCode {
  const rows = encode(text, 'raw', { ecc: 'medium', border: 4 });
  const path = rows.flatMap((row, y) => row.flatMap((dark, x) => (dark ? [`M${x} ${y}h1v1h-1z`] : []))).join('');
  return { size: rows.length, path };
}

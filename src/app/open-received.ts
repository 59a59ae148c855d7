/** What came back, with the seal taken off where it has one. */
import { FOLDER, type Problem } from '../model/problem.js';
import { looksSealed, openMarks } from '../publish/seal-marks.js';
import type { Held } from './keep-state.js';

/** As it came where it is plain. The keys are asked for only where there is a seal. Reports `log-sealed`. */
export async function openReceived(
  name: string,
  bytes: Uint8Array,
  keysAsked: () => Promise<Held | Problem>,
): Promise<Uint8Array | Problem> {
  const text = new TextDecoder().decode(bytes);
  if (!looksSealed(text)) return bytes;
  const held = await keysAsked();
  if ('code' in held) return held;
  const opened = await openMarks(text, held.pairs);
  if ('text' in opened) return new TextEncoder().encode(opened.text);
  return {
    code: 'log-sealed',
    severity: 'error',
    scope: FOLDER,
    place: { file: name, line: 1, column: 1, length: 1 },
    data: { why: opened.fault, keys: held.pairs.length },
  };
}

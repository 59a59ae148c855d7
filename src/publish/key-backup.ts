/** All that a studio must not lose, in one file that words open. */
import { BY_WORDS, openEnvelope, sealEnvelope } from './seal-envelope.js';
import { frame, STEP_BYTES, unframe } from './seal-frame.js';
import { bytesOfWords } from './seal-words.js';

const PART = 'backup';

/** Names with `/`, below the folder they came from, and what stands in them. */
export type BackedUp = ReadonlyMap<string, string>;

export async function sealBackup(files: BackedUp, words: string, count?: number): Promise<string> {
  const plain = frame(new TextEncoder().encode(JSON.stringify([...files])), STEP_BYTES);
  const sealing = { key: bytesOfWords(words), terms: BY_WORDS, marked: { part: PART } };
  return sealEnvelope(plain, count === undefined ? sealing : { ...sealing, count });
}

export type OpenedBackup = BackedUp | 'wrong words' | 'damaged' | 'newer' | 'older';

export async function openBackup(text: string, words: string): Promise<OpenedBackup> {
  const opened = await openEnvelope(text.trim(), bytesOfWords(words), BY_WORDS, PART);
  if ('fault' in opened) {
    const { fault } = opened;
    return fault === 'not opened' ? 'wrong words' : fault === 'newer' || fault === 'older' ? fault : 'damaged';
  }
  const inside = unframe(opened.plain);
  return inside === null ? 'damaged' : (readFiles(new TextDecoder().decode(inside)) ?? 'damaged');
}

/** Only names that stay below a folder. */
function readFiles(text: string): BackedUp | null {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return null;
  }
  if (!Array.isArray(value)) return null;
  const files = new Map<string, string>();
  for (const row of value) {
    if (!Array.isArray(row)) return null;
    const [name, content] = row;
    if (typeof name !== 'string' || typeof content !== 'string' || !/^(keys\/|sealed\/)?[\w-]+\.json$/.test(name))
      return null;
    files.set(name, content);
  }
  return files;
}

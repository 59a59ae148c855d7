/**
 * What of a message leaves the phone: sealed to the studio where it has a key, else as it is. A phone's own sheet opens only
 * in a tap that waits for nothing: so a message is sealed as soon as it stands on the screen.
 */
import type { PublicKey } from '../model/marks-key.js';
import { askForScript, takePart } from './parts.js';

export interface Outgoing {
  /** The message may be sent soon. */
  readonly prepare: (text: string) => void;
  /** At once where it was prepared, or there is no key. Rejects where it cannot be sealed: then nothing leaves. */
  readonly of: (text: string) => string | Promise<string>;
}

type SealMarks = (text: string, key: PublicKey) => Promise<string>;
const isSealMarks = (part: unknown): part is SealMarks => typeof part === 'function';

export function outgoingTo(key: PublicKey | undefined): Outgoing {
  if (key === undefined) return { prepare: () => undefined, of: (text) => text };
  askForScript('sealing.js');
  const script = takePart('seal marks');
  let last: { readonly text: string; readonly sealing: Promise<string>; sealed?: string } | undefined;
  const seal = (text: string): NonNullable<typeof last> => {
    if (last?.text === text) return last;
    const sealing = script.then((part) =>
      isSealMarks(part) ? part(text, key) : Promise.reject(new Error('nothing here can seal')),
    );
    const own: NonNullable<typeof last> = { text, sealing };
    last = own;
    sealing.then(
      (sealed) => {
        own.sealed = sealed;
      },
      () => {
        // Tried anew at the next tap.
        if (last === own) last = undefined;
      },
    );
    return own;
  };
  return {
    prepare: (text) => {
      if (text !== '') seal(text);
    },
    of: (text) => {
      const { sealed, sealing } = seal(text);
      return sealed ?? sealing;
    },
  };
}

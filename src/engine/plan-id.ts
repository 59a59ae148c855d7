/** A plan's name, from what it was made of: the same inputs give the same name on every machine. */
import type { Rule } from '../model/reason.js';

/** The prime is 2^40 + 0x1b3. */
const PRIME_LOW = 0x1b3;

/**
 * FNV-1a, 64 bits (Fowler, Noll and Vo), over the text in UTF-8, as 16 hexadecimal digits. It names, it does
 * not protect: anybody can make a text with a given name. Only products below 2^53 are formed, so that it is exact in
 * plain numbers: the 64 bits are kept as four limbs of 16, the lowest first.
 */
export function nameOf(text: string): string {
  let [a, b, c, d] = [0x2325, 0x8422, 0x9ce4, 0xcbf2];
  for (const byte of new TextEncoder().encode(text)) {
    // × (2^40 + 0x1b3): the limbs times 0x1b3, and the lowest two 40 bits up.
    const low = a ^ byte;
    const a1 = low * PRIME_LOW;
    const b1 = b * PRIME_LOW + (a1 >>> 16);
    const c1 = c * PRIME_LOW + low * 0x100 + (b1 >>> 16);
    const d1 = d * PRIME_LOW + b * 0x100 + (c1 >>> 16);
    a = a1 & 0xffff;
    b = b1 & 0xffff;
    c = c1 & 0xffff;
    d = d1 & 0xffff;
  }
  return [d, c, b, a].map((limb) => limb.toString(16).padStart(4, '0')).join('');
}

/** What of the rules goes into the name: each id with the value in force, in order of id. */
export const rulesInName = (rules: readonly Rule[]): string =>
  rules.map(({ id, value, overridden }) => `${id} ${overridden?.value ?? value}`).join('\n');

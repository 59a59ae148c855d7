/** A plan's name, from what it was made of: the same inputs give the same name on every machine. */

/** 64-bit FNV offset basis and prime, as four and three 16-bit limbs, lowest first. */
const OFFSET: readonly [number, number, number, number] = [0x2325, 0x8422, 0x9ce4, 0xcbf2];
/** 2^40 + 0x1b3. */
const PRIME_LOW = 0x1b3;

/**
 * FNV-1a, 64 bits, as 16 hexadecimal digits, over the text's UTF-16 code units, low byte first. It names, it does not
 * protect: anybody can make a text with a given name. (Fowler, Noll, Vo; parameters as in the draft
 * draft-eastlake-fnv.) Only products below 2^53 are formed, so that it is exact in plain numbers.
 */
export function nameOf(text: string): string {
  let [a, b, c, d] = OFFSET;
  const take = (byte: number): void => {
    a ^= byte;
    // × (2^40 + 0x1b3): the limbs times 0x1b3, and the lowest two 40 bits up.
    const a1 = a * PRIME_LOW;
    const b1 = b * PRIME_LOW + Math.floor(a1 / 0x10000);
    const c1 = c * PRIME_LOW + a * 0x100 + Math.floor(b1 / 0x10000);
    const d1 = d * PRIME_LOW + b * 0x100 + Math.floor(c1 / 0x10000);
    a = a1 % 0x10000;
    b = b1 % 0x10000;
    c = c1 % 0x10000;
    d = d1 % 0x10000;
  };
  for (let index = 0; index < text.length; index += 1) {
    const unit = text.charCodeAt(index);
    take(unit % 0x100);
    take(Math.floor(unit / 0x100));
  }
  return [d, c, b, a].map((limb) => limb.toString(16).padStart(4, '0')).join('');
}

/** Tables of an embedded TrueType program, by the OpenType specification: how many glyphs, how wide, which character maps. */

export interface FontProgram {
  readonly glyphs: number;
  readonly unitsPerEm: number;
  /** Of each glyph, in units. */
  readonly advance: (glyph: number) => number;
  /** Platform and encoding of each character map. */
  readonly maps: readonly (readonly [number, number])[];
}

export function readProgram(bytes: Buffer): FontProgram | undefined {
  if (bytes.length < 12) return undefined;
  const tables = new Map<string, Buffer>();
  for (let i = 0; i < bytes.readUInt16BE(4); i += 1) {
    const at = 12 + 16 * i;
    const from = bytes.readUInt32BE(at + 8);
    tables.set(bytes.toString('latin1', at, at + 4), bytes.subarray(from, from + bytes.readUInt32BE(at + 12)));
  }
  const [head, maxp, hhea, hmtx, cmap] = ['head', 'maxp', 'hhea', 'hmtx', 'cmap'].map((name) => tables.get(name));
  if (!head || !maxp || !hhea || !hmtx) return undefined;
  const long = hhea.readUInt16BE(34);
  return {
    glyphs: maxp.readUInt16BE(4),
    unitsPerEm: head.readUInt16BE(18),
    advance: (glyph) => hmtx.readUInt16BE(4 * Math.min(glyph, long - 1)),
    maps: cmap
      ? Array.from({ length: cmap.readUInt16BE(2) }, (_, i) => [
          cmap.readUInt16BE(4 + 8 * i),
          cmap.readUInt16BE(6 + 8 * i),
        ])
      : [],
  };
}

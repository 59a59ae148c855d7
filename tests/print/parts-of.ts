import type { Booklet, Part } from '../../src/model/booklet.js';

/** The parts of one kind, in order. */
export function partsOf<Kind extends Part['kind']>(
  booklet: Booklet,
  kind: Kind,
): readonly Extract<Part, { kind: Kind }>[] {
  const isKind = (part: Part): part is Extract<Part, { kind: Kind }> => part.kind === kind;
  return booklet.parts.filter(isKind);
}

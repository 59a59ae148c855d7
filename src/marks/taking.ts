/** Reads one line from the left, a piece at a time. */
export interface Taking {
  /** The groups of a piece that stands next, and it is taken; `null` where it does not, and nothing is. */
  take(piece: RegExp): readonly string[] | null;
  /** Whether nothing is left. */
  atEnd(): boolean;
}

export function startTaking(text: string): Taking {
  let at = 0;
  return {
    take(piece) {
      const sticky = new RegExp(piece.source, 'uy');
      sticky.lastIndex = at;
      const match = sticky.exec(text);
      if (match === null) return null;
      at = sticky.lastIndex;
      return match.slice(1).map((group) => group ?? '');
    },
    atEnd: () => at === text.length,
  };
}

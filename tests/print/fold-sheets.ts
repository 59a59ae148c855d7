/** Sheets folded once, as hands do it, and leafed through. Whatever stands on a half of a side: a number, or its words. */
import type { Binding } from '../../src/print/impose.js';

/** What stands left and right of the fold, on either side. */
export interface Printed<Half> {
  readonly front: readonly [Half, Half];
  readonly back: readonly [Half, Half];
}

/**
 * Sheets laid on each other with their fronts down, the innermost on top, and folded upwards: what a reader then turns.
 * A leaf is half a sheet; turned over, what stood left of the fold on the front stands right of it on the back.
 */
export function readFolded<Half>(sheets: readonly Printed<Half>[], binding: Binding): readonly Half[] {
  const leaf = (sheet: Printed<Half>, half: 'first' | 'second'): readonly [Half, Half] => {
    const [frontLeft, frontRight] = sheet.front;
    const [backLeft, backRight] = sheet.back;
    const right: readonly [Half, Half] = [frontRight, backLeft];
    const left: readonly [Half, Half] = [frontLeft, backRight];
    const opens = (binding === 'left') === (half === 'first') ? right : left;
    return half === 'first' ? opens : [opens[1], opens[0]];
  };
  const first = sheets.flatMap((sheet) => leaf(sheet, 'first'));
  const second = [...sheets].reverse().flatMap((sheet) => leaf(sheet, 'second'));
  return [...first, ...second];
}

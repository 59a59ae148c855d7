/** Our own drawings, given as SVG, painted as PNG: in greys, with nothing in the file but the picture. */
import { sharp, whilePainting } from './open-sharp.js';

/** What paints: the same drawing painted by the same gives the same bytes. */
export const PAINTER = `sharp ${sharp.versions.sharp}, libvips ${sharp.versions.vips}`;

/** Lines in one ink on white are small however they are pressed. */
const LEVEL = 6;

/** In the order given, each in the width and height it says it has. It has no colours and nothing shines through. */
export const paintDrawings = (drawings: readonly string[]): Promise<readonly Uint8Array[]> =>
  whilePainting(() =>
    Promise.all(
      drawings.map(async (svg) => {
        // Red is as good as green and blue: one of them is all that is kept.
        const painted = sharp(new TextEncoder().encode(svg)).extractChannel('red').png({ compressionLevel: LEVEL });
        return new Uint8Array(await painted.toBuffer());
      }),
    ),
  );

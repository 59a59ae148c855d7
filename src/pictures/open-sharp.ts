/** The door to sharp: how it works in this house, and what it reads. */
import sharp from 'sharp';

// The same bytes on every computer: no instructions that only some processors have, and nothing that depends on turns.
sharp.simd(false);
sharp.concurrency(1);
sharp.cache(false);
// Whatever a coach's file says it is, it meets none but the three readers that are meant.
sharp.block({ operation: ['VipsForeignLoad'] });
sharp.unblock({
  operation: ['VipsForeignLoadJpegBuffer', 'VipsForeignLoadPngBuffer', 'VipsForeignLoadWebpBuffer'],
});

const OF_DRAWINGS = { operation: ['VipsForeignLoadSvgBuffer'] };

/** The reader of drawings is there for our own, while they are painted: no file of a coach's is read in that time. */
export async function whilePainting<Done>(work: () => Promise<Done>): Promise<Done> {
  sharp.unblock(OF_DRAWINGS);
  try {
    return await work();
  } finally {
    sharp.block(OF_DRAWINGS);
  }
}

export { sharp };

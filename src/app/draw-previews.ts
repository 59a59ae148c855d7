/**
 * The pictures by which exercises' pages are shown elsewhere. A picture is named by what it is made from and by what
 * paints it: where the last build has one of that name it is taken over, since painting is the slowest part of a library.
 */
import { createHash } from 'node:crypto';
import type { ExerciseId } from '../model/identity.js';
import type { Drawings, Photographs } from '../model/picture.js';
import { carryFile, type Stage, writeStaged } from './publish-build.js';

/** The folder of previews, below the library's root. */
const PREVIEWS = 'previews';

export interface Preview {
  /** Below the library's root. */
  readonly path: string;
  readonly svg: string;
}

/** Of every exercise that is drawn: a coach's own picture is its own preview. */
export async function previewsOf(
  drawings: Drawings,
  photographs: Photographs,
): Promise<ReadonlyMap<ExerciseId, Preview>> {
  const { renderPreview } = await import('../web/render-preview.js');
  const { PAINTER } = await import('../pictures/paint-drawing.js');
  const drawn = [...drawings].filter(([id]) => !photographs.has(id));
  return new Map(
    drawn.map(([id, { drawing }]) => {
      const svg = renderPreview(drawing);
      const digest = createHash('sha256').update(`${PAINTER}\n${svg}`).digest('hex').slice(0, 12);
      return [id, { path: `${PREVIEWS}/${id}-${digest}.png`, svg }];
    }),
  );
}

export async function writePreviews(stage: Stage, previews: Iterable<Preview>): Promise<void> {
  const { paintDrawings } = await import('../pictures/paint-drawing.js');
  const wanted: Preview[] = [];
  for (const preview of previews) {
    if (!(await carryFile(stage, `public/${preview.path}`))) wanted.push(preview);
  }
  const painted = await paintDrawings(wanted.map(({ svg }) => svg));
  for (const [index, { path }] of wanted.entries()) {
    await writeStaged(stage, `public/${path}`, painted[index] ?? new Uint8Array());
  }
}

/** Drawings: how long one takes from its table, and what it weighs alone, with what moves it, and as one more in a booklet. */
import { gzipSync } from 'node:zlib';
import { h } from 'preact';
import { render } from 'preact-render-to-string';
import { FigureRow } from '../../layouts/figure.js';
import { movementOf } from '../../layouts/movement.js';
import { drawLibrary } from '../../src/figures/draw-library.js';
import type { Booklet } from '../../src/model/booklet.js';
import type { ClientPlan } from '../../src/model/client-plan.js';
import type { Exercise } from '../../src/model/exercise.js';
import { renderPayload } from '../../src/web/render-booklet.js';
import { cpuOf } from './measure.js';

const gzip = (text: string): number => gzipSync(text, { level: 9 }).length;

export interface DrawingFigures {
  readonly cpuMs: number;
  readonly drawn: number;
  readonly alone: { readonly most: number; readonly mean: number };
  readonly inBooklet: { readonly drawn: number; readonly bytes: number };
}

export async function measureDrawings(
  exercises: readonly Exercise[],
  booklet: Booklet,
  plan: ClientPlan,
): Promise<DrawingFigures> {
  // Bodies once found are kept by their table: each time it is another table.
  const fresh = () => exercises.map((exercise) => ({ ...exercise, poses: [...exercise.poses] }));
  const cpuMs = await cpuOf(2, () => drawLibrary(fresh()));
  const drawings = drawLibrary(exercises);
  const sizes = [...drawings].map(([id, { drawing }]) =>
    gzip(render(h(FigureRow, { drawing, id: `drawn-${id}` })) + JSON.stringify(movementOf(drawing))),
  );
  const bytes = gzip(renderPayload(booklet, plan, drawings).html) - gzip(renderPayload(booklet, plan).html);
  const shown = booklet.parts.filter((part) => part.kind === 'exercise' && drawings.has(part.id)).length;
  return {
    cpuMs: cpuMs / drawings.size,
    drawn: drawings.size,
    alone: { most: Math.max(...sizes), mean: sizes.reduce((sum, size) => sum + size, 0) / sizes.length },
    inBooklet: { drawn: shown, bytes },
  };
}

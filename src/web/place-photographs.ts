/** Where a coach's pictures stand: as files beside a page in every width, or as data in the page, in one. */
import type { PlacedPhotograph } from '../../layouts/photograph.js';
import type { ExerciseId } from '../model/identity.js';
import type { Drawings, Photograph, Photographs, PictureCopy } from '../model/picture.js';
import { base64Of } from './shell-parts.js';

/** The folder of pictures, below a booklet's or the library's own. */
export const PICTURES = 'pictures/';

export type PlacedPhotographs = ReadonlyMap<ExerciseId, PlacedPhotograph>;

/** Points across: sharp enough on a phone held in the hand, and a page stays small. */
const INSIDE_WIDTH = 640;

const eachOf = (photographs: Photographs, place: (photograph: Photograph) => PlacedPhotograph): PlacedPhotographs =>
  new Map([...photographs].map(([id, photograph]) => [id, place(photograph)]));

/** The widest copy that is no wider than asked for, or the narrowest of all. */
function copyFor({ copies: [first, ...others] }: Photograph, width: number): PictureCopy {
  if (first === undefined) throw new RangeError('a picture has a copy');
  return others.findLast((copy) => copy.width <= width) ?? first;
}

/** As files. `root` leads from the page to the folder that holds the folder of pictures. */
export const besidePage = (photographs: Photographs, root = ''): PlacedPhotographs =>
  eachOf(photographs, (photograph) => {
    const { name, width, height } = copyFor(photograph, INSIDE_WIDTH);
    const widths = photograph.copies.map((copy) => ({ source: `${root}${PICTURES}${copy.name}`, width: copy.width }));
    return {
      said: photograph.said,
      source: `${root}${PICTURES}${name}`,
      width,
      height,
      widths: widths.length > 1 ? widths : [],
    };
  });

/** As data. */
export const insidePage = (photographs: Photographs): PlacedPhotographs =>
  eachOf(photographs, (photograph) => {
    const { width, height, type, bytes } = copyFor(photograph, INSIDE_WIDTH);
    return { said: photograph.said, source: `data:${type};base64,${base64Of(bytes)}`, width, height, widths: [] };
  });

/** The files that pages with pictures beside them ask for. */
export const filesBeside = (photographs: Photographs): readonly { path: string; bytes: Uint8Array }[] =>
  [...photographs.values()].flatMap(({ copies }) =>
    copies.map(({ name, bytes }) => ({ path: `${PICTURES}${name}`, bytes })),
  );

/** What a coach's own picture takes the place of is not drawn. */
export const drawingsBesides = (drawings: Drawings, photographs: PlacedPhotographs): Drawings =>
  new Map([...drawings].filter(([id]) => !photographs.has(id)));

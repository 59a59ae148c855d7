/** Kinds of picture files: those that are taken first, then those that a coach may well have and that are not. */
const TAKEN_KINDS = ['JPEG', 'PNG', 'WebP'] as const;
export type TakenKind = (typeof TAKEN_KINDS)[number];
export type PictureKind = TakenKind | 'SVG' | 'GIF' | 'HEIC' | 'AVIF' | 'TIFF' | 'PDF';

const ENDINGS: Readonly<Record<string, TakenKind>> = { jpg: 'JPEG', jpeg: 'JPEG', png: 'PNG', webp: 'WebP' };

/** In small letters, without the dot; empty where a name has none. */
export const endingOf = (name: string): string => /\.([^./]+)$/.exec(name)?.[1]?.toLowerCase() ?? '';

/** The kind a name says it is of; `undefined` where it is none that is taken. */
export function kindNamed(name: string): TakenKind | undefined {
  const ending = endingOf(name);
  return Object.hasOwn(ENDINGS, ending) ? ENDINGS[ending] : undefined;
}

/** Pictures stand in one folder with the exercises' pages. */
export const isPicturePath = (path: string): boolean =>
  /^exercises\/[^/]+$/.test(path) && kindNamed(path) !== undefined;

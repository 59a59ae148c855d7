/** Every picture that is asked for lies beside its exercise and is what its name says; and none lies there unasked. */
import { kindNamed, type PictureKind } from '../model/picture-kind.js';
import { nearestOf } from './nearest.js';
import { nameIn } from './read-depiction.js';
import type { FolderCheck, ReadThings } from './read-things.js';

/** By the first bytes, a letter each, as the formats' own specifications have them. */
const BEGINNINGS: readonly (readonly [PictureKind, (text: string) => boolean])[] = [
  // ITU-T T.81, annex B: start of image, then another marker.
  ['JPEG', (text) => text.startsWith('\xff\xd8\xff')],
  // PNG specification, third edition, 5.2.
  ['PNG', (text) => text.startsWith('\x89PNG\r\n\x1a\n')],
  // RFC 9649, section 2.4.
  ['WebP', (text) => text.startsWith('RIFF') && text.startsWith('WEBP', 8)],
  ['GIF', (text) => text.startsWith('GIF8')],
  ['PDF', (text) => text.startsWith('%PDF-')],
  ['TIFF', (text) => text.startsWith('II*\0') || text.startsWith('MM\0*')],
  // ISO/IEC 14496-12, 4.3: a box of type ftyp, with the brand of what is in it.
  ['AVIF', (text) => /^ftypavi[fs]/.test(text.slice(4))],
  ['HEIC', (text) => /^ftyp(?:he[iv][cmsx]|mif1|msf1)/.test(text.slice(4))],
  ['SVG', (text) => /^(?:\xef\xbb\xbf)?\s*<(?:[\s\S]*<)?svg[\s>]/i.test(text)],
];

/** Enough of a file to tell its kind by. */
const LOOKED_AT_BYTES = 1024;

/** `undefined` where no kind that is known begins so. */
function kindOfBytes(bytes: Uint8Array): PictureKind | undefined {
  const text = String.fromCharCode(...bytes.subarray(0, LOOKED_AT_BYTES));
  return BEGINNINGS.find(([, begins]) => begins(text))?.[0];
}

function checkFiles({ exercises, pictures }: ReadThings): void {
  for (const { file, ownPicture } of exercises) {
    if (ownPicture === undefined) continue;
    const bytes = pictures.get(ownPicture.file);
    const name = nameIn(ownPicture.file);
    if (bytes === undefined) {
      const nearest = nearestOf(name, [...pictures.keys()].map(nameIn));
      file.report.add({ code: 'picture-missing', data: { file: name, nearest } }, ownPicture.place);
      continue;
    }
    const is = kindOfBytes(bytes);
    if (is !== kindNamed(name)) {
      file.report.add({ code: 'picture-other-kind', data: { file: name, is } }, ownPicture.place);
    }
  }
}

function checkUnused({ exercises, pictures, folder }: ReadThings): void {
  const shown = new Set(exercises.map(({ ownPicture }) => ownPicture?.file));
  for (const path of pictures.keys()) {
    if (shown.has(path)) continue;
    folder.add({ code: 'picture-unused', data: { file: nameIn(path) } }, { file: path, line: 1, column: 1, length: 1 });
  }
}

export const pictureChecks: readonly FolderCheck[] = [
  { name: 'pictures are there', codes: ['picture-missing', 'picture-other-kind'], check: checkFiles },
  { name: 'pictures are shown', codes: ['picture-unused'], check: checkUnused },
];

/**
 * A coach's own picture → copies of it in a few widths, each drawn anew point by point: turned upright, in sRGB, on white,
 * and with nothing in the file but the picture.
 */
import type { PictureCopy } from '../model/picture.js';
import { kindNamed } from '../model/picture-kind.js';
import { sharp } from './open-sharp.js';

/** Points across, narrowest first: a phone's column at one, two and four points each; wider than the picture is none made. */
const WIDTHS = [320, 640, 1280] as const;

/** A camera of today has twelve to fifty. */
export const MOST_MEGAPIXELS = 60;

/** Points across a column of 60 mm at 300 to the inch. */
const PAPER_WIDTH = 720;
const PAPER_QUALITY = 85;

/** Of 100: beyond it a file grows faster than anybody sees. */
const JPEG_QUALITY = 78;

export type PictureFault =
  | { readonly fault: 'unreadable' }
  | { readonly fault: 'too large'; readonly megapixels: number };

export interface PreparedPicture {
  /** At least one, narrowest first. */
  readonly copies: readonly PictureCopy[];
  /** In greys. */
  readonly paper: PictureCopy;
}

const FORMATS = { JPEG: 'jpeg', PNG: 'png', WebP: 'webp' } as const;

/** `limitInputPixels` is held by us, so that it can be told; damage and cut-off files are faults, a camera's slips are not. */
const open = (bytes: Uint8Array) => sharp(bytes, { limitInputPixels: false, failOn: 'error', animated: false });

/** Points across and down as it is to be seen, or what is wrong. Reads no further than the head. */
async function measure(bytes: Uint8Array, name: string): Promise<{ readonly width: number } | PictureFault> {
  const kind = kindNamed(name);
  if (kind === undefined) return { fault: 'unreadable' };
  try {
    const { format, width, height, autoOrient } = await open(bytes).metadata();
    if (format !== FORMATS[kind]) return { fault: 'unreadable' };
    const megapixels = Math.ceil((width * height) / 1_000_000);
    return megapixels > MOST_MEGAPIXELS ? { fault: 'too large', megapixels } : { width: autoOrient.width };
  } catch {
    return { fault: 'unreadable' };
  }
}

/**
 * `name` tells the kind, `stem` begins the names of the copies. `widths` as above; a picture narrower than one of them is
 * copied in its own width at most. The same bytes give the same copies.
 */
export async function preparePicture(
  bytes: Uint8Array,
  name: string,
  stem: string,
  widths: readonly number[] = WIDTHS,
): Promise<PreparedPicture | PictureFault> {
  const measured = await measure(bytes, name);
  if ('fault' in measured) return measured;
  const wanted = [...new Set(widths.map((width) => Math.min(width, measured.width)))];
  try {
    const isDrawn = kindNamed(name) !== 'JPEG' && (await isSmallerWithoutLoss(bytes, Math.max(...wanted)));
    const copies: PictureCopy[] = [];
    for (const width of wanted) {
      const { data, info } = await (isDrawn ? withoutLoss : withLoss)(bytes, width).toBuffer({
        resolveWithObject: true,
      });
      copies.push({
        name: `${stem}-${info.width}.${isDrawn ? 'png' : 'jpg'}`,
        width: info.width,
        height: info.height,
        type: isDrawn ? 'image/png' : 'image/jpeg',
        bytes: new Uint8Array(data),
      });
    }
    return { copies, paper: await onPaper(bytes, Math.min(PAPER_WIDTH, measured.width), stem) };
  } catch {
    return { fault: 'unreadable' };
  }
}

/** The points alone, `width` of them across. */
const points = (bytes: Uint8Array, width: number) =>
  open(bytes)
    .autoOrient()
    .resize({ width, withoutEnlargement: true })
    .flatten({ background: '#ffffff' })
    .toColourspace('srgb');

const withLoss = (bytes: Uint8Array, width: number) =>
  points(bytes, width).jpeg({ quality: JPEG_QUALITY, progressive: true, mozjpeg: true });

const withoutLoss = (bytes: Uint8Array, width: number) =>
  points(bytes, width).png({ compressionLevel: 9, adaptiveFiltering: true });

/** As a press prints it: greys alone, which every reader of PDF takes as they are. */
async function onPaper(bytes: Uint8Array, width: number, stem: string): Promise<PictureCopy> {
  const { data, info } = await points(bytes, width)
    .greyscale()
    .toColourspace('b-w')
    .jpeg({ quality: PAPER_QUALITY })
    .toBuffer({ resolveWithObject: true });
  const { width: across, height } = info;
  return { name: `${stem}-paper.jpg`, width: across, height, type: 'image/jpeg', bytes: new Uint8Array(data) };
}

/** So it is with a drawing of few lines, and never with a photograph. */
async function isSmallerWithoutLoss(bytes: Uint8Array, width: number): Promise<boolean> {
  const [whole, lossy] = [await withoutLoss(bytes, width).toBuffer(), await withLoss(bytes, width).toBuffer()];
  return whole.length < lossy.length;
}

/** Whether it can be read to its end, told with as little work as that takes. */
export async function lookThrough(bytes: Uint8Array, name: string): Promise<PictureFault | undefined> {
  const prepared = await preparePicture(bytes, name, 'looked-through', WIDTHS.slice(0, 1));
  return 'fault' in prepared ? prepared : undefined;
}

/** Photographs as cameras and programs write them: with a name, a place and a thumbnail in the file. Written by exiftool. */
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';

/** Invented, and nowhere else. */
export const PLANTED = { name: 'Quillon Abernathy-Voss', street: '7 Larkspur Steps', camera: 'ZX-4417-22981' } as const;

/** A sky, a floor, and somebody between them; `width` across, three quarters as high, upper left corner red. */
export async function photograph(width: number, format: 'jpeg' | 'png' | 'webp' = 'jpeg'): Promise<Uint8Array> {
  const height = Math.round((width * 3) / 4);
  const points = Buffer.alloc(width * height * 3);
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      const noise = ((x * 7919 + y * 104_729) % 31) - 15;
      const body = Math.hypot(x - width / 2, (y - height / 2) * 0.6) < height / 5;
      const corner = x < width / 4 && y < height / 4;
      const point = corner
        ? [220, 20, 20]
        : body
          ? [150 + noise, 105 + noise, 80]
          : [90, 130 + noise, 60 + (y * 190) / height];
      points.set(
        point.map((value) => Math.max(0, Math.min(255, Math.round(value)))),
        (y * width + x) * 3,
      );
    }
  }
  return sharp(points, { raw: { width, height, channels: 3 } })
    [format]({ quality: 92 })
    .toBuffer();
}

/** The same file with everything in it that tells of whom, where and with what it was taken. */
export function withMetadata(bytes: Uint8Array, folder: string, name: string, orientation = 1): Uint8Array {
  const path = join(folder, name);
  writeFileSync(path, bytes);
  const thumbnail = join(folder, 'thumbnail.jpg');
  const isJpeg = /\.jpe?g$/i.test(name);
  if (isJpeg) writeFileSync(thumbnail, bytes.subarray(0, 2000));
  execFileSync('exiftool', [
    '-q',
    '-overwrite_original',
    '-n',
    `-EXIF:Orientation=${orientation}`,
    `-EXIF:Artist=${PLANTED.name}`,
    `-EXIF:ImageDescription=${PLANTED.name}, ${PLANTED.street}`,
    `-EXIF:UserComment=${PLANTED.name}`,
    `-EXIF:SerialNumber=${PLANTED.camera}`,
    '-EXIF:GPSLatitude=54.0012',
    '-EXIF:GPSLatitudeRef=N',
    '-EXIF:GPSLongitude=1.5321',
    '-EXIF:GPSLongitudeRef=W',
    `-XMP-dc:Creator=${PLANTED.name}`,
    `-XMP-iptcExt:PersonInImage=${PLANTED.name}`,
    `-XMP-photoshop:City=${PLANTED.street}`,
    ...(isJpeg ? [`-IPTC:By-line=${PLANTED.name}`, `-Comment=${PLANTED.name}`, `-ThumbnailImage<=${thumbnail}`] : []),
    ...(name.endsWith('.png') ? [`-PNG:Author=${PLANTED.name}`, `-PNG:Comment=${PLANTED.street}`] : []),
    path,
  ]);
  return new Uint8Array(readFileSync(path));
}

/** Every tag exiftool finds in a file, `group:tag`, but those about the file on the disk. */
export function tagsIn(bytes: Uint8Array, folder: string, name: string): readonly string[] {
  const path = join(folder, name);
  writeFileSync(path, bytes);
  const told: unknown = JSON.parse(execFileSync('exiftool', ['-json', '-G1', '-a', '-u', path], { encoding: 'utf8' }));
  const [first] = Array.isArray(told) ? told : [];
  return Object.keys(first ?? {}).filter((tag) => !/^(SourceFile|System:|ExifTool:)/.test(tag));
}

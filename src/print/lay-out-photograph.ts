/** A coach's own picture for an exercise's page, placed as a drawing is: beside the words, or over them where it cannot be. */
import type { PictureCopy } from '../model/picture.js';
import { LEAST_WORDS } from './lay-out-picture.js';
import type { Picture } from './setting.js';
import { LINE, mm, type Sheet } from './sheet.js';

/** How wide it is at best, and where room is short; however tall, it is no higher than this. */
const WIDTHS = [mm(40), mm(32)] as const;
const MOST_HIGH = mm(60);

export function photographWays(copy: PictureCopy, alt: string, { textWidth }: Sheet): readonly Picture[] {
  const tall = copy.height / copy.width;
  return WIDTHS.map((wide): Picture => {
    const width = Math.min(wide, MOST_HIGH / tall);
    const height = width * tall;
    return {
      stands: textWidth - width >= LEAST_WORDS - 1e-6 ? 'beside' : 'over',
      width,
      lines: Math.ceil(height / LINE - 1e-6),
      alt,
      draw: (tag) => [{ kind: 'photograph', x: 0, y: 0, width, height, copy, tag }],
    };
  });
}

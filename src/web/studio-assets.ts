/** The style and the faces of the studio's own pages, written beside them. */
import { bundleStyle, type WebSources } from './prepare-shell.js';
import { type FontFile, fontFaceRules, type LateFaces } from './shell-parts.js';

export const STUDIO_STYLE = 'studio.css';

/** `fonts`: the faces cut for the booklets, which these pages share. */
export async function writeStudioAssets(
  out: string,
  fonts: readonly FontFile[],
  sources: WebSources,
  late: LateFaces,
): Promise<void> {
  const style = await bundleStyle('studio.css', sources);
  const faces = fontFaceRules(fonts, ({ name }) => `fonts/${name}`, late);
  await sources.write(`${out}/${STUDIO_STYLE}`, new TextEncoder().encode(`${faces}${style}\n`));
  await Promise.all(fonts.map(({ name, bytes }) => sources.write(`${out}/fonts/${name}`, bytes)));
}

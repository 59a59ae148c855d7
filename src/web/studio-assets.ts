/** The style and the faces of the studio's own pages, written beside them. */
import { bundleStyle, prepareFonts, type WebSources } from './prepare-shell.js';
import { fontFaceRules } from './shell-parts.js';

export const STUDIO_STYLE = 'studio.css';

export async function writeStudioAssets(out: string, sources: WebSources): Promise<void> {
  const [style, fonts] = await Promise.all([bundleStyle('studio.css', sources), prepareFonts(sources)]);
  const faces = fontFaceRules(fonts, ({ name }) => `fonts/${name}`);
  await sources.write(`${out}/${STUDIO_STYLE}`, new TextEncoder().encode(`${faces}${style}\n`));
  await Promise.all(fonts.map(({ name, bytes }) => sources.write(`${out}/fonts/${name}`, bytes)));
}

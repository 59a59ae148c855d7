/**
 * Makes the common parts of web pages from their sources: bundles the style and the booklet's script, cuts the faces
 * down to the characters pages use. Cutting is slow (a quarter of a second), so cut faces are kept under a name that
 * tells what they were made from. Where the sources lie, and where things are kept, is told by `WebSources`.
 */
import {
  base64Of,
  digestOf,
  type FontFile,
  facedCharacters,
  fontFaceRules,
  hashSource,
  type ShellParts,
} from './shell-parts.js';

/** The world as far as web pages need it. */
export interface WebSources {
  /** Absolute folder of the layouts, where the styles are. */
  readonly layouts: string;
  /** Absolute folder of the booklet's script, from source or compiled. */
  readonly phone: string;
  /** A face's file by its path below the scope of the font packages. */
  readonly readFace: (path: string) => Promise<Uint8Array>;
  /** `undefined` where nothing is kept under this name. */
  readonly readKept: (name: string) => Promise<Uint8Array | undefined>;
  /** Never fails: what cannot be kept is made again. */
  readonly keep: (name: string, bytes: Uint8Array) => Promise<void>;
  /** Writes a file and the folders above it. */
  readonly write: (path: string, bytes: Uint8Array) => Promise<void>;
}

const FACES = [
  { family: 'Literata', weight: 400, name: 'literata-400.woff2', from: 'literata/400Regular/Literata_400Regular.ttf' },
  {
    family: 'Literata',
    weight: 600,
    name: 'literata-600.woff2',
    from: 'literata/600SemiBold/Literata_600SemiBold.ttf',
  },
  {
    family: 'Alegreya Sans',
    weight: 700,
    name: 'alegreya-sans-700.woff2',
    from: 'alegreya-sans/700Bold/AlegreyaSans_700Bold.ttf',
  },
] as const;
/** Kerning, ligatures, marks, local forms, and the figures: lining and of equal width. */
const FEATURES = ['kern', 'liga', 'lnum', 'tnum', 'ccmp', 'locl', 'mark', 'mkmk'];
/** Raised when how faces are cut changes. */
const CUT = 1;
/** Phones of five years ago and on. */
const TARGETS = ['chrome90', 'safari14', 'firefox90'];

async function cutFace(face: (typeof FACES)[number], sources: WebSources): Promise<FontFile> {
  const { family, weight, name } = face;
  const source = await sources.readFace(face.from);
  const characters = facedCharacters();
  const recipe = new TextEncoder().encode([CUT, FEATURES, characters].join(' '));
  const made = [...(await digestOf(new Uint8Array([...recipe, ...source])))].slice(0, 8);
  const keptAs = `${made.map((byte) => byte.toString(16).padStart(2, '0')).join('')}-${name}`;
  const kept = await sources.readKept(keptAs);
  if (kept) return { family, weight, name, bytes: kept };
  const { default: subsetFont } = await import('subset-font');
  const cut = await subsetFont(source, characters, {
    targetFormat: 'woff2',
    noHinting: true,
    keepFeatures: FEATURES,
  });
  const bytes = new Uint8Array(cut);
  await sources.keep(keptAs, bytes);
  return { family, weight, name, bytes };
}

/** `entry` is a style of the layouts folder. */
export async function bundleStyle(entry: 'book.css' | 'studio.css', sources: WebSources): Promise<string> {
  const { build } = await import('esbuild');
  const built = await build({
    entryPoints: [`${sources.layouts}/${entry}`],
    bundle: true,
    minify: true,
    write: false,
    target: TARGETS,
    logLevel: 'silent',
  });
  return (built.outputFiles[0]?.text ?? '').trim();
}

async function bundleScript(sources: WebSources): Promise<string> {
  const { build } = await import('esbuild');
  const built = await build({
    stdin: { contents: "import './main.js';", resolveDir: sources.phone, loader: 'ts' },
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    target: TARGETS,
    logLevel: 'silent',
  });
  return (built.outputFiles[0]?.text ?? '').trim();
}

export const prepareFonts = (sources: WebSources): Promise<readonly FontFile[]> =>
  Promise.all(FACES.map((face) => cutFace(face, sources)));

/** The same parts for every booklet: call it once for a build. */
export async function prepareShell(sources: WebSources): Promise<ShellParts> {
  const [style, script, fonts] = await Promise.all([
    bundleStyle('book.css', sources),
    bundleScript(sources),
    prepareFonts(sources),
  ]);
  const facesInside = fontFaceRules(fonts, ({ bytes }) => `data:font/woff2;base64,${base64Of(bytes)}`);
  return {
    style: { text: style, source: await hashSource(style) },
    facesInside: { text: facesInside, source: await hashSource(facesInside) },
    facesBeside: fontFaceRules(fonts, ({ name }) => `fonts/${name}`),
    script: { text: script, source: await hashSource(script) },
    fonts,
  };
}

/**
 * Makes the common parts of web pages from their sources: bundles the style and the booklet's script, cuts the faces
 * down to the characters pages use. Cutting is slow (a quarter of a second), so cut faces are kept under a name that
 * tells what they were made from. Where the sources lie, and where things are kept, is told by `WebSources`.
 */
import type { BookletLanguage } from '../model/languages.js';
import { charactersOf, LETTER_SETS, type LetterSet } from './letters.js';
import {
  base64Of,
  digestOf,
  type FontFile,
  fontFaceRules,
  type Hashed,
  hashSource,
  type IconFile,
  type ShellParts,
} from './shell-parts.js';

/** The world as far as web pages need it. */
export interface WebSources {
  /** Absolute folder of the layouts, where the styles are. */
  readonly layouts: string;
  /** Absolute folder of the booklet's script, from source or compiled. */
  readonly phone: string;
  /** Absolute folder of the library's script, likewise. */
  readonly search: string;
  /** A face's file by its path below the scope of the font packages. */
  readonly readFace: (path: string) => Promise<Uint8Array>;
  /** A file of the layouts folder. */
  readonly readLayout: (path: string) => Promise<Uint8Array>;
  /** `undefined` where nothing is kept under this name. */
  readonly readKept: (name: string) => Promise<Uint8Array | undefined>;
  /** Never fails: what cannot be kept is made again. */
  readonly keep: (name: string, bytes: Uint8Array) => Promise<void>;
  /** Writes a file and the folders above it. */
  readonly write: (path: string, bytes: Uint8Array) => Promise<void>;
}

const FACES = [
  { family: 'Literata', weight: 400, name: 'literata-400', from: 'literata/400Regular/Literata_400Regular.ttf' },
  { family: 'Literata', weight: 600, name: 'literata-600', from: 'literata/600SemiBold/Literata_600SemiBold.ttf' },
  {
    family: 'Alegreya Sans',
    weight: 700,
    name: 'alegreya-sans-700',
    from: 'alegreya-sans/700Bold/AlegreyaSans_700Bold.ttf',
  },
] as const;
/** Kerning, ligatures, marks, local forms, and the figures: lining and of equal width. */
const FEATURES = ['kern', 'liga', 'lnum', 'tnum', 'ccmp', 'locl', 'mark', 'mkmk'];
/** Raised when how faces are cut changes. */
const CUT = 1;
/** Phones of five years ago and on. */
const TARGETS = ['chrome90', 'safari14', 'firefox90'];

function joined(first: Uint8Array, second: Uint8Array): Uint8Array<ArrayBuffer> {
  const both = new Uint8Array(first.length + second.length);
  both.set(first);
  both.set(second, first.length);
  return both;
}

const hexOf = (bytes: Uint8Array): string => [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');

async function cutFace(
  face: (typeof FACES)[number],
  letters: LetterSet,
  whole: Uint8Array,
  sources: WebSources,
): Promise<FontFile> {
  const name = `${face.name}-${letters}.woff2`;
  const characters = charactersOf(letters);
  const recipe = new TextEncoder().encode([CUT, FEATURES, characters].join(' '));
  const keptAs = `${hexOf(await digestOf(joined(recipe, whole))).slice(0, 16)}-${name}`;
  const kept = await sources.readKept(keptAs);
  const described = { family: face.family, weight: face.weight, letters, name };
  if (kept) return { ...described, bytes: kept };
  const { default: subsetFont } = await import('subset-font');
  const options = { targetFormat: 'woff2', noHinting: true, keepFeatures: FEATURES } as const;
  const bytes = new Uint8Array(await subsetFont(whole, characters, options));
  await sources.keep(keptAs, bytes);
  return { ...described, bytes };
}

async function cutFaces(face: (typeof FACES)[number], sources: WebSources): Promise<readonly FontFile[]> {
  const whole = await sources.readFace(face.from);
  return Promise.all(LETTER_SETS.map((letters) => cutFace(face, letters, whole, sources)));
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

type Entry = 'main' | 'train-en' | 'train-nb' | 'plan-again' | 'sealing' | 'worker';

/** A language without its training screens does not compile. */
const TRAINING = { en: 'train-en', nb: 'train-nb' } as const satisfies Readonly<Record<BookletLanguage, Entry>>;

const bundled = new Map<string, Promise<string>>();

/**
 * `folder` is the script's own, `entry` one of its files. A script is part of the program, which a process loads once: it is bundled once
 * as well, since that takes longer than a client's whole booklet.
 */
export function bundleScript(entry: Entry, folder: string): Promise<string> {
  const key = `${folder}/${entry}`;
  const made = bundled.get(key) ?? bundleAnew(entry, folder);
  bundled.set(key, made);
  // What failed once, as where memory was short, may be tried again.
  made.catch(() => bundled.delete(key));
  return made;
}

async function bundleAnew(entry: Entry, folder: string): Promise<string> {
  const { build } = await import('esbuild');
  const built = await build({
    stdin: { contents: `import './${entry}.js';`, resolveDir: folder, loader: 'ts' },
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    target: TARGETS,
    supported: {
      // Counted out for Safari 14 for a fault in patterns that are not used here; it cannot be rewritten, only refused.
      destructuring: true,
      // Counted out for Chrome 90 for lists passed on beyond an optional link, which are not used here; rewritten it is far longer.
      'optional-chain': true,
    },
    logLevel: 'silent',
  });
  return (built.outputFiles[0]?.text ?? '').trim();
}

/** A vector drawing and what older home screens take in its place. */
const ICONS = ['icon.svg', 'icon-180.png', 'icon-192.png', 'icon-512.png'];

const readIcons = (sources: WebSources): Promise<readonly IconFile[]> =>
  Promise.all(ICONS.map(async (name) => ({ name, bytes: await sources.readLayout(`icons/${name}`) })));

async function prepareFonts(sources: WebSources): Promise<readonly FontFile[]> {
  return (await Promise.all(FACES.map((face) => cutFaces(face, sources)))).flat();
}

const hashed = async (text: string): Promise<Hashed> => ({ text, source: await hashSource(text) });

/** The same parts for every booklet: call it once for a build. */
export async function prepareShell(sources: WebSources): Promise<ShellParts> {
  const [style, script, english, norwegian, planAgain, sealing, worker, fonts, icons] = await Promise.all([
    bundleStyle('book.css', sources),
    bundleScript('main', sources.phone),
    bundleScript(TRAINING.en, sources.phone),
    bundleScript(TRAINING.nb, sources.phone),
    bundleScript('plan-again', sources.phone),
    bundleScript('sealing', sources.phone),
    bundleScript('worker', sources.phone),
    prepareFonts(sources),
    readIcons(sources),
  ]);
  const inside = (letters: LetterSet): Promise<Hashed> =>
    hashed(
      fontFaceRules(
        fonts.filter((font) => font.letters === letters),
        ({ bytes }) => `data:font/woff2;base64,${base64Of(bytes)}`,
      ),
    );
  const [latin, vietnamese, greek, cyrillic] = await Promise.all([
    inside('latin'),
    inside('vietnamese'),
    inside('greek'),
    inside('cyrillic'),
  ]);
  return {
    style: await hashed(style),
    facesInside: { latin, vietnamese, greek, cyrillic },
    facesBeside: await hashed(fontFaceRules(fonts, ({ name }) => `fonts/${name}`)),
    script: await hashed(script),
    training: { en: await hashed(english), nb: await hashed(norwegian) },
    planAgain: await hashed(planAgain),
    sealing: await hashed(sealing),
    worker,
    fonts,
    icons,
  };
}

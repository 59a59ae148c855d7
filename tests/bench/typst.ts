/**
 * The same booklet set by Typst as PDF/UA-1, by its compiler for Node, which is no dependency of ours: some 50 MB for one figure.
 * `npm install --no-save @myriaddreamin/typst-ts-node-compiler@0.7.0` brings it (Apache-2.0; Typst 0.14.2).
 */
import { readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Booklet } from '../../src/model/booklet.js';
import type { Drawings } from '../../src/model/picture.js';
import { invariant } from '../../src/model/result.js';
import { renderPreview } from '../../src/web/render-preview.js';
import { sayDrawn } from '../../src/words/say-drawing.js';
import { speechOf } from '../../src/words/speech.js';
import { typstSource } from './typst-source.js';

const COMPILER = '@myriaddreamin/typst-ts-node-compiler';
export const HOW_TO_GET_IT = `npm install --no-save ${COMPILER}@0.7.0`;

interface Compiled {
  readonly result: { readonly numOfPages: number } | null;
}

/** As far as it is used here. */
interface Compiler {
  readonly mapShadow: (path: string, content: Buffer) => void;
  readonly evictCache: (maxAge: number) => void;
  readonly compile: (by: { readonly mainFileContent: string }) => Compiled;
  readonly pdf: (compiled: unknown, as: { readonly pdfStandard: string }) => Buffer;
}
interface Typesetter {
  readonly NodeCompiler: {
    readonly create: (of: {
      readonly workspace: string;
      readonly fontArgs: readonly { readonly fontBlobs: readonly Buffer[] }[];
    }) => Compiler;
  };
}

const FACES = [
  '@expo-google-fonts/literata/400Regular/Literata_400Regular.ttf',
  '@expo-google-fonts/literata/400Regular_Italic/Literata_400Regular_Italic.ttf',
  '@expo-google-fonts/literata/600SemiBold/Literata_600SemiBold.ttf',
  '@expo-google-fonts/alegreya-sans/500Medium/AlegreyaSans_500Medium.ttf',
  '@expo-google-fonts/alegreya-sans/700Bold/AlegreyaSans_700Bold.ttf',
];

const isTypesetter = (module: unknown): module is Typesetter =>
  typeof module === 'object' && module !== null && 'NodeCompiler' in module;

/** What sets it, anew each time; `null` where it is not installed. */
export async function typstOf(
  booklet: Booklet,
  drawings: Drawings,
): Promise<(() => { readonly bytes: number; readonly pages: number }) | null> {
  const found: unknown = await import(COMPILER).catch(() => null);
  if (!isTypesetter(found)) return null;
  const workspace = join(tmpdir(), 'chalkleaf-bench-typst');
  const fontBlobs = FACES.map((face) => readFileSync(fileURLToPath(import.meta.resolve(face))));
  const compiler = found.NodeCompiler.create({ workspace, fontArgs: [{ fontBlobs }] });
  for (const [id, { drawing }] of drawings)
    compiler.mapShadow(join(workspace, `${id}.svg`), Buffer.from(renderPreview(drawing)));
  const { words } = speechOf(booklet.language);
  const says = new Map<string, string>([...drawings].map(([id, drawn]) => [id, sayDrawn(drawn, words.drawing)]));
  const mainFileContent = typstSource(booklet, (id) => {
    const alt = says.get(id);
    return alt === undefined ? undefined : { file: `${id}.svg`, alt };
  });
  return () => {
    // Nothing is kept from the last time; the faces are.
    compiler.evictCache(0);
    const { result } = compiler.compile({ mainFileContent });
    invariant(result !== null, 'the booklet can be set');
    return { bytes: compiler.pdf(result, { pdfStandard: 'ua-1' }).length, pages: result.numOfPages };
  };
}

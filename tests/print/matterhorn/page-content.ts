/** What pdf.js draws on each page: which marked content it stands in, and which glyphs of which font. */
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface PageContent {
  /** Artifacts begun within tagged content, tagged content begun within artifacts, marks painted outside of either. */
  readonly artifactInTagged: number;
  readonly taggedInArtifact: number;
  readonly unmarked: number;
  /** Codes shown, by the base font's name. */
  readonly codes: ReadonlyMap<string, ReadonlySet<number>>;
}

const PAINTS: ReadonlySet<number> = new Set([
  OPS.showText,
  OPS.showSpacedText,
  OPS.nextLineShowText,
  OPS.stroke,
  OPS.closeStroke,
  OPS.fill,
  OPS.eoFill,
  OPS.fillStroke,
  OPS.constructPath,
  OPS.shadingFill,
  OPS.paintImageXObject,
  OPS.paintInlineImageXObject,
]);

type Mark = 'artifact' | 'tagged' | 'neither';
const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;

function markOf(op: number, args: unknown): Mark {
  const [name, id] = Array.isArray(args) ? args : [];
  const said: unknown = isObject(name) ? name.name : name;
  if (said === 'Artifact') return 'artifact';
  return op === OPS.beginMarkedContentProps && typeof id === 'number' ? 'tagged' : 'neither';
}

export async function readContent(bytes: Uint8Array): Promise<PageContent> {
  const task = getDocument({ data: bytes.slice(), verbosity: 0, useSystemFonts: false });
  const pdf = await task.promise;
  const codes = new Map<string, Set<number>>();
  let artifactInTagged = 0;
  let taggedInArtifact = 0;
  let unmarked = 0;
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const page = await pdf.getPage(number);
    const { fnArray, argsArray } = await page.getOperatorList();
    const open: Mark[] = [];
    let font = '';
    fnArray.forEach((op: number, i: number) => {
      const args: unknown = argsArray[i];
      if (op === OPS.beginMarkedContent || op === OPS.beginMarkedContentProps) {
        const mark = markOf(op, args);
        if (mark === 'artifact' && open.includes('tagged')) artifactInTagged += 1;
        if (mark === 'tagged' && open.includes('artifact')) taggedInArtifact += 1;
        open.push(mark);
      } else if (op === OPS.endMarkedContent) open.pop();
      else if (op === OPS.setFont && Array.isArray(args)) {
        const held: unknown = page.commonObjs.get(String(args[0]));
        font = isObject(held) && typeof held.name === 'string' ? held.name : '';
      } else if (PAINTS.has(op) && !open.some((mark) => mark !== 'neither')) unmarked += 1;
      if (op === OPS.showText && Array.isArray(args)) {
        const glyphs: unknown = args[0];
        const shown = codes.get(font) ?? new Set<number>();
        codes.set(font, shown);
        for (const glyph of Array.isArray(glyphs) ? glyphs : []) {
          if (isObject(glyph) && typeof glyph.originalCharCode === 'number') shown.add(glyph.originalCharCode);
        }
      }
    });
  }
  await task.destroy();
  return { artifactInTagged, taggedInArtifact, unmarked, codes };
}

/** Every word of a PDF that a reader can show or copy: pages, notes and links on them, bookmarks, metadata, attachments. */
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** Rejects where the file cannot be read in full. */
export async function readPdfText(bytes: Uint8Array): Promise<readonly string[]> {
  const loading = getDocument({
    data: bytes.slice(),
    verbosity: 0,
    isEvalSupported: false,
    useWorkerFetch: false,
    useSystemFonts: false,
    stopAtErrors: true,
  });
  try {
    const pdf = await loading.promise;
    const texts: string[] = [];
    for (let number = 1; number <= pdf.numPages; number += 1) {
      const page = await pdf.getPage(number);
      const { items } = await page.getTextContent();
      const pieces = items.flatMap((item) => ('str' in item ? [item] : []));
      // A word may be set in pieces, or words with nothing but distance between them.
      texts.push(pieces.map(({ str, hasEOL }) => str + (hasEOL ? '\n' : '')).join(''));
      texts.push(pieces.map(({ str }) => str).join(' '));
      texts.push(JSON.stringify(await page.getAnnotations()), JSON.stringify(await page.getStructTree()));
    }
    const { info, metadata } = await pdf.getMetadata();
    texts.push(JSON.stringify(info), metadata?.getRaw() ?? '', JSON.stringify((await pdf.getPageLabels()) ?? []));
    texts.push(JSON.stringify((await pdf.getOutline()) ?? []), JSON.stringify((await pdf.getFieldObjects()) ?? {}));
    for (const [name, file] of Object.entries((await pdf.getAttachments()) ?? {})) {
      texts.push(
        name,
        JSON.stringify(file, (key, value) => (key === 'content' ? undefined : value)),
      );
      texts.push(new TextDecoder('latin1').decode(contentOf(file)), new TextDecoder().decode(contentOf(file)));
    }
    return texts.filter((text) => text !== '');
  } finally {
    await loading.destroy();
  }
}

function contentOf(file: unknown): Uint8Array {
  const has = typeof file === 'object' && file !== null && 'content' in file;
  return has && file.content instanceof Uint8Array ? file.content : new Uint8Array();
}

/** One PDF as outside readers report it, each asked only when a condition needs it. */
import { DOMParser } from '@xmldom/xmldom';
import { type PageContent, readContent } from './page-content.js';
import { asFile, isDict, type PdfObjects, readObjects, run } from './pdf-objects.js';
import { type Element, readStructure } from './structure-tree.js';

export interface ReadFile {
  readonly path: string;
  /** What qpdf says if it cannot read the file. */
  readonly refused: string;
  readonly objects: PdfObjects;
  readonly elements: readonly Element[];
  readonly content: () => Promise<PageContent>;
  /** The XMP metadata's elements with their text, or why it is none. */
  readonly metadata: () => Metadata | undefined;
  /** qpdf's word on extraction for assistive technology. */
  readonly accessible: () => boolean;
}

export interface Metadata {
  readonly faults: readonly string[];
  readonly texts: (namespace: string, name: string) => readonly string[];
  readonly languages: (namespace: string, name: string) => readonly string[];
}

function readMetadata(text: string): Metadata {
  const faults: string[] = [];
  const parser = new DOMParser({
    onError: (level, message) => {
      faults.push(`${level}: ${message}`);
    },
  });
  const items = (namespace: string, name: string): readonly { text: string; language: string }[] => {
    try {
      const found = parser.parseFromString(text, 'text/xml').getElementsByTagNameNS(namespace, name);
      return Array.from(found).flatMap((element) => {
        const lines = Array.from(element.getElementsByTagNameNS(RDF, 'li'));
        const of = lines.length === 0 ? [element] : lines;
        return of.map((one) => ({
          text: (one.textContent ?? '').trim(),
          language: one.getAttribute('xml:lang') ?? '',
        }));
      });
    } catch (error) {
      faults.push(String(error));
      return [];
    }
  };
  items(RDF, 'RDF');
  return {
    faults,
    texts: (namespace, name) => items(namespace, name).map((one) => one.text),
    languages: (namespace, name) => items(namespace, name).map((one) => one.language),
  };
}
const RDF = 'http://www.w3.org/1999/02/22-rdf-syntax-ns#';

export function openFile(bytes: Uint8Array): ReadFile {
  const path = asFile(bytes, 'pdf');
  let content: Promise<PageContent> | undefined;
  const objects = readObjects(path);
  return {
    path,
    refused: '',
    objects,
    elements: readStructure(objects),
    content: () => {
      content ??= readContent(bytes);
      return content;
    },
    metadata: () => {
      const reference = objects.catalog['/Metadata'];
      return objects.dict(reference) ? readMetadata(objects.bytes(reference).toString('utf8')) : undefined;
    },
    accessible: () => {
      const said: unknown = JSON.parse(run('qpdf', '--json=2', '--json-key=encrypt', path));
      const encrypt = isDict(said) ? said.encrypt : undefined;
      const capabilities = isDict(encrypt) ? encrypt.capabilities : undefined;
      return isDict(capabilities) && capabilities.accessibility === true && capabilities.extract === true;
    },
  };
}

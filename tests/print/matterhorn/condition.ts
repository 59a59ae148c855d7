/** One machine-checkable failure condition of the Matterhorn Protocol: how it is found, and how it is planted. */
import type { Dict, PdfObjects } from './pdf-objects.js';
import type { ReadFile } from './read-file.js';

export interface Condition {
  /** Checkpoint and condition, as the protocol numbers them. */
  readonly id: string;
  readonly says: string;
  /** Where in the file the condition holds; empty is a file that passes. */
  readonly faults: (file: ReadFile) => readonly string[] | Promise<readonly string[]>;
  /** Puts the fault into a file that has none. */
  readonly plant: (objects: PdfObjects) => void;
}

export const found = (holds: boolean, what: string): readonly string[] => (holds ? [what] : []);

/** The first object whose dictionary is such; a file without one cannot carry the fault. */
export function first(objects: PdfObjects, such: (dict: Dict) => boolean): Dict {
  const [one] = objects.dicts().flatMap(([, dict]) => (such(dict) ? [dict] : []));
  if (!one) throw new Error('the file holds nothing to plant this fault in');
  return one;
}

export const ofRole =
  (role: string) =>
  (dict: Dict): boolean =>
    dict['/S'] === `/${role}` && '/P' in dict;

/** An annotation more on the first page. */
export function addAnnotation(objects: PdfObjects, annotation: Dict): string {
  const reference = objects.add({ '/Type': '/Annot', '/Rect': [0, 0, 9, 9], ...annotation });
  const [page] = objects.pages();
  if (page) page['/Annots'] = [...objects.list(page['/Annots']), reference];
  return reference;
}

/** A structure element more, without content, at the end of the document. */
export function addElement(objects: PdfObjects, role: string, parts: Dict = {}): Dict {
  const parent = first(objects, ofRole('Document'));
  const [[at] = ['']] = objects.dicts().filter(([, dict]) => dict === parent);
  const reference = objects.add({ '/S': `/${role}`, '/P': at, ...parts });
  parent['/K'] = [...objects.list(parent['/K']), reference];
  return objects.dict(reference) ?? {};
}

/** A font more among the first page's. */
export function addFont(objects: PdfObjects, font: Dict): void {
  const [page] = objects.pages();
  const fonts = objects.dict(objects.dict(page?.['/Resources'])?.['/Font']);
  if (!fonts) throw new Error('the first page holds no font');
  fonts['/Planted'] = objects.add({ '/Type': '/Font', ...font });
}

/** The first page's drawing, changed. */
export function changeContent(objects: PdfObjects, change: (text: string) => string): void {
  const contents = objects.pages()[0]?.['/Contents'];
  const before = objects.bytes(contents).toString('latin1');
  const after = change(before);
  if (after === before) throw new Error('nothing was planted');
  objects.setBytes(contents, Buffer.from(after, 'latin1'));
}

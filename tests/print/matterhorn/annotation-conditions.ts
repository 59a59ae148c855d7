/** Conditions on annotations: links above all; everything else must not be there, or must be as it should. */
import { addAnnotation, type Condition, first, found } from './condition.js';
import { type Dict, textOf } from './pdf-objects.js';
import type { ReadFile } from './read-file.js';
import type { Element } from './structure-tree.js';

/** ISO 32000-1, Table 169. */
const SUBTYPES: ReadonlySet<string> = new Set(
  `Text Link FreeText Line Square Circle Polygon PolyLine Highlight Underline Squiggly StrikeOut Stamp Caret Ink Popup
  FileAttachment Sound Movie Widget Screen PrinterMark TrapNet Watermark 3D Redact`.split(/\s+/),
);

interface Annotation {
  readonly subtype: string;
  readonly dict: Dict;
  /** The element that holds it. */
  readonly holder: Element | undefined;
}

function annotations({ objects, elements }: ReadFile): readonly Annotation[] {
  return objects.pages().flatMap((page) =>
    objects.list(page['/Annots']).flatMap((reference) => {
      const dict = objects.dict(reference);
      const subtype = String(dict?.['/Subtype'] ?? '').slice(1);
      const holder = elements.find(({ holds }) => typeof reference === 'string' && holds.includes(reference));
      return dict ? [{ subtype, dict, holder }] : [];
    }),
  );
}

const each = (file: ReadFile, fault: (one: Annotation) => boolean): readonly string[] =>
  annotations(file).flatMap((one) => found(fault(one), `${one.subtype} “${textOf(one.dict['/Contents'])}”`));
const described = ({ dict, holder }: Annotation, key: string): boolean =>
  textOf(dict[key]) !== '' || textOf(holder?.dict['/Alt']) !== '';
const pagesWithAnnotations = ({ objects }: ReadFile): readonly Dict[] =>
  objects.pages().filter((page) => objects.list(page['/Annots']).length > 0);
const isLink = (dict: Dict): boolean => dict['/Type'] === '/Annot' && dict['/Subtype'] === '/Link';
const mediaClips = ({ objects }: ReadFile): readonly Dict[] => objects.deep().filter((dict) => dict['/S'] === '/MCD');

export const annotationConditions: readonly Condition[] = [
  {
    id: '28-002',
    says: 'An annotation, other than of subtype Widget, Link and PrinterMark, is not a direct child of an <Annot> structure element.',
    faults: (file) =>
      each(
        file,
        ({ subtype, holder }) => !['Widget', 'Link', 'PrinterMark'].includes(subtype) && holder?.role !== 'Annot',
      ),
    plant: (objects) => {
      addAnnotation(objects, { '/Subtype': '/Text', '/Contents': 'u:a note' });
    },
  },
  {
    id: '28-004',
    says: 'An annotation, other than of subtype Widget, has neither a Contents entry nor an alternative description.',
    faults: (file) => each(file, (one) => one.subtype !== 'Widget' && !described(one, '/Contents')),
    plant: (objects) => {
      addAnnotation(objects, { '/Subtype': '/Text' });
    },
  },
  {
    id: '28-005',
    says: 'A form field has neither a TU entry nor an alternative description.',
    faults: (file) => each(file, (one) => one.subtype === 'Widget' && !described(one, '/TU')),
    plant: (objects) => {
      addAnnotation(objects, { '/Subtype': '/Widget', '/FT': '/Tx', '/T': 'u:field' });
    },
  },
  {
    id: '28-006',
    says: 'An annotation with subtype undefined in ISO 32000 does not meet 7.18.1.',
    faults: (file) => each(file, ({ subtype, holder }) => !SUBTYPES.has(subtype) && holder?.role !== 'Annot'),
    plant: (objects) => {
      addAnnotation(objects, { '/Subtype': '/Pencil', '/Contents': 'u:a mark' });
    },
  },
  {
    id: '28-007',
    says: 'An annotation of subtype TrapNet exists.',
    faults: (file) => each(file, ({ subtype }) => subtype === 'TrapNet'),
    plant: (objects) => {
      addAnnotation(objects, { '/Subtype': '/TrapNet', '/Contents': 'u:traps' });
    },
  },
  {
    id: '28-008',
    says: 'A page containing an annotation does not contain a Tabs entry.',
    faults: (file) => pagesWithAnnotations(file).flatMap((page) => found(!('/Tabs' in page), 'a page')),
    plant: (objects) => {
      delete first(objects, (dict) => '/Annots' in dict)['/Tabs'];
    },
  },
  {
    id: '28-009',
    says: 'A page containing an annotation has a Tabs entry with a value other than S.',
    faults: (file) =>
      pagesWithAnnotations(file).flatMap((page) => found('/Tabs' in page && page['/Tabs'] !== '/S', 'a page')),
    plant: (objects) => {
      first(objects, (dict) => '/Annots' in dict)['/Tabs'] = '/R';
    },
  },
  {
    id: '28-010',
    says: 'A widget annotation is not nested within a <Form> tag.',
    faults: (file) => each(file, ({ subtype, holder }) => subtype === 'Widget' && holder?.role !== 'Form'),
    plant: (objects) => {
      addAnnotation(objects, { '/Subtype': '/Widget', '/FT': '/Tx', '/T': 'u:field', '/TU': 'u:load' });
    },
  },
  {
    id: '28-011',
    says: 'A link annotation is not nested within a <Link> tag.',
    faults: (file) => each(file, ({ subtype, holder }) => subtype === 'Link' && holder?.role !== 'Link'),
    plant: (objects) => {
      addAnnotation(objects, { '/Subtype': '/Link', '/Contents': 'u:Page 4' });
    },
  },
  {
    id: '28-012',
    says: 'A link annotation does not include an alternate description in its Contents entry.',
    faults: (file) => each(file, ({ subtype, dict }) => subtype === 'Link' && textOf(dict['/Contents']) === ''),
    plant: (objects) => {
      delete first(objects, isLink)['/Contents'];
    },
  },
  {
    id: '28-014',
    says: 'CT entry is missing from the media clip data dictionary.',
    faults: (file) => mediaClips(file).flatMap((clip) => found(!('/CT' in clip), 'a clip')),
    plant: (objects) => {
      objects.catalog['/Planted'] = { '/S': '/MCD', '/Alt': ['u:', 'u:a film'] };
    },
  },
  {
    id: '28-015',
    says: 'Alt entry is missing from the media clip data dictionary.',
    faults: (file) => mediaClips(file).flatMap((clip) => found(!('/Alt' in clip), 'a clip')),
    plant: (objects) => {
      objects.catalog['/Planted'] = { '/S': '/MCD', '/CT': 'u:video/mp4' };
    },
  },
  {
    id: '28-016',
    says: 'File attachment annotations do not conform to 7.11.',
    faults: (file) =>
      each(file, ({ subtype, dict }) => {
        const attached = file.objects.dict(dict['/FS']) ?? {};
        return subtype === 'FileAttachment' && !('/F' in attached && '/UF' in attached);
      }),
    plant: (objects) => {
      addAnnotation(objects, { '/Subtype': '/FileAttachment', '/Contents': 'u:a file', '/FS': { '/F': 'u:a.txt' } });
    },
  },
  {
    id: '28-017',
    says: 'A PrinterMark annotation is included in the logical structure.',
    faults: (file) => each(file, ({ subtype, holder }) => subtype === 'PrinterMark' && holder !== undefined),
    plant: (objects) => {
      first(objects, isLink)['/Subtype'] = '/PrinterMark';
    },
  },
  {
    id: '28-018',
    says: 'The appearance stream of a PrinterMark annotation is not marked as Artifact.',
    faults: (file) =>
      each(file, ({ subtype, dict }) => {
        const drawn = file.objects.dict(dict['/AP'])?.['/N'];
        return subtype === 'PrinterMark' && !/^\s*\/Artifact\b/.test(file.objects.bytes(drawn).toString('latin1'));
      }),
    plant: (objects) => {
      const drawn = objects.add(
        { '/Type': '/XObject', '/Subtype': '/Form', '/BBox': [0, 0, 9, 9] },
        Buffer.from('0 0 m 9 9 l S'),
      );
      addAnnotation(objects, { '/Subtype': '/PrinterMark', '/Contents': 'u:a mark', '/AP': { '/N': drawn } });
    },
  },
];

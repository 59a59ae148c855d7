/** Conditions on the tree of structure elements: what may stand in what, headings, tables, figures, notes. */
import { addElement, type Condition, first, found, ofRole } from './condition.js';
import { textOf } from './pdf-objects.js';
import type { ReadFile } from './read-file.js';
import type { Element } from './structure-tree.js';

/** Which elements one may hold, and in which one must stand. */
interface Syntax {
  readonly holds: Readonly<Record<string, readonly string[]>>;
  readonly standsIn: Readonly<Record<string, readonly string[]>>;
}

/** ISO 32000-1, Table 337. */
const TABLES: Syntax = {
  holds: {
    Table: ['TR', 'THead', 'TBody', 'TFoot', 'Caption'],
    THead: ['TR'],
    TBody: ['TR'],
    TFoot: ['TR'],
    TR: ['TH', 'TD'],
  },
  standsIn: {
    TR: ['Table', 'THead', 'TBody', 'TFoot'],
    TH: ['TR'],
    TD: ['TR'],
    THead: ['Table'],
    TBody: ['Table'],
    TFoot: ['Table'],
  },
};
/** Table 336; in it a list may hold another. */
const LISTS: Syntax = {
  holds: { L: ['LI', 'L', 'Caption'], LI: ['Lbl', 'LBody'] },
  standsIn: { LI: ['L'], LBody: ['LI'] },
};
/** Table 333. */
const CONTENTS: Syntax = {
  holds: { TOC: ['TOC', 'TOCI', 'Caption'], TOCI: ['Lbl', 'Reference', 'NonStruct', 'P', 'TOC'] },
  standsIn: { TOCI: ['TOC'] },
};
/** Table 338. */
const RUBY: Syntax = {
  holds: { Ruby: ['RB', 'RT', 'RP'] },
  standsIn: { RB: ['Ruby'], RT: ['Ruby'], RP: ['Ruby'] },
};
const WARICHU: Syntax = { holds: { Warichu: ['WT', 'WP'] }, standsIn: { WT: ['Warichu'], WP: ['Warichu'] } };

const breaches =
  ({ holds, standsIn }: Syntax) =>
  ({ elements }: ReadFile): readonly string[] =>
    elements.flatMap(({ role, kids, parent }) => [
      ...kids.flatMap((kid) =>
        found(holds[role] !== undefined && !holds[role].includes(kid.role), `${kid.role} in ${role}`),
      ),
      ...found(
        standsIn[role] !== undefined && !standsIn[role].includes(parent?.role ?? ''),
        `${role} in ${parent?.role ?? 'nothing'}`,
      ),
    ]);

const headings = ({ elements }: ReadFile): readonly number[] =>
  elements.flatMap(({ role }) => (/^H[1-6]$/.test(role) ? [Number(role.slice(1))] : []));
const attributes = (file: ReadFile, element: Element): readonly string[] =>
  file.objects.list(element.dict['/A']).flatMap((one) => Object.keys(file.objects.dict(one) ?? {}));
const noted = ({ elements }: ReadFile): readonly Element[] => elements.filter(({ role }) => role === 'Note');

export const structureConditions: readonly Condition[] = [
  {
    id: '09-004',
    says: 'A table-related structure element is used in a way that does not conform to the syntax of ISO 32000-1, Table 337.',
    faults: breaches(TABLES),
    plant: (objects) => {
      first(objects, ofRole('TR'))['/S'] = '/P';
    },
  },
  {
    id: '09-005',
    says: 'A list-related structure element is used in a way that does not conform to Table 336 in ISO 32000-1.',
    faults: breaches(LISTS),
    plant: (objects) => {
      first(objects, ofRole('LI'))['/S'] = '/P';
    },
  },
  {
    id: '09-006',
    says: 'A TOC-related structure element is used in a way that does not conform to Table 333 in ISO 32000-1.',
    faults: breaches(CONTENTS),
    plant: (objects) => {
      addElement(objects, 'TOCI');
    },
  },
  {
    id: '09-007',
    says: 'A Ruby-related structure element is used in a way that does not conform to Table 338 in ISO 32000-1.',
    faults: breaches(RUBY),
    plant: (objects) => {
      addElement(objects, 'RB');
    },
  },
  {
    id: '09-008',
    says: 'A Warichu-related structure element is used in a way that does not conform to Table 338 in ISO 32000-1.',
    faults: breaches(WARICHU),
    plant: (objects) => {
      addElement(objects, 'WT');
    },
  },
  {
    id: '13-004',
    says: '<Figure> tag alternative or replacement text missing.',
    faults: ({ elements }) =>
      elements.flatMap(({ role, dict }) =>
        found(role === 'Figure' && textOf(dict['/Alt']) === '' && textOf(dict['/ActualText']) === '', 'a figure'),
      ),
    plant: (objects) => {
      delete first(objects, ofRole('Figure'))['/Alt'];
    },
  },
  {
    id: '14-002',
    says: 'Does use numbered headings, but the first heading tag is not <H1>.',
    faults: (file) => {
      const [level] = headings(file);
      return found(level !== undefined && level !== 1, `H${level}`);
    },
    plant: (objects) => {
      first(objects, ofRole('H1'))['/S'] = '/H2';
    },
  },
  {
    id: '14-003',
    says: 'Numbered heading levels in descending sequence are skipped (Example: <H3> follows directly after <H1>).',
    faults: (file) =>
      headings(file).flatMap((level, i, all) => {
        const before = all[i - 1] ?? level;
        return found(level > before + 1, `H${level} after H${before}`);
      }),
    plant: (objects) => {
      first(objects, ofRole('H2'))['/S'] = '/H4';
    },
  },
  {
    id: '14-006',
    says: 'A node contains more than one <H> tag.',
    faults: ({ elements }) =>
      elements.flatMap(({ role, kids }) => found(kids.filter((kid) => kid.role === 'H').length > 1, role)),
    plant: (objects) => {
      addElement(objects, 'H');
      addElement(objects, 'H');
    },
  },
  {
    id: '14-007',
    says: 'Document uses both <H> and <H#> tags.',
    faults: (file) => found(file.elements.some(({ role }) => role === 'H') && headings(file).length > 0, 'both'),
    plant: (objects) => {
      addElement(objects, 'H');
    },
  },
  {
    id: '15-003',
    says: 'In a table not organized with Headers attributes and IDs, a <TH> cell does not contain a Scope attribute.',
    faults: (file) =>
      file.elements.flatMap((one) => found(one.role === 'TH' && !attributes(file, one).includes('/Scope'), 'TH')),
    plant: (objects) => {
      delete first(objects, ofRole('TH'))['/A'];
    },
  },
  {
    id: '19-003',
    says: 'ID entry of the <Note> tag is not present.',
    faults: (file) => noted(file).flatMap(({ dict }) => found(textOf(dict['/ID']) === '', 'a note')),
    plant: (objects) => {
      addElement(objects, 'Note');
    },
  },
  {
    id: '19-004',
    says: 'ID entry of the <Note> tag is non-unique.',
    faults: (file) => {
      const ids = noted(file).map(({ dict }) => textOf(dict['/ID']));
      return ids.filter((id, i) => ids.indexOf(id) !== i);
    },
    plant: (objects) => {
      addElement(objects, 'Note', { '/ID': 'u:one' });
      addElement(objects, 'Note', { '/ID': 'u:one' });
    },
  },
];

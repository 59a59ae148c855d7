/** Conditions on the document as a whole: marks, roles, metadata, languages, optional content, files, forms, encryption. */
import { addAnnotation, addElement, type Condition, changeContent, first, found, ofRole } from './condition.js';
import { type Dict, isDict, type PdfObjects, textOf } from './pdf-objects.js';
import type { ReadFile } from './read-file.js';
import { roleMap } from './structure-tree.js';

const DUBLIN_CORE = 'http://purl.org/dc/elements/1.1/';
/** ISO 32000-1, 14.8.4. */
const STANDARD_ROLES: ReadonlySet<string> = new Set(
  `Document Part Art Sect Div BlockQuote Caption TOC TOCI Index NonStruct Private P H H1 H2 H3 H4 H5 H6 L LI Lbl LBody
  Table TR TH TD THead TBody TFoot Span Quote Note Reference BibEntry Code Link Annot Ruby RB RT RP Warichu WT WP Figure
  Formula Form`.split(/\s+/),
);
/** BCP 47: a language, perhaps a script, perhaps a region. */
const LANGUAGE = /^[a-z]{2,3}(-[A-Z][a-z]{3})?(-([A-Z]{2}|\d{3}))?$/;

const preferences = ({ objects }: ReadFile): Dict => objects.dict(objects.catalog['/ViewerPreferences']) ?? {};
const markInfo = (objects: PdfObjects): Dict => objects.dict(objects.catalog['/MarkInfo']) ?? {};
const language = ({ objects }: ReadFile): string => textOf(objects.at(objects.catalog['/Lang']));
const withoutLanguage = (objects: PdfObjects): void => {
  delete objects.catalog['/Lang'];
};
const ends = (role: string, map: Dict): 'standard' | 'other' | 'circle' => {
  const seen = new Set<string>();
  for (let at = role; ; ) {
    if (STANDARD_ROLES.has(at.slice(1))) return 'standard';
    if (seen.has(at)) return 'circle';
    seen.add(at);
    const to = map[at];
    if (typeof to !== 'string') return 'other';
    at = to;
  }
};
const rolesEnding = ({ objects, elements }: ReadFile, how: 'other' | 'circle'): readonly string[] => {
  const map = roleMap(objects);
  const used = new Set([...elements.map(({ own }) => `/${own}`), ...Object.keys(map)]);
  return [...used].filter((role) => ends(role, map) === how);
};
const optional = (objects: PdfObjects): Dict | undefined => objects.dict(objects.catalog['/OCProperties']);
const configurations = (objects: PdfObjects): readonly Dict[] =>
  objects.list(optional(objects)?.['/Configs']).flatMap((one) => {
    const dict = objects.dict(one);
    return dict ? [dict] : [];
  });
const unnamed = (dict: Dict): boolean => textOf(dict['/Name']) === '';
const planOptional =
  (parts: Dict) =>
  (objects: PdfObjects): void => {
    objects.catalog['/OCProperties'] = { '/OCGs': [], '/D': { '/Name': 'u:as printed' }, ...parts };
  };

export const documentConditions: readonly Condition[] = [
  {
    id: '01-003',
    says: 'Content marked as Artifact is present inside tagged content.',
    faults: async (file) => found((await file.content()).artifactInTagged > 0, 'an artifact within tagged content'),
    plant: (objects) => changeContent(objects, (text) => text.replace(/\nEMC/, '\n/Artifact BMC\nEMC\nEMC')),
  },
  {
    id: '01-004',
    says: 'Tagged content is present inside content marked as Artifact.',
    faults: async (file) => found((await file.content()).taggedInArtifact > 0, 'tagged content within an artifact'),
    plant: (objects) =>
      changeContent(objects, (text) =>
        text.replace(/(\/Artifact[\s\S]*?(?:BDC|BMC)\n)/, '$1/P <</MCID 9999>> BDC\nEMC\n'),
      ),
  },
  {
    id: '01-005',
    says: 'Content is neither marked as Artifact nor tagged as real content.',
    faults: async (file) => found((await file.content()).unmarked > 0, 'marks on the page outside of both'),
    plant: (objects) => changeContent(objects, (text) => `${text}\n0 0 m 9 9 l S\n`),
  },
  {
    id: '01-007',
    says: 'Suspects entry has a value of true.',
    faults: ({ objects }) => found(markInfo(objects)['/Suspects'] === true, 'Suspects'),
    plant: (objects) => {
      markInfo(objects)['/Suspects'] = true;
    },
  },
  {
    id: '02-001',
    says: 'One or more non-standard tag’s mapping does not terminate with a standard type.',
    faults: (file) => rolesEnding(file, 'other'),
    plant: (objects) => {
      first(objects, ofRole('P'))['/S'] = '/Verse';
    },
  },
  {
    id: '02-003',
    says: 'A circular mapping exists.',
    faults: (file) => rolesEnding(file, 'circle'),
    plant: (objects) => {
      const root = objects.dict(objects.catalog['/StructTreeRoot']) ?? {};
      root['/RoleMap'] = { '/Verse': '/Stanza', '/Stanza': '/Verse' };
    },
  },
  {
    id: '02-004',
    says: 'One or more standard types are remapped.',
    faults: ({ objects }) => Object.keys(roleMap(objects)).filter((role) => STANDARD_ROLES.has(role.slice(1))),
    plant: (objects) => {
      const root = objects.dict(objects.catalog['/StructTreeRoot']) ?? {};
      root['/RoleMap'] = { '/H2': '/P' };
    },
  },
  {
    id: '06-001',
    says: 'Document does not contain an XMP metadata stream.',
    faults: (file) => {
      const metadata = file.metadata();
      return metadata ? metadata.faults : ['none'];
    },
    plant: (objects) => {
      delete objects.catalog['/Metadata'];
    },
  },
  {
    id: '06-003',
    says: 'XMP metadata stream does not contain dc:title.',
    faults: (file) =>
      found(
        !file
          .metadata()
          ?.texts(DUBLIN_CORE, 'title')
          .some((title) => title !== ''),
        'no dc:title',
      ),
    plant: (objects) => {
      const reference = objects.catalog['/Metadata'];
      const text = objects.bytes(reference).toString('utf8').replaceAll('dc:title', 'dc:subject');
      objects.setBytes(reference, Buffer.from(text));
    },
  },
  {
    id: '07-001',
    says: 'ViewerPreferences dictionary of the Catalog dictionary does not contain a DisplayDocTitle entry.',
    faults: (file) => found(!('/DisplayDocTitle' in preferences(file)), 'no DisplayDocTitle'),
    plant: (objects) => {
      delete objects.catalog['/ViewerPreferences'];
    },
  },
  {
    id: '07-002',
    says: 'ViewerPreferences dictionary of the Catalog dictionary contains a DisplayDocTitle entry with a value of false.',
    faults: (file) => found(preferences(file)['/DisplayDocTitle'] === false, 'DisplayDocTitle is false'),
    plant: (objects) => {
      objects.catalog['/ViewerPreferences'] = { '/DisplayDocTitle': false };
    },
  },
  {
    id: '11-001',
    says: 'Natural language for text in page content cannot be determined.',
    faults: ({ elements }) =>
      elements.flatMap((one) =>
        one.hasContent && !LANGUAGE.test(one.language) ? [`${one.role} “${one.language}”`] : [],
      ),
    plant: withoutLanguage,
  },
  {
    id: '11-002',
    says: 'Natural language for text in Alt, ActualText and E attributes cannot be determined.',
    faults: ({ elements }) =>
      elements.flatMap((one) =>
        ['/Alt', '/ActualText', '/E'].some((key) => key in one.dict) && !LANGUAGE.test(one.language) ? [one.role] : [],
      ),
    plant: withoutLanguage,
  },
  {
    id: '11-003',
    says: 'Natural language in the Outline entries cannot be determined.',
    faults: (file) => found('/Outlines' in file.objects.catalog && !LANGUAGE.test(language(file)), 'bookmarks'),
    plant: withoutLanguage,
  },
  {
    id: '11-004',
    says: 'Natural language in the Contents entry for annotations cannot be determined.',
    faults: (file) => {
      const named = file.objects.dicts().some(([, dict]) => dict['/Type'] === '/Annot' && '/Contents' in dict);
      return found(named && !LANGUAGE.test(language(file)), 'what names a link');
    },
    plant: withoutLanguage,
  },
  {
    id: '11-005',
    says: 'Natural language in the TU entry for form fields cannot be determined.',
    faults: (file) => {
      const named = file.objects.dicts().some(([, dict]) => '/TU' in dict);
      return found(named && !LANGUAGE.test(language(file)), 'what names a field');
    },
    plant: (objects) => {
      addAnnotation(objects, { '/Subtype': '/Widget', '/FT': '/Tx', '/T': 'u:field', '/TU': 'u:load' });
      withoutLanguage(objects);
    },
  },
  {
    id: '11-006',
    says: 'Natural language for document metadata cannot be determined.',
    faults: (file) => {
      const said = file.metadata()?.languages(DUBLIN_CORE, 'title') ?? [];
      const own = said.length > 0 && said.every((one) => LANGUAGE.test(one));
      return found(!own && !(said.includes('x-default') && LANGUAGE.test(language(file))), 'the title');
    },
    plant: withoutLanguage,
  },
  {
    id: '20-001',
    says: 'Name entry is missing or empty in an Optional Content Configuration Dictionary in the Configs entry.',
    faults: ({ objects }) => configurations(objects).flatMap((one) => found(unnamed(one), 'a configuration')),
    plant: planOptional({ '/Configs': [{}] }),
  },
  {
    id: '20-002',
    says: 'Name entry is missing or empty in the Optional Content Configuration Dictionary that is the value of the D entry.',
    faults: ({ objects }) => {
      const own = optional(objects);
      return found(own !== undefined && unnamed(objects.dict(own['/D']) ?? {}), 'the default configuration');
    },
    plant: planOptional({ '/D': {} }),
  },
  {
    id: '20-003',
    says: 'An AS entry appears in an Optional Content Configuration Dictionary.',
    faults: ({ objects }) =>
      [...configurations(objects), objects.dict(optional(objects)?.['/D']) ?? {}].flatMap((one) =>
        found('/AS' in one, 'AS'),
      ),
    plant: planOptional({ '/D': { '/Name': 'u:as printed', '/AS': [] } }),
  },
  {
    id: '21-001',
    says: 'The file specification dictionary for an embedded file does not contain F and UF entries.',
    faults: ({ objects }) =>
      objects.deep().flatMap((dict) => found('/EF' in dict && !('/F' in dict && '/UF' in dict), 'an embedded file')),
    plant: (objects) => {
      objects.catalog['/AF'] = [objects.add({ '/Type': '/Filespec', '/F': 'u:a.txt', '/EF': {} })];
    },
  },
  {
    id: '25-001',
    says: 'File contains the dynamicRender element with value “required”.',
    faults: ({ objects }) => {
      const forms = objects.dict(objects.catalog['/AcroForm']);
      return objects
        .list(forms?.['/XFA'])
        .flatMap((one) => found(/<dynamicRender>\s*required/.test(objects.bytes(one).toString('utf8')), 'a form'));
    },
    plant: (objects) => {
      const xfa = objects.add({}, Buffer.from('<config><dynamicRender>required</dynamicRender></config>'));
      objects.catalog['/AcroForm'] = { '/Fields': [], '/XFA': ['u:config', xfa] };
    },
  },
  {
    id: '17-002',
    says: '<Formula> tag is missing an Alt attribute.',
    faults: ({ elements }) =>
      elements.flatMap((one) => found(one.role === 'Formula' && !('/Alt' in one.dict), 'a formula')),
    plant: (objects) => {
      addElement(objects, 'Formula');
    },
  },
  {
    id: '17-003',
    says: 'Unicode mapping requirements are not met (in a formula; held more strictly: there is no formula).',
    faults: ({ elements }) => elements.flatMap((one) => found(one.role === 'Formula', 'a formula')),
    plant: (objects) => {
      addElement(objects, 'Formula', { '/Alt': 'u:16 kg times 8' });
    },
  },
  {
    id: '30-001',
    says: 'A reference XObject is present.',
    faults: ({ objects }) =>
      objects.dicts().flatMap(([, dict]) => found(dict['/Subtype'] === '/Form' && '/Ref' in dict, 'a reference')),
    plant: (objects) => {
      objects.catalog['/Planted'] = objects.add(
        { '/Type': '/XObject', '/Subtype': '/Form', '/Ref': {} },
        Buffer.from(''),
      );
    },
  },
  {
    id: '30-002',
    says: 'Form XObject contains MCIDs and is referenced more than once.',
    faults: ({ objects }) => {
      const used = objects.dicts().flatMap(([, dict]) => {
        const own = objects.dict(dict['/XObject']) ?? objects.dict(objects.dict(dict['/Resources'])?.['/XObject']);
        return Object.values(own ?? {});
      });
      return [...new Set(used)].flatMap((one) =>
        found(
          used.filter((other) => other === one).length > 1 && objects.bytes(one).includes('/MCID'),
          'a form drawn twice',
        ),
      );
    },
    plant: (objects) => {
      const form = { '/Type': '/XObject', '/Subtype': '/Form', '/BBox': [0, 0, 9, 9] };
      const reference = objects.add(form, Buffer.from('/P <</MCID 0>> BDC\nEMC\n'));
      for (const page of objects.pages().slice(0, 2)) {
        const resources = objects.dict(page['/Resources']);
        if (isDict(resources)) resources['/XObject'] = { '/Planted': reference };
      }
    },
  },
];

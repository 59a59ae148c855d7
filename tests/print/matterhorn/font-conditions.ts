/** Conditions on fonts: embedded, whole, as wide as they say, every code a letter. Simple fonts must not be there at all. */
import { addFont, type Condition, first, found } from './condition.js';
import { type FontProgram, readProgram } from './font-program.js';
import { type Dict, isDict, type Json, type PdfObjects, run, textOf } from './pdf-objects.js';
import type { ReadFile } from './read-file.js';

/** ISO 32000-1, Table 118. */
const PREDEFINED =
  /^\/(Identity-[HV]|(GB|GBpc|GBK|GBKp|GBK2K|UniGB|B5pc|HKscs|ETen|ETenms|CNS|UniCNS|83pv|90ms|90msp|90pv|Add|EUC|Ext|H|V|UniJIS|KSC|KSCms|KSCpc|UniKS)\b.*)$/;
const isComposite = (dict: Dict): boolean => dict['/Subtype'] === '/Type0';
const isDescendant = (dict: Dict): boolean => dict['/Subtype'] === '/CIDFontType2';
const isDescriptor = (dict: Dict): boolean => dict['/Type'] === '/FontDescriptor';

interface Composite {
  readonly name: string;
  readonly dict: Dict;
  readonly descendant: Dict;
  readonly descriptor: Dict;
  readonly program: FontProgram | undefined;
  readonly unicode: ReadonlyMap<number, readonly number[]>;
}

const fontsOf = ({ objects }: ReadFile): readonly Dict[] =>
  objects.dicts().flatMap(([, dict]) => (dict['/Type'] === '/Font' && !isDescendant(dict) ? [dict] : []));

/** Codes and what each stands for, from the ranges of a ToUnicode map. */
function readToUnicode(text: string): ReadonlyMap<number, readonly number[]> {
  const map = new Map<number, readonly number[]>();
  const units = (hex: string): readonly number[] => (hex.match(/.{4}/g) ?? []).map((unit) => Number.parseInt(unit, 16));
  for (const [, body = ''] of text.matchAll(/beginbfchar([\s\S]*?)endbfchar/g)) {
    for (const [, code = '', to = ''] of body.matchAll(/<([\da-f]+)>\s*<([\da-f\s]*)>/gi))
      map.set(Number.parseInt(code, 16), units(to.replace(/\s/g, '')));
  }
  for (const [, body = ''] of text.matchAll(/beginbfrange([\s\S]*?)endbfrange/g)) {
    for (const [, from = '', , list, single = ''] of body.matchAll(
      /<([\da-f]+)>\s*<([\da-f]+)>\s*(?:\[([^\]]*)\]|<([\da-f]+)>)/gi,
    )) {
      const at = Number.parseInt(from, 16);
      if (list === undefined) map.set(at, units(single));
      else {
        for (const [i, [, to = '']] of [...list.matchAll(/<([\da-f\s]*)>/gi)].entries())
          map.set(at + i, units(to.replace(/\s/g, '')));
      }
    }
  }
  return map;
}

function composites(file: ReadFile): readonly Composite[] {
  const { objects } = file;
  return fontsOf(file)
    .filter(isComposite)
    .map((dict) => {
      const descendant = objects.dict(objects.list(dict['/DescendantFonts'])[0]) ?? {};
      const descriptor = objects.dict(descendant['/FontDescriptor']) ?? {};
      return {
        name: String(dict['/BaseFont'] ?? '').slice(1),
        dict,
        descendant,
        descriptor,
        program: readProgram(objects.bytes(descriptor['/FontFile2'])),
        unicode: readToUnicode(objects.bytes(dict['/ToUnicode']).toString('latin1')),
      };
    });
}

const eachFont = (file: ReadFile, fault: (font: Composite) => boolean): readonly string[] =>
  composites(file).flatMap((font) => found(fault(font), font.name));

/** Fonts with the codes that pages show in them. */
async function eachCode(file: ReadFile, fault: (font: Composite, code: number) => boolean): Promise<readonly string[]> {
  const { codes } = await file.content();
  return composites(file).flatMap((font) =>
    [...(codes.get(font.name) ?? [])].flatMap((code) => found(fault(font, code), `${font.name}, code ${code}`)),
  );
}

/** Widths in thousandths as the dictionary gives them. */
function widthOf({ objects }: ReadFile, { descendant }: Composite, code: number): number {
  const entries = objects.list(descendant['/W']);
  for (let i = 0; i < entries.length; ) {
    const from = Number(entries[i]);
    const next: Json = objects.at(entries[i + 1]);
    if (Array.isArray(next)) {
      if (code >= from && code < from + next.length) return Number(next[code - from]);
      i += 2;
    } else {
      if (code >= from && code <= Number(next)) return Number(entries[i + 2]);
      i += 3;
    }
  }
  return Number(descendant['/DW'] ?? 1000);
}

const systemOf = (objects: PdfObjects, dict: Dict | undefined): Dict => objects.dict(dict?.['/CIDSystemInfo']) ?? {};
/** Of fonts whose encoding is a map of their own, what they and their descendants say of their system. */
const systems = (file: ReadFile): readonly (readonly [Dict, Dict])[] =>
  composites(file).flatMap(({ dict, descendant }) => {
    const map = file.objects.dict(dict['/Encoding']);
    return map ? [[systemOf(file.objects, map), systemOf(file.objects, descendant)] as const] : [];
  });
const mapText = (file: ReadFile, { dict }: Composite): string =>
  file.objects.bytes(dict['/Encoding']).toString('latin1');
const system = (parts: Dict): Dict => ({
  '/Registry': 'u:Adobe',
  '/Ordering': 'u:Identity',
  '/Supplement': 0,
  ...parts,
});
/** An encoding of its own for the first font. */
const encoded =
  (parts: Dict, text: string) =>
  (objects: PdfObjects): void => {
    const map = { '/Type': '/CMap', '/CMapName': '/Planted', '/CIDSystemInfo': system({}), ...parts };
    first(objects, isComposite)['/Encoding'] = objects.add(map, Buffer.from(text));
  };

/** CIDs a descriptor's CIDSet lists, a bit for each. */
const listed = (file: ReadFile, font: Composite): readonly boolean[] | undefined => {
  const reference = font.descriptor['/CIDSet'];
  if (!file.objects.dict(reference)) return undefined;
  return [...file.objects.bytes(reference)].flatMap((byte) =>
    Array.from({ length: 8 }, (_, i) => (byte & (0x80 >> i)) !== 0),
  );
};
const setOf =
  (bytes: readonly number[]) =>
  (objects: PdfObjects): void => {
    first(objects, isDescriptor)['/CIDSet'] = objects.add({}, Buffer.from(bytes));
  };

interface Simple {
  readonly dict: Dict;
  readonly symbolic: boolean;
  readonly encoding: Json;
  readonly program: FontProgram | undefined;
}
const SYMBOLIC = 4;
function simpleFonts(file: ReadFile): readonly Simple[] {
  const { objects } = file;
  return fontsOf(file)
    .filter((dict) => dict['/Subtype'] === '/TrueType')
    .map((dict) => {
      const descriptor = objects.dict(dict['/FontDescriptor']) ?? {};
      return {
        dict,
        symbolic: (Number(descriptor['/Flags'] ?? 0) & SYMBOLIC) !== 0,
        encoding: objects.at(dict['/Encoding']),
        program: readProgram(objects.bytes(descriptor['/FontFile2'])),
      };
    });
}
const plain = (file: ReadFile, fault: (font: Simple) => boolean): readonly string[] =>
  simpleFonts(file).flatMap((font) => found(!font.symbolic && fault(font), 'a plain TrueType font'));
const symbol = (file: ReadFile, fault: (font: Simple) => boolean): readonly string[] =>
  simpleFonts(file).flatMap((font) => found(font.symbolic && fault(font), 'a symbolic TrueType font'));
const has = (font: Simple, platform: number, encoding: number): boolean =>
  font.program?.maps.some(([one, other]) => one === platform && other === encoding) ?? false;
const baseOf = ({ encoding }: Simple): Json => (isDict(encoding) ? (encoding['/BaseEncoding'] ?? null) : encoding);
const simple =
  (flags: number, parts: Dict, program = true) =>
  (objects: PdfObjects): void => {
    const embedded = program
      ? { '/FontFile2': first(objects, (dict) => '/FontFile2' in dict)['/FontFile2'] ?? null }
      : {};
    const descriptor = objects.add({ '/Type': '/FontDescriptor', '/Flags': flags, ...embedded });
    addFont(objects, { '/Subtype': '/TrueType', '/BaseFont': '/Planted', '/FontDescriptor': descriptor, ...parts });
  };
const PLAIN = 32;
const WIN = { '/Encoding': '/WinAnsiEncoding' };

/** The first font's map of its letters, changed. */
const changeUnicode =
  (to: string) =>
  (objects: PdfObjects): void => {
    const reference = first(objects, isComposite)['/ToUnicode'];
    const text = objects.bytes(reference).toString('latin1');
    const changed = text.replace(/(beginbfrange[\s\S]*?\[\s*<[^>]*>\s*<)[\da-f]+/i, `$1${to}`);
    if (changed === text) throw new Error('nothing was planted');
    objects.setBytes(reference, Buffer.from(changed, 'latin1'));
  };

export const fontConditions: readonly Condition[] = [
  {
    id: '10-001',
    says: 'Character code cannot be mapped to Unicode.',
    faults: (file) => eachCode(file, ({ unicode }, code) => (unicode.get(code) ?? []).length === 0),
    plant: changeUnicode(''),
  },
  {
    id: '31-001',
    says: 'A Type 0 font with an encoding of its own and its CIDFont differ in Registry.',
    faults: (file) => systems(file).flatMap(([a, b]) => found(a['/Registry'] !== b['/Registry'], 'Registry')),
    plant: encoded({ '/CIDSystemInfo': system({ '/Registry': 'u:Other' }) }, ''),
  },
  {
    id: '31-002',
    says: 'A Type 0 font with an encoding of its own and its CIDFont differ in Ordering.',
    faults: (file) => systems(file).flatMap(([a, b]) => found(a['/Ordering'] !== b['/Ordering'], 'Ordering')),
    plant: encoded({ '/CIDSystemInfo': system({ '/Ordering': 'u:Other' }) }, ''),
  },
  {
    id: '31-003',
    says: 'The CIDFont of a Type 0 font with an encoding of its own has a lower Supplement than the encoding.',
    faults: (file) =>
      systems(file).flatMap(([a, b]) => found(Number(b['/Supplement']) < Number(a['/Supplement']), 'Supplement')),
    plant: encoded({ '/CIDSystemInfo': system({ '/Supplement': 7 }) }, ''),
  },
  {
    id: '31-004',
    says: 'A Type 2 CID font contains neither a stream nor the name Identity as the value of the CIDToGIDMap entry.',
    faults: (file) =>
      eachFont(file, ({ descendant }) => {
        const map = descendant['/CIDToGIDMap'];
        return map !== undefined && map !== '/Identity' && !file.objects.dict(map);
      }),
    plant: (objects) => {
      first(objects, isDescendant)['/CIDToGIDMap'] = '/Other';
    },
  },
  {
    id: '31-005',
    says: 'A Type 2 CID font does not contain a CIDToGIDMap entry.',
    faults: (file) => eachFont(file, ({ descendant }) => !('/CIDToGIDMap' in descendant)),
    plant: (objects) => {
      delete first(objects, isDescendant)['/CIDToGIDMap'];
    },
  },
  {
    id: '31-006',
    says: 'A CMap is neither listed in ISO 32000-1, Table 118, nor embedded.',
    faults: (file) =>
      eachFont(file, ({ dict }) => {
        const encoding = dict['/Encoding'] ?? null;
        return !file.objects.dict(encoding) && !(typeof encoding === 'string' && PREDEFINED.test(encoding));
      }),
    plant: (objects) => {
      first(objects, isComposite)['/Encoding'] = '/Own-Letters';
    },
  },
  {
    id: '31-007',
    says: 'The WMode entry in a CMap dictionary is not identical to the WMode value in the CMap stream.',
    faults: (file) =>
      eachFont(file, (font) => {
        const map = file.objects.dict(font.dict['/Encoding']);
        const inside = Number(/\/WMode\s+(\d)/.exec(mapText(file, font))?.[1] ?? 0);
        return map !== undefined && Number(map['/WMode'] ?? 0) !== inside;
      }),
    plant: encoded({ '/WMode': 1 }, '/WMode 0 def'),
  },
  {
    id: '31-008',
    says: 'A CMap references another CMap which is not listed in ISO 32000-1, Table 118.',
    faults: (file) =>
      eachFont(file, (font) => {
        const other = /(\/\S+)\s+usecmap/.exec(mapText(file, font))?.[1];
        return other !== undefined && !PREDEFINED.test(other);
      }),
    plant: encoded({}, '/Own-Letters usecmap'),
  },
  {
    id: '31-009',
    says: 'For a font used by text intended to be rendered the font program is not embedded.',
    faults: ({ path }) =>
      run('pdffonts', path)
        .trim()
        .split('\n')
        .slice(2)
        .filter((line) => !/ yes +(yes|no) +(yes|no) +\d+ +\d+$/.test(line)),
    plant: (objects) => {
      delete first(objects, isDescriptor)['/FontFile2'];
    },
  },
  {
    id: '31-011',
    says: 'The embedded font program does not contain glyphs for all of the glyphs referenced by the text.',
    faults: (file) => eachCode(file, ({ program }, code) => code >= (program?.glyphs ?? 0)),
    plant: (objects) => {
      const reference = first(objects, isDescriptor)['/FontFile2'];
      const bytes = Buffer.from(objects.bytes(reference));
      const at = bytes.indexOf('maxp', 12, 'latin1');
      bytes.writeUInt16BE(2, bytes.readUInt32BE(at + 8) + 4);
      objects.setBytes(reference, bytes);
    },
  },
  ...['31-012', '31-013'].map(
    (id): Condition => ({
      id,
      says:
        id === '31-012'
          ? 'A glyph of an embedded Type 1 font is not listed in its CharSet (held more strictly: there is no CharSet).'
          : 'A glyph listed in the CharSet of an embedded Type 1 font is not in it (held more strictly: there is no CharSet).',
      faults: ({ objects }) => objects.deep().flatMap((dict) => found('/CharSet' in dict, 'a CharSet')),
      plant: (objects) => {
        first(objects, isDescriptor)['/CharSet'] = 'u:/A/B';
      },
    }),
  ),
  {
    id: '31-014',
    says: 'A glyph of an embedded CID font is not listed in its CIDSet.',
    faults: (file) =>
      eachFont(file, (font) => {
        const set = listed(file, font);
        return set !== undefined && Array.from({ length: font.program?.glyphs ?? 0 }, (_, i) => i).some((i) => !set[i]);
      }),
    plant: setOf([0x80]),
  },
  {
    id: '31-015',
    says: 'A glyph listed in the CIDSet of an embedded CID font is not in it.',
    faults: (file) =>
      eachFont(file, (font) => listed(file, font)?.some((set, i) => set && i >= (font.program?.glyphs ?? 0)) ?? false),
    plant: setOf(Array.from({ length: 8000 }, () => 0xff)),
  },
  {
    id: '31-016',
    says: 'The glyph width in the font dictionary and in the embedded font program differ by more than 1/1000 unit.',
    faults: (file) =>
      eachCode(file, (font, code) => {
        if (!font.program) return true;
        const own = (font.program.advance(code) * 1000) / font.program.unitsPerEm;
        return Math.abs(own - widthOf(file, font, code)) > 1;
      }),
    plant: (objects) => {
      first(objects, isDescendant)['/W'] = [0, 9000, 333];
    },
  },
  {
    id: '31-017',
    says: 'A non-symbolic TrueType font is used, but no cmap of its program is a non-symbolic one.',
    faults: (file) => plain(file, (font) => !has(font, 3, 1) && !has(font, 1, 0)),
    plant: simple(PLAIN, WIN),
  },
  {
    id: '31-018',
    says: 'A glyph of a non-symbolic TrueType font cannot be looked up by its cmaps (held more strictly: there is no such font).',
    faults: (file) => plain(file, () => true),
    plant: simple(PLAIN, WIN),
  },
  {
    id: '31-019',
    says: 'The font dictionary for a non-symbolic TrueType font does not contain an Encoding entry.',
    faults: (file) => plain(file, ({ encoding }) => encoding === null),
    plant: simple(PLAIN, {}),
  },
  {
    id: '31-020',
    says: 'The Encoding dictionary of a non-symbolic TrueType font does not contain a BaseEncoding entry.',
    faults: (file) => plain(file, ({ encoding }) => isDict(encoding) && !('/BaseEncoding' in encoding)),
    plant: simple(PLAIN, { '/Encoding': { '/Type': '/Encoding' } }),
  },
  {
    id: '31-021',
    says: 'The encoding of a non-symbolic TrueType font is neither MacRomanEncoding nor WinAnsiEncoding.',
    faults: (file) => plain(file, (font) => !['/MacRomanEncoding', '/WinAnsiEncoding'].includes(String(baseOf(font)))),
    plant: simple(PLAIN, { '/Encoding': '/StandardEncoding' }),
  },
  {
    id: '31-022',
    says: 'The Differences of a non-symbolic TrueType font name a glyph not in the Adobe Glyph List (held more strictly: there are none).',
    faults: (file) => plain(file, ({ encoding }) => isDict(encoding) && '/Differences' in encoding),
    plant: simple(PLAIN, { '/Encoding': { '/BaseEncoding': '/WinAnsiEncoding', '/Differences': [65, '/Own'] } }),
  },
  {
    id: '31-023',
    says: 'Differences are present for a non-symbolic TrueType font whose program has no (3,1) Microsoft Unicode cmap.',
    faults: (file) =>
      plain(file, (font) => isDict(font.encoding) && '/Differences' in font.encoding && !has(font, 3, 1)),
    plant: simple(PLAIN, { '/Encoding': { '/BaseEncoding': '/WinAnsiEncoding', '/Differences': [65, '/A'] } }),
  },
  {
    id: '31-024',
    says: 'The Encoding entry is present in the font dictionary for a symbolic TrueType font.',
    faults: (file) => symbol(file, ({ encoding }) => encoding !== null),
    plant: simple(SYMBOLIC, WIN),
  },
  {
    id: '31-025',
    says: 'The embedded font program for a symbolic TrueType font contains no cmap.',
    faults: (file) => symbol(file, ({ program }) => (program?.maps.length ?? 0) === 0),
    plant: simple(SYMBOLIC, {}),
  },
  {
    id: '31-026',
    says: 'The program of a symbolic TrueType font contains more than one cmap, but none is a (3,0) Microsoft Symbol cmap.',
    faults: (file) => symbol(file, (font) => (font.program?.maps.length ?? 0) > 1 && !has(font, 3, 0)),
    plant: (objects) => {
      // A program that is nothing but its tables: two character maps, neither of them for symbols.
      const cmap = Buffer.from([0, 0, 0, 2, 0, 3, 0, 1, 0, 0, 0, 20, 0, 1, 0, 0, 0, 0, 0, 20]);
      const tables = [
        ['cmap', cmap],
        ['head', Buffer.alloc(54)],
        ['hhea', Buffer.alloc(36)],
        ['hmtx', Buffer.alloc(4)],
        ['maxp', Buffer.alloc(6)],
      ] as const;
      const index = Buffer.alloc(12 + 16 * tables.length);
      index.writeUInt32BE(0x00010000, 0);
      index.writeUInt16BE(tables.length, 4);
      let at = index.length;
      tables.forEach(([name, bytes], i) => {
        index.write(name, 12 + 16 * i, 'latin1');
        index.writeUInt32BE(at, 12 + 16 * i + 8);
        index.writeUInt32BE(bytes.length, 12 + 16 * i + 12);
        at += bytes.length;
      });
      const program = objects.add({}, Buffer.concat([index, ...tables.map(([, bytes]) => bytes)]));
      const descriptor = objects.add({ '/Type': '/FontDescriptor', '/Flags': SYMBOLIC, '/FontFile2': program });
      addFont(objects, { '/Subtype': '/TrueType', '/BaseFont': '/Planted', '/FontDescriptor': descriptor });
    },
  },
  {
    id: '31-027',
    says: 'A font dictionary does not contain the ToUnicode entry, and the font is none that can do without.',
    faults: (file) =>
      fontsOf(file).flatMap((dict) =>
        found(isComposite(dict) && !file.objects.dict(dict['/ToUnicode']), textOf(dict['/BaseFont'])),
      ),
    plant: (objects) => {
      delete first(objects, isComposite)['/ToUnicode'];
    },
  },
  {
    id: '31-028',
    says: 'One or more Unicode values specified in the ToUnicode CMap are zero (0).',
    faults: (file) => eachFont(file, ({ unicode }) => [...unicode.values()].some((units) => units.includes(0))),
    plant: changeUnicode('0000'),
  },
  {
    id: '31-029',
    says: 'One or more Unicode values specified in the ToUnicode CMap are equal to either U+FEFF or U+FFFE.',
    faults: (file) =>
      eachFont(file, ({ unicode }) =>
        [...unicode.values()].some((units) => units.includes(0xfeff) || units.includes(0xfffe)),
      ),
    plant: changeUnicode('feff'),
  },
  {
    id: '31-030',
    says: 'One or more characters used in text showing operators reference the .notdef glyph.',
    faults: (file) => eachCode(file, (_font, code) => code === 0),
    plant: (objects) => {
      const contents = objects.pages()[0]?.['/Contents'];
      const text = objects
        .bytes(contents)
        .toString('latin1')
        .replace(/<[\da-f]{4}/i, '<0000');
      objects.setBytes(contents, Buffer.from(text, 'latin1'));
    },
  },
];

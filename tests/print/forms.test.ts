/** Every form of a booklet on paper, as outside programs find it: qpdf, poppler, Ghostscript, pdf.js and a reader of codes. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Booklet, Part, PartnerPart } from '../../src/model/booklet.js';
import { clientId, exerciseId, sessionId } from '../../src/model/identity.js';
import { plainLine } from '../../src/model/prose.js';
import { drawForms, type PaperFile } from '../../src/print/draw-forms.js';
import { drawTestSheet } from '../../src/print/draw-test-sheet.js';
import { foldMarks } from '../../src/print/fold-marks.js';
import { imposeFolded } from '../../src/print/impose.js';
import { A4, LETTER } from '../../src/print/sheet.js';
import { contrastOf } from '../browser/contrast.js';
import { fixtureBooklet } from '../fixtures/booklet.js';

const CLIENT = clientId('rowan-ashby');
const ADDRESS = {
  whole:
    'https://slate-yard.example/7f3a9c2e51d84b06a1c9e0f2d3b4a596/#open=q1Zb8x0Kf3vH7mJ2nP4rS6tU9wY1aC5eG0iLkNoQsDw',
  open: 'https://slate-yard.example/7f3a9c2e51d84b06a1c9e0f2d3b4a596/',
};
const folder = mkdtempSync(join(tmpdir(), 'forms-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const run = (program: string, ...args: readonly string[]): string =>
  execFileSync(program, args, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });

const partner: PartnerPart = {
  kind: 'partner',
  title: 'For Imre: count, watch, speak',
  paragraphs: [plainLine('You count, you watch, you speak. No hands-on help.')],
  emergencyTitle: 'Stop at once and call for help',
  emergency: [plainLine('A sudden, severe headache.')],
  call: 'Call 999.',
  stopTitle: 'Stop if',
  sessions: [{ title: 'Session A', exercises: [exerciseId('goblet-squat')] }],
  watched: Array.from({ length: 9 }, (_, i) => ({
    exercise: exerciseId(`movement-${i}`),
    name: `Movement number ${i}`,
    count: ['Count the good reps aloud.'],
    watch: [plainLine('From the side: heels down, back keeps its shape.')],
    faults: [{ see: plainLine('Heels lift'), say: plainLine('Keep your heels in wet sand.') }],
    stop: [plainLine('A sharp pain in the knee.')],
  })),
};

const withPartner: Booklet = { ...fixtureBooklet, parts: [...fixtureBooklet.parts, partner] };

/** Enough exercise pages to fill two folded parts. */
const long: Booklet = {
  ...withPartner,
  parts: withPartner.parts.flatMap((part): readonly Part[] =>
    part.kind === 'exercise'
      ? Array.from(
          { length: 4 },
          (_, i): Part => ({
            ...part,
            id: exerciseId(`${part.id}-${i}`),
            title: `${part.title} ${i}`,
          }),
        )
      : [part],
  ),
};

const BOOKLETS = {
  a4: withPartner,
  letter: { ...withPartner, paper: 'letter' },
  large: { ...withPartner, largePrint: true },
  'large-letter': { ...withPartner, largePrint: true, paper: 'letter' },
  long,
} as const satisfies Record<string, Booklet>;

type Name = keyof typeof BOOKLETS;
const drawn = new Map<Name, readonly PaperFile[]>();
const fileOf = (name: Name, file: string): string => join(folder, `${name}-${file}`);

beforeAll(async () => {
  for (const name of Object.keys(BOOKLETS) as Name[]) {
    const { value } = await drawForms(BOOKLETS[name], CLIENT, ADDRESS);
    drawn.set(name, value);
    for (const { name: file, bytes } of value) writeFileSync(fileOf(name, file), bytes);
  }
}, 120_000);

const infos = new Map<string, string>();
/** Asked once of each file. */
function infoOf(file: string): string {
  const info = infos.get(file) ?? run('pdfinfo', file);
  infos.set(file, info);
  return info;
}

const pagesIn = (file: string): number => Number(/^Pages: +(\d+)$/m.exec(infoOf(file))?.[1]);
/** In points, to a tenth. */
const sizeIn = (file: string): readonly number[] =>
  (/^Page size: +([\d.]+) x ([\d.]+)/m.exec(infoOf(file)) ?? [])
    .slice(1)
    .map((side) => Math.round(Number(side) * 10) / 10);

const FILES: Readonly<Record<Name, Readonly<Record<string, readonly number[]>>>> = {
  a4: {
    'booklet-a5.pdf': [419.5, 595.3],
    'booklet-a4.pdf': [595.3, 841.9],
    'fold-a4.pdf': [841.9, 595.3],
    'fold-a4-fronts.pdf': [841.9, 595.3],
    'fold-a4-backs.pdf': [841.9, 595.3],
    'weeks-a4.pdf': [595.3, 841.9],
    'partner-a4.pdf': [595.3, 841.9],
  },
  letter: {
    'booklet-half-letter.pdf': [396, 612],
    'booklet-letter.pdf': [612, 792],
    'fold-letter.pdf': [792, 612],
    'fold-letter-fronts.pdf': [792, 612],
    'fold-letter-backs.pdf': [792, 612],
    'weeks-letter.pdf': [612, 792],
    'partner-letter.pdf': [612, 792],
  },
  large: { 'booklet-large-a4.pdf': [595.3, 841.9], 'weeks-a4.pdf': [595.3, 841.9], 'partner-a4.pdf': [595.3, 841.9] },
  'large-letter': {
    'booklet-large-letter.pdf': [612, 792],
    'weeks-letter.pdf': [612, 792],
    'partner-letter.pdf': [612, 792],
  },
  long: {
    'booklet-a5.pdf': [419.5, 595.3],
    'booklet-a4.pdf': [595.3, 841.9],
    'fold-a4-part-1.pdf': [841.9, 595.3],
    'fold-a4-part-1-fronts.pdf': [841.9, 595.3],
    'fold-a4-part-1-backs.pdf': [841.9, 595.3],
    'fold-a4-part-2.pdf': [841.9, 595.3],
    'fold-a4-part-2-fronts.pdf': [841.9, 595.3],
    'fold-a4-part-2-backs.pdf': [841.9, 595.3],
    'weeks-a4.pdf': [595.3, 841.9],
    'partner-a4.pdf': [595.3, 841.9],
  },
};

describe.each(Object.keys(BOOKLETS) as Name[])('%s', (name) => {
  test('has its forms, each of its size', () => {
    const files = (drawn.get(name) ?? []).map(({ name: file }) => [file, sizeIn(fileOf(name, file))]);
    expect(Object.fromEntries(files)).toEqual(FILES[name]);
  });

  test('qpdf finds no fault, and every face is embedded and can be copied out', () => {
    for (const file of Object.keys(FILES[name])) {
      expect(run('qpdf', '--check', fileOf(name, file)), file).toContain('No syntax or stream encoding errors found');
      const fonts = run('pdffonts', fileOf(name, file)).trim().split('\n').slice(2);
      expect(fonts.length, file).toBeGreaterThan(0);
      expect(
        fonts.filter((font) => !/Identity-H +yes yes yes/.test(font)),
        file,
      ).toEqual([]);
    }
  });

  test('no colour is printed', () => {
    const files = Object.keys(FILES[name]).map((file) => fileOf(name, file));
    // Rendered in one go, since the program takes longer to begin than to look at a page.
    const inks = run('gs', '-q', '-o', '-', '-sDEVICE=inkcov', '-r10', ...files)
      .trim()
      .split('\n');
    expect(inks.length).toBe(files.reduce((sum, file) => sum + pagesIn(file), 0));
    expect(inks.filter((ink) => !/^ *0\.0+ +0\.0+ +0\.0+ +\d/.test(ink))).toEqual([]);
  }, 60_000);

  test('no page of it is empty', () => {
    for (const file of Object.keys(FILES[name])) {
      const pages = run('pdftotext', fileOf(name, file), '-').split('\f').slice(0, -1);
      expect(pages.length, file).toBe(pagesIn(fileOf(name, file)));
      expect(
        pages.map((text) => text.trim()).filter((text) => text === ''),
        file,
      ).toEqual([]);
    }
  });

  test('what is read aloud is tagged; sheets to fold are not, and say so by their names', () => {
    for (const file of Object.keys(FILES[name])) {
      const tagged = /^Tagged: +yes$/m.test(infoOf(fileOf(name, file)));
      expect(tagged, file).toBe(!file.startsWith('fold-'));
    }
  });

  test('its information names whose it is and the studio, nothing else; the partner’s card not even that', () => {
    for (const file of Object.keys(FILES[name])) {
      const info = infoOf(fileOf(name, file));
      const said = (key: string): string => new RegExp(`^${key}: +(.*)$`, 'm').exec(info)?.[1] ?? '';
      expect([said('Author'), said('Creator'), said('Producer'), said('Subject'), said('Keywords')]).toEqual([
        fixtureBooklet.author,
        'Chalkleaf',
        'Chalkleaf',
        '',
        '',
      ]);
      expect(said('CreationDate')).toContain('00:00:00');
      // The keys of ISO 32000-1, table 317, as poppler lists them, and whether there are others.
      const keys = [...info.matchAll(/^(Title|Author|Subject|Keywords|Creator|Producer|\w+Date|Trapped):/gm)];
      expect(keys.map(([, key]) => key).sort(), file).toEqual([
        'Author',
        'CreationDate',
        'Creator',
        'Producer',
        'Title',
      ]);
      expect(said('Custom Metadata'), file).toBe('no');
      if (file.startsWith('partner')) expect(said('Title')).toBe(partner.title);
      else expect(said('Title')).toContain(fixtureBooklet.title);
    }
  });
});

test('the same bytes each time', async () => {
  for (const name of ['a4', 'large'] as const) {
    const { value } = await drawForms(BOOKLETS[name], CLIENT, ADDRESS);
    const before = drawn.get(name) ?? [];
    expect(value.map(({ bytes }, i) => Buffer.from(bytes).equals(Buffer.from(before[i]?.bytes ?? [])))).toEqual(
      before.map(() => true),
    );
  }
});

interface Word {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly word: string;
}

const words = new Map<string, readonly (readonly Word[])[]>();

/** Where poppler finds words, in points, page by page; asked once of each file. */
function wordsIn(file: string): readonly (readonly Word[])[] {
  const known = words.get(file);
  if (known !== undefined) return known;
  const pages = run('pdftotext', '-bbox', file, '-').split('<page ').slice(1);
  const found = pages.map((page) =>
    [...page.matchAll(/<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">(.*?)<\/word>/g)].map(
      ([, left, top, right, bottom, word]): Word => ({
        left: Number(left),
        top: Number(top),
        right: Number(right),
        bottom: Number(bottom),
        word: word ?? '',
      }),
    ),
  );
  words.set(file, found);
  return found;
}

const reading = (a: Word, b: Word): number => Math.round(a.top) - Math.round(b.top) || a.left - b.left;

/** Words of a page, or of half of one, line by line. */
function wordsOf(file: string, page: number, half?: 'left' | 'right'): string {
  const middle = (sizeIn(file)[0] ?? 0) / 2;
  const found = (wordsIn(file)[page - 1] ?? []).filter(
    ({ left }) => half === undefined || (half === 'left') === left < middle,
  );
  return [...found]
    .sort(reading)
    .map(({ word }) => word)
    .join(' ');
}

describe.each([
  ['a4', 'fold-a4', 'booklet-a5.pdf'],
  ['letter', 'fold-letter', 'booklet-half-letter.pdf'],
] as const)('sheets to fold, %s', (name, stem, single) => {
  test('each half shows its page, on fronts and backs as in the whole', () => {
    const pages = pagesIn(fileOf(name, single));
    const sheets = imposeFolded(pages, 'left');
    expect(pagesIn(fileOf(name, `${stem}.pdf`))).toBe(sheets.length * 2);
    sheets.forEach(({ front, back }, i) => {
      for (const [side, [left, right], apart] of [
        [2 * i + 1, front, 'fronts'],
        [2 * i + 2, back, 'backs'],
      ] as const) {
        const whole = fileOf(name, `${stem}.pdf`);
        expect(wordsOf(whole, side, 'left')).toBe(wordsOf(fileOf(name, single), left));
        expect(wordsOf(whole, side, 'right')).toBe(wordsOf(fileOf(name, single), right));
        expect(wordsOf(fileOf(name, `${stem}-${apart}.pdf`), i + 1)).toBe(wordsOf(whole, side));
      }
    });
  }, 60_000);
});

/** The operators of a file, with nothing packed. */
const operatorsOf = (file: string): string =>
  execFileSync('qpdf', ['--qdf', '--object-streams=disable', file, '-'], { encoding: 'latin1', maxBuffer: 1 << 28 });
const timesIn = (text: string, part: string): number => text.split(part).length - 1;

describe.each([
  ['a4', 'fold-a4', A4],
  ['letter', 'fold-letter', LETTER],
] as const)('on %s', (name, stem, { width, height }) => {
  // The sheet lies across.
  const [staples, holes] = (['staples', 'holes'] as const).map((marks) => foldMarks(marks, height, width));

  test('the outermost front has the marks of the staples, the innermost back those of the needle, and no other', () => {
    const counts = ['', '-fronts', '-backs'].map((part) => {
      const operators = operatorsOf(fileOf(name, `${stem}${part}.pdf`));
      return [timesIn(operators, staples ?? '-'), timesIn(operators, holes ?? '-')];
    });
    expect(counts).toEqual([
      [1, 1],
      [1, 0],
      [0, 1],
    ]);
    const sheets = pagesIn(fileOf(name, `${stem}.pdf`)) / 2;
    const onPage = (page: number): string => {
      const one = join(folder, 'one.pdf');
      run('qpdf', fileOf(name, `${stem}.pdf`), '--pages', '.', `${page}`, '--', one);
      return operatorsOf(one);
    };
    expect(timesIn(onPage(1), staples ?? '-')).toBe(1);
    expect(timesIn(onPage(2 * sheets), holes ?? '-')).toBe(1);
  });

  test('a printer is asked to scale nothing and to turn the sheet on its short edge', async () => {
    for (const part of ['', '-fronts', '-backs']) {
      const data = new Uint8Array(readFileSync(fileOf(name, `${stem}${part}.pdf`)));
      const pdf = await getDocument({ data, verbosity: 0 }).promise;
      expect(await pdf.getViewerPreferences()).toMatchObject({ PrintScaling: 'None', Duplex: 'DuplexFlipShortEdge' });
    }
  });
});

test('two parts hold every page once, each bound by itself', () => {
  const single = fileOf('long', 'booklet-a5.pdf');
  const parts = [fileOf('long', 'fold-a4-part-1.pdf'), fileOf('long', 'fold-a4-part-2.pdf')];
  expect(pagesIn(single)).toBeGreaterThan(32);
  expect(parts.reduce((sum, file) => sum + pagesIn(file) * 2, 0)).toBe(pagesIn(single));
  const [first = '', second = ''] = parts;
  expect(wordsOf(first, 1, 'right')).toBe(wordsOf(single, 1));
  expect(wordsOf(first, 1, 'left')).toBe(wordsOf(single, pagesIn(first) * 2));
  expect(wordsOf(second, 1, 'right')).toBe(wordsOf(single, pagesIn(first) * 2 + 1));
  expect(wordsOf(second, 1, 'left')).toBe(wordsOf(single, pagesIn(single)));
});

/** Grey values of a rendered page, row by row. */
function grey(file: string, page: number, resolution: number) {
  const out = join(folder, 'page');
  run('pdftoppm', '-gray', '-r', `${resolution}`, '-f', `${page}`, '-l', `${page}`, '-singlefile', file, out);
  const bytes = readFileSync(`${out}.pgm`);
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 40).toString('latin1'));
  if (head === null) throw new Error('no grey picture');
  const [all, width, height] = head;
  return { width: Number(width), height: Number(height), pixels: bytes.subarray(all.length) };
}

// A copier turns what is darker than some grey black and the rest white. At 200 dots to the inch, as copiers scan, letters
// must keep their ink where it is set light, and their inner white where it is set dark. The two greys are ours.
test.each([
  ['a4', 'booklet-a5.pdf', 6],
  ['a4', 'fold-a4.pdf', 6],
  ['a4', 'weeks-a4.pdf', 1],
  ['a4', 'partner-a4.pdf', 1],
  ['letter', 'booklet-half-letter.pdf', 6],
  ['large', 'booklet-large-a4.pdf', 6],
] as const)('%s %s, page %i, stands out from its paper, and stays legible on a bad copier', (name, file, page) => {
  const resolution = 200;
  const { width, pixels } = grey(fileOf(name, file), page, resolution);
  const scale = resolution / 72;
  const letters = (wordsIn(fileOf(name, file))[page - 1] ?? []).filter(({ word }) => /[\p{L}\d]/u.test(word));
  expect(letters.length).toBeGreaterThan(30);
  const inked = (threshold: number) =>
    letters.map(({ left, top, right, bottom, word }) => {
      let black = 0;
      let all = 0;
      for (let y = Math.floor(top * scale); y < bottom * scale; y += 1) {
        for (let x = Math.floor(left * scale); x < right * scale; x += 1) {
          all += 1;
          if ((pixels[y * width + x] ?? 255) < threshold) black += 1;
        }
      }
      return { word, share: black / all };
    });
  // On paper as it is printed: what WCAG 2.2 asks of a screen at its highest level (1.4.6), by its formula.
  const asColour = (value: number): string => `#${value.toString(16).padStart(2, '0').repeat(3)}`;
  const faint = letters.flatMap(({ left, top, right, bottom, word }) => {
    let [darkest, lightest] = [255, 0];
    for (let y = Math.floor(top * scale); y < bottom * scale; y += 1) {
      for (let x = Math.floor(left * scale); x < right * scale; x += 1) {
        const value = pixels[y * width + x] ?? 255;
        darkest = Math.min(darkest, value);
        lightest = Math.max(lightest, value);
      }
    }
    const contrast = contrastOf(asColour(darkest), asColour(lightest));
    return contrast >= 7 ? [] : [`${word}: ${contrast}`];
  });
  expect(faint).toEqual([]);
  expect(inked(96).filter(({ share }) => share < 0.05)).toEqual([]);
  expect(inked(208).filter(({ share }) => share > 0.6)).toEqual([]);
});

/** Sizes of letters as drawn, in points. */
async function sizesIn(file: string): Promise<readonly number[]> {
  const pdf = await getDocument({ data: new Uint8Array(readFileSync(file)), verbosity: 0 }).promise;
  const sizes = new Set<number>();
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const { items } = await (await pdf.getPage(number)).getTextContent();
    for (const item of items) {
      if ('height' in item && item.str.trim() !== '') sizes.add(Math.round(item.height * 10) / 10);
    }
  }
  return [...sizes].sort((a, b) => a - b);
}

test('large print is 18 points and more, its labels 16; the rest as the booklet has it', async () => {
  expect(await sizesIn(fileOf('large', 'booklet-large-a4.pdf'))).toEqual([16, 18, 22, 24, 36]);
  expect(await sizesIn(fileOf('large-letter', 'booklet-large-letter.pdf'))).toEqual([16, 18, 22, 24, 36]);
  expect(await sizesIn(fileOf('a4', 'booklet-a5.pdf'))).toEqual([9.5, 10.5, 12, 13, 21]);
  // A5 to A4 by the root of two, to the millimetre that ISO 216 rounds.
  const [smallest = 0] = await sizesIn(fileOf('a4', 'booklet-a4.pdf'));
  expect(smallest / 9.5).toBeCloseTo(Math.SQRT2, 1);
});

const codesIn = (file: string, page: number): readonly string[] => {
  const picture = join(folder, 'code');
  run('pdftoppm', '-gray', '-r', '150', '-f', `${page}`, '-l', `${page}`, '-singlefile', '-png', file, picture);
  return run('zbarimg', '-q', '--raw', `${picture}.png`).trim().split('\n');
};

describe('the code', () => {
  test.each([
    ['a4', 'booklet-a5.pdf'],
    ['a4', 'booklet-a4.pdf'],
    ['a4', 'fold-a4.pdf'],
    ['letter', 'booklet-half-letter.pdf'],
    ['large', 'booklet-large-a4.pdf'],
  ] as const)('is read from the cover of %s %s, with the key', (name, file) => {
    expect(codesIn(fileOf(name, file), 1)).toEqual([ADDRESS.whole]);
  });

  test.each([
    ['a4', 'weeks-a4.pdf', 1],
    ['letter', 'weeks-letter.pdf', 3],
  ] as const)('is read from a week’s sheet of %s %s without the key', (name, file, page) => {
    expect(codesIn(fileOf(name, file), page)).toEqual([ADDRESS.open]);
  });

  test('without an address there is none', async () => {
    const { value } = await drawForms(fixtureBooklet, CLIENT);
    const file = join(folder, 'no-code.pdf');
    writeFileSync(file, value[0]?.bytes ?? new Uint8Array());
    expect(() => codesIn(file, 1)).toThrow();
  });
});

test('a week has one sheet, in large print one sheet on both sides at most, with its sessions and their loads', () => {
  const weeks = fixtureBooklet.parts.find((part) => part.kind === 'calendar')?.weeks.length ?? 0;
  expect(pagesIn(fileOf('a4', 'weeks-a4.pdf'))).toBe(weeks);
  expect(pagesIn(fileOf('large', 'weeks-a4.pdf'))).toBeLessThanOrEqual(2 * weeks);
  const session = fixtureBooklet.parts.find((part) => part.kind === 'session' && part.id === sessionId('a'));
  if (session?.kind !== 'session') throw new Error('no session');
  const text = wordsOf(fileOf('a4', 'weeks-a4.pdf'), 1);
  for (const { name, cells } of session.rows) {
    expect(text).toContain(name);
    const [load] = cells[0]?.sets.flatMap((set) => (set.load === undefined ? [] : [set.load.figure])) ?? [];
    if (load !== undefined) expect(text).toContain(`${load} kg`);
  }
});

test('the partner’s card is one sheet', () => {
  expect(pagesIn(fileOf('a4', 'partner-a4.pdf'))).toBeLessThanOrEqual(2);
});

test.each(['a4', 'letter'] as const)('the test sheet on %s has two sides', async (paper) => {
  const file = join(folder, `test-${paper}.pdf`);
  writeFileSync(file, await drawTestSheet(paper, 'Slate Yard'));
  expect(run('qpdf', '--check', file)).toContain('No syntax or stream encoding errors found');
  expect(pagesIn(file)).toBe(2);
  expect(sizeIn(file)).toEqual(paper === 'a4' ? [841.9, 595.3] : [792, 612]);
  // Ten dots to the millimetre: one rule is 1000 of them long.
  const { width, height, pixels } = grey(file, 1, 254);
  const runs = Array.from({ length: height }, (_, y) => {
    let [run, longest] = [0, 0];
    for (const value of pixels.subarray(y * width, (y + 1) * width)) {
      run = value < 200 ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
    return longest;
  });
  expect(runs.filter((run) => Math.abs(run - 1000) <= 4).length).toBeGreaterThan(0);
  const again = await drawTestSheet(paper, 'Slate Yard');
  expect(Buffer.from(again).equals(readFileSync(file))).toBe(true);
});

test('another code is another file, by its identifier too', async () => {
  const idOf = (bytes: Uint8Array | undefined): string =>
    /\/ID \[<([0-9a-f]+)>/.exec(Buffer.from(bytes ?? []).toString('latin1'))?.[1] ?? '';
  const cover = { ...fixtureBooklet, parts: fixtureBooklet.parts.filter((part) => part.kind === 'cover') };
  const [one, other] = await Promise.all(
    [ADDRESS.whole, ADDRESS.whole.replace('q1Zb', 'q1Zc')].map(async (whole) => {
      const { value } = await drawForms(cover, CLIENT, { ...ADDRESS, whole });
      return idOf(value[0]?.bytes);
    }),
  );
  expect(one).toMatch(/^[0-9a-f]{32}$/);
  expect(other).toMatch(/^[0-9a-f]{32}$/);
  expect(one).not.toBe(other);
});

test('what was withdrawn is left as its cover alone', async () => {
  const cover = fixtureBooklet.parts.filter((part) => part.kind === 'cover');
  const { value } = await drawForms({ ...fixtureBooklet, parts: cover }, CLIENT, ADDRESS);
  expect(value.map(({ name }) => name)).toEqual(['booklet-a5.pdf']);
});

test('lines from right to left are not printed, and say so', async () => {
  const { value, problems } = await drawForms({ ...fixtureBooklet, direction: 'rtl' }, CLIENT);
  expect(value).toEqual([]);
  expect(problems.map(({ code }) => code)).toEqual(['not-printable']);
});

/** The PDF read back by pdf.js and compared with the booklet it was drawn from: every set, load and cue. */
import { beforeAll, describe, expect, test } from 'vitest';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import type { Booklet, Cell, SessionPart } from '../../src/model/booklet.js';
import type { Client } from '../../src/model/client.js';
import { clientId } from '../../src/model/identity.js';
import type { Plan } from '../../src/model/plan.js';
import { type Line, plainText } from '../../src/model/prose.js';
import { drawBooklet } from '../../src/print/draw-booklet.js';
import { sayPlan } from '../../src/words/say-plan.js';
import { speechOf } from '../../src/words/speech.js';
import { DEEP } from '../deep.js';
import { fixtureBooklet, longNamesBooklet } from '../fixtures/booklet.js';
import { everyShapeLibrary } from '../fixtures/every-shape-library.js';
import { everyShapePlan } from '../fixtures/every-shape-plan.js';
import { client as everyShapeClient } from '../fixtures/library.js';
import { planDemo } from '../studio/demo-plans.js';
import { partsOf } from './parts-of.js';
import { type ReadPage, type ReadPdf, type ReadTag, readPdf, tagsOf } from './read-pdf.js';

const CLIENT = clientId('rowan-ashby');

async function drawn(booklet: Booklet): Promise<ReadPdf> {
  const { value, problems } = await drawBooklet(booklet, CLIENT);
  // Whether it folds is a question of its own.
  expect(problems.filter(({ code }) => code !== 'too-many-pages')).toEqual([]);
  if (value === null) throw new Error('nothing was drawn');
  return readPdf(value);
}

/** Apart from where spaces and line ends fall: columns break words that pdf.js joins again with a space. */
const bare = (text: string): string => text.normalize('NFC').replace(/\s+/g, '');
const bareLine = (line: Line): string => bare(plainText(line));
const rolesIn = (tags: readonly ReadTag[]): readonly string[] =>
  tags.flatMap((tag) => [tag.role, ...rolesIn(tag.children)]);

/** Rows of a session's table, over the pages it stands on. */
function rowsOf(pdf: ReadPdf, session: SessionPart): readonly ReadTag[] {
  const first = pdf.pages.findIndex((page) =>
    tagsOf(page.tags, 'H2').some((one) => bare(one.text) === bare(session.title)),
  );
  expect(first).toBeGreaterThanOrEqual(0);
  const after = pdf.pages.findIndex((page, i) => i > first && tagsOf(page.tags, 'H2').length > 0);
  const rows = pdf.pages.slice(first, after).flatMap((page) => tagsOf(page.tags, 'TR'));
  // pdf.js gives a table that runs over pages whole on each of them, with the words of that page alone.
  return rows.filter((tr) => tr.text !== '');
}

/** What a cell must show: the week's own version, its load and amount, and what to do otherwise. */
const shown = (cell: Cell): string => bare([cell.version, ...cell.stack].join(''));

const demo = await planDemo();
const saidBooklet = (client: Client, plan: Plan): Booklet =>
  composeBooklet({ library: demo.library, client, plan: sayPlan(plan, demo.library.studio.language) });
/** All in `npm run verify:deep`; the plain run reads the large, the foreign one, one of pounds, one of bands, and one of four days. */
const READ: ReadonlySet<string> = new Set(['ansel-quill', 'sunniva-lund', 'hester-vane', 'carys-holm', 'torben-slade']);
const demoBooklets = demo.clients.flatMap((client): readonly (readonly [string, Booklet])[] => {
  const plan = demo.plans.get(client.id);
  return plan && (DEEP || READ.has(client.id)) ? [[`the booklet of ${client.name}`, saidBooklet(client, plan)]] : [];
});

test('the demo studio has booklets to read back', () => {
  expect(demoBooklets.length).toBeGreaterThan(1);
});

const everyShape = composeBooklet({ library: everyShapeLibrary, client: everyShapeClient, plan: everyShapePlan(6) });

describe.each([
  ['an ordinary booklet', fixtureBooklet] as const,
  ['a plan of every shape', everyShape] as const,
  ['words that are hard to fit', longNamesBooklet] as const,
  ...demoBooklets,
])('%s', (_, booklet) => {
  let pdf: ReadPdf;
  beforeAll(async () => {
    pdf = await drawn(booklet);
  });
  const all = (role: string): readonly ReadTag[] => pdf.pages.flatMap((page) => tagsOf(page.tags, role));

  test('every week of every row shows its load and amount, and reads aloud its sets', () => {
    for (const session of partsOf(booklet, 'session')) {
      const rows = rowsOf(pdf, session).filter((tr) =>
        tr.children.some((cell) => cell.role === 'TD' && cell.alt !== ''),
      );
      expect(rows.length).toBe(session.rows.length);
      session.rows.forEach((row, i) => {
        const cells = rows[i]?.children ?? [];
        expect(cells.map((cell) => cell.role)).toEqual(['TH', ...session.weeks.map(() => 'TD')]);
        expect(bare(cells[0]?.text ?? '')).toContain(bare(row.name));
        session.weeks.forEach(({ week }, w) => {
          const cell = row.cells.find((one) => one.week === week);
          const read = cells[w + 1];
          if (!cell) {
            expect(read).toMatchObject({ text: '', alt: '' });
            return;
          }
          expect(bare(read?.text ?? '')).toContain(shown(cell));
          expect(read?.alt).toContain(cell.spoken);
        });
      });
    }
  });

  test('every condition is said in full: what must come first, and what to do otherwise', () => {
    const said = bare(
      all('TD')
        .map((td) => td.text)
        .join(' '),
    );
    const cells = partsOf(booklet, 'session').flatMap((session) => session.rows.flatMap((row) => row.cells));
    const conditions = cells.flatMap((cell) => [
      ...(cell.gate ? [cell.gate.needs, cell.gate.otherwise] : []),
      ...(cell.trial ? [cell.trial] : []),
      ...(cell.choose
        ? [
            cell.choose.intro,
            cell.choose.note ?? '',
            // Lists of several weeks are told as one, in which what was felt may be parted more finely.
            ...cell.choose.rows.flatMap(({ felt, left, use }) => (left === undefined ? [felt, use] : [use])),
          ]
        : []),
      ...(cell.test ? [cell.test.says, ...cell.test.notes] : []),
      cell.effort,
      cell.tempo,
      ...cell.how,
    ]);
    expect(conditions.length).toBeGreaterThan(10);
    expect(conditions.filter((text) => !said.includes(bare(text)))).toEqual([]);
  });

  test('a session says what to know of it, its short version, and each exercise of its warm-up with its dose and page', () => {
    const said = bare(pdf.pages.flatMap((page) => page.tags.map((tag) => tag.text)).join(' '));
    const items = new Set(all('LBody').map((tag) => bare(tag.text)));
    for (const session of partsOf(booklet, 'session')) {
      for (const { text } of [...session.notes, ...session.short]) expect(said).toContain(bare(text));
      for (const { name, text } of [...session.warmUp, ...session.coolDown]) {
        if (name === '') expect(said).toContain(bare(text));
        else
          expect(
            [...items].filter((item) => item.includes(bare(text)) && item.startsWith(bare(name))),
            `${name}: ${text}`,
          ).not.toEqual([]);
      }
    }
    const links = pdf.pages.flatMap((page) => page.links);
    const drills = partsOf(booklet, 'session').flatMap(({ warmUp, coolDown }) =>
      [...warmUp, ...coolDown].filter(({ exercise }) => exercise !== undefined),
    );
    expect(links.length).toBeGreaterThanOrEqual(drills.length);
  });

  test('the calendar says what holds of all the weeks, and names a week without sessions', () => {
    const said = bare(pdf.pages.flatMap((page) => page.tags.map((tag) => tag.text)).join(' '));
    for (const { notes, weeks } of partsOf(booklet, 'calendar')) {
      for (const line of notes) expect(said).toContain(bareLine(line));
      for (const { empty } of weeks) expect(said).toContain(bare(empty));
    }
  });

  test('a combination names its parts, each with its page', () => {
    const items = all('LBody').map((tag) => bare(tag.text));
    const parts = partsOf(booklet, 'exercise').flatMap(({ sections }) =>
      sections
        .filter(({ name }) => name === 'parts')
        .flatMap(({ lines }) => lines.filter(({ lead }) => lead.length > 0)),
    );
    for (const { lead } of parts)
      expect(
        items.some((item) => new RegExp(`^${bareLine(lead)}Page\\d+$`).test(item)),
        plainText(lead),
      ).toBe(true);
  });

  test('every cue, fault, breath, set-up and stop sign is an item or a paragraph of its own', () => {
    const said = new Set([...all('LBody'), ...all('P')].map((tag) => bare(tag.text)));
    const lines = partsOf(booklet, 'exercise').flatMap((part) => [
      ...part.stop,
      ...part.sections
        .filter(({ name }) => ['cues', 'faults', 'breath', 'set-up', 'partner'].includes(name))
        .flatMap((section) => section.lines.map(({ text }) => text)),
    ]);
    expect(lines.length).toBeGreaterThan(30);
    expect(lines.map(bareLine).filter((text) => text !== '' && !said.has(text))).toEqual([]);
  });

  test('why figures are what they are is told of each exercise, session and weeks before each reason', () => {
    const said = new Set(all('P').map((tag) => bare(tag.text)));
    const told = partsOf(booklet, 'exercise').flatMap(({ why = [] }) => {
      const text = bare(why.map((one) => `${one.lead} ${one.text}`).join(' '));
      return text === '' ? [] : [text];
    });
    expect(told.filter((text) => !said.has(text))).toEqual([]);
  });

  test('the six weeks of each row head its columns once, with their dates', () => {
    for (const session of partsOf(booklet, 'session')) {
      const heads = rowsOf(pdf, session).filter((tr) => tr.children.every((cell) => cell.role === 'TH'));
      expect(heads.length).toBe(1);
      const texts = heads[0]?.children.slice(1).map((th) => bare(th.text)) ?? [];
      expect(texts).toEqual(
        session.weeks.map((head) =>
          bare(`${booklet.labels.week} ${head.week} ${head.dateText} ${head.easy ? booklet.labels['easy-week'] : ''}`),
        ),
      );
    }
  });

  test('emergency signs and the number to call are read', () => {
    const said = pdf.pages.flatMap((page) => page.tags.map((tag) => bare(tag.text))).join('');
    for (const part of partsOf(booklet, 'safety')) {
      const texts = [
        ...part.emergency.map(plainText),
        part.call,
        part.emergencyTitle,
        ...part.pain.map(({ text }) => text),
      ];
      expect(texts.filter((text) => !said.includes(bare(text)))).toEqual([]);
    }
  });

  test('no text stands outside the tags, and furniture is page numbers, running titles and repeated heads', () => {
    expect(pdf.pages.map((page) => page.stray)).toEqual(pdf.pages.map(() => ''));
    const unnumbered = pdf.pages.filter((page) => page.number > 1 && !page.furniture.includes(String(page.number)));
    expect(unnumbered).toEqual([]);
  });

  test('headings step down one at a time from one first heading', () => {
    const headings = pdf.pages.flatMap((page) => rolesIn(page.tags).filter((role) => /^H\d$/.test(role)));
    expect(headings.filter((role) => role === 'H1')).toEqual(['H1']);
    expect(headings[0]).toBe('H1');
    headings.forEach((role, i) => {
      const before = Number(headings[i - 1]?.slice(1) ?? role.slice(1));
      expect(Number(role.slice(1)) - before).toBeLessThanOrEqual(1);
    });
  });

  test('tables are regular: every row has a cell for every column', () => {
    for (const table of all('Table')) {
      const rows = tagsOf([table], 'TR').filter((tr) => tr.children.length > 1);
      const widths = new Set(rows.map((tr) => tr.children.length));
      expect(widths.size).toBeLessThanOrEqual(1);
    }
  });

  test('links are named and lead to the page they name', () => {
    const links = pdf.pages.flatMap((page) => page.links);
    expect(links.length).toBeGreaterThan(10);
    for (const link of links) {
      expect(link.says).not.toBe('');
      expect(link.says).toContain(String(link.to));
    }
  });

  test('labels, bookmarks, title and language are there', () => {
    expect(pdf.marked).toBe(true);
    expect(pdf.title).toBe(booklet.title);
    expect(pdf.language).toBe(booklet.language);
    expect(pdf.labels).toEqual(pdf.pages.map((page: ReadPage) => String(page.number)));
    const titles = [...partsOf(booklet, 'session'), ...partsOf(booklet, 'exercise')].map((part) => part.title);
    expect(titles.filter((title) => !pdf.bookmarks.map(bare).includes(bare(title)))).toEqual([]);
  });

  test('figures have words', () => {
    const figures = all('Figure');
    expect(figures.map((figure) => figure.alt)).toEqual(
      partsOf(booklet, 'how-to').flatMap((part) =>
        part.key.map(({ mark }) => speechOf(booklet.language).words.paper.marks[mark]),
      ),
    );
  });
});

test('a first set to try stands in its own week’s column, under the week’s work', async () => {
  // With one exercise to a session there is room for it.
  const parts = fixtureBooklet.parts.map((part) =>
    part.kind === 'session'
      ? { ...part, rows: part.rows.filter((row) => row.cells.some((one) => one.trialStack !== undefined)) }
      : part,
  );
  const booklet = { ...fixtureBooklet, parts };
  const pdf = await drawn(booklet);
  const { labels } = booklet;
  const tried = partsOf(booklet, 'session').flatMap((session) =>
    session.rows.flatMap((row) => row.cells.filter(({ trialStack }) => trialStack !== undefined)),
  );
  expect(tried.length).toBeGreaterThan(0);
  const texts = new Set(pdf.pages.flatMap((page) => tagsOf(page.tags, 'TD').map((td) => bare(td.text))));
  const missing = tried
    .map((cell) => bare([cell.version, ...cell.stack, labels['first-set'], ...(cell.trialStack ?? [])].join('')))
    .filter((column) => !texts.has(column));
  expect(missing).toEqual([]);
});

test('what makes a load is said once, beside the load it makes', async () => {
  const light = { figure: '30', unit: 'lb', pieces: 'ring and 2 × 10 lb' };
  const heavy = { figure: '40', unit: 'lb', pieces: 'ring and 2 × 15 lb' };
  const parts = fixtureBooklet.parts.map((part) => {
    if (part.kind !== 'session') return part;
    const rows = part.rows.map((row, i) => ({
      ...row,
      cells: row.cells.map((cell) => ({
        ...cell,
        sets: i === 0 ? cell.sets.map((set, n) => ({ ...set, load: n === 0 ? light : heavy })) : cell.sets,
      })),
    }));
    return { ...part, rows };
  });
  const pdf = await drawn({ ...fixtureBooklet, parts });
  const said = pdf.pages.flatMap((page) => tagsOf(page.tags, 'P').map((tag) => bare(tag.text)));
  const made = said.filter((text) => text.includes('ringand'));
  // Two sessions begin with such a row, and each says it once.
  expect(made).toEqual([0, 1].map(() => bare('30 lb ring and 2 × 10 lb. 40 lb ring and 2 × 15 lb.')));
});

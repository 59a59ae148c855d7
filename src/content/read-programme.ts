/** One programme's file → its sessions, blocks and rows. Whether its exercises exist is left to the cross checks. */
import { type ProgrammeId, programmeId, rowId, sessionId } from '../model/identity.js';
import type { Place } from '../model/place.js';
import type { Block, Expectation, Programme, Row, SessionTemplate } from '../model/programme.js';
import { plainText } from '../model/prose.js';
import type { Block as ProseBlock } from '../prose/blocks.js';
import { type OpenFile, placeOf, placeOfEntry, readKeys } from './open-file.js';
import { curveOf, type ProgrammeFront, programmeSchema, WEEKS } from './programme-schema.js';
import { SETS } from './read-dose.js';
import { ROW_COLUMNS, ROW_COLUMNS_NEEDED, readRow } from './read-row.js';
import { asTyped } from './read-value.js';
import { itemsOf, linesOf } from './sections.js';
import { rowsOf } from './table-rows.js';

export interface ReadProgramme {
  readonly id: ProgrammeId;
  readonly file: OpenFile;
  /** Whether every line of the body could be read, so that what is missing is truly missing. */
  readonly wholeBody: boolean;
  readonly sessions: readonly SessionTemplate[];
  readonly expectations: readonly Expectation[];
  /** Absent where the front matter could not be read. */
  readonly programme: Programme | undefined;
}

interface Part {
  readonly heading: string;
  readonly place: Place;
  readonly blocks: readonly ProseBlock[];
}

export function readProgramme(file: OpenFile, id: string): ReadProgramme {
  const before = file.report.errors();
  const { intro, parts } = splitAt(file.body.blocks, 2);
  const description = linesOf(file, 'the description', intro);
  const sessions: SessionTemplate[] = [];
  const expectations: Expectation[] = [];
  for (const part of parts) {
    if (/^expect$/i.test(part.heading.trim())) expectations.push(...readExpectations(file, part));
    else sessions.push(...readSession(file, part));
  }
  if (parts.every((part) => /^expect$/i.test(part.heading.trim()))) {
    file.report.add({ code: 'nothing-in-it', data: { what: 'programme' } }, file.place);
  }
  const wholeBody = file.report.errors() === before && file.keys !== undefined;
  const front = readKeys(file, programmeSchema);
  if (front) checkCurve(file, front.curve, expectations);
  const programme: Programme | undefined = front && {
    id: programmeId(id),
    name: front.name,
    forWhom: front.for,
    public: front.public,
    curve: curveOf(front),
    sessions,
    rotations: Object.entries(front.rotation ?? {})
      .flatMap(([days, order]) => (order ? [{ days: Number(days), order: order.map(sessionId) }] : []))
      .sort((a, b) => a.days - b.days),
    neverCut: (front['never cut'] ?? []).map(rowId),
    tests: (front.tests ?? []).map(rowId),
    cutFirst: (front['cut first'] ?? []).map(rowId),
    description,
    expectations,
    place: file.place,
  };
  return { id: programmeId(id), file, wholeBody, sessions, expectations, programme };
}

/** The reserve says how many weeks there are; shares of sets, easy weeks and what is expected keep within them. */
function checkCurve(
  file: OpenFile,
  { reserve, sets, easy = [] }: ProgrammeFront['curve'],
  expectations: readonly Expectation[],
): void {
  const weeks = reserve.length;
  if (weeks < WEEKS.least || weeks > WEEKS.most) {
    file.report.add({ code: 'curve-length', data: { weeks, ...WEEKS } }, placeOf(file, 'curve', 'reserve'));
    return;
  }
  if (sets && sets.length !== weeks) {
    const data = { key: 'sets', weeks: sets.length, reserve: weeks };
    file.report.add({ code: 'weeks-differ', data }, placeOf(file, 'curve', 'sets'));
  }
  const beyond = (week: number, place: Place): void => {
    if (week > weeks) file.report.add({ code: 'week-after-block', data: { week, weeks } }, place);
  };
  easy.forEach((week, index) => {
    beyond(week, placeOfEntry(file, ['curve', 'easy'], index));
  });
  for (const { week, place } of expectations) beyond(week, place);
}

/** Blocks under each heading of a level; deeper headings stay among the blocks. */
function splitAt(
  blocks: readonly ProseBlock[],
  level: number,
): { intro: readonly ProseBlock[]; parts: readonly Part[] } {
  const intro: ProseBlock[] = [];
  const parts: (Part & { blocks: ProseBlock[] })[] = [];
  for (const block of blocks) {
    if (block.kind === 'heading' && block.level <= level) {
      parts.push({ heading: plainText(block.words.line), place: block.words.place, blocks: [] });
    } else (parts.at(-1)?.blocks ?? intro).push(block);
  }
  return { intro, parts };
}

/** `A: Squat and press`. Nothing where the heading names no session, but what stands under it is read for its mistakes. */
function readSession(file: OpenFile, part: Part): readonly SessionTemplate[] {
  const match = /^\s*([A-Za-z0-9][A-Za-z0-9-]{0,19})\s*[:.—–-]\s*(\S.*?)\s*$/u.exec(part.heading);
  if (!match) file.report.add({ code: 'session-unnamed', data: { heading: part.heading } }, part.place);
  const { intro, parts } = splitAt(part.blocks, 6);
  const loose = intro.filter((block) => block.kind === 'table');
  const notes = linesOf(
    file,
    part.heading,
    intro.filter((block) => block.kind !== 'table'),
  );
  const blocks = parts.map((block) => readBlock(file, block));
  // Tables straight under the session are a block without a name.
  const first = loose.length > 0 ? [readRows(file, { name: '', kind: 'straight' }, loose, part)] : [];
  if (parts.length === 0 && loose.length === 0) {
    file.report.add({ code: 'nothing-in-it', data: { what: 'session' } }, part.place);
  }
  const [, id = '', name = ''] = match ?? [];
  return match ? [{ id: sessionId(id), name, notes, blocks: [...first, ...blocks], place: part.place }] : [];
}

/** `Main`, `Circuit, 3 rounds`, `Warm-up` or `Cool-down`. */
function readBlock(file: OpenFile, part: Part): Block {
  const heading = asTyped(part.heading).trim();
  const circuit = /\bcircuit\b/i.test(heading) || /\brounds?\b/i.test(heading);
  const figure = /(\d{1,3})\s*rounds?\b/i.exec(heading)?.[1];
  const rounds = Number(figure ?? 0);
  if (circuit && (rounds < SETS.least || rounds > SETS.most)) {
    file.report.add({ code: 'circuit-unreadable', data: { heading: part.heading } }, part.place);
  }
  const block = circuit
    ? { name: part.heading, kind: 'circuit' as const, rounds: Math.max(1, rounds) }
    : { name: part.heading, kind: aroundWork(heading) };
  return readRows(file, block, part.blocks, part);
}

/** The coach's own warm-up or cool-down stands in place of the planner's. */
function aroundWork(heading: string): 'straight' | 'warm-up' | 'cool-down' {
  if (/^warm[- ]?up\b/i.test(heading)) return 'warm-up';
  return /^cool[- ]?down\b/i.test(heading) ? 'cool-down' : 'straight';
}

function readRows(file: OpenFile, block: Omit<Block, 'rows'>, blocks: readonly ProseBlock[], part: Part): Block {
  const rows: Row[] = [];
  let lines = 0;
  for (const found of blocks) {
    if (found.kind !== 'table') {
      file.report.add({ code: 'wrong-content', data: { section: part.heading, wanted: 'table' } }, found.place);
      continue;
    }
    for (const line of rowsOf(file, found, { known: ROW_COLUMNS, needed: ROW_COLUMNS_NEEDED })) {
      lines += 1;
      const row = readRow(file, line, block.rounds);
      if (row) rows.push(row);
    }
  }
  if (lines === 0) file.report.add({ code: 'nothing-in-it', data: { what: 'block' } }, part.place);
  return { ...block, rows };
}

/** `rowan-ashby, week 4, A, goblet-squat: 16 kg × 10`. */
function readExpectations(file: OpenFile, part: Part): readonly Expectation[] {
  return itemsOf(file, { name: 'Expect', place: part.place, blocks: part.blocks }).flatMap((item) => {
    const text = plainText(item.line);
    const match = /^([a-z0-9-]+)\s*,\s*week\s+(\d{1,2})\s*,\s*([A-Za-z0-9-]+)\s*,\s*([a-z0-9-]+)\s*:\s*(\S.*)$/i.exec(
      text,
    );
    const week = Number(match?.[2]);
    if (!match || week < 1 || week > WEEKS.most) {
      file.report.add({ code: 'expect-unreadable', data: { text } }, item.place);
      return [];
    }
    const [, client = '', , session = '', row = '', says = ''] = match;
    const found: Expectation = {
      client,
      week,
      session: sessionId(session),
      row: rowId(row),
      text: says,
      place: item.place,
    };
    return [found];
  });
}

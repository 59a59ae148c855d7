/** A case in the coach's own notation: facts, sessions, and what a careful coach would and would not do. */
import { readFileSync } from 'node:fs';
import type { Client } from '../../src/model/client.js';
import type { Day, Weekday } from '../../src/model/day.js';
import type { Exercise } from '../../src/model/exercise.js';
import type { History } from '../../src/model/history.js';
import { clientId, programmeId, rowId, sessionId } from '../../src/model/identity.js';
import type { Block, Programme, SessionTemplate } from '../../src/model/programme.js';
import type { Library } from '../../src/model/studio.js';
import { aClient, aLibrary, aProgramme, on } from '../engine/make-block.js';
import { aHistory } from '../engine/make-history.js';
import { type Facts, isFact, readFact } from './read-facts.js';
import { fail, slugOf } from './read-library.js';
import { readRow } from './read-row.js';

export interface Claim {
  readonly would: boolean;
  readonly text: string;
  readonly line: number;
}

export interface Case {
  readonly name: string;
  readonly title: string;
  readonly library: Library;
  readonly client: Client;
  readonly today: Day;
  readonly history: History;
  readonly claims: readonly Claim[];
}

const DAYS: Readonly<Record<number, readonly Weekday[]>> = { 1: [1], 2: [1, 4], 3: [1, 3, 5] };

export function readCaseFile(name: string, exercises: readonly Exercise[]): Case {
  const text = readFileSync(new URL(`${name}.case.txt`, import.meta.url), 'utf8');
  return readCase(name, text, exercises);
}

interface OpenBlock {
  readonly kind: Block['kind'];
  readonly rounds?: number;
  readonly rows: Block['rows'][number][];
}

interface OpenSession {
  readonly name: string;
  readonly blocks: OpenBlock[];
}

export function readCase(name: string, text: string, exercises: readonly Exercise[]): Case {
  const lines = text.split('\n').map((line) => line.trim());
  const facts: Facts = { today: on('2026-12-28'), unasked: false, client: {}, programme: {}, done: [] };
  const sessions: OpenSession[] = [];
  const claims: Claim[] = [];
  let would: boolean | undefined;
  let inHead = true;
  lines.forEach((line, index) => {
    const where = `${name}:${index + 1}: ${line}`;
    if (index === 0 && !line.startsWith('# ')) fail(`${where}: no title`);
    if (line === '') inHead = false;
    if (index === 0 || line === '') return;
    if (line === 'a careful coach would') would = true;
    else if (line === 'a careful coach would not') would = false;
    else if (would !== undefined)
      claims.push({ would, text: /^- (.+)$/.exec(line)?.[1] ?? fail(where), line: index + 1 });
    else if (isFact(line)) readFact(line, facts, exercises);
    else if (line.startsWith('session ')) sessions.push({ name: line.slice(8), blocks: [] });
    else if (!inHead) readLine(line, sessions.at(-1) ?? fail(where), exercises, where);
  });
  if (claims.length === 0) fail(`${name}: nothing is claimed`);
  const programme = programmeOf(facts, sessions);
  const client = aClient({
    id: clientId(name),
    programme: programme.id,
    room: { ceilingMillimetres: 2600, floorMillimetres: { long: 3000, wide: 3000 } },
    days: DAYS[sessions.length] ?? fail(`${name}: ${sessions.length} sessions`),
    ...facts.client,
    ...(facts.client.kit ? {} : { kit: defaultKit(exercises) }),
  });
  const { screening: _notAsked, ...unasked } = client;
  return {
    name,
    title: lines[0]?.slice(2) ?? '',
    library: aLibrary(exercises, programme),
    client: facts.unasked ? unasked : client,
    today: facts.today,
    history: aHistory(...(facts.done ?? []).toSorted((a, b) => a.day - b.day)),
    claims,
  };
}

function defaultKit(exercises: readonly Exercise[]): Client['kit'] {
  const facts: Facts = { today: on('2026-12-28'), unasked: false, client: {}, programme: {} };
  readFact('kit: bells 8, 12, 16, 20, 24; chair, wall, mat', facts, exercises);
  return facts.client.kit ?? [];
}

function readLine(line: string, session: OpenSession, exercises: readonly Exercise[], where: string): void {
  const circuit = /^circuit, (\d+) rounds$/.exec(line)?.[1];
  if (circuit !== undefined) session.blocks.push({ kind: 'circuit', rounds: Number(circuit), rows: [] });
  else if (line === 'warm-up' || line === 'cool-down' || line === 'straight')
    session.blocks.push({ kind: line, rows: [] });
  else {
    if (session.blocks.length === 0) session.blocks.push({ kind: 'straight', rows: [] });
    const block = session.blocks.at(-1);
    const name = line.split(':')[0] ?? '';
    if (!exercises.some(({ id }) => id === slugOf(name))) fail(`${where}: no exercise ${name}`);
    block?.rows.push(readRow(line, block.rounds ?? null));
  }
}

function programmeOf(facts: Facts, sessions: readonly OpenSession[]): Programme {
  const templates = sessions.map(({ name, blocks }): SessionTemplate => {
    return {
      id: sessionId(name),
      name,
      notes: [],
      blocks: blocks.map(({ kind, rounds, rows }, index) => ({
        name: `${kind} ${index + 1}`,
        kind,
        ...(rounds === undefined ? {} : { rounds }),
        rows,
      })),
      place: { file: 'case', line: 1, column: 1, length: 1 },
    };
  });
  const tested = facts.programme.tests ?? [];
  for (const id of tested) if (!templates.some((one) => rowsOf(one).includes(id))) fail(`no row ${id} to test`);
  return aProgramme(templates, { id: programmeId('case'), ...facts.programme });
}

const rowsOf = ({ blocks }: SessionTemplate) => blocks.flatMap((block) => block.rows.map(({ id }) => rowId(id)));

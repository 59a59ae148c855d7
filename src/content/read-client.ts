/** One client's file → facts, sign-offs, tests and observations. Whether ids lead anywhere is left to the cross checks. */
import type { Caution, Clearance, Client, ClientFact, Observation, Screening, SignOff, Test } from '../model/client.js';
import type { Day, Weekday } from '../model/day.js';
import { weekdayOf } from '../model/day.js';
import { type ClientId, clientId, exerciseId, programmeId } from '../model/identity.js';
import type { Place } from '../model/place.js';
import type { MassUnit } from '../model/quantity.js';
import type { Studio } from '../model/studio.js';
import { type ClientFront, kitOf, makeClientSchema, NOT_READ_YET } from './client-schema.js';
import { breaksOf, healthOf, mainBellsOf, mayBeNone } from './health-schema.js';
import { type OpenFile, placeOf, placeOfName, readKeys } from './open-file.js';
import { type MassContext, readDecimal, readMass, readWhole, speaksOfBothUnits } from './read-amounts.js';
import { REPS } from './read-dose.js';
import { readObservations } from './read-observations.js';
import { mapRead, type Reader } from './read-value.js';
import { readDate, readName, readOneOf, readYesNo } from './read-words.js';
import { linesOf, readSections, type Section, tableOf } from './sections.js';
import { type NamedRow, readCell, readExerciseLink, rowsOf } from './table-rows.js';
import { nodeAt } from './yaml-tree.js';

const CLIENT_SECTIONS = ['Signed off', 'Tests', 'Observations', 'Work on this', 'Notes'] as const;
const SIDES = ['left', 'right', 'both'] as const;

export interface ReadClient {
  readonly id: ClientId;
  readonly file: OpenFile;
  readonly signOffs: readonly SignOff[];
  readonly tests: readonly Test[];
  readonly observations: readonly Observation[];
  /** Absent where the front matter could not be read. */
  readonly client: Client | undefined;
}

/** A schema is made once for each unit and mixture: making one costs more than reading a client. */
const schemas = new Map<string, ReturnType<typeof makeClientSchema>>();

function schemaFor(context: MassContext): ReturnType<typeof makeClientSchema> {
  const name = `${context.unit} ${context.mixed}`;
  const schema = schemas.get(name) ?? makeClientSchema(context);
  schemas.set(name, schema);
  return schema;
}

export function readClient(file: OpenFile, id: string, studio: Studio): ReadClient {
  const unit = unitOf(file) ?? studio.unit;
  const context: MassContext = { unit, mixed: speaksOfBothUnits(file.source.text) };
  const sections = readSections(file, CLIENT_SECTIONS);
  const signOffs = readSignOffs(file, sections.get('Signed off'), context);
  const tests = readTests(file, sections.get('Tests'), context);
  const observations = readObservations(file, sections.get('Observations'));
  const workOnThis = linesOf(file, 'Work on this', sections.get('Work on this')?.blocks ?? [])[0];
  const notes = linesOf(file, 'Notes', [...sections.intro, ...(sections.get('Notes')?.blocks ?? [])]);
  const unhandled = readUnhandled(file);
  const front = readKeys(withoutNothings(file), schemaFor(context));
  const mass = front?.['body mass'];
  const client: Client | undefined = front && {
    id: clientId(id),
    name: front.name,
    starts: front.starts,
    programme: programmeId(front.programme),
    days: inTrainingOrder(front.days, front.starts),
    minutes: front.minutes,
    birthYear: front['birth year'],
    experience: front.experience,
    ...(mass ? { bodyMass: mass } : {}),
    ...screeningOf(file, front),
    ...clearanceOf(front),
    cautions: cautionsOf(file, front),
    health: healthOf(file, front),
    breaks: breaksOf(file, front),
    mainBells: mainBellsOf(file, front),
    unhandled,
    kit: kitOf(front),
    unit,
    room: {
      ...(front.room?.ceiling === undefined ? {} : { ceilingMillimetres: front.room.ceiling }),
      ...(front.room?.floor ? { floorMillimetres: front.room.floor } : {}),
    },
    language: front.language ?? studio.language,
    largePrint: front['large print'] ?? false,
    ...(front.partner ? { partner: clientId(front.partner) } : {}),
    ...(front.film ? { film: { exercise: exerciseId(front.film.exercise), from: front.film.from } } : {}),
    replanning: front.replanning ?? 'fixed',
    blocksBefore: front['blocks before'],
    signOffs,
    tests,
    observations,
    ...(workOnThis ? { workOnThis } : {}),
    notes,
    place: file.place,
    places: placesOf(file),
  };
  return { id: clientId(id), file, signOffs, tests, observations, client };
}

const FACTS: Readonly<Record<ClientFact, readonly string[]>> = {
  starts: ['starts'],
  programme: ['programme'],
  days: ['days'],
  minutes: ['minutes'],
  'birth year': ['birth year'],
  'body mass': ['body mass'],
  'screening date': ['screening', 'date'],
  'clearance date': ['clearance', 'date'],
  partner: ['partner'],
  film: ['film', 'exercise'],
  language: ['language'],
  'large print': ['large print'],
  replanning: ['replanning'],
  medicines: ['medicines'],
  conditions: ['conditions'],
  falls: ['falls'],
};

/** Where the facts stand that planning may have something to say of. */
function placesOf(file: OpenFile): Readonly<Partial<Record<ClientFact, Place>>> {
  const { keys } = file;
  if (!keys) return {};
  return Object.fromEntries(
    Object.entries(FACTS).flatMap(([fact, path]) => (nodeAt(keys, path) ? [[fact, placeOf(file, ...path)]] : [])),
  );
}

/** `pregnancy: no` says that there is nothing to read, as leaving the key out does. */
function withoutNothings(file: OpenFile): OpenFile {
  const { keys } = file;
  if (!keys) return file;
  const entries = keys.entries.filter(({ key, value }) => {
    return !(mayBeNone.has(key) && value?.kind === 'text' && saysNothing(value.text));
  });
  return { ...file, keys: { ...keys, entries } };
}

const saysNothing = (text: string): boolean => /^(no|none|nothing|-)$/i.test(text.trim());

/** The client's own unit has to be known before a mass can be read. */
function unitOf(file: OpenFile): MassUnit | undefined {
  const node = file.keys && nodeAt(file.keys, ['units']);
  const word = node?.kind === 'text' ? node.text.trim().toLowerCase() : '';
  return word === 'kg' || word === 'lb' ? word : undefined;
}

/** Weeks begin on the first training day. */
function inTrainingOrder(days: readonly Weekday[], starts: Day): readonly Weekday[] {
  const first = weekdayOf(starts);
  return [...days].sort((a, b) => ((a - first + 7) % 7) - ((b - first + 7) % 7));
}

function screeningOf(file: OpenFile, { screening }: ClientFront): { readonly screening?: Screening } {
  if (!screening) return {};
  return {
    screening: {
      date: screening.date,
      regularExercise: screening['regular exercise'],
      knownDisease: screening['known disease'],
      symptoms: screening.symptoms,
      place: placeOfName(file, 'screening'),
    },
  };
}

function clearanceOf({ clearance }: ClientFront): { readonly clearance?: Clearance } {
  if (!clearance) return {};
  const { until, ...rest } = clearance;
  return { clearance: { ...rest, ...(until === undefined ? {} : { until }) } };
}

function cautionsOf(file: OpenFile, front: ClientFront): readonly Caution[] {
  return (front.cautions ?? []).map((caution, index) => ({
    what: caution.what,
    degree: caution.degree,
    side: caution.side ?? 'both',
    phases: (caution.phases ?? []).map((phase) => phase.toLowerCase()),
    from: caution.from,
    ...(caution.until === undefined ? {} : { until: caution.until }),
    ...(caution.review === undefined ? {} : { review: caution.review }),
    by: caution.by,
    ...(caution.say === undefined ? {} : { say: caution.say }),
    place: placeOf(file, 'cautions', index, 'what'),
  }));
}

/** Facts no rule reads yet: each withholds the client, unless it says there is nothing. */
function readUnhandled(file: OpenFile): Client['unhandled'] {
  return NOT_READ_YET.flatMap((fact) => {
    const node = file.keys && nodeAt(file.keys, [fact]);
    if (!node || (node.kind === 'text' && saysNothing(node.text))) return [];
    const place = placeOfName(file, fact);
    file.report.add({ code: 'not-handled', data: { fact, why: 'no rule reads it yet' } }, place);
    return [{ fact, place }];
  });
}

const readSide = readOneOf(SIDES);
const readReserve: Reader<number> = (text) =>
  mapRead(readDecimal('Reps in reserve', { least: 0, most: 10 })(text), (reps) => Math.round(reps * 10));

/** The id a row's exercise cell links to, and the row's date; `undefined` where either cannot be read. */
function exerciseAndDate(file: OpenFile, row: NamedRow<'Exercise' | 'Date'>): { id: string; date: Day } | undefined {
  const id = readExerciseLink(file, row.cell('Exercise'));
  const date = readCell(file, row.cell('Date'), readDate);
  return id === undefined || date === undefined ? undefined : { id, date };
}

function readSignOffs(file: OpenFile, section: Section | undefined, context: MassContext): readonly SignOff[] {
  const table = tableOf(file, section);
  if (!table) return [];
  const columns = { known: ['Exercise', 'Up to', 'Date', 'By'], needed: ['Exercise', 'Date', 'By'] } as const;
  return rowsOf<'Exercise' | 'Up to' | 'Date' | 'By'>(file, table, columns).flatMap((row): SignOff[] => {
    const what = exerciseAndDate(file, row);
    const upTo = readCell(file, row.cell('Up to'), readMass(context));
    const by = readCell(file, row.cell('By'), readName);
    if (!what || by === undefined || (row.cell('Up to') && !upTo)) return [];
    return [{ exercise: exerciseId(what.id), ...(upTo ? { upTo } : {}), date: what.date, by, place: row.place }];
  });
}

function readTests(file: OpenFile, section: Section | undefined, context: MassContext): readonly Test[] {
  const table = tableOf(file, section);
  if (!table) return [];
  const known = ['Exercise', 'Side', 'Load', 'Reps', 'Reserve', 'Date', 'In a circuit'] as const;
  const needed = ['Exercise', 'Reps', 'Reserve', 'Date'] as const;
  return rowsOf<(typeof known)[number]>(file, table, { known, needed }).flatMap((row): Test[] => {
    const what = exerciseAndDate(file, row);
    const side = row.cell('Side') ? readCell(file, row.cell('Side'), readSide) : 'both';
    const load = readCell(file, row.cell('Load'), readMass(context));
    const reps = readCell(file, row.cell('Reps'), readWhole('Reps', REPS));
    const reserve = readCell(file, row.cell('Reserve'), readReserve);
    const inCircuit = readCell(file, row.cell('In a circuit'), readYesNo) ?? false;
    if (!what || reps === undefined || reserve === undefined || side === undefined) return [];
    // A load that could not be read is not the same as none.
    if (row.cell('Load') && !load) return [];
    const test: Test = {
      exercise: exerciseId(what.id),
      side,
      ...(load ? { load } : {}),
      reps,
      reserve,
      inCircuit,
      date: what.date,
      place: row.place,
    };
    return [test];
  });
}

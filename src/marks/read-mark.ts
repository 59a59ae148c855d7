/** One line of the text form → the event it was. */
import { BODY_PARTS, type BodyPart } from '../model/exercise.js';
import { exerciseId, readSetKey, rowId, type Side, setKey } from '../model/identity.js';
import { ALARM_SIGNS, type EventHead, type LogEvent, type PainReport } from '../model/log.js';
import type { PlanLoad } from '../model/plan.js';
import type { TempoStep } from '../model/programme.js';
import { readWords } from './fold.js';
import { readLoad } from './load-text.js';
import { readShortId } from './short-id.js';
import { startTaking, type Taking } from './taking.js';

/** What the line above says of all the marks below it. */
export interface Context {
  /** `YYYY-MM-DD`. */
  readonly day: string;
  /** `+01:00`. */
  readonly offset: string;
  readonly edition: number;
  readonly block: number | undefined;
  readonly session: number | undefined;
}

/** `2027-01-04 +01:00, edition 1, block 1, session 3`. */
export function readContext(line: string): Context | null {
  const match =
    /^(\d{4}-\d\d-\d\d) ([+-]\d\d:\d\d), edition (\d{1,4})(?:, block (\d{1,4}))?(?:, session (\d{1,4}))?$/.exec(line);
  const [, day = '', offset = '', edition, block, session] = match ?? [];
  if (match === null) return null;
  const number = (text: string | undefined): number | undefined => (text === undefined ? undefined : Number(text));
  return { day, offset, edition: Number(edition), block: number(block), session: number(session) };
}

/** `2. 18:35:10 goblet-squat, both sides, work 1: 8 × 16 kg in all (bell-16) #…`; `null` where the line is no mark. */
export function readMark(line: string, context: Context): LogEvent | null {
  const match = /^(\d{1,16})\. (\d\d:\d\d:\d\d) (.*) #([0-9a-z]{25})$/u.exec(line);
  const [, seq, time = '', says = '', shortId = ''] = match ?? [];
  const id = readShortId(shortId);
  if (match === null || id === null) return null;
  const at = `${context.day}T${time}${context.offset}`;
  const head: EventHead = { id, seq: Number(seq), edition: context.edition, at };
  const from = startTaking(says);
  const event = readEvent(head, context, from);
  return event !== null && from.atEnd() ? event : null;
}

function readEvent(head: EventHead, context: Context, from: Taking): LogEvent | null {
  const { session: occurrence } = context;
  const note = from.take(/Note: (.*)/);
  if (note !== null) {
    const text = readWords(note[0] ?? '');
    return text === null ? null : { ...head, kind: 'note', text };
  }
  const taken = from.take(/Taken back: ([0-9a-z]{25})/);
  if (taken !== null) {
    const event = readShortId(taken[0] ?? '');
    return event === null ? null : { ...head, kind: 'void', event };
  }
  if (occurrence === undefined) return null;
  if (from.take(/Begun: /) !== null) {
    const today = takeOneOf(from, TODAY);
    return today === null ? null : { ...head, kind: 'opened', occurrence, today };
  }
  if (from.take(/Over/) !== null) return { ...head, kind: 'closed', occurrence, ...readClose(from) };
  const pain = from.take(/Pain(?: in ([a-z0-9-]+))?: /);
  if (pain !== null) {
    const report = readPain(from);
    const row = pain[0] ? { row: rowId(pain[0]) } : {};
    return report === null ? null : { ...head, kind: 'pain', occurrence, ...row, report };
  }
  return readReserve(head, occurrence, from) ?? readSet(head, context, from);
}

const TODAY = ['as usual', 'not my best', 'something hurts', 'short of time'] as const;

function takeOneOf<Word extends string>(from: Taking, words: readonly Word[]): Word | null {
  return words.find((word) => from.take(new RegExp(word)) !== null) ?? null;
}

function readClose(from: Taking): { readonly effort?: number; readonly minutes?: number } {
  const effort = from.take(/: effort (\d{1,2}) of 10/);
  const minutes = from.take(effort === null ? /: (\d{1,3}) min/ : /, (\d{1,3}) min/);
  return {
    ...(effort === null ? {} : { effort: Number(effort[0]) }),
    ...(minutes === null ? {} : { minutes: Number(minutes[0]) }),
  };
}

const PLACES: readonly (BodyPart | 'elsewhere')[] = [...BODY_PARTS, 'elsewhere'];

function readPain(from: Taking): PainReport | null {
  const where = takeOneOf(from, PLACES);
  const degree = from.take(/ (\d{1,2}) of 10/);
  if (where === null || degree === null) return null;
  const side = from.take(/, (left|right)/)?.[0];
  const morning = from.take(/; (not )?worse next morning/);
  const alarm = from.take(/; alarm: /) === null ? undefined : takeOneOf(from, ALARM_SIGNS);
  if (alarm === null) return null;
  return {
    where,
    degree: Number(degree[0]),
    ...(side === undefined ? {} : { side: sideOf(side) }),
    ...(morning === null ? {} : { worseNextMorning: morning[0] === '' }),
    ...(alarm === undefined ? {} : { alarm }),
  };
}

const sideOf = (text: string): Side => (text === 'left' ? 'left' : 'right');

function readReserve(head: EventHead, occurrence: number, from: Taking): LogEvent | null {
  const [row, side = '', reps] = from.take(/([a-z0-9-]+), (left|right|both sides): (\d+(?:\.\d+)?) in reserve/) ?? [];
  if (row === undefined) return null;
  const of = side === 'both sides' ? 'both' : sideOf(side);
  return { ...head, kind: 'reserve', occurrence, row: rowId(row), side: of, reps: Number(reps) };
}

const DONE = ['easier', 'left out', 'extra'] as const;
const TEMPI: readonly TempoStep[] = ['slow lowering', 'slow with a pause'];

function readSet(head: EventHead, { block, session }: Context, from: Taking): LogEvent | null {
  const named = from.take(/([a-z0-9-]+)(?: as ([a-z0-9-]+))?, (left|right|both)(?: sides)?, ([a-z-]+) (\d{1,3}): /);
  if (named === null) return null;
  const [row = '', exercise = '', side = '', kind = '', ordinal = ''] = named;
  const key = readSetKey(`${block ?? ''}/${session ?? ''}/${row}/${side}/${kind}/${ordinal}`);
  if (key === null) return null;
  const done = takeOneOf(from, DONE);
  // `done` stands where no figure is said.
  const bare = done === null ? from.take(/done(?=;|$)/) !== null : from.take(/, /) === null;
  const figures = bare ? {} : readFigures(from);
  return figures === null ? null : finishSet(head, { key, row, exercise, done: done ?? 'done', figures }, from);
}

interface Figures {
  readonly reps?: number;
  readonly seconds?: number;
  readonly metres?: number;
  readonly load?: PlanLoad;
}

interface SetSoFar {
  readonly key: NonNullable<ReturnType<typeof readSetKey>>;
  readonly row: string;
  readonly exercise: string;
  readonly done: 'done' | (typeof DONE)[number];
  readonly figures: Figures;
}

function finishSet(head: EventHead, { key, row, exercise, done, figures }: SetSoFar, from: Taking): LogEvent {
  const slow = from.take(/; (?=slow )/) === null ? null : takeOneOf(from, TEMPI);
  const asPlanned = from.take(/; as planned/) !== null;
  return {
    ...head,
    kind: 'set',
    key: setKey(key),
    exercise: exerciseId(exercise === '' ? row : exercise),
    tempo: slow ?? 'normal',
    done,
    ...figures,
    asPlanned,
  };
}

function readFigures(from: Taking): Figures | null {
  if (from.take(/with /) !== null) {
    const load = readLoad(from);
    return load === null ? null : { load };
  }
  const seconds = from.take(/(\d{1,5}) s/);
  const metres = seconds === null ? from.take(/(\d{1,5}) m/) : null;
  const bare = seconds === null && metres === null ? from.take(/(\d{1,4}) reps/) : null;
  const reps = bare ?? (seconds === null && metres === null ? from.take(/(\d{1,4})(?= × )/) : null);
  const counted = {
    ...(reps === null ? {} : { reps: Number(reps[0]) }),
    ...(seconds === null ? {} : { seconds: Number(seconds[0]) }),
    ...(metres === null ? {} : { metres: Number(metres[0]) }),
  };
  if (Object.keys(counted).length === 0) return null;
  if (from.take(/ × /) === null) return counted;
  const load = readLoad(from);
  return load === null ? null : { ...counted, load };
}

/** Reads a log in its form for programs, as it stands on disk and as a phone hands it over. Any text gives an answer. */
import type { z } from 'zod';
import { bookletId, compareIds, exerciseId, kitItemId, readSetKey, rowId, setKey } from '../model/identity.js';
import type { Log, LogEvent } from '../model/log.js';
import type { PlanLoad } from '../model/plan.js';
import { invariant } from '../model/result.js';
import { logSchema } from './log-schema.js';

export interface Unread {
  /** What is wrong, and which event it is wrong in: the end of a sentence. */
  readonly why: string;
}

/** The log, its events in their stated order; or why it is none. */
export function readLog(text: string): Log | Unread {
  let parsed: unknown;
  try {
    parsed = JSON.parse(text.replace(/^\ufeff/, ''));
  } catch {
    return { why: 'it is not JSON' };
  }
  return logOf(parsed);
}

/** The same of a value that is parsed already. */
export function logOf(value: unknown): Log | Unread {
  const read = logSchema.safeParse(value);
  if (!read.success) return { why: sayIssue(value, read.error.issues[0]) };
  const { data } = read;
  return {
    schema: 1,
    bookletId: bookletId(data.bookletId),
    device: data.device,
    events: data.events.map(eventOf).sort(compareEvents),
  };
}

/** By the device's own count, then by id: the order on disk. */
export const compareEvents = (a: LogEvent, b: LogEvent): number => a.seq - b.seq || compareIds(a.id, b.id);

type RawEvent = z.output<typeof logSchema>['events'][number];
type RawLoad = NonNullable<Extract<RawEvent, { kind: 'set' }>['load']>;

/** Fields in one order whatever order they came in, so that equal events are equal letter for letter. */
function eventOf(raw: RawEvent): LogEvent {
  const { id, seq, edition, at } = raw;
  const head = { id, seq, edition, at };
  switch (raw.kind) {
    case 'opened':
      return { ...head, kind: raw.kind, occurrence: raw.occurrence, today: raw.today };
    case 'set': {
      const parts = readSetKey(raw.key);
      invariant(parts !== null, 'the schema lets only keys through');
      return {
        ...head,
        kind: raw.kind,
        key: setKey(parts),
        exercise: exerciseId(raw.exercise),
        tempo: raw.tempo,
        done: raw.done,
        ...(raw.reps === undefined ? {} : { reps: raw.reps }),
        ...(raw.seconds === undefined ? {} : { seconds: raw.seconds }),
        ...(raw.metres === undefined ? {} : { metres: raw.metres }),
        ...(raw.load === undefined ? {} : { load: loadOf(raw.load) }),
        asPlanned: raw.asPlanned,
      };
    }
    case 'reserve':
      return {
        ...head,
        kind: raw.kind,
        occurrence: raw.occurrence,
        row: rowId(raw.row),
        side: raw.side,
        reps: raw.reps,
      };
    case 'pain': {
      const { where, degree, side, worseNextMorning, alarm } = raw.report;
      return {
        ...head,
        kind: raw.kind,
        occurrence: raw.occurrence,
        ...(raw.row === undefined ? {} : { row: rowId(raw.row) }),
        report: {
          where,
          degree,
          ...(side === undefined ? {} : { side }),
          ...(worseNextMorning === undefined ? {} : { worseNextMorning }),
          ...(alarm === undefined ? {} : { alarm }),
        },
      };
    }
    case 'closed':
      return {
        ...head,
        kind: raw.kind,
        occurrence: raw.occurrence,
        ...(raw.effort === undefined ? {} : { effort: raw.effort }),
        ...(raw.minutes === undefined ? {} : { minutes: raw.minutes }),
      };
    case 'note':
      return { ...head, kind: raw.kind, text: raw.text };
    case 'void':
      return { ...head, kind: raw.kind, event: raw.event };
  }
}

function loadOf(raw: RawLoad): PlanLoad {
  const pieces = raw.pieces.map(({ id, grams }) => ({ id: kitItemId(id), grams }));
  if ('band' in raw) return { band: raw.band, step: raw.step, mode: raw.mode, pieces, label: raw.label };
  return { kg: raw.kg, grams: raw.grams, mode: raw.mode, pieces, label: raw.label };
}

/** `event 3 (set, seq 12): reps: …`, so that one bad mark among many is found. */
function sayIssue(value: unknown, issue: z.core.$ZodIssue | undefined): string {
  if (issue === undefined) return 'it is damaged';
  const [top, index, ...below] = issue.path;
  const at = top === 'events' && typeof index === 'number' ? index : undefined;
  const where = (at === undefined ? issue.path : below).map(String).join('.');
  const what = isMissing(value, issue)
    ? `${where} is missing`
    : `${where === '' ? '' : `${where}: `}${issue.message.slice(0, 200)}`;
  return at === undefined ? what : `event ${at + 1}${sayWhich(value, at)}: ${what}`;
}

/** A field that must be there, of something that is. */
function isMissing(value: unknown, { path }: z.core.$ZodIssue): boolean {
  const field = path.at(-1);
  const holder = path
    .slice(0, -1)
    .reduce<unknown>(
      (inner, key) => (typeof inner === 'object' && inner !== null ? Reflect.get(inner, key) : null),
      value,
    );
  return typeof field === 'string' && isRecord(holder) && holder[field] === undefined;
}

function sayWhich(value: unknown, index: number): string {
  const events: unknown = isRecord(value) ? value.events : undefined;
  const event: unknown = Array.isArray(events) ? events[index] : undefined;
  if (!isRecord(event)) return '';
  const { kind, seq } = event;
  return typeof kind === 'string' && typeof seq === 'number' ? ` (${readable(kind.slice(0, 20))}, seq ${seq})` : '';
}

/** Words of somebody else's, in a sentence that a terminal shows: nothing in them moves its cursor or turns a line about. */
const readable = (text: string): string => text.replace(/[\p{Cc}\p{Bidi_Control}]/gu, ' ');

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
